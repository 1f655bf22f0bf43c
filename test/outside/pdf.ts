// A printed pattern seen through programs that are not ours: poppler's and qpdf.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { planQuilt, type QuiltPlan } from '#craft';
import { patternPages } from '#paper';
import { openPress, type Paper } from '#print';

export interface PrintedFile {
  readonly plan: QuiltPlan;
  /** A file that stands until the test ends. */
  readonly path: string;
  readonly remove: () => void;
}

export const printed = async (document: unknown, paper: Paper): Promise<PrintedFile> => {
  const planned = planQuilt(document, { budget: { steps: 0 } });
  assert.ok(planned.ok, 'the document of a test is sound');
  const press = openPress();
  try {
    const { bytes } = await press.pdf(patternPages(planned.value), { paper });
    const folder = mkdtempSync(join(tmpdir(), 'seamstead-outside-'));
    const path = join(folder, 'pattern.pdf');
    writeFileSync(path, bytes);
    return { plan: planned.value, path, remove: () => rmSync(folder, { recursive: true }) };
  } finally {
    press.close();
  }
};

/** What a program prints; poppler's remark on one entry of every tagged file is left unread. */
export const said = (program: string, args: readonly string[]): string =>
  execFileSync(program, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 1 << 26 });

export const pagesOf = (file: PrintedFile): readonly string[] =>
  said('pdftotext', ['-layout', file.path, '-']).split('\f').slice(0, -1);

/** A page as grey values, 0 black to 255 white. */
export const rastered = async (file: PrintedFile, page: number, dpi: number) => {
  const args = ['-r', `${dpi}`, '-f', `${page}`, '-l', `${page}`, '-gray', '-png', '-singlefile', file.path];
  const png = execFileSync('pdftoppm', args, { stdio: ['ignore', 'pipe', 'ignore'], maxBuffer: 1 << 28 });
  const { data, info } = await sharp(png).greyscale().raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, at: (x: number, y: number) => data[y * info.width + x] as number };
};
