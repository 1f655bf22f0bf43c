import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { ClothPiece } from '#craft';
import { type LaidOut, planLayout } from '#craft/cutting';
import { directionsFor } from '#craft/directions';
import { length } from '#craft/measure';
import { directionTexts, easierTexts, effortText, remnantsText, stripsText, type Writing } from './directions-text.ts';
import { amountText, lengthText, sizeText } from './length-text.ts';

const piece = (across: number, along: number, count: number): ClothPiece => ({
  cut: [length(across), length(along)],
  shape: across === along ? 'square' : 'rectangle',
  count,
  mayTurn: false,
  gives: 1,
  diagonal: null,
  way: null,
  outlines: [],
  for: [],
});

const writing = (pieces: readonly ClothPiece[]): Writing => ({
  length: (value) => lengthText(value, 'in'),
  size: (size) => sizeText(size, 'in'),
  amount: amountText,
  mark: (of) => `B${of + 1}`,
  pieces,
  hand: 'right',
  sheet: () => ({ noun: 'sheet', kind: '' }),
});

const laid = (pieces: readonly ClothPiece[]): LaidOut =>
  planLayout({
    width: length(40),
    demands: pieces.map(({ cut, count }) => ({ across: cut[0], along: cut[1], count, mayTurn: false })),
    budget: { steps: 0 },
  });

const directed = (pieces: readonly ClothPiece[]) => directionsFor({ laid: laid(pieces), allowances: null, unit: 'in' });

test('strips and sub-cuts are told as the trade tells them', () => {
  // the words: common practice of printed patterns; the counts by hand: 40 / 2 1/2 = 16, 20 = 16 + 4
  const pieces = [piece(2.5, 2.5, 20)];
  assert.deepEqual(directionTexts(directed(pieces).parts, writing(pieces)), [
    {
      lead: 'Cut 2 strips 2½ in by the width of the cloth.',
      strips: [
        { number: '1', text: 'From one sub-cut 16 squares 2½ in (B1).', cuts: [] },
        { number: '2', text: 'From one sub-cut 4 squares 2½ in (B1).', cuts: [] },
      ],
    },
  ]);
});

test('a strip that is a piece as it is stays whole', () => {
  const pieces = [piece(40, 2.5, 3)];
  assert.deepEqual(directionTexts(directed(pieces).parts, writing(pieces))[0]?.strips, [
    { number: '1', text: 'Leave all whole, each 1 rectangle 40 × 2½ in (B1).', cuts: [] },
  ]);
});

test('a piece that is cut turned has its size as it lies: across, then along', () => {
  // derived by hand: a strip 6 in high gives pieces of 6 × 2 in standing, 2 in of the strip each
  const pieces = [{ ...piece(6, 2, 3), mayTurn: true }];
  const upright = { cut: [length(2), length(6)], turned: true, of: 0, at: length(0) } as const;
  const standing = [0, 2, 4].map((x) => ({ at: length(x), width: length(2), pieces: [upright] }));
  const layout = {
    width: length(40),
    length: length(6),
    strips: [{ at: length(0), height: length(6), parts: standing }],
  };
  const { parts } = directionsFor({
    laid: { layout, bound: length(0), boundKind: 'area' },
    allowances: null,
    unit: 'in',
  });
  const [told] = directionTexts(parts, writing(pieces));
  assert.equal(told?.lead, 'Cut 1 strip 6 in by the width of the cloth.');
  assert.equal(told?.strips[0]?.text, 'From it sub-cut 3 rectangles 2 × 6 in (B1).');
});

/** One strip of the given parts: width, then pieces from the top as [across, along, place in the list]. */
const strip = (
  height: number,
  parts: readonly (readonly [number, ...(readonly [number, number, number])[]])[],
): LaidOut => {
  let across = 0;
  const placed = parts.map(([width, ...pieces]) => {
    let down = 0;
    const part = {
      at: length(across),
      width: length(width),
      pieces: pieces.map(([w, h, of]) => {
        const piece = { at: length(down), cut: [length(w), length(h)], turned: false, of } as const;
        down += h;
        return piece;
      }),
    };
    across += width;
    return part;
  });
  const layout = {
    width: length(40),
    length: length(height),
    strips: [{ at: length(0), height: length(height), parts: placed }],
  };
  return { layout, bound: length(0), boundKind: 'area' };
};

test('several cuts of one strip are numbered: narrowing, piles and trimming among them', () => {
  // derived by hand: two of 6; a pile of 5 wide, of which the lower piece is narrower; the rest from 6 down to 3 for two of 3
  const pieces = [piece(6, 6, 2), piece(5, 3, 1), piece(4, 2, 1), piece(3, 3, 2)];
  const laid = strip(6, [
    [6, [6, 6, 0]],
    [6, [6, 6, 0]],
    [5, [5, 3, 1], [4, 2, 2]],
    [3, [3, 3, 3]],
    [3, [3, 3, 3]],
  ]);
  const { parts } = directionsFor({ laid, allowances: null, unit: 'in' });
  const [height] = directionTexts(parts, writing(pieces));
  assert.equal(height?.lead, 'Cut 1 strip 6 in by the width of the cloth.');
  assert.equal(height?.strips[0]?.text, 'From it, from left to right:');
  assert.deepEqual(
    height?.strips[0]?.cuts.map(({ number, text }) => `${number} ${text}`),
    [
      '1.1 sub-cut 2 squares 6 in (B1).',
      '1.2 sub-cut 1 part 5 in wide and from it cut 1 rectangle 5 × 3 in (B2) and 1 rectangle 4 × 2 in (B3), trimmed to 4 in wide.',
      '1.3 cut the rest of the strip down to 3 in.',
      '1.4 sub-cut 2 squares 3 in (B4).',
    ],
  );
});

test('pieces of one width in a pile are trimmed together, and all are named', () => {
  const pieces = [piece(5, 3, 1), piece(4, 2, 1), piece(4, 1, 1)];
  const laid = strip(6, [[5, [5, 3, 0], [4, 2, 1], [4, 1, 2]]]);
  const { parts } = directionsFor({ laid, allowances: null, unit: 'in' });
  const [height] = directionTexts(parts, writing(pieces));
  assert.equal(
    height?.strips[0]?.text,
    'From it sub-cut 1 part 5 in wide and from it cut 1 rectangle 5 × 3 in (B1), 1 rectangle 4 × 2 in (B2) and 1 rectangle 4 × 1 in (B3), B2 and B3 trimmed to 4 in wide.',
  );
});

test('after a trimmed piece a comma parts the next from it', () => {
  // derived by hand: a pile of 5 wide, of which the upper piece is narrower
  const pieces = [piece(4, 2, 1), piece(5, 3, 1)];
  const laid = strip(5, [[5, [4, 2, 0], [5, 3, 1]]]);
  const { parts } = directionsFor({ laid, allowances: null, unit: 'in' });
  assert.equal(
    directionTexts(parts, writing(pieces))[0]?.strips[0]?.text,
    'From it sub-cut 1 part 5 in wide and from it cut 1 rectangle 4 × 2 in (B1), trimmed to 4 in wide, and 1 rectangle 5 × 3 in (B2).',
  );
});

test('the fold is told once, then what is cut of it, then that the cloth is opened', () => {
  const pieces = [piece(20, 4, 1), piece(5, 2, 2)];
  const onFold = directionsFor({
    laid: planLayout({
      width: length(20),
      demands: pieces.map(({ cut, count }) => ({ across: cut[0], along: cut[1], count, mayTurn: false })),
      budget: { steps: 0 },
    }),
    allowances: null,
    unit: 'in',
    end: 'fold',
  });
  const told = directionTexts(onFold.parts, { ...writing(pieces), of: 'folded' });
  assert.deepEqual(
    told.map(({ lead }) => lead),
    [
      'Fold the cloth selvage to selvage. Cut 1 strip 4 in across it, and cut on through both layers from the selvages: each cut gives two.',
      'Then cut 1 strip 2 in across both layers.',
    ],
  );
  // by hand: 20 in of 20 in end at the fold, and there the two pieces hang together until they are cut apart
  assert.equal(told[0]?.strips[0]?.text, 'From it sub-cut 1 rectangle 20 × 4 in (B1).');
  assert.deepEqual(
    directionTexts(directed([piece(40, 4, 1), piece(5, 2, 2)]).parts, { ...writing(pieces), of: 'opened' }).map(
      ({ lead }) => lead,
    ),
    ['Open the cloth, and cut 1 strip 4 in by the width of the cloth.', 'Cut 1 strip 2 in by the width of the cloth.'],
  );
});

test('what is worth keeping is named with its place, more than six in short', () => {
  const remnant = (i: number) => ({ name: `R${i}`, from: 'end', size: [length(9 - i), length(3)], count: i }) as const;
  assert.equal(remnantsText([remnant(1)], writing([])), 'R1, 8 × 3 in, the end of a strip');
  assert.equal(remnantsText([remnant(2)], writing([])), 'R2, 2 of 7 × 3 in, ends of strips');
  assert.match(remnantsText([1, 2, 3, 4, 5, 6, 7, 8].map(remnant), writing([])), /; 15 smaller ones$/);
  assert.equal(remnantsText([], writing([])), '');
});

test('work is told in heights, settings and strokes', () => {
  assert.equal(
    effortText({ heights: 1, settings: 2, patterns: 3, strokes: 40 }),
    '1 strip height, 2 ruler settings, 40 strokes',
  );
  const pieces = [piece(40, 2.5, 3), piece(9, 4, 4)];
  assert.equal(stripsText(directed(pieces).parts, writing(pieces)), '3 strips 2½ in, 1 strip 4 in');
});

const rung = (of: {
  readonly long: number;
  readonly yards: number;
  readonly strokes: number;
  readonly heights: number;
}) =>
  ({
    length: length(of.long),
    heights: of.heights,
    settings: 4,
    patterns: 3,
    strokes: of.strokes,
    own: false,
    chosen: of.yards === 0.5,
    buy: { amount: of.yards, unit: 'yd' },
    cost: null,
  }) as const;

test('an easier layout is told with what it costs and saves, a few strokes alone are not', () => {
  const now = rung({ long: 14, yards: 0.5, strokes: 50, heights: 3 });
  // by hand: 5/8 yd is 1/8 yd more; 49 of 50 strokes save less than a tenth
  assert.deepEqual(easierTexts([now, rung({ long: 18, yards: 0.625, strokes: 48, heights: 2 })], writing([])), [
    '⅛ yd more (⅝ yd), laid out on 18 in: 2 strip heights instead of 3 and 48 strokes instead of 50.',
  ]);
  assert.deepEqual(easierTexts([now, rung({ long: 18, yards: 0.625, strokes: 49, heights: 3 })], writing([])), []);
});
