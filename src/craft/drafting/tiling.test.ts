import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { BlockDesign, PatchesDesign } from '#craft/design';
import { fromDecimal, rational } from '#ground/exact';
import { signedArea } from '#ground/plane';
import { draftBlock } from './index.ts';

type Corners = readonly (readonly [number, number])[];

const drawn = (
  grid: readonly [number, number],
  list: readonly Corners[],
  size: readonly [number, number] = grid,
): BlockDesign => {
  const shape: PatchesDesign = {
    kind: 'patches',
    size: [fromDecimal(size[0]), fromDecimal(size[1])],
    grid: [fromDecimal(grid[0]), fromDecimal(grid[1])],
    patches: list.map((corners) => ({
      tone: 't',
      corners: corners.map(([x, y]) => [fromDecimal(x), fromDecimal(y)] as const),
    })),
  };
  return { id: 'b', title: 'B', path: '/blocks/0', shape, colourings: { default: { t: 'f' } } };
};

const square = (x: number, y: number, w = 1, h = 1): Corners => [
  [x, y],
  [x + w, y],
  [x + w, y + h],
  [x, y + h],
];
const fourPatch = [square(0, 0), square(1, 0), square(0, 1), square(1, 1)];

test('four squares tile a block of two by two', () => {
  assert.ok(draftBlock(drawn([2, 2], fourPatch)).ok);
});

test('a missing half square is a gap of its area, with a place inside it (checkvalues inline-gap: a hole must be refused)', () => {
  const outcome = draftBlock(drawn([2, 2], [...fourPatch.slice(0, 3), square(1, 1, 1, 0.5)]));
  assert.ok(!outcome.ok);
  const [gap] = outcome.problems;
  assert.ok(gap?.code === 'drafting/gap' && outcome.problems.length === 1);
  assert.ok(Math.abs(gap.area - 0.5) < 1e-9, `area ${gap.area}`); // 1 × 1/2, by hand
  assert.ok(gap.at[0] > 1 && gap.at[0] < 2 && gap.at[1] > 1.5 && gap.at[1] < 2);
});

test('two patches that lie half upon each other are named with the area between them', () => {
  const outcome = draftBlock(drawn([2, 1], [square(0, 0, 1.5, 1), square(1, 0)]));
  assert.ok(!outcome.ok);
  const [overlap] = outcome.problems;
  assert.ok(overlap?.code === 'drafting/overlap' && outcome.problems.length === 1);
  assert.deepEqual(overlap.patches, [0, 1]);
  assert.equal(overlap.path, '/blocks/0/patches/list/1');
  assert.ok(Math.abs(overlap.area - 0.5) < 1e-9); // 1/2 × 1, by hand
});

test('the same patch twice is an overlap and not a tiling, though areas could be made to agree', () => {
  const outcome = draftBlock(drawn([2, 1], [square(0, 0), square(0, 0)]));
  assert.ok(!outcome.ok);
  assert.deepEqual(outcome.problems.map((p) => p.code).sort(), ['drafting/gap', 'drafting/overlap']);
});

test('corners that miss by less than a millionth of the block are one corner; by more they are a gap', () => {
  const near = (miss: number) =>
    drawn(
      [2, 2],
      [
        ...fourPatch.slice(0, 3),
        [
          [1 + miss, 1],
          [2, 1],
          [2, 2],
          [1 + miss, 2],
        ],
      ],
    );
  assert.ok(draftBlock(near(1e-6)).ok);
  assert.ok(!draftBlock(near(1e-3)).ok);
});

test('corners that meet in the middle of a neighbour’s side still tile', () => {
  assert.ok(draftBlock(drawn([2, 2], [square(0, 0, 2, 1), square(0, 1), square(1, 1)])).ok);
});

test('a ring of four round a square tiles (it has no straight order, but that is no fault of the drawing)', () => {
  const ring = [square(0, 0, 2, 1), square(2, 0, 1, 2), square(1, 2, 2, 1), square(0, 1, 1, 2), square(1, 1)];
  assert.ok(draftBlock(drawn([3, 3], ring)).ok);
});

test('outlines listed the other way round are turned, and the order of listing changes nothing', () => {
  const there = draftBlock(drawn([2, 2], fourPatch));
  const back = draftBlock(
    drawn(
      [2, 2],
      fourPatch.toReversed().map((p) => p.toReversed()),
    ),
  );
  assert.ok(there.ok && back.ok);
  assert.deepEqual(
    there.value.patches.map((p) => p.points),
    back.value.patches.map((p) => p.points),
  );
});

/** A block cut up by random straight cuts across random parts: it tiles by construction. */
const cutUp = fc
  .array(fc.record({ part: fc.nat(50), share: fc.integer({ min: 1, max: 7 }), upright: fc.boolean() }), {
    maxLength: 12,
  })
  .map((cuts) => {
    let parts = [{ x: rational(0), y: rational(0), w: rational(8), h: rational(8) }];
    for (const cut of cuts) {
      const index = cut.part % parts.length;
      const part = parts[index] as (typeof parts)[number];
      const share = rational(cut.share, 8);
      const w = cut.upright ? part.w.mul(share) : part.w;
      const h = cut.upright ? part.h : part.h.mul(share);
      const rest = cut.upright
        ? { x: part.x.add(w), y: part.y, w: part.w.sub(w), h: part.h }
        : { x: part.x, y: part.y.add(h), w: part.w, h: part.h.sub(h) };
      parts = [...parts.slice(0, index), { ...part, w, h }, rest, ...parts.slice(index + 1)];
    }
    return parts;
  });

test('random straight-cut drawings tile; with one patch left out the gap has its area, with one grown they overlap', () => {
  fc.assert(
    fc.property(cutUp, fc.nat(50), (parts, pick) => {
      const design = (list: typeof parts): BlockDesign => ({
        ...drawn([8, 8], []),
        shape: {
          kind: 'patches',
          size: [rational(8), rational(8)],
          grid: [rational(8), rational(8)],
          patches: list.map(({ x, y, w, h }) => ({
            tone: 't',
            corners: [
              [x, y],
              [x.add(w), y],
              [x.add(w), y.add(h)],
              [x, y.add(h)],
            ] as const,
          })),
        },
      });
      const whole = draftBlock(design(parts));
      assert.ok(whole.ok);
      const area = whole.value.patches.reduce((all, p) => all + signedArea(p.points), 0);
      assert.ok(Math.abs(area - 64) < 1e-9);
      const left = parts[pick % parts.length] as (typeof parts)[number];
      const without = draftBlock(design(parts.filter((p) => p !== left)));
      assert.ok(!without.ok);
      const missing = without.problems.reduce((all, p) => all + (p.code === 'drafting/gap' ? p.area : Number.NaN), 0);
      assert.ok(Math.abs(missing - left.w.mul(left.h).valueOf()) < 1e-6, `${missing}`);
    }),
    { seed: 7, numRuns: 150 },
  );
});
