// The best layout that the heuristics and so many steps of search find. Same job, same steps, same layout.

import { compareEffort, type Effort, effortOf } from '#craft/ease';
import type { IntegerSolver, Job, Kind } from '#craft/strips';
import { countsOf, type Lie, lengthOf, levelChoicesFor, levelsFor, ownStripsFor, type StripUse } from '#craft/strips';
import { type Chance, chanceFrom } from '#ground/chance';
import { evenWorth, type FillRule, filledStrips } from './fill.ts';
import { lyingsOf } from './fill-strip.ts';
import { coveredBy, type Pool, poolWith } from './strip-cover.ts';

export interface SearchTask {
  readonly job: Job;
  /** Layouts made beyond the plain heuristics; 0 for none. */
  readonly steps: number;
  readonly solver: IntegerSolver | null;
  /** A length that cannot be beaten: the search ends when it is met. */
  readonly enough: (length: number) => boolean;
}

interface Best {
  readonly strips: readonly StripUse[];
  readonly effort: Effort;
}

/** Never worse than any of the level heuristics, or than each kind on strips of its own. */
export const bestStripsFor = ({ job, steps, solver, enough }: SearchTask): readonly StripUse[] => {
  if (job.kinds.length === 0) return [];
  const pool: Pool = new Map();
  let best: Best | null = null;
  const offer = (strips: readonly StripUse[]): void => {
    if (solver !== null) poolWith(pool, job.kinds.length, strips);
    const effort = effortOf(job, strips);
    if (best !== null && compareEffort(effort, best.effort) >= 0) return;
    best = { strips, effort };
  };
  const chosen = (): Best => best as Best;
  for (const strips of plainLayoutsFor(job)) offer(strips);
  const lyings = lyingsOf(job);
  const demand = job.kinds.map((k) => k.count);
  let current = chosen().strips;
  const isLeast = rememberedFor(enough);
  for (let step = 0; step < steps && !isLeast(chosen().effort.length); step++) {
    const chance = chanceFrom(step + 1);
    const rule = step === 0 ? plainRule(job, 'thrifty') : shakenRule(job, chance);
    const { kept, freed } = step % 3 === 0 ? { kept: [], freed: demand } : partlyUndone(job, current, chance);
    const next = [...kept, ...filledStrips({ job, lyings, demand: freed, rule })];
    offer(next);
    if (lengthOf(next) <= chosen().effort.length * (1 + slack * chance())) current = next;
  }
  if (solver !== null && !isLeast(chosen().effort.length)) {
    const covered = coveredBy({ job, pool, best: chosen().strips, solver });
    if (covered !== null) offer(covered);
  }
  return chosen().strips;
};

/** The answer for a length is asked for once: it costs as much as many steps. */
const rememberedFor = (enough: (length: number) => boolean): ((length: number) => boolean) => {
  const answers = new Map<number, boolean>();
  return (length) => {
    const before = answers.get(length);
    if (before !== undefined) return before;
    const answer = enough(length);
    answers.set(length, answer);
    return answer;
  };
};

/** How much longer than the best a layout may be to go on from, at most. Measured on our own cases. */
const slack = 0.002;

const lies: readonly Lie[] = ['mixed', 'across', 'along'];

/** Large pieces count a little more than their area: small ones find a place later. Measured on our own cases. */
const worthOf = (job: Job, kind: Kind): number => 1 + (0.2 * kind.width * kind.height) / (job.width * job.width);

/** The layouts that need no search: each kind on its own strips, level heuristics, and filling strip by strip. */
export const plainLayoutsFor = (job: Job): readonly (readonly StripUse[])[] => [
  ownStripsFor(job),
  ...levelChoicesFor(job).map((choice) => levelsFor(job, choice)),
  filledStrips({
    job,
    lyings: lyingsOf(job),
    demand: job.kinds.map((k) => k.count),
    rule: plainRule(job, 'lead'),
  }),
];

const plainRule = (job: Job, strip: FillRule['strip']): FillRule => ({
  lie: 'mixed',
  strip,
  worth: evenWorth(job),
  chance: null,
});

const shakenRule = (job: Job, chance: Chance): FillRule => ({
  lie: lies[Math.floor(chance() * lies.length)] as Lie,
  strip: chance() < 0.25 ? 'lead' : 'thrifty',
  worth: job.kinds.map((k) => worthOf(job, k) * (1 - 0.15 * chance())),
  chance,
});

/** Keeps part of a layout and gives back the pieces of the other strips, the less full ones more likely among them. */
const partlyUndone = (
  job: Job,
  strips: readonly StripUse[],
  chance: Chance,
): { readonly kept: readonly StripUse[]; readonly freed: readonly number[] } => {
  const freed = job.kinds.map(() => 0);
  const kept: StripUse[] = [];
  const share = 0.15 + 0.5 * chance();
  for (const { pattern, times } of strips) {
    const counts = countsOf(pattern, job.kinds.length);
    const used = counts.reduce(
      (sum, n, i) => sum + n * (job.kinds[i] as Kind).width * (job.kinds[i] as Kind).height,
      0,
    );
    const waste = 1 - used / (pattern.height * job.width);
    const undone = chance() < share + waste ? Math.ceil(times * chance()) : 0;
    counts.forEach((n, i) => {
      freed[i] = (freed[i] ?? 0) + n * undone;
    });
    if (times > undone) kept.push({ pattern, times: times - undone });
  }
  return { kept, freed };
};
