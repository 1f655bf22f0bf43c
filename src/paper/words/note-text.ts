// What the maker should know of a plan, in words.
import type { Note } from '#craft';
import type { Unit } from '#craft/measure';
import { never } from '#ground/outcome';
import { lengthText, numberText, sizeText } from './length-text.ts';
import { quoted } from './named.ts';

export const noteText = (note: Note, unit: Unit): string => {
  switch (note.code) {
    case 'cutting/off-marks': {
      const { size, exact } = note;
      const off = `${smallText(Math.abs(size - exact), unit)} too ${size > exact ? 'large' : 'small'}`;
      return `Block ${quoted(note.block)}, piece ${note.label}: the exact cut ${lengthText(exact, unit)} falls between two marks of the ruler. It is cut at ${lengthText(size, unit)}, ${off}, and is not trimmed after sewing.`;
    }
    case 'design/made-elsewhere':
      return `Block ${quoted(note.block)} is made elsewhere: the top keeps a place of ${sizeText(note.finished, unit)} for it. With its seam allowances it must measure ${sizeText(note.unfinished, unit)}.`;
    case 'cutting/print-upright': {
      const more = note.upright - note.anyWay;
      const cost =
        more > 1e-9
          ? `that takes ${lengthText(more, unit)} more of it (${lengthText(note.upright, unit)} against ${lengthText(note.anyWay, unit)})`
          : 'that takes no more of it';
      return `The print of ${quoted(note.fabric)} stands upright in the quilt, and ${cost}.`;
    }
    case 'piecing/not-straight':
      return note.joining === 'set-in'
        ? `Block ${quoted(note.block)} is not sewn with straight seams alone: it has ${note.corners} inside ${note.corners === 1 ? 'corner' : 'corners'} to set in. Stop those seams where the seam lines cross, an allowance from the edge.`
        : `Block ${quoted(note.block)} is not sewn with straight seams alone: ${note.partial === 1 ? 'one seam is' : `${note.partial} seams are`} sewn part-way first and closed at the end.`;
    case 'piecing/searched':
      return `Block ${quoted(note.block)} has ${note.patches} patches: its sewing order is the best one found, not proven to need the fewest different units.`;
    case 'design/unused-tone':
      return `Colouring ${quoted(note.colouring)} of block ${quoted(note.block)} names the tone ${quoted(note.tone)}, which the block does not have.`;
    case 'design/unused-block':
      return `Block ${quoted(note.block)} is described but the top never uses it, so nothing is cut for it.`;
    default:
      return never(note);
  }
};

/** Below a 64th the fraction says nothing, the decimal does. */
const smallText = (value: number, unit: Unit): string =>
  value < 1 / 64 ? `${Number(value.toPrecision(1))} ${unit}` : lengthText(Number(numberText(value)), unit);
