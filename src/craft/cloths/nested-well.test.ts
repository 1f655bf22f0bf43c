import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { type ClothNature, cutFor } from '#craft/cutting';
import { length } from '#craft/measure';
import { rational } from '#ground/exact';
import { at, type Polygon } from '#ground/plane';
import { nestedWell } from './nested-well.ts';
import { quickLength } from './quick-length.ts';
import type { WantedPiece } from './wanted-pieces.ts';

const rule = { seam: length(0.25), ruler: rational(1, 8) };
const nature: ClothNature = {
  width: length(40),
  length: null,
  print: 'none',
  printRuns: 'lengthwise',
  reversible: false,
};
const natures = new Map([['oat', nature]]);

const wantOf = (outline: Polygon, count: number): WantedPiece => ({
  fabric: 'oat',
  cut: cutFor(outline, rule),
  lie: 'free',
  turn: null,
  count,
  path: '/blocks/0',
  use: { role: 'block', block: 'b', colouring: 'default', mirror: false, turn: null, label: 'A' },
});

const taken = (pieces: readonly WantedPiece[]): number => quickLength({ fabric: 'oat', natures, pieces });
const bare = (piece: WantedPiece): WantedPiece => ({ ...piece, cut: { ...piece.cut, ways: [], pair: null } });

const quarter = (least: number, most: number) => fc.integer({ min: 4 * least, max: 4 * most }).map((n) => n / 4);
const trapezoid = fc
  .record({ bottom: quarter(3, 12), top: quarter(1, 12), height: quarter(1, 6), lean: quarter(-4, 4) })
  .map(({ bottom, top, height, lean }): Polygon => [at(lean, 0), at(lean + top, 0), at(bottom, height), at(0, height)]);

test('pieces take no more cloth with what nests than with boxes alone, nor than with all that could nest', () => {
  const kinds = fc.array(fc.tuple(trapezoid, fc.integer({ min: 1, max: 20 })), { minLength: 1, maxLength: 3 });
  let letGo = 0;
  fc.assert(
    fc.property(kinds, (list) => {
      const pieces = list.map(([outline, count]) => wantOf(outline, count));
      const well = nestedWell({ pieces, natures });
      assert.ok(taken(well) <= taken(pieces) + 1e-9);
      assert.ok(taken(well) <= taken(pieces.map(bare)) + 1e-9);
      if (taken(well) < taken(pieces) - 1e-9) letGo++;
    }),
    { seed: 65, numRuns: 30 },
  );
  // a choice that never changes anything would not be one
  assert.ok(letGo > 0);
});
