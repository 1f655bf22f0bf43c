// What ways to make are worth choosing, as plain text of 80 columns and as JSON values.
import type { QuiltPlan } from '#craft';
import { type Front, type FrontPoint, methodsFor, mostTold, toldPoints, type WayOption } from '#craft/front';
import { toNumber } from '#ground/exact';
import { columns, heading, wrapped } from '#paper/summary';
import { estimateText, inWords, lengthText, unitsText } from '#paper/words';
import { closedTexts, differenceTexts, groupText, hoursText, optionText, trueText, wholeText } from './words.ts';

/** The choices that are listed, numbered from 1. */
export const listedPoints = ({ points }: Front): readonly FrontPoint[] => toldPoints(points, mostTold);

export const waysText = (plan: QuiltPlan, front: Front): string => {
  const { groups, points, now } = front;
  if (groups.length === 0)
    return [
      ...wrapped(plan.quilt.title, ''),
      '',
      ...wrapped('No unit of this quilt can be made in more than one way.', ''),
      '',
    ].join('\n');
  const listed = listedPoints(front);
  const left = points.length - listed.length;
  return [
    ...wrapped(plan.quilt.title, ''),
    '',
    heading('Units'),
    ...groups.flatMap((group) => [
      ...wrapped(groupText(plan, group), '  '),
      ...wrapped(group.options.map(optionText).join(' · '), '    '),
      ...closedTexts(group).flatMap((text) => wrapped(text, '    ')),
    ]),
    '',
    heading('As it is'),
    ...columns([['', ...figures(plan, now), waysOf(front, now)]]),
    '',
    heading('Worth choosing'),
    ...columns(listed.map((point, i) => [String(i + 1), ...figures(plan, point), pointText(plan, front, point)])),
    ...(left > 0 ? wrapped(`${left} more lie between these; --json lists all.`, '  ') : []),
    ...wrapped(
      `${clothText(plan)}; minutes are ${estimateText(plan.quilt)}; the last figure is how near the side of a unit comes to its size in two of three. ${wholeText(plan, front)}`,
      '  ',
    ),
    '',
  ].join('\n');
};

const clothText = ({ quilt }: QuiltPlan): string =>
  quilt.layout === 'easy'
    ? 'Cloth is the length of all layouts after a short search, laid for the least work it may be more or less'
    : 'Cloth is the length of all layouts after a short search: searched longer it is as much at most';

const figures = ({ quilt }: QuiltPlan, { cloth, minutes, deviation, cost }: FrontPoint): readonly string[] => [
  lengthText(cloth, quilt.unit),
  hoursText(minutes),
  trueText(deviation, quilt.unit),
  ...(cost === null ? [] : [cost.toFixed(2)]),
];

const pointText = (plan: QuiltPlan, front: Front, point: FrontPoint): string => {
  const by = differenceTexts({ plan, now: front.now, point });
  return `${by.length === 0 ? 'as it is' : by.join(', ')}: ${waysOf(front, point)}`;
};

/** "flying geese four at a time; half-squares eight at a time"; groups that are named alike once. */
const waysOf = ({ groups }: Front, { choice }: FrontPoint): string => {
  const ways = groups.map(
    ({ unit, options }, i) => `${unitsText(unit)} ${optionText(options[choice[i] as number] as WayOption)}`,
  );
  const counts = new Map<string, number>();
  for (const way of ways) counts.set(way, (counts.get(way) ?? 0) + 1);
  return inWords([...counts].map(([way, count]) => (count === 1 ? way : `${way} (${count} kinds)`)));
};

/** Lengths are plain doubles in the document's unit. */
export const toWaysFile = (plan: QuiltPlan, front: Front): unknown => ({
  format: 'seamstead-ways',
  version: 1,
  title: plan.quilt.title,
  unit: plan.quilt.unit,
  units: front.groups.map(({ unit, size, fabrics, count, blocks, options, closed }) => ({
    unit,
    size,
    fabrics,
    count,
    blocks,
    ways: options.map(({ way, trimmed, minutes, deviation }) => ({ way, trimmed, minutes, deviation })),
    closed,
  })),
  now: pointEntry(front, front.now),
  front: front.points.map((point) => pointEntry(front, point)),
  tried: front.tried,
  choices: front.choices,
  whole: front.isWhole,
  proven: front.proven,
  least: front.least,
});

const pointEntry = (front: Front, { choice, cloth, minutes, deviation, cost }: FrontPoint): unknown => ({
  cloth,
  minutes,
  deviation,
  cost,
  ways: front.groups.map(({ options }, i) => optionText(options[choice[i] as number] as WayOption)),
  methods: methodsFor(front.groups, choice).map(({ unit, size, fabrics, way, trimmed }) => ({
    unit,
    size: size?.map(toNumber),
    fabrics,
    way,
    trimmed,
  })),
});
