// Pages as PNG: printed by our press, rastered by poppler, few colours to keep the files small.

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import type { PatternPages } from '#paper';
import { openPress } from '#print';

export const rastered = async (
  pages: PatternPages,
  of: { readonly dotsPerInch: number },
): Promise<readonly Uint8Array[]> => {
  const folder = mkdtempSync(join(tmpdir(), 'seamstead-pictures-'));
  const press = openPress();
  try {
    const file = join(folder, 'pages.pdf');
    writeFileSync(file, (await press.pdf(pages, { paper: 'letter' })).bytes);
    execFileSync('pdftoppm', ['-r', String(of.dotsPerInch), '-png', file, join(folder, 'page')], { stdio: 'ignore' });
    const names = readdirSync(folder)
      .filter((name) => name.endsWith('.png'))
      .sort();
    return await Promise.all(names.map((name) => fewColours(readFileSync(join(folder, name)))));
  } finally {
    press.close();
    rmSync(folder, { recursive: true });
  }
};

export const fewColours = (png: Uint8Array): Promise<Uint8Array> =>
  sharp(png).png({ palette: true, colours: 96, effort: 10 }).toBuffer();
