// Everything that must be cut, gathered by cloth and size: pieces of one size and shape are one line,
// triangles are counted as the squares that they are cut from.

import type { Length } from '#craft/measure';
import type { Polygon } from '#ground/plane';
import type { Cut, Demand } from './cloth.ts';
import type { CuttingProblem } from './problems.ts';

/** What the piece is for; opaque here. */
export interface Wanted<U> {
  readonly fabric: string;
  readonly cut: Pick<Cut, 'shape' | 'size' | 'gives' | 'template'>;
  /** Free: may lie either way. Across or along: its first side lies that way (grain). */
  readonly lie: 'free' | 'across' | 'along';
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
  readonly uses: readonly (U & { readonly count: number })[];
}

export interface ClothLedger<U> {
  readonly lines: ReadonlyMap<string, readonly ClothLine<U>[]>;
  readonly problems: readonly CuttingProblem[];
}

/**
 * Lines by fabric, largest pieces first; equal sizes that must not turn stay apart from those that may.
 *
 * @param usable usable width by fabric
 */
export const ledgerOf = <U extends object>(
  wanted: readonly Wanted<U>[],
  usable: ReadonlyMap<string, Length>,
): ClothLedger<U> => {
  const problems: CuttingProblem[] = [];
  const open = new Map<string, Map<string, { line: ClothLine<U>; pieces: number; uses: (U & { count: number })[] }>>();
  for (const want of wanted) {
    const width = usable.get(want.fabric) as Length;
    const cut = laid(want, width);
    if (cut[0] > width + 1e-9) {
      problems.push({
        code: 'cutting/wider-than-cloth',
        path: want.path,
        fabric: want.fabric,
        needs: cut,
        usable: width,
      });
      continue;
    }
    const lines = open.get(want.fabric) ?? new Map();
    open.set(want.fabric, lines);
    const mayTurn = want.lie === 'free';
    const key = [want.cut.shape, ...cut, mayTurn, outlineKey(want.cut.template?.points)].join('|');
    const known = lines.get(key);
    if (known) {
      known.pieces += want.count;
      known.uses.push({ ...want.use, count: want.count });
    } else {
      const line = { cut, shape: want.cut.shape, gives: want.cut.gives, count: 0, mayTurn, uses: [] };
      lines.set(key, { line, pieces: want.count, uses: [{ ...want.use, count: want.count }] });
    }
  }
  const lines = new Map(
    [...open].map(([fabric, byKey]) => [
      fabric,
      [...byKey.values()]
        .map(({ line, pieces, uses }) => ({ ...line, count: Math.ceil(pieces / line.gives), uses }))
        .sort((a, b) => b.cut[1] - a.cut[1] || b.cut[0] - a.cut[0]),
    ]),
  );
  return { lines, problems };
};

export const demandsOf = (lines: readonly ClothLine<object>[]): readonly Demand[] =>
  lines.map(({ cut, count, mayTurn }) => ({ across: cut[0], along: cut[1], count, mayTurn }));

/** A free piece lies with its long side across, unless the cloth is too narrow for it. */
const laid = <U>(want: Wanted<U>, width: Length): readonly [Length, Length] => {
  const [a, b] = want.cut.size;
  if (want.lie === 'across') return [a, b];
  if (want.lie === 'along') return [b, a];
  const [long, short] = a >= b ? [a, b] : [b, a];
  return long > width + 1e-9 ? [short, long] : [long, short];
};

const outlineKey = (points: Polygon | undefined): string =>
  points?.map((p) => `${p.x.toFixed(6)},${p.y.toFixed(6)}`).join(' ') ?? '';
