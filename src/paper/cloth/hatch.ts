// Which pattern of lines stands for a cloth where colour is lost? Twelve hands of hatching, drawn wider
// apart each time the list is used up, so that no two of the first few hundred are the same. The choice
// and the order are our own: neighbours in the list differ in direction first.

export interface Hatch {
  /** Turned clockwise, in degrees. */
  readonly turn: 0 | 45 | 90 | 135;
  readonly stroke: 'line' | 'double' | 'dash' | 'cross' | 'dots';
  /** Between lines, in points. */
  readonly gapPt: number;
}

const hands: readonly Omit<Hatch, 'gapPt'>[] = [
  { turn: 45, stroke: 'line' },
  { turn: 0, stroke: 'dots' },
  { turn: 0, stroke: 'line' },
  { turn: 135, stroke: 'double' },
  { turn: 90, stroke: 'line' },
  { turn: 0, stroke: 'cross' },
  { turn: 135, stroke: 'line' },
  { turn: 0, stroke: 'dash' },
  { turn: 45, stroke: 'cross' },
  { turn: 90, stroke: 'double' },
  { turn: 45, stroke: 'dash' },
  { turn: 0, stroke: 'double' },
];

/** @param index 0-based place of the cloth in the plan */
export const hatchFor = (index: number): Hatch => {
  const hand = hands[index % hands.length] as Omit<Hatch, 'gapPt'>;
  const round = Math.floor(index / hands.length);
  return { ...hand, gapPt: 4 + 2 * round };
};
