// The pattern as other programs see it: its text, its pages, its tags and its scale.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { quilt, setOf } from '../documents/documents.ts';
import { drawnBlock } from '../documents/drawn.ts';
import { pagesOf, printed, rastered, said } from './pdf.ts';

const example = (name: string): string => readFileSync(`examples/${name}.quilt.json`, 'utf8');

const points: Readonly<Record<'letter' | 'a4', readonly [number, number]>> = {
  letter: [612, 792], // 8½ × 11 in at 72 points (ANSI/ASME Y14.1 size A, from memory)
  a4: [595.276, 841.89], // 210 × 297 mm (ISO 216)
};

for (const paper of ['letter', 'a4'] as const) {
  test(`the pattern on ${paper} has pages of that size, is tagged, and its fonts are embedded`, async () => {
    const file = await printed(example('harvest-home-throw'), paper);
    try {
      const facts = said('pdfinfo', [file.path]);
      const size = facts.match(/^Page size:\s+([\d.]+) x ([\d.]+) pts/m);
      assert.ok(size, facts);
      assert.ok(
        Math.abs(Number(size[1]) - points[paper][0]) < 0.01 && Math.abs(Number(size[2]) - points[paper][1]) < 0.01,
      );
      assert.match(facts, /^Tagged:\s+yes/m);
      assert.match(facts, /^Title:\s+Harvest Home/m);
      const fonts = said('pdffonts', [file.path])
        .split('\n')
        .slice(2)
        .filter((line) => line !== '');
      assert.ok(
        fonts.length > 0 && fonts.every((line) => /Source(Sans|Serif)/.test(line) && / yes yes /.test(line)),
        fonts.join('\n'),
      );
      assert.match(said('qpdf', ['--check', file.path]), /No syntax or stream encoding errors found/);
    } finally {
      file.remove();
    }
  });
}

test('the text of the pattern names every cloth and every check size of the log cabin', async () => {
  const file = await printed(example('harvest-home-throw'), 'letter');
  try {
    const pages = pagesOf(file);
    const text = pages.join('\n').replace(/\s+/g, ' ');
    for (const { name } of file.plan.quilt.fabrics) assert.ok(text.includes(name), name);
    for (const step of file.plan.blocks[0]?.steps ?? []) {
      const [across, down] = step.unfinished.map((side) => `${Math.floor(side)}½`);
      // every check size of the log cabin ends in a half: centre 3, logs of 1, two allowances of a quarter (by hand)
      assert.ok(text.includes(`Unit ${step.number} measures ${across} × ${down} in`), `step ${step.number}`);
    }
    assert.match(text, /make 36/);
    assert.match(text, /Cautions/);
  } finally {
    file.remove();
  }
});

test('the check squares of a page with templates measure 1 in and 2.5 cm within 0.2 %', async () => {
  const file = await printed(quilt({ blocks: [drawnBlock('attic_window', 4)], top: setOf('attic_window') }), 'a4');
  try {
    const page = 1 + pagesOf(file).findIndex((text) => text.includes('Measure both squares'));
    assert.notEqual(page, 0, 'a page with check squares');
    const dpi = 600;
    const { width, height, at } = await rastered(file, page, dpi);
    const inkRuns = (y: number): readonly { from: number; to: number }[] => {
      const runs: { from: number; to: number }[] = [];
      for (let x = 0; x < width; x++) {
        if (at(x, y) >= 128) continue;
        const last = runs.at(-1);
        if (last && last.to === x - 1) last.to = x;
        else runs.push({ from: x, to: x });
      }
      return runs;
    };
    // the first level with two long strokes is the upper side of both squares
    const isLong = (run: { from: number; to: number }): boolean => run.to - run.from > 0.9 * dpi;
    const top = Array.from({ length: height }, (_, y) => y).find((y) => inkRuns(y).filter(isLong).length === 2);
    assert.ok(top !== undefined, 'two squares side by side');
    const [inch, metric] = inkRuns(top).filter(isLong) as [{ from: number; to: number }, { from: number; to: number }];
    const stroke = (0.5 / 72) * dpi;
    const side = (run: { from: number; to: number }): number => (run.to - run.from + 1 - stroke) / dpi;
    assert.ok(Math.abs(side(inch) - 1) < 0.002, `${side(inch)} in`);
    assert.ok(Math.abs(side(metric) * 2.54 - 2.5) < 0.005, `${side(metric) * 2.54} cm`);
  } finally {
    file.remove();
  }
});
