// A layout strip by strip: take the piece that is hardest to place, fill its strip as well as can be, cut that
// strip as often as the demand bears, go on with what is left.

import type { Job, Kind } from '#craft/strips';
import { countsOf, type Lie, liesTurned, type StripPattern, type StripUse } from '#craft/strips';
import type { Chance } from '#ground/chance';
import { filledStrip, type Lying } from './fill-strip.ts';

export interface FillRule {
  /** How the leading piece of a strip lies. */
  readonly lie: Lie;
  /** 'lead' takes the strip of the tallest piece; 'thrifty' tries several leads and heights and keeps the fullest. */
  readonly strip: 'lead' | 'thrifty';
  /** What a unit of each kind's area is worth while a strip is filled. */
  readonly worth: readonly number[];
  /** Small disturbances; null for none. */
  readonly chance: Chance | null;
}

export interface FillTask {
  readonly job: Job;
  readonly lyings: readonly Lying[];
  /** Pieces of each kind to cut. */
  readonly demand: readonly number[];
  readonly rule: FillRule;
}

/** Leads and heights that the thrifty rule tries for one strip. */
const tries = 4;

/** Exactly the demand, in strips. */
export const filledStrips = ({ job, lyings, demand, rule }: FillTask): readonly StripUse[] => {
  const rest = [...demand];
  const strips: StripUse[] = [];
  for (;;) {
    const leads = leadsFor({ job, lyings, rest, rule });
    if (leads.length === 0) return strips;
    const pattern = bestStrip({ job, lyings, rest, rule, leads });
    const counts = countsOf(pattern, job.kinds.length);
    let times = Number.POSITIVE_INFINITY;
    counts.forEach((n, i) => {
      if (n > 0) times = Math.min(times, Math.floor((rest[i] ?? 0) / n));
    });
    counts.forEach((n, i) => {
      rest[i] = (rest[i] ?? 0) - n * times;
    });
    strips.push({ pattern, times });
  }
};

interface Step {
  readonly job: Job;
  readonly lyings: readonly Lying[];
  readonly rest: readonly number[];
  readonly rule: FillRule;
}

/** What is left, each kind as it would lead a strip, tallest first. */
const leadsFor = ({ job, lyings, rest, rule }: Step): readonly Lying[] => {
  const leads: { lying: Lying; weight: number }[] = [];
  for (const lying of lyings) {
    if ((rest[lying.kind] ?? 0) === 0) continue;
    const kind = job.kinds[lying.kind] as Kind;
    if (kind.mayTurn && fitsBothWays(kind, job.width) && lying.turned !== liesTurned(kind, job.width, rule.lie))
      continue;
    const shake = rule.chance === null ? 1 : 1 - 0.2 * rule.chance();
    leads.push({ lying, weight: lying.height * shake });
  }
  return leads
    .sort((a, b) => b.weight - a.weight || b.lying.width - a.lying.width || a.lying.kind - b.lying.kind)
    .map(({ lying }) => lying);
};

const fitsBothWays = (kind: Kind, width: number): boolean => Math.max(kind.width, kind.height) <= width;

const bestStrip = (step: Step & { readonly leads: readonly Lying[] }): StripPattern => {
  const { job, lyings, rest, rule, leads } = step;
  const first = leads[0] as Lying;
  const fill = (lead: Lying, height: number): StripPattern =>
    filledStrip({ job, lyings, rest, height, lead, worth: rule.worth });
  let best = fill(first, first.height);
  if (rule.strip === 'lead') return best;
  const share = (p: StripPattern): number => (p.height === 0 ? 0 : areaOf(job, p) / (p.height * job.width));
  const offer = (candidate: StripPattern): void => {
    if (share(candidate) > share(best) + 1e-12) best = candidate;
  };
  const across = otherLie(lyings, first);
  if (across !== undefined) offer(fill(across, across.height));
  for (let i = 0; i < tries; i++) {
    const height = heightTried({ leads, round: i, chance: rule.chance });
    offer(fill(first, height));
  }
  return best;
};

/** The leading piece lying the other way, where it may. */
const otherLie = (lyings: readonly Lying[], lead: Lying): Lying | undefined =>
  lyings.find((l) => l.kind === lead.kind && l.turned !== lead.turned);

/** A strip may be higher than any piece: as high as two pieces one below the other, or three of a kind. */
const heightTried = (of: {
  readonly leads: readonly Lying[];
  readonly round: number;
  readonly chance: Chance | null;
}): number => {
  const { leads, round, chance } = of;
  const pick = (step: number): Lying =>
    leads[chance === null ? (round * step) % leads.length : Math.floor(chance() * leads.length)] as Lying;
  const first = (leads[0] as Lying).height;
  const a = pick(1).height;
  const b = pick(3).height;
  const heights = [Math.max(a, b), first + a, a + b, 3 * a];
  return Math.max(first, heights[round % heights.length] as number);
};

const areaOf = (job: Job, pattern: StripPattern): number =>
  countsOf(pattern, job.kinds.length).reduce((all, n, i) => {
    const k = job.kinds[i] as Kind;
    return all + n * k.width * k.height;
  }, 0);

/** Even worth for every kind. */
export const evenWorth = (job: Job): readonly number[] => job.kinds.map(() => 1);
