import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseQuilt, type Quilt } from '#craft/design';
import { boxOf, signedArea } from '#ground/plane';
import { type DraftedBlock, draftBlock, fabricsOf } from './index.ts';

const quiltOf = (...blocks: readonly object[]): Quilt => {
  const read = parseQuilt(
    JSON.stringify({
      format: 'seamstead-quilt',
      version: 1,
      unit: 'in',
      fabrics: ['oat', 'sand', 'bark', 'brick'].map((id) => ({ id, colour: '#888888' })),
      blocks,
      top: { rows: [[{ block: (blocks.at(-1) as { readonly id: string }).id }]] },
    }),
  );
  assert.ok(read.ok, read.ok ? '' : JSON.stringify(read.problems));
  return read.value;
};

const lastOf = (quilt: Quilt): { readonly block: DraftedBlock; readonly fabrics: readonly string[] } => {
  const design = quilt.blocks.at(-1);
  assert.ok(design);
  const block = draftBlock(design);
  assert.ok(block.ok, block.ok ? '' : JSON.stringify(block.problems));
  const colouring = design.colourings.default ?? {};
  return { block: block.value, fabrics: block.value.patches.map((patch) => fabricsOf(patch, colouring)[0] as string) };
};

const boxes = (block: DraftedBlock): readonly (readonly number[])[] =>
  block.patches.map(({ points }) => {
    const { x, y, width, height } = boxOf(points);
    return [x, y, width, height];
  });

const four = { id: 'four', from: 'four-patch', size: '2', colourings: { default: { dark: 'bark', light: 'oat' } } };

const cabin = (id: string, more: object): object => ({
  id,
  recipe: {
    kind: 'log-cabin',
    centre: { block: 'four' },
    rounds: [{ width: '1/2', tones: ['sand', 'sand', 'brick', 'brick'] }],
  },
  ...more,
});

test('a pieced centre keeps its own size and stands in the middle; only its patches are the core', () => {
  const { block, fabrics } = lastOf(quiltOf(four, cabin('nest', {})));
  assert.deepEqual(block.size, [3, 3]);
  assert.deepEqual(block.added, ['left', 'top', 'right', 'bottom']);
  // by hand: four squares of 1 moved in by a log of 1/2 at the left and at the top; each log as long as what it meets
  assert.deepEqual(boxes(block), [
    [0.5, 0.5, 1, 1],
    [1.5, 0.5, 1, 1],
    [0.5, 1.5, 1, 1],
    [1.5, 1.5, 1, 1],
    [0, 0.5, 0.5, 2],
    [0, 0, 2.5, 0.5],
    [2.5, 0, 0.5, 2.5],
    [0, 2.5, 3, 0.5],
  ]);
  assert.deepEqual(fabrics, ['bark', 'oat', 'oat', 'bark', 'sand', 'sand', 'brick', 'brick']);
});

test('a tone of the centre is looked up in the cabin’s colouring before the centre’s own', () => {
  const { fabrics } = lastOf(quiltOf(four, cabin('nest', { colourings: { default: { dark: 'brick' } } })));
  assert.deepEqual(fabrics.slice(0, 4), ['brick', 'oat', 'oat', 'brick']);
});

test('cabins in cabins keep their order: the innermost first', () => {
  const outer = {
    id: 'outer',
    recipe: {
      kind: 'log-cabin',
      centre: { block: 'inner' },
      order: ['top', 'bottom'],
      rounds: [{ width: '1', tones: ['oat', 'bark'] }],
    },
  };
  const inner = {
    id: 'inner',
    recipe: {
      kind: 'log-cabin',
      centre: '1',
      centreTone: 'brick',
      order: ['right', 'left'],
      rounds: [{ width: '1', tones: ['oat', 'oat'] }],
    },
  };
  const { block } = lastOf(quiltOf(inner, outer));
  assert.deepEqual(block.added, ['right', 'left', 'top', 'bottom']);
  assert.deepEqual(boxes(block), [
    [1, 1, 1, 1],
    [2, 1, 1, 1],
    [0, 1, 1, 1],
    [0, 0, 3, 1],
    [0, 2, 3, 1],
  ]);
});

test('frames go on left, right, top, bottom, ring after ring, in their own cloth whatever the colouring says', () => {
  const framed = {
    ...four,
    id: 'framed',
    frame: [
      { width: '1', fabric: 'oat' },
      { width: '1/2', fabric: 'bark' },
    ],
    colourings: { default: { dark: 'bark', light: 'sand', oat: 'brick' } },
  };
  const { block, fabrics } = lastOf(quiltOf(framed));
  // by hand: 2 + 2 · 1 + 2 · 1/2
  assert.deepEqual(block.size, [5, 5]);
  assert.deepEqual(block.added, ['left', 'right', 'top', 'bottom', 'left', 'right', 'top', 'bottom']);
  assert.deepEqual(boxes(block).slice(4), [
    [0.5, 1.5, 1, 2],
    [3.5, 1.5, 1, 2],
    [0.5, 0.5, 4, 1],
    [0.5, 3.5, 4, 1],
    [0, 0.5, 0.5, 4],
    [4.5, 0.5, 0.5, 4],
    [0, 0, 5, 0.5],
    [0, 4.5, 5, 0.5],
  ]);
  assert.deepEqual(fabrics.slice(4), ['oat', 'oat', 'oat', 'oat', 'bark', 'bark', 'bark', 'bark']);
});

test('a place for a block made elsewhere has a size and no patches', () => {
  const { block } = lastOf(quiltOf({ id: 'panel', made: 'elsewhere', size: ['12', '9'] }));
  assert.deepEqual([block.size, block.patches, block.added], [[12, 9], [], null]);
});

test('equilateral triangles, diamonds and hexagons can be drawn as patches and by seams on a grid of root three', () => {
  // by hand: a hexagon of side 1 stands on a flat foot in a box of 2 × √3; its three long diagonals cut six triangles,
  // two of which make a diamond. Areas: √3/4 a triangle.
  const high = Math.sqrt(3);
  const half = high / 2;
  const corners = [
    [0.5, 0],
    [1.5, 0],
    [2, half],
    [1.5, high],
    [0.5, high],
    [0, half],
  ] as const;
  const ends = [
    [0, 0],
    [2, 0],
    [2, high],
    [0, high],
  ] as const;
  const outer = [
    [ends[0], corners[0], corners[5]],
    [ends[1], corners[2], corners[1]],
    [ends[2], corners[3], corners[2]],
    [ends[3], corners[5], corners[4]],
  ];
  const middle = [1, half] as const;
  const size = ['8', '6.92820323'];
  const patches = {
    id: 'patches',
    size,
    patches: {
      grid: [2, high],
      list: [
        ...outer.map((points) => ({ points, tone: 'oat' })),
        { points: [corners[0], corners[1], corners[2], middle], tone: 'bark' },
        { points: [corners[2], corners[3], middle], tone: 'sand' },
        { points: [corners[3], corners[4], corners[5], middle], tone: 'bark' },
        { points: [corners[5], corners[0], middle], tone: 'sand' },
      ],
    },
  };
  const drawing = {
    id: 'drawing',
    size,
    drawing: {
      grid: [2, high],
      seams: [
        [...corners, corners[0]],
        [corners[0], corners[3]],
        [corners[2], corners[5]],
      ],
      tonesAt: [
        ...outer.map(([a, b, c]) => ({
          at: [
            ((a?.[0] ?? 0) + (b?.[0] ?? 0) + (c?.[0] ?? 0)) / 3,
            ((a?.[1] ?? 0) + (b?.[1] ?? 0) + (c?.[1] ?? 0)) / 3,
          ],
          tone: 'oat',
        })),
        { at: [1.2, 0.3], tone: 'bark' },
        { at: [0.8, 1.4], tone: 'bark' },
        { at: [1.5, 1.1], tone: 'sand' },
        { at: [0.5, 0.6], tone: 'sand' },
      ],
    },
  };
  const shares = [patches, drawing].map((written) => {
    const { block } = lastOf(quiltOf(written));
    return block.patches
      .map(({ tone, points }) => `${tone} ${(signedArea(points) / (16 * half)).toFixed(6)}`)
      .toSorted();
  });
  // by hand, drawn at 4 to 1 and told in 16 · √3/2: a diamond has 1, a triangle half of it, a corner of the box a quarter
  const expected = [
    ...['bark', 'bark'].map((tone) => `${tone} 1.000000`),
    ...['oat', 'oat', 'oat', 'oat'].map((tone) => `${tone} 0.250000`),
    ...['sand', 'sand'].map((tone) => `${tone} 0.500000`),
  ].toSorted();
  assert.deepEqual(shares, [expected, expected]);
});

test('an eight-pointed star drawn by its seams on a grid of two and root two has the collection’s patches', () => {
  // by hand: diamonds of side 1 round the middle, their outer tips on the block's edge one unit from its corners
  const far = 1 + Math.SQRT2;
  const grid = 2 + Math.SQRT2;
  const middle = grid / 2;
  const inner = [
    [middle, middle - 1],
    [far, 1],
    [middle + 1, middle],
    [far, far],
    [middle, middle + 1],
    [1, far],
    [middle - 1, middle],
    [1, 1],
  ] as const;
  const tips = [
    [far, 0],
    [grid, 1],
    [grid, far],
    [far, grid],
    [1, grid],
    [0, far],
    [0, 1],
    [1, 0],
  ] as const;
  const seams = inner.flatMap((point, i) => [
    [[middle, middle], point],
    [tips[(i + 7) % 8], point, tips[i]],
  ]);
  const between = (...points: readonly (readonly number[] | undefined)[]) =>
    [0, 1].map((axis) => points.reduce((all, point) => all + (point?.[axis] ?? 0), 0) / points.length);
  const tonesAt = [
    ...inner.map((point, i) => ({ at: between([middle, middle], point, inner[(i + 1) % 8], tips[i]), tone: 'bark' })),
    ...[0, 2, 4, 6].map((i) => ({ at: between(inner[i], tips[i], tips[(i + 7) % 8]), tone: 'oat' })),
    ...[0, 1].flatMap((x) => [0, 1].map((y) => ({ at: [x * (grid - 1) + 0.5, y * (grid - 1) + 0.5], tone: 'oat' }))),
  ];
  const drawn = lastOf(quiltOf({ id: 'drawn', size: '12', drawing: { grid: [grid, grid], seams, tonesAt } })).block;
  const colourings = { default: { light: 'oat', dark: 'bark', medium: 'bark' } };
  const known = lastOf(quiltOf({ id: 'star', from: 'lemoyne-star', size: '12', colourings })).block;
  const outlines = ({ patches }: DraftedBlock): readonly string[] =>
    patches
      .map(({ points }) =>
        points
          .map(({ x, y }) => `${x.toFixed(6)},${y.toFixed(6)}`)
          .toSorted()
          .join(' '),
      )
      .toSorted();
  assert.deepEqual(outlines(drawn), outlines(known));
  assert.equal(drawn.patches.length, 16);
});
