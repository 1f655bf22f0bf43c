// How parts and places are named in the directions: "unit 4", "to the left of", "toward the A on the right".
import type { Side } from '#craft/design';

/** A piece's label as it is; "#4" is unit 4. */
export const partName = (name: string): string => (name.startsWith('#') ? `unit ${name.slice(1)}` : name);

const placeWords: Record<Side, string> = {
  left: 'to the left of',
  right: 'to the right of',
  top: 'above',
  bottom: 'below',
};

const besideWords: Record<Side, string> = {
  left: 'on the left',
  right: 'on the right',
  top: 'at the top',
  bottom: 'at the bottom',
};

const opposite: Record<Side, Side> = { left: 'right', right: 'left', top: 'bottom', bottom: 'top' };

interface Joining {
  readonly join: readonly [string, string];
  readonly side: Side;
  readonly pressTo: 0 | 1 | 'open';
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "F goes to the left of unit 4" */
export const stepHeading = ({ join, side }: Joining): string => {
  const second = join[0] === join[1] ? `Another ${partName(join[1])}` : sentence(partName(join[1]));
  return `${second} goes ${placeWords[side]} ${partName(join[0])}`;
};

/** "Press toward F." */
export const pressText = ({ join, side, pressTo }: Joining): string => {
  if (pressTo === 'open') return 'Press the seam open.';
  const name = partName(join[pressTo]);
  if (join[0] !== join[1]) return `Press toward ${name}.`;
  return `Press toward the ${name} ${besideWords[pressTo === 1 ? side : opposite[side]]}.`;
};

// three quarters clockwise is what hands do as one quarter the other way
const turnWords = {
  90: 'a quarter turn clockwise',
  180: 'half a turn',
  270: 'a quarter turn counterclockwise',
} as const;

/** What to do at the machine before sewing. */
export const machineText = (of: {
  readonly join: readonly [string, string];
  readonly machineTurn: 0 | 90 | 180 | 270;
}): string => {
  const first = partName(of.join[0]);
  const turn = of.machineTurn === 0 ? `Leave ${first} as it lies` : `Turn ${first} ${turnWords[of.machineTurn]}`;
  return `${turn}; lay ${partName(of.join[1])} on it, right sides together, right edges even.`;
};
