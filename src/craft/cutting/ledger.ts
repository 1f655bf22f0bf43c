// Everything that must be cut, gathered by cloth and size: pieces of one size and shape are one line,
// triangles are counted as the squares that they are cut from.

import type { Length } from '#craft/measure';
import { at, type Polygon, quarterTurned } from '#ground/plane';
import type { StripWay } from './angled.ts';
import { type ChosenWay, chooseWays, pairLying, stripsFor } from './angled-choice.ts';
import { rowOutlines } from './angled-row.ts';
import type { ClothNature, ClothSheet, Cut, Demand } from './cloth.ts';
import { type Lying, lyingOf, type PieceToLay } from './lying.ts';
import { placeIn } from './motif-layout.ts';
import type { CuttingProblem } from './problems.ts';
import { squaresFor } from './squares.ts';
import type { TemplatePair } from './template-pairs.ts';

/** What the piece is for; opaque here. */
export interface Wanted<U> extends PieceToLay {
  readonly fabric: string;
  readonly cut: Pick<Cut, 'shape' | 'size' | 'gives' | 'perSet' | 'setOf' | 'template' | 'stand' | 'pair' | 'ways'>;
  /** Pieces, not squares. */
  readonly count: number;
  readonly use: U;
  /** Cut round a motif of its print: it lies as it lies in its block, whatever else it may. */
  readonly motif?: boolean;
  /** Place in the document, for problems. */
  readonly path: string;
}

export interface ClothLine<U> {
  readonly cut: readonly [across: Length, along: Length];
  readonly shape: Cut['shape'];
  /** Pieces that one gives: of strips at an angle as many as lie in it, of templates 2 where they lie in pairs. */
  readonly gives: number;
  readonly count: number;
  readonly mayTurn: boolean;
  /** Its middle lies on a motif. */
  readonly motif: boolean;
  /** Which diagonal the squares are cut along, as they lie; null where either will do. */
  readonly diagonal: Lying['diagonal'];
  /** Strips at an angle: how the pieces lie in it; else null. */
  readonly way: StripWay | null;
  /** Where several nest in one: as they lie, from its upper left corner. */
  readonly outlines: readonly Polygon[];
  /** What two layers of folded cloth give. */
  readonly onFold: Lying['onFold'];
  readonly uses: readonly (U & { readonly count: number })[];
}

export interface ClothLedger<U> {
  readonly lines: ReadonlyMap<string, readonly ClothLine<U>[]>;
  readonly problems: readonly CuttingProblem[];
}

interface OpenLine<U> {
  readonly line: Omit<ClothLine<U>, 'count' | 'uses' | 'way' | 'outlines'>;
  readonly standing: [number, number, number, number];
  /** Squares and rectangles of ways to make, by the name of their sets: cut in whole sets for all uses together. */
  readonly sets: Map<string, { readonly perSet: number; readonly gives: number; patches: number }>;
  readonly chosen: ChosenWay | null;
  readonly pair: { readonly of: TemplatePair; readonly lying: Lying } | null;
  readonly uses: (U & { count: number })[];
}

/**
 * Lines by fabric, largest pieces first; equal sizes that must not turn stay apart from those that may.
 *
 * @param natures by fabric
 */
export const ledgerOf = <U extends object>(
  wanted: readonly Wanted<U>[],
  natures: ReadonlyMap<string, ClothNature>,
): ClothLedger<U> => {
  const problems: CuttingProblem[] = [];
  const open = new Map<string, Map<string, OpenLine<U>>>();
  const ways = chooseWays(wanted, natures);
  wanted.forEach((want, i) => {
    const nature = natures.get(want.fabric) as ClothNature;
    const chosen = ways[i] ?? null;
    const lying = want.motif ? asInBlock(lyingOf(want, nature), want) : lyingOf(want, nature);
    const problem = chosen === null ? (tooLarge(want, lying, nature) ?? motifProblem(want, lying, nature)) : null;
    if (problem) {
      problems.push(problem);
      return;
    }
    const lines = open.get(want.fabric) ?? new Map<string, OpenLine<U>>();
    open.set(want.fabric, lines);
    const key = chosen
      ? `angled|${chosen.key}`
      : [
          want.cut.shape,
          ...lying.cut,
          lying.mayTurn,
          lying.diagonal,
          lying.outline,
          want.motif === true,
          want.cut.perSet === undefined ? '' : want.cut.gives,
        ].join('|');
    const line: OpenLine<U> = lines.get(key) ?? opened({ want, lying, chosen, nature });
    lines.set(key, line);
    line.standing[lying.standing] += want.count;
    countInSets(line, want);
    line.uses.push({ ...want.use, count: want.count });
  });
  const lines = new Map(
    [...open].map(([fabric, byKey]) => [
      fabric,
      [...byKey.values()]
        .flatMap((line) => closed(line, natures.get(fabric) as ClothNature))
        .sort((a, b) => b.cut[1] - a.cut[1] || b.cut[0] - a.cut[0]),
    ]),
  );
  return { lines, problems };
};

const countInSets = <U>({ sets }: OpenLine<U>, { cut, count }: Wanted<U>): void => {
  const { perSet, gives } = cut;
  if (perSet === undefined) return;
  const name = `${cut.setOf ?? ''}|${perSet}`;
  const known = sets.get(name) ?? { perSet, gives, patches: 0 };
  known.patches += count;
  sets.set(name, known);
};

const piecesOfSets = <U>({ sets }: OpenLine<U>): number =>
  [...sets.values()].reduce(
    (all, { perSet, gives, patches }) => all + perSet * Math.ceil(patches / (perSet * gives)),
    0,
  );

/** A free piece may lie turned; one with a motif in it lies as it does in its block, or as its print stands. */
const asInBlock = (lying: Lying, { cut }: Pick<Wanted<object>, 'cut'>): Lying =>
  lying.mayTurn ? { ...lying, cut: cut.size, mayTurn: false } : lying;

const motifProblem = <U>(
  { motif, path, fabric, cut }: Wanted<U>,
  lying: Lying,
  { repeat, width }: ClothNature,
): CuttingProblem | null => {
  if (!motif || repeat === undefined) return null;
  if (cut.gives > 1) return { code: 'cutting/motif-in-triangle', path, fabric, square: lying.cut[0] };
  const isWithin = placeIn({ from: 0, wide: lying.cut[0], width, repeat }) !== null;
  return isWithin ? null : { code: 'cutting/motif-out-of-reach', path, fabric, needs: lying.cut[0], usable: width };
};

const opened = <U>(of: {
  readonly want: Wanted<U>;
  readonly lying: Lying;
  readonly chosen: ChosenWay | null;
  readonly nature: ClothNature;
}): OpenLine<U> => {
  const { want, chosen, nature } = of;
  const { cut, mayTurn, diagonal } = of.lying;
  // a strip is a rectangle, opened before it is cut at its angle
  const onFold = chosen && of.lying.onFold ? { own: '', mirrored: '' } : of.lying.onFold;
  const pair = chosen ? null : pairLying(want, nature);
  return {
    line: {
      cut,
      shape: chosen ? 'angled' : want.cut.shape,
      gives: want.cut.gives,
      mayTurn,
      motif: want.motif === true,
      diagonal,
      onFold,
    },
    standing: [0, 0, 0, 0],
    sets: new Map(),
    chosen,
    pair: pair && want.cut.pair ? { of: want.cut.pair, lying: pair } : null,
    uses: [],
  };
};

const closed = <U>(open: OpenLine<U>, nature: ClothNature): readonly ClothLine<U>[] => {
  if (open.chosen) return asStrips(open, open.chosen, nature);
  const { line, standing, uses, pair } = open;
  if (pair) return inPairs(open, pair);
  const count =
    open.sets.size > 0
      ? piecesOfSets(open)
      : squaresFor({ gives: line.gives as 1 | 2 | 4, print: nature.print, standing });
  return [{ ...line, count, way: null, outlines: [], uses }];
};

/** Strips as full as the cloth is wide, and one as long as the rest of the pieces needs. */
const asStrips = <U>(open: OpenLine<U>, chosen: ChosenWay, nature: ClothNature): readonly ClothLine<U>[] => {
  const { line, uses } = open;
  const { way, lies } = chosen;
  const strips = stripsFor(chosen, piecesIn(uses), nature);
  if (strips === null) throw new Error('a strip was chosen that its cloth does not hold');
  const cutTo = (long: Length): readonly [Length, Length] =>
    lies === 'across' ? [long, way.size[0]] : [way.size[0], long];
  const lineOf = (gives: number, count: number, long: Length) => {
    const row = rowOutlines(way.row, gives);
    const outlines = lies === 'across' ? row : row.map((outline) => clockwise(outline, way.row.height));
    return { ...line, cut: cutTo(long), gives, count, way, outlines };
  };
  const [inFull, inRest] = parted(uses, strips.full * strips.perStrip);
  return [
    ...(strips.full > 0 ? [{ ...lineOf(strips.perStrip, strips.full, strips.fullLength), uses: inFull }] : []),
    ...(strips.rest > 0 ? [{ ...lineOf(strips.rest, 1, strips.restLength), uses: inRest }] : []),
  ];
};

/** Two by two, and an odd one alone. */
const inPairs = <U>(open: OpenLine<U>, pair: NonNullable<OpenLine<U>['pair']>): readonly ClothLine<U>[] => {
  const { line, uses } = open;
  const count = Math.floor(piecesIn(uses) / 2);
  const { cut, quarters } = pair.lying;
  const outlines = pair.of.outlines.map((outline) =>
    quarters % 2 === 0 ? outline : clockwise(outline, pair.of.size[1]),
  );
  const [paired, alone] = parted(uses, 2 * count);
  return [
    ...(count > 0 ? [{ ...line, cut, gives: 2, count, way: null, outlines, uses: paired }] : []),
    ...(alone.length > 0 ? [{ ...line, gives: 1, count: 1, way: null, outlines: [], uses: alone }] : []),
  ];
};

/** A quarter turn clockwise, in a rectangle so high. */
const clockwise = (outline: Polygon, high: number): Polygon =>
  outline.map((p) => quarterTurned(p, 1)).map((p) => at(p.x + high, p.y));

const piecesIn = (uses: readonly { readonly count: number }[]): number =>
  uses.reduce((all, { count }) => all + count, 0);

/** The uses of the first so many pieces, and of the others. */
const parted = <U>(
  uses: readonly (U & { readonly count: number })[],
  first: number,
): readonly [readonly (U & { readonly count: number })[], readonly (U & { readonly count: number })[]] => {
  let left = first;
  const before: (U & { readonly count: number })[] = [];
  const after: (U & { readonly count: number })[] = [];
  for (const use of uses) {
    const taken = Math.min(left, use.count);
    left -= taken;
    if (taken > 0) before.push({ ...use, count: taken });
    if (taken < use.count) after.push({ ...use, count: use.count - taken });
  }
  return [before, after];
};

const tooLarge = (
  { path, fabric }: { readonly path: string; readonly fabric: string },
  { cut, mayTurn }: Lying,
  nature: ClothNature,
): CuttingProblem | null => {
  if (nature.stock !== undefined) return tooLargeForStock({ path, fabric, cut, mayTurn }, nature.stock);
  const isNarrow = cut[0] <= nature.width + 1e-9;
  if (nature.length === null)
    return isNarrow ? null : { code: 'cutting/wider-than-cloth', path, fabric, needs: cut, usable: nature.width };
  if (isNarrow && cut[1] <= nature.length + 1e-9) return null;
  return { code: 'cutting/larger-than-sheet', path, fabric, needs: cut, sheet: [nature.width, nature.length] };
};

/** None of its kinds has room for the piece; the largest is told. */
const tooLargeForStock = (
  piece: { readonly path: string; readonly fabric: string } & Pick<Lying, 'cut' | 'mayTurn'>,
  stock: readonly ClothSheet[],
): CuttingProblem | null => {
  const { path, fabric, cut, mayTurn } = piece;
  const fits = ([across, along]: readonly [Length, Length], size: ClothSheet['size']): boolean =>
    across <= size[0] + 1e-9 && along <= size[1] + 1e-9;
  if (stock.some(({ size }) => fits(cut, size) || (mayTurn && fits([cut[1], cut[0]], size)))) return null;
  const largest = stock.reduce((a, b) => (b.size[0] * b.size[1] > a.size[0] * a.size[1] ? b : a));
  return { code: 'cutting/larger-than-sheet', path, fabric, needs: cut, sheet: largest.size };
};

export const demandsOf = (lines: readonly ClothLine<object>[]): readonly Demand[] =>
  lines.map(({ cut, count, mayTurn, motif }) => ({
    across: cut[0],
    along: cut[1],
    count,
    mayTurn,
    ...(motif ? { motif } : {}),
  }));

/** By line: the one whose pieces the lower layer gives where the cloth is folded; null where they are of no use. */
export const twinsOf = (lines: readonly ClothLine<object>[]): readonly (number | null)[] => {
  const keyOf = ({ cut, mayTurn }: ClothLine<object>, face: string): string => JSON.stringify([cut, mayTurn, face]);
  const byFace = new Map(lines.map((line, i) => [line.onFold && keyOf(line, line.onFold.own), i]));
  const found = lines.map((line, i) => {
    if (line.onFold === null) return null;
    if (line.onFold.own === line.onFold.mirrored) return i;
    return byFace.get(keyOf(line, line.onFold.mirrored)) ?? null;
  });
  // no line is the twin of two
  return found.map((twin, i) => (twin !== null && found[twin] === i ? twin : null));
};
