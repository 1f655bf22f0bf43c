// Every figure that is printed is the plan's: cut sizes and counts, what to buy, how many to make, check sizes, read back from
// the text of the printed pages of every example.

import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import type { QuiltPlan } from '#craft';
import { type Chapter, clothSignsFor, patternPages } from '#paper';
import { openPress } from '#print';
import { amountOf, figure } from './figures.ts';
import { said } from './pdf.ts';
import { exampleFiles, isMeasured, planOf } from './prints.ts';

/** The text of some chapters as it is written, in one line. */
const textOf = async (plan: QuiltPlan, chapters: readonly Chapter[]): Promise<string> => {
  const folder = mkdtempSync(join(tmpdir(), 'seamstead-numbers-'));
  const press = openPress();
  try {
    const path = join(folder, 'pages.pdf');
    writeFileSync(path, (await press.pdf(patternPages(plan, { chapters }), { paper: 'letter' })).bytes);
    return said('pdftotext', ['-raw', path, '-']).replace(/[\s\u00a0\u202f]+/g, ' ');
  } finally {
    press.close();
    rmSync(folder, { recursive: true });
  }
};

test('printed figures are read back as they are meant', () => {
  // by hand
  assert.deepEqual(['4⅞', '½', '10.5', '12', '3⁵⁄₁₆'].map(amountOf), [4.875, 0.5, 10.5, 12, 3.3125]);
});

/** Half of the finest mark: what "about" may be off by. */
const near = (plan: QuiltPlan): number => (plan.quilt.unit === 'in' ? 1 / 16 : 0.05) + 1e-9;

const all = (text: string, pattern: string): readonly RegExpMatchArray[] => [
  ...text.matchAll(new RegExp(pattern, 'g')),
];

for (const name of exampleFiles) {
  const plan = planOf(name);
  const { unit } = plan.quilt;

  test(`${name}: every check size and every count of a step is printed as planned`, async () => {
    const text = await textOf(plan, ['blocks']);
    const steps = plan.blocks.flatMap((block) => block.steps);
    const sizes = all(text, `[Uu]nit (\\d+) (?:measures|to) (about )?(${figure}) × (${figure}) ${unit}\\.`);
    const measured = steps.filter(isMeasured);
    assert.equal(sizes.length, measured.length);
    sizes.forEach(([, number, about, across, down], i) => {
      const step = measured[i];
      assert.ok(step && step.makes === `#${number}`, `${number} stands for ${step?.makes}`);
      [across, down].forEach((side, k) => {
        const off = Math.abs(amountOf(side ?? '') - (step.unfinished[k] ?? 0));
        assert.ok(off <= (about === undefined ? 1e-9 : near(plan)), `${step.id}: ${side} for ${step.unfinished[k]}`);
      });
    });
    const counts = all(text, String.raw`make (\d+)`).map(([, made]) => Number(made));
    assert.deepEqual(
      counts.toSorted((a, b) => a - b),
      steps.map(({ total }) => total).toSorted((a, b) => a - b),
    );
    const makes = all(text, String.raw`Make (\d+)(?:, about .*? of sewing(?: each)?)? (?:about )?${figure} ×`).map(
      ([, made]) => Number(made),
    );
    assert.deepEqual(
      makes,
      plan.blocks.filter(({ patches }) => patches.length > 0).map(({ count }) => count),
    );
  });

  test(`${name}: every cut size and its number is printed as planned`, async () => {
    const text = await textOf(plan, ['cutting']);
    const signs = clothSignsFor(plan);
    const rows = all(
      text,
      `\\b([A-Z]{1,2}\\d+) (\\d+) (${figure})(?: × (${figure}))? ${unit} (?:square|rectangle|box|strip|pair)`,
    );
    const printed = new Map(rows.map(([, mark, count, across, along]) => [mark, { count, across, along }]));
    const lines = plan.fabrics.flatMap((fabric) =>
      fabric.pieces.map((piece, i) => ({ piece, mark: `${signs.get(fabric.id)?.letter}${i + 1}` })),
    );
    assert.deepEqual([...printed.keys()].toSorted(), lines.map(({ mark }) => mark).toSorted());
    for (const { piece, mark } of lines) {
      const row = printed.get(mark);
      const [across, along] = [amountOf(row?.across ?? ''), amountOf(row?.along ?? row?.across ?? '')];
      assert.equal(Number(row?.count), piece.count, mark);
      assert.ok(
        Math.abs(across - piece.cut[0]) < 1e-9 && Math.abs(along - piece.cut[1]) < 1e-9,
        `${mark}: ${across} × ${along} for ${piece.cut}`,
      );
    }
  });

  test(`${name}: what to buy of every cloth is printed as planned`, async () => {
    const text = await textOf(plan, ['cloth']);
    const signs = clothSignsFor(plan);
    for (const { id, buy } of plan.fabrics) {
      if (buy.unit === 'sheets') continue;
      const sign = signs.get(id);
      const row = new RegExp(`\\b${sign?.letter} ${sign?.name} (${figure}) ${buy.unit}\\b`).exec(text);
      assert.ok(row, `${sign?.letter} ${sign?.name}`);
      assert.ok(Math.abs(amountOf(row[1] as string) - buy.amount) < 1e-9, `${row[0]} for ${buy.amount}`);
    }
  });
}
