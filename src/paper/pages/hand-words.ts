// What pages say of the hand that they are drawn for. The right one is what a reader takes for granted: it has no name.
import type { QuiltPlan } from '#craft';
import type { Hand } from '#paper/cutting';

/** For the cover and the head of a handout. */
export const handFacts = (hand: Hand): readonly { readonly name: string; readonly value: string }[] =>
  hand === 'right' ? [] : [{ name: 'Drawn for', value: 'the left hand: strips and strip sets are cut from the right' }];

/** What the width of cloth is that lies folded selvage to selvage: its cuts begin at the selvages. */
export const foldedAcross = (hand: Hand): string =>
  hand === 'right' ? 'from the selvages to the fold' : 'from the fold to the selvages';

/** Which way strips are cut apart. Cloth that is cut round its motifs is laid out alike for either hand. */
export const cutAcross = ({ fabrics }: QuiltPlan, hand: Hand): string => {
  if (hand === 'right') return 'from left to right';
  const isAlike = fabrics.some(({ motifs }) => motifs !== null);
  return `from right to left, with the left hand${isAlike ? ' (cloth cut round its motifs as its directions say)' : ''}`;
};
