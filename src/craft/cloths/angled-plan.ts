// The blocks' pieces that are cut from strips at an angle, as it was chosen over the whole quilt.
import { type ChosenWay, type Cut, chooseWays, rowOutlines, stripsFor } from '#craft/cutting';
import type { BlockPlan, Note, PlannedPiece } from '#craft/plan';
import type { Natures } from './natures.ts';
import type { WantedPiece } from './wanted-pieces.ts';

/**
 * A piece is told as angled where all that is cut for it comes from strips; where one of its cloths forbids that, it stays a
 * template, and the list of the other cloths still has the strips.
 *
 * @param pieces all of the quilt
 */
export const withStrips = (of: {
  readonly blocks: readonly BlockPlan[];
  readonly pieces: readonly WantedPiece[];
  readonly natures: Natures;
  readonly pathOf: (block: string) => string;
}): { readonly blocks: readonly BlockPlan[]; readonly notes: readonly Note[] } => {
  const ways = chooseWays(of.pieces, of.natures);
  if (ways.every((way) => way === null)) return { blocks: of.blocks, notes: [] };
  const chosen = new Map<string, (ChosenWay | null)[]>();
  of.pieces.forEach(({ use }, i) => {
    if (use.role !== 'block') return;
    const name = nameOf({ id: use.block, ...use }, use.label);
    const list = chosen.get(name);
    if (list) list.push(ways[i] ?? null);
    else chosen.set(name, [ways[i] ?? null]);
  });
  const blocks = of.blocks.map((block) => ({
    ...block,
    pieces: block.pieces.map((piece) => fromStrips(piece, chosen.get(nameOf(block, piece.label)) ?? [], of.natures)),
  }));
  return { blocks, notes: blocks.flatMap((block) => markNotes(block, of.pathOf(block.id))) };
};

/** More pieces than a strip holds, so that it is as long as may be. */
const plenty = 1e6;

const nameOf = (
  entry: { readonly id: string | null; readonly colouring: string | null; readonly mirror: boolean },
  label: string,
): string => JSON.stringify([entry.id, entry.colouring, entry.mirror, label]);

const fromStrips = (piece: PlannedPiece, all: readonly (ChosenWay | null)[], natures: Natures): PlannedPiece => {
  const [first] = all;
  const nature = natures.get(piece.fabric);
  if (!first || !nature || all.some((one) => one?.way.key !== first.way.key)) return piece;
  const { way } = first;
  const cut: Cut = {
    shape: 'angled',
    finished: way.finished,
    exact: way.exact,
    size: way.size,
    gives: stripsFor(first, plenty, nature)?.perStrip ?? 1,
    // as it lies in the strip, so that its grain is the strip's
    template: way.cutBy === 'template' ? { points: rowOutlines(way.row, 1)[0] ?? [], seamLine: way.seamLine } : null,
    way,
    alone: piece.cut,
  };
  return { ...piece, cut };
};

/** Ruled strips that no mark fits: their pieces are not trimmed, so the maker must know. */
const markNotes = (block: BlockPlan, path: string): readonly Note[] =>
  block.pieces.flatMap(({ label, cut: { exact, size, way } }): readonly Note[] => {
    if (way?.cutBy !== 'ruler' || size.every((side, i) => Math.abs(side - (exact[i] as number)) <= 1e-9)) return [];
    const { cuts } = way;
    return [{ code: 'cutting/strip-off-marks', level: 'warning', path, block: block.id, label, cuts, exact, size }];
  });
