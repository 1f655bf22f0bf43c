// The sections of a sampler: which are sewn first, what each is joined from and in which order.
import type { QuiltPlan, TopStep } from '#craft';
import { type Assembly, type TopThing, thingsOf } from '#craft/setting';
import { sewnAt } from '#paper/drawing';
import { checkSize } from '#paper/lengths';
import { pieceOfStrip, thingText } from './top-names.ts';
import type { TopPart } from './top-part.ts';
import { topPart } from './top-part.ts';

export const sectionParts = (plan: QuiltPlan): readonly TopPart[] => [
  topPart({
    heading: 'Sections',
    lead: [
      `Sew the sections in the order of this table: those that lie inside others come first. ${sectionSeamsText} Press has the way of each seam in turn.`,
    ],
    table: {
      head: ['Section', 'Join, in this order', 'Press', 'Measures'],
      shares: [0, 1.6, 1, 0],
      rows: sectionsInOrder(plan.top.set.assembly).map((section) => sectionLine(plan, section)),
    },
  }),
];

export const sectionSeamsText = 'Every seam is straight, and runs from edge to edge of its section.';

/** For readers who listen. */
export const sectionsAlt = (plan: QuiltPlan): string =>
  sectionsInOrder(plan.top.set.assembly)
    .slice(0, 40)
    .map((section) => `${sectionName(section)}, ${wayWords[section.run]}: ${partsText(plan, section)}.`)
    .join(' ');

type Section = Extract<Assembly, { readonly run: string }>;

/** Inner ones first, as they are sewn. */
const sectionsInOrder = (assembly: Assembly): readonly Section[] =>
  'run' in assembly ? [...assembly.parts.flatMap(sectionsInOrder), assembly] : [];

const wayWords = { across: 'from left to right', down: 'from the top down' } as const;

const sectionName = ({ of }: Section): string => (of === 0 ? 'The middle' : `Section ${of}`);

const sectionLine = (plan: QuiltPlan, section: Section): readonly string[] => {
  const steps = stepsOf(plan, section);
  const last = steps.at(-1);
  return [
    section.of === 0 ? 'Middle' : String(section.of),
    `${wayWords[section.run]}: ${partsText(plan, section)}`,
    last === undefined ? 'no seams' : pressText(section, steps),
    last === undefined ? '' : checkSize(last.unfinished, plan.quilt),
  ];
};

const partsText = (plan: QuiltPlan, section: Section): string =>
  section.parts.map((part) => partText(plan, part)).join('; ');

const partText = (plan: QuiltPlan, part: Assembly): string => {
  if ('run' in part) return `section ${part.of}`;
  if (!('thing' in part)) throw new Error('a round in a top of sections');
  return thingText(plan, part.thing);
};

/** The seams of a section in turn: a section that is begun or made like an earlier one shares that one's steps. */
const stepsOf = (plan: QuiltPlan, section: Section): readonly TopStep[] => {
  const steps: TopStep[] = [];
  let things: readonly TopThing[] = [];
  for (const part of section.parts) {
    const next = thingsOf(part);
    if (things.length > 0) steps.push(stepFor(plan, { first: things, second: next, run: section.run }));
    things = [...things, ...next];
  }
  return steps;
};

const stepFor = (
  plan: QuiltPlan,
  of: { readonly first: readonly TopThing[]; readonly second: readonly TopThing[]; readonly run: Section['run'] },
): TopStep => {
  const side = of.run === 'across' ? 'right' : 'bottom';
  const made = [signOf(plan, of.first), signOf(plan, of.second)];
  const step = plan.top.steps.find(
    (one) =>
      one.stage === 'section' &&
      one.side === side &&
      signOf(plan, one.things[0]) === made[0] &&
      signOf(plan, one.things[1]) === made[1],
  );
  if (step === undefined) throw new Error('a section of the top has a seam without a step');
  return step;
};

/** Things of one sign are made and lie alike. */
const signOf = (plan: QuiltPlan, things: readonly TopThing[]): string =>
  JSON.stringify(things.map((thing) => thingSign(plan, thing)));

const thingSign = (plan: QuiltPlan, thing: TopThing): readonly (string | number | boolean)[] => {
  if ('block' in thing) {
    const { block, colouring, mirror, turn } = sewnAt(plan, thing.block);
    return [block, colouring, mirror, turn, plan.top.pressing.variants[thing.block] ?? 0];
  }
  const rect = plan.top.set.strips[thing.strip]?.rect;
  return rect === undefined
    ? []
    : [pieceOfStrip(plan, thing.strip).label, rect.width.toFixed(6), rect.height.toFixed(6)];
};

const pressText = (section: Section, steps: readonly TopStep[]): string => {
  const ways = steps.map(({ pressTo }) => wayOf(section.run, pressTo));
  const [first] = ways;
  return ways.every((way) => way === first) ? (first ?? '') : ways.map((way, i) => `${i + 1} ${way}`).join(', ');
};

export const wayOf = (run: Section['run'], pressTo: TopStep['pressTo']): string => {
  if (pressTo === 'open') return 'open';
  if (run === 'across') return pressTo === 1 ? 'right' : 'left';
  return pressTo === 1 ? 'down' : 'up';
};
