// Which templates are rather cut from strips at an angle? Those for which the strips take less cloth than boxes of one and of
// two; all pieces that strips can be shared by are decided on as one, over all cloths alike.
import { type Length, length, upToMark } from '#craft/measure';
import type { StripWay } from './angled.ts';
import { mostInRow, rowLength } from './angled-row.ts';
import type { ClothNature, Cut } from './cloth.ts';
import { lyingOf, type PieceToLay } from './lying.ts';

export interface PiecesToCut extends PieceToLay {
  readonly fabric: string;
  readonly cut: PieceToLay['cut'] & Pick<Cut, 'pair' | 'ways'>;
  readonly count: number;
}

/** A way in one cloth. */
export interface ChosenWay {
  readonly way: StripWay;
  /** Alike for pieces of one cloth that share their strips. */
  readonly key: string;
  /** How the strip lies on the cloth. */
  readonly lies: 'across' | 'along';
}

/**
 * By piece, in their order; null: it stays a template. A one-way print forbids turning, so there only parallel cuts are
 * open; where any print stands upright the strip's edges must lie straight on the cloth.
 *
 * @param natures by fabric
 * @source docs/formulas.md#strips-at-an-angle
 */
export const chooseWays = (
  pieces: readonly PiecesToCut[],
  natures: ReadonlyMap<string, ClothNature>,
): readonly (ChosenWay | null)[] => {
  const open = pieces.map((piece) => openWays(piece, natures.get(piece.fabric) as ClothNature));
  const groups = new Map<string, number[]>();
  open.forEach((ways, i) => {
    if (ways.length === 0) return;
    const name = [...new Set(ways.map(({ key }) => key))].sort().join('|');
    const group = groups.get(name);
    if (group) group.push(i);
    else groups.set(name, [i]);
  });
  const chosen = new Map<number, string>();
  for (const group of groups.values()) {
    const key = bestKey({ group, pieces, open, natures });
    if (key !== null) for (const i of group) chosen.set(i, key);
  }
  return open.map((ways, i) => ways.find(({ key }) => key === chosen.get(i)) ?? null);
};

const openWays = ({ cut, turn }: PiecesToCut, nature: ClothNature): readonly ChosenWay[] => {
  if (cut.shape !== 'template') return [];
  const ways = cut.ways ?? [];
  const plainKey = ({ key, mirrorKey }: StripWay): string => (nature.reversible && mirrorKey < key ? mirrorKey : key);
  if (nature.print === 'none' || turn === null) return ways.map((way) => ({ way, key: plainKey(way), lies: 'across' }));
  const quarters = turn / 90 + (nature.printRuns === 'crosswise' ? 1 : 0);
  return ways.flatMap((way): readonly ChosenWay[] => {
    if (way.lies === 'slanted' || (nature.print === 'one-way' && way.cuts === 'alternate')) return [];
    const lies = (way.lies === 'across') === (quarters % 2 === 0) ? 'across' : 'along';
    // a rhombus that leans the other way stands otherwise to its print
    const leans = nature.reversible ? '' : Math.sign(way.row.lean);
    return [{ way, key: `${plainKey(way)} ${lies} ${leans}`, lies }];
  });
};

const bestKey = (of: {
  readonly group: readonly number[];
  readonly pieces: readonly PiecesToCut[];
  readonly open: readonly (readonly ChosenWay[])[];
  readonly natures: ReadonlyMap<string, ClothNature>;
}): string | null => {
  const { group, pieces, open, natures } = of;
  const counts = new Map<string, number>();
  let least = 0;
  for (const i of group) {
    const piece = pieces[i] as PiecesToCut;
    counts.set(piece.fabric, (counts.get(piece.fabric) ?? 0) + piece.count);
    least += areaOfBoxes(piece, natures.get(piece.fabric) as ClothNature);
  }
  let best: string | null = null;
  // of equal ones the narrowest strip: a mirror image lists its sides in another order
  const inOrder = (open[group[0] as number] as readonly ChosenWay[]).toSorted(
    (a, b) => a.way.size[0] - b.way.size[0] || a.way.size[1] - b.way.size[1],
  );
  for (const ways of inOrder) {
    let area = 0;
    for (const [fabric, count] of counts) {
      const strips = stripsFor(ways, count, natures.get(fabric) as ClothNature);
      area += strips === null ? Number.POSITIVE_INFINITY : strips.area;
    }
    if (area < least - 1e-9) {
      best = ways.key;
      least = area;
    }
  }
  return best;
};

export interface StripsCut {
  readonly perStrip: number;
  /** Strips that are filled, as long as their pieces need: what is left beside them is free for others. */
  readonly full: number;
  readonly fullLength: Length;
  /** Pieces of one strip more, and its length; 0 where the full ones hold all. */
  readonly rest: number;
  readonly restLength: Length;
  readonly area: number;
}

/** Null where not even one piece fits the cloth. */
export const stripsFor = ({ way, lies }: ChosenWay, count: number, nature: ClothNature): StripsCut | null => {
  const [width, long] = roomOf(nature);
  const [most, room] =
    lies === 'across' ? [width, long] : [Number.isFinite(long) ? long : lengthwise(way, count, width), width];
  const perStrip = mostInRow(way.row, length(most));
  if (perStrip === 0 || way.size[0] > room + 1e-9) return null;
  const full = Math.floor(count / perStrip);
  const rest = count - full * perStrip;
  const lengthOf = (pieces: number): Length =>
    length(pieces === 0 ? 0 : Math.min(upToMark(rowLength(way.row, pieces), way.ruler).size, most));
  const [fullLength, restLength] = [lengthOf(perStrip), lengthOf(rest)];
  return { perStrip, full, fullLength, rest, restLength, area: way.size[0] * (full * fullLength + restLength) };
};

/**
 * The most that a lengthwise strip of open cloth may take: strips lie side by side there, and together they are to be no
 * longer than they are wide, lest they make the layout longer; nor longer than the cloth is wide. Our own choice.
 */
const lengthwise = ({ row }: StripWay, count: number, width: number): number => {
  const area = (count * row.height * (row.bottom + row.top)) / 2;
  return Math.min(width, Math.max(Math.sqrt(area), rowLength(row, 1)));
};

const areaOfBoxes = (piece: PiecesToCut, nature: ClothNature): number => {
  const box = lyingOf(piece, nature).cut;
  // of several kinds of sheet a larger one may hold the box
  if (nature.stock === undefined && !fits(box, nature)) return Number.POSITIVE_INFINITY;
  const alone = box[0] * box[1];
  const pair = pairLying(piece, nature);
  if (pair === null) return piece.count * alone;
  return Math.floor(piece.count / 2) * pair.cut[0] * pair.cut[1] + (piece.count % 2) * alone;
};

/** How the box of two lies; null where there is none, it does not fit, or a one-way print forbids turning one of them. */
export const pairLying = (piece: PiecesToCut, nature: ClothNature): ReturnType<typeof lyingOf> | null => {
  const { cut, turn } = piece;
  if (!cut.pair || (nature.print === 'one-way' && turn !== null)) return null;
  const lying = lyingOf({ ...piece, cut: { ...cut, size: cut.pair.size } }, nature);
  return fits(lying.cut, nature) ? lying : null;
};

const fits = ([across, along]: readonly [Length, Length], nature: ClothNature): boolean => {
  const [width, long] = roomOf(nature);
  return across <= width + 1e-9 && along <= long + 1e-9;
};

/** What lies in it fits whatever the cloth comes in: of several kinds of sheet the least, across and along. */
const roomOf = ({ width, length: long, stock }: ClothNature): readonly [number, number] =>
  stock === undefined
    ? [width, long ?? Number.POSITIVE_INFINITY]
    : [Math.min(...stock.map(({ size }) => size[0])), Math.min(...stock.map(({ size }) => size[1]))];
