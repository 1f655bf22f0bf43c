// Backing: panels of the cloth's width joined side by side, upright or level, whichever takes less cloth.

import { convert, type Length, length, tidy, type Unit } from '#craft/measure';
import { rational, toNumber } from '#ground/exact';

/** Taken from each panel at a join: 1/2 in (common practice, no source). */
export const joinAllowance = (unit: Unit): Length =>
  length(toNumber(convert(rational(1, 2), { from: 'in', to: unit })));

export interface BackingPanels {
  readonly run: 'upright' | 'level';
  readonly panels: number;
  /** As cut, [across the cloth, along it]: whole widths, the last as wide as needed. */
  readonly cuts: readonly (readonly [Length, Length])[];
  /** Along the cloth, all panels. */
  readonly length: Length;
}

/**
 * Where the way is left open both are counted and the shorter length is taken; upright when equal.
 *
 * @param size  of the backing, overage included
 * @param width usable width of the cloth
 * @param join  allowance of each panel at a join
 * @source docs/formulas.md#backing
 */
export const backingFor = (backing: {
  readonly size: readonly [Length, Length];
  readonly width: Length;
  readonly join: Length;
  readonly run: BackingPanels['run'] | 'least';
}): BackingPanels => {
  const upright = panelsFor({ ...backing, spans: backing.size[0], long: backing.size[1], run: 'upright' });
  const level = panelsFor({ ...backing, spans: backing.size[1], long: backing.size[0], run: 'level' });
  if (backing.run !== 'least') return backing.run === 'upright' ? upright : level;
  return level.length < upright.length - 1e-9 ? level : upright;
};

export const panelsFor = (of: {
  readonly spans: Length;
  readonly long: Length;
  readonly width: Length;
  readonly join: Length;
  readonly run: 'upright' | 'level';
}): BackingPanels => {
  const taken = 2 * of.join;
  const panels = Math.max(1, Math.ceil((of.spans - taken) / (of.width - taken) - 1e-9));
  const last = of.spans + (panels - 1) * (taken - of.width);
  const cuts = Array.from({ length: panels }, (_, i) => [i + 1 < panels ? of.width : tidy(last), of.long] as const);
  return { run: of.run, panels, cuts, length: length(panels * of.long) };
};
