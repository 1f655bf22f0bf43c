// The quilt without its colours: as the grey of each cloth, and in line.
import type { QuiltPlan } from '#craft';
import { type ClothSigns, type Look, signsAs } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { drawBlock, drawQuilt } from '#paper/drawing';
import { checkSize } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { quiltAlt } from './cover.ts';
import { columnPt, measurePt, tallestPt } from './measure.ts';

interface LooksOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

export interface QuiltLooks {
  readonly line: Picture;
  readonly grey: Picture;
  /** Each cloth with its hatch: for pages printed in grey. */
  readonly hatched: Picture;
  /** All three below each other, as wide as the page. */
  readonly isWide: boolean;
}

/** All on one page: the lines large, the other two below them, side by side unless the quilt is wide. */
export const quiltLooks = (of: LooksOf): QuiltLooks => {
  const alt = altOf(of.plan);
  const { width, height } = of.plan.top.set;
  const isWide = width >= 2 * height;
  const [large, small] = isWide
    ? ([wideLookPt, wideLookPt] as const)
    : ([
        [measurePt, 320],
        [columnPt, 190],
      ] as const);
  return {
    line: shown(
      of.album,
      'quilt-line',
      drawQuilt({
        ...looking(of, 'line'),
        fitPt: large,
        fill: 'colour',
        alt: `${alt} In line alone.`,
      }),
    ),
    grey: shown(
      of.album,
      'quilt-grey',
      drawQuilt({
        ...looking(of, 'grey'),
        fitPt: small,
        fill: 'colour',
        alt: `${alt} Each cloth in the grey of its own lightness.`,
      }),
    ),
    hatched: shown(
      of.album,
      'quilt-hatched',
      drawQuilt({ ...of, fitPt: small, fill: 'hatched', alt: `${alt} Each cloth with its hatch.` }),
    ),
    isWide,
  };
};

/** A third of a Letter page, less the words below it. */
const wideLookPt = [measurePt, 165] as const;

export interface ColouringPage {
  readonly quilt: Picture;
  /** One for each block that has patches, titled. */
  readonly blocks: readonly { readonly title: string; readonly picture: Picture }[];
}

/** The quilt as large as the page, and each block once, in line. */
export const colouringPage = (of: LooksOf): ColouringPage => ({
  quilt: shown(
    of.album,
    'colouring-quilt',
    drawQuilt({
      ...looking(of, 'line'),
      fitPt: [measurePt, tallestPt],
      fill: 'colour',
      alt: `${altOf(of.plan)} In line alone, to colour in.`,
    }),
  ),
  blocks: blocksOnce(of.plan).map((block, i, all) => {
    const title = entryTitle(of.plan, { block: block.id, colouring: 'default', mirror: false });
    return {
      title,
      picture: shown(
        of.album,
        `colouring-block-${i + 1}`,
        drawBlock({
          ...looking(of, 'line'),
          block,
          fitPt: blockRoom(all.length),
          alt: `${title} in line alone, to colour in.`,
        }),
      ),
    };
  }),
});

/** One alone takes the page, two share it one above the other, more stand two abreast. */
const blockRoom = (blocks: number): readonly [number, number] =>
  blocks === 1 ? [measurePt, measurePt] : blocks === 2 ? [measurePt, 280] : [columnPt, columnPt];

/** Edges to colour between are drawn stronger than those that part two greys. */
const linePt = 0.8;

const looking = ({ plan, signs }: LooksOf, look: Look) => ({
  plan,
  signs: signsAs(signs, look),
  ...(look === 'line' ? { edgePt: linePt } : {}),
});

const altOf = (plan: QuiltPlan): string =>
  quiltAlt(plan, checkSize([plan.top.set.width, plan.top.set.height], plan.quilt));

/** One entry a block: its colourings and its mirror image have the same lines. */
const blocksOnce = (plan: QuiltPlan) =>
  plan.blocks.filter(
    ({ id, patches }, i) => patches.length > 0 && plan.blocks.findIndex((other) => other.id === id) === i,
  );
