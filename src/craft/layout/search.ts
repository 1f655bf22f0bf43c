// Which search finds the least cloth for a job, and how is it led? The exact answer where pieces are few, strips of two
// stages, strips of three; three stages never take more cloth than two.
import { fewPieces } from '#craft/few-pieces';
import {
  type Cutting,
  type IntegerSolver,
  type Job,
  lengthOf,
  levelChoicesFor,
  levelsFor,
  type ShopStep,
  type StripSearch,
  type StripsFound,
  type StripUse,
} from '#craft/strips';
import { type StripHeights, searchThreeStages } from '#craft/three-stage';
import { searchTwoStages } from '#craft/two-stage';

export interface LayoutSearchTask {
  readonly job: Job;
  readonly cutting: Cutting;
  /** Where given, what the maker pays is decided first, the least length afterwards. */
  readonly shop: ShopStep | null;
  /** Proves more, and finds a little more; without one everything works. */
  readonly solver: IntegerSolver | null;
}

/**
 * One step is one `next()`: the first gives a whole layout, each later one the best so far.
 *
 * @returns whole units of the job; strips may hold more than the demand (`withoutSurplus`)
 */
export const searchLayout = (task: LayoutSearchTask): StripSearch =>
  task.cutting.stages === 2 ? searchFlat(task) : searchStacked(task, task.cutting.stripHeights);

function* searchFlat(task: LayoutSearchTask): StripSearch {
  const search = searchTwoStages(task);
  const first = search.next();
  if (first.done === true) return first.value;
  yield first.value;
  return fewPieces(task) ?? (yield* search);
}

/** Steps of the search for three stages to one of the search for two, whose layouts are layouts of three as well. */
const stackedToFlat = 3;

function* searchStacked(task: LayoutSearchTask, stripHeights: StripHeights): StripSearch {
  const flat = searchTwoStages(task);
  let plain = flat.next();
  const stacked = searchThreeStages({ ...task, stripHeights, start: startFor(task.job, plain.value.strips) });
  let found = stacked.next();
  if (found.done === true) return found.value;
  // a bound that counts area holds for any cutting
  const area = plain.value.boundKind === 'area' ? plain.value.bound : 0;
  yield { ...found.value, bound: Math.max(found.value.bound, Math.min(area, found.value.length)) };
  const exact = fewPieces(task);
  if (exact !== null) return exact;
  for (let step = 1; found.done !== true; step++) {
    if (step % (stackedToFlat + 1) === 0 && plain.done !== true) plain = flat.next();
    else found = stacked.next();
    const best = shorter(found.value, plain.value);
    if (best.bound >= best.length) return best;
    yield best;
  }
  return shorter(found.value, plain.value);
}

/** The shortest of the plain heuristics, one piece below another among them. */
const startFor = (job: Job, flat: readonly StripUse[]): readonly StripUse[] =>
  levelChoicesFor(job)
    .filter(({ piling }) => piling === 'stacked')
    .map((choice) => levelsFor(job, choice))
    .reduce((best, strips) => (lengthOf(strips) < lengthOf(best) ? strips : best), flat);

/** The shorter layout; what is proven is proven of three stages. */
const shorter = (stacked: StripsFound, flat: StripsFound): StripsFound =>
  flat.length < stacked.length ? { ...stacked, strips: flat.strips, length: flat.length } : stacked;
