// What can be taken of a planned quilt, file by file: what each is called and what it is made of. Nothing is made before it is asked for;
// the command line and the shop both make them from here, so that the same wishes give the same bytes.
import type { QuiltPlan } from '#craft';
import type { PurchaseChange } from '#craft/shopping';
import type { IntegerSolver } from '#craft/strips';
import type { Look } from '#paper/cloth';
import { cuttingCsv, type Hand } from '#paper/cutting';
import { type Chapter, handoutPages, type PatternPages, patternPages } from '#paper/pages';
import { planFileText } from '#paper/planfile';
import { type PictureOf, picturesOf } from './pictures.ts';
import type { PlannedSize } from './sizes.ts';

interface Called {
  readonly name: string;
  /** What is said while it is made. */
  readonly making: string;
}

export type DrawnFile = Called &
  (
    | { readonly as: 'text'; readonly text: () => string }
    /** A picture in dots. */
    | { readonly as: 'png'; readonly svg: () => string; readonly widthPx: number }
  );

export type PrintedFile = Called & { readonly as: 'pdf'; readonly pages: () => PatternPages };

export type QuiltFile = DrawnFile | PrintedFile;

export interface FilesWished {
  readonly plan: QuiltPlan;
  readonly sizes: readonly PlannedSize[];
  /** What would change the purchase: for the pattern alone. */
  readonly changes: () => readonly PurchaseChange[];
  /** Of the pattern; null: the usual ones. */
  readonly chapters: readonly Chapter[] | null;
  /** Ids of blocks to sew. */
  readonly handouts: readonly string[];
  readonly runSheet: 'printed' | 'none';
  /** For which pattern and handouts are drawn: a wish for the print, of which the document and the plan know nothing. */
  readonly hand: Hand;
  readonly search: { readonly steps: number; readonly solver: IntegerSolver | null };
}

/** Of PNG, where nothing else is asked for. */
const usualWidthPx = 1600;

/** What `seamstead plan` writes, in that order. */
export const quiltFiles = (of: FilesWished): readonly QuiltFile[] => {
  const { plan, sizes, changes, chapters, hand } = of;
  const [quilt] = picturesOf(plan);
  return [
    ...tables(plan, ''),
    ...sizes.flatMap((size) => tables(size.plan, `-${size.id}`)),
    ...(quilt === undefined ? [] : pictureFiles({ picture: quilt, look: 'colour' })),
    {
      name: 'pattern.pdf',
      making: 'Printing the pattern',
      as: 'pdf',
      pages: () => patternPages(plan, { changes: changes(), sizes, hand, ...(chapters === null ? {} : { chapters }) }),
    },
    ...of.handouts.map((block) => handoutFile(of, block)),
    ...(of.runSheet === 'printed' ? [runSheetFile(plan)] : []),
  ];
};

/** A picture as lines and as dots; drawn once for both. */
export const pictureFiles = (of: {
  readonly picture: PictureOf;
  readonly look: Look;
  readonly widthPx?: number;
}): readonly DrawnFile[] => {
  const { picture, look, widthPx = usualWidthPx } = of;
  const name = picture.name(look);
  const making = `Drawing ${name}`;
  let drawn: string | null = null;
  const svg = () => {
    drawn ??= picture.draw(look).svg;
    return drawn;
  };
  return [
    { name: `${name}.svg`, making, as: 'text', text: svg },
    { name: `${name}.png`, making, as: 'png', svg, widthPx },
  ];
};

const tables = (plan: QuiltPlan, ending: string): readonly DrawnFile[] => [
  { name: `plan${ending}.json`, making: 'Writing the plan', as: 'text', text: () => planFileText(plan) },
  { name: `cutting${ending}.csv`, making: 'Writing the cut list', as: 'text', text: () => cuttingCsv(plan) },
];

const handoutFile = ({ plan, search, hand }: FilesWished, block: string): PrintedFile => ({
  name: `handout-${block}.pdf`,
  making: `Printing the handout of ${block}`,
  as: 'pdf',
  pages: () => {
    const pages = handoutPages({ plan, block, search, hand });
    if (pages === null) throw new Error(`the top has no block ${block} to sew`);
    return pages;
  },
});

const runSheetFile = (plan: QuiltPlan): PrintedFile => ({
  name: 'run-sheet.pdf',
  making: 'Printing the run sheets',
  as: 'pdf',
  pages: () => patternPages(plan, { chapters: ['run-sheet'] }),
});
