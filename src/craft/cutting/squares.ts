// How many squares give these triangles, when the print must stand upright in every one? Cut once, a square gives two
// triangles that lie opposite each other; cut twice, four that lie four ways. Nothing about their size.
import type { Print } from '#craft/fabric';

/** Pieces by the way they lie on the cloth, each a quarter turn clockwise from the one before. */
export type Standing = readonly [number, number, number, number];

export interface SquareTask {
  /** Triangles that one square gives; 1 for pieces that are not cut apart. */
  readonly gives: 1 | 2 | 4;
  readonly print: Print;
  readonly standing: Standing;
}

/**
 * The least number of squares. A one-way print makes the four ways four different pieces; a two-way print looks the same
 * upside down, so opposite ones may stand for each other; without direction any triangle of a square serves.
 *
 * @source docs/formulas.md#print-squares
 */
export const squaresFor = ({ gives, print, standing }: SquareTask): number => {
  const [a, b, c, d] = standing;
  if (print === 'none' || gives === 1) return Math.ceil((a + b + c + d) / gives);
  const [upright, level] = print === 'one-way' ? [Math.max(a, c), Math.max(b, d)] : [half(a + c), half(b + d)];
  // cut once, a square gives one diagonal's pair; cut twice, a pair of each
  return gives === 2 ? upright + level : Math.max(upright, level);
};

const half = (count: number): number => Math.ceil(count / 2);
