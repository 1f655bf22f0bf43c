import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cutOutline } from '#craft/redrawing';
import { box, mergedBlock, type Tiling } from '#documents';
import { at, type Point, type Polygon, perimeter } from '#ground/plane';
import { adviceFor } from './index.ts';

const slack = 12e-6;

// The slow twin: its own lines and its own test for straight seams.

type Line = readonly [Point, Point];

const off = ([a, b]: Line, p: Point): number =>
  ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);

const near = 1e-6;

/** Straight seams join patches when a line along an edge has all of them on one side or the other, and so both sides again. */
const isStraight = (patches: readonly Polygon[]): boolean => {
  if (patches.length < 2) return true;
  for (const patch of patches) {
    for (const [i, a] of patch.entries()) {
      const line: Line = [a, patch[(i + 1) % patch.length] as Point];
      const left = patches.filter((one) => one.every((p) => off(line, p) < near));
      const right = patches.filter((one) => one.every((p) => off(line, p) > -near));
      if (left.length === 0 || right.length === 0 || left.length + right.length < patches.length) continue;
      return isStraight(left) && isStraight(right);
    }
  }
  return false;
};

const isCrossed = (patch: Polygon, line: Line): boolean =>
  patch.some((p) => off(line, p) > near) && patch.some((p) => off(line, p) < -near);

/** All parts that the whole line makes of a patch, and how long it is inside. */
const partsAlong = (patch: Polygon, [a, b]: Line): { readonly parts: readonly Polygon[]; readonly length: number } => {
  const [dx, dy] = [(b.x - a.x) * 100, (b.y - a.y) * 100];
  const parts = cutOutline(patch, [at(a.x - dx, a.y - dy), at(b.x + dx, b.y + dy)], slack);
  const length = (parts.reduce((all, part) => all + perimeter(part), 0) - perimeter(patch)) / 2;
  return { parts, length };
};

const linesOf = (patches: readonly Polygon[]): readonly Line[] => {
  const corners: Point[] = [];
  for (const p of patches.flat()) if (!corners.some((q) => Math.hypot(p.x - q.x, p.y - q.y) < near)) corners.push(p);
  const lines: Line[] = [];
  corners.forEach((a, i) => {
    for (const b of corners.slice(i + 1))
      if (!lines.some((line) => Math.abs(off(line, a)) < near && Math.abs(off(line, b)) < near)) lines.push([a, b]);
  });
  return lines;
};

interface CutBlock {
  readonly patches: readonly Polygon[];
  readonly length: number;
}

/** Each line through two corners, along any of the patches that it crosses. */
const cutsOf = (patches: readonly Polygon[]): readonly CutBlock[] =>
  linesOf(patches).flatMap((line) => {
    const crossed = patches
      .filter((patch) => isCrossed(patch, line))
      .map((patch) => ({ patch, ...partsAlong(patch, line) }));
    return Array.from({ length: 2 ** crossed.length - 1 }, (_, i): CutBlock => {
      const taken = crossed.filter((__, k) => (((i + 1) >> k) & 1) === 1);
      const whole = patches.filter((patch) => !taken.some((one) => one.patch === patch));
      return {
        patches: [...whole, ...taken.flatMap(({ parts }) => parts)],
        length: taken.reduce((all, one) => all + one.length, 0),
      };
    });
  });

const shortest = (lengths: readonly number[]): number => Math.min(Number.POSITIVE_INFINITY, ...lengths);

const leastOf = (patches: readonly Polygon[], lines: 1 | 2): number =>
  shortest(
    cutsOf(patches).map((cut) => {
      if (lines === 1) return isStraight(cut.patches) ? cut.length : Number.POSITIVE_INFINITY;
      return cut.length + leastOf(cut.patches, 1);
    }),
  );

/** Drawings within a rectangle that straight seams do not join. */
const notStraight = (
  tiling: Tiling,
  of: { readonly seeds: number; readonly most: number },
): readonly (readonly Polygon[])[] =>
  Array.from({ length: of.seeds }, (_, seed) => mergedBlock({ tiling, seed: seed + 1, most: of.most }).outlines).filter(
    (outlines) => !isStraight(outlines),
  );

const taken = (outlines: readonly Polygon[]): readonly Polygon[] =>
  (adviceFor(outlines, slack)?.lines ?? [])
    .flatMap(({ seams }) => seams)
    .reduce((patches, seam) => patches.flatMap((patch) => cutOutline(patch, seam, slack)), outlines);

test('where one line does, the shortest of all lines through two corners is advised, and the block is straight with it', () => {
  let found = 0;
  for (const tiling of ['turning about', 'eight-pointed', 'half-squares', 'squares'] as const) {
    for (const outlines of notStraight(tiling, { seeds: 30, most: 7 })) {
      const least = leastOf(outlines, 1);
      const advice = adviceFor(outlines, slack);
      assert.equal(advice?.lines.length === 1, Number.isFinite(least), `${tiling} ${JSON.stringify(outlines)}`);
      if (!Number.isFinite(least)) continue;
      found += 1;
      assert.ok(Math.abs((advice?.length ?? 0) - least) < 1e-5, `${tiling} ${advice?.length} for ${least}`);
      assert.ok(advice?.isLeast);
      assert.ok(isStraight(taken(outlines)), tiling);
    }
  }
  assert.ok(found > 40, `${found} drawings`);
});

test('where two lines do and one does not, two of the least length are advised', () => {
  let found = 0;
  for (const outlines of notStraight('squares', { seeds: 24, most: 5 })) {
    if (Number.isFinite(leastOf(outlines, 1))) continue;
    const least = leastOf(outlines, 2);
    const advice = adviceFor(outlines, slack);
    assert.equal(advice?.lines.length === 2, Number.isFinite(least));
    if (!Number.isFinite(least)) continue;
    found += 1;
    assert.ok(Math.abs((advice?.length ?? 0) - least) < 1e-5, `${advice?.length} for ${least}`);
    assert.ok(isStraight(taken(outlines)));
  }
  assert.ok(found > 0, `${found} drawings`);
});

test('a square with four rectangles turning about it is straight with one of its seams led on', () => {
  const ring = [box(0, 0, 2, 1), box(2, 0, 1, 2), box(1, 2, 2, 1), box(0, 1, 1, 2), box(1, 1, 1, 1)];
  const advice = adviceFor(ring, slack);
  // by hand: the upper seam, 2 long, is led on through the right-hand rectangle, 1 wide
  assert.deepEqual(advice?.lines, [{ seams: [[at(2, 1), at(3, 1)]] }]);
  assert.equal(advice.more, 1);
});

test('what straight seams join needs no advice', () => {
  assert.equal(adviceFor([box(0, 0, 1, 1), box(1, 0, 1, 1)], slack), null);
});
