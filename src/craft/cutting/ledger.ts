// Everything that must be cut, gathered by cloth and size: pieces of one size and shape are one line,
// triangles are counted as the squares that they are cut from.

import type { Length } from '#craft/measure';
import type { ClothNature, ClothSheet, Cut, Demand } from './cloth.ts';
import { type Lying, lyingOf, type PieceToLay } from './lying.ts';
import type { CuttingProblem } from './problems.ts';
import { squaresFor } from './squares.ts';

/** What the piece is for; opaque here. */
export interface Wanted<U> extends PieceToLay {
  readonly fabric: string;
  readonly cut: Pick<Cut, 'shape' | 'size' | 'gives' | 'template' | 'stand'>;
  /** Pieces, not squares. */
  readonly count: number;
  readonly use: U;
  /** Place in the document, for problems. */
  readonly path: string;
}

export interface ClothLine<U> {
  readonly cut: readonly [across: Length, along: Length];
  readonly shape: Cut['shape'];
  readonly gives: 1 | 2 | 4;
  readonly count: number;
  readonly mayTurn: boolean;
  /** Which diagonal the squares are cut along, as they lie; null where either will do. */
  readonly diagonal: Lying['diagonal'];
  readonly uses: readonly (U & { readonly count: number })[];
}

export interface ClothLedger<U> {
  readonly lines: ReadonlyMap<string, readonly ClothLine<U>[]>;
  readonly problems: readonly CuttingProblem[];
}

interface OpenLine<U> {
  readonly line: Omit<ClothLine<U>, 'count' | 'uses'>;
  readonly standing: [number, number, number, number];
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
  for (const want of wanted) {
    const nature = natures.get(want.fabric) as ClothNature;
    const lying = lyingOf(want, nature);
    const problem = tooLarge(want, lying, nature);
    if (problem) {
      problems.push(problem);
      continue;
    }
    const lines = open.get(want.fabric) ?? new Map<string, OpenLine<U>>();
    open.set(want.fabric, lines);
    const { cut, mayTurn, diagonal } = lying;
    const key = [want.cut.shape, ...cut, mayTurn, diagonal, lying.outline].join('|');
    const line = lines.get(key) ?? {
      line: { cut, shape: want.cut.shape, gives: want.cut.gives, mayTurn, diagonal },
      standing: [0, 0, 0, 0],
      uses: [],
    };
    lines.set(key, line);
    line.standing[lying.standing] += want.count;
    line.uses.push({ ...want.use, count: want.count });
  }
  const lines = new Map(
    [...open].map(([fabric, byKey]) => [
      fabric,
      [...byKey.values()]
        .map((line) => closed(line, natures.get(fabric) as ClothNature))
        .sort((a, b) => b.cut[1] - a.cut[1] || b.cut[0] - a.cut[0]),
    ]),
  );
  return { lines, problems };
};

const closed = <U>({ line, standing, uses }: OpenLine<U>, nature: ClothNature): ClothLine<U> => ({
  ...line,
  count: squaresFor({ gives: line.gives, print: nature.print, standing }),
  uses,
});

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
  lines.map(({ cut, count, mayTurn }) => ({ across: cut[0], along: cut[1], count, mayTurn }));
