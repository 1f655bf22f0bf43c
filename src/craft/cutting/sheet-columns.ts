// Sheets cut into columns first: one strip as high as the sheet, its parts the columns, pieces one below another. Where
// tall pieces meet low ones this can take fewer sheets than strips across.
import { type Length, tidy } from '#craft/measure';
import type { Demand, Strip } from './cloth.ts';

interface Column {
  readonly width: number;
  used: number;
  readonly pieces: number[];
}

/** Beyond so many pieces strips serve as well, and columns would be slow. */
const mostPieces = 2_000;

/**
 * Widest first, each into the first column with room, else a new column in the first sheet with room. Nothing is turned.
 *
 * @returns the strip of each sheet; null for too many pieces
 */
export const columnSheets = (task: {
  readonly size: readonly [Length, Length];
  readonly demands: readonly Demand[];
}): readonly (readonly Strip[])[] | null => {
  const { size, demands } = task;
  const pieces = demands.flatMap(({ count }, of) => Array.from({ length: count }, () => of));
  if (pieces.length > mostPieces) return null;
  const sizeOf = (of: number): Demand => demands[of] as Demand;
  const order = pieces.toSorted(
    (a, b) => sizeOf(b).across - sizeOf(a).across || sizeOf(b).along - sizeOf(a).along || a - b,
  );
  const sheets: { used: number; readonly columns: Column[] }[] = [];
  for (const of of order) {
    const { across, along } = sizeOf(of);
    const open = sheets.flatMap(({ columns }) => columns).find(({ used }) => used + along <= size[1] + 1e-9);
    if (open) {
      open.pieces.push(of);
      open.used += along;
      continue;
    }
    const column = { width: across, used: along, pieces: [of] };
    const sheet = sheets.find(({ used }) => used + across <= size[0] + 1e-9);
    if (sheet) {
      sheet.columns.push(column);
      sheet.used += across;
    } else sheets.push({ used: across, columns: [column] });
  }
  return sheets.map(({ columns }) => [stripOf(columns, demands)]);
};

const stripOf = (columns: readonly Column[], demands: readonly Demand[]): Strip => {
  let x = 0;
  const parts = columns.map(({ width, pieces }) => {
    let y = 0;
    const laid = pieces.map((of) => {
      const { across, along } = demands[of] as Demand;
      const piece = { at: tidy(y), cut: [across, along] as const, turned: false, of };
      y += along;
      return piece;
    });
    const part = { at: tidy(x), width: tidy(width), pieces: laid };
    x += width;
    return part;
  });
  return { at: tidy(0), height: tidy(Math.max(...columns.map(({ used }) => used))), parts };
};
