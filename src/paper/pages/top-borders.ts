// The borders: in which order they are sewn on, what they are made of, and how each kind is measured and sewn.
import type { QuiltPlan, TopPiece } from '#craft';
import { type BorderRing, type RoundPart, thingsOf } from '#craft/setting';
import { toNumber } from '#ground/exact';
import { signOf } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { drawBorders } from '#paper/drawing';
import { checkSize, lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import { capital, inWords, roleNouns } from '#paper/words';
import { shown } from './album.ts';
import { madeText, pieceOfStrip } from './top-names.ts';
import type { TopChapter, TopPart } from './top-part.ts';
import { topPart } from './top-part.ts';

export const borderParts = (of: TopChapter): readonly TopPart[] => {
  const { plan } = of;
  const { borders } = plan.top.set;
  if (borders.length === 0) return [];
  const lines = borders.flatMap((ring) => ring.parts.map((part) => ({ ring, part })));
  const rows = lines.map(({ part }, order) => partLine(of, part, order + 1));
  return [
    topPart({
      heading: 'Borders',
      list: [...generalAdvice(plan, borders), ...borders.flatMap((_, place) => kindAdvice(plan, place))],
      picture: shown(
        of.album,
        'borders',
        drawBorders({
          plan,
          signs: of.signs,
          fitPt: [300, 250],
          alt: `The borders pulled away from the middle, numbered 1 to ${rows.length} in the order in which they are sewn on: ${rows.map(([order, where]) => `${order} ${where}`).join('; ')}.`,
        }),
      ),
      table: { head: ['Order', 'Where', 'Piece', 'Planned cut'], shares: [0, 0.6, 0, 1.9], rows },
    }),
  ];
};

export const generalAdvice = (plan: QuiltPlan, borders: readonly BorderRing[]): readonly string[] => [
  'Sew the strips on in the order of their numbers. Before each pair, 1 and 2, 3 and 4 and so on, measure the quilt the way the strips will lie, through the middle in three places: near one edge, in the middle, near the other edge. Not along the edge, which stretches.',
  ...(borders.every(({ kind }) => kind === 'mitred') ? [] : [meanAdvice(plan, borders)]),
  'Pin the middles and the ends first, then in between, easing in what is over. Press toward the border.',
  ...(plan.top.pieces.some(({ role, joinedFrom }) => inBorders.has(role) && joinedFrom.length > 1)
    ? ['Where a strip is joined end to end, sew straight across it and press the seam open.']
    : []),
];

const inBorders: ReadonlySet<TopPiece['role']> = new Set(['border', 'spacer']);

/** How much a quilt may be over its border and still be eased in: common practice, no source. */
const easedIn = { in: '½\u00a0in', cm: '1\u00a0cm' } as const;

/** A mitred strip is longer than its side, so the mean is not its length. */
const meanAdvice = ({ quilt }: QuiltPlan, borders: readonly BorderRing[]): string => {
  const which = borders.some(({ kind }) => kind === 'mitred') ? 'Unless the border is mitred, cut' : 'Cut';
  return `The sizes below are what a quilt without error measures. ${which} both strips of a pair down to the mean of your three where that is less. Where it is more, by up to ${easedIn[quilt.unit]}, ease the quilt in along the strip; by more, look first for seams that are too narrow. Two strips of one length make the quilt lie flat.`;
};

export const mitreText =
  'fold the quilt at a corner, right sides together, so that the two strips lie on each other; draw the line from the end of the seam to the outer corner at 45°; sew from the seam outward, look, trim to an allowance, and press open.';

/** What holds for one ring beyond that; butted strips need nothing more. */
export const kindAdvice = (plan: QuiltPlan, place: number): readonly string[] => {
  const ring = plan.top.set.borders[place];
  if (ring === undefined) return [];
  const numbers = numbersOf(plan.top.set.borders, place);
  const seam = lengthOnPaper(toNumber(plan.quilt.seam), plan.quilt.unit);
  switch (ring.kind) {
    case 'butted':
      return [];
    case 'squares':
      return [
        `The border of ${numbers} has a square in each corner: measure both ways before the first strip is sewn on. The strips at top and bottom are as long as the quilt is wide without this border; join their squares to them first.`,
      ];
    case 'mitred':
      return [
        `The border of ${numbers} is mitred. Its strips are longer than their sides: the middle of each goes to the middle of its side, and what is over at the ends is for the corners. Begin and end each of the four seams ${seam} from the corner of the quilt, on the seam line of the next side.`,
        `Then ${mitreText}`,
      ];
    case 'spacer':
      return [
        `The spacer strips ${numbers} make the next border of blocks fit. When they are on, trim so that the quilt measures ${sizeAfter(plan, place)}.`,
      ];
    case 'pieced':
      return [
        `The border of ${numbers} is made of blocks: join them in rows first. A row that comes out long or short is mended in its own seams, a hair in each of several. Press toward the quilt or the spacer, away from the blocks.`,
      ];
  }
};

/** "5 to 8": the numbers of a ring's strips in the picture and the table. */
const numbersOf = (borders: readonly BorderRing[], place: number): string => {
  const before = borders.slice(0, place).reduce((sum, { parts }) => sum + parts.length, 0);
  const count = borders[place]?.parts.length ?? 0;
  return count === 1 ? `${before + 1}` : `${before + 1} to ${before + count}`;
};

/** What the quilt measures with a ring on. */
const sizeAfter = (plan: QuiltPlan, ring: number): string => {
  const last = plan.top.steps.findLast(
    ({ stage, of, measure }) => stage === 'border' && of === ring && measure !== null,
  );
  return last === undefined ? 'as planned' : checkSize(last.unfinished, plan.quilt);
};

export const partLine = (
  of: Omit<TopChapter, 'album'>,
  { side, assembly }: RoundPart,
  order: number,
): readonly string[] => {
  const { plan, signs } = of;
  const things = thingsOf(assembly);
  const strips = [
    ...new Map(
      things
        .flatMap((thing) => ('strip' in thing ? [pieceOfStrip(plan, thing.strip)] : []))
        .map((piece) => [piece.label, piece] as const),
    ).values(),
  ];
  const blocks = things.flatMap((thing) => {
    const placed = 'block' in thing ? plan.top.set.placed[thing.block] : undefined;
    return placed === undefined ? [] : [entryTitle(plan, placed)];
  });
  const letters = [...new Set(strips.map(({ fabric }) => signOf(signs, fabric).letter))];
  const cloths = letters.length === 0 ? [] : [`${letters.length === 1 ? 'cloth' : 'cloths'} ${inWords(letters)}`];
  const counts = [...new Set(blocks)].map((title) => `${blocks.filter((one) => one === title).length} × ${title}`);
  const isPlain = strips.length === 1 && blocks.length === 0;
  const cuts = strips.map((piece) => {
    const cut = madeText(of, piece, sizeOnPaper(piece.cut.size, plan.quilt.unit));
    return isPlain ? cut : `${roleNouns[piece.role]} ${piece.label} ${cut}`;
  });
  return [
    String(order),
    [capital(side), ...counts, ...cloths].join(', '),
    strips.map(({ label }) => label).join(', '),
    [...cuts, ...(blocks.length === 0 ? [] : [rowSizeText(plan, assembly)])].join('; '),
  ];
};

/** What a row of blocks measures before it is sewn on. */
const rowSizeText = (plan: QuiltPlan, assembly: RoundPart['assembly']): string => {
  const things = thingsOf(assembly);
  const step = plan.top.steps.find(
    ({ things: joined, measure }) =>
      measure !== null && joined[1].length === things.length && JSON.stringify(joined[1]) === JSON.stringify(things),
  );
  if (step === undefined) return '';
  const made = plan.top.steps.find(({ makes }) => makes === step.join[1]);
  return made === undefined ? '' : `the row measures ${checkSize(made.unfinished, plan.quilt)}`;
};
