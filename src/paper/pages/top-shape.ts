// How many rows, sections and borders a top has, as people count them.
import type { QuiltPlan } from '#craft';
import type { Assembly } from '#craft/setting';

export interface TopShape {
  readonly rows: number;
  /** Sewn like rows of blocks, but nobody calls them that. */
  readonly sashRows: number;
  /** The middle itself is none. */
  readonly sections: number;
  /** A pieced border and its spacers are one. */
  readonly borders: number;
}

export const topShape = ({ top }: QuiltPlan): TopShape => {
  const { rows, borders, assembly } = top.set;
  const sashRows = rows.filter(({ kind }) => kind === 'sashes').length;
  return {
    rows: rows.length - sashRows,
    sashRows,
    sections: rows.length > 0 ? 0 : runsIn(assembly) - 1,
    borders: new Set(borders.map(({ border }) => border)).size,
  };
};

const runsIn = (assembly: Assembly): number =>
  'run' in assembly ? 1 + assembly.parts.reduce((sum, part) => sum + runsIn(part), 0) : 0;
