// Which pieces leave room for no other beside them? Each is a strip of its own in some shortest layout, so that a search need
// not know of them, and what it proves of the others is sharper.
import {
  heightOf,
  type Job,
  type Kind,
  patternOf,
  renamedIn,
  type StripPattern,
  type StripUse,
  stackOf,
  widthOf,
} from '#craft/strips';

export interface Parted {
  /** One strip for each such piece, lying the way that is lowest. */
  readonly alone: readonly StripUse[];
  /** The job without them. */
  readonly rest: Job;
  /** A strip of the rest as one of the whole job. */
  readonly inJob: (pattern: StripPattern) => StripPattern;
}

/**
 * A strip with such a piece has one stack only, and is no longer when it is cut apart into strips of one piece each. True of
 * two stages, and of three where strips may have any height.
 */
export const partedOf = (job: Job): Parted => {
  const wide = job.kinds.map((kind) => (kind.mayTurn ? Math.min(kind.width, kind.height) : kind.width));
  const rising = job.kinds
    .flatMap(({ count }, i) => (count > 0 ? [i] : []))
    .sort((a, b) => (wide[a] as number) - (wide[b] as number) || a - b);
  // the widest first: while they are alone, the narrowest of the others stays what it is
  const isBeside = (kind: number): boolean => {
    const narrowest = rising[0] as number;
    const isOnly = kind === narrowest && (job.kinds[kind] as Kind).count === 1;
    return !isOnly && (wide[kind] as number) + (wide[narrowest] as number) <= job.width;
  };
  const kept = rising.slice(0, rising.findLastIndex(isBeside) + 1).sort((a, b) => a - b);
  const alone = rising.filter((kind) => !kept.includes(kind)).sort((a, b) => a - b);
  return {
    alone: alone.map((kind) => ({ pattern: stripOf(job, kind), times: (job.kinds[kind] as Kind).count })),
    rest: { width: job.width, kinds: kept.map((i) => job.kinds[i] as Kind) },
    inJob: (pattern) => renamedIn(pattern, (kind) => kept[kind] as number),
  };
};

const stripOf = (job: Job, index: number): StripPattern => {
  const kind = job.kinds[index] as Kind;
  const ways = [false, true].filter((turned) => (!turned || kind.mayTurn) && widthOf(kind, turned) <= job.width);
  const turned = ways.reduce(
    (best, way) => (heightOf(kind, way) < heightOf(kind, best) ? way : best),
    ways[0] ?? false,
  );
  return patternOf([{ stack: stackOf(job, [{ kind: index, turned, times: 1 }]), times: 1 }]);
};
