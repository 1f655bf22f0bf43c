// How a unit is turned at the machine: the new piece lies on top, right edges together, so the edge to
// be sewn must come to the right hand.
import type { Side } from '#craft/design';

export type QuarterTurns = 0 | 90 | 180 | 270;

/** Clockwise turn from the board that brings a side to the right hand. */
const fromBoard: Readonly<Record<Side, QuarterTurns>> = { right: 0, top: 90, left: 180, bottom: 270 };

/**
 * Clockwise turn from the way the unit lay when its last seam was sewn. A unit that lies turned on the
 * board adds its own turn; slanted ones count as the nearest quarter.
 *
 * @param next   where the new piece lies, seen from the unit, on the board
 * @param before where the last piece lay on the unit as it was made; null for a single piece, which is laid as it is taken up
 * @param turn   clockwise turn of the unit on the board from the way it was made, radians
 * @source docs/formulas.md#machine-turn
 */
export const machineTurn = (move: {
  readonly next: Side;
  readonly before: Side | null;
  readonly turn: number;
}): QuarterTurns => {
  if (move.before === null) return 0;
  const own = Math.round(move.turn / (Math.PI / 2)) * 90;
  const turn = fromBoard[move.next] + own - fromBoard[move.before];
  return (((turn % 360) + 360) % 360) as QuarterTurns;
};
