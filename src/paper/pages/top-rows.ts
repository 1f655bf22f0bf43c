// The rows of the top, level or on point: what each holds, how it is pressed, and how the rows are joined.
import type { QuiltPlan, TopStep } from '#craft';
import { toNumber } from '#ground/exact';
import { entryTitle } from '#paper/cutting';
import { isSlanted, rowPressOf, rowStepsOf, sameRowBefore } from '#paper/drawing';
import { checkLength, checkSize, lengthOnPaper } from '#paper/lengths';
import { plural } from '#paper/words';
import { partName } from './naming.ts';
import { countedNames, nounOf } from './top-names.ts';
import type { TopPart } from './top-part.ts';
import { topPart } from './top-part.ts';

export const rowParts = (plan: QuiltPlan): readonly TopPart[] => [
  topPart({
    heading: 'Rows',
    lead: [`${rowsText(plan)}${arrowText(plan)}`],
    table: rowTable(plan),
  }),
  topPart({
    heading: 'Joining the rows',
    lead: [...(plan.top.set.rows.length > 1 ? [pinText] : []), ...(isJoinedAlike(plan) ? alikeLines(plan) : [])],
    list: isJoinedAlike(plan) ? [] : joinLines(plan),
  }),
  ...(isSlanted(plan) ? [cornersPart(plan)] : []),
];

/** How every row is sewn. */
export const rowsText = (plan: QuiltPlan): string =>
  isSlanted(plan)
    ? `The rows run from lower left to upper right, and are numbered from the upper left corner. Sew each from its lower end to its upper end.${sideText(plan)}`
    : 'Sew each row from left to right.';

export const pinText = 'Pin where seams meet; where their allowances lie in opposite directions, they lock.';

/** Level rows that are joined alike have what the top measures with each of them in the table. */
const rowTable = (plan: QuiltPlan): TopPart['table'] => {
  const rows = plan.top.set.rows.map((_, row) => rowLine(plan, row));
  if (isSlanted(plan) || !isJoinedAlike(plan))
    return { head: ['Row', 'Holds', 'Press', 'Measures'], shares: [0, 1, 0, 0], rows };
  const joined = joinSteps(plan).map(({ unfinished }) => checkSize(unfinished, plan.quilt));
  return {
    head: ['Row', 'Holds', 'Press', 'Measures', 'With the rows above'],
    shares: [0, 1, 0, 0, 0],
    rows: rows.map((row, i) => [...row, i === 0 ? '' : (joined[i - 1] ?? '')]),
  };
};

const joinSteps = (plan: QuiltPlan): readonly TopStep[] => plan.top.steps.filter(({ stage }) => stage === 'rows');

/** Whether each row is added below those before it, and every seam pressed the same way: then that is said once. */
const isJoinedAlike = (plan: QuiltPlan): boolean => {
  const steps = joinSteps(plan);
  return (
    steps.length > 1 &&
    steps.length === plan.top.set.rows.length - 1 &&
    steps.every((step, i) => step.pressTo === steps[0]?.pressTo && rowName(plan, step) === `row ${i + 2}`)
  );
};

const alikeLines = (plan: QuiltPlan): readonly string[] => {
  const [first] = joinSteps(plan);
  if (first === undefined) return [];
  const order = isSlanted(plan)
    ? 'one after another, in the order of their numbers'
    : 'one after another, from the top';
  return [
    `Add the rows ${order}: press each seam ${wayText(plan, first)}.`,
    ...(isSlanted(plan) ? [] : [`The last column says what must be measured with each row on. ${wholeText(plan)}`]),
  ];
};

/** What the rows measure when all are joined. */
const wholeText = (plan: QuiltPlan): string => {
  const last = joinSteps(plan).at(-1);
  const size = last === undefined ? '' : checkSize(last.unfinished, plan.quilt);
  return plan.top.set.borders.length > 0 ? `The middle measures ${size} before borders.` : `The top measures ${size}.`;
};

/** How a setting triangle, larger than the cell it fills, is laid against its neighbour. */
const sideText = (plan: QuiltPlan): string =>
  plan.top.pieces.some(({ role }) => role === 'side-triangle')
    ? ' Lay the square corner of a side triangle even with the corner of its neighbour toward the longer row beside it; its point stands out past the other edge, and is cut off when the row is pressed.'
    : '';

const arrowText = (plan: QuiltPlan): string =>
  plan.top.set.rows.some((_, row) => rowPressOf(plan, row) !== null)
    ? ' An arrow beside a row shows the way all its seams are pressed.'
    : '';

/** For readers who listen: the rows in words. */
export const rowsAlt = (plan: QuiltPlan): string =>
  plan.top.set.rows
    .slice(0, 40)
    .map(
      (row, index) =>
        `Row ${index + 1}: ${holds(plan, index)}${row.kind === 'sashes' ? ', between rows of blocks' : ''}.`,
    )
    .join(' ');

/** "3 × Nine patch, 2 × Shoo fly, 4 sashes": blocks by their names where there are several to tell apart. */
const holds = (plan: QuiltPlan, row: number): string => {
  const parts = plan.top.set.rows[row]?.parts ?? [];
  const titles = parts.flatMap((part) => {
    const placed = 'block' in part ? plan.top.set.placed[part.block] : undefined;
    return placed === undefined ? [] : [entryTitle(plan, placed)];
  });
  if (plan.blocks.length < 2 || titles.length === 0) return countedNames(parts.map((part) => nounOf(plan, part)));
  const named = [...new Set(titles)].map((title) => `${titles.filter((one) => one === title).length} × ${title}`);
  const strips = parts.filter((part) => !('block' in part)).map((part) => nounOf(plan, part));
  return [...named, ...(strips.length === 0 ? [] : [countedNames(strips)])].join(', ');
};

const rowLine = (plan: QuiltPlan, row: number): readonly string[] => {
  const steps = rowStepsOf(plan, row);
  const before = sameRowBefore(plan, row);
  const last = steps.at(-1);
  return [
    String(row + 1),
    before === null ? holds(plan, row) : `${holds(plan, row)}, made like row ${before + 1}`,
    last === undefined ? 'no seams' : rowPressText(plan, row, steps),
    last === undefined ? '' : rowSize(plan, last),
  ];
};

/** A slanted row ends in triangles that are trimmed later: only its width can be measured. */
export const rowSize = (plan: QuiltPlan, last: TopStep): string =>
  isSlanted(plan) ? `${checkLength(last.unfinished[1], plan.quilt)} wide` : checkSize(last.unfinished, plan.quilt);

const rowPressText = (plan: QuiltPlan, row: number, steps: readonly TopStep[]): string => {
  const way = rowPressOf(plan, row);
  if (way !== null) return rowWayText(plan, way);
  if (steps.every(({ pressTo }) => pressTo === 'open')) return 'open';
  const roles = new Set(steps.map((step) => pressedRole(plan, step)));
  const [role] = roles;
  return roles.size === 1 && role !== undefined ? `toward the ${plural(role)}` : inTurn(plan, steps);
};

/** What lies next to the seam on the side that it is pressed toward. */
export const pressedRole = (plan: QuiltPlan, step: TopStep): string | undefined => {
  if (step.pressTo === 'open') return undefined;
  const things = step.things[step.pressTo];
  const thing = step.pressTo === 0 ? things.at(-1) : things[0];
  return thing === undefined ? undefined : nounOf(plan, thing);
};

const inTurn = (plan: QuiltPlan, steps: readonly TopStep[]): string => {
  const words = isSlanted(plan)
    ? { left: 'down', right: 'up', open: 'open' }
    : { left: 'left', right: 'right', open: 'open' };
  return steps.map((step) => words[pressWay(step)]).join(', ');
};

/** Seen along the row. */
export const pressWay = ({ pressTo, side }: TopStep): 'left' | 'right' | 'open' => {
  if (pressTo === 'open') return 'open';
  return (pressTo === 1) === (side === 'right') ? 'right' : 'left';
};

/** The way of a row's seams: "to the left", "to the upper end", "open". */
export const rowWayText = (plan: QuiltPlan, way: 'left' | 'right' | 'open'): string => {
  if (way === 'open') return 'open';
  if (isSlanted(plan)) return way === 'right' ? 'to the upper end' : 'to the lower end';
  return `to the ${way}`;
};

const joinLines = (plan: QuiltPlan): readonly string[] => {
  const rows = joinSteps(plan);
  if (rows.length === 0) {
    return [
      isSlanted(plan)
        ? 'There is one row: the corners go onto it.'
        : 'The top has one row: it is the middle of the quilt.',
    ];
  }
  if (isSlanted(plan)) return rows.map((step) => `Add ${rowName(plan, step)}: press the seam ${wayText(plan, step)}.`);
  return [
    ...rows.map(
      (step) =>
        `Add ${rowName(plan, step)}: press the seam ${wayText(plan, step)}; it measures ${checkSize(step.unfinished, plan.quilt)}.`,
    ),
    wholeText(plan),
  ];
};

export const wayText = (plan: QuiltPlan, { pressTo }: TopStep): string => {
  if (pressTo === 'open') return 'open';
  if (isSlanted(plan)) return pressTo === 1 ? 'toward the new row' : 'toward the rows that are joined already';
  return pressTo === 1 ? 'down, toward the new row' : 'up, toward the rows above';
};

/** The row that a step adds, by the things it holds. */
export const rowName = (plan: QuiltPlan, step: TopStep): string => {
  const thing = step.things[1][0];
  if (thing === undefined) return partName(step.join[1]);
  const index = plan.top.set.rows.findIndex((row) =>
    row.parts.some((part) =>
      'block' in part ? 'block' in thing && part.block === thing.block : 'strip' in thing && part.strip === thing.strip,
    ),
  );
  return index < 0 ? partName(step.join[1]) : `row ${index + 1}`;
};

const cornersPart = (plan: QuiltPlan): TopPart => {
  const steps = plan.top.steps.filter(({ stage }) => stage === 'corner');
  return topPart({
    heading: 'Corners',
    lead: steps.length === 0 ? [] : [foldCornerText],
    list: [
      ...steps.map((step) => `Add the corner triangle at the ${cornerName(plan, step)}: press ${cornerPress(step)}.`),
      ...trimTexts(plan),
    ],
  });
};

export const foldCornerText =
  'Fold each corner triangle in half to find the middle of its long side, and pin it to the middle of the edge.';

/** When all corners are on. */
export const trimTexts = (plan: QuiltPlan): readonly string[] => {
  const { unit, seam, top } = plan.quilt;
  const last = plan.top.steps.findLast(({ stage }) => stage === 'corner');
  if (last === undefined) return [];
  const float = top.set === 'on-point' ? toNumber(top.float) : 0;
  return [
    `The setting triangles are cut ${float > 0 ? `at least ${lengthOnPaper(float, unit)}` : 'a little'} larger than they must be. Trim the four edges straight and square, so that the middle measures ${checkSize(last.unfinished, plan.quilt)}: an allowance of ${lengthOnPaper(toNumber(seam), unit)} stays outside the finished edge.`,
    'The edges are on the straight grain, but the seams in them are not: handle them as little as you can until a border or the binding holds them.',
  ];
};

export const cornerPress = ({ pressTo }: TopStep): string =>
  pressTo === 'open' ? 'the seam open' : pressTo === 1 ? 'toward the triangle' : 'away from the triangle';

export const cornerName = (plan: QuiltPlan, step: TopStep): string => {
  const thing = step.things[1][0];
  const rect = thing !== undefined && 'strip' in thing ? plan.top.set.strips[thing.strip]?.rect : undefined;
  if (rect === undefined) return partName(step.join[1]);
  const { middle } = plan.top.set;
  const upper = rect.y + rect.height / 2 < middle.y + middle.height / 2 ? 'upper' : 'lower';
  return `${upper} ${rect.x + rect.width / 2 < middle.x + middle.width / 2 ? 'left' : 'right'}`;
};
