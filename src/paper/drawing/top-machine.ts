// The same seam of the top as it lies at the machine: in the hand of the steps of a block.
import { toNumber } from '#ground/exact';
import { boxOf } from '#ground/plane';
import {
  allowance,
  machineFrame,
  machineRoom,
  seamLine,
  turnedToMachine,
  turnMark,
  wrongShare,
  wrongSide,
  wrongSideUp,
} from './machine-marks.ts';
import { drawMitreMachine } from './mitre-machine.ts';
import { framed } from './shape.ts';
import { largerThanTop } from './step-scale.ts';
import type { Drawing } from './svg.ts';
import { group, picture } from './svg.ts';
import { outlineInTop } from './things.ts';
import { topAway, topSeam } from './top-seam.ts';
import { type ClothShape, clothPaths, shapesInTop, topEdge } from './top-shapes.ts';
import type { TopStepPicture } from './top-step.ts';

export const drawTopMachine = (of: TopStepPicture): Drawing => {
  const { plan, step, signs } = of;
  if (step.stage === 'mitre') return drawMitreMachine(of);
  const away = topAway(step);
  const seam = topSeam(plan, step);
  const { turned, folded } = turnedToMachine(seam[0], away);
  const shapesOf = shapesInTop(plan, signs, step.things.flat());
  const shapes = step.things.map((things, part) =>
    things.flatMap((thing) =>
      shapesOf(thing).map((shape) => ({ ...shape, points: shape.points.map(part === 0 ? turned : folded) })),
    ),
  );
  const allowed = toNumber(plan.quilt.seam);
  const room = machineRoom(of.fitPt);
  const { set } = plan.top;
  const frame = machineFrame({
    box: boxOf(shapes.flat().flatMap(({ points }) => points)),
    seam: allowed,
    room,
    most: (largerThanTop * room.width) / Math.max(set.width, set.height),
  });
  const [unit, top] = shapes.map((all) => all.map((shape) => ({ ...shape, points: framed(shape.points, frame) }))) as [
    ClothShape[],
    ClothShape[],
  ];
  const line = framed(seam.map(turned), frame);
  const edge = topEdge(plan, frame.scale);
  return picture({
    widthPt: of.fitPt[0],
    heightPt: of.fitPt[1],
    alt: of.alt,
    parts: [
      wrongSide,
      group({ class: 'step-unit' }, [
        ...clothPaths({ shapes: unit, signs, attributes: edge }),
        allowance(line, allowed * frame.scale),
      ]),
      group({ class: 'step-next' }, [
        // cloth by cloth the wrong side shows its own colour, paler
        ...clothPaths({ shapes: top, signs, share: wrongShare, attributes: edge }),
        wrongSideUp(
          step.things[1].map((thing) => framed(outlineInTop(plan, thing).map(folded), frame)),
          null,
        ),
      ]),
      group({ class: 'step-seam' }, [seamLine(line)]),
      group({ class: 'step-turn' }, [turnMark(step, of.fitPt[0] / 2)]),
    ],
  });
};
