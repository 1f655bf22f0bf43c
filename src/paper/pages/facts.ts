// All that the pages show, as one JSON value: the Typst text holds the form alone, so that nothing a maker
// writes is ever read as code.
import type { QuiltPlan } from '#craft';
import type { PurchaseChange } from '#craft/shopping';
import { toNumber } from '#ground/exact';
import type { ClothSigns } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { figureOnPaper, lengthOnPaper } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { type Amounts, amountsOf } from './amounts.ts';
import type { BlockPages } from './block.ts';
import { blockPages } from './block.ts';
import { cautions } from './cautions.ts';
import { type ChainsPage, chainsPage } from './chains.ts';
import { type Chapter, usualChapters } from './chapters.ts';
import type { ClothToBuy } from './cloth.ts';
import { clothToBuy, swatchesFor, valueLadder } from './cloth.ts';
import { type ColourwayPages, colourwayPages } from './colourways.ts';
import { type Correction, correctionsOf } from './corrections.ts';
import type { Cover } from './cover.ts';
import { coverOf } from './cover.ts';
import type { ClothCutting } from './cutting.ts';
import { cuttingCharts } from './cutting.ts';
import { finishParts } from './finish.ts';
import type { FinishPart } from './finish-part.ts';
import { type FoundationBlock, foundationPages } from './foundations.ts';
import { glossaryOf, type Term } from './glossary.ts';
import { cutAcross } from './hand-words.ts';
import type { HandoutHead } from './handout-head.ts';
import { totalLines } from './money.ts';
import { noticesOf } from './notices.ts';
import { notionsOf } from './notions.ts';
import { type KeyedBlock, pieceKey } from './piece-key.ts';
import { type LabelSheet, labelSheets } from './piece-labels.ts';
import { type ColouringPage, colouringPage, type QuiltLooks, quiltLooks } from './quilt-looks.ts';
import { type RunSheet, runSheets } from './run-sheet.ts';
import { type SeamTestPage, seamTestPage } from './seam-test.ts';
import { type SizedPlan, sizeOf, sizeTitle } from './sized.ts';
import { type SizePages, sizePages } from './sizes.ts';
import type { TemplateSheet } from './template.ts';
import { templateSheets } from './template.ts';
import type { TopPages } from './top.ts';
import { topPages } from './top.ts';
import { type TrueSize, trueSize } from './true-size.ts';

/** What the pages show; of a chapter that is not wanted nothing but an empty list. */
export interface PatternFacts {
  /** In the order of the pages. */
  readonly chapters: readonly Chapter[];
  readonly title: string;
  readonly designer: string;
  readonly maker: readonly string[];
  readonly notices: readonly string[];
  readonly before: readonly string[];
  readonly handout: HandoutHead | null;
  /** Null when its chapter is not wanted. */
  readonly cover: Cover | null;
  /** Other sizes than the quilt as drawn. */
  readonly sizes: readonly SizePages[];
  /** Names of all sizes, the quilt as drawn first; empty where there is no other. */
  readonly sizeHeads: readonly string[];
  /** Null where there are none, or their chapter is not wanted. */
  readonly colourways: ColourwayPages | null;
  readonly cloths: readonly ClothToBuy[];
  readonly total: readonly string[];
  /** Null when its chapter is not wanted. */
  readonly amounts: Amounts | null;
  readonly values: Picture | null;
  /** Null when its chapter is not wanted. */
  readonly looks: QuiltLooks | null;
  readonly notions: readonly FinishPart[];
  readonly pieceKey: readonly KeyedBlock[];
  readonly colouring: ColouringPage | null;
  readonly labels: readonly LabelSheet[];
  readonly glossary: readonly Term[];
  readonly runSheets: readonly RunSheet[];
  readonly corrections: readonly Correction[];
  /** Which way strips are cut apart. */
  readonly cutAcross: string;
  readonly cutting: readonly ClothCutting[];
  readonly blocks: readonly BlockPages[];
  /** Null when its chapter is not wanted, and where nothing is sewn in chains. */
  readonly chains: ChainsPage | null;
  /** Null when its chapter is not wanted. */
  readonly top: TopPages | null;
  readonly finish: readonly FinishPart[];
  readonly templates: readonly TemplateSheet[];
  /** Null when its chapter is not wanted. */
  readonly seamTest: SeamTestPage | null;
  readonly boards: TrueSize | null;
  readonly foundations: readonly FoundationBlock[];
  readonly cautions: readonly FinishPart[];
}

export const factsOf = (of: {
  readonly plan: QuiltPlan;
  readonly sizes: readonly SizedPlan[];
  readonly signs: ClothSigns;
  /** May hold pictures already, such as those of a handout's head. */
  readonly album: Album;
  readonly chapters: readonly Chapter[];
  readonly changes: readonly PurchaseChange[];
  readonly hand: Hand;
  readonly handout: HandoutHead | null;
}): PatternFacts => {
  const { plan, sizes, signs, album, chapters, hand } = of;
  const has = (chapter: Chapter): boolean => chapters.includes(chapter);
  const { quilt } = plan;
  const swatches = swatchesFor(signs, album);
  const words = linesOf(quilt.notes);
  const wordsOnCover = has('cover') && quilt.notes.length <= mostOnCover && words.length <= mostLinesOnCover;
  const finish = has('finishing') ? finishParts({ plan, signs, album }) : [];
  const facts: PatternFacts = {
    chapters,
    title: quilt.title.trim() === '' ? 'A quilt without a name' : quilt.title,
    designer: quilt.designer,
    maker: has('cloth') && !wordsOnCover ? words : [],
    notices: has('cloth') ? noticesOf(plan) : [],
    before: has('cloth') ? beforeYouStart(plan) : [],
    handout: of.handout,
    cover: has('cover') ? coverOf({ plan, signs, swatches, album, hand, words: wordsOnCover ? words : [] }) : null,
    sizes: sizePages({ sizes, signs, swatches, album, hand, told: finish, has }),
    sizeHeads: sizes.length === 0 ? [] : [sizeOf(plan), ...sizes.map(sizeTitle)],
    colourways: has('colourways') ? colourwayPages({ plan, signs, album }) : null,
    cloths: clothToBuy({ plan, sizes, signs, swatches }),
    total: totalLines(plan, signs),
    amounts: has('cloth') ? amountsOf({ plan, signs, changes: of.changes }) : null,
    values: has('cloth') ? valueLadder(signs, album) : null,
    looks: has('quilt') ? quiltLooks({ plan, signs, album }) : null,
    notions: has('cloth') ? notionsOf(plan, sizes) : [],
    pieceKey: has('pieces') ? pieceKey({ plan, sizes, signs, album }) : [],
    colouring: has('colouring') ? colouringPage({ plan, signs, album }) : null,
    labels: has('labels') ? labelSheets({ plan, sizes, signs }) : [],
    glossary: [],
    runSheets: has('run-sheet') ? runSheets({ plan, signs, album }) : [],
    corrections: has('corrections') ? correctionsOf(plan) : [],
    cutAcross: cutAcross(plan, hand),
    cutting: has('cutting') ? cuttingCharts({ plan, signs, swatches, album, hand }) : [],
    blocks: has('blocks') ? blockPages({ plan, sizes, signs, album, hand }) : [],
    chains: has('chains') ? chainsPage({ plan, signs, album }) : null,
    top: has('top') ? topPages({ plan, signs, album }) : null,
    finish,
    templates: has('templates') ? templateSheets({ plan, signs, album }) : [],
    seamTest: has('seam-test') ? seamTestPage({ plan, album }) : null,
    boards: has('boards') ? trueSize({ plan, signs, album }) : null,
    foundations: has('foundations') ? foundationPages({ plan, signs, album }) : [],
    cautions: has('cautions') ? cautions : [],
  };
  if (!has('glossary')) return facts;
  // alone it is the glossary of the pattern as it is usually printed
  const read = chapters.length > 1 ? facts : factsOf({ ...of, album: new Map(), chapters: withoutGlossary });
  return { ...facts, glossary: glossaryOf(textsIn(read)) };
};

/** Of the maker's words: some five lines of the page, our own measure. */
const mostOnCover = 400;
const mostLinesOnCover = 4;

const linesOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');

const withoutGlossary = usualChapters.filter((chapter) => chapter !== 'glossary');

/** Every text in a JSON value. */
const textsIn = (part: unknown): readonly string[] => {
  if (typeof part === 'string') return [part];
  return part === null || typeof part !== 'object' ? [] : Object.values(part).flatMap(textsIn);
};

const beforeYouStart = (plan: QuiltPlan): readonly string[] => {
  const { unit, seam, buying } = plan.quilt;
  const shrinkage = toNumber(buying.shrinkage);
  const inSheets = plan.fabrics.some(({ buy }) => buy.unit === 'sheets');
  const byLength = plan.fabrics.some(({ buy }) => buy.unit !== 'sheets' && buy.amount > 0);
  return [
    `All seams are ${lengthOnPaper(toNumber(seam), unit)}, and every cut size has its seam allowances in it.`,
    ...(byLength
      ? [
          `The amounts allow ${lengthOnPaper(toNumber(buying.squaring), unit)} at each end for squaring up${shrinkage > 0 ? ` and ${figureOnPaper(shrinkage * 100, 'in')} % for shrinkage` : ''}, and are rounded up to what a shop cuts.`,
        ]
      : []),
    ...(inSheets
      ? ['Sheets of cloth are laid out to their edges, as large as is stated: measure them before you cut, squared up.']
      : []),
    'Once the pieces of one block are cut, sew it, and measure it after every seam: the check sizes show where it strays. Then cut the rest.',
    'Letters tell the cloths apart, in the drawings with a hatch besides, so that the pages can be read in grey. A mark such as B2 is the second size cut from cloth B.',
    'In a block each piece has a letter of its own, which its board and the piece key show: piece A need not be of cloth A.',
  ];
};
