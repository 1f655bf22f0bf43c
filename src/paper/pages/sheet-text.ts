// Which sheet is this of a drawing that goes over several?
import type { SheetPlace } from '#paper/drawing';

/** "sheet 2 of 6: row 1, place 2"; nothing where one is all. */
export const sheetText = ({ number, row, column }: SheetPlace, count: number): string =>
  count === 1 ? '' : `sheet ${number} of ${count}: row ${row}, place ${column}`;
