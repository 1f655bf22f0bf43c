// What stands at the top of a handout: which lesson it is, what to make, from which cloths.
import type { QuiltPlan } from '#craft';
import { clothSignsFor } from '#paper/cloth';
import { entryTitle, type Hand } from '#paper/cutting';
import { drawQuilt } from '#paper/drawing';
import { sizeOnPaper } from '#paper/lengths';
import { inWords } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { handFacts } from './hand-words.ts';

export interface HandoutHead {
  readonly title: string;
  readonly quilt: Picture;
  readonly facts: readonly { readonly name: string; readonly value: string }[];
}

/** Blocks to sew, in the order of the pattern: one lesson each. */
export const lessonsOf = (plan: QuiltPlan): readonly string[] => [
  ...new Set(plan.blocks.flatMap(({ id, patches }) => (patches.length === 0 ? [] : [id]))),
];

/** "Week 2: Shoo fly". */
export const lessonTitle = (plan: QuiltPlan, block: string): string =>
  `Week ${lessonsOf(plan).indexOf(block) + 1}: ${blockTitle(plan, block)}`;

const blockTitle = (plan: QuiltPlan, block: string): string =>
  entryTitle(plan, { block, colouring: 'default', mirror: false });

export const handoutHead = (of: {
  readonly plan: QuiltPlan;
  readonly own: QuiltPlan;
  readonly album: Album;
  readonly hand: Hand;
}): HandoutHead => {
  const { plan, own, album } = of;
  const [first] = own.blocks;
  if (first === undefined) throw new Error('a handout of no block');
  const { unit } = plan.quilt;
  const lesson = lessonsOf(plan).indexOf(first.id) + 1;
  const title = blockTitle(plan, first.id);
  const count = own.blocks.reduce((sum, one) => sum + one.count, 0);
  const signs = clothSignsFor(plan);
  const cloths = own.fabrics.map(({ id }) => `${signs.get(id)?.letter} ${signs.get(id)?.name}`);
  return {
    title: lessonTitle(plan, first.id),
    quilt: shown(
      album,
      'quilt',
      drawQuilt({
        plan,
        signs,
        fitPt: [170, 170],
        fill: 'colour',
        alt: `The whole quilt, in which ${title} stands ${count === 1 ? 'once' : `${count} times`}.`,
      }),
    ),
    facts: [
      { name: 'Lesson', value: `${lesson} of ${lessonsOf(plan).length}` },
      { name: 'Make', value: `${count}, each ${sizeOnPaper(first.unfinished, unit)} before it is set` },
      { name: 'Cloth', value: inWords(cloths) },
      {
        name: 'Seams',
        value: `${own.blocks.reduce((sum, one) => sum + one.count * one.steps.reduce((all, s) => all + s.perBlock, 0), 0)}`,
      },
      ...handFacts(of.hand),
    ],
  };
};
