import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Clipper, FillRule, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import type { BlockDesign, DrawingDesign, GridRun, PatchesDesign } from '#craft/design';
import { type Arc, arcLength, chordPoints, edgesOf, outlineArea, radiusOf } from '#ground/arc';
import { fromDecimal } from '#ground/exact';
import { at, distance, innerPoint, type Point, type Polygon, signedArea } from '#ground/plane';
import { drawingDraft } from './drawing.ts';
import type { ExactCorner } from './exact-draft.ts';
import { type DraftedBlock, draftBlock, mirrored } from './index.ts';
import { settled } from './settled.ts';

type Pair = readonly [number, number];
const corner = ([x, y]: Pair): ExactCorner => [fromDecimal(x), fromDecimal(y)];
const near = (found: number, expected: number, tolerance: number): void =>
  assert.ok(Math.abs(found - expected) <= tolerance, `found ${found}, expected ${expected}`);

const areaOf = ({ points, arcs = [] }: DraftedBlock['patches'][number]): number => outlineArea({ points, arcs });

/** Corner of a cell and the two beside it, clockwise from it, as shares of the cell. */
const cellCorners: readonly (readonly [Pair, Pair, Pair])[] = [
  [
    [0, 0],
    [1, 0],
    [0, 1],
  ],
  [
    [1, 0],
    [1, 1],
    [0, 0],
  ],
  [
    [1, 1],
    [0, 1],
    [1, 0],
  ],
  [
    [0, 1],
    [0, 0],
    [1, 1],
  ],
];

interface Cell {
  /** Which corner of the cell the quarter of a circle lies in, clockwise from the upper left. */
  readonly at: number;
  /** In quarters of the cell. */
  readonly radius: number;
}

const cell = fc.record({ at: fc.nat(3), radius: fc.constantFrom(1, 2, 3, 4) });
const grid = fc.tuple(fc.integer({ min: 1, max: 3 }), fc.integer({ min: 1, max: 3 })).chain(([columns, rows]) =>
  fc.record({
    columns: fc.constant(columns),
    rows: fc.constant(rows),
    cells: fc.array(cell, { minLength: columns * rows, maxLength: columns * rows }),
  }),
);

/** A quarter of a circle in one corner of each cell, as patches. */
const asPatches = (of: { readonly columns: number; readonly rows: number; readonly cells: readonly Cell[] }) => {
  const patches = of.cells.flatMap(({ at: place, radius }, i) => {
    const [left, top] = [4 * (i % of.columns), 4 * Math.floor(i / of.columns)];
    const [centre, before, after] = (cellCorners[place] as (typeof cellCorners)[number]).map(
      ([x, y]): Pair => [left + 4 * x, top + 4 * y],
    ) as [Pair, Pair, Pair];
    const toward = (p: Pair): Pair => [
      centre[0] + ((p[0] - centre[0]) * radius) / 4,
      centre[1] + ((p[1] - centre[1]) * radius) / 4,
    ];
    const across: Pair = [before[0] + after[0] - centre[0], before[1] + after[1] - centre[1]];
    const [from, to] = [toward(before), toward(after)];
    const outer = [from, ...(radius < 4 ? [before] : []), across, ...(radius < 4 ? [after] : []), to];
    const wedge: GridRun = {
      corners: [centre, from, to].map(corner),
      arcs: [{ edge: 1, centre: corner(centre), clockwise: true }],
    };
    const rest: GridRun = {
      corners: outer.map(corner),
      arcs: [{ edge: outer.length - 1, centre: corner(centre), clockwise: false }],
    };
    return [
      { ...wedge, tone: 'round' },
      { ...rest, tone: 'rest' },
    ];
  });
  const size = corner([4 * of.columns, 4 * of.rows]);
  const shape: PatchesDesign = { kind: 'patches', size, grid: size, patches };
  const design: BlockDesign = { id: 'b', title: 'B', path: '/blocks/0', shape, colourings: { default: {} } };
  return design;
};

const drafted = (design: BlockDesign): DraftedBlock => {
  const outcome = draftBlock(design);
  assert.ok(outcome.ok, JSON.stringify(outcome.ok ? '' : outcome.problems));
  return outcome.value;
};

test('patches of quarter circles have the areas that a circle has, and tile the block', () => {
  fc.assert(
    fc.property(grid, (of) => {
      const block = drafted(asPatches(of));
      const round = block.patches.filter(({ tone }) => tone === 'round').map(areaOf);
      const expected = of.cells.map(({ radius }) => (Math.PI * radius ** 2) / 4);
      const inOrder = expected.toSorted((a, b) => a - b);
      for (const [i, area] of round.toSorted((a, b) => a - b).entries()) near(area, inOrder[i] as number, 1e-11);
      const whole = block.patches.reduce((all, patch) => all + areaOf(patch), 0);
      near(whole, 16 * of.columns * of.rows, 1e-9);
    }),
    { seed: 821, numRuns: 100 },
  );
});

/** Every arc of every patch, by the places and the way it lies, whichever way it is walked. */
const arcKey = ({ from, to, centre }: Arc): string =>
  [[from, to].map(({ x, y }) => `${x.toFixed(9)},${y.toFixed(9)}`).sort(), centre.x.toFixed(6), centre.y.toFixed(6)]
    .flat()
    .join(' ');

test('both sides of a curved seam have the same arcs, of the same length, and the same chords', () => {
  fc.assert(
    fc.property(grid, fc.boolean(), (of, mirror) => {
      const plain = drafted(asPatches(of));
      const block = mirror ? mirrored(plain) : plain;
      const sides = new Map<string, { readonly arc: Arc; readonly chords: readonly Point[] }[]>();
      for (const { points, arcs = [] } of block.patches) {
        for (const { arc, chords } of edgesOf({ points, arcs })) {
          if (arc === null) continue;
          sides.set(arcKey(arc), [...(sides.get(arcKey(arc)) ?? []), { arc, chords }]);
        }
      }
      for (const [a, b, ...more] of sides.values()) {
        assert.ok(a && b && more.length === 0, 'an arc has two sides');
        near(arcLength(a.arc), arcLength(b.arc), 1e-12);
        assert.equal(JSON.stringify(a.chords), JSON.stringify(b.chords.toReversed()));
        assert.equal(a.arc.clockwise, !b.arc.clockwise);
      }
    }),
    { seed: 822, numRuns: 100 },
  );
});

test('an arc that a neighbour’s seam comes to is divided there on both sides', () => {
  // a quarter of radius 4 in one piece, and what lies round it in two, parted where 30 degrees are
  const [c, s] = [4 * Math.cos(Math.PI / 6), 4 * Math.sin(Math.PI / 6)];
  const outer: Pair = [6, 6 * Math.tan(Math.PI / 6)];
  const shape: PatchesDesign = {
    kind: 'patches',
    size: corner([6, 6]),
    grid: corner([6, 6]),
    patches: [
      {
        tone: 'a',
        ...run(
          [
            [0, 0],
            [4, 0],
            [0, 4],
          ],
          1,
          true,
        ),
      },
      { tone: 'b', ...run([[4, 0], [6, 0], outer, [c, s]], 3, false) },
      { tone: 'c', ...run([[c, s], outer, [6, 6], [0, 6], [0, 4]], 4, false) },
    ],
  };
  const block = drafted({ id: 'b', title: 'B', path: '', shape, colourings: { default: {} } });
  const [a, b, d] = ['a', 'b', 'c'].map((tone) => block.patches.find((patch) => patch.tone === tone));
  assert.deepEqual(
    [a, b, d].map((patch) => patch?.arcs?.length),
    [2, 1, 1],
  );
  near(
    (a?.arcs ?? []).map(arcLength).reduce((m, n) => m + n),
    2 * Math.PI,
    1e-12,
  );
  near(arcLength(b?.arcs?.[0] as Arc), (4 * Math.PI) / 6, 1e-9);
});

function run(corners: readonly Pair[], edge: number, clockwise: boolean): GridRun {
  return { corners: corners.map(corner), arcs: [{ edge, centre: corner([0, 0]), clockwise }] };
}

const side = 12;

/** A place on the block's edge, walked round it from the upper left corner. */
const onEdge = (n: number): Pair => {
  const along = n % side;
  const places: readonly Pair[] = [
    [along, 0],
    [side, along],
    [side - along, side],
    [0, side - along],
  ];
  return places[Math.floor(n / side)] as Pair;
};

/** From edge to edge, and bent to one hand: the centre lies so many times the chord's length off its middle. */
const bentSeam = fc
  .tuple(fc.nat(4 * side - 1), fc.nat(4 * side - 1), fc.constantFrom(-3, -2, -1.5, 1.5, 2, 3))
  .map(([m, n, far]) => {
    const [a, b] = [onEdge(m), onEdge(n)];
    const centre: Pair = [(a[0] + b[0]) / 2 - far * (b[1] - a[1]), (a[1] + b[1]) / 2 + far * (b[0] - a[0])];
    const arc: Arc = { from: at(...a), to: at(...b), centre: at(...centre), clockwise: far > 0 };
    return { a, b, centre, arc };
  })
  .filter(({ a, b, arc }) => {
    if (a[0] === b[0] || a[1] === b[1]) return false;
    const box = chordPoints(arc, 1e-3);
    return box.every(({ x, y }) => x > 0.05 && y > 0.05 && x < side - 0.05 && y < side - 0.05);
  });

/** What of a polygon lies on one hand of a seam, by a general-purpose library: between the arc and the way round outside the block. */
const handOf = (polygon: PathsD, { arc }: { readonly arc: Arc }, hand: 'in' | 'out'): PathsD => {
  const circle: Polygon = Array.from({ length: 3_000 }, (_, i) => {
    const turn = (2 * Math.PI * i) / 3_000;
    return at(arc.centre.x + radiusOf(arc) * Math.cos(turn), arc.centre.y + radiusOf(arc) * Math.sin(turn));
  });
  const cutter = [circle.map(({ x, y }) => ({ x, y }))];
  return hand === 'in'
    ? Clipper.intersectD(polygon, cutter, FillRule.NonZero, 6)
    : Clipper.differenceD(polygon, cutter, FillRule.NonZero, 6);
};

test('curved seams from edge to edge of a drawing, crossing each other, give the patches that a general-purpose library cuts', () => {
  fc.assert(
    fc.property(fc.array(bentSeam, { minLength: 1, maxLength: 2 }), (seams) => {
      // the circle may meet the block again beyond the seam: only such seams are asked whose circle does not
      const clear = seams.filter(({ arc }) => meetsBlockTwice(arc));
      fc.pre(clear.length > 0);
      const shape: DrawingDesign = {
        kind: 'drawing',
        size: corner([side, side]),
        grid: corner([side, side]),
        seams: clear.map(({ a, b, centre, arc }) => ({
          corners: [corner(a), corner(b)],
          arcs: [{ edge: 0, centre: corner(centre), clockwise: arc.clockwise }],
        })),
        tonesAt: [],
      };
      const square: PathsD = [[at(0, 0), at(side, 0), at(side, side), at(0, side)]];
      let cut: PathsD = square;
      for (const seam of clear)
        cut = cut.flatMap((polygon) => [...handOf([polygon], seam, 'in'), ...handOf([polygon], seam, 'out')]);
      const expected = cut.filter((polygon) => Math.abs(Clipper.areaD(polygon)) > 1e-3);
      const tonesAt = expected.map((polygon, i) => {
        const { x, y } = innerPoint(polygon as Polygon);
        return { at: corner([x, y]), tone: `t${i}` };
      });
      const draft = drawingDraft({ shape: { ...shape, tonesAt }, block: 'b', path: '' });
      assert.ok(draft.ok, JSON.stringify(draft.ok ? '' : draft.problems));
      const block = settled(draft.value, { id: 'b', title: '', path: '' });
      assert.equal(block.patches.length, expected.length);
      for (const patch of block.patches) {
        const twin = expected[Number(patch.tone.slice(1))] as Polygon;
        near(areaOf(patch), Math.abs(signedArea(twin)), 2e-3);
      }
      near(
        block.patches.reduce((all, patch) => all + areaOf(patch), 0),
        side * side,
        1e-9,
      );
    }),
    { seed: 823, numRuns: 40 },
  );
});

/** Counted in small steps round the circle. */
function meetsBlockTwice(arc: Arc): boolean {
  const r = radiusOf(arc);
  const inside = Array.from({ length: 720 }, (_, i) => {
    const turn = (Math.PI * i) / 360;
    const [x, y] = [arc.centre.x + r * Math.cos(turn), arc.centre.y + r * Math.sin(turn)];
    return x > 0 && y > 0 && x < side && y < side;
  });
  const changes = inside.filter((is, i) => is !== inside.at(i - 1)).length;
  return changes === 2 && distance(arc.from, arc.to) > 2;
}
