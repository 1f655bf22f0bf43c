// The two parts of a step of a block as they lie at the machine: the first turned, the second folded onto it.
import type { Point } from '#ground/plane';
import { boxOf } from '#ground/plane';
import { machineFrame, machineRoom, turnedToMachine } from './machine-marks.ts';
import type { LaidPatch } from './patches.ts';
import { patchAt } from './seam.ts';
import { type Frame, framed } from './shape.ts';
import type { StepPicture } from './step.ts';
import { mostStepScale } from './step-scale.ts';

interface MachineParts {
  readonly turned: (p: Point) => Point;
  readonly folded: (p: Point) => Point;
  readonly frame: Frame;
  readonly unit: readonly LaidPatch[];
  readonly top: readonly LaidPatch[];
}

/**
 * @param of.seam the allowance, in the document's unit
 * @param start   where the seam is at the right hand
 * @param away    unit vector from there into the second part
 */
export const machineParts = (
  of: StepPicture & { readonly seam: number },
  { start, away }: { readonly start: Point; readonly away: Point },
): MachineParts => {
  const { block, step } = of;
  const { turned, folded } = turnedToMachine(start, away);
  const laidBy = (part: readonly number[], lie: (p: Point) => Point): readonly LaidPatch[] =>
    part.map((i) => {
      const patch = patchAt(block, i);
      return { patch, outline: patch.points.map(lie) };
    });
  const unit = laidBy(step.patches[0], turned);
  const top = laidBy(step.patches[1], folded);
  const room = machineRoom(of.fitPt);
  const frame = machineFrame({
    box: boxOf([...unit, ...top].flatMap(({ outline }) => outline)),
    seam: of.seam,
    room,
    most: mostStepScale(of, room.width / Math.max(...block.finished)),
  });
  const inFrame = ({ patch, outline }: LaidPatch): LaidPatch => ({ patch, outline: framed(outline, frame) });
  return { turned, folded, frame, unit: unit.map(inFrame), top: top.map(inFrame) };
};
