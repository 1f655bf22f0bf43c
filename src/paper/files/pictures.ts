// Pictures of a quilt and of each of its blocks, by the names of their files: in colour, in grey to judge values by, as lines to
// colour in.
import type { BlockPlan, QuiltPlan } from '#craft';
import { clothSignsFor, type Look, signsAs } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { asFirstPlaced, type Drawing, drawBlock, drawQuilt } from '#paper/drawing';
import { quiltAlt } from '#paper/pages';
import { sizeText } from '#paper/words';

/** A picture in any look. */
export interface PictureOf {
  /** Of its file, without an ending. */
  readonly name: (look: Look) => string;
  /** What it shows, as the pages name it. */
  readonly title: string;
  readonly draw: (look: Look) => Drawing;
}

const picturePt = [720, 720] as const;
/** A line to colour up to is seen before it is filled. */
const linePt = 0.8;

/** The quilt first, then its blocks in the order of the plan, each in each colouring and mirroring. */
export const picturesOf = (plan: QuiltPlan): readonly PictureOf[] => {
  const names = new Set<string>();
  return [
    pictureOfQuilt(plan),
    ...plan.blocks.map((block) => {
      const name = freeName(fileName(block), names);
      names.add(name.toLowerCase());
      return pictureOfBlock({ plan, block, name });
    }),
  ];
};

const pictureOfQuilt = (plan: QuiltPlan): PictureOf => {
  const alt = quiltAlt(plan, sizeText([plan.top.set.width, plan.top.set.height], plan.quilt.unit));
  return {
    name: named('quilt'),
    title: 'The quilt',
    draw: (look) =>
      drawQuilt({ plan, ...inLook(plan, look), fitPt: picturePt, fill: 'colour', alt: `${alt}${lookWords[look]}` }),
  };
};

export const pictureOfBlock = (of: {
  readonly plan: QuiltPlan;
  readonly block: BlockPlan;
  readonly name: string;
}): PictureOf => {
  const { plan, block, name } = of;
  const title = entryTitle(plan, { block: block.id, colouring: block.colouring, mirror: block.mirror });
  const alt = `${title}, ${sizeText(block.finished, plan.quilt.unit)} finished.`;
  return {
    name: named(name),
    title,
    draw: (look) =>
      drawBlock({
        block: asFirstPlaced(plan, block),
        ...inLook(plan, look),
        fitPt: picturePt,
        alt: `${alt}${lookWords[look]}`,
      }),
  };
};

const named =
  (name: string) =>
  (look: Look): string =>
    `${name}${lookEndings[look]}`;

const inLook = (plan: QuiltPlan, look: Look) => ({
  signs: signsAs(clothSignsFor(plan), look),
  ...(look === 'line' ? { edgePt: linePt } : {}),
});

const lookWords: Record<Look, string> = {
  colour: '',
  grey: ' In grey, each cloth as light as it looks.',
  line: ' Lines alone, to colour in.',
};

const lookEndings: Record<Look, string> = { colour: '', grey: '-grey', line: '-line' };

/** "block-cabin", "block-cabin-evening", "block-cabin-mirrored": spaces and dots become hyphens. */
const fileName = ({ id, colouring, mirror }: BlockPlan): string =>
  ['block', id, ...(colouring === 'default' ? [] : [colouring]), ...(mirror ? ['mirrored'] : [])]
    .join('-')
    .replace(/[ .]+/g, '-');

/** Some file systems take "A" and "a" for one name. */
const freeName = (wished: string, taken: ReadonlySet<string>): string => {
  let name = wished;
  for (let n = 2; taken.has(name.toLowerCase()); n++) name = `${wished}-${n}`;
  return name;
};
