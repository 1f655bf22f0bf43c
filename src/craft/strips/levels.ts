// The plain level heuristics: pieces from the tallest down, each kind put on the strips (levels) already begun.
// Next fit looks at the last level only, first fit takes the first with room, best fit the one with least room.
// They work on counts: a thousand equal pieces cost no more than one.
import type { Job, Kind } from './job.ts';
import { heightOf, patternOf, type StackUse, type StripUse, stackOf, widthOf } from './pattern.ts';

export type LevelRule = 'next-fit' | 'first-fit' | 'best-fit';
/** How pieces that may turn lie: long side across the cloth, along it, or whichever takes least length alone. */
export type Lie = 'across' | 'along' | 'mixed';
/** Whether a level takes one piece below another where both fit its height. */
export type Piling = 'single' | 'stacked';

export interface LevelChoice {
  readonly rule: LevelRule;
  readonly lie: Lie;
  readonly piling: Piling;
}

interface Level {
  readonly height: number;
  readonly room: number;
  readonly times: number;
  readonly parts: readonly StackUse[];
}

/** All combinations that make a difference; without turning pieces the lie makes none. */
export const levelChoicesFor = (job: Job): readonly LevelChoice[] => {
  const lies: readonly Lie[] = job.kinds.some((k) => k.mayTurn) ? ['across', 'along', 'mixed'] : ['across'];
  return lies.flatMap((lie) =>
    (['next-fit', 'first-fit', 'best-fit'] as const).flatMap((rule) =>
      (['single', 'stacked'] as const).map((piling) => ({ rule, lie, piling })),
    ),
  );
};

/** A layout by one level heuristic; nothing is proven of it. */
export const levelsFor = (job: Job, choice: LevelChoice): readonly StripUse[] => {
  const lying = job.kinds
    .map((kind, index) => ({ kind, index, turned: liesTurned(kind, job.width, choice.lie) }))
    .sort(
      (a, b) =>
        heightOf(b.kind, b.turned) - heightOf(a.kind, a.turned) ||
        widthOf(b.kind, b.turned) - widthOf(a.kind, a.turned) ||
        a.index - b.index,
    );
  let levels: Level[] = [];
  for (const { kind, index, turned } of lying) {
    levels = withKind({ levels, job, kind: index, turned, count: kind.count, choice });
  }
  return levels.map((l) => ({ pattern: patternOf(l.parts), times: l.times }));
};

/** How a kind lies under a rule. 'mixed' weighs the length that the kind would take on strips of its own. */
export const liesTurned = (kind: Kind, clothWidth: number, lie: Lie): boolean => {
  if (!kind.mayTurn) return false;
  if (lie !== 'mixed') return lie === 'across';
  const alone = (turned: boolean): number => {
    const per = Math.floor(clothWidth / widthOf(kind, turned));
    return Math.ceil(kind.count / per) * heightOf(kind, turned);
  };
  return alone(true) < alone(false);
};

/** Each kind on strips of its own, as printed patterns do it. */
export const ownStripsFor = (job: Job): readonly StripUse[] =>
  job.kinds.flatMap((kind, index) => {
    const turned = liesTurned(kind, job.width, 'mixed');
    const one = stackOf(job, [{ kind: index, turned, times: 1 }]);
    const per = Math.min(kind.count, Math.floor(job.width / one.width));
    const full = Math.floor(kind.count / per);
    const rest = kind.count - full * per;
    return [
      { pattern: patternOf([{ stack: one, times: per }]), times: full },
      ...(rest > 0 ? [{ pattern: patternOf([{ stack: one, times: rest }]), times: 1 }] : []),
    ];
  });

/** Next fit looks at one strip only: the last of equal ones is set apart. */
const lastAlone = (levels: readonly Level[]): readonly Level[] => {
  const last = levels.at(-1);
  if (last === undefined || last.times === 1) return levels;
  return [...levels.slice(0, -1), { ...last, times: last.times - 1 }, { ...last, times: 1 }];
};

interface Placing {
  readonly levels: Level[];
  readonly job: Job;
  readonly kind: number;
  readonly turned: boolean;
  readonly count: number;
  readonly choice: LevelChoice;
}

const withKind = ({ levels, job, kind, turned, count, choice }: Placing): Level[] => {
  const size = job.kinds[kind] as Kind;
  const width = widthOf(size, turned);
  const height = heightOf(size, turned);
  let left = count;
  const put = (level: Level): Level[] => {
    const pile = choice.piling === 'stacked' ? Math.floor(level.height / height) : 1;
    const each = Math.floor(level.room / width) * pile;
    if (each === 0 || left === 0) return [level];
    const full = Math.min(level.times, Math.floor(left / each));
    const more = full < level.times ? Math.min(each, left - full * each) : 0;
    left -= full * each + more;
    const filled = (n: number, times: number): Level => {
      const piles = Math.floor(n / pile);
      const last = n - piles * pile;
      const run = (rows: number): StackUse['stack'] => stackOf(job, [{ kind, turned, times: rows }]);
      return {
        height: level.height,
        room: level.room - width * (piles + (last > 0 ? 1 : 0)),
        times,
        parts: [
          ...level.parts,
          ...(piles > 0 ? [{ stack: run(pile), times: piles }] : []),
          ...(last > 0 ? [{ stack: run(last), times: 1 }] : []),
        ],
      };
    };
    const rest = level.times - full - (more > 0 ? 1 : 0);
    return [
      ...(full > 0 ? [filled(each, full)] : []),
      ...(more > 0 ? [filled(more, 1)] : []),
      ...(rest > 0 ? [{ ...level, times: rest }] : []),
    ];
  };
  const after: Level[] = [];
  const fits = (level: Level): boolean => left > 0 && level.room >= width;
  if (choice.rule === 'next-fit') {
    const all = lastAlone(levels);
    after.push(...all.slice(0, -1));
    const last = all.at(-1);
    if (last) after.push(...put(last));
  } else if (choice.rule === 'first-fit') {
    for (const level of levels) {
      if (fits(level)) after.push(...put(level));
      else after.push(level);
    }
  } else {
    const roomy = levels.map((level, i) => ({ level, i })).filter(({ level }) => level.room >= width);
    roomy.sort((a, b) => a.level.room - b.level.room || a.i - b.i);
    const placed = new Map<number, readonly Level[]>();
    for (const { level, i } of roomy) {
      if (left === 0) break;
      placed.set(i, put(level));
    }
    levels.forEach((level, i) => {
      const made = placed.get(i);
      if (made) after.push(...made);
      else after.push(level);
    });
  }
  if (left === 0) return after;
  const per = Math.floor(job.width / width);
  const one = stackOf(job, [{ kind, turned, times: 1 }]);
  const fresh = (n: number, times: number): Level => ({
    height,
    room: job.width - n * width,
    times,
    parts: [{ stack: one, times: n }],
  });
  const full = Math.floor(left / per);
  const rest = left - full * per;
  return [...after, ...(full > 0 ? [fresh(per, full)] : []), ...(rest > 0 ? [fresh(rest, 1)] : [])];
};
