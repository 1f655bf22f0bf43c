// The words for what a document holds: shapes of value, counted things, and what is not built yet.
import type { Expected, Feature, UnitName } from '#craft/design';
import type { Counted } from '#craft/limits';

const expected: Readonly<Record<Expected, string>> = {
  object: 'an object in braces',
  list: 'a list in square brackets',
  text: 'a text in quotation marks',
  number: 'a number',
  'whole-number': 'a whole number',
  'true-or-false': 'true or false',
  length: 'a length such as "2 1/2"',
  size: 'a length, or a list of width and height',
  place: 'a number of the grid, such as 1 or "4/3"',
  corner: 'a list of two numbers, across and down',
  centre: 'a length, a list of width and height, or {"block": "id"}',
  widths: 'a length, or a list of one length for each log',
  tone: 'the id of a fabric, or a list of them',
  cell: 'a block such as {"block": "id"} or a plain cell {"plain": "fabric"}',
  border: 'a border with width and fabric, or a pieced one',
  'sash-widths': 'a length, or {"across": …, "down": …}',
  bought:
    '"yardage", "fat-quarter", "fat-eighth", {"sheet": [width, length]}, {"sheets": [{"size", "count", "price", "name"}]} or {"lengths": ["1 yd"]}',
  'bought-length': 'a length such as "1 yd", or {"length", "count", "price"}',
  'sheet-size': '"fat-quarter", "fat-eighth" or a list of width and length',
  section: 'a section: "down", "across", a block, a strip or a fill',
};

export const expectedText = (shape: Expected): string => expected[shape];

const counted: Readonly<Record<Counted, readonly [one: string, many: string]>> = {
  fabrics: ['fabric', 'fabrics'],
  blocks: ['block', 'blocks'],
  colourings: ['colouring', 'colourings'],
  tones: ['tone', 'tones'],
  rounds: ['round', 'rounds'],
  logs: ['log', 'logs'],
  patches: ['patch', 'patches'],
  corners: ['corner', 'corners'],
  seams: ['straight seam', 'straight seams'],
  colourways: ['colourway', 'colourways'],
  sizes: ['size', 'sizes'],
  rows: ['row', 'rows'],
  columns: ['cell in this row', 'cells in this row'],
  cells: ['cell', 'cells'],
  borders: ['border', 'borders'],
  pieces: ['piece', 'pieces'],
  frames: ['frame', 'frames'],
  methods: ['method', 'methods'],
  sheetKinds: ['kind', 'kinds'],
  entries: ['entry', 'entries'],
};

export const countedText = (what: Counted): string => counted[what][1];

export const countText = (count: number, what: Counted): string => `${count} ${counted[what][count === 1 ? 0 : 1]}`;

/** With its verb, for "… not built yet." */
const features: Readonly<Record<Feature, string>> = {
  extras: 'Adding plain rectangles by "extras" is',
};

export const featureText = (feature: Feature): string => features[feature];

const unitTones: Readonly<Record<UnitName, string>> = {
  square: 'the square',
  'half-square': 'upper left, lower right',
  'quarter-square': 'top, right, bottom, left',
  'flying-geese': 'the goose, the sky',
  'square-in-square': 'the square, the corners',
  'four-patch': 'the diagonal from the upper left, the other diagonal',
  rails: 'from the top down',
};

/** The order of a unit's tones, as it lies unturned. */
export const unitTonesText = (unit: UnitName): string => unitTones[unit];

/** 1st, 2nd, 3rd, 11th. */
export const ordinal = (n: number): string => {
  const tens = n % 100;
  const ends: Readonly<Record<number, string>> = { 1: 'st', 2: 'nd', 3: 'rd' };
  return `${n}${tens >= 11 && tens <= 13 ? 'th' : (ends[n % 10] ?? 'th')}`;
};
