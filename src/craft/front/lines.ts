// Pieces of one size that are cut from one cloth, counted before anything is laid out. Parts of a quilt meet in such lines alone:
// triangles of several blocks share squares, and pieces share the strip that they are cut from.
import type { WantedPiece } from '#craft';
import { type ClothLine, type ClothNature, ledgerOf } from '#craft/cutting';
import type { Length } from '#craft/measure';
import { signedArea } from '#ground/plane';

/** What is alike of all pieces in a line. Lines that a cloth's own list keeps apart may be one here: that only makes them fewer. */
export interface CutLine {
  readonly fabric: string;
  readonly size: readonly [across: Length, along: Length];
  readonly mayTurn: boolean;
  /** Patches that one piece gives. */
  readonly gives: number;
  /** Pieces that may nest in each other: how large they are on cloth is not known, only their area. */
  readonly nests: boolean;
  /** Of one piece. */
  readonly area: number;
}

/** What is cut in a line. */
export interface CutCount {
  /** Of pieces that several patches share: with others of the line the last one is filled. */
  readonly patches: number;
  /** Pieces cut in whole sets. */
  readonly pieces: number;
}

/** By the name of their line. */
export type CutCounts = ReadonlyMap<string, CutCount>;

/** Whole pieces. With a print that stands upright it may take more. */
export const piecesIn = ({ patches, pieces }: CutCount, { gives }: CutLine): number =>
  pieces + Math.ceil(patches / gives - 1e-9);

/** As if pieces could be shared to the last bit: never more than the whole ones, and it adds up. */
export const sharedIn = ({ patches, pieces }: CutCount, { gives }: CutLine): number => pieces + patches / gives;

/** What pieces are counted in: lines are added to `lines` as they are met. */
export const countedIn = (
  lines: Map<string, CutLine>,
  pieces: readonly WantedPiece[],
  natures: ReadonlyMap<string, ClothNature>,
): CutCounts => {
  const counts = new Map<string, { patches: number; pieces: number }>();
  const sets = new Map<string, { readonly line: string; readonly perSet: number; patches: number }>();
  const countOf = (key: string): { patches: number; pieces: number } => {
    const count = counts.get(key) ?? { patches: 0, pieces: 0 };
    counts.set(key, count);
    return count;
  };
  for (const piece of pieces) {
    const found = lineOf(piece, natures);
    // what fits no cloth has no plan
    if (found === null) continue;
    const { key, line } = found;
    lines.set(key, line);
    const { perSet, setOf } = piece.cut;
    const count = countOf(key);
    if (perSet === undefined || line.nests) {
      count.patches += piece.count;
      continue;
    }
    const name = JSON.stringify([key, setOf, perSet]);
    const set = sets.get(name) ?? { line: key, perSet, patches: 0 };
    set.patches += piece.count;
    sets.set(name, set);
  }
  for (const { line, perSet, patches } of sets.values())
    countOf(line).pieces += perSet * Math.ceil(patches / (perSet * (lines.get(line) as CutLine).gives));
  return counts;
};

const lineOf = (
  piece: WantedPiece,
  natures: ReadonlyMap<string, ClothNature>,
): { readonly key: string; readonly line: CutLine } | null => {
  const { fabric, cut } = piece;
  if (cut.pair || cut.ways?.length) {
    const [across, along] = cut.size;
    const area = cut.template ? Math.abs(signedArea(cut.template.points)) : 0;
    const line = { fabric, size: [across, along], mayTurn: false, gives: 1, nests: true, area } as const;
    return { key: JSON.stringify(['nests', fabric, area]), line };
  }
  const [laid] = ledgerOf([piece], natures).lines.get(fabric) ?? [];
  if (laid === undefined) return null;
  const { mayTurn, gives } = laid;
  const line = { fabric, size: laid.cut, mayTurn, gives, nests: false, area: laid.cut[0] * laid.cut[1] } as const;
  return { key: keyOf(piece, laid), line };
};

const keyOf = ({ fabric, cut }: WantedPiece, laid: ClothLine<object>): string =>
  JSON.stringify([
    fabric,
    laid.shape,
    laid.cut,
    laid.gives,
    laid.mayTurn,
    laid.diagonal,
    laid.motif,
    cut.perSet !== undefined,
  ]);
