// Units and the ways to make them, as they are called in a sentence.
import type { NotMade } from '#craft';
import type { UnitKind, WayName } from '#craft/design';

const units: Readonly<Record<UnitKind, readonly [one: string, many: string]>> = {
  'half-square': ['half-square', 'half-squares'],
  'quarter-square': ['quarter-square', 'quarter-squares'],
  'flying-geese': ['flying goose', 'flying geese'],
  'square-in-square': ['square in a square', 'squares in a square'],
  'sewn-corners': ['unit with sewn corners', 'units with sewn corners'],
  rails: ['row of strips', 'rows of strips'],
  'four-patch': ['four-patch', 'four-patches'],
  'nine-patch': ['nine-patch', 'nine-patches'],
};

export const unitText = (unit: UnitKind): string => units[unit][0];

export const unitsText = (unit: UnitKind): string => units[unit][1];

const ways: Readonly<Record<WayName, string>> = {
  singly: 'one by one',
  'two-at-a-time': 'two at a time',
  'eight-at-a-time': 'eight at a time',
  'from-half-squares': 'from half-squares',
  'four-at-a-time': 'four at a time',
  'sew-and-flip': 'by flipped corners',
  'strip-sets': 'by strip sets',
};

/** After "made". */
export const wayText = (way: WayName): string => ways[way];

const reasons: Readonly<Record<NotMade, string>> = {
  mirrored: 'every second one would come out as its mirror image',
  'unlike-skies': 'their two skies are not of one cloth',
  'no-triangle-cut': 'none of their pieces comes from a square cut apart',
  print: 'a print that has an upright would come to lie turned',
  motif: 'a piece of them is cut round a motif',
  drawn: 'their cloths are drawn from a list and change from block to block',
  'too-large': 'the cloth is too narrow for the squares that it takes',
  'not-a-unit': 'the block is joined through them, not unit by unit',
  'on-paper': 'their block is pieced on printed sheets',
};

export const reasonText = (why: NotMade): string => reasons[why];
