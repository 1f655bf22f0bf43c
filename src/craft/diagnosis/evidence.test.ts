import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type Care, type SizeModel, usualCare } from '#craft/accuracy';
import { length } from '#craft/measure';
import { evidenceFor } from './evidence.ts';

const sixteenth = length(1 / 16);
const perfect: Care = { cut: length(0), seam: length(0) };

const near = (found: number, expected: number, within: number): void =>
  assert.ok(Math.abs(found - expected) <= within, `found ${found}, expected ${expected}`);

/** A size over one seam of its own, and others. */
const sizeOver = (seam: number, size: number, shrinks = 1, others: readonly number[] = []): SizeModel => ({
  step: seam,
  way: 'across',
  drawn: length(size),
  expected: length(size),
  cuts: [],
  seams: [seam, ...others].map((step) => ({ step, between: [step, step + 100], shrinks })),
  line: [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
  ],
});

/** How much two sizes vary together, of what one does by its reading. */
const alike = (a: SizeModel, b: SizeModel, care: Care): number => {
  const models = [a, b];
  const readings = models.map(({ step, way, drawn }) => ({ step, way, size: drawn }));
  const { covariance } = evidenceFor({ readings, models, fineness: sixteenth, care });
  return (covariance[0]?.[1] as number) / (sixteenth ** 2 / 12);
};

test('sizes that only the habit moves, and as far, are rounded alike; half a mark apart, half against each other', () => {
  // derived: the rounding errors of s and of s + r/2 over all places s between the marks have a correlation of −1/2, of s and s + r of 1;
  // four terms of the series come within 0.14 of both
  near(alike(sizeOver(1, 3), sizeOver(2, 5), perfect), 1, 0.14);
  near(alike(sizeOver(1, 3), sizeOver(2, 5 + 1 / 32), perfect), -0.5, 0.05);
});

test('what sets sizes apart, or other seams, rounds them each for itself', () => {
  // derived: seams within limits of 1/128 in set the two apart by √(2/3)/64 in, 0.204 of a mark: 6/π²·e^(−2π²·0.204²) = 0.27 and little more
  const seams = { cut: length(0), seam: usualCare('in').seam };
  near(alike(sizeOver(1, 3), sizeOver(2, 5), seams), 0.27, 0.01);
  near(alike(sizeOver(1, 3), sizeOver(2, 5, 2), perfect), 0, 1e-12);
});

test('a seam that both sizes go over does not set them apart', () => {
  // derived: they vary together by that seam, (1/64)²/3 against (1/16)²/12 of a reading, 1/4; their own seams set them apart as above
  const seams = { cut: length(0), seam: usualCare('in').seam };
  near(alike(sizeOver(1, 3, 1, [7]), sizeOver(2, 5, 1, [7]), seams), 1 / 4 + 0.27, 0.01);
});

test('readings of one size that differ speak for an unsteady hand, and such as do not speak against it', () => {
  const model = sizeOver(1, 3);
  const forSteady = (marks: number): number => {
    const readings = [3, 3 + marks / 16].map((size) => ({ step: 1, way: 'across' as const, size: length(size) }));
    const { roughnesses } = evidenceFor({ readings, models: [model], fineness: sixteenth, care: usualCare('in') });
    const [usual, , unsteady] = roughnesses.map(({ score }) => score) as [number, number, number];
    return unsteady - usual;
  };
  assert.ok(forSteady(0) > 0 && forSteady(1) < 0 && forSteady(2) < forSteady(1), [0, 1, 2].map(forSteady).join());
});
