// The sections of a sampler: which are sewn first, what each is joined from and in which order.
import type { QuiltPlan, TopStep } from '#craft';
import type { Assembly } from '#craft/setting';
import { entryTitle } from '#paper/cutting';
import { checkSize } from '#paper/lengths';
import { pieceOfStrip, roleNouns } from './top-names.ts';
import type { TopPart } from './top-part.ts';
import { topPart } from './top-part.ts';

export const sectionParts = (plan: QuiltPlan): readonly TopPart[] => [
  topPart({
    heading: 'Sections',
    lead: [
      'Sew the sections in the order of this table: those that lie inside others come first. Every seam is straight, and runs from edge to edge of its section.',
    ],
    table: {
      head: ['Section', 'Join, in this order', 'Press', 'Measures'],
      shares: [0, 1.6, 1, 0],
      rows: sectionsInOrder(plan.top.set.assembly).map((section) => sectionLine(plan, section)),
    },
  }),
];

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
  const { thing } = part;
  if ('strip' in thing) {
    const { role, label } = pieceOfStrip(plan, thing.strip);
    return `${roleNouns[role]} ${label}`;
  }
  const placed = plan.top.set.placed[thing.block];
  return placed === undefined ? 'block' : entryTitle(plan, placed);
};

/** A section that is made like an earlier one has that one's steps. */
const stepsOf = (plan: QuiltPlan, section: Section): readonly TopStep[] =>
  plan.top.steps.filter(({ stage, of }) => stage === 'section' && of === section.of);

const pressText = (section: Section, steps: readonly TopStep[]): string => {
  const ways = steps.map(({ pressTo }) => wayOf(section, pressTo));
  const [first] = ways;
  return ways.every((way) => way === first) ? (first ?? '') : ways.map((way, i) => `${i + 1} ${way}`).join(', ');
};

const wayOf = ({ run }: Section, pressTo: TopStep['pressTo']): string => {
  if (pressTo === 'open') return 'open';
  if (run === 'across') return pressTo === 1 ? 'right' : 'left';
  return pressTo === 1 ? 'down' : 'up';
};
