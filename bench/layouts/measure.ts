// What has a search found after how long? Drives any search that goes by steps, and notes its best at each of some times.

/**
 * Milliseconds of the clock, or of computing where that is less: on a machine with other work the clock says too much. To ask for the
 * computing takes longer than many a step: it is asked for again when the clock has gone on by two milliseconds, and is the clock's until then.
 */
export const stopwatch = (): (() => number) => {
  const begun = performance.now();
  const computed = (): number => {
    const { user, system } = process.cpuUsage();
    return (user + system) / 1000;
  };
  const before = computed();
  let asked = { at: begun, ms: 0 };
  return () => {
    const now = performance.now();
    if (now - asked.at > clockTrusted) asked = { at: now, ms: Math.min(now - begun, computed() - before) };
    return asked.ms + now - asked.at;
  };
};

const clockTrusted = 2;

export interface Standing {
  readonly value: number;
  readonly bound: number;
}

export interface Course<Found> {
  readonly firstMs: number;
  /** The best at each of the times asked for; where the first came later, the first. */
  readonly at: readonly Standing[];
  readonly last: Found;
  /** Until the search ended by itself or was stopped. */
  readonly ms: number;
  readonly longestStepMs: number;
}

export const courseOf = <Found>(of: {
  readonly search: Generator<Found, Found, void>;
  /** Rising; the search is stopped after the last. */
  readonly timesMs: readonly number[];
  readonly read: (found: Found) => Standing;
}): Course<Found> => {
  const { search, timesMs, read } = of;
  const elapsed = stopwatch();
  const at: Standing[] = [];
  let last: Found | null = null;
  let firstMs = 0;
  let longestStepMs = 0;
  for (let now = 0; at.length < timesMs.length; ) {
    const next = search.next();
    const then = elapsed();
    longestStepMs = Math.max(longestStepMs, then - now);
    now = then;
    // a step that ends after its time counts for the next
    const before = last;
    if (before === null) firstMs = now;
    while (before !== null && at.length < timesMs.length && (timesMs[at.length] as number) < now) at.push(read(before));
    last = next.value;
    if (next.done === true) while (at.length < timesMs.length) at.push(read(next.value));
  }
  search.return(last as Found);
  return { firstMs, at, last: last as Found, ms: elapsed(), longestStepMs };
};

/** In hundredths over the bound. */
export const gapOf = ({ value, bound }: Standing): number => (bound > 0 ? (100 * (value - bound)) / bound : 0);

export const mean = (numbers: readonly number[]): number =>
  numbers.length === 0 ? 0 : numbers.reduce((a, b) => a + b, 0) / numbers.length;

export const median = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor((numbers.length - 1) / 2)] ?? 0;
