// Units as patches: each drawn at turn 0 on a square of side 1, turned by quarter turns about its middle, then
// brought to its span of the grid.
import type { UnitDesign, UnitName, UnitsDesign } from '#craft/design';
import { add, compare, mul, one, type Rational, rational, sub, toNumber, zero } from '#ground/exact';
import { type ExactCorner, type ExactDraft, type ExactPatch, offGrid } from './exact-draft.ts';
import type { DraftingProblem } from './problems.ts';

/** @param path of the block. Patches of a unit keep its place in the recipe. */
export const unitsDraft = (shape: UnitsDesign, path: string): ExactDraft => {
  const place = offGrid(shape);
  const patches = shape.units.flatMap((unit, i) =>
    patchesOf(unit).map(
      ({ corners, tone }): ExactPatch => ({
        tone,
        path: `${path}/recipe/units/${i}`,
        corners: corners.map((corner) => place(inSpan(turned(corner, unit.turn), unit))),
      }),
    ),
  );
  return { size: shape.size, patches, added: [] };
};

/**
 * Units that lie over an earlier one, each told once with both places in the recipe. Exact.
 *
 * @param of.path of the block
 */
export const unitOverlaps = (of: {
  readonly shape: UnitsDesign;
  readonly block: string;
  readonly path: string;
}): readonly DraftingProblem[] => {
  const { shape, block, path } = of;
  const place = offGrid(shape);
  const boxes = shape.units.map(({ at, span }): UnitBox => {
    const [from, to] = [place(at), place([add(at[0], span[0]), add(at[1], span[1])])];
    return {
      from,
      to,
      left: toNumber(from[0]),
      top: toNumber(from[1]),
      right: toNumber(to[0]),
      bottom: toNumber(to[1]),
    };
  });
  return boxes.flatMap((a, i): readonly DraftingProblem[] => {
    for (const [j, b] of boxes.slice(0, i).entries()) {
      const both = areApart(a, b) ? null : sharedBox(a, b);
      if (both === null) continue;
      return [{ code: 'drafting/units-overlap', path: `${path}/recipe/units/${i}`, block, units: [j, i], ...both }];
    }
    return [];
  });
};

interface UnitBox {
  readonly from: ExactCorner;
  readonly to: ExactCorner;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Told by doubles, which never lose an overlap: the nearest double keeps the order of two numbers. */
const areApart = (a: UnitBox, b: UnitBox): boolean =>
  a.left > b.right || b.left > a.right || a.top > b.bottom || b.top > a.bottom;

const sharedBox = (
  a: UnitBox,
  b: UnitBox,
): { readonly area: number; readonly at: readonly [number, number] } | null => {
  const x = shared([a.from[0], a.to[0]], [b.from[0], b.to[0]]);
  const y = shared([a.from[1], a.to[1]], [b.from[1], b.to[1]]);
  if (x === null || y === null) return null;
  return { area: toNumber(mul(x.length, y.length)), at: [toNumber(x.middle), toNumber(y.middle)] };
};

type Span = readonly [from: Rational, to: Rational];

const shared = (a: Span, b: Span): { readonly length: Rational; readonly middle: Rational } | null => {
  const from = compare(a[0], b[0]) > 0 ? a[0] : b[0];
  const to = compare(a[1], b[1]) < 0 ? a[1] : b[1];
  return compare(from, to) < 0 ? { length: sub(to, from), middle: mul(add(from, to), half) } : null;
};

interface UnitPatch {
  readonly corners: readonly ExactCorner[];
  readonly tone: string;
}

const half = rational(1, 2);

const places: Readonly<Record<string, ExactCorner>> = {
  a: [zero, zero],
  b: [half, zero],
  c: [one, zero],
  d: [zero, half],
  m: [half, half],
  e: [one, half],
  f: [zero, one],
  g: [half, one],
  h: [one, one],
};

/**
 * Outlines at turn 0, clockwise, by these places of the square, each with the place of its tone:
 *   a b c
 *   d m e
 *   f g h
 * Which tone goes where: docs/document.md.
 */
const outlines: Readonly<Record<Exclude<UnitName, 'rails'>, readonly (readonly [outline: string, tone: number])[]>> = {
  square: [['achf', 0]],
  'half-square': [
    ['acf', 0],
    ['chf', 1],
  ],
  'quarter-square': [
    ['acm', 0],
    ['chm', 1],
    ['hfm', 2],
    ['fam', 3],
  ],
  'flying-geese': [
    ['bhf', 0],
    ['abf', 1],
    ['bch', 1],
  ],
  'square-in-square': [
    ['begd', 0],
    ['abd', 1],
    ['bce', 1],
    ['ehg', 1],
    ['gfd', 1],
  ],
  'four-patch': [
    ['abmd', 0],
    ['bcem', 1],
    ['dmgf', 1],
    ['mehg', 0],
  ],
};

const patchesOf = ({ unit, tones }: UnitDesign): readonly UnitPatch[] => {
  if (unit === 'rails') return tones.map((tone, i) => ({ tone, corners: railCorners(i, tones.length) }));
  return outlines[unit].map(([outline, tone]) => ({
    tone: tones[tone] as string,
    corners: [...outline].map((place) => places[place] as ExactCorner),
  }));
};

const railCorners = (index: number, count: number): readonly ExactCorner[] => {
  const top = rational(index, count);
  const bottom = rational(index + 1, count);
  return [
    [zero, top],
    [one, top],
    [one, bottom],
    [zero, bottom],
  ];
};

/** Clockwise on screen about the middle of the square. */
const turned = ([x, y]: ExactCorner, turn: UnitDesign['turn']): ExactCorner => {
  switch (turn) {
    case 0:
      return [x, y];
    case 90:
      return [sub(one, y), x];
    case 180:
      return [sub(one, x), sub(one, y)];
    case 270:
      return [y, sub(one, x)];
  }
};

const inSpan = ([x, y]: ExactCorner, { at, span }: UnitDesign): ExactCorner => [
  add(at[0], mul(x, span[0])),
  add(at[1], mul(y, span[1])),
];
