// Which choice of ways takes least cloth, and how little could any take? Of every choice that is worth laying out, each cloth's pieces are
// laid and bounded by themselves: many choices ask the same of a cloth. Where the bounds are least the layouts are searched on.
import type { QuiltPlan } from '#craft';
import type { ClothNature } from '#craft/cutting';
import { type ClothAsk, clothAsks } from './cloth-asks.ts';
import { endsArea } from './cloth-prices.ts';
import type { CountedParts } from './counted-parts.ts';
import { type LaidCloth, laidCloth } from './laid-cloth.ts';
import { type Choice, everyChoice } from './likely.ts';
import type { QuiltParts } from './parts.ts';
import { worthLaying } from './worth-laying.ts';

export interface LaidTask {
  readonly plan: Pick<QuiltPlan, 'quilt'>;
  readonly natures: ReadonlyMap<string, ClothNature>;
  readonly parts: QuiltParts;
  /** Of those parts. */
  readonly counts: CountedParts;
}

export interface LeastLaid {
  /** No choice takes less, over all cloths. */
  readonly bound: number;
  /** Those that take least as far as they are laid, option by part, at most so many: of choices that ask for the same cloth the quickest. */
  readonly least: (most: number) => readonly Choice[];
}

/** Choices that are looked at, at most: our own figure, for time's sake. */
const mostChoices = 5_000;

/**
 * One `next()` makes the first layout of one cloth or searches one a little longer. Ends where no search can raise the bound any more;
 * with many choices that are worth laying out at once, and without a bound.
 *
 * @source docs/formulas.md#least-cloth
 */
export function* leastLaid(task: LaidTask): Generator<LeastLaid, LeastLaid, void> {
  const choices = choicesOf(task);
  const least = (most: number): readonly Choice[] =>
    leastOf(choices, most).map((choice) => quickestAlike(task, choice));
  let bound = 0;
  while (choices.length > 0) {
    const now = standing(choices);
    bound = now.bound;
    const next = bound >= now.least - hair ? null : mostOpen(now.nearest);
    if (next === null) break;
    next.advance();
    yield { bound, least };
  }
  return { bound, least };
}

const hair = 1e-9;

interface LaidChoice {
  readonly taken: Choice;
  /** Which list of what is cut anyway. */
  readonly lies: number;
  readonly cloths: readonly LaidCloth[];
}

/** Those that ask the same of every cloth once; none where they are too many. */
const choicesOf = (task: LaidTask): readonly LaidChoice[] => {
  const { counts, natures, plan } = task;
  const worth = worthLaying(counts);
  if (worth.reduce((product, list) => product * list.length, 1) > mostChoices) return [];
  const every = everyChoice(worth);
  const asked = clothAsks(counts);
  const cloths = new Map<string, LaidCloth>();
  const clothOf = (ask: ClothAsk): LaidCloth => {
    const { key, fabric } = ask;
    const nature = natures.get(fabric) as ClothNature;
    const cloth = cloths.get(key) ?? laidCloth({ ask, nature, ends: endsArea(plan.quilt, fabric) });
    cloths.set(key, cloth);
    return cloth;
  };
  const found = new Map<string, LaidChoice>();
  for (const lies of counts.fixed.keys())
    for (const taken of every) {
      const asks = asked(taken, lies);
      const key = keyOf(asks);
      if (!found.has(key)) found.set(key, { taken, lies, cloths: asks.map(clothOf) });
    }
  return [...found.values()];
};

const keyOf = (asks: readonly ClothAsk[]): string => asks.map(({ key }) => key).join('/');

const boundOf = ({ cloths }: LaidChoice): number => cloths.reduce((all, cloth) => all + cloth.bound(), 0);
const lengthOf = ({ cloths }: LaidChoice): number => cloths.reduce((all, cloth) => all + cloth.length(), 0);

const standing = (choices: readonly LaidChoice[]) => {
  let nearest = choices[0] as LaidChoice;
  let bound = Number.POSITIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  for (const choice of choices) {
    least = Math.min(least, lengthOf(choice));
    const own = boundOf(choice);
    if (own >= bound) continue;
    bound = own;
    nearest = choice;
  }
  return { bound, nearest, least };
};

/** Of its cloths the one with most between bound and length. */
const mostOpen = ({ cloths }: LaidChoice): LaidCloth | null => {
  const gap = (cloth: LaidCloth): number => cloth.length() - cloth.bound();
  return cloths
    .filter((cloth) => cloth.isOpen() && gap(cloth) > hair)
    .reduce<LaidCloth | null>((most, cloth) => (most === null || gap(cloth) > gap(most) ? cloth : most), null);
};

const leastOf = (choices: readonly LaidChoice[], most: number): readonly LaidChoice[] =>
  choices
    .map((choice) => ({ choice, length: lengthOf(choice) }))
    .filter(({ length }) => Number.isFinite(length))
    .toSorted((a, b) => a.length - b.length)
    .slice(0, most)
    .map(({ choice }) => choice);

/** Part after part the way that is sewn in the least time, where all cloths stay as they are. */
const quickestAlike = ({ parts, counts }: LaidTask, { taken, lies }: LaidChoice): Choice => {
  const asked = clothAsks(counts);
  const key = keyOf(asked(taken, lies));
  return parts.parts.reduce<Choice>((choice, { options }, part) => {
    const inOrder = [...options.entries()].sort(([, a], [, b]) => a.minutes - b.minutes);
    for (const [option] of inOrder) {
      const other = choice.map((own, i) => (i === part ? option : own));
      if (option === choice[part] || keyOf(asked(other, lies)) === key) return other;
    }
    return choice;
  }, taken);
};
