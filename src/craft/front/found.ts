// What is known of the choices of a quilt's ways: those weighed, which of them none beats, and what no choice takes less of.
import { type Length, length } from '#craft/measure';
import type { Bounds } from './bounds.ts';
import type { UnitGroup, WayOption } from './groups.ts';
import type { Choice } from './likely.ts';
import { deviationIn, type FrontPoint } from './weighing.ts';

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

export type Found = ReturnType<typeof openFound>;

/** Choices that were weighed, and what is known of the others. */
export const openFound = (groups: readonly UnitGroup[], now: FrontPoint) => {
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
