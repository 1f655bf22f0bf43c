// The seam test: three strips sewn side by side and pressed say how wide the seams are. The middle strip shows what two allowances
// have left of it, the whole what four have.
import { type SizeModel, usualCare } from '#craft/accuracy';
import { type Length, type LengthProblem, length, type Unit } from '#craft/measure';
import { type Rational, toNumber } from '#ground/exact';
import { done, type Outcome, refused } from '#ground/outcome';
import { evidenceFor } from './evidence.ts';
import { habitAlone } from './explanations.ts';
import { finenessOf, lengthRead } from './readings.ts';
import { type Interval, weigh } from './weigh.ts';

/** What to cut and what it should measure. */
export interface SeamTest {
  readonly strips: 3;
  readonly cut: readonly [width: Length, long: Length];
  /** Of the middle strip from seam to seam, and of all three from edge to edge. */
  readonly middle: Length;
  readonly total: Length;
}

/** Strips that finish 1 in, in centimetres 3; our own length, enough to settle into the seam. */
const finishes: Readonly<Record<Unit, readonly [width: number, long: number]>> = { in: [1, 6], cm: [3, 15] };

/** @source S38a and S38b for strips of 1 1/2 in; docs/formulas.md#diagnosis */
export const seamTestFor = (seam: Length, unit: Unit): SeamTest => {
  const [width, long] = finishes[unit];
  return {
    strips: 3,
    cut: [length(width + 2 * seam), length(long)],
    middle: length(width),
    total: length(3 * (width + 2 * seam) - 4 * seam),
  };
};

export interface SeamTestFound {
  readonly test: SeamTest;
  readonly read: readonly { readonly part: TestPart; readonly size: Length }[];
  readonly fineness: Length;
  /** How much too wide each allowance is. */
  readonly allowance: Interval;
  readonly verdict: 'true' | 'wide' | 'narrow';
  /** Both were read, and no seam explains both. */
  readonly doubtful: boolean;
}

export type TestPart = 'middle' | 'total';

export type SeamTestProblem =
  | { readonly code: 'seam-test/unreadable'; readonly found: string }
  | { readonly code: 'seam-test/length'; readonly part: TestPart; readonly unit: Unit; readonly problem: LengthProblem }
  | {
      readonly code: 'seam-test/impossible';
      readonly part: TestPart;
      readonly found: Length;
      readonly expected: Length;
      readonly unit: Unit;
    };

/** @param written "middle 15/16, total 3 3/8": either or both */
export const readSeamTest = (
  written: string,
  of: { readonly seam: Length; readonly unit: Unit },
): Outcome<SeamTestFound, SeamTestProblem> => {
  const parts = written.split(/;|,(?!\d)/u).filter((text) => text.trim() !== '');
  if (parts.length === 0) return refused([{ code: 'seam-test/unreadable', found: written }]);
  const test = seamTestFor(of.seam, of.unit);
  const found = parts.map((text) => partFrom(text.trim(), test, of.unit));
  const problems = found.flatMap((one) => (one.ok ? [] : one.problems));
  if (problems.length > 0) return refused(problems);
  return done(
    foundFrom(
      found.flatMap((one) => (one.ok ? [one.value] : [])),
      test,
      of,
    ),
  );
};

interface ReadPart {
  readonly part: TestPart;
  readonly exact: Rational;
}

const partFrom = (text: string, test: SeamTest, unit: Unit): Outcome<ReadPart, SeamTestProblem> => {
  const [, named, size] = /^(middle|total)\s*[:=]?\s*(.+)$/iu.exec(text) ?? [];
  if (named === undefined || size === undefined) return refused([{ code: 'seam-test/unreadable', found: text }]);
  const part = named.toLowerCase() as TestPart;
  const read = lengthRead(size, unit);
  if (!read.ok) return refused([{ code: 'seam-test/length', part, unit, problem: read.problems[0] as LengthProblem }]);
  const found = length(toNumber(read.value));
  const expected = test[part];
  // no seam at all, or one twice as wide
  const most = part === 'middle' ? test.cut[0] - test.middle : 3 * test.cut[0] - test.total;
  if (Math.abs(found - expected) > most + 1e-9)
    return refused([{ code: 'seam-test/impossible', part, found, expected, unit }]);
  return done({ part, exact: read.value });
};

const foundFrom = (parts: readonly ReadPart[], test: SeamTest, { unit }: { readonly unit: Unit }): SeamTestFound => {
  const models = testModels(test);
  const fineness = finenessOf(
    parts.map(({ exact }) => exact),
    unit,
  );
  const read = parts.map(({ part, exact }) => ({ part, size: length(toNumber(exact)) }));
  const readings = read.map(({ part, size }) => ({ step: part === 'middle' ? 0 : 1, way: 'across' as const, size }));
  const evidence = evidenceFor({ readings, models, fineness, care: usualCare(unit) });
  const [weighed] = weigh(evidence, [habitAlone]);
  if (weighed === undefined) throw new Error('a seam test goes over its seams');
  const { allowance, chiSquare, degrees } = weighed;
  const isTrue = allowance.low <= 0 && allowance.high >= 0;
  return {
    test,
    read,
    fineness,
    allowance,
    verdict: isTrue ? 'true' : allowance.value > 0 ? 'wide' : 'narrow',
    doubtful: degrees > 0 && chiSquare > 9,
  };
};

/** The middle strip, and all three, as sizes of a block of three pieces. */
const testModels = ({ middle, total }: SeamTest): readonly SizeModel[] => {
  const cut = (patch: number) => ({ patch, piece: `${patch}`, side: 0 as const, grows: 1 });
  const seams = (shrinks: number) => [
    { step: 0, between: [0, 1] as const, shrinks },
    { step: 1, between: [1, 2] as const, shrinks },
  ];
  const line = [
    { x: 0, y: 0 },
    { x: 1, y: 0 },
  ] as const;
  return [
    { step: 0, way: 'across', drawn: middle, expected: middle, cuts: [cut(1)], seams: seams(1 / 2), line },
    { step: 1, way: 'across', drawn: total, expected: total, cuts: [cut(0), cut(1), cut(2)], seams: seams(1), line },
  ];
};
