// Cloth folded selvage to selvage is cut two layers at a time: which strips can be, and which are opened first? A piece and its
// mirror image lie under one another. What it saves and costs is told elsewhere.
import { type Length, length, tidy } from '#craft/measure';
import type { Demand, Layout, Strip, StripPart } from './cloth.ts';

export interface FoldTask {
  /** Opened, from selvage to selvage. */
  readonly width: Length;
  /** Exactly what `least` holds. */
  readonly demands: readonly Demand[];
  /** By demand: whose piece the lower layer gives; itself where a mirror image is the same, null where it is of no use. */
  readonly twins: readonly (number | null)[];
  /** Laid without a thought of the fold. */
  readonly least: Layout;
  /** Lays pieces on cloth of a width, as it is laid elsewhere. */
  readonly lay: (width: Length, demands: readonly Demand[]) => Layout;
}

export interface FoldedWay {
  /** All strips, opened: those cut in two layers first, symmetric about the middle. */
  readonly layout: Layout;
  /** Those cut in two layers, as they lie folded: half as wide, the selvages at 0. */
  readonly folded: Layout;
  /** The others. */
  readonly open: Layout;
}

/**
 * Two ways: the strips of the least layout that are symmetric already, or can be by moving parts; and every pair on the fold, with
 * wide pieces and odd ones from strips that are opened. The first takes no more cloth.
 *
 * @source docs/formulas.md#fold
 */
export const foldedWays = (task: FoldTask): readonly FoldedWay[] =>
  [symmetricStrips(task), allPairs(task)].filter(({ folded }) => folded.strips.length > 0);

const symmetricStrips = (task: FoldTask): FoldedWay => {
  const folded: Strip[] = [];
  const open: Strip[] = [];
  for (const strip of task.least.strips) {
    const half = halfOf(strip, task);
    if (half === null) open.push(strip);
    else folded.push(half);
  }
  return wayOf({ ...task, folded, open });
};

/** Half the parts of a strip whose others are their mirror images; null where one is left over. */
const halfOf = (strip: Strip, task: FoldTask): Strip | null => {
  const waiting: StripPart[] = [];
  const half: StripPart[] = [];
  for (const part of strip.parts) {
    const mirrored = mirroredKey(part, task.twins);
    const at = mirrored === null ? -1 : waiting.findIndex((other) => keyOf(other) === mirrored);
    if (at < 0) waiting.push(part);
    else half.push(...waiting.splice(at, 1));
  }
  if (waiting.length > 0) return null;
  let across = 0;
  const parts = half.map((part) => {
    const placed = { ...part, at: tidy(across) };
    across += part.width;
    return placed;
  });
  return { ...strip, parts };
};

const keyOf = ({ pieces }: StripPart): string => JSON.stringify(pieces.map(({ of, cut }) => [of, cut]));

const mirroredKey = ({ pieces }: StripPart, twins: FoldTask['twins']): string | null => {
  const mirrored = pieces.map(({ of, cut }) => [twins[of] ?? null, cut] as const);
  return mirrored.some(([twin]) => twin === null) ? null : JSON.stringify(mirrored);
};

const allPairs = (task: FoldTask): FoldedWay => {
  const { demands, twins, width } = task;
  const half = length(width / 2);
  const pairs = demands.map((demand, i) => {
    const twin = twins[i] ?? null;
    const narrow = demand.mayTurn ? Math.min(demand.across, demand.along) : demand.across;
    if (twin === null || twin < i || narrow > half + 1e-9) return 0;
    return twin === i ? Math.floor(demand.count / 2) : Math.min(demand.count, demands[twin]?.count ?? 0);
  });
  const single = demands.map((demand, i) => {
    const twin = twins[i] ?? null;
    const taken =
      twin === i ? 2 * (pairs[i] as number) : (pairs[i] as number) + (twin === null ? 0 : (pairs[twin] as number));
    return { ...demand, count: demand.count - taken };
  });
  const onFold = demands.map((demand, i) => ({
    ...demand,
    count: pairs[i] as number,
    mayTurn: demand.mayTurn && demand.along <= half + 1e-9,
  }));
  const laid = (across: Length, list: readonly Demand[]): readonly Strip[] =>
    list.some(({ count }) => count > 0) ? task.lay(across, list).strips : [];
  return wayOf({ ...task, folded: laid(half, onFold), open: laid(width, single) });
};

const wayOf = (of: FoldTask & { readonly folded: readonly Strip[]; readonly open: readonly Strip[] }): FoldedWay => {
  const opened = of.folded.map((strip) => unfolded(strip, of));
  return {
    layout: stacked(of.width, [...opened, ...of.open]),
    folded: stacked(length(of.width / 2), of.folded),
    open: stacked(of.width, of.open),
  };
};

/** Both layers side by side, the lower one's parts mirrored about the fold. */
const unfolded = (strip: Strip, { width, twins, demands }: FoldTask): Strip => {
  const under = strip.parts.map((part): StripPart => {
    const pieces = part.pieces.map((piece) => {
      const of = twins[piece.of] as number;
      return { ...piece, of, turned: piece.cut[0] !== demands[of]?.across };
    });
    return { at: tidy(width - part.at - part.width), width: part.width, pieces };
  });
  return { ...strip, parts: [...strip.parts, ...under.toReversed()] };
};

const stacked = (width: Length, strips: readonly Strip[]): Layout => {
  let at = 0;
  const placed = strips.map((strip) => {
    const here = { ...strip, at: tidy(at) };
    at += strip.height;
    return here;
  });
  return { width, length: tidy(at), strips: placed };
};
