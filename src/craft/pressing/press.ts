// How a seam is pressed, and what that means at its ends.

/** Toward the first or the second of its parts, or open: one allowance to each side. */
export type SidePress = 0 | 1 | 'open';

/**
 * Or spun: half of it to either side, so that all seams that come to its middle run round one way, as seen on the board; a few
 * stitches in the allowance are opened for that.
 */
export type Press = SidePress | 'clockwise' | 'counterclockwise';

/** Toward the second part, toward the first, or to both. */
export type Way = 1 | -1 | 0;

/** Of a seam that lies turned over, its second part where the first was: the other way. */
export const facingWay = (way: Way, facing: 1 | -1): Way => (facing === 1 || way === 0 ? way : way === 1 ? -1 : 1);

/** @param clockwise the way at that end when the seam is spun clockwise */
export const wayAt = (press: Press, clockwise: 1 | -1): Way => {
  switch (press) {
    case 0:
      return -1;
    case 1:
      return 1;
    case 'open':
      return 0;
    case 'clockwise':
      return clockwise;
    case 'counterclockwise':
      return clockwise === 1 ? -1 : 1;
  }
};

export const isSpun = (press: Press): press is 'clockwise' | 'counterclockwise' =>
  press === 'clockwise' || press === 'counterclockwise';

/** Seen in the mirror. */
export const pressInMirror = (press: Press): Press => {
  if (press === 'clockwise') return 'counterclockwise';
  return press === 'counterclockwise' ? 'clockwise' : press;
};

/** Allowances that lie in opposite directions along the seam that runs over both lock; open ones never do. */
export const doNest = (nests: 'alike' | 'unlike', a: Way, b: Way): boolean =>
  nests === 'alike' ? a * b > 0 : a * b < 0;
