// The board while one sews: all pieces laid out in place, units as far as they are sewn lying close, the next parts ringed, what
// comes later pale and dashed. So the states are told apart in grey as well.

import type { BlockPlan, QuiltPlan } from '#craft';
import { thingsInTop } from '#craft/setting';
import type { Box, Point, Polygon } from '#ground/plane';
import { boxOf } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { ink, inkOn, paler, patchEdgePt } from './ink.ts';
import { drawLabels } from './label.ts';
import { edgeWidth } from './quilt.ts';
import { fitted, framed, pathOf, thinness } from './shape.ts';
import { threadOutline } from './step-marks.ts';
import { placesInBlock, placesInTop, type StepPlaces } from './step-places.ts';
import type { Drawing } from './svg.ts';
import { element, group, picture } from './svg.ts';
import { outlineInTop } from './things.ts';
import { type ClothShape, clothPaths, shapesInTop } from './top-shapes.ts';

/** Sewn before, joined now, joined now as the part that goes onto it, or not yet. */
export type LaidState = 'sewn' | 'here' | 'next' | 'later';

interface LaidOut {
  readonly signs: ClothSigns;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
  /** The number of the step; one more than there are: when all is sewn. */
  readonly at: number;
}

interface Thing {
  readonly outline: Polygon;
  readonly shapes: readonly ClothShape[];
  readonly label: string;
}

export const drawLaidBlock = (of: LaidOut & { readonly block: BlockPlan }): Drawing => {
  const { block } = of;
  return drawLaid(of, {
    size: { x: 0, y: 0, width: block.finished[0], height: block.finished[1] },
    places: placesInBlock(block),
    things: block.patches.map(({ fabric, points, piece }) => ({
      outline: points,
      shapes: [{ fabric, points }],
      label: piece,
    })),
    widestEdge: () => patchEdgePt,
  });
};

export const drawLaidTop = (of: LaidOut & { readonly plan: QuiltPlan }): Drawing => {
  const { plan } = of;
  const shapesOf = shapesInTop(plan, of.signs, thingsInTop(plan.top.set));
  const { width, height } = plan.top.set;
  return drawLaid(of, {
    size: { x: 0, y: 0, width, height },
    places: placesInTop(plan),
    things: thingsInTop(plan.top.set).map((thing) => ({
      outline: outlineInTop(plan, thing),
      shapes: shapesOf(thing),
      label: '',
    })),
    widestEdge: (scale) => edgeWidth({ blocks: plan.blocks, scale, widthPt: patchEdgePt }),
  });
};

/** The number of the step that first takes each patch of a block; 0 where none does. */
export const stepsTaking = (block: BlockPlan): readonly number[] => takenBy(placesInBlock(block), block.patches.length);

/** The same of the top's blocks and plain pieces, as `thingsInTop` lists them. */
export const topStepsTaking = (plan: QuiltPlan): readonly number[] =>
  takenBy(placesInTop(plan), thingsInTop(plan.top.set).length);

const takenBy = (places: StepPlaces, count: number): readonly number[] => {
  const taken: number[] = Array.from({ length: count }, () => 0);
  for (const [index, all] of places.entries()) {
    for (const thing of all.flat(2)) taken[thing] ||= index + 1;
  }
  return taken;
};

interface Whole {
  readonly size: Box;
  readonly places: StepPlaces;
  readonly things: readonly Thing[];
  readonly widestEdge: (scale: number) => number;
}

const edgePt = 4;

const drawLaid = (of: LaidOut, whole: Whole): Drawing => {
  const { size, things } = whole;
  const into = { x: edgePt, y: edgePt, width: of.fitPt[0] - 2 * edgePt, height: of.fitPt[1] - 2 * edgePt };
  const { scale } = fitted({ box: size, into });
  const smallest = Math.min(...things.map(({ outline }) => thinness(outline)));
  // as on the printed board: apart by 3 pt where the smallest piece bears it
  const apart = Math.min(3, smallest * scale * 0.25);
  const at = (points: Polygon): Polygon => framed(points, { scale, x: edgePt, y: edgePt });
  const parts = partsAt(whole.places, things.length, of.at).map(({ state, members }) => {
    const laid = members.map((index) => ({ index, ...(things[index] as Thing) }));
    const closer = drawnIn(boxOf(laid.flatMap(({ outline }) => at(outline))), apart);
    return { state, laid, to: (points: Polygon) => at(points).map(closer) };
  });
  const edge = { stroke: ink, 'stroke-width': whole.widestEdge(scale), 'stroke-linejoin': 'round' } as const;
  // what is ringed lies over its neighbours
  const order: readonly LaidState[] = ['later', 'sewn', 'here', 'next'];
  const shown = parts.toSorted((a, b) => order.indexOf(a.state) - order.indexOf(b.state));
  return picture({
    widthPt: size.width * scale + 2 * edgePt,
    heightPt: size.height * scale + 2 * edgePt,
    alt: of.alt,
    parts: shown.map(({ state, laid, to }) =>
      group({ class: `laid is-${state}` }, [
        state === 'next' ? threadOutline(laid.map(({ outline }) => to(outline))) : '',
        ...clothPaths({
          shapes: laid.flatMap(({ shapes }) => shapes.map(({ fabric, points }) => ({ fabric, points: to(points) }))),
          signs: of.signs,
          ...(state === 'later' ? { share: laterShare } : { attributes: edge }),
        }),
        state === 'later'
          ? element('path', {
              d: pathOf(laid.map(({ outline }) => to(outline))),
              fill: 'none',
              ...edge,
              'stroke-dasharray': '1.6 1.4',
            })
          : '',
        ...drawLabels({
          labels: laid.flatMap(({ label, outline, shapes: [shape] }) =>
            label === '' ? [] : [{ text: label, outline: to(outline), fill: inkOn(colourOf(of.signs, shape, state)) }],
          ),
          bounds: size,
          tooSmall: 'leave-out',
        }),
        // what a finger or a pointer meets
        ...laid.map(({ index, outline }) =>
          element('path', { d: pathOf([to(outline)]), fill: 'none', 'pointer-events': 'all', 'data-thing': index }),
        ),
      ]),
    ),
  });
};

/** Of the colour of what comes later: our own figure. */
const laterShare = 0.38;

const colourOf = (signs: ClothSigns, shape: ClothShape | undefined, state: LaidState): string => {
  const colour = shape?.fabric == null ? '#ffffff' : signOf(signs, shape.fabric).colour;
  return state === 'later' ? paler(colour, laterShare) : colour;
};

/** Drawn in by half the gap on each side, about the middle of its box. */
const drawnIn = (box: Box, apart: number): ((p: Point) => Point) => {
  const shrunk = (length: number): number => (length > apart ? (length - apart) / length : 1);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return (p) => ({ x: x + (p.x - x) * shrunk(box.width), y: y + (p.y - y) * shrunk(box.height) });
};

/** Units as they are before a step, and what that step joins. */
const partsAt = (
  places: StepPlaces,
  count: number,
  at: number,
): readonly { readonly state: LaidState; readonly members: readonly number[] }[] => {
  const unitOf: string[] = Array.from({ length: count }, (_, thing) => `thing ${thing}`);
  const stateOf: LaidState[] = Array.from({ length: count }, () => 'later');
  for (const [step, all] of places.slice(0, at - 1).entries()) {
    for (const [place, parts] of all.entries()) {
      for (const thing of parts.flat()) {
        unitOf[thing] = `${step} ${place}`;
        stateOf[thing] = 'sewn';
      }
    }
  }
  for (const [first, second] of places[at - 1] ?? []) {
    for (const thing of first) stateOf[thing] = 'here';
    for (const thing of second) stateOf[thing] = 'next';
  }
  const parts = new Map<string, { state: LaidState; members: number[] }>();
  for (let thing = 0; thing < count; thing++) {
    const state = stateOf[thing] as LaidState;
    const key = `${unitOf[thing]} ${state}`;
    const known = parts.get(key);
    if (known === undefined) parts.set(key, { state, members: [thing] });
    else known.members.push(thing);
  }
  return [...parts.values()];
};
