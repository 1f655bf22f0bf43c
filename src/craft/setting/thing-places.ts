// One number for each thing of a top: its blocks as they are placed, then its plain pieces.
import type { SetTop, TopThing } from './top.ts';

export const placeOfThing = ({ placed }: Pick<SetTop, 'placed'>, thing: TopThing): number =>
  'block' in thing ? thing.block : placed.length + thing.strip;

/** All of them, by their places. */
export const thingsInTop = ({ placed, strips }: Pick<SetTop, 'placed' | 'strips'>): readonly TopThing[] => [
  ...placed.map((_, block) => ({ block })),
  ...strips.map((_, strip) => ({ strip })),
];
