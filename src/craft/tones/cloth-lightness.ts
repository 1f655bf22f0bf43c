// How light each cloth of a quilt is, as most see it or as other eyes do.
import type { Quilt } from '#craft/design';
import { lightnessOf, lightnessSeen, type Sight } from '#craft/fabric';
import { clothsSewnAs } from './scrap-plan.ts';

/** CIE L* of a cloth; of scrappy cloths, which are sewn as one, the mean. */
export const lightnessBy = (
  { fabrics }: Pick<Quilt, 'fabrics'>,
  sight: Sight | null = null,
): ((fabric: string) => number) => {
  const known = new Map(
    fabrics.map(({ id, colour }) => [id, sight === null ? lightnessOf(colour) : lightnessSeen(colour, sight)]),
  );
  return (name) => {
    const all = clothsSewnAs(name).map((id) => known.get(id) as number);
    return all.reduce((sum, one) => sum + one, 0) / all.length;
  };
};
