// One choice of ways for the whole quilt, weighed: what its plan comes to in cloth, minutes, trueness and cost.
import { clothWeigher, type MadeCut, madeCutter, naturesOf, type QuiltPlan, sewnMinutes } from '#craft';
import { type Length, length } from '#craft/measure';
import type { Recall } from '#ground/recall';
import { clothBound } from './cloth-bound.ts';
import { type UnitGroup, unitGroups, type WayOption } from './groups.ts';
import type { Choice } from './likely.ts';
import { methodsFor } from './methods-for.ts';

/** One choice of ways for the whole quilt, weighed. */
export interface FrontPoint {
  /** By group of units: which of its options. */
  readonly choice: Choice;
  /** Over all cloths, of layouts as far as they were searched, before squaring and shrinkage; of sheets their whole length. */
  readonly cloth: Length;
  /** No layout of this choice is shorter, over all cloths. */
  readonly clothBound: Length;
  readonly minutes: number;
  /** One standard deviation of the side of a unit, over all units. */
  readonly deviation: Length;
  /** As far as cloths have prices; null where none has. */
  readonly cost: number | null;
}

/** What a choice has sewn and finished, in minutes, and what is cut for it, as `madeCutter` has it. */
export interface Taken {
  readonly minutes: number;
  readonly pieces: MadeCut['pieces'];
}

export interface Weighing {
  /** Those that have more than one way, or would but for their cloth. */
  readonly groups: readonly UnitGroup[];
  /** Null where the choice has no plan. */
  readonly cutIn: (choice: Choice) => MadeCut | null;
  /** With so many steps of layout search for each cloth, else at a first glance. Null where a piece has no room on its cloth. */
  readonly weigh: (choice: Choice, taken: Taken, steps?: number) => FrontPoint | null;
}

/** Of a whole quilt. */
export const takenBy = (cut: MadeCut): Taken => ({ minutes: sewnMinutes(cut), pieces: cut.pieces });

/** The figures are those of the plan, which need not be made in whole. */
export const weighingFor = (plan: QuiltPlan, memory?: Recall): Weighing => {
  const remembered = memory ? { memory } : {};
  const cutFor = madeCutter(plan.quilt, remembered);
  const clothFor = clothWeigher(plan.quilt, remembered);
  const natures = naturesOf(plan.quilt);
  const all = unitGroups(plan);
  const groups = openGroups(all, (choice) => notTakenIn(cutFor(methodsFor(all, choice))));
  return {
    groups,
    cutIn: (choice) => cutFor(methodsFor(groups, choice)),
    weigh: (choice, { minutes, pieces }, steps = 0) => {
      const laid = clothFor(pieces, steps);
      return (
        laid && {
          choice,
          cloth: clothOf(laid.fabrics),
          clothBound: length(laid.fabrics.reduce((all, cloth) => all + clothBound(cloth, natures), 0)),
          minutes: Math.round(laid.cutting + minutes),
          deviation: deviationIn(groups, choice),
          cost: laid.cost.total,
        }
      );
    },
  };
};

/** Groups of which a way was not gone: joined through. */
const notTakenIn = (made: MadeCut | null): ReadonlySet<string> =>
  new Set((made?.notes ?? []).flatMap((note) => (note.code === 'ways/not-taken' ? [note.path] : [])));

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
  cloth: clothOf(plan.fabrics),
  minutes: plan.time.minutes,
  cost: plan.cost.total,
});

/** Over all cloths. */
const clothOf = (fabrics: QuiltPlan['fabrics']): Length =>
  length(
    fabrics.reduce(
      (all, { laid }) =>
        all + ('sheets' in laid ? laid.sheets.reduce((sum, sheet) => sum + sheet.length, 0) : laid.layout.length),
      0,
    ),
  );

export const deviationIn = (groups: readonly UnitGroup[], choice: Choice): Length => {
  const units = groups.reduce((all, { count }) => all + count, 0);
  const squares = groups.reduce((all, { count, options }, i) => {
    const { deviation } = options[choice[i] as number] as WayOption;
    return all + count * deviation * deviation;
  }, 0);
  return Math.sqrt(units === 0 ? 0 : squares / units) as Length;
};

/** The ways that the document chooses now; what is not open stands for singly. */
export const chosenNow = (plan: QuiltPlan, groups: readonly UnitGroup[]): Choice => {
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
