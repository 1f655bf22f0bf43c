// How long does it take? Warm, median of twenty, with the quartiles as the spread.

export interface Timing {
  readonly medianMs: number;
  /** First and third quartile. */
  readonly spreadMs: readonly [number, number];
}

export interface TimingWish {
  readonly runs: number;
  /** Thrown away: the machine warms up. */
  readonly warmUp: number;
}

export const usual: TimingWish = { runs: 20, warmUp: 5 };

export const timed = async (work: () => unknown, { runs, warmUp }: TimingWish = usual): Promise<Timing> => {
  const times: number[] = [];
  for (let run = -warmUp; run < runs; run++) {
    const begun = performance.now();
    await work();
    if (run >= 0) times.push(performance.now() - begun);
  }
  times.sort((a, b) => a - b);
  const at = (share: number): number => times[Math.round(share * (times.length - 1))] as number;
  return { medianMs: at(0.5), spreadMs: [at(0.25), at(0.75)] };
};

/** Slope of log time over log size by least squares: 1 when twice the work takes twice the time. */
export const growthSlope = (points: readonly (readonly [size: number, medianMs: number])[]): number => {
  const logs = points.map(([size, ms]) => [Math.log(size), Math.log(ms)] as const);
  const mean = (of: readonly number[]): number => of.reduce((a, b) => a + b, 0) / of.length;
  const x = mean(logs.map(([size]) => size));
  const y = mean(logs.map(([, ms]) => ms));
  const over = logs.reduce((all, [size, ms]) => all + (size - x) * (ms - y), 0);
  return over / logs.reduce((all, [size]) => all + (size - x) ** 2, 0);
};
