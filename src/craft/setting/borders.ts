// Borders laid round the middle of a set, from the inside outward: butted, with corner squares, mitred, or
// pieced of blocks with a spacer that makes them fit. Sides come before ends.

import type { BorderDesign, PiecedBorderDesign, StripBorderDesign } from '#craft/design';
import type { DraftedBlock } from '#craft/drafting';
import { type Length, tidy } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { done, type Outcome, refused } from '#ground/outcome';
import { at, type Box, type Polygon } from '#ground/plane';
import { layPieced } from './pieced-border.ts';
import { type Laying, layStrip, movedBy, outlineOfRect, rectOf, type SetMiddle } from './pieces.ts';
import type { SettingProblem } from './problems.ts';
import { spacerFor } from './spacer.ts';
import type { Assembly, BorderRing, PlacedStrip, SetTop, TopThing } from './top.ts';

interface Bordering {
  readonly middle: SetMiddle;
  readonly borders: readonly BorderDesign[];
  readonly blocks: ReadonlyMap<string, DraftedBlock>;
  /** Allowance: no spacer is narrower. */
  readonly seam: Length;
}

/** The whole top in its own frame, from its upper left corner. */
export const setBorders = (of: Bordering): Outcome<SetTop, SettingProblem> => {
  const { middle } = of;
  const laying: Laying = { placed: [...middle.placed], strips: [...middle.strips] };
  const rings: BorderRing[] = [];
  const problems: SettingProblem[] = [];
  let inner: Box = { x: 0, y: 0, width: middle.width, height: middle.height };
  of.borders.forEach((border, ring) => {
    if (border.kind === 'strip') {
      rings.push(layStrips({ laying, border, ring, place: rings.length, inner }));
      inner = grownBox(inner, [toNumber(border.width), toNumber(border.width)]);
      return;
    }
    const laid = pieced({ ...of, laying, border, ring, place: rings.length, inner });
    if (!laid.ok) {
      problems.push(...laid.problems);
      return;
    }
    rings.push(...laid.value.rings);
    inner = laid.value.outer;
  });
  if (problems.length > 0) return refused(problems);
  const move = movedBy([-inner.x, -inner.y]);
  return done({
    width: tidy(inner.width),
    height: tidy(inner.height),
    middle: rectOf({ x: -inner.x, y: -inner.y, width: middle.width, height: middle.height }),
    placed: laying.placed.map(move.block),
    strips: laying.strips.map(move.strip),
    rows: middle.rows,
    assembly: middle.assembly,
    borders: rings,
  });
};

const grownBox = (box: Box, [x, y]: readonly [number, number]): Box => ({
  x: box.x - x,
  y: box.y - y,
  width: box.width + 2 * x,
  height: box.height + 2 * y,
});

interface StripRing {
  readonly laying: Laying;
  readonly border: StripBorderDesign;
  /** Its border in the document. */
  readonly ring: number;
  /** Its own place among the rings, spacers counted. */
  readonly place: number;
  readonly inner: Box;
}

const layStrips = (of: StripRing): BorderRing => {
  switch (of.border.corners) {
    case 'butted':
      return buttedRing({
        ...of,
        kind: 'butted',
        role: 'border',
        fabric: of.border.fabric,
        widths: widthsOf(of.border),
      });
    case 'squares':
      return squaresRing(of);
    case 'mitred':
      return mitredRing(of);
  }
};

const widthsOf = ({ width }: StripBorderDesign): readonly [number, number] => [toNumber(width), toNumber(width)];

/** Left and right as long as the top is high, then the ends across everything; a side of no width is left out. */
const buttedRing = (of: {
  readonly laying: Laying;
  readonly kind: 'butted' | 'spacer';
  readonly role: 'border' | 'spacer';
  readonly fabric: string;
  readonly border: Pick<StripBorderDesign, 'grain'>;
  readonly ring: number;
  readonly inner: Box;
  readonly widths: readonly [sides: number, ends: number];
}): BorderRing => {
  const { inner, ring, widths } = of;
  const [x, y] = widths;
  const outer = grownBox(inner, widths);
  const lay = (box: Box): Assembly => {
    const strip = borderStrip({ ...of, points: outlineOfRect(rectOf(box)), box });
    return { thing: layStrip(of.laying, strip) };
  };
  const sides = x > 0 ? (['left', 'right'] as const) : [];
  const ends = y > 0 ? (['top', 'bottom'] as const) : [];
  return {
    kind: of.kind,
    border: ring,
    angle: 0,
    parts: [
      ...sides.map((side) => ({
        side,
        assembly: lay({ ...inner, x: side === 'left' ? outer.x : inner.x + inner.width, width: x }),
      })),
      ...ends.map((side) => ({
        side,
        assembly: lay({ ...outer, y: side === 'top' ? outer.y : inner.y + inner.height, height: y }),
      })),
    ],
  };
};

const borderStrip = (of: {
  readonly role: PlacedStrip['role'];
  readonly fabric: string;
  readonly border: Pick<StripBorderDesign, 'grain'>;
  readonly ring: number;
  readonly points: Polygon;
  readonly box: Box;
}): PlacedStrip => ({
  role: of.role,
  fabric: of.fabric,
  points: of.points,
  rect: rectOf(of.box),
  grain: of.border.grain,
  border: of.ring,
  path: `/top/borders/${of.ring}`,
});

/** Strips as long as the top on all four sides, the ends with a square at each end. */
const squaresRing = (of: StripRing): BorderRing => {
  const { laying, border, ring, place, inner } = of;
  const [w] = widthsOf(border);
  const outer = grownBox(inner, [w, w]);
  const lay = (role: 'border' | 'border-corner', box: Box): TopThing => {
    const fabric = role === 'border' ? border.fabric : (border.cornerFabric ?? border.fabric);
    const strip = borderStrip({ role, fabric, border, ring, points: outlineOfRect(rectOf(box)), box });
    return layStrip(laying, role === 'border' ? strip : { ...strip, grain: null, border: null });
  };
  const side = (x: number): Assembly => ({ thing: lay('border', { ...inner, x, width: w }) });
  const end = (y: number): Assembly => ({
    run: 'across',
    angle: 0,
    stage: 'border',
    of: place,
    parts: [
      lay('border-corner', { x: outer.x, y, width: w, height: w }),
      lay('border', { ...inner, y, height: w }),
      lay('border-corner', { x: inner.x + inner.width, y, width: w, height: w }),
    ].map((thing) => ({ thing })),
  });
  return {
    kind: 'squares',
    border: ring,
    angle: 0,
    parts: [
      { side: 'left', assembly: side(outer.x) },
      { side: 'right', assembly: side(inner.x + inner.width) },
      { side: 'top', assembly: end(outer.y) },
      { side: 'bottom', assembly: end(inner.y + inner.height) },
    ],
  };
};

/** Four strips whose ends run at 45 degrees from the middle's corners to the outer corners. */
const mitredRing = (of: StripRing): BorderRing => {
  const { laying, border, ring, inner } = of;
  const [w] = widthsOf(border);
  const outer = grownBox(inner, [w, w]);
  const [a, b, c, d] = cornersOf(inner);
  const [A, B, C, D] = cornersOf(outer);
  const lay = (points: Polygon, box: Box): Assembly => {
    const strip = borderStrip({ role: 'border', fabric: border.fabric, border, ring, points, box });
    return { thing: layStrip(laying, strip) };
  };
  const left = lay([A, a, d, D], { ...outer, width: w });
  const right = lay([B, C, c, b], { ...outer, x: inner.x + inner.width, width: w });
  const top = lay([A, B, b, a], { ...outer, height: w });
  const bottom = lay([d, c, C, D], { ...outer, y: inner.y + inner.height, height: w });
  return {
    kind: 'mitred',
    border: ring,
    angle: 0,
    parts: [
      { side: 'left', assembly: left },
      { side: 'right', assembly: right },
      { side: 'top', assembly: top },
      { side: 'bottom', assembly: bottom },
    ],
  };
};

/** Clockwise from the upper left. */
const cornersOf = ({ x, y, width, height }: Box) =>
  [at(x, y), at(x + width, y), at(x + width, y + height), at(x, y + height)] as const;

/** The spacer, where one is needed, and the ring of blocks. */
const pieced = (
  of: Bordering & {
    readonly laying: Laying;
    readonly border: PiecedBorderDesign;
    readonly ring: number;
    readonly place: number;
    readonly inner: Box;
  },
): Outcome<{ readonly rings: readonly BorderRing[]; readonly outer: Box }, SettingProblem> => {
  const { laying, border, ring, place, inner, seam } = of;
  const path = `/top/borders/${ring}`;
  const block = of.blocks.get(border.block) as DraftedBlock;
  const [unit, width] = block.size;
  const widths = [
    spacerFor({ side: inner.width, unit, least: seam }),
    spacerFor({ side: inner.height, unit, least: seam }),
  ] as const;
  const [x, y] = widths;
  if (border.spacer === null && (x > 0 || y > 0)) {
    return refused([
      {
        code: 'setting/border-does-not-fit',
        path,
        block: border.block,
        along: unit,
        sides: [tidy(inner.width), tidy(inner.height)],
        spacer: [tidy(x), tidy(y)],
      },
    ]);
  }
  const isSquare = Math.abs(unit - width) < 1e-9;
  if (border.spacer === null && !isSquare) {
    return refused([{ code: 'setting/border-corner-without-fabric', path, block: border.block, size: [unit, width] }]);
  }
  const rings: BorderRing[] = [];
  if (x > 0 || y > 0) {
    const fabric = border.spacer as string;
    rings.push(
      buttedRing({ laying, kind: 'spacer', role: 'spacer', fabric, border: { grain: 'least' }, ring, inner, widths }),
    );
  }
  const fitted = grownBox(inner, widths);
  rings.push(
    layPieced({
      laying,
      block,
      spacer: isSquare ? null : border.spacer,
      ring,
      place: place + rings.length,
      path,
      inner: fitted,
    }),
  );
  return done({ rings, outer: grownBox(fitted, [width, width]) });
};
