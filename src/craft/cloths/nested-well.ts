// Strips at an angle and pairs of templates take less cloth by their area; do they in a layout too? Where a first layout is
// shorter without them, they are let go.
import { chooseWays } from '#craft/cutting';
import type { Recall } from '#ground/recall';
import type { Natures } from './natures.ts';
import { quickLength } from './quick-length.ts';
import type { WantedPiece } from './wanted-pieces.ts';

export interface Nesting {
  readonly pieces: readonly WantedPiece[];
  readonly natures: Natures;
  readonly memory?: Recall;
}

/**
 * The same pieces, some without a pair, some without ways to be cut from strips. By that first layout they take no more
 * cloth than all of them do, nor than none.
 */
export const nestedWell = (of: Nesting): readonly WantedPiece[] => {
  const { pieces } = of;
  if (pieces.every(({ cut }) => !cut.pair && !cut.ways?.length)) return pieces;
  const best = pairedWell({ ...of, pieces: inStripsWell(of) });
  const none = pieces.map((piece) => ({ ...piece, cut: { ...piece.cut, ways: [], pair: null } }));
  const cloths = new Set(pieces.flatMap(({ fabric, cut }) => (cut.pair || cut.ways?.length ? [fabric] : [])));
  return isShorter({ ...of, without: none, than: best, cloths }) ? none : best;
};

/** Way by way over all cloths, as it was chosen. */
const inStripsWell = (of: Nesting): readonly WantedPiece[] => {
  const { pieces, natures } = of;
  const chosen = chooseWays(pieces, natures);
  const keys = [...new Set(chosen.flatMap((way) => (way ? [way.key] : [])))];
  let best = pieces;
  for (const key of keys) {
    const without = best.map((piece, i) =>
      chosen[i]?.key === key ? { ...piece, cut: { ...piece.cut, ways: [] } } : piece,
    );
    const cloths = new Set(pieces.flatMap(({ fabric }, i) => (chosen[i]?.key === key ? [fabric] : [])));
    if (isShorter({ ...of, without, than: best, cloths })) best = without;
  }
  return best;
};

const pairedWell = (of: Nesting): readonly WantedPiece[] => {
  const { pieces } = of;
  let best = pieces;
  for (const cloth of new Set(pieces.flatMap(({ fabric, cut }) => (cut.pair ? [fabric] : [])))) {
    const without = best.map((piece) =>
      piece.fabric === cloth && piece.cut.pair ? { ...piece, cut: { ...piece.cut, pair: null } } : piece,
    );
    if (isShorter({ ...of, without, than: best, cloths: new Set([cloth]) })) best = without;
  }
  return best;
};

const isShorter = (
  of: Omit<Nesting, 'pieces'> & {
    readonly without: readonly WantedPiece[];
    readonly than: readonly WantedPiece[];
    readonly cloths: ReadonlySet<string>;
  },
): boolean => {
  const all = (pieces: readonly WantedPiece[]): number =>
    [...of.cloths].reduce((sum, fabric) => sum + quickLength({ ...of, fabric, pieces }), 0);
  return all(of.without) < all(of.than) - 1e-9;
};
