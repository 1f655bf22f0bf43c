// The borders: in which order they are sewn on, what they are made of, and how each kind is measured and sewn.
import type { QuiltPlan } from '#craft';
import { type BorderRing, type RoundPart, thingsOf } from '#craft/setting';
import { toNumber } from '#ground/exact';
import { signOf } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { drawBorders } from '#paper/drawing';
import { checkSize, lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import { shown } from './album.ts';
import { capital, joinedText, pieceOfStrip, roleNouns } from './top-names.ts';
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
      list: [...generalAdvice(borders), ...borders.flatMap((ring, place) => kindAdvice(plan, ring, place))],
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
      table: { head: ['Order', 'Where', 'Piece', 'Planned cut'], shares: [0, 1, 0, 1.4], rows },
    }),
  ];
};

const generalAdvice = (borders: readonly BorderRing[]): readonly string[] => [
  'Measure the quilt through the middle in three places: near one edge, in the middle, near the other edge. Not along the edge, which stretches.',
  ...(borders.every(({ kind }) => kind === 'mitred') ? [] : [meanAdvice(borders)]),
  'Pin the middles and the ends first, then in between, easing in what is over. Press toward the border.',
];

/** A mitred strip is longer than its side, so the mean is not its length. */
const meanAdvice = (borders: readonly BorderRing[]): string => {
  const which = borders.some(({ kind }) => kind === 'mitred') ? 'Unless a border is mitred, cut' : 'Cut';
  return `${which} the two borders for that direction to the mean of the three, whatever the figure below says: then the quilt lies flat. The figures below are what a quilt without error measures.`;
};

/** What holds for one ring beyond that; butted strips need nothing more. */
const kindAdvice = (plan: QuiltPlan, ring: BorderRing, place: number): readonly string[] => {
  const name = `Border ${ring.border + 1}`;
  const seam = lengthOnPaper(toNumber(plan.quilt.seam), plan.quilt.unit);
  switch (ring.kind) {
    case 'butted':
      return [];
    case 'squares':
      return [
        `${name} has a square in each corner: measure both ways before the first strip is sewn on. The strips at top and bottom are as long as the quilt is wide without this border; join their squares to them first.`,
      ];
    case 'mitred':
      return [
        `${name} is mitred. Cut the strips as planned, or longer by what the quilt measures over plan, the middle of each to the middle of its side: what is over at the ends is for the corners. Begin and end each of the four seams ${seam} from the corner of the quilt.`,
        'Then fold the quilt at a corner, right sides together, so that the two strips lie on each other; draw the line from the end of the seam to the outer corner at 45°; sew from the seam outward, look, trim to an allowance, and press open.',
      ];
    case 'spacer':
      return [
        `The spacer strips inside border ${ring.border + 1} make its blocks fit. When they are on, trim so that the quilt measures ${sizeAfter(plan, place)}.`,
      ];
    case 'pieced':
      return [
        `${name} is made of blocks: join them in rows first. A row that comes out long or short is mended in its own seams, a hair in each of several. Press toward the quilt or the spacer, away from the blocks.`,
      ];
  }
};

/** What the quilt measures with a ring on. */
const sizeAfter = (plan: QuiltPlan, ring: number): string => {
  const last = plan.top.steps.findLast(
    ({ stage, of, measure }) => stage === 'border' && of === ring && measure !== null,
  );
  return last === undefined ? 'as planned' : checkSize(last.unfinished, plan.quilt);
};

const partLine = ({ plan, signs }: TopChapter, { side, assembly }: RoundPart, order: number): readonly string[] => {
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
  const cloths = [...new Set(strips.map(({ fabric }) => `cloth ${signOf(signs, fabric).letter}`))];
  const counts = [...new Set(blocks)].map((title) => `${blocks.filter((one) => one === title).length} × ${title}`);
  const isPlain = strips.length === 1 && blocks.length === 0;
  const cuts = strips.map((piece) => {
    const cut = joinedText(plan, piece) ?? sizeOnPaper(piece.cut.size, plan.quilt.unit);
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
