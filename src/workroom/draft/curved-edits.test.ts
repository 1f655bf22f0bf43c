import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltDocument } from '#craft/design';
import {
  type CurveOutcome,
  cutAlong,
  type DrawnPatch,
  edgesBetween,
  edgeThrough,
  joined,
  laidCurve,
  mirroredIn,
  quarterRise,
  seamsBetween,
  slackOf,
  turnedIn,
} from '#craft/redrawing';
import { outlineArea } from '#ground/arc';
import { at } from '#ground/plane';
import { askBlock, askDrawn } from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import type { Block } from './block-edits.ts';
import { canTakeOut, drawnFrom, drawnIn, putPatches, putSeams } from './drawing-edits.ts';

const fabrics: QuiltDocument['fabrics'] = [
  { id: 'oat', colour: '#efe6d0' },
  { id: 'slate', colour: '#2f3c44' },
];

const quiltOf = (block: Block): JsonObject =>
  JSON.parse(
    JSON.stringify({
      format: 'seamstead-quilt',
      version: 1,
      unit: 'in',
      fabrics,
      blocks: [block],
      top: { rows: [[{ block: block.id }]] },
    }),
  ) as JsonObject;

const toldOf = (block: Block) => {
  const reply = askDrawn(quiltOf(block), block.id);
  assert.ok(reply.ok, JSON.stringify(reply));
  return reply.value;
};

/** A quarter of a circle in a corner; on the right a straight strip. */
const asPatches = (): Block => ({
  id: 'bend',
  size: ['6', '4'],
  patches: {
    grid: [6, 4],
    list: [
      { points: [[0, 0], [3, 0], { to: [0, 3], centre: [0, 0], sweep: 'clockwise' }], tone: 'slate' },
      {
        points: [[3, 0], [4, 0], [4, 4], [0, 4], [0, 3], { to: [3, 0], centre: [0, 0], sweep: 'counterclockwise' }],
        tone: 'oat',
      },
      {
        points: [
          [4, 0],
          [6, 0],
          [6, 4],
          [4, 4],
        ],
        tone: 'slate',
      },
    ],
  },
});

const asSeams = (): Block => ({
  id: 'bend',
  size: '4',
  drawing: {
    grid: [4, 4],
    seams: [[[3, 0], { to: [0, 3], centre: [0, 0], sweep: 'clockwise' }]],
    tonesAt: [
      { at: [1, 1], tone: 'slate' },
      { at: [3.5, 3.5], tone: 'oat' },
    ],
  },
});

/** What a block's pieces come to after it was written and read again, by tone: the area of each, and how it is joined. */
const areasOf = (block: Block): readonly string[] => {
  const { grid, patches } = drawnFrom(toldOf(block));
  return patches
    .map(({ points, arcs = [], tone }) => `${tone} ${(outlineArea({ points, arcs }) / grid[0] / grid[1]).toFixed(6)}`)
    .toSorted();
};

const share = (tone: string, squares: number, of: number): string => `${tone} ${(squares / of).toFixed(6)}`;

const put = (block: Block, laid: CurveOutcome): void => {
  if (!laid.ok) assert.fail(laid.fault.kind);
  const before = drawnFrom(toldOf(block));
  const { patches, ruled, out } = laid.value;
  if (block.drawing !== undefined) {
    assert.ok(canTakeOut(block.drawing, out));
    putSeams(block.drawing, { grid: before.grid, patches, bent: [ruled], out });
  } else putPatches(block, { before: drawnIn(block) ?? before, patches, colourings: {} });
};

const square = (form: 'patches' | 'drawing'): Block => ({
  id: 'bend',
  size: '4',
  ...(form === 'patches'
    ? { patches: { grid: [4, 4], list: [{ points: corners('0,0 4,0 4,4 0,4'), tone: 'oat' }] } }
    : { drawing: { grid: [4, 4], seams: [], tonesAt: [{ at: [2, 2], tone: 'oat' }] } }),
});

const corners = (text: string): [number, number][] =>
  text.split(' ').map((pair) => pair.split(',').map(Number) as [number, number]);

const kindOf = (laid: CurveOutcome): string => (laid.ok ? 'laid' : laid.fault.kind);

test('a curved patch is told with its arcs, and chords for them, alike from the document and from the worker', () => {
  const own = drawnIn(asPatches()) ?? assert.fail('not read');
  assert.deepEqual(own, drawnFrom(toldOf(asPatches())));
  assert.deepEqual(
    own.patches.map(({ arcs, points }) => [arcs?.length ?? 0, points.length > 20]),
    [
      [1, true],
      [1, true],
      [0, false],
    ],
  );
});

test('another tone leaves the arcs of a document as they were written', () => {
  const block = asPatches();
  const before = drawnIn(block) ?? assert.fail('not read');
  const patches = before.patches.map((patch, i): DrawnPatch => (i === 0 ? { ...patch, tone: 'oat' } : patch));
  putPatches(block, { before, patches, colourings: {} });
  const was = asPatches().patches?.list ?? [];
  assert.deepEqual(block.patches?.list, [{ ...was[0], tone: 'oat' }, was[1], was[2]]);
  assert.ok(askBlock(quiltOf(block), block.id).ok);
});

for (const form of ['patches', 'drawing'] as const) {
  test(`${form}: two marks on neighbouring edges divide a square by a quarter of a circle`, () => {
    const block = square(form);
    const [from, to] = [at(3, 0), at(0, 3)];
    const rise = quarterRise(Math.hypot(3, 3));
    // walked to the lower left, its left hand is the lower right: the corner is the centre
    put(block, laidCurve(drawnFrom(toldOf(block)), { from, to, rise: rise, way: 'rule' }));
    const quarter = (Math.PI * 9) / 4;
    assert.deepEqual(areasOf(block), [share('oat', quarter, 16), share('oat', 16 - quarter, 16)].toSorted());
    const text = JSON.stringify(block);
    assert.ok(text.includes('"centre":[0,0]'), text);
    const asked = askBlock(quiltOf(block), block.id);
    assert.ok(asked.ok);
    assert.equal(asked.value.joining, 'curved');
  });

  test(`${form}: an edge is bent with both its patches, bent otherwise, and made straight again`, () => {
    const block = square(form);
    const down = { from: at(2, 0), to: at(2, 4) };
    put(block, laidCurve(drawnFrom(toldOf(block)), { ...down, rise: 0, way: 'rule' }));
    assert.deepEqual(areasOf(block), [share('oat', 8, 16), share('oat', 8, 16)]);
    const whole = edgeThrough(drawnFrom(toldOf(block)), at(2, 1)) ?? assert.fail('no edge');
    assert.deepEqual([whole.from, whole.to].map(({ y }) => y).toSorted(), [0, 4]);
    for (const rise of [1, -0.75, 1.9]) {
      put(block, laidCurve(drawnFrom(toldOf(block)), { ...down, rise, way: 'bend' }));
      const high = Math.abs(rise);
      // a segment of a circle of chord 4
      const r = (4 + high ** 2) / (2 * high);
      const turn = 2 * Math.asin(Math.min(1, 2 / r));
      const bow = (r ** 2 * (turn - Math.sin(turn))) / 2;
      assert.deepEqual(areasOf(block), [share('oat', 8 - bow, 16), share('oat', 8 + bow, 16)].toSorted(), `${rise}`);
    }
    put(block, laidCurve(drawnFrom(toldOf(block)), { ...down, rise: 0, way: 'bend' }));
    assert.deepEqual(areasOf(block), [share('oat', 8, 16), share('oat', 8, 16)]);
    assert.equal(JSON.stringify(block).includes('centre'), false);
  });

  test(`${form}: two curves between the same corners make a melon, and each is bent by itself`, () => {
    const block = square(form);
    const ends = { from: at(0, 0), to: at(4, 4) };
    const rise = quarterRise(Math.hypot(4, 4));
    put(block, laidCurve(drawnFrom(toldOf(block)), { ...ends, rise, way: 'rule' }));
    put(block, laidCurve(drawnFrom(toldOf(block)), { ...ends, rise: -rise, way: 'rule' }));
    const half = 4 * Math.PI - 8;
    assert.deepEqual(
      areasOf(block),
      [share('oat', 8 - half, 16), share('oat', 8 - half, 16), share('oat', 2 * half, 16)].toSorted(),
    );
    assert.equal(edgesBetween(drawnFrom(toldOf(block)), ends.from, ends.to).length, 2);
    put(block, laidCurve(drawnFrom(toldOf(block)), { ...ends, rise: 0.5, way: 'bend' }));
    assert.equal(areasOf(block).length, 3);
  });
}

test('what a curve cannot do is told with its place', () => {
  const block = square('patches');
  const before = drawnFrom(toldOf(block));
  const laid = (x: number, y: number, u: number, v: number, rise: number, way: 'bend' | 'rule' = 'rule') =>
    laidCurve(before, { from: at(x, y), to: at(u, v), rise, way });
  assert.equal(kindOf(laid(0, 2, 4, 2, 2.5)), 'too-round');
  assert.deepEqual(laid(0, 1, 4, 1, 2), { ok: false, fault: { kind: 'leaves-block', at: at(2, -1) } });
  assert.equal(kindOf(laid(0, 0, 4, 0, -1, 'bend')), 'edge-of-block');
  assert.equal(kindOf(laid(1, 1, 3, 3, 1, 'bend')), 'no-edge');
  assert.equal(kindOf(laid(1, 1, 3, 3, 1)), 'no-patch');
  const { patches } = cutAlong(before.patches, [at(2, 0), at(2, 4)], slackOf(before.grid));
  const halves = { ...before, patches };
  const across = laidCurve(halves, { from: at(0, 3), to: at(4, 3), rise: 1, way: 'rule' });
  assert.deepEqual(across, { ok: false, fault: { kind: 'crosses-edge', at: at(2, 2) } });
  const quarters = {
    ...before,
    patches: cutAlong(patches, [at(2, 2), at(4, 2)], slackOf(before.grid)).patches,
  };
  const met = laidCurve(quarters, { from: at(2, 0), to: at(2, 4), rise: 1, way: 'bend' });
  assert.deepEqual(met, { ok: false, fault: { kind: 'meets-corner', at: at(2, 2) } });
});

test('a curved patch is moved, mirrored, turned, cut and joined with its arcs', () => {
  const block = asPatches();
  const before = drawnIn(block) ?? assert.fail('not read');
  const slack = slackOf(before.grid);
  const { patches } = cutAlong(before.patches, [at(0, 2), at(6, 2)], slack);
  assert.equal(patches.length, 6);
  assert.deepEqual(patches.map(({ arcs }) => arcs?.length ?? 0).toSorted(), [0, 0, 1, 1, 1, 1]);
  putPatches(block, { before, patches, colourings: {} });
  assert.ok(askBlock(quiltOf(block), block.id).ok);
  const now = drawnIn(block) ?? assert.fail('not read');
  const all = now.patches.map((_, i) => i);
  const turned = { grid: [4, 6] as const, patches: turnedIn({ ...now, grid: [6, 6] }, all) };
  const mirrored = { ...turned, patches: mirroredIn(turned.patches, all, 'left-right') };
  const other: Block = { ...block, size: ['4', '6'] };
  putPatches(other, { before: now, patches: mirrored.patches, grid: mirrored.grid, colourings: {} });
  assert.ok(askBlock(quiltOf(other), other.id).ok);
  assert.deepEqual(areasOf(other), areasOf(block));
  const round = joined(now.patches, [0, 1], slack) ?? assert.fail('they lie apart');
  const [quarter] = round.filter(({ arcs }) => arcs?.length === 2);
  assert.ok(quarter);
});

test('a seam is ruled across a block that is drawn by curved seams, and taken out again; its arc stays', () => {
  const block = asSeams();
  const drawing = block.drawing ?? assert.fail('no seams');
  const before = drawnFrom(toldOf(block));
  const slack = slackOf(before.grid);
  const run = [at(0, 2), at(4, 2)];
  const { patches } = cutAlong(before.patches, run, slack);
  assert.equal(patches.length, 4);
  putSeams(drawing, { grid: before.grid, patches, ruled: [run] });
  const now = drawnFrom(toldOf(block));
  assert.equal(now.patches.length, 4);
  const upper = now.patches.findIndex(({ points }) => points.some(({ x, y }) => x === 4 && y === 0));
  const lower = now.patches.findIndex(({ points }) => points.some(({ x, y }) => x === 4 && y === 4));
  const own = [upper, lower].flatMap((i) => now.patches[i] ?? []);
  const out = seamsBetween(own, slack);
  const fewer = joined(now.patches, [upper, lower], slack) ?? assert.fail('they lie apart');
  assert.ok(canTakeOut(drawing, out));
  putSeams(drawing, { grid: now.grid, patches: fewer, out });
  assert.equal(drawnFrom(toldOf(block)).patches.length, 3);
  assert.deepEqual(drawing.seams[0], asSeams().drawing?.seams[0]);
});

test('the curved seam between two patches is taken out', () => {
  const block = asSeams();
  const drawing = block.drawing ?? assert.fail('no seams');
  const before = drawnFrom(toldOf(block));
  const slack = slackOf(before.grid);
  const patches = joined(before.patches, [0, 1], slack) ?? assert.fail('they lie apart');
  const out = seamsBetween(before.patches, slack);
  assert.ok(canTakeOut(drawing, out));
  putSeams(drawing, { grid: before.grid, patches, out });
  assert.deepEqual(drawing.seams, []);
  assert.equal(areasOf(block).length, 1);
});

test('a curved block of the collection becomes a drawing with its arcs', () => {
  const block: Block = {
    id: 'bend',
    size: '4',
    from: 'drunkards-path',
    colourings: { default: { dark: 'slate', light: 'oat' } },
  };
  const told = toldOf(block);
  const before = drawnFrom(told);
  const was = areasOf(block);
  putPatches(block, { before, patches: before.patches, colourings: told.colourings });
  assert.equal(block.from, undefined);
  assert.ok(JSON.stringify(block.patches).includes('centre'));
  assert.deepEqual(areasOf(block), was);
});
