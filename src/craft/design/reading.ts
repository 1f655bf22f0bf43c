// What every reader of a part needs: the unit, a place to report to, and lengths read exactly.

import { finestCommonDenominator } from '#craft/limits';
import { type LengthProblem, parseLength, parseNumber, type Sign, type Unit } from '#craft/measure';
import { compare, type Rational, rational } from '#ground/exact';
import { done, type Outcome } from '#ground/outcome';
import { namePattern, type WrittenLength } from './document.ts';
import { foundText } from './found.ts';
import type { DesignProblem, Report } from './problems.ts';

export interface Reading {
  readonly unit: Unit;
  readonly report: Report;
  /** Exact, or reported and null. A missing length is its default. */
  readonly length: (wish: LengthAt) => Rational | null;
  /** A number of the block's grid, exact, or reported and null. */
  readonly place: (written: WrittenLength, path: string) => Rational | null;
  /** Reports a name that cannot be told apart from JavaScript's own; whether it is sound. */
  readonly name: (written: string, path: string) => boolean;
}

/** A place in the document that is being read. */
export interface Spot {
  readonly path: string;
  readonly reading: Reading;
}

interface LengthAt {
  readonly written: WrittenLength | undefined;
  readonly path: string;
  readonly sign?: Sign;
  readonly most?: Rational;
  readonly least?: Rational;
  readonly missing?: Rational;
}

export const readingFor = (unit: Unit, report: Report): Reading => {
  let common = 1n;
  const length = ({ written, path, sign = 'positive', most, least, missing }: LengthAt): Rational | null => {
    if (written === undefined) {
      if (missing !== undefined) return missing;
      report({ code: 'design/missing-key', path, key: path.slice(path.lastIndexOf('/') + 1) });
      return null;
    }
    const read = parseLength(written, most === undefined ? { unit, sign } : { unit, sign, most });
    if (!read.ok) {
      for (const problem of read.problems) report(lengthFault(problem, { path, unit }));
      return null;
    }
    if (least !== undefined && compare(read.value, least) < 0) {
      report({ code: 'design/too-small', path, found: foundText(written), least, unit });
      return null;
    }
    common = leastCommonMultiple(common, read.value.d);
    if (common > finestCommonDenominator) {
      report({ code: 'design/too-fine', path, found: foundText(written) });
      common = 1n;
      return null;
    }
    return read.value;
  };
  const place = (written: WrittenLength, path: string): Rational | null => {
    const read = asPlace(written);
    if (read.ok) return read.value;
    for (const problem of read.problems) {
      if (problem.fault === 'unreadable')
        report({ code: 'design/not-a-number', path, found: foundText(problem.found) });
      else report(lengthFault(problem, { path, unit }));
    }
    return null;
  };
  const name = (written: string, path: string): boolean => {
    // a name that breaks the pattern was reported by the schema already
    if (!(written in Object.prototype)) return namePattern.test(written);
    report({ code: 'design/bad-name', path, found: foundText(written) });
    return false;
  };
  return { unit, report, length, place, name };
};

const asPlace = (written: WrittenLength): Outcome<Rational, LengthProblem> => {
  // what is far below any corner tolerance is nothing: sines and cosines leave such crumbs
  if (typeof written === 'number' && Math.abs(written) < 1e-12) return done(rational(0));
  const read = parseNumber(written);
  if (read.ok && read.value.abs().compare(10_000) > 0) {
    return { ok: false, problems: [{ fault: 'too-large', found: `${written}`, most: rational(10_000) }], more: 0 };
  }
  return read;
};

const lengthFault = (problem: LengthProblem, at: { readonly path: string; readonly unit: Unit }): DesignProblem => {
  const { path, unit } = at;
  const found = foundText(problem.found);
  switch (problem.fault) {
    case 'unreadable':
      return { code: 'design/not-a-length', path, found };
    case 'improper':
      return { code: 'design/improper-fraction', path, found };
    case 'text-too-long':
      return { code: 'design/length-text-too-long', path, found, most: problem.most };
    case 'too-large':
      return { code: 'design/too-large', path, found, most: problem.most, unit };
    case 'zero-denominator':
    case 'not-positive':
    case 'negative':
    case 'too-fine':
      return { code: `design/${problem.fault}`, path, found };
  }
};

const leastCommonMultiple = (a: bigint, b: bigint): bigint => {
  let x = a;
  let y = b;
  while (y !== 0n) [x, y] = [y, x % y];
  return (a / x) * b;
};
