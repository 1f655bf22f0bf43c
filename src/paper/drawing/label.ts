// Where does a patch's label stand? Inside, in the roomiest place and the largest size that touches no
// edge; else outside the drawing on a leader.

import type { Box, Point, Polygon } from '#ground/plane';
import { boxOf, centroid } from '#ground/plane';
import { hairlinePt, ink, lettering, textWidthPt } from './ink.ts';
import { isInside } from './shape.ts';
import { element, numberText } from './svg.ts';

export interface Labelled {
  readonly text: string;
  /** In the picture's points. */
  readonly outline: Polygon;
  readonly fill: string;
  /** A ground of this colour keeps the lines under the letters apart from them. */
  readonly ground?: string;
  /** That the letters may have, the largest first. */
  readonly sizesPt?: readonly number[];
}

const usualSizesPt = [9, 8, 7, 6] as const;
const clearPt = 1.2;
/** Capitals of Source Sans 3 stand 0.66 of its size high. */
const capitalShare = 0.66;

/** Labels inside their patches; those that do not fit are left out or led outside. */
export const drawLabels = (of: {
  readonly labels: readonly Labelled[];
  /** What the leaders must clear. */
  readonly bounds: Box;
  readonly tooSmall: 'leader' | 'leave-out';
}): readonly string[] => {
  const inside: string[] = [];
  const outside: Led[] = [];
  for (const label of of.labels) {
    const { text, fill, ground } = label;
    const place = placeFor(label);
    if (place !== null) {
      if (ground !== undefined) inside.push(groundUnder({ text, ...place }, ground));
      inside.push(lettering({ text, x: place.at.x, y: place.at.y, sizePt: place.sizePt, fill }));
    } else if (of.tooSmall === 'leader') outside.push(led(label));
  }
  return [...inside, ...leaders(ledOut(outside, of.bounds), of.bounds)];
};

const groundUnder = (
  of: { readonly text: string; readonly at: Point; readonly sizePt: number },
  fill: string,
): string => {
  const [width, height] = [textWidthPt(of.text, of.sizePt) + 2, capitalShare * of.sizePt + 2];
  return element('path', {
    d: `M${numberText(of.at.x - width / 2)} ${numberText(of.at.y - height / 2)}h${numberText(width)}v${numberText(height)}h${numberText(-width)}z`,
    fill,
  });
};

/** Letters with the middle of their line. */
export interface Lettered {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly sizePt: number;
  readonly fill: string;
}

/** Where the labels stand that find room inside their outlines; the others are left out. */
export const labelsInside = (labels: readonly Labelled[]): readonly Lettered[] =>
  labels.flatMap((label) => {
    const { text, fill } = label;
    const place = placeFor(label);
    return place === null ? [] : [{ text, x: place.at.x, y: place.at.y, sizePt: place.sizePt, fill }];
  });

/** Letters whose middles lie nearer than this run into each other. */
const lettersApartPt = 11;

/** Labels that stand clear of letters drawn over them; the others are left out. */
export const clearOf = (labels: readonly Labelled[], letters: readonly Lettered[]): readonly Labelled[] =>
  labels.filter((label) =>
    labelsInside([label]).every(({ x, y }) =>
      letters.every((one) => Math.hypot(one.x - x, one.y - y) > lettersApartPt),
    ),
  );

/** Whether the label finds room inside its outline at the least size. */
export const fitsInside = (label: Labelled): boolean => placeFor(label) !== null;

const placeFor = ({ text, outline, sizesPt = usualSizesPt }: Labelled): { at: Point; sizePt: number } | null => {
  for (const sizePt of sizesPt) {
    const at = roomiest(outline, textWidthPt(text, sizePt) / 2 + clearPt, (capitalShare * sizePt) / 2 + clearPt);
    if (at !== null) return { at, sizePt };
  }
  return null;
};

const grid = 20;

/** The middle of a box of the given half sides that lies inside the outline: the centre of area if it fits there, else the fitting point of a 19 × 19 grid nearest to it. */
const roomiest = (outline: Polygon, halfWidth: number, halfHeight: number): Point | null => {
  const middle = centroid(outline);
  if (holds(outline, middle, halfWidth, halfHeight)) return middle;
  const box = boxOf(outline);
  if (box.width < 2 * halfWidth || box.height < 2 * halfHeight) return null;
  let best: Point | null = null;
  let nearest = Number.POSITIVE_INFINITY;
  for (let row = 1; row < grid; row++) {
    for (let column = 1; column < grid; column++) {
      const p = { x: box.x + (box.width * column) / grid, y: box.y + (box.height * row) / grid };
      const away = Math.hypot(p.x - middle.x, p.y - middle.y);
      if (away < nearest - 1e-9 && holds(outline, p, halfWidth, halfHeight)) {
        best = p;
        nearest = away;
      }
    }
  }
  return best;
};

const holds = (outline: Polygon, at: Point, halfWidth: number, halfHeight: number): boolean => {
  for (const x of [-1, 0, 1]) {
    for (const y of [-1, 0, 1]) {
      if (!isInside(outline, { x: at.x + x * halfWidth, y: at.y + y * halfHeight })) return false;
    }
  }
  return true;
};

/** A label that stands outside, and the place that it belongs to. */
interface Led {
  readonly text: string;
  readonly from: Point;
}

const led = ({ text, outline }: Labelled): Led => ({ text, from: roomiest(outline, 0, 0) ?? centroid(outline) });

const standOffPt = 9;
const ledPt = 7;
/** From line to line of led letters. */
const ledLinePt = 9;

/** Where the middles of led letters may stand, so that none reaches above or below the drawing. */
const reachOf = ({ y, height }: Box): { readonly top: number; readonly bottom: number } => {
  const half = (capitalShare * ledPt) / 2;
  return { top: y + half, bottom: y + height - half };
};

/** Space that leaders and letters of one or two signs take outside the bounds. */
export const leaderRoomPt = 20;

export interface MarginsPt {
  readonly left: number;
  readonly right: number;
}

/** What the labels without room inside take at each side of the bounds; nothing where all have room. */
export const leaderMargins = (labels: readonly Labelled[], bounds: Box): MarginsPt => {
  const outside = ledOut(labels.filter((label) => !fitsInside(label)).map(led), bounds);
  const roomAt = (margin: Margin): number => {
    const widths = outside
      .filter((one) => marginOf(one, bounds) === margin)
      .map(({ text }) => textWidthPt(text, ledPt));
    return widths.length === 0 ? 0 : standOffPt + Math.max(...widths);
  };
  return { left: roomAt('left'), right: roomAt('right') };
};

type Margin = 'left' | 'right';

/** The nearer one. */
const marginOf = ({ from }: Led, bounds: Box): Margin => (from.x < bounds.x + bounds.width / 2 ? 'left' : 'right');

/** All labels without room, or each word once where the margins cannot take them all, or none where even that is too much. */
const ledOut = (all: readonly Led[], bounds: Box): readonly Led[] => {
  const { top, bottom } = reachOf(bounds);
  const places = Math.floor((bottom - top) / ledLinePt) + 1;
  const hasRoom = (some: readonly Led[]): boolean => {
    const left = some.filter((one) => marginOf(one, bounds) === 'left').length;
    return Math.max(left, some.length - left) <= places;
  };
  const once = [...new Map(all.toReversed().map((one) => [one.text, one])).values()].toReversed();
  return [all, once].find(hasRoom) ?? [];
};

/** Each label goes to its margin; along a margin the letters keep their order and a clear distance. */
const leaders = (all: readonly Led[], bounds: Box): readonly string[] =>
  (['left', 'right'] as const).flatMap((margin) => {
    const here = all
      .filter((one) => marginOf(one, bounds) === margin)
      .toSorted((a, b) => a.from.y - b.from.y || a.from.x - b.from.x || (a.text < b.text ? -1 : 1));
    const x = margin === 'left' ? bounds.x - standOffPt : bounds.x + bounds.width + standOffPt;
    const out = margin === 'left' ? -1 : 1;
    return spread(
      here.map(({ from }) => from.y),
      bounds,
    ).map((y, i) => {
      const { text, from } = here[i] as (typeof here)[number];
      const leader = element('path', {
        d: `M${numberText(from.x)} ${numberText(from.y)}L${numberText(x - out * 3)} ${numberText(y)}`,
        stroke: ink,
        'stroke-width': hairlinePt,
        fill: 'none',
      });
      const dot = element('circle', { cx: from.x, cy: from.y, r: 0.9, fill: ink });
      return leader + dot + lettering({ text, x, y, sizePt: ledPt, anchor: margin === 'left' ? 'end' : 'start' });
    });
  });

/** Heights in rising order pushed apart to a clear distance, within reach: no more are led than find room there. */
const spread = (heights: readonly number[], bounds: Box): readonly number[] => {
  const { top, bottom } = reachOf(bounds);
  const down: number[] = [];
  for (const height of heights) down.push(Math.max(height, (down.at(-1) ?? top - ledLinePt) + ledLinePt));
  const up: number[] = [];
  for (const height of down.toReversed()) up.unshift(Math.min(height, (up[0] ?? bottom + ledLinePt) - ledLinePt));
  return up;
};
