// Three strips of a seam test at true size, sewn: their raw edges, their seams, and where to measure.
import type { SeamTest } from '#craft/diagnosis';
import type { Length } from '#craft/measure';
import { cutEdgePt, hairlinePt, hush, ink, lettering, patchEdgePt, softInk } from './ink.ts';
import { type Drawing, element, numberText, picture } from './svg.ts';

const padPt = 2;
const measurePt = 20;
const letterPt = 10;

/** @param scale points for one of the document's unit */
export const drawSeamTest = (of: {
  readonly test: SeamTest;
  readonly seam: Length;
  readonly scale: number;
  readonly middle: string;
  readonly total: string;
}): Drawing => {
  const { test, seam, scale } = of;
  const [left, top] = [padPt, measurePt];
  const wide = test.total * scale;
  const high = wide;
  const edge = (test.cut[0] - seam) * scale;
  const seams = [left + edge, left + edge + test.middle * scale] as const;
  const parts = [
    rectangle({ x: seams[0], y: top, wide: seams[1] - seams[0], high, fill: hush }),
    rectangle({ x: left, y: top, wide, high, fill: 'none' }),
    ...seams.map((x) => upright({ x, from: top, to: top + high, width: patchEdgePt, dashes: '4 3' })),
    ...measure({ from: seams[0], to: seams[1], y: top - measurePt / 2, edgeAt: top, text: of.middle }),
    ...measure({ from: left, to: left + wide, y: top + high + measurePt / 2, edgeAt: top + high, text: of.total }),
  ];
  return picture({
    widthPt: wide + 2 * padPt,
    heightPt: high + 2 * measurePt,
    alt: `Three strips sewn side by side, at true size: the middle one ${of.middle} from seam to seam, all three ${of.total} from edge to edge.`,
    parts,
  });
};

const rectangle = (of: {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
  readonly fill: string;
}): string =>
  element('rect', {
    x: of.x,
    y: of.y,
    width: of.wide,
    height: of.high,
    fill: of.fill,
    stroke: of.fill === 'none' ? ink : undefined,
    'stroke-width': of.fill === 'none' ? cutEdgePt : undefined,
  });

const upright = (of: {
  readonly x: number;
  readonly from: number;
  readonly to: number;
  readonly width: number;
  readonly dashes?: string;
}): string =>
  element('path', {
    d: `M${numberText(of.x)} ${numberText(of.from)}V${numberText(of.to)}`,
    stroke: ink,
    'stroke-width': of.width,
    'stroke-dasharray': of.dashes,
    fill: 'none',
  });

/** A length with its ends, broken for its words. */
const measure = (of: {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly edgeAt: number;
  readonly text: string;
}): readonly string[] => {
  const middle = (of.from + of.to) / 2;
  const half = of.text.length * letterPt * 0.3 + 4;
  const level = (from: number, to: number): string =>
    element('path', {
      d: `M${numberText(from)} ${numberText(of.y)}H${numberText(to)}`,
      stroke: softInk,
      'stroke-width': hairlinePt,
      fill: 'none',
    });
  return [
    level(of.from, middle - half),
    level(middle + half, of.to),
    ...[of.from, of.to].map((x) =>
      upright({ x, from: Math.min(of.y - 4, of.edgeAt), to: Math.max(of.y + 4, of.edgeAt), width: hairlinePt }),
    ),
    lettering({ text: of.text, x: middle, y: of.y, sizePt: letterPt }),
  ];
};
