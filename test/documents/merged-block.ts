// Random drawings of a few patches that straight seams may not join: cells of a tiling, some of them made one.
import { chanceFrom } from '#ground/chance';
import { at, type Point, type Polygon, withoutStraightCorners } from '#ground/plane';
import { box, type CutBlock } from './cut-block.ts';

export type Tiling = 'squares' | 'half-squares' | 'sixty degrees' | 'eight-pointed' | 'turning about' | 'cut';

export const tilings: readonly Tiling[] = [
  'squares',
  'half-squares',
  'sixty degrees',
  'eight-pointed',
  'turning about',
  'cut',
];

/** Two to `most` patches in up to three cloths; the same seed draws the same block. Clockwise, within a square of 12. */
export const mergedBlock = (of: {
  readonly tiling: Tiling;
  readonly seed: number;
  readonly most: number;
}): CutBlock => {
  const chance = chanceFrom(of.seed);
  const wanted = 2 + Math.floor((of.most - 1) * Math.sqrt(chance()));
  for (;;) {
    const outlines = merged(cellsOf[of.tiling](chance), wanted, chance);
    if (!outlines) continue;
    const cloths = 1 + Math.floor(3 * chance());
    return { outlines, fabrics: outlines.map(() => 'abc'[Math.floor(cloths * chance())] as string) };
  }
};

const cellsOf: Readonly<Record<Tiling, (chance: () => number) => readonly Polygon[]>> = {
  squares: (chance) => {
    const [columns, rows] = [2 + Math.floor(3 * chance()), 2 + Math.floor(3 * chance())];
    return Array.from({ length: columns * rows }, (_, i) => box(3 * (i % columns), 3 * Math.floor(i / columns), 3, 3));
  },
  'half-squares': (chance) => {
    const [columns, rows] = [2 + Math.floor(2 * chance()), 1 + Math.floor(3 * chance())];
    return Array.from({ length: columns * rows }, (_, i) =>
      halves(i % columns, Math.floor(i / columns), chance),
    ).flat();
  },
  'sixty degrees': (chance) => {
    const [columns, rows] = [1 + Math.floor(3 * chance()), 1 + Math.floor(3 * chance())];
    const corner = (x: number, y: number): Point => at(2 * x + y, y * Math.sqrt(3));
    return Array.from({ length: columns * rows }, (_, i) => [i % columns, Math.floor(i / columns)] as const).flatMap(
      ([x, y]) => [
        [corner(x, y), corner(x + 1, y), corner(x, y + 1)],
        [corner(x + 1, y), corner(x + 1, y + 1), corner(x, y + 1)],
      ],
    );
  },
  'eight-pointed': () => eightPointed(),
  'turning about': (chance) => {
    const [a, b, c, d] = [1, 2, 3, 4].map(() => 2 + Math.floor(4 * chance())) as [number, number, number, number];
    // two upright lines at a and 12 − c, two level ones at b and 12 − d, each ending on the next
    const arms = [
      box(0, 0, 12 - c, b),
      box(12 - c, 0, c, 12 - d),
      box(a, 12 - d, 12 - a, d),
      box(0, b, a, 12 - b),
      box(a, b, 12 - a - c, 12 - b - d),
    ];
    return arms.flatMap((arm) => (chance() < 0.4 ? cutInTwo(arm, chance) : [arm]));
  },
  cut: (chance) => {
    let cells: readonly Polygon[] = [box(0, 0, 12, 12)];
    for (let cuts = 4 + Math.floor(5 * chance()); cuts > 0; cuts--) {
      const i = Math.floor(cells.length * chance());
      cells = [...cells.slice(0, i), ...cutInTwo(cells[i] as Polygon, chance), ...cells.slice(i + 1)];
    }
    return cells;
  },
};

const halves = (x: number, y: number, chance: () => number): readonly Polygon[] => {
  const [p, q, r, s] = box(3 * x, 3 * y, 3, 3) as [Point, Point, Point, Point];
  return chance() < 0.5
    ? [
        [p, q, s],
        [q, r, s],
      ]
    : [
        [p, q, r],
        [p, r, s],
      ];
};

const cutInTwo = (cell: Polygon, chance: () => number): readonly Polygon[] => {
  const [p, , r] = cell as [Point, Point, Point];
  const share = [0.25, 0.5, 0.75][Math.floor(3 * chance())] as number;
  const [w, h] = [r.x - p.x, r.y - p.y];
  return chance() < 0.5
    ? [box(p.x, p.y, w * share, h), box(p.x + w * share, p.y, w * (1 - share), h)]
    : [box(p.x, p.y, w, h * share), box(p.x, p.y + h * share, w, h * (1 - share))];
};

/** Eight diamonds from the middle, squares in the corners and triangles at the sides; side 2 + √2 times 3. */
const eightPointed = (): readonly Polygon[] => {
  const side = 3 * (2 + Math.SQRT2);
  const middle = side / 2;
  const spoke = (k: number): Point =>
    at(middle + 3 * Math.cos((k * Math.PI) / 4), middle + 3 * Math.sin((k * Math.PI) / 4));
  const tip = (k: number): Point => at(spoke(k).x + spoke(k + 1).x - middle, spoke(k).y + spoke(k + 1).y - middle);
  const star = [0, 1, 2, 3, 4, 5, 6, 7].map((k) => [at(middle, middle), spoke(k), tip(k), spoke(k + 1)]);
  const corners = [
    [at(0, 0), at(3, 0), spoke(5), at(0, 3)],
    [at(side - 3, 0), at(side, 0), at(side, 3), spoke(7)],
    [spoke(1), at(side, side - 3), at(side, side), at(side - 3, side)],
    [at(0, side - 3), spoke(3), at(3, side), at(0, side)],
  ];
  const edges = [
    [at(3, 0), at(side - 3, 0), spoke(6)],
    [at(side, 3), at(side, side - 3), spoke(0)],
    [at(side - 3, side), at(3, side), spoke(2)],
    [at(0, side - 3), at(0, 3), spoke(4)],
  ];
  return [...star, ...corners, ...edges];
};

/** Neighbouring cells made one until so many patches are left; null where one would have a hole or a pinch. */
const merged = (cells: readonly Polygon[], wanted: number, chance: () => number): readonly Polygon[] | null => {
  let patches = cells;
  while (patches.length > wanted) {
    const pairs = patches.flatMap((a, i) =>
      patches.slice(i + 1).map((b, j) => ({ i, j: i + 1 + j, one: madeOne(a, b) })),
    );
    const possible = pairs.filter(({ one }) => one !== null);
    const chosen = possible[Math.floor(possible.length * chance())];
    if (!chosen) return null;
    patches = [...patches.filter((_, k) => k !== chosen.i && k !== chosen.j), chosen.one as Polygon];
  }
  return patches.length > 1 ? patches.map((patch) => withoutStraightCorners(patch, 1e-6)) : null;
};

/** Two outlines along what they share, or null where that is not one run of their edges. */
const madeOne = (a: Polygon, b: Polygon): Polygon | null => {
  const [first, second] = [withCornersOf(a, b), withCornersOf(b, a)];
  const back = new Set(second.map((p, i) => edgeKey(second[(i + 1) % second.length] as Point, p)));
  const isShared = first.map((p, i) => back.has(edgeKey(p, first[(i + 1) % first.length] as Point)));
  const starts = isShared.flatMap((shared, i) =>
    shared && !isShared[(i + first.length - 1) % first.length] ? [i] : [],
  );
  if (starts.length !== 1) return null;
  const length = isShared.filter(Boolean).length;
  const begin = starts[0] as number;
  const [from, to] = [first[begin] as Point, first[(begin + length) % first.length] as Point];
  const rest = Array.from(
    { length: first.length - length },
    (_, i) => first[(begin + length + i) % first.length] as Point,
  );
  const other = second.findIndex((p) => isSame(p, from));
  const way = Array.from({ length: second.length - length }, (_, i) => second[(other + i) % second.length] as Point);
  if (!second.some((p) => isSame(p, to))) return null;
  const outline = [...rest, ...way];
  return new Set(outline.map(pointKey)).size === outline.length ? outline : null;
};

const withCornersOf = (outline: Polygon, other: Polygon): Polygon =>
  outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length] as Point;
    const along = (p: Point): number => (p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y);
    const long = along(b);
    const on = other.filter((p) => {
      const off = Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
      return off < 1e-9 * long && along(p) > 1e-9 * long && along(p) < long * (1 - 1e-9);
    });
    return [a, ...on.sort((p, q) => along(p) - along(q))];
  });

const isSame = (a: Point, b: Point): boolean => Math.abs(a.x - b.x) + Math.abs(a.y - b.y) < 1e-6;

const pointKey = ({ x, y }: Point): string => `${Math.floor(x * 1e5 + 0.3183)},${Math.floor(y * 1e5 + 0.3183)}`;

const edgeKey = (a: Point, b: Point): string => `${pointKey(a)}>${pointKey(b)}`;
