// A row, a section or a whole top that came out the wrong size: where it was measured, what was read and what it should be, and the
// blocks and strips to look at.
import type { QuiltPlan, TopStep } from '#craft';
import type { TopThing } from '#craft/setting';
import { boxOf, grown, hullOf, type Point, type Polygon } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { cutEdgePt, hush, ink, patchEdgePt, softInk, thread } from './ink.ts';
import { framed, lineOf, pathOf } from './shape.ts';
import { type Drawing, element, picture } from './svg.ts';
import { outlineInTop } from './things.ts';
import { clothPaths, shapesInTop, topEdge } from './top-shapes.ts';
import { measures } from './wrong-size.ts';

export interface WrongTop {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly seam: number;
  /** The last that was measured. */
  readonly step: TopStep;
  /** Of what the step joins, to look at. */
  readonly ringed: readonly TopThing[];
  /** From edge to edge, in the top. */
  readonly lines: readonly (readonly [Point, Point])[];
  /** What stands at its width and its height, as it lies in the top. */
  readonly words: readonly [string, string];
  readonly fitPt: readonly [number, number];
  readonly alt: string;
}

const marginPt = 30;

export const drawWrongTop = (of: WrongTop): Drawing => {
  const { plan, step, signs } = of;
  const things = step.things.flat();
  const outlines = things.map((thing) => outlineInTop(plan, thing));
  const { set } = plan.top;
  const unit = hullOf(outlines.flat(), 1e-6 * Math.max(set.width, set.height));
  const raw = boxOf(grown(unit, of.seam));
  const scale = Math.min((of.fitPt[0] - 2 * marginPt) / raw.width, (of.fitPt[1] - 2 * marginPt) / raw.height);
  const frame = { scale, x: marginPt - raw.x * scale, y: marginPt - raw.y * scale };
  const at = (polygon: Polygon): Polygon => framed(polygon, frame);
  const shapes = things
    .flatMap(shapesInTop(plan, signs, things))
    .map((shape) => ({ ...shape, points: at(shape.points) }));
  const outlined = (polygons: readonly Polygon[], fill: string, stroke: string, width: number): string =>
    element('path', { d: pathOf(polygons.map(at)), fill, stroke, 'stroke-width': width, 'stroke-linejoin': 'round' });
  const ringed = of.ringed.map((thing) => outlineInTop(plan, thing));
  return picture({
    widthPt: raw.width * scale + 2 * marginPt,
    heightPt: raw.height * scale + 2 * marginPt,
    alt: of.alt,
    parts: [
      outlined([grown(unit, of.seam)], hush, ink, cutEdgePt),
      ...clothPaths({ shapes, signs, attributes: topEdge(plan, scale) }),
      outlined(outlines, 'none', ink, patchEdgePt),
      ...of.lines.map((line) => measuredAlong(at(line))),
      ...(ringed.length === 0 ? [] : [outlined(ringed, 'none', thread, 2.5)]),
      ...measures(of.words, boxOf(at(grown(unit, of.seam)))),
    ],
  });
};

/** Light under dark, to be seen on any cloth. */
const measuredAlong = (line: Polygon): string =>
  [
    { stroke: hush, width: 2.5 },
    { stroke: softInk, width: 1, dashes: '4 3' },
  ]
    .map(({ stroke, width, dashes }) =>
      element('path', { d: lineOf(line), fill: 'none', stroke, 'stroke-width': width, 'stroke-dasharray': dashes }),
    )
    .join('');
