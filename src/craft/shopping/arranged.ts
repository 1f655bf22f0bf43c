// Are these rows, written out cell by cell, one of the log cabin arrangements? Then they go on as it does.
import type { ArrangementKind, BlockCell, CellRows, QuarterTurn } from '#craft/design';
import { quartersFor } from '#craft/setting';

export interface Arranged {
  readonly kind: ArrangementKind;
  readonly cell: BlockCell;
  /** Quarter turns of the block beyond those of the rule, 0 to 3. */
  readonly beyond: number;
}

const kinds: readonly ArrangementKind[] = [
  'barn-raising',
  'straight-furrow',
  'sunshine-and-shadow',
  'streak-of-lightning',
  'fields-and-furrows',
  'pinwheel',
];

/** Null where blocks differ in more than their turn, where no rule gives their turns, or where two do: a few blocks say too little. */
export const arrangedAs = (rows: CellRows): Arranged | null => {
  const cells = rows.flat();
  const [first] = cells;
  if (first === undefined || first.kind === 'plain') return null;
  const isOneBlock = cells.every(
    (cell) =>
      cell.kind === 'block' &&
      cell.block === first.block &&
      cell.colouring === first.colouring &&
      cell.mirror === first.mirror,
  );
  if (!isOneBlock || cells.every((cell) => cell.kind === 'block' && cell.turn === first.turn)) return null;
  const turns = (cells as readonly BlockCell[]).map(({ turn }) => turn / 90);
  const found = kinds.flatMap((kind) => {
    const rule = quartersFor({ kind, rows: rows.length, columns: rows[0]?.length ?? 0 }).flat();
    const beyond = ((turns[0] as number) - (rule[0] as number) + 4) % 4;
    return rule.every((quarters, i) => (quarters + beyond) % 4 === turns[i]) ? [{ kind, cell: first, beyond }] : [];
  });
  return found.length === 1 ? (found[0] as Arranged) : null;
};

/** The arrangement in another size. */
export const arrangedCells = (
  { kind, cell, beyond }: Arranged,
  counts: { readonly rows: number; readonly columns: number },
): CellRows =>
  quartersFor({ kind, ...counts }).map((row) =>
    row.map((quarters): BlockCell => ({ ...cell, turn: (90 * ((quarters + beyond) % 4)) as QuarterTurn })),
  );
