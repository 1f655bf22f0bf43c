// A slow twin of the exact answer: pieces are put one by one into every stack, strip and sheet begun, and into new ones.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Cutting, Job, Kind, StripUse } from '#craft/strips';
import { countsOf, heightOf, lengthOf, widthOf } from '#craft/strips';
import { drained } from '#ground/search';
import { fewPieces, fewPiecesOnSheets, fewPiecesWithin, type Sheet } from './index.ts';

interface Piece {
  readonly width: number;
  readonly height: number;
}

const cuttings: Readonly<Record<'flat' | 'piece' | 'any', Cutting>> = {
  flat: { stages: 2 },
  piece: { stages: 3, stripHeights: 'piece' },
  any: { stages: 3, stripHeights: 'any' },
};

/** Every lie of each piece that fits the width. */
const liesOf = (width: number, kinds: readonly Kind[]): readonly (readonly Piece[])[] =>
  kinds.flatMap((kind) => {
    const lies = (kind.mayTurn ? [false, true] : [false])
      .map((turned) => ({ width: widthOf(kind, turned), height: heightOf(kind, turned) }))
      .filter((lie) => lie.width <= width);
    return Array.from({ length: kind.count }, () => lies);
  });

const most = (numbers: readonly number[]): number => Math.max(0, ...numbers);
const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

type Stack = Piece[];
type Strip = Stack[];

/** The least length of strips for these pieces by plain recursion. */
const leastByTrying = (of: { width: number; pieces: readonly (readonly Piece[])[]; cutting: Cutting }): number => {
  const { width, pieces, cutting } = of;
  const heights = [...new Set(pieces.flatMap((lies) => lies.map(({ height }) => height)))].sort((a, b) => a - b);
  const allowed = (height: number): number =>
    cutting.stages === 3 && cutting.stripHeights === 'piece'
      ? (heights.find((each) => each >= height) ?? Number.POSITIVE_INFINITY)
      : height;
  const stackWidth = (stack: Stack): number => most(stack.map((piece) => piece.width));
  const stripHeight = (strip: Strip): number =>
    allowed(most(strip.map((stack) => sum(stack.map((piece) => piece.height)))));
  let best = Number.POSITIVE_INFINITY;
  const strips: Strip[] = [];
  const place = (i: number): void => {
    const length = sum(strips.map(stripHeight));
    if (length >= best || strips.some((strip) => sum(strip.map(stackWidth)) > width)) return;
    const lies = pieces[i];
    if (lies === undefined) {
      best = length;
      return;
    }
    for (const piece of lies) {
      for (const strip of strips) {
        if (cutting.stages === 3)
          for (const stack of strip) {
            stack.push(piece);
            place(i + 1);
            stack.pop();
          }
        strip.push([piece]);
        place(i + 1);
        strip.pop();
      }
      strips.push([[piece]]);
      place(i + 1);
      strips.pop();
    }
  };
  place(0);
  return best;
};

/** The least cost of sheets by plain recursion over all divisions of the pieces. */
const cheapestByTrying = (of: { kinds: readonly Kind[]; cutting: Cutting; sheets: readonly Sheet[] }): number => {
  const { kinds, cutting, sheets } = of;
  const lies = sheets.map((sheet) => liesOf(sheet.width, kinds));
  const lengths = sheets.map(() => new Map<string, number>());
  const fits = (sheet: number, members: readonly number[]): boolean => {
    const key = members.join();
    const known = lengths[sheet]?.get(key);
    const { width, height } = sheets[sheet] as Sheet;
    const pieces = members.map((i) => (lies[sheet]?.[i] ?? []).filter((piece) => piece.height <= height));
    const length = known ?? leastByTrying({ width, pieces, cutting });
    lengths[sheet]?.set(key, length);
    return length <= height;
  };
  let best = Number.POSITIVE_INFINITY;
  const groups: number[][] = [];
  const used = sheets.map(() => 0);
  const payFor = (g: number, cost: number): void => {
    const group = groups[g];
    if (group === undefined) best = Math.min(best, cost);
    else
      sheets.forEach((sheet, s) => {
        if (cost + sheet.cost >= best || (used[s] as number) >= (sheet.stock ?? 99) || !fits(s, group)) return;
        used[s] = (used[s] as number) + 1;
        payFor(g + 1, cost + sheet.cost);
        used[s] = (used[s] as number) - 1;
      });
  };
  const divide = (i: number): void => {
    if (i === (lies[0] ?? []).length) {
      payFor(0, 0);
      return;
    }
    for (const group of groups) {
      group.push(i);
      divide(i + 1);
      group.pop();
    }
    groups.push([i]);
    divide(i + 1);
    groups.pop();
  };
  divide(0);
  return best;
};

/** Faults of strips looked at by their widths, heights and counts; none for good ones. */
const faultsIn = (job: Job, strips: readonly StripUse[]): readonly string[] => {
  const faults: string[] = [];
  for (const { pattern } of strips) {
    let across = 0;
    for (const { stack, times } of pattern.parts) {
      const sizes = stack.runs.map((run) => ({ ...run, kind: job.kinds[run.kind] as Kind }));
      if (sizes.some(({ kind, turned }) => turned && !kind.mayTurn)) faults.push('turned');
      across += times * most(sizes.map(({ kind, turned }) => widthOf(kind, turned)));
      if (sum(sizes.map((size) => size.times * heightOf(size.kind, size.turned))) > pattern.height) faults.push('high');
    }
    if (across > job.width) faults.push('wide');
  }
  const made = job.kinds.map((_, k) =>
    sum(strips.map((s) => s.times * (countsOf(s.pattern, job.kinds.length)[k] ?? 0))),
  );
  if (made.some((n, k) => n !== job.kinds[k]?.count)) faults.push(`makes ${made}`);
  return faults;
};

/** Up to seven pieces on a narrow cloth, some of them longer than it is wide. */
const jobs = (most: number): fc.Arbitrary<Job> =>
  fc
    .record({
      width: fc.integer({ min: 8, max: 18 }),
      sizes: fc.array(
        fc.record({
          across: fc.integer({ min: 1, max: 8 }),
          along: fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 1, max: 10 }) }, fc.integer({ min: 15, max: 30 })),
          count: fc.integer({ min: 1, max: 3 }),
          mayTurn: fc.boolean(),
        }),
        { minLength: 1, maxLength: most, size: 'max' },
      ),
    })
    .map(({ width, sizes }) => {
      let left = most;
      const kinds: Kind[] = [];
      for (const { across, along, count, mayTurn } of sizes) {
        const taken = Math.min(left, count);
        left -= taken;
        if (taken === 0) continue;
        const flat = mayTurn && across > along;
        kinds.push({ width: flat ? along : across, height: flat ? across : along, count: taken, mayTurn });
      }
      return { width, kinds };
    });

const cases = 100;

for (const [name, cutting] of Object.entries(cuttings)) {
  test(`few pieces: strips cut ${name} are as short as any found by trying all`, () => {
    fc.assert(
      fc.property(jobs(7), (job) => {
        const found = fewPieces({ job, cutting });
        assert.ok(found !== null);
        assert.deepEqual(faultsIn(job, found.strips), []);
        assert.equal(lengthOf(found.strips), found.length);
        assert.equal(found.bound, found.length);
        assert.equal(found.length, leastByTrying({ width: job.width, pieces: liesOf(job.width, job.kinds), cutting }));
      }),
      { seed: 41, numRuns: cases },
    );
  });
}

for (const [name, cutting] of Object.entries(cuttings)) {
  test(`few pieces: strips cut ${name} are found within their least length and any above it, and within none below`, () => {
    fc.assert(
      fc.property(jobs(7), fc.integer({ min: 0, max: 9 }), (job, more) => {
        const least = fewPieces({ job, cutting })?.length as number;
        const found = drained(fewPiecesWithin({ job, cutting, longest: least + more }));
        assert.ok(found !== null && found !== 'none');
        assert.deepEqual([found.length, lengthOf(found.strips), faultsIn(job, found.strips)], [least, least, []]);
        assert.equal(drained(fewPiecesWithin({ job, cutting, longest: least - 1 - more })), 'none');
      }),
      { seed: 43, numRuns: cases },
    );
  });
}

test('few pieces: more of them than are tried at once are tried in steps where little may be left over', () => {
  // four kinds of a dozen sashes 1 in wide on 26 1/2 in of cloth; 69.7 eighths by area
  const sash = (height: number): Kind => ({ width: 8, height, count: 12, mayTurn: true });
  const job = { width: 212, kinds: [sash(51), sash(46), sash(31), sash(26)] };
  assert.equal(fewPieces({ job, cutting: cuttings.any }), null);
  const steps = fewPiecesWithin({ job, cutting: cuttings.any, longest: 70 });
  assert.equal(steps.next().done, false);
  assert.equal(drained(steps), 'none');
});

const stocks = fc.array(
  fc.record({
    width: fc.integer({ min: 6, max: 16 }),
    height: fc.integer({ min: 6, max: 16 }),
    cost: fc.integer({ min: 3, max: 9 }),
    stock: fc.oneof(fc.constant(null), fc.integer({ min: 0, max: 3 })),
  }),
  { minLength: 1, maxLength: 3 },
);

for (const [name, cutting] of Object.entries(cuttings)) {
  test(`few pieces: sheets cut ${name} are as cheap as any found by trying all`, () => {
    fc.assert(
      fc.property(jobs(7), stocks, ({ kinds }, sheets) => {
        const found = fewPiecesOnSheets({ kinds, cutting, sheets });
        const least = cheapestByTrying({ kinds, cutting, sheets });
        assert.ok(found !== null);
        if (found.status === 'impossible') return assert.equal(least, Number.POSITIVE_INFINITY);
        assert.equal(found.cost, least);
        const { sheets: uses } = found;
        assert.equal(sum(uses.map(({ sheet, times }) => times * (sheets[sheet]?.cost ?? 0))), found.cost);
        assert.equal(sum(uses.map(({ times }) => times)), found.count);
        sheets.forEach(({ stock }, s) => {
          const used = sum(uses.map(({ sheet, times }) => (sheet === s ? times : 0)));
          assert.ok(stock === null || used <= stock, `${used} of ${stock}`);
        });
        for (const { sheet, strips } of uses) {
          const { width, height } = sheets[sheet] as Sheet;
          assert.ok(lengthOf(strips) <= height);
          const counts = kinds.map((_, k) =>
            sum(strips.map((s) => s.times * (countsOf(s.pattern, kinds.length)[k] ?? 0))),
          );
          const cut = kinds.map((kind, k) => ({ ...kind, count: counts[k] as number }));
          assert.deepEqual(faultsIn({ width, kinds: cut }, strips), []);
        }
        const made = kinds.map((_, k) =>
          sum(
            uses.flatMap((use) =>
              use.strips.map((s) => use.times * s.times * (countsOf(s.pattern, kinds.length)[k] ?? 0)),
            ),
          ),
        );
        assert.deepEqual(
          made,
          kinds.map(({ count }) => count),
        );
      }),
      { seed: 42, numRuns: cases },
    );
  });
}

const square: Kind = { width: 5, height: 5, count: 1, mayTurn: false };

test('few pieces: what can be seen by hand', () => {
  // derived by hand: three squares of 5 on cloth of 10 need two strips
  assert.equal(fewPieces({ job: { width: 10, kinds: [{ ...square, count: 3 }] }, cutting: cuttings.flat })?.length, 10);
  // derived by hand: 4 × 6 beside two of 6 × 3, one below the other: 6 with three stages, 9 with two
  const tall = { width: 4, height: 6, count: 1, mayTurn: false };
  const flat = { width: 6, height: 3, count: 2, mayTurn: false };
  assert.equal(fewPieces({ job: { width: 10, kinds: [tall, flat] }, cutting: cuttings.any })?.length, 6);
  assert.equal(fewPieces({ job: { width: 10, kinds: [tall, flat] }, cutting: cuttings.flat })?.length, 9);
  // derived by hand: 4 × 7 beside two of 6 × 4 makes 8; where a strip is as high as a piece, 7 and one more of 4
  const long = { width: 4, height: 7, count: 1, mayTurn: false };
  const wide = { width: 6, height: 4, count: 2, mayTurn: false };
  assert.equal(fewPieces({ job: { width: 10, kinds: [long, wide] }, cutting: cuttings.any })?.length, 8);
  assert.equal(fewPieces({ job: { width: 10, kinds: [long, wide] }, cutting: cuttings.piece })?.length, 11);
});

test('few pieces: too many, or one that fits neither way, are left to others', () => {
  const many = Array.from({ length: 30 }, (_, i) => ({ width: 5 + i, height: 7, count: 2, mayTurn: false }));
  assert.equal(fewPieces({ job: { width: 50, kinds: many }, cutting: cuttings.flat }), null);
  assert.equal(fewPieces({ job: { width: 4, kinds: [square] }, cutting: cuttings.flat }), null);
  assert.equal(
    fewPiecesOnSheets({
      kinds: many,
      cutting: cuttings.flat,
      sheets: [{ width: 50, height: 50, cost: 1, stock: null }],
    }),
    null,
  );
});
