// The views of a quilt by their names, and what a quilt is called that has none.
import type { Stop } from '#workroom/room';

export const nameless = 'A quilt without a name';

export const stopWords: Readonly<Record<Stop, string>> = {
  draft: 'Draft',
  set: 'Set',
  colour: 'Colour',
  cut: 'Cut',
  sew: 'Sew',
  finish: 'Finish',
  print: 'Print',
  compare: 'Compare',
};
