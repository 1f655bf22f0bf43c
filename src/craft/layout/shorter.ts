// How much shorter could a layout be at most? Lengths are ruled out one after the other, as sheets that do not hold the pieces,
// then by trying all layouts where the pieces are few. What the shop sells in a step less comes first.
import { fewPiecesWithin } from '#craft/few-pieces';
import { isTooShort } from '#craft/sheets';
import { attainableUp, type Cutting, type Job, lengthSoldBelow, type ShopStep, type StripsFound } from '#craft/strips';

export interface ShorterTask {
  readonly job: Job;
  readonly cutting: Cutting;
  /** What stands at present. */
  readonly found: () => Pick<StripsFound, 'length' | 'bound'>;
}

/** A bound with every step; at the end a shortest layout, where one was come upon. */
export type Proof = Generator<number, StripsFound | null, void>;

/** In the job's units. Ends when it knows nothing more to rule out. */
export function* proofFor(task: ShorterTask & { readonly shop: ShopStep | null }): Proof {
  const { shop, found } = task;
  if (shop !== null) {
    const sold = () => lengthSoldBelow(found().length, shop);
    yield* ruledOut(task, () => [sold()]);
    const shortest = yield* triedAll(task, sold);
    if (shortest !== null) return shortest;
  }
  yield* ruledOut(task, ({ allowed, bound }) => [found().length - 1, Math.floor((bound + allowed - 1) / 2)]);
  return yield* triedAll(task, () => found().length - 1);
}

interface Open {
  readonly bound: number;
  /** The least length that the program of sheets allows. */
  readonly allowed: number;
}

/** @param wished lengths to try, the first that is still open is taken */
function* ruledOut(
  { job, cutting, found }: ShorterTask,
  wished: (open: Open) => readonly number[],
): Generator<number, void, void> {
  let allowed = Number.POSITIVE_INFINITY;
  for (;;) {
    const bound = found().bound;
    allowed = Math.min(allowed, found().length);
    const length = wished({ bound, allowed }).find((each) => each >= bound && each < allowed);
    if (length === undefined || tableCells(job, length) > mostCells) return;
    if (yield* isRuledOut({ job, cutting, length, bound })) yield raised(job, length);
    else allowed = length;
  }
}

function* isRuledOut(of: {
  readonly job: Job;
  readonly cutting: Cutting;
  readonly length: number;
  readonly bound: number;
}): Generator<number, boolean, void> {
  const trying = isTooShort(of);
  for (;;) {
    const { value, done } = trying.next();
    if (done === true) return value;
    yield of.bound;
  }
}

/** To the next length that a layout can have. */
const raised = ({ kinds }: Job, ruledOut: number): number =>
  attainableUp(
    ruledOut + 1,
    kinds.flatMap((kind) => (kind.mayTurn ? [kind.height, kind.width] : [kind.height])),
  );

/** The shortest layout if it is no longer than this; else a bound above it. */
function* triedAll({ job, cutting, found }: ShorterTask, wished: () => number): Proof {
  const longest = wished();
  const { bound } = found();
  if (longest < bound) return null;
  const trying = fewPiecesWithin({ job, cutting, longest });
  for (;;) {
    const { value, done } = trying.next();
    if (done !== true) yield bound;
    else if (value !== 'none') return value;
    else break;
  }
  yield raised(job, longest);
  return null;
}

/** What one round of the program looks at, about. */
const tableCells = ({ width, kinds }: Job, length: number): number => width * length * kinds.length;
/** Of our own choice: about 10 ms a round. */
const mostCells = 1_000_000;
