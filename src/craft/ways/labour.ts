// What making units together asks of the hands, stage by stage, and how long that takes: an estimate of our own, not measured.
import { inchIn, type Length, type Unit as Measure } from '#craft/measure';
import type { MinutesTable } from '#craft/minutes';
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

export const labourMinutes = (labour: Labour, unit: Measure, table: MinutesTable): number =>
  table.chain +
  labour.layings * table.lay +
  labour.drawn * table.draw +
  labour.sewn * table.seam +
  (labour.sewnLength / inchIn[unit]) * table.inch +
  labour.cut * table.part +
  labour.pressed * table.press +
  labour.trimmed * table.trim;

/** Minutes of one step of units made together; of units only cut with room, what trimming them at the end takes. */
export const madeMinutes = (of: {
  readonly unit: Unit;
  readonly way: Way;
  readonly parts: readonly [readonly number[], readonly number[]];
  readonly units: number;
  readonly isLast: boolean;
  readonly seam: Length;
  readonly measure: Measure;
  readonly minutes: MinutesTable;
}): number => {
  const stage = stageFor(of);
  if (stage !== null) return labourMinutes(labourOf(stage, of), of.measure, of.minutes);
  return of.isLast && of.way.trimmed ? of.units * of.minutes.trim : 0;
};
