// One cut piece: its cut edge, its cloth with the hatch, its label.
import type { Cut } from '#craft/cutting';
import { at, boxOf, type Polygon, quarterTurned } from '#ground/plane';
import type { ClothSign } from '#paper/cloth';
import { hatchDefinitions, hatchId } from './hatching.ts';
import { cutEdgePt, ink, inkOn } from './ink.ts';
import { drawLabels } from './label.ts';
import { framed, pathOf } from './shape.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

const padPt = 1;

/** What is cut, as it lies in its block: triangles as such, not the squares that they come from. */
export const cutOutline = (cut: Pick<Cut, 'shape' | 'size' | 'template' | 'stand'>): Polygon => {
  const [width, height] = cut.size;
  const turned = (points: Polygon): Polygon => points.map((p) => quarterTurned(p, (cut.stand ?? 0) / 90));
  if (cut.template !== null) return cut.template.points;
  if (cut.shape === 'half-square') return turned([at(0, 0), at(width, 0), at(0, height)]);
  if (cut.shape === 'quarter-square') return turned([at(0, 0), at(width, 0), at(width / 2, width / 2)]);
  return [at(0, 0), at(width, 0), at(width, height), at(0, height)];
};

export const drawPiece = (of: {
  readonly cut: Pick<Cut, 'shape' | 'size' | 'template' | 'stand'>;
  readonly sign: ClothSign;
  readonly label: string;
  /** Points a unit. */
  readonly scale: number;
  readonly alt: string;
}): Drawing => {
  const points = cutOutline(of.cut);
  const box = boxOf(points);
  const outline = framed(points, { scale: of.scale, x: padPt - box.x * of.scale, y: padPt - box.y * of.scale });
  const d = pathOf([outline]);
  return picture({
    widthPt: box.width * of.scale + 2 * padPt,
    heightPt: box.height * of.scale + 2 * padPt,
    alt: of.alt,
    parts: [
      hatchDefinitions([of.sign]),
      element('path', { d, fill: of.sign.colour }),
      element('path', {
        d,
        fill: `url(#${hatchId(of.sign)})`,
        stroke: ink,
        'stroke-width': cutEdgePt,
        'stroke-linejoin': 'round',
      }),
      ...drawLabels({
        labels: [{ text: of.label, outline, fill: inkOn(of.sign.colour) }],
        bounds: boxOf(outline),
        tooSmall: 'leave-out',
      }),
    ],
  });
};
