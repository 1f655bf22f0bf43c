// A law of prints: every piece cut from a one-way cloth lies upright in the finished quilt, in every way of setting and with every
// border. The quilt is looked at as it is drawn, the cloth as it is cut, and the one held against the other.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { ClothPiece, FabricPlan, PieceUse, QuiltPlan, TopPiece } from '#craft';
import { boxOf, type Polygon, quarterTurned } from '#ground/plane';
import { planned, quilt, rectangle, type Written } from '../documents/documents.ts';

type Runs = 'lengthwise' | 'crosswise';

const seam = 0.25;
/** A cut may be a mark off. */
const mark = 1 / 8 + 1e-9;

/** Quarter turns clockwise that bring the quilt's upright to the print's upright on the cloth (docs/formulas.md#print-squares). */
const onCloth = (runs: Runs): number => (runs === 'lengthwise' ? 0 : 1);

const lies = (size: readonly [number, number], runs: Runs): readonly [number, number] =>
  runs === 'lengthwise' ? size : [size[1], size[0]];

const close = (found: readonly number[], expected: readonly number[], what: string): void =>
  found.forEach((value, i) => {
    assert.ok(Math.abs(value - (expected[i] as number)) <= mark, `${what}: ${found} is not ${expected}`);
  });

/** Which way the right angle of a triangle looks, in quarter turns from the upper left; of one on its long side, from the top. */
const standing = (points: Polygon): { readonly shape: 'half-square' | 'quarter-square'; readonly turn: number } => {
  const box = boxOf(points);
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  if (Math.abs(box.width - box.height) < 1e-6) {
    const corner = points.find((p, i) => {
      const [a, b] = [points[(i + 1) % 3], points[(i + 2) % 3]] as [(typeof points)[number], (typeof points)[number]];
      return Math.abs((a.x - p.x) * (b.x - p.x) + (a.y - p.y) * (b.y - p.y)) < 1e-6;
    }) as (typeof points)[number];
    const [left, top] = [corner.x < middle.x, corner.y < middle.y];
    return { shape: 'half-square', turn: top ? (left ? 0 : 1) : left ? 3 : 2 };
  }
  const along = box.width > box.height ? 'level' : 'upright';
  const onTop = points.filter((p) => Math.abs(p.y - box.y) < 1e-6).length === 2;
  const atRight = points.filter((p) => Math.abs(p.x - box.x - box.width) < 1e-6).length === 2;
  return { shape: 'quarter-square', turn: along === 'level' ? (onTop ? 0 : 2) : atRight ? 1 : 3 };
};

interface Found {
  readonly line: ClothPiece;
  readonly use: PieceUse;
  /** Outlines as they lie in the quilt; on point as if the block stood straight. */
  readonly outlines: readonly Polygon[];
}

const inBlocks = (plan: QuiltPlan, fabric: FabricPlan): readonly Found[] =>
  fabric.pieces.flatMap((line) =>
    line.for.flatMap((use): readonly Found[] => {
      if (use.block === null) return [];
      const entry = plan.blocks.find(
        ({ id, colouring, mirror }) => id === use.block && colouring === use.colouring && mirror === use.mirror,
      );
      assert.ok(entry);
      const places = plan.top.set.placed.filter(
        ({ block, colouring, mirror, turn }) =>
          block === use.block &&
          colouring === use.colouring &&
          mirror === use.mirror &&
          turn - (turn % 90) === use.turn,
      );
      const patches = entry.patches.filter(({ piece, fabric: cloth }) => piece === use.label && cloth === fabric.id);
      const quarters = (use.turn ?? 0) / 90;
      return [
        {
          line,
          use,
          outlines: places.flatMap(() => patches.map(({ points }) => points.map((p) => quarterTurned(p, quarters)))),
        },
      ];
    }),
  );

const sizeOf = (points: Polygon): readonly [number, number] => {
  const { width, height } = boxOf(points);
  return [width, height];
};

/** Rectangles lie as large as they are in the quilt; none is left out. */
const rectanglesStand = (found: readonly Found[], runs: Runs): void => {
  for (const { line, use, outlines } of found) {
    assert.equal(use.count, outlines.length, `${use.block} ${use.label}`);
    if (line.gives > 1) continue;
    for (const outline of outlines) {
      const [w, h] = sizeOf(outline);
      close(line.cut, lies([w + 2 * seam, h + 2 * seam], runs), `${use.block} ${use.label} turned ${use.turn}`);
    }
  }
};

/** Squares, as they are cut on the cloth, give the triangles that lie in the quilt so often each way. */
const trianglesStand = (
  lines: readonly ClothPiece[],
  wanted: ReadonlyMap<ClothPiece, readonly Polygon[]>,
  runs: Runs,
): void => {
  const bySquare = new Map<string, { readonly needs: number[]; readonly gives: number[] }>();
  for (const line of lines) {
    if (line.gives === 1) continue;
    const key = `${line.shape} ${line.cut[0]}`;
    const sum = bySquare.get(key) ?? { needs: [0, 0, 0, 0], gives: [0, 0, 0, 0] };
    bySquare.set(key, sum);
    // by hand: a diagonal that rises to the right parts an upper left from a lower right half
    const ways = line.shape === 'quarter-square' ? [0, 1, 2, 3] : line.diagonal === 'rising' ? [0, 2] : [1, 3];
    for (const way of ways) sum.gives[way] = (sum.gives[way] ?? 0) + line.count;
    for (const outline of wanted.get(line) ?? []) {
      const { shape, turn } = standing(outline);
      assert.equal(shape, line.shape);
      const way = (turn + onCloth(runs)) % 4;
      sum.needs[way] = (sum.needs[way] ?? 0) + 1;
    }
  }
  for (const [key, { needs, gives }] of bySquare)
    needs.forEach((need, way) => {
      assert.ok(need <= (gives[way] as number), `${key}: ${need} wanted of way ${way}, ${gives[way]} cut`);
    });
};

const stripsOf = (plan: QuiltPlan, piece: TopPiece): readonly Polygon[] =>
  piece.strips.map((i) => plan.top.set.strips[i]?.points ?? []);

const isSlanted = (points: Polygon): boolean => {
  const { width, height } = boxOf(points);
  const area = Math.abs(
    points.reduce((sum, p, i) => {
      const q = points[(i + 1) % points.length] as typeof p;
      return sum + p.x * q.y - q.x * p.y;
    }, 0) / 2,
  );
  return area < width * height * (1 - 1e-9);
};

/** Strips of the top, whole or joined: as high on the cloth as they are in the quilt, and as long together. */
const topStands = (plan: QuiltPlan, id: string, runs: Runs): void => {
  for (const piece of plan.top.pieces.filter((one) => one.fabric === id && one.cut.gives === 1)) {
    for (const points of stripsOf(plan, piece)) {
      // on point sashing leans with its blocks, and the plan says so
      if (isSlanted(points) && piece.role !== 'border') continue;
      const mitred = isSlanted(points) ? 2 * seam * Math.SQRT2 : 0;
      const [w, h] = sizeOf(points);
      const [across, along] = lies([w + 2 * seam + (w > h ? mitred : 0), h + 2 * seam + (h > w ? mitred : 0)], runs);
      const joined = piece.joinedFrom.reduce((sum, [one]) => sum + one, 0) - 2 * seam * (piece.joinedFrom.length - 1);
      const deep = piece.joinedFrom.map(([, one]) => one);
      close([joined, ...deep], [across, ...deep.map(() => along)], `${piece.role} ${piece.label}`);
    }
  }
};

const holds = (document: Written, runs: Runs): QuiltPlan => {
  const plan = planned(document);
  for (const fabric of plan.fabrics.filter(({ id }) => id.startsWith('stag'))) {
    const found = inBlocks(plan, fabric);
    rectanglesStand(found, runs);
    const wanted = new Map<ClothPiece, readonly Polygon[]>();
    const add = (line: ClothPiece, outlines: readonly Polygon[]): unknown =>
      wanted.set(line, [...(wanted.get(line) ?? []), ...outlines]);
    for (const { line, outlines } of found) add(line, outlines);
    for (const line of fabric.pieces)
      for (const use of line.for) {
        if (use.block !== null || line.gives === 1) continue;
        const piece = plan.top.pieces.find(({ label, fabric: cloth }) => label === use.label && cloth === fabric.id);
        assert.ok(piece);
        add(line, stripsOf(plan, piece));
      }
    trianglesStand(fabric.pieces, wanted, runs);
    topStands(plan, fabric.id, runs);
  }
  return plan;
};

/** Halves in two corners, quarters, bars of both lengths: what a turn or a mirror would show at once. */
const block: Written = {
  id: 'wood',
  size: 8,
  patches: {
    grid: [8, 8],
    list: [
      {
        points: [
          [0, 0],
          [2, 0],
          [0, 2],
        ],
        tone: 'stag',
      },
      {
        points: [
          [2, 0],
          [2, 2],
          [0, 2],
        ],
        tone: 'plain',
      },
      { points: rectangle(2, 0, 4, 2), tone: 'stag' },
      {
        points: [
          [6, 0],
          [8, 0],
          [8, 2],
        ],
        tone: 'stag',
      },
      {
        points: [
          [6, 0],
          [8, 2],
          [6, 2],
        ],
        tone: 'plain',
      },
      { points: rectangle(0, 2, 1, 6), tone: 'stag' },
      { points: rectangle(1, 2, 1, 6), tone: 'plain' },
      {
        points: [
          [2, 2],
          [6, 2],
          [4, 4],
        ],
        tone: 'stag',
      },
      {
        points: [
          [2, 2],
          [4, 4],
          [2, 6],
        ],
        tone: 'plain',
      },
      {
        points: [
          [6, 2],
          [6, 6],
          [4, 4],
        ],
        tone: 'stag',
      },
      {
        points: [
          [2, 6],
          [4, 4],
          [6, 6],
        ],
        tone: 'plain',
      },
      { points: rectangle(2, 6, 4, 2), tone: 'plain' },
      { points: rectangle(6, 2, 2, 6), tone: 'plain' },
    ],
  },
};

const keys: Written = {
  id: 'keys',
  size: [2, 3],
  patches: {
    grid: [2, 1],
    list: [
      { points: rectangle(0, 0, 1, 1), tone: 'stag' },
      { points: rectangle(1, 0, 1, 1), tone: 'plain' },
    ],
  },
};

const cells = [
  [{ block: 'wood' }, { block: 'wood', turn: 90 }, { block: 'wood', turn: 180 }],
  [
    { block: 'wood', turn: 270, mirror: true },
    { block: 'wood', mirror: true },
    { block: 'wood', turn: 90, mirror: true },
  ],
];

const border = (more: Written): Written => ({ width: 3, fabric: 'stag', ...more });

const tops: readonly (readonly [fact: string, top: Written])[] = [
  [
    'in a straight set with sashing and cornerstones',
    { rows: cells, sashing: { width: 1, fabric: 'stag', cornerstones: 'plain', outer: true } },
  ],
  [
    'in a straight set with sashing that runs through',
    { rows: cells, sashing: { width: { across: 1, down: 2 }, fabric: 'stag' } },
  ],
  [
    'in an arrangement',
    { arrangement: { kind: 'barn-raising', block: 'wood', rows: 4, columns: 4, darkCorner: 'lower-left' } },
  ],
  [
    'on point, in side and corner setting triangles',
    {
      set: 'on-point',
      rows: cells,
      between: [[{ block: 'wood', turn: 90 }, { plain: 'plain' }]],
      settingFabric: 'stag',
      float: '1/2',
    },
  ],
  [
    'on point with sashing and half cornerstones',
    {
      set: 'on-point',
      rows: cells,
      between: [[{ block: 'wood' }, { block: 'wood' }]],
      settingFabric: 'stag',
      sashing: { width: 1, fabric: 'plain', cornerstones: 'stag' },
    },
  ],
  [
    'in sections with strips and fills',
    {
      set: 'sections',
      sections: {
        down: [
          { across: [{ block: 'wood', turn: 90 }, { strip: 'stag', width: 2 }, { block: 'wood' }] },
          { across: [{ block: 'wood' }, { fill: 'stag' }] },
          { strip: 'stag', width: 3 },
        ],
      },
    },
  ],
  ...(['butted', 'squares', 'mitred'] as const).map(
    (corners) =>
      [
        `in ${corners} borders`,
        {
          rows: cells,
          borders: [
            border({ corners, ...(corners === 'squares' ? { cornerFabric: 'stag' } : {}) }),
            border({ width: 5, corners, ...(corners === 'squares' ? { cornerFabric: 'plain' } : {}) }),
          ],
        },
      ] as const,
  ),
  ['in a pieced border with spacers', { rows: cells, borders: [{ pieced: { block: 'keys', spacer: 'stag' } }] }],
];

const cloth = (printRuns: Runs): readonly Written[] => [
  { id: 'plain', colour: '#f0e8d8', usableWidth: 40 },
  { id: 'stag', colour: '#446622', usableWidth: 25, print: 'one-way', printRuns },
];

for (const runs of ['lengthwise', 'crosswise'] as const) {
  for (const [fact, top] of tops) {
    test(`a one-way print that runs ${runs} stands upright ${fact}`, () => {
      const plan = holds(quilt({ fabrics: cloth(runs), blocks: [block, keys], top }), runs);
      assert.ok(plan.fabrics.some(({ id }) => id === 'stag'));
    });
  }

  test(`a one-way print that runs ${runs} stands upright in frames, backing, sleeve and label`, () => {
    const framed = { ...block, frame: [{ width: 1, fabric: 'stag' }] };
    const finish = {
      backing: { fabric: 'stag', overage: 2 },
      sleeve: { fabric: 'stag' },
      label: { fabric: 'stag', size: [6, 4] },
    };
    const plan = holds(quilt({ fabrics: cloth(runs), blocks: [framed], top: { rows: cells }, finish }), runs);
    const lines = plan.fabrics.find(({ id }) => id === 'stag')?.pieces ?? [];
    const of = (role: string) => lines.filter((line) => line.for.some((use) => use.role === role));
    // by hand: 6 × 4 finished is cut 6 1/2 × 4 1/2
    assert.deepEqual(
      of('label').map(({ cut }) => cut),
      [lies([6.5, 4.5], runs)],
    );
    const { sleeve, backing } = plan.finish;
    assert.ok(sleeve && backing);
    for (const { cut } of of('sleeve')) assert.equal(cut[runs === 'lengthwise' ? 1 : 0], sleeve.cut[1]);
    assert.equal(backing.run, runs === 'lengthwise' ? 'upright' : 'level');
    const down = runs === 'lengthwise' ? backing.height : backing.width;
    for (const { cut } of of('backing')) assert.equal(cut[1], down);
  });
}
