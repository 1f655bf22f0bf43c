// What the maker should know of a plan, in words.
import type { Note } from '#craft';
import { isReversed } from '#craft/fabric';
import type { Unit } from '#craft/measure';
import { never } from '#ground/outcome';
import type { Point } from '#ground/plane';
import { inWords } from './in-words.ts';
import { amountText, lengthText, numberText, sizeText } from './length-text.ts';
import { capital, counted, listed, quoted } from './named.ts';
import { reasonText, unitsText, wayText } from './ways-text.ts';

export type OffMarks = Extract<Note, { readonly code: 'cutting/off-marks' }>;

export const noteText = (note: Note, unit: Unit): string => {
  switch (note.code) {
    case 'cutting/off-marks': {
      const { size, exact } = note;
      const off = `${smallText(Math.abs(size - exact), unit)} too ${size > exact ? 'large' : 'small'}`;
      return `Block ${quoted(note.block)}, piece ${note.label}: the exact cut ${lengthText(exact, unit)} falls between two marks of the ruler. It is cut at ${lengthText(size, unit)}, ${off}, and is not trimmed after sewing.${friendlyText(note.friendly, unit)}`;
    }
    case 'cutting/strip-off-marks': {
      const measured = [
        'the width of the strip',
        note.cuts === 'parallel' ? 'from cut to cut' : 'along its longer edge',
      ];
      const off = measured.flatMap((what, i) => {
        const [exact, size] = [note.exact[i] ?? 0, note.size[i] ?? 0];
        if (Math.abs(size - exact) <= 1e-9) return [];
        const by = `${smallText(Math.abs(size - exact), unit)} too ${size > exact ? 'large' : 'small'}`;
        return [`${what} is exactly ${lengthText(exact, unit)} and is cut at ${lengthText(size, unit)}, ${by}`];
      });
      return `Block ${quoted(note.block)}, piece ${note.label} falls between two marks of the ruler: ${off.join('; ')}. It is not trimmed after sewing: ease it in.`;
    }
    case 'accuracy/drift': {
      const parts = [driftText(note.across, 'across', unit), driftText(note.down, 'down', unit)];
      return `Block ${quoted(note.block)}: cut on the nearest marks, its pieces add up to ${parts.join(' and ')}.`;
    }
    case 'design/made-elsewhere':
      return `Block ${quoted(note.block)} is made elsewhere: the top keeps a place of ${sizeText(note.finished, unit)} for it. With its seam allowances it must measure ${sizeText(note.unfinished, unit)}.`;
    case 'cutting/print-upright': {
      const more = note.upright - note.anyWay;
      const figure = (value: number): string =>
        note.of === 'length' ? lengthText(value, unit) : amountText(value, 'sheets');
      const cost =
        more > 1e-9
          ? `that takes ${figure(more)} more of it (${figure(note.upright)} against ${figure(note.anyWay)})`
          : 'that takes no more of it';
      return note.leans
        ? `The print of ${quoted(note.fabric)} stands upright in its blocks, and ${cost}.`
        : `The print of ${quoted(note.fabric)} stands upright in the quilt, and ${cost}.`;
    }
    case 'cutting/ends-save':
      return note.used === 0
        ? `The ends of ${quoted(note.fabric)} at hand would not save a step of what the shop cuts, so they stay whole.`
        : `${note.used === 1 ? 'One end' : `${note.used} ends`} of ${quoted(note.fabric)} at hand ${note.used === 1 ? 'is' : 'are'} cut first, and ${note.used === 1 ? 'saves' : 'save'} ${amountText(note.saved, note.unit)} of what is bought.`;
    case 'cutting/on-motifs': {
      const more = note.centred - note.anywhere;
      const cost =
        more > 1e-9
          ? `that takes ${lengthText(more, unit)} more of it (${lengthText(note.centred, unit)} against ${lengthText(note.anywhere, unit)})`
          : 'that takes no more of it';
      return `${note.pieces === 1 ? 'One piece' : `${note.pieces} pieces`} of ${quoted(note.fabric)} ${note.pieces === 1 ? 'lies with its' : 'lie with their'} middle on a motif, and ${cost}. One repeat of ${lengthText(note.repeat, unit)} more is bought, for the shop cuts anywhere in it: square the cloth where the motifs lie as the document says.`;
    }
    case 'cutting/on-fold': {
      const takes = note.more > 1e-9 ? `takes ${lengthText(note.more, unit)} more of it` : 'takes no more of it';
      const buys = note.bought > 1e-9 ? `, ${amountText(note.bought, note.unit)} more to buy,` : '';
      return `Cutting ${quoted(note.fabric)} on the fold ${takes}${buys} and saves ${counted(note.strokes, 'stroke')} of the blade.`;
    }
    case 'finishing/smaller-than-bed': {
      const ways = ['width', 'length'].flatMap((way, i) => {
        const lacks = note.lacks[i] ?? 0;
        return lacks > 1e-9 ? [`${lengthText(lacks, unit)} in ${way}`] : [];
      });
      return `For its bed, with drop and tuck, the quilt should be ${sizeText(note.wanted, unit)}: it lacks ${ways.join(' and ')}. A border or more blocks would make it up.`;
    }
    case 'fabric/values-near': {
      const { light, dark } = note;
      const named = ({ tones, fabrics, lightness }: typeof light): string =>
        `${listed(fabrics)} (${tones.length === 1 ? 'tone' : 'tones'} ${listed(tones)}), lightness ${Math.round(lightness)}`;
      const where = note.colourway === undefined ? '' : `In the colourway ${quoted(note.colourway)}: `;
      const what = `${where === '' ? 'L' : 'l'}ight ${isReversed(note) ? 'is darker than dark' : 'and dark do not read apart'} in block ${quoted(note.block)}, colouring ${quoted(note.colouring)}: ${named(light)}, against ${named(dark)}.`;
      if (isReversed(note)) return `${where}${what} If it is not meant so, let the two change places.`;
      return `${where}${what} A difference of 15 or more is seen at a glance: take a lighter or a darker cloth.`;
    }
    case 'fabric/equal-neighbours':
      return `${note.equal} of ${note.of} pairs of scrappy neighbours are cut from one cloth: the lists of their tones are too short to part them all. A longer list would.`;
    case 'fabric/uneven-scraps':
      return `The scrappy cloths ${listed(note.fabrics)} cannot all be used equally often: from ${note.least} to ${note.most} patches each.`;
    case 'piecing/not-straight':
      if (note.joining === 'curved')
        return `Block ${quoted(note.block)} has ${counted(note.curved, 'curved seam')}: its curved pieces are cut from templates, and laid on each other by the marks on them.`;
      return note.joining === 'set-in'
        ? `Block ${quoted(note.block)} is not sewn with straight seams alone: it has ${counted(note.corners, 'inside corner')} to set in. Stop those seams where the seam lines cross, an allowance from the edge.`
        : `Block ${quoted(note.block)} is not sewn with straight seams alone: ${note.partial === 1 ? 'one seam is' : `${note.partial} seams are`} sewn part-way first and closed at the end.`;
    case 'piecing/lines-to-add':
      return linesText(note, unit);
    case 'piecing/no-lines-to-add':
      return `Block ${quoted(note.block)} has seams that are neither straight nor one curve from edge to edge, and ${note.isProven ? 'no one or two straight lines' : 'no straight lines that were found'} through its corners and curves would spare them. Divide the patch on the hollow side of the curve, or draw the curve from edge to edge.`;
    case 'piecing/searched':
      return `Block ${quoted(note.block)} has ${note.patches} patches: its sewing order is the best one found, not proven to need the fewest different units.`;
    case 'design/unused-tone':
      return `Colouring ${quoted(note.colouring)} of block ${quoted(note.block)} names the tone ${quoted(note.tone)}, which the block does not have. Look for a slip in its name, or take it out.`;
    case 'cutting/top-off-marks': {
      const { size, exact, role } = note;
      const off = `${smallText(Math.abs(size - exact), unit)} too ${size > exact ? 'large' : 'small'}`;
      return `Piece ${note.label} of the top (${role.replaceAll('-', ' ')}): the exact cut ${lengthText(exact, unit)} falls between two marks of the ruler. It is cut at ${lengthText(size, unit)}, ${off}: ease it in, or change a size beside it.`;
    }
    case 'cutting/print-slanted':
      return `The print of ${quoted(note.fabric)} lies slanted in the quilt: its pieces are cut straight for blocks that stand on a corner. Use it in setting triangles and borders to see it upright.`;
    case 'setting/sashing-all-round':
      return 'On point the sashing goes all round every block, along the setting triangles too.';
    case 'design/unused-block':
      return `Block ${quoted(note.block)} is described but the top never uses it, so nothing is cut for it. Set it into the top, or take it out.`;
    case 'ways/not-taken':
      return `${capital(unitsText(note.unit))} ${sizeText(note.size, unit)} of ${listed([...new Set(note.fabrics)])} cannot be made ${wayText(note.way)}: ${reasonText(note.why)}. They are cut and sewn one by one.`;
    case 'ways/no-such-unit':
      return `A way is chosen for ${unitsText(note.unit)}, ${wayText(note.way)}, but no block of the top has such units. Check its size and fabrics, or take it out.`;
    default:
      return never(note);
  }
};

type LinesToAdd = Extract<Note, { code: 'piecing/lines-to-add' }>;

const linesText = ({ block, lines, more, isLeast, joins }: LinesToAdd, unit: Unit): string => {
  const seams = lines.flatMap((line) => line.seams);
  const place = ({ x, y }: Point): string => `${lengthText(x, unit)} across, ${lengthText(y, unit)} down`;
  const where = seams.map(([from, to]) => `from ${place(from)} to ${place(to)}`).join('; ');
  const fewest = isLeast ? ', and fewer would not do' : '';
  const [count, pieces] = [counted(lines.length, 'line'), counted(more, 'piece')];
  return `${capital(count)} more in block ${quoted(block)} would let ${joins === 'straight' ? 'straight seams alone' : 'straight seams, and curves each in one run,'} join it${lines.length > 1 ? fewest : ''}: ${where}. It then has ${pieces} more.`;
};

/** All pieces of one block that are off the marks in one notice: how far at most, each way. */
export const offMarksText = (notes: readonly OffMarks[], unit: Unit): string => {
  const [first] = notes;
  if (first === undefined) throw new Error('no piece is off the marks');
  const labels = [...new Set(notes.map(({ label }) => label))];
  if (labels.length === 1) return noteText(first, unit);
  const most = (way: 1 | -1): number => Math.max(...notes.map(({ size, exact }) => way * (size - exact)));
  const off = [
    { by: most(1), what: 'large' },
    { by: most(-1), what: 'small' },
  ].flatMap(({ by, what }) => (by > 1e-9 ? [`up to ${smallText(by, unit)} too ${what}`] : []));
  return `Block ${quoted(first.block)}, pieces ${inWords(labels)}: their exact cuts fall between two marks of the ruler. They are cut ${inWords(off, 'or')}, and are not trimmed after sewing.${friendlyText(first.friendly, unit)}`;
};

const friendlyText = (size: readonly [number, number] | null, unit: Unit): string =>
  size === null ? '' : ` The nearest size of the block at which every cut falls on a mark is ${sizeText(size, unit)}.`;

/** "1/16 in too large across". */
export const driftText = (drift: number, way: 'across' | 'down', unit: Unit): string =>
  drift === 0
    ? `the true size ${way}`
    : `${smallText(Math.abs(drift), unit)} too ${drift > 0 ? 'large' : 'small'} ${way}`;

/** A ruler's fraction stays one; of others, and below a 64th, the decimal says more. */
const smallText = (value: number, unit: Unit): string => {
  if (value < 1 / 64) return `${Number(value.toPrecision(1))} ${unit}`;
  const isRulers = Math.abs(value * 64 - Math.round(value * 64)) < 1e-6;
  return lengthText(isRulers ? value : Number(numberText(value)), unit);
};
