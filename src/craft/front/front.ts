// Which ways to make the units of a quilt are worth choosing? Those that no other choice beats in cloth, minutes and trueness at
// once. Every choice is planned before it is told; of many units the likeliest choices are planned first.
import { madePlanner, type QuiltPlan } from '#craft';
import type { Method } from '#craft/design';
import type { Length } from '#craft/measure';
import { type Rational, rational } from '#ground/exact';
import type { Recall } from '#ground/recall';
import { type UnitGroup, unitGroups, type WayOption } from './groups.ts';
import { type Choice, likelyChoices } from './likely.ts';

/** One choice of ways for the whole quilt, planned. */
export interface FrontPoint {
  /** By group of units: which of its options. */
  readonly choice: Choice;
  /** Over all cloths, of layouts found at a first glance, before squaring and shrinkage; of sheets their whole length. */
  readonly cloth: Length;
  readonly minutes: number;
  /** One standard deviation of the side of a unit, over all units. */
  readonly deviation: Length;
  /** As far as cloths have prices; null where none has. */
  readonly cost: number | null;
}

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
  /** All of them were planned: nothing better exists under first layouts. */
  readonly isWhole: boolean;
  /** In which no choice at all is better than the best of the points, planned or not. */
  readonly proven: readonly FrontEnd[];
}

export interface FrontTask {
  readonly plan: QuiltPlan;
  /** Choices planned at most. */
  readonly steps: number;
  readonly memory?: Recall;
}

/** Our own figure: on the sampler of the examples some two seconds of processor time. */
export const usualFrontSteps = 40;

/**
 * One `next()` plans one choice; each gives the front so far, the last one all that was found.
 *
 * @source docs/formulas.md#trade-offs
 */
export function* searchFront({ plan, steps, memory }: FrontTask): Generator<Front, Front, void> {
  const planMade = madePlanner(plan.quilt, {
    budget: { steps: 0 },
    fold: 'where-asked',
    weighed: true,
    ...(memory ? { memory } : {}),
  });
  const planned = (choice: Choice, groups: readonly UnitGroup[]): FrontPoint | null =>
    pointOf(planMade, { groups, choice });
  const all = unitGroups(plan);
  const groups = openGroups(all, (choice) => notTakenIn(planMade(methodsFor(all, choice))));
  const choices = groups.reduce((product, { options }) => product * options.length, 1);
  const present = chosenNow(plan, groups);
  const now = planned(present, groups);
  if (now === null) throw new Error('the quilt as it is has no plan');
  // a choice that has no plan is null: it need not be tried again
  const known = new Map<string, FrontPoint | null>([[present.join(), now]]);
  const front = (): Front => {
    const points = [...known.values()].filter((point) => point !== null);
    const isWhole = known.size === choices;
    return {
      groups,
      points: unbeaten(points),
      now,
      tried: known.size,
      choices,
      isWhole,
      proven: provenEnds({ groups, points, isWhole }),
    };
  };
  const likely = likelyChoices(groups, { most: steps });
  const isNew = (choice: Choice): boolean => !known.has(choice.join());
  // layouts alone tell the cloth: where the likely choices end, one way at a time is changed, first in what is best so far
  const nextBeside = (): Choice | undefined =>
    [...front().points, ...known.values()]
      .flatMap((point) => (point === null ? [] : neighbours(point.choice, groups)))
      .find(isNew);
  yield front();
  while (known.size < steps) {
    const choice = likely.find(isNew) ?? nextBeside();
    if (choice === undefined) break;
    known.set(choice.join(), planned(choice, groups));
    yield front();
  }
  return front();
}

/** What the document writes for a choice: every way but singly. */
export const methodsFor = (groups: readonly UnitGroup[], choice: Choice): readonly Method[] =>
  groups.flatMap(({ unit, size, fabrics, options }, i): readonly Method[] => {
    const { way, trimmed } = options[choice[i] as number] as WayOption;
    if (way === 'singly' && !trimmed) return [];
    return [{ unit, size: [exactly(size[0]), exactly(size[1])], fabrics, way, trimmed, path: `/methods/${i}` }];
  });

/** As a fraction that a person would write, where there is one. */
const exactly = (value: number): Rational => {
  for (let parts = 1; parts <= 64; parts++) {
    const whole = Math.round(value * parts);
    if (Math.abs(whole - value * parts) < 1e-7) return rational(whole, parts);
  }
  return rational(Math.round(value * 1e6), 1e6);
};

type MadePlanner = ReturnType<typeof madePlanner>;

const pointOf = (
  planMade: MadePlanner,
  { groups, choice }: { readonly groups: readonly UnitGroup[]; readonly choice: Choice },
): FrontPoint | null => {
  const made = planMade(methodsFor(groups, choice));
  return made.ok ? { choice, ...figuresOf(made.value), deviation: deviationIn(groups, choice) } : null;
};

/** Groups of which a way was not gone in a plan: joined through. */
const notTakenIn = (made: ReturnType<MadePlanner>): ReadonlySet<string> =>
  new Set(made.ok ? made.value.notes.flatMap((note) => (note.code === 'ways/not-taken' ? [note.path] : [])) : []);

/** Squares of deviations add up over the groups, so that the truest choice of all is known; cloth and minutes are known by planning all. */
const provenEnds = (of: {
  readonly groups: readonly UnitGroup[];
  readonly points: readonly FrontPoint[];
  readonly isWhole: boolean;
}): readonly FrontEnd[] => {
  if (of.isWhole) return ['cloth', 'minutes', 'trueness'];
  const truest = of.groups.map(({ options }) =>
    options.reduce((best, { deviation }, i) => (deviation < (options[best] as WayOption).deviation ? i : best), 0),
  );
  const least = deviationIn(of.groups, truest);
  return of.points.some(({ deviation }) => deviation <= least + hair) ? ['trueness'] : [];
};

/** Groups that some way is open to, once the order of joining has been asked. */
const openGroups = (
  groups: readonly UnitGroup[],
  notTaken: (choice: Choice) => ReadonlySet<string>,
): readonly UnitGroup[] => {
  if (groups.every(({ options }) => options.length === 1)) return groups;
  const refused = notTaken(groups.map(({ options }) => options.length - 1));
  return groups.map((group, i) =>
    refused.has(`/methods/${i}`)
      ? {
          ...group,
          options: group.options.slice(0, 1),
          closed: [
            ...group.closed,
            ...[...new Set(group.options.slice(1).map(({ way }) => way))]
              .filter((way) => way !== 'singly')
              .map((way) => ({ way, why: 'not-a-unit' as const })),
          ],
        }
      : group,
  );
};

export const figuresOf = (plan: QuiltPlan): Pick<FrontPoint, 'cloth' | 'minutes' | 'cost'> => ({
  cloth: plan.fabrics.reduce(
    (all, { laid }) =>
      all + ('sheets' in laid ? laid.sheets.reduce((sum, sheet) => sum + sheet.length, 0) : laid.layout.length),
    0,
  ) as Length,
  minutes: plan.time.minutes,
  cost: plan.cost.total,
});

const deviationIn = (groups: readonly UnitGroup[], choice: Choice): Length => {
  const units = groups.reduce((all, { count }) => all + count, 0);
  const squares = groups.reduce((all, { count, options }, i) => {
    const { deviation } = options[choice[i] as number] as WayOption;
    return all + count * deviation * deviation;
  }, 0);
  return Math.sqrt(units === 0 ? 0 : squares / units) as Length;
};

/** The ways that the document chooses now; what is not open stands for singly. */
const chosenNow = (plan: QuiltPlan, groups: readonly UnitGroup[]): Choice => {
  const made = plan.blocks.flatMap(({ steps }) => steps.flatMap((step) => step.made ?? []));
  return groups.map(({ unit, size, fabrics, options }) => {
    const own = made.find(
      (one) =>
        one.unit.kind === unit &&
        Math.abs(Math.max(...one.unit.size) - size[0]) < 1e-6 &&
        Math.abs(Math.min(...one.unit.size) - size[1]) < 1e-6 &&
        one.unit.fabrics.every((fabric) => fabrics.includes(fabric)) &&
        fabrics.every((fabric) => one.unit.fabrics.includes(fabric)),
    );
    const at = options.findIndex(({ way, trimmed }) => way === own?.way.name && trimmed === own.way.trimmed);
    return Math.max(0, at);
  });
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
