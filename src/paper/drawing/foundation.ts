// A foundation at true size, in mirror image: the lines to sew on with the number of each patch, and the line to cut along at the end.
import { at, boxOf, grown, hullOf, type Polygon, quarterTurned } from '#ground/plane';
import { cutEdgePt, ink, softInk } from './ink.ts';
import { labelsInside } from './label.ts';
import { framed, pathOf } from './shape.ts';
import { element } from './svg.ts';
import { type WholeDrawing, wideOverlapPt } from './tiles.ts';

const padPt = 4;

/** On its side the top of the block is at the right of the sheet. */
export type Lies = 'as-in-block' | 'on-its-side';

export const foundation = (of: {
  /** In the order of sewing, as they lie in the block, in the document's unit. */
  readonly patches: readonly Polygon[];
  readonly seam: number;
  readonly lies: Lies;
  /** Points a unit at true scale. */
  readonly scale: number;
}): WholeDrawing => {
  const { scale } = of;
  const quarters = of.lies === 'on-its-side' ? 1 : 0;
  // turned over, an outline runs the other way round
  const mirrored = of.patches.map((patch) => patch.map(({ x, y }) => quarterTurned(at(-x, y), quarters)).reverse());
  const edge = grown(hullOf(mirrored.flat(), 1e-6), of.seam);
  const box = boxOf(edge);
  const frame = { scale, x: padPt - box.x * scale, y: padPt - box.y * scale };
  const laid = mirrored.map((patch) => framed(patch, frame));
  const cut = framed(edge, frame);
  return {
    widthPt: box.width * scale + 2 * padPt,
    heightPt: box.height * scale + 2 * padPt,
    labelsAre: 'free',
    overlapPt: wideOverlapPt,
    outlines: [cut],
    parts: [
      element('path', {
        d: pathOf([cut]),
        fill: 'none',
        stroke: softInk,
        'stroke-width': 0.6,
        'stroke-dasharray': '4 2',
      }),
      ...laid.map((patch) =>
        element('path', {
          d: pathOf([patch]),
          fill: 'none',
          stroke: ink,
          'stroke-width': cutEdgePt,
          'stroke-linejoin': 'round',
        }),
      ),
    ],
    labels: labelsInside(laid.map((outline, i) => ({ text: String(i + 1), outline, fill: ink }))),
  };
};
