// How far is a unit's side likely to come out from its size? One standard deviation of what cuts and seams do to it, by the way in
// which it is made: from the size model of the unit as it is sewn.
import { type Care, type SewnBlock, sensitivity, sizeModels, spreadOf, trueHabit } from '#craft/accuracy';
import { type CutRule, cutFor } from '#craft/cutting';
import { type Length, length } from '#craft/measure';
import { boxOf } from '#ground/plane';
import { type Joined, joinsOf } from './joins.ts';
import { outlinesOf } from './outlines.ts';
import type { Unit } from './unit.ts';
import { rowsIn, type Way } from './ways.ts';

/** In the document's unit, of the way of a unit; the further off of its two sides. */
export type Trueness = (way: Pick<Way, 'name' | 'trimmed'>) => number;

interface Making {
  readonly care: Care;
  /** How far all allowances may be off alike, either way. */
  readonly habit: Length;
  readonly rule: CutRule;
}

/**
 * Cuts, allowances and the habit are equally likely anywhere within their limits, so each deviates by its limit over √3. A trimmed
 * unit has the error of the ruler alone, whatever went before.
 *
 * @source docs/formulas.md#trueness-of-ways
 */
export const truenessOf = (unit: Unit, making: Making): Trueness => {
  const ruler = making.care.cut / Math.sqrt(3);
  let sewn: number | null = null;
  const asSewn = (): number => {
    sewn ??= deviationSewn(unit, making);
    return sewn;
  };
  return ({ name, trimmed }) => {
    // the base of what is flipped has its size, whatever lies on its corners
    if (trimmed || name === 'sew-and-flip') return ruler;
    const slanted = slantedOver(unit);
    if (name === 'two-at-a-time' || name === 'from-half-squares') return ofLayers({ cuts: 1, slanted }, making);
    // the cut through the middle, and half of what the square is off
    return name === 'eight-at-a-time' ? ofLayers({ cuts: 1.25, slanted }, making) : asSewn();
  };
};

/** Two squares with even edges are cut apart on one line: both layers of a unit have the size of one of them. */
const ofLayers = (
  { cuts, slanted }: { readonly cuts: number; readonly slanted: number },
  { care, habit }: Making,
): number =>
  // each slanted seam takes √2 of the allowance
  Math.sqrt((cuts * care.cut ** 2 + 2 * slanted * care.seam ** 2 + 2 * (slanted * habit) ** 2) / 3);

/** Slanted seams that the side goes over. */
const slantedOver = ({ kind }: Unit): number => (kind === 'half-square' ? 1 : 2);

/** Sewn from its pieces one by one; so are geese four at a time, of a large square and four small ones. */
const deviationSewn = (unit: Unit, { care, habit, rule }: Making): number => {
  const block = asBlock(unit, rule);
  const last = block.steps.length - 1;
  const deviations = sizeModels(block, rule.seam)
    .filter(({ step }) => step === last)
    .map((model) =>
      Math.hypot(spreadOf(model, care, trueHabit).deviation, (sensitivity(model).allowance * habit) / Math.sqrt(3)),
    );
  return Math.max(...deviations);
};

const asBlock = (unit: Unit, rule: CutRule): SewnBlock => {
  const outlines = outlinesOf(unit);
  const labels = outlines.map((_, place) => `${place}`);
  return {
    finished: unit.size,
    patches: outlines.map((points, place) => ({ piece: labels[place] as string, points })),
    pieces: outlines.map((points, place) => ({ label: labels[place] as string, cut: cutFor(points, rule) })),
    steps: seamsOf(unit).map(([first, second]) => {
      const { width, height } = boxOf([...first, ...second].flatMap((place) => outlines[place] ?? []));
      return {
        join: [first.join(), second.join()],
        patches: [first, second],
        unfinished: [length(width + 2 * rule.seam), length(height + 2 * rule.seam)],
      };
    }),
  };
};

/** Every seam of a unit that is sewn singly: strips row by row, then the rows. */
const seamsOf = (unit: Unit): readonly Joined[] => {
  if (unit.strips === undefined) return joinsOf(unit, { name: 'singly', roles: unit.patches.map((_, place) => place) });
  const rows = rowsIn(unit);
  const within = rows.flatMap((row) => row.slice(1).map((place, i): Joined => [row.slice(0, i + 1), [place]]));
  return [...within, ...rows.slice(1).map((row, i): Joined => [rows.slice(0, i + 1).flat(), row])];
};
