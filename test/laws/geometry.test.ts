// What lies where, on random quilts, seen by a general-purpose library for polygons.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Clipper, EndType, FillRule, JoinType, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import type { QuiltPlan } from '#craft';
import { boxOf, hullOf, type Polygon, signedArea } from '#ground/plane';
import { near, planned } from '../documents/documents.ts';
import { randomQuilt } from './random-quilts.ts';

const precision = 6;

const union = (polygons: readonly Polygon[]): PathsD =>
  Clipper.unionD(
    polygons.map((polygon) => polygon.map(({ x, y }) => ({ x, y }))),
    [],
    FillRule.NonZero,
    precision,
  );

const holds = (law: (plan: QuiltPlan) => void, seed: number): void =>
  fc.assert(
    fc.property(randomQuilt(), (document) => law(planned({ ...document }))),
    { seed, numRuns: 60 },
  );

test('the patches of a block cover it once', () => {
  holds(({ blocks }) => {
    for (const { patches, finished } of blocks) {
      const whole = finished[0] * finished[1];
      near(Clipper.areaPathsD(union(patches.map(({ points }) => points))), whole, 1e-4 * whole);
      near(
        patches.reduce((all, { points }) => all + signedArea(points), 0),
        whole,
        1e-9 * whole,
      );
    }
  }, 71);
});

test('every unit of straight seams is convex, and its two parts meet along the seam told', () => {
  holds(({ blocks }) => {
    for (const block of blocks)
      for (const step of block.steps) {
        const outlines = (patches: readonly number[]) => patches.map((patch) => block.patches[patch]?.points ?? []);
        const joined = outlines(step.patches.flat());
        const hull = hullOf(joined.flat(), 1e-6);
        near(Clipper.areaPathsD(union(joined)), signedArea(hull), 1e-4 * signedArea(hull));
        const around = (polygons: readonly Polygon[]) => edgeLength(union(polygons));
        const inner = around(outlines(step.patches[0])) + around(outlines(step.patches[1])) - around(joined);
        near(step.seam, inner / 2, 1e-4 * inner);
      }
  }, 72);
});

const edgeLength = (paths: PathsD): number =>
  paths.reduce(
    (all, path) =>
      all +
      path.reduce((sum, a, i) => {
        const b = path[(i + 1) % path.length] ?? a;
        return sum + Math.hypot(b.x - a.x, b.y - a.y);
      }, 0),
    0,
  );

test('a check size is the box of the unit’s mitred offset, upright or along a slanted side where that box is smaller', () => {
  holds(({ blocks, quilt }) => {
    for (const block of blocks)
      for (const { patches, unfinished } of block.steps) {
        const joined = union(patches.flat().map((patch) => block.patches[patch]?.points ?? []));
        const grown = Clipper.inflatePathsD(
          joined,
          quilt.seam.valueOf(),
          JoinType.Miter,
          EndType.Polygon,
          1e4,
          precision,
        );
        const box = boxOf(grown.flat());
        const upright = Math.abs(box.width - unfinished[0]) < 1e-3 && Math.abs(box.height - unfinished[1]) < 1e-3;
        assert.ok(
          upright || unfinished[0] * unfinished[1] < box.width * box.height,
          `${unfinished} in ${box.width} x ${box.height}`,
        );
        assert.ok(unfinished[0] * unfinished[1] > Math.abs(Clipper.areaPathsD(grown)) - 1e-3);
      }
  }, 73);
});
