import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Clipper, FillRule, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import { at, hullOf, type Polygon, signedArea } from '#ground/plane';
import { coverFaults } from './cover.ts';

const outline: Polygon = [at(0, 0), at(12, 0), at(12, 12), at(0, 12)];
const precision = 6;

const pathsOf = (...polygons: readonly Polygon[]): PathsD =>
  polygons.map((polygon) => polygon.map(({ x, y }) => ({ x, y })));

const coordinate = fc.integer({ min: 0, max: 24 }).map((n) => n / 2);
const patch = fc
  .array(
    fc.tuple(coordinate, coordinate).map(([x, y]) => at(x, y)),
    { minLength: 3, maxLength: 6 },
  )
  .map((points) => hullOf(points, 1e-9))
  .filter((hull) => hull.length >= 3 && signedArea(hull) > 0.5);

const near = (found: number, expected: number): void =>
  assert.ok(Math.abs(found - expected) < 1e-3, `found ${found}, expected ${expected}`);

test('what is bare and what lies double on random drawings is what a general-purpose library finds', () => {
  fc.assert(
    fc.property(fc.array(patch, { minLength: 1, maxLength: 5 }), (patches) => {
      const faults = coverFaults({ outline, patches, slack: 12e-6 });
      const covered = Clipper.areaPathsD(Clipper.unionD(pathsOf(...patches), [], FillRule.NonZero, precision));
      near(
        faults.reduce((all, fault) => all + (fault.kind === 'gap' ? fault.area : 0), 0),
        144 - Math.abs(covered),
      );
      patches.forEach((a, i) => {
        patches.slice(i + 1).forEach((b, j) => {
          const shared = Clipper.areaPathsD(Clipper.intersectD(pathsOf(a), pathsOf(b), FillRule.NonZero, precision));
          const found = faults.find((f) => f.kind === 'overlap' && f.patches[0] === i && f.patches[1] === i + j + 1);
          near(found?.area ?? 0, Math.abs(shared));
        });
      });
    }),
    { seed: 61, numRuns: 200 },
  );
});

test('the place told of a fault lies in it', () => {
  const inside = (polygon: Polygon, [x, y]: readonly [number, number]): boolean =>
    polygon.every((a, i) => {
      const b = polygon[(i + 1) % polygon.length] ?? a;
      return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x) > 0;
    });
  fc.assert(
    fc.property(fc.array(patch, { minLength: 1, maxLength: 4 }), (patches) => {
      for (const fault of coverFaults({ outline, patches, slack: 12e-6 })) {
        const over = patches.flatMap((polygon, i) => (inside(polygon, fault.at) ? [i] : []));
        if (fault.kind === 'gap') assert.deepEqual(over, []);
        else assert.ok(fault.patches.every((i) => over.includes(i)));
      }
    }),
    { seed: 62, numRuns: 100 },
  );
});
