// Ways of looking at a quilt: in colour, in the greys of its values, or as other eyes see it. Nothing of it is kept in the quilt.
import type { Sight } from '#craft/fabric';

export type Look = 'colour' | Sight;

export interface LookWords {
  readonly value: Look;
  readonly words: string;
  readonly spoken: string;
  /** What one sees so, and whom it is for. */
  readonly about: string;
}

export const looks: readonly LookWords[] = [
  { value: 'colour', words: 'Colour', spoken: 'In colour', about: '' },
  {
    value: 'grey',
    words: 'Grey',
    spoken: 'In grey, for values',
    about: 'Each cloth in the grey that is as light as it is.',
  },
  {
    value: 'protan',
    words: 'Protan',
    spoken: 'As protan eyes see it',
    about: 'As eyes without the cones for long waves see it: red goes dark, and looks like green.',
  },
  {
    value: 'deutan',
    words: 'Deutan',
    spoken: 'As deutan eyes see it',
    about: 'As eyes without the cones for middle waves see it: red and green look alike.',
  },
  {
    value: 'tritan',
    words: 'Tritan',
    spoken: 'As tritan eyes see it',
    about: 'As eyes without the cones for short waves see it: blue looks like green, yellow like pink.',
  },
];

export const sightOf = (look: Look): Sight | null => (look === 'colour' ? null : look);
