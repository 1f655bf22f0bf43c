// A set on point: blocks standing on a corner in slanted rows, setting triangles along the edges, sashing all round
// the blocks where there is any. Places are whole numbers of half diagonals, so that neighbours share their corners.

import type { CellDesign, OnPointTop, SashingDesign } from '#craft/design';
import type { DraftedBlock } from '#craft/drafting';
import { type Length, length, tidy } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { done, type Outcome, refused } from '#ground/outcome';
import { at, type Point, type Polygon } from '#ground/plane';
import { squareSideOf } from './on-point-size.ts';
import { type Laying, layBlock, layStrip, plainShape, type SetMiddle } from './pieces.ts';
import type { SettingProblem } from './problems.ts';
import type { Assembly, EighthTurn, RoundPart, StripRole, TopRow, TopThing } from './top.ts';

/** A place on the lattice, in half diagonals of a block with its share of the sashing: x right, y down. */
type Place = readonly [x: number, y: number];

interface PointSet {
  readonly design: OnPointTop;
  readonly laying: Laying;
  /** Main rows and columns. */
  readonly down: number;
  readonly across: number;
  /** Half the diagonal of a block with its share of the sashing: the lattice's unit. */
  readonly half: number;
  /** How far a corner of a block, or of a cornerstone, lies from its middle, level or upright. */
  readonly blockReach: number;
  readonly stoneReach: number;
}

/** Rows slant upward: their frame is turned so far clockwise from the top's. */
const slant: EighthTurn = 315;

/**
 * Where everything of the middle lies, finished, from its upper left corner: across × down main cells and those between
 * them, √2 · across · pitch wide, where the pitch is a block's side and one sash.
 *
 * @source docs/formulas.md#on-point
 */
export const setOnPoint = (
  design: OnPointTop,
  blocks: ReadonlyMap<string, DraftedBlock>,
): Outcome<SetMiddle, SettingProblem> => {
  const side = squareSideOf(design, blocks);
  if (!side.ok) return side;
  const sash = sashWidth(design.sashing);
  if (!sash.ok) return sash;
  const down = design.rows.length;
  const across = design.rows[0]?.length ?? 0;
  const blockReach = side.value / Math.SQRT2;
  const stoneReach = sash.value / Math.SQRT2;
  const set: PointSet = {
    design,
    laying: { placed: [], strips: [] },
    down,
    across,
    half: blockReach + stoneReach,
    blockReach,
    stoneReach,
  };
  const rows: TopRow[] = [];
  for (let line = 0; line < down + across; line++) {
    if (design.sashing) rows.push({ kind: 'sashes', parts: sashRow(set, { sashing: design.sashing, line }) });
    if (line < down + across - 1) rows.push({ kind: 'blocks', parts: blockRow(set, line) });
  }
  const core: Assembly = {
    run: 'down',
    angle: slant,
    stage: 'rows',
    of: 0,
    parts: rows.map(({ parts }, of) => ({
      run: 'across',
      angle: slant,
      stage: 'row',
      of,
      parts: parts.map((thing) => ({ thing })),
    })),
  };
  return done({
    width: tidy(2 * across * set.half),
    height: tidy(2 * down * set.half),
    ...set.laying,
    rows,
    assembly: { core, round: { angle: slant, parts: corners(set) } },
  });
};

/** Nothing where there is none. */
const sashWidth = (sashing: SashingDesign | null): Outcome<Length, SettingProblem> => {
  if (sashing === null) return done(length(0));
  const [across, down] = [length(toNumber(sashing.across)), length(toNumber(sashing.down))];
  return across === down
    ? done(across)
    : refused([{ code: 'setting/sash-widths', path: '/top/sashing/width', across, down }]);
};

/**
 * The row whose cells' middles have x + y = 2 · line + 2, from lower left to upper right: main cells and cells between
 * by turns, with a setting triangle at each end that is no corner of the set.
 */
const blockRow = (set: PointSet, line: number): readonly TopThing[] => {
  const { down, across, design } = set;
  const total = 2 * line + 2;
  const first = Math.max(1, total - (2 * down - 1));
  const last = Math.min(2 * across - 1, total - 1);
  const at = (x: number): Place => [x, total - x];
  const parts: TopThing[] = [];
  const sash = (x: number): void => {
    const { sashing } = design;
    if (sashing) parts.push(laySash(set, { sashing, middle: at(x), runs: 'down' }));
  };
  if (line !== down - 1) parts.push(sideTriangle(set, at(first - 1)));
  sash(first - 0.5);
  for (let x = first; x <= last; x++) {
    parts.push(layCellAt(set, at(x)));
    sash(x + 0.5);
  }
  if (line !== across - 1) parts.push(sideTriangle(set, at(last + 1)));
  return parts;
};

/** Above row `line`, where x + y = 2 · line + 1: half a cornerstone, sashes and cornerstones by turns, half a cornerstone. */
const sashRow = (
  set: PointSet,
  { sashing, line }: { readonly sashing: SashingDesign; readonly line: number },
): readonly TopThing[] => {
  const total = 2 * line + 1;
  const first = Math.max(0, total - 2 * set.down);
  const last = Math.min(2 * set.across, total);
  const at = (x: number): Place => [x, total - x];
  const fabric = sashing.cornerstones ?? sashing.fabric;
  const stone = (x: number): TopThing => {
    const points = shapeAt(set, at(x), halfOrWhole(set, at(x), set.stoneReach));
    return layStrip(set.laying, plainShape({ role: 'cornerstone', fabric, path: '/top/sashing', points }));
  };
  const parts: TopThing[] = [stone(first)];
  for (let x = first; x < last; x++) {
    parts.push(laySash(set, { sashing, middle: at(x + 0.5), runs: 'across' }), stone(x + 1));
  }
  return parts;
};

type Offsets = readonly (readonly [x: number, y: number])[];

const shapeAt = ({ half }: PointSet, [x, y]: Place, offsets: Offsets): Polygon =>
  offsets.map(([dx, dy]): Point => at(tidy(x * half + dx), tidy(y * half + dy)));

/** A square standing on its corner, clockwise from the top; on an edge of the set the half inside, clockwise. */
const halfOrWhole = ({ across, down }: PointSet, [x, y]: Place, reach: number): Offsets => {
  const [top, right, bottom, left] = [
    [0, -reach],
    [reach, 0],
    [0, reach],
    [-reach, 0],
  ] as const;
  if (x === 0) return [top, right, bottom];
  if (x === 2 * across) return [bottom, left, top];
  if (y === 0) return [right, bottom, left];
  return y === 2 * down ? [left, top, right] : [top, right, bottom, left];
};

const sideTriangle = (set: PointSet, place: Place): TopThing =>
  layTriangle(set, 'side-triangle', shapeAt(set, place, halfOrWhole(set, place, set.blockReach)));

const layTriangle = (
  { laying, design }: PointSet,
  role: Extract<StripRole, 'side-triangle' | 'corner-triangle'>,
  points: Polygon,
): TopThing => layStrip(laying, plainShape({ role, fabric: design.settingFabric, path: '/top/settingFabric', points }));

const corners = (set: PointSet): readonly RoundPart[] => {
  const { across, down, blockReach: b } = set;
  const corner = (side: RoundPart['side'], place: Place, offsets: Offsets): RoundPart => {
    const thing = layTriangle(set, 'corner-triangle', shapeAt(set, place, [[0, 0], ...offsets]));
    return { side, assembly: { thing } };
  };
  // seen along the slanted rows, the set's upper left corner lies at the top
  return [
    corner(
      'top',
      [0, 0],
      [
        [b, 0],
        [0, b],
      ],
    ),
    corner(
      'bottom',
      [2 * across, 2 * down],
      [
        [-b, 0],
        [0, -b],
      ],
    ),
    corner(
      'left',
      [0, 2 * down],
      [
        [0, -b],
        [b, 0],
      ],
    ),
    corner(
      'right',
      [2 * across, 0],
      [
        [0, b],
        [-b, 0],
      ],
    ),
  ];
};

const laySash = (
  set: PointSet,
  of: { readonly sashing: SashingDesign; readonly middle: Place; readonly runs: 'across' | 'down' },
): TopThing => {
  const [long, short] = [set.blockReach / 2, set.stoneReach / 2];
  // along the row toward the upper right, and from row to row toward the lower right
  const [u, v] = of.runs === 'across' ? [long, short] : [short, long];
  const points = shapeAt(set, of.middle, [
    [-u - v, u - v],
    [u - v, -u - v],
    [u + v, v - u],
    [v - u, u + v],
  ]);
  const { fabric } = of.sashing;
  return layStrip(set.laying, plainShape({ role: 'sash', fabric, path: '/top/sashing', points }));
};

const layCellAt = (set: PointSet, place: Place): TopThing => {
  const { design, laying, blockReach } = set;
  const [x, y] = place;
  const isMain = x % 2 === 1;
  const [row, column] = isMain ? [(y - 1) / 2, (x - 1) / 2] : [y / 2 - 1, x / 2 - 1];
  const cell = (isMain ? design.rows : design.between)[row]?.[column] as CellDesign;
  const path = `/top/${isMain ? 'rows' : 'between'}/${row}/${column}`;
  if (cell.kind === 'plain') {
    const points = shapeAt(set, place, halfOrWhole(set, place, blockReach));
    return layStrip(laying, plainShape({ role: 'plain', fabric: cell.fabric, path, points }));
  }
  const { block, colouring, mirror, turn } = cell;
  const box = tidy(2 * blockReach);
  return layBlock(laying, {
    block,
    colouring,
    mirror,
    turn: (turn + 45) as EighthTurn,
    at: [tidy(x * set.half - blockReach), tidy(y * set.half - blockReach)],
    size: [box, box],
    path,
  });
};
