// What making units together asks of the hands, stage by stage, and how long that takes: an estimate of our own, not measured.
import type { Length, Unit as Measure } from '#craft/measure';
import { distance } from '#ground/plane';
import { layingsOf, type Stage, stageFor } from './stages.ts';
import type { Unit } from './unit.ts';
import type { Way } from './ways.ts';

/** Work at one laying of a stage. */
export interface Labour {
  /** Parts laid together and taken up once. */
  readonly layings: number;
  readonly drawn: number;
  readonly sewn: number;
  /** Of all seams sewn, in the document's unit. */
  readonly sewnLength: number;
  readonly cut: number;
  readonly pressed: number;
  readonly trimmed: number;
}

/**
 * Our own estimate, in minutes: to lay two parts together and take them up, to draw a line, to sew a seam and an inch of it, to cut
 * apart along a line, to press one, and to trim one to size. Laying, sewing and pressing together are the one minute of a plain seam.
 */
const ownEstimate = { laying: 0.4, drawn: 0.2, sewn: 0.1, inch: 0.02, cut: 0.1, pressed: 0.5, trimmed: 0.4 } as const;

/** Of all layings of a stage. */
export const labourOf = (stage: Stage, of: { readonly way: Way; readonly units: number }): Labour => {
  const layings = layingsOf(stage, of);
  const length = stage.sewn.reduce((all, [from, to]) => all + distance(from, to), 0);
  return {
    layings,
    drawn: layings * stage.drawn.length,
    sewn: layings * stage.sewn.length,
    sewnLength: layings * length,
    cut: layings * stage.cut.length,
    pressed: layings * stage.pressed.length,
    trimmed: stage.trimmed !== null && of.way.trimmed ? layings * stage.pressed.length : 0,
  };
};

export const labourMinutes = (labour: Labour, unit: Measure): number =>
  labour.layings * ownEstimate.laying +
  labour.drawn * ownEstimate.drawn +
  labour.sewn * ownEstimate.sewn +
  (labour.sewnLength / (unit === 'in' ? 1 : 2.54)) * ownEstimate.inch +
  labour.cut * ownEstimate.cut +
  labour.pressed * ownEstimate.pressed +
  labour.trimmed * ownEstimate.trimmed;

/** Minutes of one step of units made together; of units only cut with room, what trimming them at the end takes. */
export const madeMinutes = (of: {
  readonly unit: Unit;
  readonly way: Way;
  readonly parts: readonly [readonly number[], readonly number[]];
  readonly units: number;
  readonly isLast: boolean;
  readonly seam: Length;
  readonly measure: Measure;
}): number => {
  const stage = stageFor(of);
  if (stage !== null) return labourMinutes(labourOf(stage, of), of.measure);
  return of.isLast && of.way.trimmed ? of.units * ownEstimate.trimmed : 0;
};
