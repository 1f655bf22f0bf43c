// How pieces nest in one rectangle: a strip cut at an angle, or the box of two templates.
import type { ClothPiece } from '#craft';
import type { Unit } from '#craft/measure';
import { at, type Point, type Polygon } from '#ground/plane';
import type { ClothSign } from '#paper/cloth';
import { lengthOnPaper } from '#paper/lengths';
import { dimension } from './arrow.ts';
import { cutEdgePt, hairlinePt, hush, inkOn, lettering, softInk } from './ink.ts';
import { drawLabels } from './label.ts';
import { framed, pathOf } from './shape.ts';
import type { Drawing } from './svg.ts';
import { element, numberText, picture } from './svg.ts';

/** Room for the figure of the height beside it, and for two lines below. */
const besidePt = 60;
const belowPt = 28;
/** No larger than this, or a short strip would fill the page: points an inch. */
const mostScale = { in: 22, cm: 22 / 2.54 } as const;

/** @param mark the size's mark; @param note how it is cut, below the picture */
export const drawNested = (of: {
  readonly piece: Pick<ClothPiece, 'cut' | 'outlines' | 'way'>;
  readonly sign: ClothSign;
  readonly mark: string;
  readonly note: string;
  readonly unit: Unit;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: string;
}): Drawing => {
  const { piece, sign, unit } = of;
  const [width, height] = piece.cut;
  const scale = Math.min((of.fitPt[0] - besidePt) / width, (of.fitPt[1] - belowPt) / height, mostScale[unit]);
  const [right, below] = [1 + width * scale, 1 + height * scale];
  const outlines = piece.outlines.map((outline) => framed(outline, { scale, x: 1, y: 1 }));
  const stroke = inkOn(sign.colour);
  const size = (side: number): string => lengthOnPaper(side, unit);
  return picture({
    widthPt: Math.max(right + besidePt - 1, of.note.length * 4.2 + 4),
    heightPt: below + belowPt - 1,
    alt: of.alt,
    parts: [
      element('rect', {
        x: 1,
        y: 1,
        width: width * scale,
        height: height * scale,
        fill: hush,
        stroke: softInk,
        'stroke-width': hairlinePt,
        'stroke-dasharray': '2 1',
      }),
      element('path', {
        d: pathOf(outlines),
        fill: sign.colour,
        stroke,
        'stroke-width': cutEdgePt,
        'stroke-linejoin': 'round',
      }),
      ...(piece.way?.cuts === 'parallel' && piece.way.cutBy === 'ruler' && outlines[0]
        ? [apart(outlines[0], stroke)]
        : drawLabels({
            labels: outlines.slice(0, 1).map((outline) => ({ text: of.mark, outline, fill: stroke })),
            bounds: { x: 0, y: 0, width: 0, height: 0 },
            tooSmall: 'leave-out',
          })),
      dimension({ from: at(right + 5, 1), to: at(right + 5, below), text: size(height), sizePt: 7 }),
      dimension({ from: at(1, below + 5), to: at(right, below + 5), text: size(width), sizePt: 7 }),
      lettering({ text: of.note, x: 1, y: below + 21, sizePt: 8, anchor: 'start' }),
    ],
  });
};

/** A dashed line square from one cut of the first piece to the next, through its middle. */
const apart = (outline: Polygon, stroke: string): string => {
  const [upperLeft, upperRight, lowerRight, lowerLeft] = outline as [Point, Point, Point, Point];
  const middle = at(
    (upperLeft.x + upperRight.x + lowerRight.x + lowerLeft.x) / 4,
    (upperLeft.y + upperRight.y + lowerRight.y + lowerLeft.y) / 4,
  );
  const cut = at(lowerLeft.x - upperLeft.x, lowerLeft.y - upperLeft.y);
  const long = Math.hypot(cut.x, cut.y);
  // square to the cut, half as long as the two cuts are apart
  const half = Math.abs((upperRight.x - upperLeft.x) * cut.y - (upperRight.y - upperLeft.y) * cut.x) / long / 2;
  const [dx, dy] = [(cut.y / long) * half, (-cut.x / long) * half];
  const ends = [at(middle.x - dx, middle.y - dy), at(middle.x + dx, middle.y + dy)] as const;
  return element('path', {
    d: `M${numberText(ends[0].x)} ${numberText(ends[0].y)}L${numberText(ends[1].x)} ${numberText(ends[1].y)}`,
    stroke,
    'stroke-width': 0.7,
    'stroke-dasharray': '3 1.5',
    fill: 'none',
  });
};
