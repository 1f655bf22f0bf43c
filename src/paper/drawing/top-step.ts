// One seam of the top as it lies in the quilt: the same hand as the steps of a block. Of mitres, that
// close a corner between borders that hang already, the corner alone is ringed.

import type { QuiltPlan, TopStep } from '#craft';
import type { TopThing } from '#craft/setting';
import type { Point, Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { checkLength } from '#paper/lengths';
import { ink, patchEdgePt } from './ink.ts';
import { squareOf, straightCrossing } from './seam.ts';
import { type Frame, fitted, framed, pathOf } from './shape.ts';
import { boardRoom, checkSizes, pressArrow, rightEnd, slantedSize, standOff, threadOutline } from './step-marks.ts';
import { largerThanTop } from './step-scale.ts';
import type { Drawing } from './svg.ts';
import { element, group, numberText, picture } from './svg.ts';
import { isTurned, outlineInTop, sewnAt, topPointer } from './things.ts';
import { mitreSeam, mitreStrips, topAway, topSeam } from './top-seam.ts';
import { clothPaths, shapesInTop, topEdge } from './top-shapes.ts';

export interface TopStepPicture {
  readonly plan: QuiltPlan;
  readonly step: TopStep;
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}

export const drawTopStep = (of: TopStepPicture): Drawing => {
  const { plan, step } = of;
  const isSlant = step.angle % 90 !== 0 && step.stage !== 'corner';
  const [across, down] = sizeAsItLies(step).map((length) => checkLength(length, plan.quilt)) as [string, string];
  const isMitre = step.stage === 'mitre';
  const away = isMitre ? { x: 0, y: 0 } : topAway(step);
  const apart = standOff(away);
  const outlines = step.things.map((things) => things.map((thing) => outlineInTop(plan, thing)));
  const wide = checkLength(step.unfinished[1], plan.quilt);
  const room = boardRoom({ fitPt: of.fitPt, apart, down: isSlant ? wide : down });
  // the line beyond a slanted row needs room above it too
  const into = isSlant ? { ...room, y: room.y + slantPt, height: room.height - slantPt } : room;
  const { set } = plan.top;
  const most = largerThanTop * Math.min(into.width / set.width, into.height / set.height);
  const corners = outlines.flat(2);
  const measured = isSlant ? rightEnd({ outlines: [corners], angle: step.angle as SlantAngle }) : [];
  const frame = fitted({ box: boxOf([...corners, ...measured]), into, most });
  const shifted = (by: Point): Frame => ({ ...frame, x: frame.x + by.x, y: frame.y + by.y });
  const from = { x: Math.max(0, -apart.x), y: Math.max(0, -apart.y) };
  const frames = [shifted(from), shifted({ x: from.x + apart.x, y: from.y + apart.y })] as const;
  const [first, second] = frames.map((own, part) => (outlines[part] ?? []).map((outline) => framed(outline, own))) as [
    Polygon[],
    Polygon[],
  ];
  const bounds = boxOf([...first, ...second].flat());
  const drawn = drawThings(of);
  const seam = isMitre ? mitreSeam(plan, step) : topSeam(plan, step);
  return picture({
    widthPt: of.fitPt[0],
    heightPt: of.fitPt[1],
    alt: of.alt,
    parts: [
      group({ class: 'step-unit' }, drawn(step.things[0], frames[0])),
      group({ class: isMitre ? 'step-corner' : 'step-next' }, [
        threadOutline(isMitre ? stripsAt(plan, step).map((strip) => framed(strip, frames[0])) : second),
        ...drawn(isMitre ? mitreStrips(plan, step) : step.things[1], frames[1]),
      ]),
      group({ class: 'step-press' }, [
        pressArrow({
          pressTo: step.pressTo,
          crossing: straightCrossing(framed(seam, frame), isMitre ? squareOf(seam) : away),
          apart,
          from,
          into: step.pressTo === 1 ? second : first,
          letters: [],
        }),
      ]),
      group(
        { class: 'step-size' },
        isSlant
          ? [slantedSize({ outlines: [...first, ...second], angle: step.angle as SlantAngle, text: wide })]
          : checkSizes(bounds, [across, down]),
      ),
    ],
  });
};

type SlantAngle = Parameters<typeof slantedSize>[0]['angle'];

const slantPt = 9;

/** Rows of blocks at the sides are measured as they are sewn, level, and drawn as they lie. */
const sizeAsItLies = ({ unfinished: [across, down], angle }: TopStep): readonly [number, number] =>
  angle % 180 === 90 ? [down, across] : [across, down];

const stripsAt = (plan: QuiltPlan, step: TopStep): readonly Polygon[] =>
  mitreStrips(plan, step).map((thing) => outlineInTop(plan, thing));

const drawThings = ({ plan, signs, step }: TopStepPicture) => {
  const shapesOf = shapesInTop(plan, signs, step.things.flat());
  const areTurned = isTurned(plan);
  return (things: readonly TopThing[], frame: Frame): readonly string[] => {
    const shapes = things.flatMap(shapesOf).map((shape) => ({ ...shape, points: framed(shape.points, frame) }));
    const blocks = things.flatMap((thing) => ('block' in thing ? [sewnAt(plan, thing.block)] : []));
    const pointers = areTurned ? blocks.filter(({ size }) => Math.min(...size) * frame.scale >= 16) : [];
    return [
      ...clothPaths({ shapes, signs, attributes: topEdge(plan, frame.scale) }),
      element('path', {
        d: pathOf(things.map((thing) => framed(outlineInTop(plan, thing), frame))),
        fill: 'none',
        stroke: ink,
        'stroke-width': patchEdgePt,
        'stroke-linejoin': 'round',
      }),
      group({ transform: `translate(${numberText(frame.x)} ${numberText(frame.y)})` }, [
        ...pointers.map((placed) => topPointer(placed, frame.scale)),
      ]),
    ];
  };
};
