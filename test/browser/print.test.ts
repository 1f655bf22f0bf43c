// Print: pages as they will lie on paper, files to take along, and that they are those of the command line, byte for byte.

import assert from 'node:assert/strict';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable, Writable } from 'node:stream';
import { after, before, describe, it } from 'node:test';
import type { Download, Page } from 'playwright-core';
import { main } from '#cli';
import { type Opened, openDemo, openWorkroom } from './page.ts';

const bytesOf = async (download: Download): Promise<Buffer> => readFileSync(await download.path());

/** What is saved when that is done. */
const saved = async (page: Page, act: () => Promise<unknown>): Promise<Download> => {
  const [download] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), act()]);
  return download;
};

const pagesAreSet = async (page: Page): Promise<void> => {
  await page.getByText(/^(One page|\d+ pages) on .* Set in/).waitFor({ timeout: 60_000 });
  await page.getByText('Setting the pages').waitFor({ state: 'detached' });
};

/** The files that the command line writes for a document, by their names. */
const written = async (document: Buffer, ...wishes: readonly string[]): Promise<(name: string) => Buffer> => {
  const folder = mkdtempSync(join(tmpdir(), 'seamstead-print-'));
  try {
    const file = join(folder, 'saved.quilt.json');
    writeFileSync(file, document);
    const quiet = () => new Writable({ write: (_chunk, _encoding, done) => done() });
    const terminal = { stdin: Readable.from([]), stdout: quiet(), stderr: quiet() };
    const out = join(folder, 'out');
    for (const argv of [
      ['plan', file, '--out', out, ...wishes],
      ['draw', file, '--out', out, '--as', 'colour'],
    ])
      assert.equal(await main({ argv, ...terminal }), 0, argv.join(' '));
    const { readdirSync } = await import('node:fs');
    const files = new Map(readdirSync(out).map((name) => [name, readFileSync(join(out, name))]));
    return (name) => files.get(name) ?? assert.fail(`the command line writes no ${name}`);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

describe('printing', () => {
  let opened: Opened;
  before(async () => {
    opened = await openWorkroom();
  });
  after(() => opened?.close());

  for (const where of ['local', 'numeric'] as const) {
    it(`saves the pattern that the command line makes of the saved document, byte for byte (${where})`, async () => {
      const { page, context, faults } = await opened.page();
      await openDemo(page, opened[where]);
      await page.getByRole('button', { name: 'Print the pattern' }).click();
      await pagesAreSet(page);
      const document = await bytesOf(
        await saved(page, () => page.getByRole('button', { name: 'Save the document' }).click()),
      );
      const pdf = await saved(page, () => page.getByRole('button', { name: 'Save the PDF' }).click());
      assert.equal(pdf.suggestedFilename(), 'harvest-home.pdf');
      const theirs = await written(document);
      assert.ok((await bytesOf(pdf)).equals(theirs('pattern.pdf')));
      assert.deepEqual(faults, []);
      await context.close();
    });
  }
});
