// Strips at an angle and pairs of templates take less cloth by their area; do they in a layout too? Where a first layout is
// shorter without them, they are let go.
import { chooseWays } from '#craft/cutting';
import type { Natures } from './natures.ts';
import { quickLength } from './quick-length.ts';
import type { WantedPiece } from './wanted-pieces.ts';

/**
 * The same pieces, some without a pair, some without ways to be cut from strips. By that first layout they take no more
 * cloth than all of them do, nor than none.
 */
export const nestedWell = (pieces: readonly WantedPiece[], natures: Natures): readonly WantedPiece[] => {
  if (pieces.every(({ cut }) => !cut.pair && !cut.ways?.length)) return pieces;
  const best = pairedWell(inStripsWell(pieces, natures), natures);
  const none = pieces.map((piece) => ({ ...piece, cut: { ...piece.cut, ways: [], pair: null } }));
  const cloths = new Set(pieces.flatMap(({ fabric, cut }) => (cut.pair || cut.ways?.length ? [fabric] : [])));
  return isShorter({ without: none, than: best, cloths, natures }) ? none : best;
};

/** Way by way over all cloths, as it was chosen. */
const inStripsWell = (pieces: readonly WantedPiece[], natures: Natures): readonly WantedPiece[] => {
  const chosen = chooseWays(pieces, natures);
  const keys = [...new Set(chosen.flatMap((way) => (way ? [way.key] : [])))];
  let best = pieces;
  for (const key of keys) {
    const without = best.map((piece, i) =>
      chosen[i]?.key === key ? { ...piece, cut: { ...piece.cut, ways: [] } } : piece,
    );
    const cloths = new Set(pieces.flatMap(({ fabric }, i) => (chosen[i]?.key === key ? [fabric] : [])));
    if (isShorter({ without, than: best, cloths, natures })) best = without;
  }
  return best;
};

const pairedWell = (pieces: readonly WantedPiece[], natures: Natures): readonly WantedPiece[] => {
  let best = pieces;
  for (const cloth of new Set(pieces.flatMap(({ fabric, cut }) => (cut.pair ? [fabric] : [])))) {
    const without = best.map((piece) =>
      piece.fabric === cloth && piece.cut.pair ? { ...piece, cut: { ...piece.cut, pair: null } } : piece,
    );
    if (isShorter({ without, than: best, cloths: new Set([cloth]), natures })) best = without;
  }
  return best;
};

const isShorter = (of: {
  readonly without: readonly WantedPiece[];
  readonly than: readonly WantedPiece[];
  readonly cloths: ReadonlySet<string>;
  readonly natures: Natures;
}): boolean => {
  const { natures } = of;
  const all = (pieces: readonly WantedPiece[]): number =>
    [...of.cloths].reduce((sum, fabric) => sum + quickLength({ fabric, natures, pieces }), 0);
  return all(of.without) < all(of.than) - 1e-9;
};
