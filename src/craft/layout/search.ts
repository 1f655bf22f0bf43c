// Which search finds the least cloth for a job, and how is it led? The exact answer where pieces are few, strips of two
// stages, strips of three; three stages never take more cloth than two.
import { fewPieces } from '#craft/few-pieces';
import {
  type Cutting,
  type IntegerSolver,
  isPurchaseOpen,
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
import { type Parted, partedOf } from './apart.ts';
import { proofFor } from './shorter.ts';

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
export const searchLayout = (task: LayoutSearchTask): StripSearch => {
  const { job, cutting } = task;
  // of strips as high as some piece, others may need the heights of those that lie alone
  if (cutting.stages === 3 && cutting.stripHeights === 'piece') return searched(task);
  const parted = partedOf(job);
  return parted.alone.length === 0 ? searched(task) : besideAlone(task, parted);
};

const searched = (task: LayoutSearchTask): StripSearch =>
  task.cutting.stages === 2 ? searchFlat(task) : searchStacked(task, task.cutting.stripHeights);

/** The search for the rest, with the pieces that lie alone above it. */
function* besideAlone(task: LayoutSearchTask, { alone, rest, inJob }: Parted): StripSearch {
  const before = lengthOf(alone);
  if (rest.kinds.length === 0) return { strips: alone, length: before, bound: before, boundKind: 'integer' };
  const { shop } = task;
  const search = searched({ ...task, job: rest, shop: shop && { ...shop, before: shop.before + before } });
  let shown: { readonly strips: readonly StripUse[]; readonly all: readonly StripUse[] } = { strips: [], all: alone };
  for (;;) {
    const { value, done } = search.next();
    const { strips, length, bound } = value;
    if (shown.strips !== strips)
      shown = { strips, all: [...alone, ...strips.map((use) => ({ ...use, pattern: inJob(use.pattern) }))] };
    const found = { ...value, strips: shown.all, length: before + length, bound: before + bound };
    if (done === true) return found;
    yield found;
  }
}

function* searchFlat(task: LayoutSearchTask): StripSearch {
  const search = searchTwoStages(task);
  const first = search.next();
  if (first.done === true) return first.value;
  yield first.value;
  return fewPieces(task) ?? (yield* search);
}

/**
 * Of so many steps one is of the search for two stages, whose layouts are layouts of three as well, and one of the proof; three
 * while a step of the shop less is open.
 */
const cycle = 6;

function* searchStacked(task: LayoutSearchTask, stripHeights: StripHeights): StripSearch {
  const flat = searchTwoStages(task);
  let plain = flat.next();
  const stacked = searchThreeStages({ ...task, stripHeights, start: startFor(task.job, plain.value.strips) });
  let found = stacked.next();
  if (found.done === true) return found.value;
  // a bound that counts area holds for any cutting
  const area = plain.value.boundKind === 'area' ? plain.value.bound : 0;
  let proved: Proved = { bound: area, boundKind: 'area' };
  const best = (): StripsFound => atLeast(proved, shorter(found.value, plain.value));
  yield best();
  const exact = fewPieces(task);
  if (exact !== null) return exact;
  const proof = proofFor({ ...task, found: best });
  let isProving = true;
  for (let step = 1; found.done !== true || isProving; step++) {
    const turn = step % cycle;
    const isProofsTurn = turn === 0 || (turn % 2 === 0 && isPurchaseOpen(best(), task.shop));
    if (isProving && (isProofsTurn || found.done === true)) {
      const { value, done } = proof.next();
      if (done !== true && value > best().bound) proved = { bound: value, boundKind: 'linear' };
      if (done === true && value !== null) return value;
      isProving = done !== true;
    } else if (turn === 1 && plain.done !== true) plain = flat.next();
    else found = stacked.next();
    const now = best();
    if (now.bound >= now.length) return now;
    yield now;
  }
  return best();
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

type Proved = Pick<StripsFound, 'bound' | 'boundKind'>;

const atLeast = ({ bound, boundKind }: Proved, found: StripsFound): StripsFound =>
  bound > found.bound ? { ...found, bound: Math.min(bound, found.length), boundKind } : found;
