import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import {
  allowancesFor,
  amountToBuy,
  type Demand,
  type LaidOut,
  lengthHeld,
  planLayout,
  planSheets,
} from '#craft/cutting';
import type { Buying } from '#craft/design';
import { length } from '#craft/measure';
import { rational } from '#ground/exact';
import { type ClothDirections, directionsFor, type PatternCut } from './directions.ts';

const buying: Buying = {
  squaring: rational(1),
  shrinkage: rational(3, 100),
  step: { amount: rational(1, 8), unit: 'yd' },
};

const laidOf = (width: number, demands: readonly Demand[]): LaidOut =>
  planLayout({
    width: length(width),
    demands,
    budget: { steps: 2 },
    easing: {
      choice: 'least',
      within: (least) => {
        const bought = amountToBuy({ length: least, buying, unit: 'in' });
        const held = (steps: number) => lengthHeld({ bought, steps, buying, unit: 'in' });
        return [held(0), held(1), held(2)];
      },
    },
  });

const directionsOf = (laid: LaidOut): ClothDirections =>
  directionsFor({ laid, allowances: allowancesFor({ laid, buying, unit: 'in' }), unit: 'in' });

const demand = (across: number, along: number, count: number, mayTurn = false): Demand => ({
  across: length(across),
  along: length(along),
  count,
  mayTurn,
});

/** A cut cloth: pieces by place in the list, and what fell off, all as "across × along". */
interface Cut {
  readonly pieces: string[];
  readonly left: string[];
}

const sizeText = (across: number, along: number): string => `${across.toFixed(4)} x ${along.toFixed(4)}`;

const keep = (cut: Cut, across: number, along: number): void => {
  if (across > 1e-9 && along > 1e-9) cut.left.push(sizeText(across, along));
};

/** Cuts one strip as it is told, with a knife that knows rectangles only: every stroke goes from edge to edge. */
const cutStrip = ({ strip, cuts }: PatternCut, width: number): Cut => {
  const cut: Cut = { pieces: [], left: [] };
  let [across, along] = [width, strip.height as number];
  for (const one of cuts) {
    if (one.cut === 'narrow') {
      assert.ok(one.to < along, 'a strip is narrowed to less than it is');
      keep(cut, across, along - one.to);
      along = one.to;
      continue;
    }
    for (let n = 0; n < one.count; n++) {
      assert.ok(one.width <= across + 1e-9, 'a part fits into what is left of its strip');
      across -= one.width;
      let down = along;
      let open: { width: number; along: number } | null = null;
      for (const run of one.runs) {
        assert.ok(run.count * run.cut[1] <= down + 1e-9, 'a run fits into what is left of its part');
        down -= run.count * run.cut[1];
        for (let k = 0; k < run.count; k++) cut.pieces.push(`${run.of} ${sizeText(run.cut[0], run.cut[1])}`);
        const beside = one.width - run.cut[0];
        // one stroke trims runs of one width that follow each other
        if (open !== null && Math.abs(open.width - beside) < 1e-9) open.along += run.count * run.cut[1];
        else {
          if (open) keep(cut, open.width, open.along);
          open = { width: beside, along: run.count * run.cut[1] };
        }
      }
      if (open) keep(cut, open.width, open.along);
      keep(cut, one.width, down);
    }
  }
  keep(cut, across, along);
  return cut;
};

const cloths = fc.record({
  width: fc.integer({ min: 160, max: 352 }).map((n) => n / 8),
  demands: fc.array(
    fc
      .record({
        across: fc.integer({ min: 8, max: 100 }),
        along: fc.oneof(fc.integer({ min: 8, max: 100 }), fc.integer({ min: 200, max: 500 })),
        count: fc.integer({ min: 1, max: 25 }),
        mayTurn: fc.boolean(),
      })
      .map((d) => demand(d.across / 8, d.along / 8, d.count, d.mayTurn)),
    { minLength: 1, maxLength: 9 },
  ),
});

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6 * Math.max(1, Math.abs(a));

test('cutting as the directions say gives exactly the pieces, and everything else is a named remnant or waste', () => {
  fc.assert(
    fc.property(cloths, ({ width, demands }) => {
      const laid = laidOf(width, demands);
      const { parts, remnants, area } = directionsOf(laid);
      const pieces: string[] = [];
      const left: string[] = [];
      for (const { heights, end } of parts) {
        for (const { height, count, patterns } of heights) {
          assert.equal(
            count,
            patterns.reduce((all, p) => all + p.count, 0),
          );
          for (const pattern of patterns) {
            assert.equal(pattern.strip.height, height);
            const cut = cutStrip(pattern, width);
            assert.deepEqual(
              pattern.offcuts.map(({ size }) => sizeText(...size)).toSorted(),
              cut.left.toSorted(),
              'what falls off is said',
            );
            for (let n = 0; n < pattern.count; n++) {
              pieces.push(...cut.pieces);
              left.push(...cut.left);
            }
          }
        }
        if (end) left.push(sizeText(...end.size));
      }
      const sizes = demands.flatMap((d, of) =>
        Array.from({ length: d.count }, () => [
          `${of} ${sizeText(d.across, d.along)}`,
          `${of} ${sizeText(d.along, d.across)}`,
        ]),
      );
      assert.equal(pieces.length, sizes.length);
      demands.forEach((d, of) => {
        const mine = pieces.filter((piece) => piece.startsWith(`${of} `));
        assert.equal(mine.length, d.count);
        const ways = [
          `${of} ${sizeText(d.across, d.along)}`,
          ...(d.mayTurn ? [`${of} ${sizeText(d.along, d.across)}`] : []),
        ];
        assert.ok(mine.every((piece) => ways.includes(piece)));
      });
      for (const remnant of remnants) {
        const alike = left.filter((size) => size === sizeText(...remnant.size)).length;
        assert.ok(alike >= remnant.count, `${remnant.name} falls off as often as it is named`);
      }
      assert.ok(near(area.bought, area.pieces + area.remnants + area.waste));
      const bought = amountToBuy({ length: laid.layout.length, buying, unit: 'in' });
      assert.ok(near(area.bought, bought.amount * 36 * width));
      assert.ok(
        near(
          area.pieces,
          demands.reduce((all, d) => all + d.count * d.across * d.along, 0),
        ),
      );
    }),
    { numRuns: 120, seed: 51 },
  );
});

test('the directions count the work of a layout as the search for an easy one does', () => {
  fc.assert(
    fc.property(cloths, ({ width, demands }) => {
      const laid = laidOf(width, demands);
      const chosen = laid.ladder?.find((rung) => rung.chosen);
      const { effort } = directionsOf(laid);
      assert.deepEqual(effort, {
        heights: chosen?.heights,
        settings: chosen?.settings,
        patterns: chosen?.patterns,
        strokes: chosen?.strokes,
      });
    }),
    { numRuns: 120, seed: 52 },
  );
});

test('a worked cloth: strips, sub-cuts, strokes and remnants', () => {
  // derived by hand: 20 squares of 2 1/2 in on 40 in: 16 a strip, so two strips, 16 and 4; 1 + 15 strokes (the last ends with the
  // cloth) and 1 + 4; the ruler stays at 2 1/2. Of the second strip 30 × 2 1/2 are left; 5 + 2 in squared up are 7, a fifth
  // of a yard takes 1/4 yd, 9 in, and shrinks 3 %: 9 / 1.03 - 2 - 5 = 1.7379 in of the cloth's end are over
  const laid = laidOf(40, [demand(2.5, 2.5, 20)]);
  const { parts, effort, remnants } = directionsOf(laid);
  assert.deepEqual(effort, { heights: 1, settings: 1, patterns: 2, strokes: 21 });
  const [height] = parts[0]?.heights ?? [];
  assert.equal(height?.height, 2.5);
  assert.deepEqual(
    height?.patterns.map((p) => [p.number, p.count, p.cuts.map((c) => (c.cut === 'parts' ? c.count : 0))]),
    [
      [1, 1, [16]],
      [2, 1, [4]],
    ],
  );
  assert.deepEqual(
    remnants.map(({ name, from, size }) => [name, from, ...size.map((side) => Math.round(side * 1e4) / 1e4)]),
    [
      ['R1', 'end', 30, 2.5],
      ['R2', 'cloth-end', 40, 1.7379],
    ],
  );
});

test('sheets cut alike are told once, and what is left of each is counted for all', () => {
  // derived by hand: a sheet of 20 by 10 holds 4 squares of 9 two by two? no: 9 + 9 is 18 of 20, and one row of 9; two a sheet
  const demands = [demand(9, 9, 6)];
  const sheet = { size: [length(20), length(10)] as const, cost: 1, stock: null };
  const laid = planSheets({ sheets: [sheet], demands, budget: { steps: 0 } });
  const { parts, remnants, area } = directionsFor({ laid, allowances: null, unit: 'in' });
  assert.deepEqual(
    parts.map(({ count, sheet: kind }) => [count, kind]),
    [[3, 0]],
  );
  // ends of 2 by 9 and 20 by 1 are too small to keep
  assert.deepEqual(remnants, []);
  assert.deepEqual(area, { bought: 600, pieces: 486, remnants: 0, waste: 114 });
});
