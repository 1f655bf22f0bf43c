// Which ways to make the units of a quilt are worth choosing? Those that no other choice beats in cloth, minutes and trueness at
// once. Every choice is weighed before it is told; of many units the likeliest choices are weighed first.
import { naturesOf, type QuiltPlan } from '#craft';
import type { Recall } from '#ground/recall';
import { type Bounds, boundsOf } from './bounds.ts';
import { countedParts } from './counted-parts.ts';
import { type Found, type Front, openFound } from './found.ts';
import type { UnitGroup } from './groups.ts';
import { type Laying, openLaying } from './laying.ts';
import { leastLaid } from './least-laid.ts';
import { type Choice, likelyChoices } from './likely.ts';
import { partsOf, takenIn } from './parts.ts';
import { mostTold, toldPoints } from './told.ts';
import { chosenNow, takenBy, weighingFor } from './weighing.ts';

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
  const going: Going = {
    task,
    groups,
    present,
    found,
    weighed,
    steps: found.choices <= (task.whole ?? 0) ? found.choices : task.steps,
    bounds: counted && boundsOf({ ...counted, groups: groups.length, ...remembered }),
    laying: counted && openLaying({ search: leastLaid(counted), parts: counted.parts, groups: groups.length, found }),
  };
  yield* weighingLeast(going);
  yield* weighingQuickest(going);
  yield* weighingLikely(going);
  yield* searchingTold(going);
  yield* layingOn(going);
  return found.front();
}

interface Going {
  readonly task: Omit<FrontTask, 'plan' | 'memory'>;
  readonly groups: readonly UnitGroup[];
  /** As the quilt is. */
  readonly present: Choice;
  readonly found: Found;
  /** The front with that choice weighed, its layouts searched so many steps. */
  readonly weighed: (choice: Choice, searched?: number) => Front;
  /** Choices weighed at most. */
  readonly steps: number;
  /** Null, as `laying`, where a choice is only known as a whole. */
  readonly bounds: Bounds | null;
  readonly laying: Laying | null;
}

type Fronts = Generator<Front, void, void>;

/** What may take least cloth by areas, and what does as far as it is laid. */
function* weighingLeast({ task, found, weighed, steps, bounds, laying }: Going): Fronts {
  const nearest = bounds && found.boundCloth(bounds);
  if (nearest !== null && found.tried() < steps) yield weighed(nearest);
  if (laying === null || task.laying === undefined) return;
  yield* laying.goOn(task.laying.first);
  for (const choice of laying.least(mostLaid)) if (found.isNew(choice) && found.tried() < steps) yield weighed(choice);
}

/** What may be quicker than the quickest, until there is no more of it. */
function* weighingQuickest({ found, weighed, steps, bounds }: Going): Fronts {
  if (bounds === null) return;
  while (found.tried() < steps / 2) {
    const next = found.boundMinutes(bounds);
    if (next === null) return;
    yield weighed(next);
  }
}

function* weighingLikely({ groups, found, weighed, steps, bounds }: Going): Fronts {
  const likely = likelyChoices(groups, { most: steps });
  while (found.tried() < steps) {
    const choice = likely.find(found.isNew) ?? found.beside();
    if (choice === undefined) break;
    yield weighed(choice);
  }
  if (bounds !== null) found.boundMinutes(bounds);
}

function* searchingTold({ task: { search = 0 }, present, found, weighed }: Going): Fronts {
  const searched = new Set<string>();
  for (
    let next: Choice | null = present;
    search > 0 && next !== null && searched.size < mostSearched;
    next = unsearched(found.front(), searched)
  ) {
    searched.add(next.join());
    yield weighed(next, search);
  }
}

/** Of the choice that takes least the layouts are searched hard; then the proof goes on, and what it finds is searched so, too. */
function* layingOn({ task, weighed, laying }: Going): Fronts {
  if (laying === null || task.laying === undefined) return;
  const { after, search } = task.laying;
  const [before] = laying.least(1);
  if (before !== undefined) yield weighed(before, search);
  yield* laying.goOn(after);
  for (const choice of laying.least(1)) if (choice.join() !== before?.join()) yield weighed(choice, search);
}

/** Choices of least cloth that are weighed, as far as they are laid. */
const mostLaid = 3;

/** Of the told points that were not searched the one that takes least cloth. The others of the front stay as they were seen at a first glance. */
const unsearched = ({ points }: Front, searched: ReadonlySet<string>): Choice | null =>
  toldPoints(points, mostTold).find(({ choice }) => !searched.has(choice.join()))?.choice ?? null;
