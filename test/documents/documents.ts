// Quilt documents for tests, as a maker would write them, and their plans. Figures stand in the tests, none here.

import assert from 'node:assert/strict';
import { inspect } from 'node:util';
import { planQuilt, type QuiltPlan } from '#craft';
import type { QuiltDocument } from '#craft/design';

export type Written = Readonly<Record<string, unknown>>;
export type Corner = readonly [x: number | string, y: number | string];

/** A whole document round these parts: inches, a quarter-inch seam, eighths, cloth of 40 in, unless the parts say otherwise. */
export const quilt = (parts: { readonly blocks: readonly Written[]; readonly top: Written } & Written): QuiltDocument =>
  ({ format: 'seamstead-quilt', version: 1, unit: 'in', fabrics: cloths(40), ...parts }) as unknown as QuiltDocument;

/** Light, middle and dark cloth of one usable width. */
export const cloths = (usableWidth: number): readonly Written[] => [
  { id: 'light', colour: '#f0e8d8', usableWidth },
  { id: 'medium', colour: '#b98a58', usableWidth },
  { id: 'dark', colour: '#4a3023', usableWidth },
];

/** A top of one block: `across` by `down` of it, edge to edge unless more is given. */
export const setOf = (
  block: string,
  { across = 1, down = 1, ...more }: { readonly across?: number; readonly down?: number } & Written = {},
): Written => ({
  rows: Array.from({ length: down }, () => Array.from({ length: across }, () => ({ block }))),
  ...more,
});

/** One rectangle of one cloth. */
export const plainBlock = (id: string, width: number | string, height: number | string, tone = 'dark'): Written => ({
  id,
  size: [width, height],
  patches: { grid: [1, 1], list: [{ points: rectangle(0, 0, 1, 1), tone }] },
});

/** A star of the collection, in all three cloths. */
export const star = (of: { readonly size: number | string | readonly string[]; readonly id?: string }): Written => ({
  id: 'star',
  from: 'ohio-star',
  colourings: { default: { light: 'light', medium: 'medium', dark: 'dark' } },
  ...of,
});

export const rectangle = (x: number, y: number, width: number, height: number): readonly Corner[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

/** Level strips of equal height, light and dark by turns. */
export const rails = (
  id: string,
  strips: { readonly count: number; readonly width: number; readonly height: number },
): Written => ({
  id,
  size: [strips.width, strips.count * strips.height],
  patches: {
    grid: [1, strips.count],
    list: Array.from({ length: strips.count }, (_, i) => ({
      points: rectangle(0, i, 1, 1),
      tone: i % 2 === 0 ? 'light' : 'dark',
    })),
  },
});

/** The plan, or a failed test that shows the problems. @param steps of layout search */
export const planned = (document: Written, steps = 0): QuiltPlan => {
  const outcome = planQuilt(document, { budget: { steps } });
  assert.ok(outcome.ok, outcome.ok ? '' : inspect(outcome.problems, { depth: 6 }));
  return outcome.value;
};

/** The only entry of the thing listed, and a failed test where there are more or none. */
export const only = <T>(list: readonly T[]): T => {
  assert.equal(list.length, 1);
  return list[0] as T;
};

export const near = (found: number, expected: number, tolerance = 1e-6): void =>
  assert.ok(Math.abs(found - expected) <= tolerance, `found ${found}, expected ${expected} within ${tolerance}`);
