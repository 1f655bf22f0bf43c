// How a block, or the top, is pressed: an arrow across every seam, a dot where seams that meet nest, a crossed ring where they do
// not. One step may be chosen: its seams are then drawn along their length.
import type { BlockPlan, PlannedStep, QuiltPlan } from '#craft';
import { length } from '#craft/measure';
import { topSeams } from '#craft/piecing';
import { isSpun, meetingPlacesIn, meetingPlacesOf, type Press } from '#craft/pressing';
import type { PlacedBlock } from '#craft/setting';
import type { Point, Polygon } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { arrow, spunArrows } from './arrow.ts';
import { ink, paler, patchEdgePt, softInk, thread } from './ink.ts';
import { entriesOf, entryKey } from './placed.ts';
import { type Frame, framed, lineOf, pathOf } from './shape.ts';
import { type Drawing, element, group, numberText, picture } from './svg.ts';
import { otherWayMark, outlineInTop, sewnAt, topPointer } from './things.ts';
import { clothPaths, shapesInTop } from './top-shapes.ts';

interface PressedPicture {
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  /** Number of the step that is looked at; null for none. */
  readonly chosen: number | null;
  readonly alt: string;
}

/** Cloth is pale, so that arrows and dots stand out. */
const clothShare = 0.45;
const padPt = 6;

/** @param of.way of a block that is pressed in two ways, which of them is drawn */
export const drawPressedBlock = (
  of: PressedPicture & { readonly block: BlockPlan; readonly way: 'first' | 'other' },
): Drawing => {
  const { block, signs, chosen } = of;
  const { frame, widthPt, heightPt } = framedIn(of.fitPt, block.finished);
  const loose = block.pressing.loose.map(({ at }) => at);
  const places = meetingPlacesIn(block);
  const seams = block.seams.map(({ step, path, heading }): PressedSeam => {
    const { number, pressTo, otherWay } = block.steps[step] as PlannedStep;
    return { path, heading, press: of.way === 'other' ? (otherWay ?? pressTo) : pressTo, step: number };
  });
  return picture({
    widthPt,
    heightPt,
    alt: of.alt,
    parts: [
      ...block.patches.map(({ fabric, points }) =>
        element('path', {
          d: pathOf([framed(points, frame)]),
          fill: paler(signOf(signs, fabric).colour, clothShare),
          stroke: softInk,
          'stroke-width': patchEdgePt,
          'stroke-linejoin': 'round',
        }),
      ),
      ...seamMarks({ seams, frame, chosen }),
      ...meetingMarks({ places, loose, frame }),
    ],
  });
};

/** The seams of the top itself; those inside its blocks are drawn with the blocks. */
export const drawPressedTop = (of: PressedPicture & { readonly plan: QuiltPlan }): Drawing => {
  const { plan, signs, chosen } = of;
  const { set, pressing } = plan.top;
  const { frame, widthPt, heightPt } = framedIn(of.fitPt, [set.width, set.height]);
  const entries = entriesOf(plan);
  const blockAt = set.placed.map((placed) => entries.get(entryKey(placed))?.index ?? 0);
  const things = [...set.placed.map((_, block) => ({ block })), ...set.strips.map((_, strip) => ({ strip }))];
  const shapesOf = shapesInTop(plan, signs, things);
  const shapes = things.flatMap(shapesOf).map((shape) => ({ ...shape, points: framed(shape.points, frame) }));
  const stepOf = new Map(plan.top.steps.flatMap(({ number, seams }) => seams.map((seam) => [seam, number] as const)));
  const seams = topSeams(set).map(
    (seam, i): PressedSeam => ({ ...seam, press: pressing.presses[i] as Press, step: stepOf.get(i) as number }),
  );
  return picture({
    widthPt,
    heightPt,
    alt: of.alt,
    parts: [
      ...clothPaths({ shapes, signs, share: clothShare }),
      element('path', {
        d: pathOf(things.map((thing) => framed(outlineInTop(plan, thing), frame))),
        fill: 'none',
        stroke: softInk,
        'stroke-width': patchEdgePt,
        'stroke-linejoin': 'round',
      }),
      ...seamMarks({ seams, frame, chosen }),
      ...meetingMarks({
        places: meetingPlacesOf({ set, blocks: plan.blocks, blockAt }),
        loose: pressing.between.loose.map(({ at }) => at),
        frame,
      }),
      ...set.placed.flatMap((_, place) => otherWayMark(plan, place, frame)),
      ...pointersTo(plan, frame),
    ],
  });
};

/** Where blocks are turned so that seams nest: which edge of each is at the top of its board. */
const pointersTo = (plan: QuiltPlan, { scale, x, y }: Frame): readonly string[] =>
  plan.top.pressing.turns.every((turn) => turn === 0)
    ? []
    : [
        group({ transform: `translate(${numberText(x)} ${numberText(y)})` }, [
          ...plan.top.set.placed.map((_, place) => topPointer(within(sewnAt(plan, place)), scale)),
        ]),
      ];

/** Off its edges, where the arrows of the top lie. */
const within = (placed: PlacedBlock): PlacedBlock => {
  const [width, height] = placed.size;
  return {
    ...placed,
    at: [length(placed.at[0] + width * fromEdge), length(placed.at[1] + height * fromEdge)],
    size: [length(width * (1 - 2 * fromEdge)), length(height * (1 - 2 * fromEdge))],
  };
};

/** Share of a block's side. */
const fromEdge = 0.12;

const framedIn = (
  fitPt: readonly [number, number],
  [width, height]: readonly [number, number],
): { readonly frame: Frame; readonly widthPt: number; readonly heightPt: number } => {
  const scale = Math.min((fitPt[0] - 2 * padPt) / width, (fitPt[1] - 2 * padPt) / height);
  return {
    frame: { scale, x: padPt, y: padPt },
    widthPt: width * scale + 2 * padPt,
    heightPt: height * scale + 2 * padPt,
  };
};

interface PressedSeam {
  readonly path: Polygon;
  readonly heading: number;
  readonly press: Press;
  /** Number of its step. */
  readonly step: number;
}

const longestArrowPt = 13;
const shortestArrowPt = 5;

/** Half an arrow's length across a stretch of seam. */
const reachOn = (longPt: number): number => Math.min(longestArrowPt, Math.max(shortestArrowPt, longPt * 0.5)) / 2;

const seamMarks = (of: {
  readonly seams: readonly PressedSeam[];
  readonly frame: Frame;
  readonly chosen: number | null;
}): readonly string[] =>
  of.seams.map(({ path, heading, press, step }) => {
    const laid = framed(path, of.frame);
    const isChosen = step === of.chosen;
    const along = element('path', {
      d: lineOf(laid),
      fill: 'none',
      stroke: isChosen ? thread : 'transparent',
      'stroke-width': isChosen ? 2.4 : 9,
      'stroke-linecap': 'round',
    });
    const colour = isChosen || of.chosen === null ? thread : softInk;
    if (isSpun(press)) {
      const [a, b] = [laid[0], laid.at(-1)] as [Point, Point];
      const on = (share: number): Point => ({ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share });
      const reach = reachOn(Math.hypot(b.x - a.x, b.y - a.y) / 2);
      const halves = spunArrows({ halves: [on(0.24), on(0.76)], press, reach, colour });
      return group({ class: 'pressed-seam', 'data-thing': step }, [along, ...halves]);
    }
    const { at, away, longPt } = middleOf(laid, heading);
    const reach = reachOn(longPt);
    const toward = press === 0 ? -1 : 1;
    const end = (by: number): Point => ({ x: at.x + away.x * by, y: at.y + away.y * by });
    const mark = arrow({
      from: end(-toward * reach),
      to: end(toward * reach),
      heads: press === 'open' ? 'both' : 'one',
      colour,
    });
    return group({ class: 'pressed-seam', 'data-thing': step }, [along, mark]);
  });

/** A little off the middle of the longest run, and the way to the second part there. */
const middleOf = (
  path: Polygon,
  heading: number,
): { readonly at: Point; readonly away: Point; readonly longPt: number } => {
  const longOf = (run: readonly Leg[]): number => run.reduce((all, leg) => all + legLong(leg), 0);
  const run = runsOf(path).reduce((one, other) => (longOf(other) > longOf(one) * (1 + 1e-6) ? other : one));
  // the seams of a whole row would have their arrows in one line with those that end on them: off the middle
  let left = longOf(run) * (0.5 - offMiddle);
  const leg = run.find((one) => {
    const isPast = left > legLong(one);
    if (isPast) left -= legLong(one);
    return !isPast;
  }) as Leg;
  const [dx, dy] = [(leg.b.x - leg.a.x) / legLong(leg), (leg.b.y - leg.a.y) / legLong(leg)];
  const radians = (heading * Math.PI) / 180;
  const second = { x: Math.cos(radians), y: Math.sin(radians) };
  // square to a curve where the arrow is
  const side = Math.sign(second.y * dx - second.x * dy);
  return {
    at: { x: leg.a.x + dx * left, y: leg.a.y + dy * left },
    away: run.length === 1 ? second : { x: -dy * side, y: dx * side },
    longPt: longOf(run),
  };
};

interface Leg {
  readonly a: Point;
  readonly b: Point;
}

const legLong = ({ a, b }: Leg): number => Math.hypot(b.x - a.x, b.y - a.y);

/** A path from corner to corner; the chords of a curve make one run. */
const runsOf = (path: Polygon): readonly (readonly Leg[])[] => {
  const runs: Leg[][] = [];
  for (const [i, b] of path.slice(1).entries()) {
    const leg = { a: path[i] as Point, b };
    const before = runs.at(-1)?.at(-1);
    if (before !== undefined && turnBetween(before, leg) < leastCorner) runs.at(-1)?.push(leg);
    else runs.push([leg]);
  }
  return runs;
};

const turnBetween = (p: Leg, q: Leg): number => {
  const [ax, ay, bx, by] = [p.b.x - p.a.x, p.b.y - p.a.y, q.b.x - q.a.x, q.b.y - q.a.y];
  return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
};

/** Radians: chords of an arc turn by less from one to the next. Our own figure. */
const leastCorner = Math.PI / 12;

/** Share of a seam by which its arrow stands off its middle, where seams often meet. */
const offMiddle = 0.12;

const meetingMarks = (of: {
  readonly places: readonly Point[];
  readonly loose: readonly Point[];
  readonly frame: Frame;
}): readonly string[] => {
  const keyOf = ({ x, y }: Point): string => `${numberText(x * of.frame.scale)} ${numberText(y * of.frame.scale)}`;
  const isLoose = new Set(of.loose.map(keyOf));
  const places = new Map(of.places.map((at) => [keyOf(at), at]));
  return [...places].map(([key, at]) => {
    const [{ x, y }] = framed([at], of.frame) as readonly [Point];
    if (!isLoose.has(key)) {
      return element('circle', { cx: x, cy: y, r: 2.2, fill: ink, stroke: '#ffffff', 'stroke-width': 1 });
    }
    const r = 3.6;
    const d = `M${numberText(x - r * 0.6)} ${numberText(y - r * 0.6)}l${numberText(r * 1.2)} ${numberText(r * 1.2)}m0 ${numberText(-r * 1.2)}l${numberText(-r * 1.2)} ${numberText(r * 1.2)}`;
    return (
      element('circle', { cx: x, cy: y, r, fill: '#ffffff', stroke: ink, 'stroke-width': 1 }) +
      element('path', { d, stroke: ink, 'stroke-width': 1.1, fill: 'none' })
    );
  });
};
