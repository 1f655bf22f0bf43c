// What can be wrong with a document, in words.
import type { Problem } from '#craft';
import type { DesignProblem } from '#craft/design';
import type { Counted } from '#craft/limits';
import type { Unit } from '#craft/measure';
import { type Rational, toNumber } from '#ground/exact';
import { never } from '#ground/outcome';
import { countedText, countText, expectedText, featureText, ordinal, unitTonesText } from './design-words.ts';
import { lengthText, numberText, sizeText } from './length-text.ts';
import { capital, instead, listed, quoted } from './named.ts';
import { unitsText, wayText } from './ways-text.ts';

export interface WhatAndMend {
  readonly what: string;
  readonly mend: string;
}

export const isDesignProblem = (problem: Problem): problem is DesignProblem => problem.code.startsWith('design/');

export const designText = (problem: DesignProblem): WhatAndMend => {
  switch (problem.code) {
    case 'design/too-long':
      return {
        what: `The document has ${problem.found} characters; at most ${problem.most} are read.`,
        mend: 'Check that this is a quilt document, and divide what is too large for one.',
      };
    case 'design/not-json':
      return {
        what:
          problem.found === null
            ? 'The text ends before the document does: it is not whole JSON.'
            : `The text is not JSON: ${quoted(visible(problem.found))} cannot stand here.`,
        mend:
          problem.found === null
            ? 'Look for a bracket or quotation mark that is never closed, or fetch the whole file again.'
            : 'Look just before this place for a missing comma, quotation mark or bracket.',
      };
    case 'design/too-deep':
      return {
        what: `Lists and objects lie more than ${problem.most} deep inside each other.`,
        mend: 'A quilt document needs fewer than ten levels: look for brackets that are opened and never closed.',
      };
    case 'design/too-many-values':
      return {
        what: `The document holds more than ${problem.most} values.`,
        mend: 'Divide it into several quilts.',
      };
    case 'design/key-twice':
      return {
        what: `The key ${quoted(problem.key)} stands twice in one object (${problem.path}), so it is not clear which one counts.`,
        mend: 'Remove one of the two.',
      };
    case 'design/forbidden-key':
      return {
        what: `The key ${quoted(problem.key)} is never allowed in a document.`,
        mend: 'Remove it, or choose another name.',
      };
    case 'design/too-many':
      return {
        what: `${thereAre(problem.found, problem.what)}; at most ${problem.most} are possible.`,
        mend: 'Take some out, or divide the quilt into several documents.',
      };
    case 'design/format':
      return {
        what:
          problem.found === 'undefined'
            ? `The document does not say its format, ${quoted(problem.expected)}.`
            : `The format is ${problem.found}, not ${quoted(problem.expected)}.`,
        mend: `Open a quilt document, or write "format": "${problem.expected}".`,
      };
    case 'design/version':
      return {
        what:
          problem.found === 'undefined'
            ? 'The document does not say its version.'
            : `The version is ${problem.found}; known versions are whole numbers from 1 up to ${problem.newest}.`,
        mend: `Write "version": ${problem.newest}.`,
      };
    case 'design/newer-version':
      return {
        what: `The document is of version ${problem.found}; this edition reads up to version ${problem.newest}.`,
        mend: 'Open it with a newer edition of Seamstead, or save it as the older version there.',
      };
    case 'design/unknown-key':
      return { what: `The key ${quoted(problem.key)} means nothing here.`, mend: instead(problem.key, problem.known) };
    case 'design/missing-key':
      return {
        what: `The key ${quoted(problem.key)} is missing.`,
        mend: 'Add it; docs/document.md says what it holds.',
      };
    case 'design/wrong-type':
      return {
        what: `Here stands ${problem.found}, where ${expectedText(problem.expected)} is expected.`,
        mend: `Put ${expectedText(problem.expected)} in its place.`,
      };
    case 'design/not-one-of':
      return {
        what: `Here stands ${problem.found}, which is none of the possible values.`,
        mend: `Write one of ${problem.options.join(', ')}.`,
      };
    case 'design/too-few':
      return {
        what: `${thereAre(problem.found, problem.what)}; at least ${problem.least} must be given.`,
        mend: `Add ${countedText(problem.what)}.`,
      };
    case 'design/text-too-long':
      return {
        what: `This text has ${problem.found} characters; at most ${problem.most} are kept.`,
        mend: 'Shorten it.',
      };
    case 'design/control-character':
      return {
        what: `This text holds a sign that cannot be seen, as character ${problem.position + 1}.`,
        mend: 'Type the text again by hand; only notes may hold line breaks and tabs.',
      };
    case 'design/out-of-range':
      return {
        what: `Here stands ${problem.found}; it must lie between ${problem.least} and ${problem.most}.`,
        mend: problem.most === 1 ? 'Write a share: 0.05 for five in a hundred.' : 'Write a number in that range.',
      };
    case 'design/not-a-colour':
      return {
        what: `${problem.found} is not a colour.`,
        mend: 'Write it as # with six digits of 0-9 and a-f: "#9c3f2c".',
      };
    case 'design/not-a-picture':
      return {
        what: `${problem.found} is not a picture that can be read.`,
        mend: 'Choose the photograph anew in the workroom, or write it as "data:image/jpeg;base64,…": a JPEG, PNG or WebP picture.',
      };
    case 'design/not-built':
      return {
        what: `${featureText(problem.feature)} not built yet.`,
        mend: 'Take it out to plan the rest, or keep the document for a later edition: it is a valid one.',
      };
    case 'design/not-a-length':
      return {
        what: `${problem.found} is not a length.`,
        mend: 'Write it like "2 1/2", "2.5", "2½" or "6 cm".',
      };
    case 'design/not-a-number':
      return {
        what: `${problem.found} is not a number of the grid.`,
        mend: 'Write it like 1, 1.5 or "4/3", without a unit.',
      };
    case 'design/zero-denominator':
      return { what: `${problem.found} divides by zero.`, mend: 'Put the number of parts below the stroke: "2 1/2".' };
    case 'design/improper-fraction':
      return {
        what: `${problem.found} has a whole number before a fraction of one or more, which is most likely a slip.`,
        mend: 'Write the fraction smaller than one, as in "1 3/4", or all of it as one fraction, as in "7/4".',
      };
    case 'design/length-text-too-long':
      return {
        what: `The length ${problem.found} is longer than ${problem.most} characters.`,
        mend: 'Write it shorter: "2 1/2".',
      };
    case 'design/not-positive':
      return { what: `${problem.found} is not above zero.`, mend: 'Write a number above zero.' };
    case 'design/negative':
      return { what: `${problem.found} is below zero.`, mend: 'Write zero or more.' };
    case 'design/too-large':
      return {
        what: `${problem.found} is too large: at most ${exact(problem.most, problem.unit)} is possible here.`,
        mend: 'Check the figure and its unit.',
      };
    case 'design/too-small':
      return {
        what: `${problem.found} is too small: at least ${exact(problem.least, problem.unit)} must be given here.`,
        mend: 'Check the figure and its unit.',
      };
    case 'design/too-fine':
      return {
        what: `${problem.found} is too fine to be added exactly to the other lengths of this document.`,
        mend: 'Round it to a fraction of the ruler, or to four decimals.',
      };
    case 'design/step-unit':
      return {
        what: `The step ${problem.found} does not say whether the shop sells by the yard or the metre.`,
        mend: 'Write the unit with it: "1/8 yd" or "0.1 m".',
      };
    case 'design/bad-name':
      return {
        what: `${problem.found} cannot be used as a name.`,
        mend: 'Begin with a letter or digit; then letters, digits, spaces, dots, hyphens and low lines, 60 at most.',
      };
    case 'design/unknown-fabric':
      return { what: `There is no fabric ${quoted(problem.found)}.`, mend: instead(problem.found, problem.known) };
    case 'design/unknown-block':
      return { what: `There is no block ${quoted(problem.found)}.`, mend: instead(problem.found, problem.known) };
    case 'design/unknown-colouring':
      return {
        what: `Block ${quoted(problem.block)} has no colouring ${quoted(problem.found)}.`,
        mend: instead(problem.found, problem.known),
      };
    case 'design/width-of-sheets':
      return {
        what: `The fabric ${quoted(problem.fabric)} is bought in sheets, and states a usable width as well.`,
        mend: 'Leave usableWidth out: a sheet is as large as "bought" says.',
      };
    case 'design/only-by-length':
      return {
        what:
          problem.key === 'ends'
            ? `Fabric ${quoted(problem.fabric)} is not bought by the length, so there is nothing that its ends at hand would save.`
            : `Fabric ${quoted(problem.fabric)} is not bought by the length, and a repeat does not run on from one sheet to the next.`,
        mend:
          problem.key === 'ends'
            ? 'List the ends among its sheets, with a count and the price 0, or take "bought" out.'
            : 'Take the repeat out, or buy the cloth by the length.',
      };
    case 'design/motif-beyond-repeat':
      return {
        what: `The motif lies ${lengthText(toNumber(problem.found), problem.unit)} from the cloth’s corner, beyond one repeat of ${lengthText(toNumber(problem.most), problem.unit)}.`,
        mend: 'Measure to the centre of the first motif from the corner, across and along.',
      };
    case 'design/unknown-motif-tone':
      return {
        what: `Block ${quoted(problem.block)} has no tone ${quoted(problem.found)} to cut round a motif.`,
        mend: instead(problem.found, problem.known),
      };
    case 'design/way-not-for-unit':
      return {
        what: `${capital(unitsText(problem.unit))} are not made ${wayText(problem.way)}.`,
        mend: `Their ways are ${listed(problem.known)}.`,
      };
    case 'design/way-not-trimmed':
      return {
        what: `${capital(unitsText(problem.unit))} made ${wayText(problem.way)} have their size already: there is nothing to trim.`,
        mend: 'Take "trimmed" out, or choose another way.',
      };
    case 'design/motif-without-repeat':
      return {
        what: `The tone ${quoted(problem.tone)} of block ${quoted(problem.block)} is to be cut round a motif, but none of its cloths has a repeat.`,
        mend: 'Give its fabric a "repeat", or take the tone out of "motifs".',
      };
    case 'design/scrap-twice':
      return {
        what: `The list of the tone ${quoted(problem.tone)} names ${quoted(problem.found)} twice.`,
        mend: 'Name each fabric once: the cloths of a list are used equally often.',
      };
    case 'design/fabric-twice':
      return {
        what: `The fabric id ${quoted(problem.id)} is used already, at ${problem.first}.`,
        mend: 'Give one of the two another id.',
      };
    case 'design/variant-twice':
      return {
        what: `The id ${quoted(problem.id)} is used already, at ${problem.first}.`,
        mend: 'Give one of the two another id.',
      };
    case 'design/block-twice':
      return {
        what: `The block id ${quoted(problem.id)} is used already, at ${problem.first}.`,
        mend: 'Give one of the two another id.',
      };
    case 'design/tone-without-fabric':
      return {
        what: `In block ${quoted(problem.block)}, colouring ${quoted(problem.colouring)} gives no fabric for the tone ${quoted(problem.tone)}.`,
        mend: `Add ${quoted(problem.tone)} to the colouring, or name the tone after a fabric.`,
      };
    case 'design/no-shape':
      return {
        what: `Block ${quoted(problem.block)} says nothing of its shape.`,
        mend: 'Give it a recipe, or a list of patches with a size.',
      };
    case 'design/shape-twice':
      return {
        what: `Block ${quoted(problem.block)} gives its shape in more than one way: ${listed(problem.found)}.`,
        mend: 'Keep one of them.',
      };
    case 'design/size-disagrees':
      return {
        what: `Block ${quoted(problem.block)} states ${pair(problem.found, problem.unit)}, but its recipe makes ${pair(problem.expected, problem.unit)}.`,
        mend: 'Leave the size out, or change the centre or the widths of the logs.',
      };
    case 'design/unknown-in-collection':
      return {
        what: `The collection has no block ${quoted(problem.found)}.`,
        mend: `${instead(problem.found, problem.known)} “seamstead blocks” lists them all.`,
      };
    case 'design/centre-circle':
      return {
        what: `These blocks lie in each other’s centre without end: ${problem.chain.map(quoted).join(' holds ')}.`,
        mend: 'Give one of them a plain centre, or another block.',
      };
    case 'design/elsewhere-has-no-pieces':
      return {
        what: `Block ${quoted(problem.block)} is made elsewhere, so there are no pieces to which ${problem.use === 'frame' ? 'a frame' : 'logs'} could be sewn.`,
        mend:
          problem.use === 'frame'
            ? 'Make it elsewhere with its frame and give the whole size, or set sashing round it.'
            : 'Give the centre a size and a fabric, or name a block that is made here.',
      };
    case 'design/unit-tones':
      return {
        what: `A unit “${problem.unit}” names ${problem.found === 1 ? '1 tone' : `${problem.found} tones`}; it takes ${problem.unit === 'rails' ? 'at least ' : ''}${problem.expected}.`,
        mend: `Name its tones in this order: ${unitTonesText(problem.unit)}.`,
      };
    case 'design/unit-span':
      return {
        what: `Flying geese turned by ${problem.turn} span ${numberText(problem.found[0])} by ${numberText(problem.found[1])} of the grid, across and down.`,
        mend: `Geese are twice as wide as high, seen with the point up: turned by ${problem.turn}, give them ${problem.turn % 180 === 0 ? '[2, 1]' : '[1, 2]'} or a multiple.`,
      };
    case 'design/seam-without-length':
      return {
        what: `In block ${quoted(problem.block)}, this point of the seam is the same place as the one before it.`,
        mend: 'Name every point of a seam once.',
      };
    case 'design/tones-beyond-cycle':
      return {
        what: `This round names ${problem.found} tones, but the order goes round only ${problem.most} sides.`,
        mend: 'One round is once through the order: put the rest into the next round.',
      };
    case 'design/widths-and-tones':
      return {
        what: `This round has ${problem.found} widths for ${problem.expected} tones.`,
        mend: 'Give one width for the whole round, or one for each log.',
      };
    case 'design/part-round':
      return {
        what: `This round has ${problem.found} logs of ${problem.expected}, and another round follows.`,
        mend: 'Only the last round may stop part-way: name a tone for every side.',
      };
    case 'design/outside-grid':
      return {
        what: `In block ${quoted(problem.block)}, the corner ${place(problem.found)} lies outside the grid of ${numberText(problem.grid[0])} by ${numberText(problem.grid[1])}.`,
        mend: 'Move the corner onto the grid, or make the grid larger.',
      };
    case 'design/arc-without-start':
      return {
        what: `In block ${quoted(problem.block)}, this seam begins with an arc: it has no point to start from.`,
        mend: 'Put the point where the arc starts before it, as [x, y].',
      };
    case 'design/arc-centre': {
      const [from, to] = problem.far.map(numberText);
      return {
        what: `In block ${quoted(problem.block)}, the centre ${place(problem.found)} of this arc is not equally far from both its ends: ${from} from the point before it, ${to} from its "to".`,
        mend: 'Move the centre, or one end, until both are equally far; it lies on the line square to the middle of the two ends.',
      };
    }
    case 'design/arc-outside':
      return {
        what: `In block ${quoted(problem.block)}, this arc leaves the block: it comes to ${place(problem.found)} on a grid of ${numberText(problem.grid[0])} by ${numberText(problem.grid[1])}.`,
        mend: 'Turn its "sweep" the other way, or move its centre further off, so that it stays on the grid.',
      };
    case 'design/arc-stretched': {
      const [across, down] = problem.found.map((side) => `${numberText(side)} ${problem.unit}`);
      return {
        what: `In block ${quoted(problem.block)}, this arc would not be round: a step of the grid is ${across} across and ${down} down.`,
        mend: 'Give the block a "size" and a "grid" of the same shape, so that a step is as long across as down.',
      };
    }
    case 'design/corner-twice':
      return {
        what: `In block ${quoted(problem.block)}, corners ${problem.corners[0]} and ${problem.corners[1]} of this patch are one place.`,
        mend: 'Name every corner once; the outline closes by itself (corners are counted from 0).',
      };
    case 'design/no-area':
      return {
        what: `In block ${quoted(problem.block)}, this patch has no area: its corners lie on one line.`,
        mend: 'Move a corner off the line, or remove the patch.',
      };
    case 'design/crosses-itself':
      return {
        what: `In block ${quoted(problem.block)}, the outline of this patch meets itself: the edges after corners ${problem.edges[0]} and ${problem.edges[1]} touch or cross.`,
        mend: 'List the corners in order round the outline (corners are counted from 0).',
      };
    case 'design/empty-top':
      return { what: 'The top has no rows.', mend: 'Add "rows": a list of rows, each a list of blocks.' };
    case 'design/not-for-set':
      return {
        what: `The top is set ${setText(problem.set)}, which has no ${quoted(problem.key)}.`,
        mend: `Take ${quoted(problem.key)} out, or change "set".`,
      };
    case 'design/filled-twice':
      return {
        what: `The top is filled by ${problem.found.map(quoted).join(' and ')} at once.`,
        mend: 'Keep one of them.',
      };
    case 'design/between-size': {
      const [found, wanted] = [gridText(problem.found), gridText(problem.expected)];
      return {
        what: `On point ${wanted} lie between these rows, and "between" has ${found}.`,
        mend: 'Give "between" one row fewer than "rows", each one cell shorter; a plain square is {"plain": "fabric"}.',
      };
    }
    case 'design/corner-fabric-unused':
      return {
        what: `This border has ${problem.corners} corners, which have no cloth of their own.`,
        mend: 'Take "cornerFabric" out, or write "corners": "squares".',
      };
    case 'design/uneven-rows':
      return {
        what: `The ${ordinal(problem.row + 1)} row has ${countText(problem.found, 'cells')}, the first has ${problem.expected}.`,
        mend: 'Give every row the same number of cells; a plain square is {"plain": "fabric"}.',
      };
    case 'design/plain-size-unknown':
      return {
        what: `The ${ordinal(problem.index + 1)} ${problem.line} holds only plain cells, so nothing says how ${problem.line === 'row' ? 'high' : 'wide'} it is.`,
        mend: `Put at least one block into this ${problem.line}, or make the strip a border or sashing.`,
      };
    case 'design/sizes-differ': {
      const way = problem.line === 'row' ? 'high' : 'wide';
      const { unit } = problem;
      return {
        what: `In the ${ordinal(problem.index + 1)} ${problem.line}, block ${quoted(problem.block)} is ${exact(problem.found, unit)} ${way} as it lies, block ${quoted(problem.other)} ${exact(problem.expected, unit)}.`,
        mend: `Blocks of one ${problem.line} must be equally ${way}: change a size or a turn, or move the block.`,
      };
    }
    case 'design/top-too-large':
      return {
        what: `The top comes to ${pair(problem.found, problem.unit)}; at most ${exact(problem.most, problem.unit)} is possible each way.`,
        mend: 'Check the sizes of the blocks and borders, or divide the quilt.',
      };
    case 'design/binding-too-wide':
      return {
        what: `A binding cut ${exact(problem.cut, problem.unit)} wide cannot be cut from ${quoted(problem.fabric)} and joined: at most ${exact(problem.most, problem.unit)}, half the usable width.`,
        mend: 'Cut it narrower, or take a wider cloth.',
      };
    case 'design/binding-too-narrow':
      return {
        what: `A binding cut ${exact(problem.cut, problem.unit)} wide cannot reach round the edge with a seam of ${exact(problem.seam, problem.unit)}.`,
        mend: `Cut it wider than ${exact(problem.least, problem.unit)}, four times the seam.`,
      };
    default:
      return never(problem);
  }
};

const thereAre = (count: number, what: Counted): string =>
  `There ${count === 1 ? 'is' : 'are'} ${countText(count, what)}`;

const setText = (set: string): string =>
  ({ straight: 'straight', 'on-point': 'on point', sections: 'in sections' })[set] ?? set;

/** Rows and cells of a row. */
const gridText = ([rows, cells]: readonly [number, number]): string =>
  rows === 0 || cells === 0 ? 'no cells' : `${rows} by ${cells} cells`;

const exact = (value: Rational, unit: Unit): string => lengthText(toNumber(value), unit);

const pair = ([width, height]: readonly [Rational, Rational], unit: Unit): string =>
  sizeText([toNumber(width), toNumber(height)], unit);

const place = ([x, y]: readonly [number, number]): string => `(${numberText(x)}, ${numberText(y)})`;

const visible = (sign: string): string => {
  const code = sign.codePointAt(0) as number;
  return code < 33 || (code >= 127 && code < 160) ? `U+${code.toString(16).toUpperCase().padStart(4, '0')}` : sign;
};
