import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { BlockDesign, GridRun, PatchesDesign } from '#craft/design';
import { type DraftedBlock, draftBlock } from '#craft/drafting';
import { length } from '#craft/measure';
import { arcLength, type Edge, edgeLength, edgesOf } from '#ground/arc';
import { fromDecimal } from '#ground/exact';
import { hollowHand } from './hollow-hand.ts';
import { type PiecedBlock, pieceBlock } from './index.ts';

type Pair = readonly [number, number];
type Entry = Pair | { readonly to: Pair; readonly centre: Pair; readonly clockwise: boolean };

const place = ([x, y]: Pair): readonly [ReturnType<typeof fromDecimal>, ReturnType<typeof fromDecimal>] => [
  fromDecimal(x),
  fromDecimal(y),
];

const run = (entries: readonly Entry[]): GridRun => ({
  corners: entries.map((entry) => place('to' in entry ? entry.to : entry)),
  arcs: entries.flatMap((entry, i) =>
    'to' in entry
      ? [{ edge: (i + entries.length - 1) % entries.length, centre: place(entry.centre), clockwise: entry.clockwise }]
      : [],
  ),
});

const drafted = (of: {
  readonly size: Pair;
  readonly patches: readonly (readonly [tone: string, outline: readonly Entry[]])[];
}): DraftedBlock => {
  const shape: PatchesDesign = {
    kind: 'patches',
    size: place(of.size),
    grid: place(of.size),
    patches: of.patches.map(([tone, entries]) => ({ tone, ...run(entries) })),
  };
  const design: BlockDesign = { id: 'b', title: 'B', path: '', shape, colourings: { default: {} } };
  const outcome = draftBlock(design);
  assert.ok(outcome.ok, JSON.stringify(outcome.ok ? '' : outcome.problems));
  return outcome.value;
};

const pieced = (block: DraftedBlock): PiecedBlock =>
  pieceBlock({
    block,
    fabrics: block.patches.map(({ tone }) => tone),
    lightness: (tone) => (tone === 'dark' ? 30 : 90),
    seam: length(0.25),
  });

const round = (to: Pair, centre: Pair): Entry => ({ to, centre, clockwise: true });
const hollow = (to: Pair, centre: Pair): Entry => ({ to, centre, clockwise: false });
const near = (found: number, expected: number): void =>
  assert.ok(Math.abs(found - expected) < 1e-9, `found ${found}, expected ${expected}`);

test('a quarter of a circle and what is left of its square are one curved seam, the hollow piece on top', () => {
  const block = drafted({
    size: [4, 4],
    patches: [
      ['dark', [[0, 0], [3, 0], round([0, 3], [0, 0])]],
      ['light', [hollow([3, 0], [0, 0]), [4, 0], [4, 4], [0, 4], [0, 3]]],
    ],
  });
  const { joining, steps, kinds } = pieced(block);
  const [step, ...more] = steps;
  assert.ok(step && more.length === 0);
  assert.equal(joining, 'curved');
  const parts = step.join.map((part) => ('piece' in part ? kinds[part.piece]?.fabric : null));
  assert.deepEqual([step.kind, parts, step.corners], ['curved', ['dark', 'light'], 0]);
  near(step.seam, (3 * Math.PI) / 2);
  assert.deepEqual(step.unfinished, [4.5, 4.5]);
  // to the lower right of the other, which is turned so that this lies right: an eighth back
  near(step.heading, 45);
  near(step.machineTurn, 315);
});

test('a melon takes its two sides one after the other, and both are one kind of piece', () => {
  const block = drafted({
    size: [4, 4],
    patches: [
      ['dark', [round([0, 0], [4, 0]), round([4, 4], [0, 4])]],
      ['light', [hollow([0, 0], [0, 4]), [4, 0], [4, 4]]],
      ['light', [[0, 0], hollow([4, 4], [4, 0]), [0, 4]]],
    ],
  });
  const { steps, kinds, joining } = pieced(block);
  assert.deepEqual([joining, kinds.map(({ perBlock }) => perBlock)], ['curved', [1, 2]]);
  assert.deepEqual(
    steps.map(({ kind }) => kind),
    ['curved', 'curved'],
  );
  // box of the melon and one side, by hand: the whole square and an allowance round it
  assert.deepEqual(steps[0]?.unfinished, [4.5, 4.5]);
});

test('a seam of several arcs, smooth from one to the next, is sewn in one run; with a corner in it it is set in', () => {
  const wave = (second: Entry, third: Entry): PiecedBlock =>
    pieced(
      drafted({
        size: [8, 8],
        patches: [
          ['dark', [[0, 0], [8, 0], [8, 4], second, third]],
          ['light', [[0, 4], ...opposite(third, second), [8, 8], [0, 8]]],
        ],
      }),
    );
  const opposite = (third: Entry, second: Entry): readonly Entry[] => [
    { ...(third as Exclude<Entry, Pair>), to: [4, 4], clockwise: !(third as Exclude<Entry, Pair>).clockwise },
    { ...(second as Exclude<Entry, Pair>), to: [8, 4], clockwise: !(second as Exclude<Entry, Pair>).clockwise },
  ];
  const smooth = wave(round([4, 4], [6, 4]), hollow([0, 4], [2, 4]));
  assert.deepEqual(
    smooth.steps.map(({ kind, corners }) => [kind, corners]),
    [['curved', 0]],
  );
  near(smooth.steps[0]?.seam as number, 4 * Math.PI);
  // two bows on one hand meet in a cusp
  const pointed = wave(round([4, 4], [6, 4]), round([0, 4], [2, 4]));
  assert.deepEqual(
    pointed.steps.map(({ kind, corners }) => [kind, corners]),
    [['set-in', 1]],
  );
  near(pointed.steps[0]?.seam as number, 4 * Math.PI);
});

/** Cells of 4 with a quarter of a circle in one corner each, in one of two cloths. */
const cells = fc.tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 })).chain(([columns, rows]) =>
  fc.record({
    columns: fc.constant(columns),
    rows: fc.constant(rows),
    list: fc.array(fc.record({ turn: fc.nat(3), radius: fc.constantFrom(2, 3, 4), dark: fc.boolean() }), {
      minLength: columns * rows,
      maxLength: columns * rows,
    }),
  }),
);

const quarterTurned = ([x, y]: Pair, times: number): Pair =>
  times === 0 ? [x, y] : quarterTurned([4 - y, x], times - 1);

test('blocks of quarter circles are joined by curved seams, one a cell, and straight ones between the cells', () => {
  fc.assert(
    fc.property(cells, ({ columns, rows, list }) => {
      const patches = list.flatMap(({ turn, radius, dark }, i) => {
        const put = (p: Pair): Pair => {
          const [x, y] = quarterTurned(p, turn);
          return [x + 4 * (i % columns), y + 4 * Math.floor(i / columns)];
        };
        const rest: readonly Pair[] =
          radius === 4
            ? [[4, 4]]
            : [
                [4, 0],
                [4, 4],
                [0, 4],
              ];
        return [
          [dark ? 'dark' : 'light', [put([0, 0]), put([radius, 0]), round(put([0, radius]), put([0, 0]))]],
          [dark ? 'light' : 'dark', [hollow(put([radius, 0]), put([0, 0])), ...rest.map(put), put([0, radius])]],
        ] as const;
      });
      const block = drafted({ size: [4 * columns, 4 * rows], patches });
      const { steps, kindOf, kinds } = pieced(block);
      const times = (kind: string): number =>
        steps.reduce((all, step) => all + (step.kind === kind ? step.perBlock : 0), 0);
      assert.deepEqual([times('curved'), times('straight'), times('set-in')], [list.length, list.length - 1, 0]);
      // every patch of a radius and a cloth is one kind, however it lies
      const different = new Set(list.flatMap(({ radius, dark }) => [`${radius} ${dark} in`, `${radius} ${dark} out`]));
      assert.equal(kinds.length, different.size);
      assert.equal(kindOf.length, block.patches.length);
      // seams are half of what all patches have round them less the block's own edge
      const around = block.patches
        .flatMap(({ points, arcs = [] }): readonly Edge[] => edgesOf({ points, arcs }))
        .reduce((all, edge) => all + edgeLength(edge), 0);
      const sewn = steps.reduce((all, { seam, perBlock }) => all + seam * perBlock, 0);
      near(sewn, (around - 8 * (columns + rows)) / 2);
    }),
    { seed: 831, numRuns: 60 },
  );
});

test('the order in which patches are listed changes no seam of a curved block', () => {
  const list: readonly (readonly [string, readonly Entry[]])[] = [
    ['dark', [[0, 0], [3, 0], round([0, 3], [0, 0])]],
    ['light', [hollow([3, 0], [0, 0]), [4, 0], [4, 4], [0, 4], [0, 3]]],
    ['dark', [[4, 4], [4, 1], round([7, 4], [4, 4])]],
    ['light', [[4, 0], [8, 0], [8, 4], [7, 4], hollow([4, 1], [4, 4])]],
  ];
  const told = [list, list.toReversed()].map((patches) =>
    JSON.stringify(pieced(drafted({ size: [8, 4], patches })).steps),
  );
  assert.equal(told[0], told[1]);
});

test('the hollow hand of a seam is the one away from most of its centres; a wave has none', () => {
  const arc = { from: { x: 0, y: 3 }, to: { x: 3, y: 0 }, centre: { x: 0, y: 0 }, clockwise: false };
  assert.equal(hollowHand([arc]), 'right');
  const other = { from: { x: 3, y: 0 }, to: { x: 6, y: -3 }, centre: { x: 6, y: 0 }, clockwise: true };
  near(arcLength(arc), arcLength(other));
  assert.equal(hollowHand([arc, other]), null);
  assert.equal(hollowHand([]), null);
});
