// Binding on the bias, cut in one piece from a square: the square is cut from corner to corner, its halves sewn to a slanted
// sheet, lines drawn as far apart as the strip is wide, and the ends sewn to a tube one line out of step.

import { type Length, length, type Unit } from '#craft/measure';

/** Squares come in whole inches, or in steps of 2.5 cm: S38l rounds to the inch; the step in centimetres is our own. */
export const biasStep = (unit: Unit): Length => length(unit === 'in' ? 1 : 2.5);

export interface BiasTask {
  /** Needed, tail included. */
  readonly length: Length;
  /** Of the strip. */
  readonly width: Length;
  /** Allowance of the two seams of the method; 0 for the square of the books, which count none. */
  readonly seam: Length;
  readonly unit: Unit;
}

/**
 * Side of the least square that gives the length.
 *
 * @returns on the step: √(length·width) when no seam is counted, else the root of side² − 4·seam·side = length·width
 * @source docs/formulas.md#bias-binding
 */
export const biasSquareFor = ({ length: needed, width, seam, unit }: BiasTask): Length => {
  const exact = 2 * seam + Math.sqrt(4 * seam * seam + needed * width);
  const step = biasStep(unit);
  return length(Math.ceil(exact / step - 1e-9) * step);
};

/**
 * Length of strip that a square gives.
 *
 * @returns (side² − 4·seam·side) / width: each of the two seams, as long as the side, takes two allowances
 */
export const biasFromSquare = (square: {
  readonly side: Length;
  readonly width: Length;
  readonly seam: Length;
}): Length => length((square.side * square.side - 4 * square.seam * square.side) / square.width);

export interface BiasBinding {
  readonly side: Length;
  readonly squares: number;
  /** Joins between squares. */
  readonly joins: number;
  readonly gives: Length;
}

/**
 * One square where the cloth is wide enough, else as few equal squares as reach round; a join of two takes a strip's
 * width.
 *
 * @param room the largest square of the cloth
 */
export const biasBindingFor = (task: BiasTask & { readonly room: Length }): BiasBinding => {
  const { width, seam, room } = task;
  for (let squares = 1; ; squares++) {
    const share = length((task.length + (squares - 1) * width) / squares);
    const side = biasSquareFor({ ...task, length: share });
    if (side > room + 1e-9 && squares < mostSquares) continue;
    const gives = squares * biasFromSquare({ side, width, seam }) - (squares - 1) * width;
    return { side, squares, joins: squares - 1, gives: length(gives) };
  }
};

/** Beyond it the square stays too large for the cloth, and the list of pieces says so: our own limit. */
const mostSquares = 10_000;
