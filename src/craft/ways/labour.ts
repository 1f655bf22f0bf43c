// What making units together asks of the hands, stage by stage.
import { inchIn, type Length, type Unit as Measure } from '#craft/measure';
import type { Work } from '#craft/minutes';
import { distance } from '#ground/plane';
import type { Stage } from './stage.ts';
import { layingsOf, stageFor } from './stages.ts';
import type { Unit } from './unit.ts';
import type { Way } from './ways.ts';

/** Of all layings of a stage. */
const stageWork = (
  stage: Stage,
  of: { readonly way: Way; readonly units: number; readonly measure: Measure },
): Work => {
  const layings = layingsOf(stage, of);
  const length = stage.sewn.reduce((all, [from, to]) => all + distance(from, to), 0);
  return {
    chain: 1,
    lay: layings,
    draw: layings * stage.drawn.length,
    seam: layings * stage.sewn.length,
    inch: layings * (length / inchIn[of.measure]),
    part: layings * stage.cut.length,
    press: layings * stage.pressed.length,
    trim: stage.trimmed !== null && of.way.trimmed ? layings * stage.pressed.length : 0,
  };
};

/** One step of units made together; of units only cut with room, the trimming at the end. */
export const madeWork = (of: {
  readonly unit: Unit;
  readonly way: Way;
  readonly parts: readonly [readonly number[], readonly number[]];
  readonly units: number;
  readonly isLast: boolean;
  readonly seam: Length;
  readonly measure: Measure;
}): Work => {
  const stage = stageFor(of);
  if (stage !== null) return stageWork(stage, of);
  return of.isLast && of.way.trimmed ? { trim: of.units } : {};
};
