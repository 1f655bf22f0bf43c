// What holds for the pressing of every quilt: the figures are those that are counted anew; no custom nests more; how the quilt
// lies changes nothing.

import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import fc from 'fast-check';
import { type BlockPlan, planQuilt, type QuiltPlan } from '#craft';
import { collection } from '#craft/collection';
import { type TopSeam, topSeams } from '#craft/piecing';
import type { Press } from '#craft/pressing';
import { pointInTop } from '#craft/setting';
import { meetingsFound, nestedOf, planned, quilt } from '#documents';
import type { Point, Polygon } from '#ground/plane';
import { type RandomQuilt, randomQuilt } from './random-quilts.ts';

interface SeamInTop {
  readonly path: Polygon;
  readonly heading: number;
  /** As planned, and as custom has it: toward the darker cloth, rows by turns. */
  readonly press: Press;
  readonly custom: Press;
}

const seamsOf = (plan: QuiltPlan): readonly SeamInTop[] => {
  const { set, pressing } = plan.top;
  const inBlocks = set.placed.flatMap((placed, place) => {
    const block = plan.blocks.find(
      ({ id, colouring, mirror }) => id === placed.block && colouring === placed.colouring && mirror === placed.mirror,
    ) as BlockPlan;
    const turn = ((placed.turn + (pressing.turns[place] as number)) % 360) as typeof placed.turn;
    // the entry's seams are mirrored already
    const lay = (p: Point): Point => pointInTop({ ...placed, turn, mirror: false }, block.finished, p);
    return block.seams.map(({ step, path, heading }): SeamInTop => {
      const { pressTo, otherWay, wish } = block.steps[step] as BlockPlan['steps'][number];
      return {
        path: path.map(lay),
        heading: heading + turn,
        press: pressing.variants[place] === 1 ? (otherWay ?? pressTo) : pressTo,
        custom: wish.toward,
      };
    });
  });
  const customOf = ({ wish: { along, wished } }: TopSeam): Press => (wished ? along : along === 1 ? 0 : 1);
  const own = topSeams(set).map(
    (seam, i): SeamInTop => ({ ...seam, press: pressing.presses[i] as Press, custom: customOf(seam) }),
  );
  return [...inBlocks, ...own];
};

const checkPlan = (plan: QuiltPlan, name = plan.quilt.title): void => {
  const seams = seamsOf(plan);
  const { width, height } = plan.top.set;
  const met = meetingsFound(seams, Math.max(width, height));
  const { all } = plan.top.pressing;
  assert.equal(all.meetings, met.length, `${name}: meetings`);
  const nested = nestedOf(
    met,
    seams.map(({ press }) => press),
  );
  assert.equal(all.nested, nested, `${name}: nested`);
  const custom = nestedOf(
    met,
    seams.map((seam) => seam.custom),
  );
  assert.ok(nested >= custom, `${name}: custom nests ${custom} of ${met.length}, the plan ${nested}`);
};

test('meetings and nested ones are those counted anew in the whole top, and custom never nests more', () => {
  let met = 0;
  fc.assert(
    fc.property(randomQuilt(), (document) => {
      const plan = planned(document as unknown as Readonly<Record<string, unknown>>);
      checkPlan(plan);
      met += plan.top.pressing.all.meetings;
    }),
    { numRuns: 40 },
  );
  assert.ok(met > 60, `${met} meetings`);
});

for (const name of readdirSync('examples').filter((file) => file.endsWith('.quilt.json'))) {
  test(`${name}: the figures are those counted anew, and custom never nests more`, () => {
    const outcome = planQuilt(readFileSync(`examples/${name}`, 'utf8'), { budget: { steps: 0 } });
    assert.ok(outcome.ok);
    checkPlan(outcome.value);
  });
}

const gridOf = (id: string, across: number, down: number) =>
  planned(
    quilt({
      blocks: [{ id, from: id, size: '12', colourings: { default: { accent: 'medium' } } }],
      top: { rows: Array.from({ length: down }, () => Array.from({ length: across }, () => ({ block: id }))) },
    }),
  );

test('edge to edge with blocks of the collection, custom never nests more', () => {
  for (const { id } of collection) checkPlan(gridOf(id, 2, 2), id);
});

test('rows of plain squares always nest everywhere: two ways by turns', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 7 }), (across, down) => {
      const square = {
        points: [
          [0, 0],
          [1, 0],
          [1, 1],
          [0, 1],
        ],
        tone: 'light',
      };
      const rows = Array.from({ length: down }, () => Array.from({ length: across }, () => ({ block: 'plain' })));
      const block = { id: 'plain', size: '4', patches: { grid: [1, 1], list: [square] } };
      const plan = planned(quilt({ blocks: [block], top: { rows } }));
      // by hand: every inner corner of the grid
      const corners = (across - 1) * (down - 1);
      assert.deepEqual(plan.top.pressing.all, { meetings: corners, nested: corners });
    }),
    { numRuns: 20 },
  );
});

test('seen in the mirror or upside down, a quilt nests as much', () => {
  fc.assert(
    fc.property(randomQuilt({ borders: 'none', finish: 'none' }), (document) => {
      const share = shareOf(document);
      assert.deepEqual(shareOf(mirrored(document)), share);
      assert.deepEqual(shareOf(turned(document)), share);
    }),
    { numRuns: 15 },
  );
});

const shareOf = (document: RandomQuilt) =>
  planned(document as unknown as Readonly<Record<string, unknown>>).top.pressing.all;

type Cell = RandomQuilt['top']['rows'][number][number];

const withRows = (document: RandomQuilt, rows: readonly (readonly Cell[])[]): RandomQuilt => ({
  ...document,
  top: { ...document.top, rows },
});

const quarters = [0, 90, 180, 270] as const;
const turn = (by: number) => quarters[(((by / 90) % 4) + 4) % 4] as 0 | 90 | 180 | 270;

const mirrored = (document: RandomQuilt): RandomQuilt =>
  withRows(
    document,
    document.top.rows.map((row) =>
      row
        .toReversed()
        .map((cell) => ('plain' in cell ? cell : { ...cell, mirror: !cell.mirror, turn: turn(-cell.turn) })),
    ),
  );

const turned = (document: RandomQuilt): RandomQuilt =>
  withRows(
    document,
    document.top.rows
      .toReversed()
      .map((row) =>
        row.toReversed().map((cell) => ('plain' in cell ? cell : { ...cell, turn: turn(cell.turn + 180) })),
      ),
  );
