// One seam of the top, as it lies in the quilt and as it lies at the machine: the same hand as the steps of a block. Of mitres, that
// close a corner between borders that hang already, the corner alone is ringed.

import type { QuiltPlan, TopStep } from '#craft';
import { type TopThing, turnedBy } from '#craft/setting';
import { toNumber } from '#ground/exact';
import type { Point, Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { checkLength } from '#paper/lengths';
import { dimension } from './arrow.ts';
import { ink, patchEdgePt, textWidthPt } from './ink.ts';
import { allowance, seamLine, turnMark, wrongShare, wrongSide, wrongSideUp } from './machine.ts';
import { edgeWidth } from './quilt.ts';
import { type Leg, sideWays } from './seam.ts';
import { type Frame, fitted, framed, pathOf } from './shape.ts';
import { pressArrow, standOff, threadOutline } from './step-marks.ts';
import type { Drawing } from './svg.ts';
import { element, group, numberText, picture } from './svg.ts';
import { outlineInTop, placedAt, topPointer } from './things.ts';
import { type ClothShape, clothPaths, shapesInTop } from './top-shapes.ts';

export interface TopStepPicture {
  readonly plan: QuiltPlan;
  readonly step: TopStep;
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}

const marginPt = 4;
const dimensionPt = 13;
/** Beyond the scale at which the whole top fills the picture: a pair of blocks is not drawn as large as a quilt. */
const larger = 12;

export const drawTopStep = (of: TopStepPicture): Drawing => {
  const { plan, step } = of;
  const isSlant = step.angle % 90 !== 0 && step.stage !== 'corner';
  const [across, down] = sizeAsItLies(step).map((length) => checkLength(length, plan.quilt)) as [string, string];
  const besidePt = isSlant ? 0 : textWidthPt(down, 8) + 10;
  const isMitre = step.stage === 'mitre';
  const away = isMitre ? { x: 0, y: 0 } : topAway(step);
  const apart = standOff(away);
  const outlines = step.things.map((things) => things.map((thing) => outlineInTop(plan, thing)));
  const into = {
    x: marginPt,
    y: marginPt,
    width: of.fitPt[0] - 2 * marginPt - besidePt - Math.abs(apart.x),
    height: of.fitPt[1] - 2 * marginPt - (isSlant ? 0 : dimensionPt) - Math.abs(apart.y),
  };
  const { set } = plan.top;
  const most = larger * Math.min(into.width / set.width, into.height / set.height);
  const frame = fitted({ box: boxOf(outlines.flat(2)), into, most });
  const shifted = (by: Point): Frame => ({ ...frame, x: frame.x + by.x, y: frame.y + by.y });
  const from = { x: Math.max(0, -apart.x), y: Math.max(0, -apart.y) };
  const frames = [shifted(from), shifted({ x: from.x + apart.x, y: from.y + apart.y })] as const;
  const [first, second] = frames.map((own, part) => (outlines[part] ?? []).map((outline) => framed(outline, own))) as [
    Polygon[],
    Polygon[],
  ];
  const bounds = boxOf([...first, ...second].flat());
  const under = bounds.y + bounds.height + marginPt + 1.5;
  const beside = bounds.x + bounds.width + marginPt + 2.5;
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
        ...drawn(isMitre ? stripThings(plan, step) : step.things[1], frames[1]),
      ]),
      group({ class: 'step-press' }, [
        pressArrow({
          pressTo: step.pressTo,
          seam: framed(seam, frame),
          away: isMitre ? squareTo(seam) : away,
          apart,
          from,
          into: step.pressTo === 1 ? second : first,
          letters: [],
        }),
      ]),
      group(
        { class: 'step-size' },
        isSlant
          ? []
          : [
              dimension({
                from: { x: bounds.x, y: under },
                to: { x: bounds.x + bounds.width, y: under },
                text: across,
              }),
              dimension({
                from: { x: beside, y: bounds.y },
                to: { x: beside, y: bounds.y + bounds.height },
                text: down,
              }),
            ],
      ),
    ],
  });
};

const edgePt = 6;
const turnRoomPt = 16;

/** @returns null for a mitre: the quilt is folded at the corner, and nothing is turned onto it */
export const drawTopMachine = (of: TopStepPicture): Drawing | null => {
  const { plan, step, signs } = of;
  if (step.stage === 'mitre') return null;
  const away = topAway(step);
  const seam = topSeam(plan, step);
  const [start] = seam;
  const turned = (p: Point): Point => ({
    x: (p.x - start.x) * away.x + (p.y - start.y) * away.y,
    y: -(p.x - start.x) * away.y + (p.y - start.y) * away.x,
  });
  const folded = (p: Point): Point => ({ x: -turned(p).x, y: turned(p).y });
  const shapesOf = shapesInTop(plan, signs, step.things.flat());
  const shapes = step.things.map((things, part) =>
    things.flatMap((thing) =>
      shapesOf(thing).map((shape) => ({ ...shape, points: shape.points.map(part === 0 ? turned : folded) })),
    ),
  );
  const allowed = toNumber(plan.quilt.seam);
  const box = boxOf(shapes.flat().flatMap(({ points }) => points));
  const roomX = of.fitPt[0] - 2 * edgePt;
  const roomY = of.fitPt[1] - 2 * edgePt - turnRoomPt;
  const { set } = plan.top;
  const scale = Math.min(
    roomX / (box.width + allowed),
    roomY / (box.height + 2 * allowed),
    (larger * roomX) / Math.max(set.width, set.height),
  );
  const frame = {
    scale,
    x: edgePt + (roomX - (box.width + allowed) * scale) / 2 - box.x * scale,
    y: turnRoomPt + edgePt + allowed * scale - box.y * scale + (roomY - (box.height + 2 * allowed) * scale) / 2,
  };
  const [unit, top] = shapes.map((all) => all.map((shape) => ({ ...shape, points: framed(shape.points, frame) }))) as [
    ClothShape[],
    ClothShape[],
  ];
  const line = framed(seam.map(turned), frame);
  const edge = edgeOf(plan, scale);
  return picture({
    widthPt: of.fitPt[0],
    heightPt: of.fitPt[1],
    alt: of.alt,
    parts: [
      wrongSide,
      group({ class: 'step-unit' }, [
        ...clothPaths({ shapes: unit, signs, attributes: edge }),
        allowance(line, allowed * scale),
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
      group({ class: 'step-turn' }, [turnMark(step, edgePt + roomX / 2)]),
    ],
  });
};

/** Rows of blocks at the sides are measured as they are sewn, level, and drawn as they lie. */
const sizeAsItLies = ({ unfinished: [across, down], angle }: TopStep): readonly [number, number] =>
  angle % 180 === 90 ? [down, across] : [across, down];

/** Unit vector along which the second part stands off. */
export const topAway = ({ side, angle }: Pick<TopStep, 'side' | 'angle'>): Point =>
  turnedBy(sideWays[side], angle as Parameters<typeof turnedBy>[1]);

/** Where the two parts meet: the edge of the second toward the first, as far as the first reaches. */
const topSeam = (plan: QuiltPlan, step: TopStep): Leg => {
  const away = topAway(step);
  const along = { x: -away.y, y: away.x };
  const of = (things: readonly TopThing[], way: Point): readonly number[] =>
    things.flatMap((thing) => outlineInTop(plan, thing).map((p) => p.x * way.x + p.y * way.y));
  const line = Math.min(...of(step.things[1], away));
  const spans = step.things.map((things) => of(things, along));
  const from = Math.max(...spans.map((span) => Math.min(...span)));
  const to = Math.min(...spans.map((span) => Math.max(...span)));
  const at = (u: number): Point => ({ x: away.x * line + along.x * u, y: away.y * line + along.y * u });
  return [at(from), at(to)];
};

/** Corners of a ring in the order of their mitres, clockwise from the upper left. */
const corners = [
  { x: 0, y: 0, name: 'upper left' },
  { x: 1, y: 0, name: 'upper right' },
  { x: 1, y: 1, name: 'lower right' },
  { x: 0, y: 1, name: 'lower left' },
] as const;

export const mitreCorner = ({ top }: QuiltPlan, step: TopStep): (typeof corners)[number] => {
  const nth = top.steps.filter(({ stage, of }) => stage === 'mitre' && of === step.of).indexOf(step);
  return corners[nth] ?? corners[0];
};

/** From the inner corner out. */
const mitreSeam = (plan: QuiltPlan, step: TopStep): Leg => {
  const { x, y } = mitreCorner(plan, step);
  const box = boxOf(step.things.flat().flatMap((thing) => outlineInTop(plan, thing)));
  const wide = step.seam / Math.SQRT2;
  const outer = { x: box.x + x * box.width, y: box.y + y * box.height };
  return [{ x: outer.x + (x === 0 ? wide : -wide), y: outer.y + (y === 0 ? wide : -wide) }, outer];
};

const squareTo = ([a, b]: Leg): Point => {
  const whole = Math.hypot(b.x - a.x, b.y - a.y);
  return { x: -(b.y - a.y) / whole, y: (b.x - a.x) / whole };
};

/** The two strips that meet at a mitre. */
const stripThings = (plan: QuiltPlan, step: TopStep): readonly TopThing[] => {
  const [inner, outer] = mitreSeam(plan, step);
  const isAt = (p: Point, q: Point): boolean => Math.hypot(p.x - q.x, p.y - q.y) < 1e-6 * plan.top.set.width;
  return step.things.flat().filter((thing) => {
    const outline = outlineInTop(plan, thing);
    return 'strip' in thing && [inner, outer].every((end) => outline.some((p) => isAt(p, end)));
  });
};

const stripsAt = (plan: QuiltPlan, step: TopStep): readonly Polygon[] =>
  stripThings(plan, step).map((thing) => outlineInTop(plan, thing));

const edgeOf = (plan: QuiltPlan, scale: number) =>
  ({
    stroke: ink,
    'stroke-width': edgeWidth({ blocks: plan.blocks, scale, widthPt: patchEdgePt }),
    'stroke-linejoin': 'round',
  }) as const;

const drawThings = ({ plan, signs, step }: TopStepPicture) => {
  const shapesOf = shapesInTop(plan, signs, step.things.flat());
  const isTurned = plan.top.set.placed.some(({ turn }) => turn !== 0);
  return (things: readonly TopThing[], frame: Frame): readonly string[] => {
    const shapes = things.flatMap(shapesOf).map((shape) => ({ ...shape, points: framed(shape.points, frame) }));
    const blocks = things.flatMap((thing) => ('block' in thing ? [placedAt(plan, thing.block)] : []));
    const pointers = isTurned ? blocks.filter(({ size }) => Math.min(...size) * frame.scale >= 16) : [];
    return [
      ...clothPaths({ shapes, signs, attributes: edgeOf(plan, frame.scale) }),
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
