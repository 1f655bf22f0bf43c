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
import { type Met, meetingsFound, nestedOf, planned, quilt, roundsOn } from '#documents';
import type { Point, Polygon } from '#ground/plane';
import { type RandomQuilt, randomQuilt } from './random-quilts.ts';

interface SeamInTop {
  readonly path: Polygon;
  readonly heading: number;
  /** As planned, and as custom has it: toward the darker cloth, rows by turns. */
  readonly press: Press;
  readonly custom: Press;
  /** Of one name are pressed as one; kept ones whatever meets. */
  readonly name: string;
  readonly isKept: boolean;
  /** In which placed block; null for the top's own. */
  readonly place: number | null;
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
        name: JSON.stringify([block.id, block.colouring, block.mirror, pressing.variants[place], step]),
        isKept: wish.why === 'outward' || wish.why === 'hollow',
        place,
      };
    });
  });
  const customOf = ({ wish: { along, wished } }: TopSeam): Press => (wished ? along : along === 1 ? 0 : 1);
  const own = topSeams(set).map(
    (seam, i): SeamInTop => ({
      ...seam,
      press: pressing.presses[i] as Press,
      custom: customOf(seam),
      name: seam.wish.weight === 'kept' ? `seam ${i}` : seam.wish.run,
      isKept: seam.wish.weight === 'kept',
      place: null,
    }),
  );
  return [...inBlocks, ...own];
};

const checkPlan = (plan: QuiltPlan, name = plan.quilt.title): { readonly spun: number } => {
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
  checkReasons({ plan, seams, met, nested, name });
  return { spun: checkSpins(seams, Math.max(width, height), name) };
};

/** What comes to a spun seam, from both sides, runs round the way that it is spun, at one place alone. */
const checkSpins = (seams: readonly SeamInTop[], size: number, name: string): number => {
  const presses = seams.map(({ press }) => press);
  const spun = presses.flatMap((press, i) => (press === 'clockwise' || press === 'counterclockwise' ? [i] : []));
  for (const over of spun) {
    const rounds = roundsOn({ seams, over, size, presses });
    assert.equal(rounds.length, 1, `${name}: ${seams[over]?.name} is spun round ${rounds.length} places`);
    for (const isClockwise of rounds[0] ?? [])
      assert.equal(isClockwise, presses[over] === 'clockwise', `${name}: ${seams[over]?.name} is spun`);
  }
  return spun.length;
};

interface Counted {
  readonly plan: QuiltPlan;
  readonly seams: readonly SeamInTop[];
  readonly met: readonly Met[];
  readonly nested: number;
  readonly name: string;
}

/** Of what does not nest: the reason, found anew from the seams; and where another place is named, that it would cost one. */
const checkReasons = ({ plan, seams, met, nested, name }: Counted): void => {
  const presses = seams.map(({ press }) => press);
  const loose = met.filter((one) => nestedOf([one], presses) === 0);
  const isInside = ({ seams: [a, b] }: Met): boolean => seams[a]?.place !== null && seams[a]?.place === seams[b]?.place;
  const told = (list: readonly { readonly why: string }[]) => list.map(({ why }) => why).sort();
  const reasonsOf = (list: readonly Met[]) => list.map((one) => reasonFor(seams, one)).sort();
  const { between } = plan.top.pressing;
  assert.deepEqual(
    reasonsOf(loose.filter((one) => !isInside(one))),
    told(between.loose),
    `${name}: reasons between blocks`,
  );
  for (const block of plan.blocks) {
    const place = plan.top.set.placed.findIndex(
      (one, i) =>
        one.block === block.id &&
        one.colouring === block.colouring &&
        one.mirror === block.mirror &&
        plan.top.pressing.variants[i] === 0,
    );
    const own = loose.filter((one) => isInside(one) && seams[one.seams[0]]?.place === place);
    assert.deepEqual(reasonsOf(own), told(block.pressing.loose), `${name}: reasons in ${block.id}`);
  }
  // a seam turned round alone never nests more; what is spun holds others, and is left
  const spun = new Set(seams.filter(({ press }) => press !== 0 && press !== 1).map((seam) => entryOf(seam)));
  for (const one of loose) {
    if (reasonFor(seams, one) !== 'another') continue;
    for (const seam of one.seams.map((i) => seams[i] as SeamInTop)) {
      if (seam.isKept || spun.has(entryOf(seam))) continue;
      const other = seams.map(({ name: own, press }): Press => (own === seam.name ? (press === 0 ? 1 : 0) : press));
      const turnedRound = nestedOf(met, other);
      assert.ok(turnedRound <= nested, `${name}: ${seam.name} the other way nests ${turnedRound}, not ${nested}`);
    }
  }
};

const entryOf = ({ name, place }: SeamInTop): string => (place === null ? name : name.slice(0, name.lastIndexOf(',')));

const reasonFor = (seams: readonly SeamInTop[], one: Met): string => {
  const [a, b] = one.seams.map((seam) => seams[seam]) as [SeamInTop, SeamInTop];
  if (a.press === 'open' || b.press === 'open') return 'open';
  if (a.isKept && b.isKept) return 'kept';
  // both toward their second parts, they lie the same way
  return a.name === b.name && one.ways[0] === one.ways[1] ? 'one-seam' : 'another';
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
  const spun = collection.reduce((sum, { id }) => sum + checkPlan(gridOf(id, 2, 2), id).spun, 0);
  assert.ok(spun >= 20, `${spun} spun seams`);
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

test('turned by a quarter, a quilt nests as much', () => {
  let met = 0;
  fc.assert(
    fc.property(randomQuilt({ borders: 'none', finish: 'none' }), (document) => {
      const share = shareOf(document);
      assert.deepEqual(shareOf(quarterTurned(document)), share);
      met += share.meetings;
    }),
    { numRuns: 25 },
  );
  assert.ok(met > 40, `${met} meetings`);
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

/** A quarter clockwise: what was the left end of the last row is the first of the first. */
const quarterTurned = (document: RandomQuilt): RandomQuilt => {
  const { rows, sashing } = document.top;
  const across = (rows[0] as readonly Cell[]).length;
  const laid = Array.from({ length: across }, (_, column) =>
    rows
      .map((row) => row[column] as Cell)
      .toReversed()
      .map((cell): Cell => ('plain' in cell ? cell : { ...cell, turn: turn(cell.turn + 90) })),
  );
  const next = withRows(document, laid);
  if (sashing === undefined) return next;
  const width = { across: sashing.width.down, down: sashing.width.across };
  return { ...next, top: { ...next.top, sashing: { ...sashing, width } } };
};

const turned = (document: RandomQuilt): RandomQuilt =>
  withRows(
    document,
    document.top.rows
      .toReversed()
      .map((row) =>
        row.toReversed().map((cell) => ('plain' in cell ? cell : { ...cell, turn: turn(cell.turn + 180) })),
      ),
  );
