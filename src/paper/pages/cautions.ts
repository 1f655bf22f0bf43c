// The page of cautions: where the work can hurt, in plain words. Closed storing of cutters is taught in
// extension leaflets; the infant sleep line follows the public advice of paediatricians (no soft bedding in the
// first year); the rest is common practice, no source.
import type { FinishPart } from './finish-part.ts';

export const cautions: readonly FinishPart[] = [
  {
    heading: 'Rotary cutter',
    lines: [
      'Close the blade every time you put the cutter down, and store it closed, away from children.',
      'Cut away from your body, on a cutting mat, along a ruler that does not slip. Keep the fingers of the other hand back from the ruler’s edge.',
      'Change a dull blade: it needs force, and force slips. Wrap the old blade before you throw it away.',
    ],
  },
  {
    heading: 'Iron',
    lines: [
      'The iron and its steam burn. Stand it on its heel, keep the cord out of the way, never leave it on, and unplug it when you stop.',
    ],
  },
  {
    heading: 'Needles and pins',
    lines: [
      'Stop the machine to thread it or to clear it. Take each pin out before the needle reaches it.',
      'Count pins and needles before and after, above all in a quilt for a child.',
    ],
  },
  {
    heading: 'Sprays and dyes',
    lines: [
      'Use adhesive spray, starch and dye with fresh air and no flame, and read the label first. Wash cloth that may bleed before you cut it.',
    ],
  },
  {
    heading: 'Your hands and back',
    lines: ['Cut at a table of elbow height. Keep your wrists straight, change your posture often, and take breaks.'],
  },
  {
    heading: 'Babies and children',
    lines: [
      'A quilt does not belong in a cot with a sleeping infant under 12 months. Until then it is for the floor, under watching eyes, or for the wall.',
      'Put no buttons, beads or other small parts on a quilt for a child under three.',
    ],
  },
  {
    heading: 'If you sell what you make',
    lines: [
      'Goods for sale fall under the law of the place: flammability, fibre labels, rules for children’s products. Ask your local authority or a professional before you sell. This page is not legal advice.',
    ],
  },
];
