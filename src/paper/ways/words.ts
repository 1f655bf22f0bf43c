// The units of a quilt, the ways that are open to them, and what one choice of ways has over another, in words.
import type { QuiltPlan } from '#craft';
import type { Quilt } from '#craft/design';
import type { Front, FrontPoint, UnitGroup, WayOption } from '#craft/front';
import type { Unit } from '#craft/measure';
import { capital, inWords, lengthText, reasonText, sizeText, unitsText, unitText, wayText } from '#paper/words';

/** "48 flying geese, 4 × 2 in, of Mist and Slate". */
export const groupText = (plan: QuiltPlan, { unit, size, fabrics, count }: UnitGroup): string => {
  const noun = count === 1 ? unitText(unit) : unitsText(unit);
  const names = fabrics.map((id) => plan.quilt.fabrics.find((fabric) => fabric.id === id)?.name ?? id);
  const measure =
    Math.abs(size[0] - size[1]) < 1e-9 ? lengthText(size[0], plan.quilt.unit) : sizeText(size, plan.quilt.unit);
  return `${count} ${noun}, ${measure}, of ${inWords(names)}`;
};

/** "four at a time, trimmed". */
export const optionText = ({ way, trimmed }: Pick<WayOption, 'way' | 'trimmed'>): string =>
  `${wayText(way)}${trimmed ? ', trimmed' : ''}`;

/** "Two at a time: the print would …". */
export const closedTexts = ({ closed }: UnitGroup): readonly string[] =>
  closed.map(({ way, why }) => `${capital(wayText(way))} is not open: ${reasonText(why)}.`);

/** How near the side of a unit comes to its size, more often than not. */
export const trueText = (deviation: number, unit: Unit): string => `± ${deviation.toFixed(3)} ${unit}`;

/** What a figure of cloth is called: layouts for the least work may come out longer than after a short search. */
export const clothHeading = (layout: Quilt['layout']): string => (layout === 'easy' ? 'Cloth' : 'Cloth, at most');

/** Hours from one on: "4 h 10 min". */
export const hoursText = (minutes: number): string => {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
};

/** What a choice has more or less of than the quilt as it is: "4¼ in less cloth", "1 h less". Empty where all is the same. */
export const differenceTexts = (of: {
  readonly plan: QuiltPlan;
  readonly now: FrontPoint;
  readonly point: FrontPoint;
}): readonly string[] => {
  const { now, point } = of;
  const { unit, currency } = of.plan.quilt;
  const cloth = point.cloth - now.cloth;
  const minutes = point.minutes - now.minutes;
  const deviation = point.deviation - now.deviation;
  const cost = now.cost === null || point.cost === null ? 0 : point.cost - now.cost;
  return [
    ...(Math.abs(cloth) < 1e-6 ? [] : [`${lengthText(Math.abs(cloth), unit)} ${cloth > 0 ? 'more' : 'less'} cloth`]),
    ...(minutes === 0 ? [] : [`${hoursText(Math.abs(minutes))} ${minutes > 0 ? 'more' : 'less'}`]),
    ...(trueText(point.deviation, unit) === trueText(now.deviation, unit)
      ? []
      : [deviation > 0 ? 'less true' : 'truer']),
    ...(Math.abs(cost) < 0.005
      ? []
      : [`${Math.abs(cost).toFixed(2)}${currency === '' ? '' : ` ${currency}`} ${cost > 0 ? 'dearer' : 'cheaper'}`]),
  ];
};

/** What the front is made of, and what no choice can beat. */
export const wholeText = (plan: Pick<QuiltPlan, 'quilt'>, front: Front): string => {
  const { tried, choices, isWhole } = front;
  if (choices === 1) return 'All there is was planned.';
  const all = choices > 1e6 ? 'more than a million' : choices;
  const planned = isWhole
    ? `All ${all} choices were planned: none takes less cloth or less time, or is truer, than the best of them.`
    : `${tried} of ${all} choices were planned, the likeliest first.`;
  return [planned, ...(isWhole ? [] : provenTexts(front)), ...clothTexts(plan, front)].join(' ');
};

const provenTexts = ({ proven, least }: Front): readonly string[] => {
  const ends = [
    ...(proven.includes('cloth') ? ['takes less cloth than the least here'] : []),
    ...(proven.includes('minutes') ? ['takes less time than the quickest'] : []),
    ...(proven.includes('trueness') ? ['is truer than the truest'] : []),
  ];
  return [
    ...(ends.length === 0 ? [] : [`It is proven that no choice ${ends.join(', and none ')}.`]),
    ...(least.minutes === null || proven.includes('minutes')
      ? []
      : [`No choice takes less time than ${hoursText(least.minutes)}.`]),
  ];
};

/** Rounded down to what a ruler shows at a glance. */
const clothTexts = ({ quilt }: Pick<QuiltPlan, 'quilt'>, { points, least }: Front): readonly string[] => {
  const best = Math.min(...points.map(({ cloth }) => cloth));
  if (least.cloth === null || best <= least.cloth + 1e-9) return [];
  const parts = quilt.unit === 'in' ? 4 : 1;
  const bound = Math.floor(least.cloth * parts + 1e-9) / parts;
  return [
    `However its strips are laid, no choice takes less than ${lengthText(bound, quilt.unit)} of cloth: the least here can be undercut by ${lengthText(best - bound, quilt.unit)} at most.`,
  ];
};
