// One worked figure, and how a figure that the program gives is held against it.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { near } from '../../documents/documents.ts';

export interface WorkedFigure<Inputs = unknown, Expected = unknown> {
  readonly id: string;
  /** What is computed. */
  readonly fn: string;
  readonly inputs: Inputs;
  readonly expected: Expected;
  readonly tolerance: number;
  /** In the source named, or worked from exact geometry. */
  readonly kind: 'published' | 'derived';
  readonly source: string;
}

export type Check = (of: WorkedFigure) => void;

/** How each `fn` is computed through the program. */
export type Checks = Readonly<Record<string, Check>>;

const fixture = new URL('../../fixtures/worked-figures.json', import.meta.url);

export const workedFigures = (JSON.parse(readFileSync(fixture, 'utf8')) as { readonly cases: readonly WorkedFigure[] })
  .cases;

/** A check of cases whose inputs and expected figures have these shapes: they are the fixture's, read as written. */
export const checkOf =
  <Inputs, Expected>(check: (of: WorkedFigure<Inputs, Expected>) => void): Check =>
  (of) =>
    check(of as WorkedFigure<Inputs, Expected>);

/** Every expected figure is among those found, and agrees within the case's tolerance. */
export const agrees = (found: object, { expected, tolerance }: WorkedFigure): void => {
  for (const [name, figure] of Object.entries(expected as object)) {
    assert.ok(name in found, `nothing found for ${name}`);
    same((found as Readonly<Record<string, unknown>>)[name], figure, tolerance);
  }
};

const same = (found: unknown, expected: unknown, tolerance: number): void => {
  if (typeof expected === 'number') {
    assert.equal(typeof found, 'number');
    near(found as number, expected, tolerance);
  } else if (Array.isArray(expected)) {
    assert.ok(Array.isArray(found));
    assert.equal(found.length, expected.length);
    expected.forEach((figure, i) => {
      same(found[i], figure, tolerance);
    });
  } else {
    assert.equal(found, expected);
  }
};
