// How a unit is turned at the machine: the new piece lies on top, right edges together, so the edge to
// be sewn must come to the right hand.
import type { Side } from '#craft/design';
import { centroid, distance, type Point, type Polygon } from '#ground/plane';

/** Degrees clockwise on screen, from 0 up to 360: where something lies, 0 to the right and 90 below. */
export type Heading = number;

export const headingOf: Readonly<Record<Side, Heading>> = { right: 0, bottom: 90, left: 180, top: 270 };

/** The side a heading stands for; between two, left and right come before top and bottom. */
export const sideOf = (heading: Heading): Side => {
  if (heading <= 45 + 1e-4 || heading >= 315 - 1e-4) return 'right';
  if (heading >= 135 - 1e-4 && heading <= 225 + 1e-4) return 'left';
  return heading < 180 ? 'bottom' : 'top';
};

/** Where the second part lies, square to a straight seam and seen from it: a point of that part says on which hand. */
export const headingAcross = (seam: readonly [from: Point, to: Point], second: Point): Heading => {
  const [from, to] = seam;
  const across = { x: from.y - to.y, y: to.x - from.x };
  const hand = across.x * (second.x - from.x) + across.y * (second.y - from.y);
  return wholeTurn((Math.atan2(hand < 0 ? -across.y : across.y, hand < 0 ? -across.x : across.x) * 180) / Math.PI);
};

/** A point inside the part that a seam is sewn to: the middle of the patch that lies nearest the seam's middle. */
export const besideSeam = (outlines: readonly Polygon[], seam: readonly [Point, Point]): Point => {
  const middle = { x: (seam[0].x + seam[1].x) / 2, y: (seam[0].y + seam[1].y) / 2 };
  return outlines
    .map((outline) => {
      const centre = centroid(outline);
      return { centre, far: distance(centre, middle) };
    })
    .reduce((a, b) => (b.far < a.far ? b : a)).centre;
};

/** How the first part lies before it is turned. */
export type Lying =
  /** A single square, of cloth without direction, looks the same after every quarter turn: it is laid as it is taken up. */
  | 'square'
  /** A single piece is taken from the board. */
  | 'as on the board'
  /** A unit comes off the machine: heading of its last seam as it was made, and its own turn on the board since. */
  | { readonly heading: Heading; readonly turn: Heading };

/**
 * Clockwise turn, in degrees from 0 up to 360, from the way the first part lies that brings the new seam to the right hand.
 *
 * @param next heading of the second part on the board
 * @source docs/formulas.md#machine-turn
 */
export const machineTurn = (next: Heading, lying: Lying): Heading => {
  if (lying === 'square') return 0;
  if (lying === 'as on the board') return wholeTurn(-next);
  return wholeTurn(lying.turn + lying.heading - next);
};

/** From 0 up to 360, without the last bits of rounding. */
export const wholeTurn = (degrees: number): Heading => {
  const near = Math.round((((degrees % 360) + 360) % 360) * 1e6) / 1e6;
  return near === 360 ? 0 : near;
};
