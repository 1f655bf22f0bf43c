// Which ways to make the units of a quilt are worth choosing? Those that no other choice beats in cloth, minutes and trueness at
// once. Every choice is weighed before it is told; of many units the likeliest choices are weighed first.
import { naturesOf, type QuiltPlan } from '#craft';
import { type Length, length } from '#craft/measure';
import type { Recall } from '#ground/recall';
import { type Bounds, boundsOf } from './bounds.ts';
import { countedParts } from './counted-parts.ts';
import type { UnitGroup, WayOption } from './groups.ts';
import { type LeastLaid, leastLaid } from './least-laid.ts';
import { type Choice, likelyChoices } from './likely.ts';
import { inGroups, partsOf, type QuiltParts, takenIn } from './parts.ts';
import { mostTold, toldPoints } from './told.ts';
import { chosenNow, deviationIn, type FrontPoint, takenBy, weighingFor } from './weighing.ts';

/** What a point is best in. */
export type FrontEnd = 'cloth' | 'minutes' | 'trueness';

export interface Front {
  readonly groups: readonly UnitGroup[];
  /** No point is beaten by another; from the least cloth on. */
  readonly points: readonly FrontPoint[];
  /** As the document has it; it need not be one of the points. */
  readonly now: FrontPoint;
  readonly tried: number;
  /** Choices that there are. */
  readonly choices: number;
  /** All of them were weighed: nothing better exists under first layouts. */
  readonly isWhole: boolean;
  /** In which no choice at all is better than the best of the points, weighed or not. */
  readonly proven: readonly FrontEnd[];
  /** What no choice at all takes less of, however it is laid out; null where that is not known. */
  readonly least: { readonly cloth: Length | null; readonly minutes: number | null };
}

export interface FrontTask {
  readonly plan: QuiltPlan;
  /** Choices weighed at most. */
  readonly steps: number;
  /** Where there are no more than this, all are weighed, however few steps. */
  readonly whole?: number;
  /** Steps of layout search for each cloth of the quilt as it is and of those points that take least, once the front stands. */
  readonly search?: number;
  /**
   * Rounds of laying out what may take least cloth (`leastLaid`): before the likeliest choices are weighed, and once the front stands.
   * Of the choice that then takes least, each cloth's layout is searched so many steps.
   */
  readonly laying?: { readonly first: number; readonly after: number; readonly search: number };
  readonly memory?: Recall;
}

/** Our own figures: on the sampler of the examples some two seconds until the front stands. */
export const usualFront = { steps: 40, whole: 120, search: 1, laying: { first: 60, after: 400, search: 36 } } as const;
/** Choices whose layouts are searched, at most: our own figure, for time's sake. */
const mostSearched = 6;

/**
 * One `next()` cuts the quilt in some of the ways that are open to it, weighs one choice, or searches the layouts of one; each gives the
 * front so far, the same one while nothing is new, the last one all that was found.
 *
 * @source docs/formulas.md#trade-offs
 */
export function* searchFront({ plan, memory, ...task }: FrontTask): Generator<Front, Front, void> {
  const remembered = memory ? { memory } : {};
  const { groups, cutIn, weigh } = weighingFor(plan, memory);
  const present = chosenNow(plan, groups);
  const nowCut = cutIn(present);
  const now = nowCut && weigh(present, takenBy(nowCut));
  if (nowCut === null || now === null) throw new Error('the quilt as it is has no plan');
  const found = openFound(groups, now);
  const steps = found.choices <= (task.whole ?? 0) ? found.choices : task.steps;
  const beginning = found.front();
  yield beginning;
  const cutting = partsOf({ now: nowCut, groups, ...remembered });
  let cut = cutting.next();
  // nothing is weighed by that
  for (; !cut.done; cut = cutting.next()) yield beginning;
  const parts = cut.value;
  const weighed = (choice: Choice, searched = 0): Front => {
    const cut = parts ? null : cutIn(choice);
    const taken = parts ? takenIn(parts, choice) : cut && takenBy(cut);
    found.add(choice, taken && weigh(choice, taken, searched));
    return found.front();
  };
  const natures = naturesOf(plan.quilt);
  const counted = parts && { plan, parts, natures, counts: countedParts(parts, natures) };
  const bounds = counted && boundsOf({ ...counted, groups: groups.length, ...remembered });
  const laying =
    counted && openLaying({ search: leastLaid(counted), parts: counted.parts, groups: groups.length, found });
  if (bounds !== null) {
    const nearest = found.boundCloth(bounds);
    if (nearest !== null && found.tried() < steps) yield weighed(nearest);
  }
  if (laying !== null && task.laying !== undefined) {
    yield* laying.goOn(task.laying.first);
    for (const choice of laying.least(mostLaid))
      if (found.isNew(choice) && found.tried() < steps) yield weighed(choice);
  }
  // what may be quicker than the quickest is weighed until there is no more of it
  const nextQuicker = (most: number): Choice | null =>
    bounds === null || found.tried() >= most ? null : found.boundMinutes(bounds);
  for (let next = nextQuicker(steps / 2); next !== null; next = nextQuicker(steps / 2)) yield weighed(next);
  const likely = likelyChoices(groups, { most: steps });
  while (found.tried() < steps) {
    const choice = likely.find(found.isNew) ?? found.beside();
    if (choice === undefined) break;
    yield weighed(choice);
  }
  if (bounds !== null) found.boundMinutes(bounds);
  const { search = 0 } = task;
  const searched = new Set<string>();
  for (
    let next: Choice | null = present;
    search > 0 && next !== null && searched.size < mostSearched;
    next = unsearched(found.front(), searched)
  ) {
    searched.add(next.join());
    yield weighed(next, search);
  }
  if (laying !== null && task.laying !== undefined) {
    const hard = task.laying.search;
    const [before] = laying.least(1);
    if (before !== undefined) yield weighed(before, hard);
    yield* laying.goOn(task.laying.after);
    for (const choice of laying.least(1)) if (choice.join() !== before?.join()) yield weighed(choice, hard);
  }
  return found.front();
}

/** Choices of least cloth that are weighed, as far as they are laid. */
const mostLaid = 3;

/** Lays out what may take least cloth for as many rounds as one likes, and tells the bound as it rises. */
const openLaying = (of: {
  readonly search: Generator<LeastLaid, LeastLaid, void>;
  readonly parts: QuiltParts;
  readonly groups: number;
  readonly found: ReturnType<typeof openFound>;
}) => {
  const { search, parts, groups, found } = of;
  let at = search.next();
  return {
    goOn: function* (rounds: number): Generator<Front, void, void> {
      let front = found.front();
      for (let round = 0; round < rounds && at.done !== true; round++) {
        at = search.next();
        if (found.raiseCloth(at.value.bound)) front = found.front();
        yield front;
      }
    },
    least: (most: number): readonly Choice[] => at.value.least(most).map((taken) => inGroups(parts, taken, groups)),
  };
};

/** Of the told points that were not searched the one that takes least cloth. The others of the front stay as they were seen at a first glance. */
const unsearched = ({ points }: Front, searched: ReadonlySet<string>): Choice | null =>
  toldPoints(points, mostTold).find(({ choice }) => !searched.has(choice.join()))?.choice ?? null;

/** Choices that were weighed, and what is known of the others. */
const openFound = (groups: readonly UnitGroup[], now: FrontPoint) => {
  const choices = groups.reduce((product, { options }) => product * options.length, 1);
  // a choice that has no plan is null: it need not be tried again
  const known = new Map<string, FrontPoint | null>([[now.choice.join(), now]]);
  const isNew = (choice: Choice): boolean => !known.has(choice.join());
  const points = (): readonly FrontPoint[] => [...known.values()].filter((point) => point !== null);
  const quickest = (): number => Math.min(...points().map(({ minutes }) => minutes));
  let leastCloth: Length | null = null;
  let leastMinutes: number | null = null;
  const raiseCloth = (bound: number): boolean => {
    const before = leastCloth;
    leastCloth = length(Math.max(before ?? 0, bound));
    return leastCloth !== before;
  };
  const front = (): Front => {
    const isWhole = known.size === choices;
    const all = points();
    const minutes = isWhole ? quickest() : leastMinutes;
    const weighedLeast = isWhole ? length(Math.min(...all.map(({ clothBound }) => clothBound))) : null;
    const least = {
      cloth: greaterOf(leastCloth, weighedLeast),
      minutes: minutes === null ? null : Math.min(minutes, quickest()),
    };
    const proven = provenEnds({ groups, points: all, isWhole, least });
    return {
      groups,
      points: unbeaten(all),
      now: known.get(now.choice.join()) ?? now,
      tried: known.size,
      choices,
      isWhole,
      proven,
      least,
    };
  };
  return {
    front,
    choices,
    isNew,
    tried: () => known.size,
    add: (choice: Choice, point: FrontPoint | null): void => void known.set(choice.join(), point),
    /** Where the likely choices end, one way at a time is changed, first in what is best so far: layouts alone tell the cloth. */
    beside: (): Choice | undefined =>
      [...front().points, ...known.values()]
        .flatMap((point) => (point === null ? [] : neighbours(point.choice, groups)))
        .find(isNew),
    /** @returns whether more is known */
    raiseCloth,
    /** @returns the choice that may take least, if it is new */
    boundCloth: ({ leastCloth: least }: Bounds): Choice | null => {
      const { choice, bound } = least();
      raiseCloth(bound - hair);
      return choice !== null && isNew(choice) ? choice : null;
    },
    /** @returns a new choice that may be quicker than all so far; null where there is none, or none was found in time */
    boundMinutes: ({ quickest: least }: Bounds): Choice | null => {
      // minutes are told in whole ones
      const below = quickest() - 0.5 - hair;
      const { choice, bound } = least({ below, isKnown: (choice) => !isNew(choice) });
      leastMinutes = bound >= below ? quickest() : Math.round(bound - hair);
      return choice;
    },
  };
};

const greaterOf = (a: Length | null, b: Length | null): Length | null =>
  a === null || b === null ? (a ?? b) : length(Math.max(a, b));

/** Squares of deviations add up over the groups, so that the truest choice of all is known. */
const provenEnds = ({
  groups,
  points,
  isWhole,
  least,
}: Pick<Front, 'groups' | 'points' | 'isWhole' | 'least'>): readonly FrontEnd[] => {
  const truest = groups.map(({ options }) =>
    options.reduce((best, { deviation }, i) => (deviation < (options[best] as WayOption).deviation ? i : best), 0),
  );
  const ends: readonly (readonly [FrontEnd, number | null, (point: FrontPoint) => number])[] = [
    ['cloth', least.cloth, ({ cloth }) => cloth],
    ['minutes', least.minutes, ({ minutes }) => minutes],
    ['trueness', deviationIn(groups, truest), ({ deviation }) => deviation],
  ];
  return ends.flatMap(([end, bound, of]) =>
    isWhole || (bound !== null && points.some((point) => of(point) <= bound + hair)) ? [end] : [],
  );
};

const neighbours = (choice: Choice, groups: readonly UnitGroup[]): readonly Choice[] =>
  groups.flatMap(({ options }, group) =>
    options.flatMap((_, option) =>
      option === choice[group] ? [] : [choice.map((own, i) => (i === group ? option : own))],
    ),
  );

/** Points that none beats; of those alike in all three the first. */
const unbeaten = (points: readonly FrontPoint[]): readonly FrontPoint[] =>
  points
    .filter((point, i) => !points.some((other, j) => beats(other, point) || (j < i && isLike(other, point))))
    .toSorted((a, b) => a.cloth - b.cloth || a.minutes - b.minutes || a.deviation - b.deviation);

const hair = 1e-9;

const threeOf = ({ cloth, minutes, deviation }: FrontPoint) => [cloth, minutes, deviation] as const;

const beats = (a: FrontPoint, b: FrontPoint): boolean => {
  const pairs = threeOf(a).map((value, i) => value - (threeOf(b)[i] as number));
  return pairs.every((by) => by < hair) && pairs.some((by) => by < -hair);
};

const isLike = (a: FrontPoint, b: FrontPoint): boolean =>
  threeOf(a).every((value, i) => Math.abs(value - (threeOf(b)[i] as number)) <= hair);
