// Which sheets of a layout are cut alike? They are drawn and described once, with their number.
import type { Layout } from '#craft/cutting';

export interface SheetKind {
  readonly sheet: Layout;
  readonly count: number;
}

export const sheetKindsOf = (sheets: readonly Layout[]): readonly SheetKind[] => {
  const kinds = new Map<string, { sheet: Layout; count: number }>();
  for (const sheet of sheets) {
    const key = JSON.stringify([sheet.width, sheet.length, sheet.strips]);
    const kind = kinds.get(key);
    if (kind === undefined) kinds.set(key, { sheet, count: 1 });
    else kind.count++;
  }
  return [...kinds.values()];
};
