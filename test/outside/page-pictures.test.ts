// The pictures of the pages beside what poppler, which is not ours, makes of the PDF of the same pages.

import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import sharp from 'sharp';
import { patternPages } from '#paper';
import { openPress, pngOf } from '#print';
import { pagesOf, printed } from './pdf.ts';

/** Coarse, in grey: two programs smooth the edges of letters in two ways. */
const coarse = { width: 150, height: 194 } as const;

const greys = async (png: Uint8Array): Promise<Uint8Array> =>
  sharp(png)
    .resize({ ...coarse, fit: 'fill' })
    .greyscale()
    .raw()
    .toBuffer();

const apart = (a: Uint8Array, b: Uint8Array): number =>
  a.reduce((sum, grey, i) => sum + Math.abs(grey - (b[i] ?? 0)), 0) / a.length;

for (const [name, paper] of [
  ['harvest-home-throw', 'letter'],
  ['heron-hanging', 'a4'],
] as const) {
  test(`each picture of a page is the page of the PDF: ${name}`, async () => {
    const file = await printed(JSON.parse(readFileSync(`examples/${name}.quilt.json`, 'utf8')), paper);
    const press = openPress();
    try {
      const { pages } = await press.pictures(patternPages(file.plan), { paper });
      assert.equal(pages.length, pagesOf(file).length);
      const theirs = await Promise.all(
        pages.map((_, i) =>
          greys(
            execFileSync(
              'pdftoppm',
              ['-r', '72', '-f', `${i + 1}`, '-l', `${i + 1}`, '-png', '-singlefile', file.path],
              {
                stdio: ['ignore', 'pipe', 'ignore'],
                maxBuffer: 1 << 26,
              },
            ),
          ),
        ),
      );
      for (const [i, svg] of pages.entries()) {
        const ours = await greys(await pngOf(svg, { widthPx: 612 }));
        const distances = theirs.map((one) => apart(ours, one));
        const own = distances[i] ?? Number.POSITIVE_INFINITY;
        // measured on four examples: 0.2 to 4.4 of 255
        assert.ok(own < 5, `page ${i + 1} is ${own.toFixed(1)} apart`);
        assert.equal(distances.indexOf(Math.min(...distances)), i, `page ${i + 1} looks more like another`);
      }
    } finally {
      press.close();
      file.remove();
    }
  });
}
