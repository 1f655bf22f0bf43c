import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { checkLayout, type Demand, planSheets } from '#craft/cutting';
import { length } from '#craft/measure';
import { groupings } from '#documents';

const square = (side: number, count: number): Demand => ({
  across: length(side),
  along: length(side),
  count,
  mayTurn: true,
});

const sheetsFor = (size: readonly [number, number], demands: readonly Demand[], steps = 4) =>
  planSheets({
    sheets: [{ size: [length(size[0]), length(size[1])], cost: 1, stock: null }],
    demands,
    budget: { steps },
  });

test('a fat quarter of 22 by 18 in gives the squares that print says, and one more asks for a second', () => {
  // guild handout "Number of Squares from a Fat Quarter" (anonymous, public document copy): cases fq-2 to fq-6.5
  for (const [side, count] of [
    [2, 99],
    [2.5, 56],
    [3.5, 30],
    [4, 20],
    [5, 12],
    [5.5, 12],
    [6.5, 6],
  ] as const) {
    const full = sheetsFor([22, 18], [square(side, count)]);
    assert.deepEqual([full.sheets.length, full.bound], [1, 1], `${side}`);
    assert.equal(sheetsFor([22, 18], [square(side, count + 1)]).sheets.length, 2, `${side}`);
  }
});

test('pieces of more than half a sheet each way cannot share one, and the bound says so', () => {
  // by hand: three squares of 6 on sheets of 10, area 1.08 sheets
  const laid = sheetsFor([10, 10], [square(6, 3)]);
  assert.deepEqual([laid.sheets.length, laid.bound], [3, 3]);
});

test('strips of different heights are packed so that a sheet is full', () => {
  // by hand: 10 across, heights 6 + 4 and 7 + 3, twice each
  const bars = [6, 4, 7, 3].map(
    (along): Demand => ({ across: length(10), along: length(along), count: 2, mayTurn: false }),
  );
  const laid = sheetsFor([10, 10], bars);
  assert.deepEqual([laid.sheets.length, laid.bound], [4, 4]);
});

test('a piece larger than its sheet is not laid', () => {
  assert.throws(() => sheetsFor([10, 10], [square(11, 1)]), RangeError);
});

test('nothing to cut takes no sheet', () => {
  assert.deepEqual(sheetsFor([10, 10], [square(3, 0)]).sheets, []);
});

const side = fc.integer({ min: 2, max: 12 });

const task = (most: number) =>
  fc.record({
    width: fc.integer({ min: 12, max: 20 }),
    height: fc.integer({ min: 12, max: 20 }),
    demands: fc.array(
      fc.record({
        across: side.map(length),
        along: side.map(length),
        count: fc.integer({ min: 1, max: most }),
        mayTurn: fc.boolean(),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  });

test('every sheet is a good layout, together they hold exactly the pieces, and none beats the bound', () => {
  fc.assert(
    fc.property(task(9), fc.constantFrom(0, 3), ({ width, height, demands }, steps) => {
      const laid = sheetsFor([width, height], demands, steps);
      const left = demands.map(({ count }) => count);
      for (const sheet of laid.sheets) {
        assert.deepEqual([sheet.width, sheet.length], [width, height]);
        const counts = demands.map(() => 0);
        for (const strip of sheet.strips)
          for (const part of strip.parts) for (const { of } of part.pieces) counts[of] = (counts[of] ?? 0) + 1;
        const used = sheet.strips.reduce((sum, strip) => sum + strip.height, 0);
        assert.ok(used <= height + 1e-9 && used > 0);
        const here = demands.map((demand, i) => ({ ...demand, count: counts[i] as number }));
        const layout = { ...sheet, length: length(used) };
        assert.deepEqual(checkLayout({ layout, width: length(width), demands: here }), []);
        counts.forEach((count, i) => {
          left[i] = (left[i] as number) - count;
        });
      }
      assert.deepEqual(
        left,
        demands.map(() => 0),
      );
      assert.ok(laid.bound <= laid.sheets.length);
    }),
    { seed: 51, numRuns: 120 },
  );
});

type Size = readonly [number, number];

/** Heights that a strip of these pieces may have, by every grouping into parts, within the width. */
const stripHeight = (pieces: readonly Size[], width: number): number =>
  Math.min(
    ...groupings(pieces).map((parts) => {
      const wide = parts.reduce((sum, part) => sum + Math.max(...part.map(([across]) => across)), 0);
      return wide > width
        ? Number.POSITIVE_INFINITY
        : Math.max(...parts.map((part) => part.reduce((sum, [, along]) => sum + along, 0)));
    }),
  );

const fitsSheet = (pieces: readonly Size[], [width, height]: Size): boolean =>
  groupings(pieces).some((strips) => strips.reduce((sum, strip) => sum + stripHeight(strip, width), 0) <= height);

/** Fewest sheets, by every lie of every piece and every grouping. */
const fewestByTrying = (pieces: readonly { readonly size: Size; readonly mayTurn: boolean }[], sheet: Size): number => {
  const lies = pieces.reduce<readonly (readonly Size[])[]>(
    (all, { size, mayTurn }) =>
      all.flatMap((before) => [[...before, size], ...(mayTurn ? [[...before, [size[1], size[0]] as const]] : [])]),
    [[]],
  );
  return Math.min(
    ...lies.flatMap((lie) =>
      groupings(lie).map((sheets) =>
        sheets.every((group) => fitsSheet(group, sheet)) ? sheets.length : Number.POSITIVE_INFINITY,
      ),
    ),
  );
};

test('on small cases the number of sheets is the least of all layouts, and the bound is not above it', () => {
  let met = 0;
  let tried = 0;
  fc.assert(
    fc.property(task(1), ({ width, height, demands }) => {
      const laid = sheetsFor([width, height], demands);
      const least = fewestByTrying(
        demands.map(({ across, along, mayTurn }) => ({ size: [across, along], mayTurn })),
        [width, height],
      );
      assert.ok(laid.bound <= least && laid.sheets.length >= least);
      tried++;
      if (laid.sheets.length === least) met++;
    }),
    { seed: 52, numRuns: 150 },
  );
  assert.equal(met, tried);
});

const inches = (across: number, along: number) => [length(across), length(along)] as const;

test('of several kinds of sheet the cheapest lot is taken, and each sheet says which it is', () => {
  // by hand: a fat quarter of 20 1/2 by 17 1/2 takes twelve squares of 5 (four by three), a fat eighth of 20 1/2 by 8 1/2 four;
  // for sixteen one of each, at 4 and 2 1/2
  const laid = planSheets({
    sheets: [
      { size: inches(20.5, 17.5), cost: 4, stock: null },
      { size: inches(20.5, 8.5), cost: 2.5, stock: null },
    ],
    demands: [square(5, 16)],
    budget: { steps: 4 },
  });
  assert.deepEqual(
    laid.sheets.map(({ kind, width, length: long }) => [kind, width, long]),
    [
      [0, 20.5, 17.5],
      [1, 20.5, 8.5],
    ],
  );
  // 400 square inches are more than the 358 3/4 of the larger sheet
  assert.deepEqual([laid.cost, laid.costBound, laid.bound, laid.kept, laid.holds], [6.5, 6.5, 2, 'cost', 'yes']);
});

test('remnants at hand are used up first, and what they do not hold is bought', () => {
  // by hand: a remnant of 10 by 10 takes four squares of 5; eight more fill one of 20 by 10
  const sheets = [
    { size: inches(20, 10), cost: 3, stock: null },
    { size: inches(10, 10), cost: 0, stock: 1 },
  ];
  const laid = planSheets({ sheets, demands: [square(5, 12)], budget: { steps: 4 } });
  assert.deepEqual([laid.cost, laid.costBound, laid.sheets.map(({ kind }) => kind)], [3, 3, [0, 1]]);
});

test('a stock that is too small leaves pieces, and says of which demand', () => {
  // by hand: two sheets of 10 by 10 take four squares of 5 each; of 6 and 4 wanted two are left, the last ones
  const laid = planSheets({
    sheets: [{ size: inches(10, 10), cost: 1, stock: 2 }],
    demands: [square(5, 6), { ...square(5, 4), mayTurn: false }],
    budget: { steps: 4 },
  });
  assert.deepEqual([laid.holds, laid.left], ['no', [{ of: 1, count: 2 }]]);
});

test('a sheet that ends between the marks of its pieces is used up to the last of them', () => {
  // by hand: 44.4 cm of an odd remnant are 1 mm and a third short of 44.533…; three pieces of 14.8 are 44.4
  const laid = planSheets({
    sheets: [{ size: inches(44.4 + 0.1 / 3, 10 + 1 / 7), cost: 1, stock: null }],
    demands: [{ across: length(14.8), along: length(10), count: 3, mayTurn: false }],
    budget: { steps: 4 },
  });
  assert.deepEqual([laid.sheets.length, laid.bound], [1, 1]);
});

test('pieces on no common grid lie within their sheets all the same', () => {
  const odd = [Math.SQRT2 * 3, Math.PI, Math.E * 2];
  const demands = odd.map(
    (across, i): Demand => ({
      across: length(across),
      along: length(odd[(i + 1) % 3] as number),
      count: 9,
      mayTurn: true,
    }),
  );
  const laid = planSheets({
    sheets: [{ size: inches(17.5, 20.5), cost: 1, stock: null }],
    demands,
    budget: { steps: 2 },
  });
  for (const one of laid.sheets) {
    const used = one.strips.reduce((sum, strip) => sum + strip.height, 0);
    const counts = demands.map(
      (demand, of): Demand => ({
        ...demand,
        count: one.strips.flatMap(({ parts }) => parts.flatMap(({ pieces }) => pieces.filter((p) => p.of === of)))
          .length,
      }),
    );
    assert.deepEqual(
      checkLayout({ layout: { ...one, length: length(used) }, width: length(17.5), demands: counts }),
      [],
    );
    assert.ok(used <= 20.5 + 1e-9);
  }
  assert.ok(laid.bound <= laid.sheets.length);
});

const several = fc.record({
  sheets: fc.array(
    fc.record({
      size: fc
        .tuple(fc.integer({ min: 24, max: 44 }), fc.integer({ min: 24, max: 44 }))
        .map(([a, b]) => inches(a / 2, b / 2)),
      cost: fc.integer({ min: 0, max: 12 }).map((quarters) => quarters / 4),
      stock: fc.option(fc.integer({ min: 0, max: 6 })),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  demands: task(9).map(({ demands }) => demands),
});

test('on several kinds of sheet every piece is laid once or told as left, within its sheet and the stock', () => {
  fc.assert(
    fc.property(several, ({ sheets, demands }) => {
      const laid = planSheets({ sheets, demands, budget: { steps: 1 } });
      const made = demands.map(() => 0);
      for (const one of laid.sheets) {
        assert.deepEqual([one.width, one.length], sheets[one.kind]?.size);
        const used = one.strips.reduce((sum, strip) => sum + strip.height, 0);
        assert.ok(used > 0 && used <= one.length + 1e-9);
        const here = demands.map(
          (demand, of): Demand => ({
            ...demand,
            count: one.strips.flatMap(({ parts }) => parts.flatMap(({ pieces }) => pieces.filter((p) => p.of === of)))
              .length,
          }),
        );
        here.forEach(({ count }, i) => {
          made[i] = (made[i] as number) + count;
        });
        const layout = { ...one, length: length(used) };
        assert.deepEqual(checkLayout({ layout, width: one.width, demands: here }), []);
      }
      for (const { of, count } of laid.left) made[of] = (made[of] as number) + count;
      assert.deepEqual(
        made,
        demands.map(({ count }) => count),
      );
      sheets.forEach(({ stock }, kind) => {
        assert.ok(stock === null || laid.sheets.filter((one) => one.kind === kind).length <= stock);
      });
      assert.equal(laid.holds === 'yes', laid.left.length === 0);
      if (laid.holds === 'yes') assert.ok(laid.costBound <= laid.cost + 1e-9);
    }),
    { seed: 53, numRuns: 80 },
  );
});
