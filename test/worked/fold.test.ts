// Cloth cut folded selvage to selvage: strips, strokes and cloth counted by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { FabricPlan } from '#craft';
import { checkLayout, type Layout } from '#craft/cutting';
import { noteText } from '#paper/words';
import { only, plainBlock, planned, quilt, setOf, type Written } from '../documents/documents.ts';

const onFold = { cutting: { fold: true } };

/** So many squares cut 5 in, of cloth 40 in wide. */
const squares = (count: number, more: Written = {}): Written =>
  quilt({
    fabrics: [{ id: 'dark', colour: '#4a3023', usableWidth: 40 }],
    blocks: [plainBlock('square', 4.5, 4.5)],
    top: setOf('square', { across: count }),
    ...more,
  });

const foldOf = (plan: { readonly fabrics: readonly FabricPlan[] }, id = 'dark') => {
  const { fold } = plan.fabrics.find((fabric) => fabric.id === id) as FabricPlan;
  assert.ok(fold);
  return fold;
};

test('full strips are cut in fewer strokes for no more cloth', () => {
  // by hand: 16 squares are two strips of eight: two strokes for the strips and seven in each, 16; on the fold two and
  // four in each, 10, for the last square and its twin hang together at the fold until it is cut
  const { ways, opened, chosen } = foldOf(planned(squares(16)));
  assert.deepEqual(ways, [{ length: 10, amount: 0.375, cost: null, strokes: 10 }]);
  assert.deepEqual(opened, { length: 10, amount: 0.375, cost: null, strokes: 16 });
  assert.equal(chosen, null);
});

test('an odd piece is cut from a strip that is opened', () => {
  // by hand: nine squares are four pairs, one strip of half the width, and one square in a strip that is opened: as long as
  // the two strips of the least layout
  const plan = planned(squares(9, onFold));
  const { chosen } = foldOf(plan);
  assert.deepEqual(
    [chosen?.folded, chosen?.open].map((layout) => layout?.strips.map(({ parts }) => parts.length)),
    [[4], [1]],
  );
  assert.equal(chosen?.folded.width, 20);
  const { laid } = only(plan.fabrics);
  assert.deepEqual(
    laid.layout.strips.map(({ parts }) => parts.map(({ at }) => at)),
    [[0, 5, 10, 15, 20, 25, 30, 35], [0]],
  );
  const note = plan.notes.find(({ code }) => code === 'cutting/on-fold');
  assert.ok(note);
  // by hand: opened 1 + 7 and 1 + 1; on the fold 1 + 4, opened 1 + 1
  assert.equal(
    noteText(note, 'in'),
    'Cutting “dark” on the fold takes no more of it and saves 3 strokes of the blade.',
  );
});

test('a piece wider than half the cloth is never cut on the fold', () => {
  // by hand: of pieces cut 24 in wide one lies in a strip, and two lie one below the other
  const wide = quilt({
    ...squares(2),
    blocks: [plainBlock('square', 23.5, 23.5)],
    top: setOf('square', { across: 2 }),
  } as never);
  assert.equal(only(planned(wide).fabrics).fold, null);
});

/** Two hooks about each other; the dark one has a long arm above and a short one at the left. */
const hook = (id: string, mirror: boolean): Written => {
  const corners = (points: readonly (readonly [number, number])[]): unknown =>
    mirror ? points.map(([x, y]) => [4 - x, y]).toReversed() : points;
  const dark = [
    [0, 0],
    [3, 0],
    [3, 1],
    [1, 1],
    [1, 2],
    [0, 2],
  ] as const;
  const light = [
    [3, 0],
    [4, 0],
    [4, 2],
    [1, 2],
    [1, 1],
    [3, 1],
  ] as const;
  return {
    id,
    size: [8, 4],
    patches: {
      grid: [4, 2],
      list: [
        { points: corners(dark), tone: 'dark' },
        { points: corners(light), tone: 'light' },
      ],
    },
  };
};

const templates = (left: number, right: number, cloth: Written = {}) =>
  planned(
    quilt({
      fabrics: [
        { id: 'dark', colour: '#4a3023', usableWidth: 40, ...cloth },
        { id: 'light', colour: '#fff', usableWidth: 40 },
      ],
      blocks: [hook('left', false), hook('right', true)],
      top: {
        rows: [
          [
            ...Array.from({ length: left }, () => ({ block: 'left' })),
            ...Array.from({ length: right }, () => ({ block: 'right' })),
          ],
        ],
      },
      ...onFold,
    }),
  );

const layersOf = (plan: { readonly fabrics: readonly FabricPlan[] }): readonly number[] => {
  const fold = plan.fabrics.find(({ id }) => id === 'dark')?.fold ?? null;
  const pieces = (layout: Layout | undefined): number =>
    (layout?.strips ?? []).reduce((all, { parts }) => all + parts.reduce((n, part) => n + part.pieces.length, 0), 0);
  return fold === null ? [0, 0] : [pieces(fold.chosen?.folded), pieces(fold.chosen?.open)];
};

test('mirror-image templates lie under one another only where both are wanted', () => {
  // by hand: one of each hand are a pair, one of one hand is none; without a right side four
  // alike lie side by side in one strip, two under two: in boxes of two the strip would be higher
  assert.deepEqual(layersOf(templates(1, 1)), [1, 0]);
  assert.deepEqual(layersOf(templates(1, 0)), [0, 0]);
  assert.deepEqual(layersOf(templates(2, 2, { reversible: true })), [2, 0]);
});

test('a one-way print along the selvages is cut on the fold, one across them is not', () => {
  const fold = (printRuns: string) =>
    only(
      planned(
        squares(16, { fabrics: [{ id: 'dark', colour: '#4a3023', usableWidth: 40, print: 'one-way', printRuns }] }),
      ).fabrics,
    ).fold;
  assert.equal(fold('lengthwise')?.ways[0]?.strokes, 10);
  assert.equal(fold('crosswise'), null);
});

test('on the fold nothing is cut twice or lost, folded strips are symmetric, and no bound is passed', () => {
  const side = fc.integer({ min: 4, max: 30 }).map((n) => n / 2);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(side, side, fc.integer({ min: 1, max: 5 })), { minLength: 1, maxLength: 4 }),
      (list) => {
        const document = quilt({
          fabrics: [{ id: 'dark', colour: '#4a3023', usableWidth: 42 }],
          blocks: list.map(([w, h], i) => plainBlock(`b${i}`, w, h)),
          top: {
            set: 'sections',
            sections: {
              down: list.map(([w, , n], i) => ({
                across: [
                  ...Array.from({ length: n }, () => ({ block: `b${i}` })),
                  // a strip fills up the row to one width
                  { strip: 'dark', width: 200 - n * w },
                ],
              })),
            },
          },
          ...onFold,
        });
        const { laid, pieces, fold } = only(planned(document).fabrics);
        const demands = pieces.map(({ cut, count }) => ({ across: cut[0], along: cut[1], count, mayTurn: true }));
        assert.deepEqual(checkLayout({ layout: laid.layout, width: laid.layout.width, demands }), []);
        assert.ok(laid.bound <= laid.layout.length + 1e-9);
        for (const strip of laid.layout.strips.slice(0, fold?.chosen?.folded.strips.length ?? 0)) {
          const spans = strip.parts.map(({ at, width }) => [at, at + width]);
          const mirrored = spans.map(([from, to]) => [42 - (to as number), 42 - (from as number)]).toReversed();
          assert.deepEqual(spans, mirrored);
        }
        if (fold !== null) for (const { length } of fold.ways) assert.ok(length >= laid.bound - 1e-9);
      },
    ),
    { seed: 83, numRuns: 40 },
  );
});
