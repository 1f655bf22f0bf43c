// What is the largest quilt of this design that the cloth at hand would make? The same blocks, sashing, borders, backing and
// binding, in more or fewer rows and columns. Does not change the size of a block, nor swap cloths.
import { type PlanOptions, planQuilt, type QuiltPlan } from '#craft';
import { type Quilt, toDocument, topExtent } from '#craft/design';
import type { Length, Unit } from '#craft/measure';
import type { IntegerSolver } from '#craft/strips';
import { toNumber } from '#ground/exact';
import type { Cupboard } from './at-hand.ts';
import { type ClothFit, clothFits, isEnough } from './fit.ts';
import { inPieces } from './in-pieces.ts';
import { type Continuation, type Counts, continuationsOf, drawnCounts, resized, sizesOf } from './other-sizes.ts';

export interface LargestTask {
  /** As it was drawn; its own document is free of problems. */
  readonly plan: QuiltPlan;
  readonly cupboard: Cupboard;
  /** How hard to look where level heuristics do not come to an answer. */
  readonly search: { readonly steps: number; readonly solver: IntegerSolver | null };
}

/** The quilt in one size. */
export interface SizedQuilt {
  /** In the blocks of its rows; null for sections. */
  readonly counts: Counts | null;
  /** How they come to be so many, down and across; null for sections. */
  readonly continued: readonly [Continuation, Continuation] | null;
  /** Finished, borders included. */
  readonly size: readonly [width: Length, height: Length];
  readonly quilt: Quilt;
  readonly cloths: readonly ClothFit[];
}

export interface LargestFound {
  readonly drawn: SizedQuilt;
  /** Null where the cloth does for none of the sizes. */
  readonly best: SizedQuilt | null;
  /** The next larger size, which the cloth does not do for; null where none is left. */
  readonly next: SizedQuilt | null;
  /** Sizes planned on the way. */
  readonly tried: number;
}

/** Longer side of the largest quilt that is looked at, if none larger was drawn: a king-size bed's, common practice, no source. */
const longestSide: Readonly<Record<Unit, number>> = { in: 120, cm: 305 };

/** How much longer or wider in proportion than drawn a quilt may come out. Our own figure. */
const mostStretched = 1.5;

/** Rows or columns looked at. Our own figure. */
const mostLines = 60;

/**
 * The largest by area; of equal ones the nearest to the shape as drawn. Yields before each size that is planned.
 *
 * Rows are taken from the fewest; for each, columns from the most that the rows before had, down to the first that the
 * cloth does for. More cloth therefore never makes a smaller quilt, whatever single layouts come out as. A size that its
 * design cannot have (a pieced border that does not fit) is passed over.
 *
 * @source docs/formulas.md#the-largest-quilt-from-cloth-at-hand
 */
export function* searchLargest(task: LargestTask): Generator<Counts, LargestFound> {
  const { plan } = task;
  const drawn = sized(leastPlan(plan, task), task);
  const shapes = shapesOf(plan.quilt);
  if (shapes === null) return { drawn, best: isEnough(drawn.cloths) ? drawn : null, next: null, tried: 0 };

  const known = new Map<string, SizedQuilt | null>();
  if (drawn.counts !== null) known.set(keyOf(drawn.counts), drawn);
  const trial = function* (counts: Counts): Generator<Counts, SizedQuilt | null> {
    const key = keyOf(counts);
    const before = known.get(key);
    if (before !== undefined) return before;
    yield counts;
    const made = tried(counts, task);
    known.set(key, made);
    return made;
  };

  const fitting: SizedQuilt[] = [];
  let widest = Number.POSITIVE_INFINITY;
  for (const { rows, columns } of shapes) {
    let isPast = false;
    for (const count of columns.filter((n) => n <= widest).toReversed()) {
      const made = yield* trial({ rows, columns: count });
      if (made === null) continue;
      if (isEnough(made.cloths)) {
        fitting.push(made);
        if (isPast) widest = count;
        isPast = false;
        break;
      }
      isPast = true;
    }
    if (isPast) widest = (columns[0] ?? 1) - 1;
  }
  const best = largestOf(fitting, drawn);
  for (const counts of nextTo(best?.counts ?? null, shapes)) yield* trial(counts);
  const failing = [...known.values()].flatMap((made) => (made && !isEnough(made.cloths) ? [made] : []));
  const larger = failing.filter((made) => best === null || areaOf(made) > areaOf(best) * (1 + 1e-9));
  const next = larger.reduce<SizedQuilt | null>((a, b) => (a === null || areaOf(b) < areaOf(a) ? b : a), null);
  return { drawn, best, next, tried: known.size };
}

const keyOf = ({ rows, columns }: Counts): string => `${rows} × ${columns}`;

interface Row {
  readonly rows: number;
  /** From the fewest. */
  readonly columns: readonly number[];
}

/** Counts within the shape and the longest side, row by row. */
const shapesOf = (quilt: Quilt): readonly Row[] | null => {
  const sizes = sizesOf(quilt.top, Math.max(mostLines, ...Object.values(drawnCounts(quilt.top) ?? {})));
  if (sizes === null) return null;
  const drawn = drawnCounts(quilt.top) as Counts;
  const sideOf = (counts: Counts, which: 0 | 1): number => {
    const one = resized(quilt, counts);
    return toNumber(topExtent(one.top, one.blocks).size[which]);
  };
  // each side by itself, the other as drawn: near enough to judge a shape by
  const across = new Map(sizes.columns.map((columns) => [columns, sideOf({ ...drawn, columns }, 0)]));
  const down = new Map(sizes.rows.map((rows) => [rows, sideOf({ ...drawn, rows }, 1)]));
  const [width, height] = [across.get(drawn.columns) as number, down.get(drawn.rows) as number];
  const longest = Math.max(width, height, longestSide[quilt.unit]) * (1 + 1e-9);
  const isMeet = ({ rows, columns }: Counts): boolean => {
    const [wide, long] = [across.get(columns) as number, down.get(rows) as number];
    const stretch = (wide * height) / (long * width);
    return Math.max(wide, long) <= longest && Math.max(stretch, 1 / stretch) <= mostStretched * (1 + 1e-9);
  };
  return sizes.rows
    .map((rows) => ({ rows, columns: sizes.columns.filter((columns) => isMeet({ rows, columns })) }))
    .filter(({ columns }) => columns.length > 0);
};

const sized = (plan: QuiltPlan, task: LargestTask): SizedQuilt => ({
  ...countedAs(drawnCounts(plan.quilt.top), task.plan.quilt),
  size: [plan.top.set.width, plan.top.set.height],
  quilt: plan.quilt,
  cloths: clothFits(plan, task.cupboard),
});

/** As drawn, in the layouts that take the least cloth, shorter pieces cut first: what is easier to cut waits until the cloth does. */
const leastPlan = (plan: QuiltPlan, { cupboard, search }: LargestTask): QuiltPlan => {
  const isInPieces = [...cupboard.values()].some((hand) => hand.kind === 'length' && hand.others.length > 0);
  if (plan.quilt.layout === 'least' && !isInPieces) return plan;
  const again = planQuilt(leastDocument(inPieces(plan.quilt, cupboard)), optionsFor(search));
  return again.ok ? again.value : plan;
};

const leastDocument = (quilt: Quilt) => toDocument({ ...quilt, layout: 'least' });

const optionsFor = ({ steps, solver }: LargestTask['search']): PlanOptions => ({
  budget: { steps },
  ...(solver ? { solver } : {}),
});

const countedAs = (counts: Counts | null, drawn: Quilt): Pick<SizedQuilt, 'counts' | 'continued'> => ({
  counts,
  continued: counts && continuationsOf(drawn.top, counts),
});

/** Level heuristics first: where they do, or no layout could, nothing more is looked for. Null where it cannot be made. */
const tried = (counts: Counts, task: LargestTask): SizedQuilt | null => {
  const { plan, cupboard, search } = task;
  const document = leastDocument(inPieces(resized(plan.quilt, counts), cupboard));
  const quick = planQuilt(document, { budget: { steps: 0 } });
  if (!quick.ok) return null;
  const first = sized(quick.value, task);
  if (isEnough(first.cloths) || first.cloths.some(({ proven }) => proven) || search.steps === 0) return first;
  const hard = planQuilt(document, optionsFor(search));
  return hard.ok ? sized(hard.value, task) : null;
};

const areaOf = ({ size }: SizedQuilt): number => size[0] * size[1];

const largestOf = (all: readonly SizedQuilt[], drawn: SizedQuilt): SizedQuilt | null =>
  all.reduce<SizedQuilt | null>((best, one) => (best === null || isBetter(one, best, drawn) ? one : best), null);

const isBetter = (a: SizedQuilt, b: SizedQuilt, drawn: SizedQuilt): boolean => {
  const more = areaOf(a) - areaOf(b);
  if (Math.abs(more) > 1e-6 * areaOf(b)) return more > 0;
  return stretchOf(a, drawn) < stretchOf(b, drawn) - 1e-9;
};

const stretchOf = ({ size }: SizedQuilt, drawn: SizedQuilt): number =>
  Math.abs(Math.log((size[0] * drawn.size[1]) / (size[1] * drawn.size[0])));

/** A step more each way; with nothing that fits, the smallest size. */
const nextTo = (best: Counts | null, shapes: readonly Row[]): readonly Counts[] => {
  if (best === null) {
    const [first] = shapes;
    return first?.columns[0] === undefined ? [] : [{ rows: first.rows, columns: first.columns[0] }];
  }
  const wider = shapes.find(({ rows }) => rows === best.rows)?.columns.find((n) => n > best.columns);
  const longer = shapes.find(({ rows, columns }) => rows > best.rows && columns.includes(best.columns));
  return [
    ...(wider === undefined ? [] : [{ rows: best.rows, columns: wider }]),
    ...(longer === undefined ? [] : [{ rows: longer.rows, columns: best.columns }]),
  ];
};
