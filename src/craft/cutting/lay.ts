// From counted strips to a drawn layout: every piece in its place, in the document's unit, each belonging to the
// demand it was cut for.
import { length } from '#craft/measure';
import type { Kind } from '#craft/strips';
import { type Run, type StackUse, type StripUse, widthOf } from '#craft/strips';
import type { Demand, LaidPiece, Layout, Strip, StripPart } from './cloth.ts';
import { type Grid, unitsUp } from './grid.ts';
import type { ScaledJob } from './kinds.ts';

export interface Laying {
  readonly scaled: ScaledJob;
  readonly demands: readonly Demand[];
  readonly strips: readonly StripUse[];
  readonly width: Demand['across'];
}

/** Sums are made in whole units where the lengths lie on a grid, so that every position is the nearest double. */
interface Scale {
  readonly units: (value: number) => number;
  readonly value: (units: number) => Demand['across'];
}

export const layoutOf = ({ scaled, demands, strips, width }: Laying): Layout => {
  const scale = scaleOf(scaled.grid);
  const next = takers(scaled, demands);
  const laid: Strip[] = [];
  let at = 0;
  for (const { pattern, times } of strips) {
    for (let n = 0; n < times; n++) {
      const { parts, height } = partsOf({ parts: pattern.parts, scale, next });
      laid.push({ at: scale.value(at), height: scale.value(height), parts });
      at += height;
    }
  }
  return { width, length: scale.value(at), strips: laid };
};

const scaleOf = (grid: Grid): Scale =>
  grid.exact
    ? { units: (value) => Math.round(value * grid.per), value: (units) => length(units / grid.per) }
    : { units: (value) => value, value: (units) => length(units) };

interface Taken {
  readonly cut: LaidPiece['cut'];
  readonly of: number;
  readonly turned: boolean;
}

/** Hands out, kind by kind, the demands in the order in which they were listed, and how each then lies. */
const takers = (scaled: ScaledJob, demands: readonly Demand[]): ((run: Run) => Taken) => {
  const queues = scaled.demandsOf.map((list) => list.map((of) => ({ of, left: demands[of]?.count ?? 0 })));
  return (run) => {
    const queue = queues[run.kind] ?? [];
    while (queue.length > 1 && queue[0]?.left === 0) queue.shift();
    const first = queue[0];
    if (first === undefined || first.left === 0) throw new Error(`more pieces laid than demanded: kind ${run.kind}`);
    first.left--;
    const { across, along } = demands[first.of] as Demand;
    const lies = widthOf(scaled.job.kinds[run.kind] as Kind, run.turned) * scaled.unit;
    const turned = unitsUp(across, scaled.grid) !== lies;
    return { cut: turned ? [along, across] : [across, along], of: first.of, turned };
  };
};

const partsOf = (from: {
  readonly parts: readonly StackUse[];
  readonly scale: Scale;
  readonly next: (run: Run) => Taken;
}): { readonly parts: readonly StripPart[]; readonly height: number } => {
  const { scale, next } = from;
  const parts: StripPart[] = [];
  let across = 0;
  let tallest = 0;
  for (const { stack, times } of from.parts) {
    for (let n = 0; n < times; n++) {
      const pieces: LaidPiece[] = [];
      let down = 0;
      let wide = 0;
      for (const run of stack.runs) {
        for (let k = 0; k < run.times; k++) {
          const { cut, of, turned } = next(run);
          pieces.push({ at: scale.value(down), cut, turned, of });
          down += scale.units(cut[1]);
          wide = Math.max(wide, scale.units(cut[0]));
        }
      }
      parts.push({ at: scale.value(across), width: scale.value(wide), pieces });
      across += wide;
      tallest = Math.max(tallest, down);
    }
  }
  return { parts, height: tallest };
};
