// How seams nest, in words: how many places there are, how many nest, and why the others do not.
import type { BlockPlan, PlannedStep, QuiltPlan } from '#craft';
import type { QuarterTurn } from '#craft/design';
import { isSpun, type WhyLoose } from '#craft/pressing';
import type { PlacedBlock } from '#craft/setting';
import { never } from '#ground/outcome';
import { entryTitle } from '#paper/cutting';
import { inWords } from '#paper/words';
import { partName, pressText } from './naming.ts';

interface Share {
  readonly meetings: number;
  readonly nested: number;
}

/** "At 14 places seams meet across another: they nest at 12 of them." */
export const shareText = ({ meetings, nested }: Share): string => {
  if (meetings === 0) return 'No seams meet across another.';
  if (meetings === 1)
    return `At one place seams meet across another: they ${nested === 1 ? 'nest' : 'do not nest'} there.`;
  const far = nested === meetings ? (meetings === 2 ? 'both' : 'all') : nested === 0 ? 'none' : `${nested}`;
  return `At ${meetings} places seams meet across another: they nest at ${far} of them.`;
};

/** What the pages of a block say of it; nothing where none meet. */
export const blockNestingLines = ({ pressing, count }: BlockPlan): readonly string[] => [
  ...(pressing.meetings === 0 ? [] : [[shareText(pressing), ...looseTexts(pressing.loose)].join(' ')]),
  ...otherWayLine(pressing.otherWay, count),
  ...turnedLine(pressing.turned, count),
];

const turnedLine = (turned: number, count: number): readonly string[] =>
  turned === 0
    ? []
    : [
        `In the top ${turned} of the ${count} ${turned === 1 ? 'is' : 'are'} turned, so that seams nest with those of the neighbours. Turned, a block looks the same: put a pin in the edge of each that is at the top of its board.`,
      ];

const otherWayLine = (otherWay: number, count: number): readonly string[] =>
  otherWay === 0
    ? []
    : [
        `${otherWay} of the ${count} ${otherWay === 1 ? 'is' : 'are'} pressed the other way at some steps, so that seams nest with those of the neighbours: they have a ring in the picture of the top. Make them apart.`,
      ];

type LooseHere = BlockPlan['pressing']['loose'][number];

/** "Not where steps 6 and 7 meet under step 10: …" */
const looseTexts = (loose: readonly LooseHere[]): readonly string[] => {
  const byWhy = new Map<WhyLoose, Set<string>>();
  for (const { steps, over, why } of loose) {
    const [low, high] = [Math.min(...steps), Math.max(...steps)];
    const met = low === high ? `copies of step ${low}` : `steps ${low} and ${high}`;
    const known = byWhy.get(why) ?? new Set();
    byWhy.set(why, known.add(`${met} under step ${over}`));
  }
  return [...byWhy].map(([why, places]) => `Not where ${inWords([...places])} meet: ${whyText(why)}.`);
};

export const whyText = (why: WhyLoose): string => {
  switch (why) {
    case 'one-seam':
      return 'it is one seam, which lies the same way in both';
    case 'open':
      return 'one of them is pressed open';
    case 'kept':
      return 'both must lie as they do, whatever meets';
    case 'another':
      return 'to nest there would cost another place';
    default:
      return never(why);
  }
};

/** What the chapter on the top says: between blocks, and the whole. */
export const topNestingLines = (plan: QuiltPlan): readonly string[] => {
  const { top } = plan;
  const { between, all, proven } = top.pressing;
  if (all.meetings === 0) return [];
  const counts = new Map<WhyLoose, number>();
  for (const { why } of between.loose) counts.set(why, (counts.get(why) ?? 0) + 1);
  const reasons = [...counts].map(([why, count]) => `${count} ${count === 1 ? 'does' : 'do'} not: ${whyText(why)}.`);
  const turned = top.pressing.turns.some((turn) => turn !== 0) ? ' and turns' : '';
  const rings = top.pressing.variants.some((variant) => variant === 1)
    ? ['A ring in a block marks those that are pressed the other way.']
    : [];
  return [
    [
      ...(between.meetings === 0
        ? []
        : [`Between blocks, rows and borders: ${lowered(shareText(between))}`, ...reasons]),
      `In the whole quilt ${all.nested} of ${all.meetings} nest${proven ? `, and no other choice of sides${turned} nests more` : '; found by a search'}.`,
      ...rings,
      ...turnedTexts(plan),
    ].join(' '),
  ];
};

/** "Every other block is turned half round: it looks the same so, and its seams nest." */
const turnedTexts = (plan: QuiltPlan): readonly string[] => {
  const { set, pressing } = plan.top;
  return plan.blocks.flatMap((block) => {
    if (block.pressing.turned === 0) return [];
    const own = set.placed.flatMap((placed, place) => (isOf(block, placed) ? [place] : []));
    const turns = new Set(own.flatMap((place) => pressing.turns[place] || []));
    const how = turnedHow([...turns]);
    const title =
      plan.blocks.length === 1
        ? 'block'
        : entryTitle(plan, { block: block.id, colouring: block.colouring, mirror: block.mirror });
    if (isEveryOther(plan, own))
      return [`Every other ${title} is turned ${how}: it looks the same so, and its seams nest.`];
    const [is, it, its] = block.pressing.turned === 1 ? ['is', 'it looks', 'its'] : ['are', 'they look', 'their'];
    const of = plan.blocks.length === 1 ? 'blocks' : `blocks “${title}”`;
    return [
      `${block.pressing.turned} of the ${block.count} ${of} ${is} turned ${how}: ${it} the same so, and ${its} seams nest.`,
    ];
  });
};

const isOf = ({ id, colouring, mirror }: BlockPlan, placed: PlacedBlock): boolean =>
  placed.block === id && placed.colouring === colouring && placed.mirror === mirror;

const turnedHow = (turns: readonly QuarterTurn[]): string => {
  const [turn] = turns;
  if (turns.length > 1) return turns.includes(180) ? 'by a quarter or half round' : 'by a quarter, this way or that';
  return turn === 180 ? 'half round' : `a quarter ${turn === 90 ? 'clockwise' : 'counterclockwise'}`;
};

/** Like the dark squares of a checkerboard among the light ones. */
const isEveryOther = ({ top }: QuiltPlan, places: readonly number[]): boolean => {
  const { placed } = top.set;
  const keyOf = (x: number, y: number): string => `${x.toFixed(4)} ${y.toFixed(4)}`;
  const turned = new Map(
    places.map((place) => {
      const { at } = placed[place] as PlacedBlock;
      return [keyOf(at[0], at[1]), top.pressing.turns[place] !== 0] as const;
    }),
  );
  const pairs = places.flatMap((place) => {
    const { at, size, turn } = placed[place] as PlacedBlock;
    const [w, h] = turn % 90 === 0 ? size : [size[0] / 2, size[1] / 2];
    const beside =
      turn % 90 === 0
        ? ([
            [w, 0],
            [0, h],
          ] as const)
        : ([
            [w, h],
            [-w, h],
          ] as const);
    return beside.flatMap(([dx, dy]) => {
      const other = turned.get(keyOf(at[0] + dx, at[1] + dy));
      return other === undefined ? [] : [other !== (top.pressing.turns[place] !== 0)];
    });
  });
  return pairs.length > 0 && pairs.every((differ) => differ);
};

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Of a step: which way, and why. */
export const pressReason = (step: PlannedStep): string => `${pressText(step)} ${whyPressed(step)}`;

const whyPressed = ({ wish, pressTo, join }: PlannedStep): string => {
  if (wish.why === 'outward') return 'Away from the middle of the block.';
  if (wish.why === 'hollow') return 'To the hollow side of the curve, where its clips open.';
  if (pressTo === 'open') return 'So many seams run together there that it lies flattest open.';
  if (isSpun(pressTo)) return 'All that meet there run round with it, so it lies flat and nests.';
  if (pressTo !== wish.toward)
    return `So seams nest, or lie flatter; alone it would go toward ${partName(join[wish.toward])}.`;
  return wish.why === 'darker' ? 'The cloth there is darker.' : 'There it lies flatter.';
};

/** Of the picture from the back, for readers who listen. */
export const spunBackAlt = ({ number }: PlannedStep): string =>
  `Step ${number} from the back, pressed: all seams that cross there lie one way round, and their ends open into a small patch.`;
