// Which cloth something new is of, until the maker says another.
import type { QuiltDocument } from '#craft/design';
import { lightnessOf, parseColour } from '#craft/fabric';

type Fabrics = QuiltDocument['fabrics'];

/** The lightest and the darkest. */
export const ends = (fabrics: Fabrics): { readonly light: string; readonly dark: string } => {
  const sorted = fabrics
    .flatMap(({ id, colour }) => {
      const read = parseColour(colour);
      return read.ok ? [{ id, lightness: lightnessOf(read.value) }] : [];
    })
    .toSorted((a, b) => b.lightness - a.lightness);
  return { light: sorted[0]?.id ?? '', dark: sorted.at(-1)?.id ?? '' };
};

/** As other plain pieces are, or as the setting triangles or sashes; else the lightest. */
export const usualPlain = ({ top, fabrics }: Pick<QuiltDocument, 'top' | 'fabrics'>): string => {
  const cells = [...(top.rows ?? []), ...(top.between ?? [])].flat();
  const plain = cells.flatMap((cell) => ('plain' in cell ? [cell.plain] : []));
  return plain[0] ?? top.settingFabric ?? top.sashing?.fabric ?? ends(fabrics).light;
};
