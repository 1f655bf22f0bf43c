// The board of a block at true size: every piece as it is cut, allowance and all, in its place and clear of the others, so that
// the cut pieces can be laid on it.
import type { BlockPlan, PlannedPatch } from '#craft';
import { cutEdge } from '#craft/cutting';
import { length } from '#craft/measure';
import { at, boxOf, grown, type Point, type Polygon } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { movedApart } from './apart.ts';
import { cutEdgePt, ink, softInk } from './ink.ts';
import { labelsInside } from './label.ts';
import { framed, pathOf } from './shape.ts';
import { element } from './svg.ts';
import { type WholeDrawing, wideOverlapPt } from './tiles.ts';

const padPt = 4;
/** White between two pieces. */
const clearPt = 3;

export const trueBoard = (of: {
  readonly block: BlockPlan;
  readonly signs: ClothSigns;
  /** Seam allowance, in the document's unit. */
  readonly seam: number;
  /** Points a unit at true scale. */
  readonly scale: number;
}): WholeDrawing => {
  const { block, scale } = of;
  const places = block.patches.map(({ points }) => points);
  const clear = clearPt / scale / 2;
  const moved = movedApart({
    outlines: block.patches.map((patch) => cutOf(patch, of.seam + clear)),
    places,
    middle: at(block.finished[0] / 2, block.finished[1] / 2),
  });
  const box = boxOf(moved.flat());
  const frame = { scale, x: padPt - box.x * scale, y: padPt - box.y * scale };
  const laid = block.patches.map((patch, i) => {
    const from = cutOf(patch, of.seam + clear)[0] as Point;
    const to = moved[i]?.[0] as Point;
    const there = (points: Polygon): Polygon =>
      framed(
        points.map((p) => at(p.x + to.x - from.x, p.y + to.y - from.y)),
        frame,
      );
    return { cut: there(cutOf(patch, of.seam)), seam: there(patch.points) };
  });
  const line = (outline: Polygon, stroke: string, width: number, dashes?: string): string =>
    element('path', {
      d: pathOf([outline]),
      fill: 'none',
      stroke,
      'stroke-width': width,
      'stroke-dasharray': dashes,
      'stroke-linejoin': 'round',
    });
  return {
    widthPt: box.width * scale + 2 * padPt,
    heightPt: box.height * scale + 2 * padPt,
    labelsAre: 'free',
    overlapPt: wideOverlapPt,
    outlines: laid.map(({ cut }) => cut),
    parts: [...laid.flatMap(({ cut, seam }) => [line(cut, ink, cutEdgePt), line(seam, softInk, 0.6, '4 2')])],
    labels: labelsInside(
      laid.map(({ seam }, i) => {
        const patch = block.patches[i];
        return { text: patch === undefined ? '' : labelOf(patch, of), outline: seam, fill: ink };
      }),
    ),
  };
};

/** Grown by an allowance: of a patch with curved sides as it is cut. */
const cutOf = ({ points, arcs }: PlannedPatch, by: number): Polygon =>
  arcs === undefined ? grown(points, by) : cutEdge({ points, arcs }, length(by)).points;

/** "B · A": the piece and the letter of its cloth; "B" alone of a scrappy piece, whose cloth changes from block to block. */
const labelOf = (
  { piece, fabric }: PlannedPatch,
  { block, signs }: { readonly block: BlockPlan; readonly signs: ClothSigns },
): string => {
  const isScrappy = block.pieces.some(({ label, fabrics }) => label === piece && fabrics.length > 1);
  return isScrappy ? piece : `${piece} · ${signOf(signs, fabric).letter}`;
};
