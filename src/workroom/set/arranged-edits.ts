// Turns by the rule of an arrangement for chosen places, and on point, where the rows are written out.
import { type Quarters, quartersFor } from '#craft/setting';
import type { QuiltPicture } from '#workroom/compute';
import { changePlaces, heldIn, placesOf } from './place-edits.ts';
import { type ArrangementKind, type CellPlace, cellAt, isBlock, setOf, type Top, type Turn } from './top-edits.ts';

export interface PlacesArranged {
  readonly paths: readonly string[];
  readonly kind: ArrangementKind;
  readonly block: string;
  /** Quarter turns clockwise by which the block's dark half lies off its lower right corner, as drafted. */
  readonly own: Quarters;
  readonly picture: QuiltPicture | null;
}

/** The block in each of the places, turned as the arrangement has it over the box round them. */
export const arrangePlaces = (top: Top, of: PlacesArranged): void => {
  const { paths, kind, block, own, picture } = of;
  const cells = paths.flatMap((path) => {
    const cell = cellAt(path);
    return cell === null ? [] : [{ path, cell }];
  });
  if (cells.length === 0) return;
  const isSlanted = cells.some(({ cell }) => cell.part === 'between');
  const at = new Map(cells.map(({ path, cell }) => [path, isSlanted ? slanted(cell) : [cell.row, cell.place]]));
  const [rows, columns] = [0, 1].map((way) => [...at.values()].map((place) => place[way] as number)) as [
    number[],
    number[],
  ];
  const [top0, left0] = [Math.min(...rows), Math.min(...columns)];
  const quarters = quartersFor({
    kind,
    rows: Math.max(...rows) - top0 + 1,
    columns: Math.max(...columns) - left0 + 1,
  });
  changePlaces(top, {
    paths: [...at.keys()],
    picture,
    change: (_, path) => {
      const [row, column] = at.get(path) as [number, number];
      const turn = (90 * (((quarters[row - top0]?.[column - left0] ?? 0) - own + 4) % 4)) as Turn;
      return turn === 0 ? { block } : { block, turn };
    },
  });
};

/**
 * On point with blocks between the rows too: the row and column of the grid that stands on its corner. Main cells have their
 * middles at odd half diagonals, those between at even ones; along a slanted row x + y grows, from row to row y − x.
 */
const slanted = ({ part, row, place }: CellPlace): readonly [number, number] => {
  const half = part === 'rows' ? 1 : 2;
  const [x, y] = [2 * place + half, 2 * row + half];
  return [(y - x) / 2, (x + y) / 2];
};

/** How the block lies as drafted, from one that the rule has turned. */
export const ownQuarters = (of: { readonly turn: number; readonly quarters: Quarters }): Quarters =>
  ((of.quarters - of.turn / 90 + 4) % 4) as Quarters;

/** On point every place that holds a block now; where none does, all main cells. */
export const placesToArrange = (top: Top, picture: QuiltPicture | null): readonly string[] => {
  const all = placesOf(top, picture).filter((path) => cellAt(path) !== null);
  const heldAt = heldIn(top, picture);
  const held = all.filter((path) => isBlock(heldAt(path)));
  return held.length > 0 ? held : all.filter((path) => cellAt(path)?.part === 'rows');
};

/** Whether an arrangement can only be written out: on point, or for some of the places. */
export const isWrittenOut = (top: Top, chosen: readonly string[]): boolean =>
  setOf(top) === 'on-point' || (chosen.length > 1 && chosen.every((path) => cellAt(path) !== null));
