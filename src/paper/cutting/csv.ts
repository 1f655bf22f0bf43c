// The cut list as a spreadsheet (CSV, RFC 4180): one line for each size cut from each cloth, in cutting
// order of the plan. Lengths are decimals, so that a spreadsheet can reckon with them.
import { stringify } from 'csv-stringify/browser/esm/sync';
import type { ClothPiece, QuiltPlan } from '#craft';
import type { Unit } from '#craft/measure';
import { clothSignsFor, signOf } from '#paper/cloth';
import { stripText } from './angled.ts';
import { cutMark } from './mark.ts';
import { usesText } from './uses.ts';

const shapeNames = {
  square: 'square',
  rectangle: 'rectangle',
  'half-square': 'square, cut once corner to corner',
  'quarter-square': 'square, cut twice corner to corner',
  angled: 'strip',
  template: 'template',
} as const;

export const cuttingCsv = (plan: QuiltPlan): string => {
  const { unit } = plan.quilt;
  const signs = clothSignsFor(plan);
  const header = [
    'cloth letter',
    'cloth',
    'mark',
    `across (${unit})`,
    `along (${unit})`,
    'shape',
    'count',
    'gives',
    'used for',
  ];
  const rows = plan.fabrics.flatMap((fabric) => {
    const sign = signOf(signs, fabric.id);
    return fabric.pieces.map((piece, index) => [
      sign.letter,
      asText(sign.name),
      cutMark(sign.letter, index),
      decimal(piece.cut[0]),
      decimal(piece.cut[1]),
      asText(shapeText(piece, unit)),
      String(piece.count),
      String(piece.count * piece.gives),
      asText(usesText(plan, piece.for)),
    ]);
  });
  return stringify([header, ...rows], { record_delimiter: '\r\n' });
};

const shapeText = (piece: ClothPiece, unit: Unit): string => {
  if (piece.way) return `strip, ${stripText(piece.way, unit).replaceAll('\u00a0', ' ')}`;
  return piece.outlines.length > 1 ? 'box round two templates, one turned by a half turn' : shapeNames[piece.shape];
};

/** At most six decimals: beyond that lies only what doubles lose. */
const decimal = (value: number): string => String(Number(value.toFixed(6)));

/**
 * A spreadsheet takes a cell that begins with one of these signs (or a tab or return before it) for a
 * formula and runs it, so that a cloth's name in a document from a stranger could fetch and send things. A leading
 * apostrophe keeps it text.
 */
const asText = (cell: string): string => (/^[=+\-@\t\r＝＋－＠]/.test(cell) ? `'${cell}` : cell);
