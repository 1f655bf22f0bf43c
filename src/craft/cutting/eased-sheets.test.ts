import assert from 'node:assert/strict';
import { test } from 'node:test';
import { compareEase, effortOf } from '#craft/ease';
import { countsOf, type Kind, patternOf, type StripUse, stackOf } from '#craft/strips';
import { easedSheets } from './eased-sheets.ts';

const kind = (width: number, height: number, count: number): Kind => ({ width, height, count, mayTurn: false });
/** The first kind lies on another sheet. */
const kinds = [kind(7, 7, 2), kind(5, 3, 4), kind(5, 2, 4)];

const strip = (...parts: readonly (readonly [index: number, times: number])[]): StripUse => ({
  pattern: patternOf(
    parts.map(([index, times]) => ({
      stack: stackOf({ width: 20, kinds }, [{ kind: index, turned: false, times: 1 }]),
      times,
    })),
  ),
  times: 1,
});

/** On 20 across: each kind on a strip of its own, 5 together. */
const apart: readonly StripUse[] = [strip([1, 4]), strip([2, 4])];

const countsIn = (strips: readonly StripUse[]): readonly number[] =>
  kinds.map((_, i) => strips.reduce((sum, s) => sum + s.times * (countsOf(s.pattern, kinds.length)[i] ?? 0), 0));

test('a sheet keeps its pieces and its size, and is cut with less work', () => {
  const uses = [{ sheet: 0, times: 3, strips: apart }];
  const [use] = easedSheets({ kinds, sheets: [{ width: 20, height: 12 }], uses, solver: null });
  assert.ok(use !== undefined);
  assert.deepEqual([use.sheet, use.times, countsIn(use.strips)], [0, 3, [0, 4, 4]]);
  assert.ok(use.strips.reduce((sum, { pattern, times }) => sum + times * pattern.height, 0) <= 12);
  const job = { width: 20, kinds: kinds.map((k, i) => (i === 0 ? { ...k, count: 0 } : k)) };
  const [before, after] = [effortOf(job, apart), effortOf(job, use.strips)];
  assert.ok(compareEase(after, before) < 0, `${JSON.stringify(after)} against ${JSON.stringify(before)}`);
});

test('where the sheet has no room for an easier layout, it stays as it was found', () => {
  const [use] = easedSheets({
    kinds,
    sheets: [{ width: 20, height: 5 }],
    uses: [{ sheet: 0, times: 1, strips: apart }],
    solver: null,
  });
  assert.deepEqual(
    use?.strips.map(({ pattern, times }) => [pattern.height, times]),
    [
      [3, 1],
      [2, 1],
    ],
  );
});
