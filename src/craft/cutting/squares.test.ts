import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { type Standing, squaresFor } from '#craft/cutting';
import type { Print } from '#craft/fabric';

test('without direction any triangle of a square serves', () => {
  // by hand: 9 half-squares from 5 squares, 9 quarter-squares from 3
  assert.equal(squaresFor({ gives: 2, print: 'none', standing: [9, 0, 0, 0] }), 5);
  assert.equal(squaresFor({ gives: 4, print: 'none', standing: [9, 0, 0, 0] }), 3);
});

test('a one-way print leaves the opposite triangles of a square over', () => {
  // by hand: 8 right angles at the upper left and 2 at the lower right come from 8 squares, 3 on the other diagonal from 3
  assert.equal(squaresFor({ gives: 2, print: 'one-way', standing: [8, 3, 2, 0] }), 11);
  // by hand: one square cut twice gives each way once
  assert.equal(squaresFor({ gives: 4, print: 'one-way', standing: [5, 1, 4, 2] }), 5);
});

test('a two-way print lets opposite triangles stand for each other', () => {
  // by hand: 8 + 2 on one diagonal from 5 squares, 3 on the other from 2
  assert.equal(squaresFor({ gives: 2, print: 'two-way', standing: [8, 3, 2, 0] }), 7);
  // by hand: 9 upright in pairs ask for 5, 3 level for 2; a square gives a pair of each
  assert.equal(squaresFor({ gives: 4, print: 'two-way', standing: [5, 1, 4, 2] }), 5);
});

/** What one square may give, as counts by the way they lie; found by trying every way to use it. */
const yieldsOf = (gives: 2 | 4, print: Print): readonly Standing[] => {
  const cuts: readonly (readonly number[])[] =
    gives === 4
      ? [[0, 1, 2, 3]]
      : [
          [0, 2],
          [1, 3],
        ];
  const mayStand = (way: number): readonly number[] => {
    if (print === 'none') return [0, 1, 2, 3];
    return print === 'two-way' ? [way, (way + 2) % 4] : [way];
  };
  return cuts.flatMap((ways) =>
    ways
      .reduce<readonly (readonly number[])[]>(
        (all, way) => all.flatMap((uses) => mayStand(way).map((use) => [...uses, use])),
        [[]],
      )
      .map((uses) => [0, 1, 2, 3].map((way) => uses.filter((use) => use === way).length) as unknown as Standing),
  );
};

/** Fewest squares, by trying every sequence of yields until nothing is missing. */
const fewestByTrying = (gives: 2 | 4, print: Print, standing: Standing): number => {
  const yields = yieldsOf(gives, print);
  let open = new Map([[standing.join(), standing as readonly number[]]]);
  for (let squares = 0; ; squares++) {
    if (open.has('0,0,0,0')) return squares;
    const next = new Map<string, readonly number[]>();
    for (const missing of open.values()) {
      for (const given of yields) {
        const left = missing.map((n, i) => Math.max(0, n - (given[i] ?? 0)));
        next.set(left.join(), left);
      }
    }
    open = next;
  }
};

test('the number of squares is that of trying every way to use them', () => {
  const few = fc.integer({ min: 0, max: 4 });
  fc.assert(
    fc.property(
      fc.constantFrom<2 | 4>(2, 4),
      fc.constantFrom<Print>('none', 'one-way', 'two-way'),
      fc.tuple(few, few, few, few),
      (gives, print, standing) => {
        assert.equal(squaresFor({ gives, print, standing }), fewestByTrying(gives, print, standing));
      },
    ),
    { seed: 31, numRuns: 150 },
  );
});
