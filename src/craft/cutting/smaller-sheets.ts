// Could a sheet of a layout be a smaller one that costs no more? Then the larger is left for another quilt. Strips stay as they are.
import { length } from '#craft/measure';
import type { ClothSheet, LaidSheet, LaidSheets } from './cloth.ts';

/** Sheet by sheet, the fullest first; of each kind no more are taken than there are. */
export const onSmallerSheets = (laid: LaidSheets, kinds: readonly ClothSheet[]): LaidSheets => {
  const used = kinds.map((_, kind) => laid.sheets.filter((sheet) => sheet.kind === kind).length);
  const sheets = laid.sheets.map((sheet): LaidSheet => {
    const better = smallerFor(sheet, { kinds, used });
    if (better === null) return sheet;
    used[sheet.kind] = (used[sheet.kind] ?? 0) - 1;
    used[better] = (used[better] ?? 0) + 1;
    const [width, long] = (kinds[better] as ClothSheet).size;
    return { ...sheet, kind: better, width, length: long };
  });
  const cost = sheets.reduce((sum, { kind }) => sum + (kinds[kind] as ClothSheet).cost, 0);
  const width = length(Math.max(laid.layout.width, ...sheets.map((sheet) => sheet.width)));
  return {
    ...laid,
    sheets: sheets.toSorted((a, b) => a.kind - b.kind),
    layout: { ...laid.layout, width },
    cost: Math.min(cost, laid.cost),
  };
};

const smallerFor = (
  sheet: LaidSheet,
  { kinds, used }: { readonly kinds: readonly ClothSheet[]; readonly used: readonly number[] },
): number | null => {
  const wide = Math.max(0, ...sheet.strips.flatMap(({ parts }) => parts.map((part) => part.at + part.width)));
  const long = sheet.strips.reduce((sum, { height }) => sum + height, 0);
  const now = kinds[sheet.kind] as ClothSheet;
  const areaOf = ({ size }: ClothSheet): number => size[0] * size[1];
  const better = kinds
    .map((kind, i) => ({ kind, i, isLeft: kind.stock === null || (used[i] ?? 0) < kind.stock }))
    .filter(({ kind, isLeft }) => isLeft && wide <= kind.size[0] + 1e-9 && long <= kind.size[1] + 1e-9)
    .filter(({ kind }) => kind.cost <= now.cost && areaOf(kind) < areaOf(now) - 1e-9)
    .toSorted((a, b) => areaOf(a.kind) - areaOf(b.kind) || a.i - b.i);
  return better[0]?.i ?? null;
};
