// A spun centre from the back: the seams that cross there, the allowance of each folded to its side, all one way round, and the
// little patch that opens in the middle.
import type { BlockPlan, PlannedStep } from '#craft';
import { isSpun, spotsInBlock } from '#craft/pressing';
import type { Point } from '#ground/plane';
import { arrow } from './arrow.ts';
import { hush, ink, patchEdgePt, sheet, softInk } from './ink.ts';
import { rectOutline } from './placed.ts';
import { pathOf } from './shape.ts';
import { type Drawing, element, picture } from './svg.ts';

const marginPt = 2;

/** @returns null where the step is not spun */
export const drawSpunBack = (of: {
  readonly block: BlockPlan;
  readonly step: PlannedStep;
  readonly sidePt: number;
  readonly alt: string;
}): Drawing | null => {
  const { block, step, sidePt } = of;
  if (!isSpun(step.pressTo)) return null;
  // seen from the back, left and right are exchanged
  const arms = armsAt(block, step.number - 1).map(({ x, y }) => ({ x: -x, y }));
  const round = step.pressTo === 'clockwise' ? -1 : 1;
  const middle = { x: sidePt / 2, y: sidePt / 2 };
  const reach = sidePt / 2 - marginPt;
  const allowance = reach * 0.26;
  const at = (arm: Point, along: number, aside: number): Point => ({
    x: middle.x + arm.x * along - arm.y * round * aside,
    y: middle.y + arm.y * along + arm.x * round * aside,
  });
  const far = (arm: Point): number => reach / Math.max(Math.abs(arm.x), Math.abs(arm.y));
  const cloth = rectOutline({ x: marginPt, y: marginPt, width: 2 * reach, height: 2 * reach });
  const edge = { stroke: ink, 'stroke-width': patchEdgePt, 'stroke-linejoin': 'round' } as const;
  return picture({
    widthPt: sidePt,
    heightPt: sidePt,
    alt: of.alt,
    parts: [
      element('path', { d: pathOf([cloth]), fill: hush, ...edge }),
      ...arms.map((arm) => {
        const long = Math.min(far(arm), reach) - allowance * 0.1;
        const strip = [
          at(arm, allowance, 0),
          at(arm, long, 0),
          at(arm, long, allowance),
          at(arm, allowance, allowance),
        ];
        return element('path', { d: pathOf([strip]), fill: sheet, ...edge });
      }),
      element('path', { d: pathOf([arms.map((arm) => at(arm, allowance, 0))]), fill: sheet, ...edge }),
      ...arms.map((arm) =>
        element('path', {
          d: pathOf([[at(arm, 0, 0), at(arm, allowance, 0)]]),
          fill: 'none',
          stroke: softInk,
          'stroke-width': patchEdgePt,
        }),
      ),
      ...arms.map((arm) => {
        const along = Math.min(far(arm), reach) * 0.72;
        return arrow({ from: at(arm, along, -allowance * 0.3), to: at(arm, along, allowance * 0.95), heads: 'one' });
      }),
    ],
  });
};

/** Unit vectors away from where other seams cross a step's own, round by the angle, with its own two halves. */
const armsAt = (block: BlockPlan, step: number): readonly Point[] => {
  const { spots } = spotsInBlock(block, block.finished);
  const spot = spots.find(({ over, meetings }) => block.seams[over]?.step === step && meetings.length > 0);
  if (spot === undefined) throw new Error(`nothing crosses the seam of step ${step + 1}`);
  const { along } = spot;
  const others = spot.ends.flat().map(({ into }) => into);
  return [along, { x: -along.x, y: -along.y }, ...others].toSorted(
    (a, b) => Math.atan2(a.y, -a.x) - Math.atan2(b.y, -b.x),
  );
};
