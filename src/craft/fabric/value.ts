// Is a cloth light, medium or dark among the cloths of its quilt? Value is relative: the same grey is light beside black
// and dark beside white.

export type Value = 'light' | 'medium' | 'dark';

/** Below this the eye does not sort two cloths apart: our own choice, a third of what neighbours should differ by. */
const leastGap = 5;

/** Where one group is all there is, the scale itself decides; a proposal, not a standard (docs/sources.md). */
const scale = { light: 70, medium: 40 } as const;

/**
 * The quilt's cloths sorted by lightness and cut at the two widest gaps of at least 5; one such gap parts light from dark,
 * and with none the scale decides: light from 70, medium from 40.
 *
 * @param lightness CIE L* of each cloth, by id
 * @source docs/formulas.md#value
 */
export const valuesOf = (lightness: ReadonlyMap<string, number>): ReadonlyMap<string, Value> => {
  const sorted = [...lightness.values()].toSorted((a, b) => a - b);
  const cuts = sorted
    .slice(1)
    .map((above, i) => ({ at: (above + (sorted[i] as number)) / 2, gap: above - (sorted[i] as number) }))
    .filter(({ gap }) => gap >= leastGap)
    .toSorted((a, b) => b.gap - a.gap || a.at - b.at)
    .slice(0, 2)
    .map(({ at }) => at)
    .toSorted((a, b) => a - b);
  const [low = 0, high = low] = cuts;
  const classOf = (own: number): Value => {
    if (cuts.length === 0) return onScale(own);
    if (own < low) return 'dark';
    return own < high ? 'medium' : 'light';
  };
  return new Map([...lightness].map(([id, own]) => [id, classOf(own)]));
};

const onScale = (own: number): Value => {
  if (own >= scale.light) return 'light';
  return own >= scale.medium ? 'medium' : 'dark';
};

/** Light and dark read apart from this difference of L* on: a proposal, not a standard (docs/sources.md). */
export const readsApart = 15;

/** Not alike, but the other way round: what is named light is darker, by as much as is seen at a glance. */
export const isReversed = (of: {
  readonly light: { readonly lightness: number };
  readonly dark: { readonly lightness: number };
}): boolean => of.dark.lightness - of.light.lightness >= readsApart;
