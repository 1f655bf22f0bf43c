// The top: rows, the rows joined, borders.
import type { QuiltPlan, TopPiece, TopStep } from '#craft';
import { thingsOf } from '#craft/setting';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { drawBorders, drawRows, rowPressOf, rowStepsOf, sameRowBefore } from '#paper/drawing';
import { sizeOnPaper } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { measurePt } from './measure.ts';
import { partName } from './naming.ts';

export interface TopPages {
  readonly intro: readonly string[];
  readonly rowsPicture: Picture;
  /** Number, what it holds, press, measure. */
  readonly rows: readonly (readonly [string, string, string, string])[];
  readonly pieces: readonly (readonly [string, string, string, string])[];
  readonly joins: readonly string[];
  readonly borders: {
    readonly picture: Picture;
    readonly advice: readonly string[];
    readonly strips: readonly (readonly [string, string, string, string])[];
  } | null;
}

interface ChapterOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

export const topPages = (of: ChapterOf): TopPages => {
  const { plan, signs, album } = of;
  const { set, steps } = plan.top;
  const isTurned = set.placed.some(({ turn }) => turn !== 0);
  return {
    intro: [
      'Lay the whole top out before you sew, and look at it from across the room.',
      ...(isTurned
        ? [
            'The small pointer in a block marks the edge that is at the top of its board: turn the block so that it points as drawn.',
          ]
        : []),
    ],
    rowsPicture: shown(
      album,
      'rows',
      drawRows({
        plan,
        signs,
        fitPt: [measurePt, 320],
        alt: `The middle of the top in ${set.rows.length} rows, pulled apart and numbered from the top. ${rowsAlt(plan)}`,
      }),
    ),
    rows: set.rows.map((_, row) => rowLine(plan, row)),
    pieces: plan.top.pieces.filter(({ role }) => role !== 'border').map((piece) => pieceLine(of, piece)),
    joins: joinLines(plan, steps),
    borders: set.borders.length === 0 ? null : borderPages(of),
  };
};

const rowsAlt = (plan: QuiltPlan): string =>
  plan.top.set.rows
    .slice(0, 40)
    .map(
      (row, index) =>
        `Row ${index + 1}: ${holds(plan, index)}${row.kind === 'sashes' ? ', between rows of blocks' : ''}.`,
    )
    .join(' ');

/** "6 blocks, 5 sashes" */
const holds = (plan: QuiltPlan, row: number): string => {
  const counts = new Map<string, number>();
  for (const part of plan.top.set.rows[row]?.parts ?? []) {
    const name = 'block' in part ? 'block' : roleNouns[plan.top.set.strips[part.strip]?.role ?? 'plain'];
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].map(([name, count]) => `${count} ${count === 1 ? name : plural(name)}`).join(', ');
};

const roleNouns = {
  sash: 'sash',
  cornerstone: 'cornerstone',
  plain: 'plain piece',
  strip: 'strip',
  fill: 'plain piece',
  'side-triangle': 'side triangle',
  'corner-triangle': 'corner triangle',
  border: 'border',
  spacer: 'spacer strip',
  'border-corner': 'border corner',
} as const;
const plural = (noun: string): string => (noun.endsWith('sh') ? `${noun}es` : `${noun}s`);

const rowLine = (plan: QuiltPlan, row: number): readonly [string, string, string, string] => {
  const steps = rowStepsOf(plan, row);
  const before = sameRowBefore(plan, row);
  const last = steps.at(-1);
  return [
    String(row + 1),
    before === null ? holds(plan, row) : `${holds(plan, row)}, made like row ${before + 1}`,
    last === undefined ? 'no seams' : rowPressText(plan, row, steps),
    last === undefined ? '' : sizeOnPaper(last.unfinished, plan.quilt.unit),
  ];
};

const rowPressText = (plan: QuiltPlan, row: number, steps: readonly TopStep[]): string => {
  const way = rowPressOf(plan, row);
  if (way !== null) return `to the ${way}`;
  if (steps.every(({ pressTo }) => pressTo === 'open')) return 'open';
  const roles = new Set(steps.map((step) => pressedRole(plan, step)));
  const [role] = roles;
  return roles.size === 1 && role !== undefined ? `toward the ${plural(role)}` : inTurn(steps);
};

/** What lies next to the seam on the side that it is pressed toward. */
const pressedRole = (plan: QuiltPlan, step: TopStep): string | undefined => {
  if (step.pressTo === 'open') return undefined;
  const things = step.things[step.pressTo];
  const thing = step.pressTo === 0 ? things.at(-1) : things[0];
  if (thing === undefined) return undefined;
  return 'block' in thing ? 'block' : roleNouns[plan.top.set.strips[thing.strip]?.role ?? 'plain'];
};

const inTurn = (steps: readonly TopStep[]): string =>
  steps
    .map(({ pressTo, side }) =>
      pressTo === 'open' ? 'open' : (pressTo === 1) === (side === 'right') ? 'right' : 'left',
    )
    .join(', ');

const pieceLine = ({ plan, signs }: ChapterOf, piece: TopPiece): readonly [string, string, string, string] => [
  piece.label,
  `${capital(roleNouns[piece.role])}, cloth ${signOf(signs, piece.fabric).letter}`,
  String(piece.count),
  joinedText(plan, piece) ?? sizeOnPaper(piece.cut.size, plan.quilt.unit),
];

/** How a strip longer than its cloth is put together; null when it is cut in one piece. */
const joinedText = (plan: QuiltPlan, piece: TopPiece): string | null => {
  if (piece.joinedFrom.length < 2) return null;
  const { unit } = plan.quilt;
  const from = piece.joinedFrom.map((size) => sizeOnPaper(size, unit)).join(' and ');
  return `${sizeOnPaper(piece.cut.size, unit)}, joined end to end from ${from}`;
};

const joinLines = (plan: QuiltPlan, steps: readonly TopStep[]): readonly string[] => {
  const rows = steps.filter(({ stage }) => stage === 'rows');
  const last = rows.at(-1);
  if (last === undefined) return ['The top has one row: it is the middle of the quilt.'];
  const { unit } = plan.quilt;
  return [
    ...rows.map((step) => {
      const way =
        step.pressTo === 'open'
          ? 'open'
          : step.pressTo === 1
            ? 'down, toward the new row'
            : 'up, toward the rows above';
      return `Add ${rowName(plan, step)}: press the seam ${way}; it measures ${sizeOnPaper(step.unfinished, unit)}.`;
    }),
    `The middle measures ${sizeOnPaper(last.unfinished, unit)} before borders.`,
  ];
};

/** The row that a step adds, by the things it holds. */
const rowName = (plan: QuiltPlan, step: TopStep): string => {
  const thing = step.things[1][0];
  if (thing === undefined) return partName(step.join[1]);
  const index = plan.top.set.rows.findIndex((row) =>
    row.parts.some((part) =>
      'block' in part ? 'block' in thing && part.block === thing.block : 'strip' in thing && part.strip === thing.strip,
    ),
  );
  return index < 0 ? partName(step.join[1]) : `row ${index + 1}`;
};

const borderPages = ({ plan, signs, album }: ChapterOf): NonNullable<TopPages['borders']> => {
  const { set } = plan.top;
  const { unit } = plan.quilt;
  let order = 0;
  const strips = set.borders.flatMap((border) =>
    border.parts.map(({ side, assembly }): readonly [string, string, string, string] => {
      order++;
      const all = thingsOf(assembly).flatMap((thing) => ('strip' in thing ? [thing.strip] : []));
      const index = all.find((one) => set.strips[one]?.role === 'border') ?? all[0];
      if (index === undefined) return [String(order), `${capital(side)}, of blocks`, '', ''];
      const piece = plan.top.pieces.find(({ strips: all }) => all.includes(index));
      const strip = set.strips[index];
      if (piece === undefined || strip === undefined) throw new Error(`no piece for the border strip ${index}`);
      return [
        String(order),
        `${capital(side)}, cloth ${signOf(signs, strip.fabric).letter}`,
        piece.label,
        joinedText(plan, piece) ?? sizeOnPaper(piece.cut.size, unit),
      ];
    }),
  );
  return {
    picture: shown(
      album,
      'borders',
      drawBorders({
        plan,
        signs,
        unit,
        fitPt: [300, 250],
        alt: `The borders pulled away from the middle, numbered 1 to ${order} in the order in which they are sewn on: ${strips.map(([n, where]) => `${n} ${where}`).join('; ')}.`,
      }),
    ),
    advice: [
      'Measure the quilt through the middle in three places: near one edge, in the middle, near the other edge. Not along the edge, which stretches.',
      'Cut the two borders for that direction to the mean of the three, whatever the figure below says: then the quilt lies flat. The figures below are what a quilt without error measures.',
      'Pin the middles and the ends first, then in between, easing in what is over. Press toward the border.',
    ],
    strips,
  };
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
