// Blocks that the document wants pieced on foundations: their sheets, and how large their pieces are cut.
import { type SeamLine, seamLine } from '#craft/chords';
import type { Cut, CutRule } from '#craft/cutting';
import type { Quilt } from '#craft/design';
import { type DraftedBlock, type DraftingProblem, outlineOf } from '#craft/drafting';
import { cornerTolerance } from '#craft/limits';
import { type Length, length } from '#craft/measure';
import { done, type Outcome, refused } from '#ground/outcome';
import { at, boxOf, type Polygon } from '#ground/plane';
import { noRecall, type Recall } from '#ground/recall';
import { foundationsOf, mostFoundationPatches } from './foundations.ts';
import { roughCut } from './rough-cut.ts';
import type { Sections } from './sections.ts';

/** By block; refused where a block cannot be pieced so. */
export const planFoundations = (of: {
  readonly quilt: Quilt;
  readonly drafted: ReadonlyMap<string, DraftedBlock>;
  readonly memory?: Recall;
}): Outcome<ReadonlyMap<string, Sections>, DraftingProblem> => {
  const { memory = noRecall } = of;
  const planned = new Map<string, Sections>();
  const problems: DraftingProblem[] = [];
  for (const { id, path, piecing } of of.quilt.blocks) {
    const block = of.drafted.get(id);
    if (piecing === undefined || block === undefined) continue;
    const patches = outlinesOf(block);
    const found = memory.recall(
      JSON.stringify(['foundations', patches, block.patches.map(({ arcs }) => arcs), block.size]),
      () =>
        foundationsOf({
          patches: patches.map((points, i) => ({ points, arcs: block.patches[i]?.arcs ?? [] })),
          finished: block.size,
          steps: [],
        }),
    );
    if (found) planned.set(id, found);
    else
      problems.push({
        code: 'drafting/no-foundation',
        path: `${path}/piecing`,
        block: id,
        patches: patches.length,
        most: mostFoundationPatches,
        curved: block.patches.some(({ arcs }) => arcs !== undefined),
      });
  }
  return problems.length > 0 ? refused(problems) : done(planned);
};

const outlinesOf = ({ patches, size }: DraftedBlock): readonly Polygon[] =>
  patches.map((patch) => outlineOf(patch, cornerTolerance * Math.max(...size)));

/** What tells pieces that are trimmed on their sheet from others of their cloth: no id holds its sign. */
const paperSign = '^';

/** By patch; a sheet's only patch takes no sheet, and is cut to its own size. */
export const paperMarks = (sections: Sections | null, patches: number): readonly string[] => {
  const marks = Array.from({ length: patches }, () => '');
  for (const order of sections?.sections ?? [])
    if (order.length > 1) for (const { patch } of order) marks[patch] = paperSign;
  return marks;
};

/**
 * One size for all pieces of a kind, along the seam that each is sewn on by; of a print it lies square to the block, so that
 * it stands upright there.
 *
 * @param of.patches of the kind
 * @returns null where they go on no sheet
 */
export const paperCut = (of: {
  readonly sections: Sections | null;
  readonly block: DraftedBlock;
  readonly patches: readonly number[];
  readonly print: 'plain' | 'printed';
  readonly rule: CutRule;
}): Cut | null => {
  const outlines = outlinesOf(of.block);
  const sizes = (of.sections?.sections ?? [])
    .filter((order) => order.length > 1)
    .flat()
    .filter(({ patch }) => of.patches.includes(patch))
    .map(({ patch, line }) => {
      const size = roughCut({
        ...of.rule,
        patch: outlines[patch] as Polygon,
        line: of.print === 'plain' ? line : null,
      });
      return of.print === 'plain' && size[1] > size[0] ? ([size[1], size[0]] as const) : size;
    });
  if (sizes.length === 0) return null;
  const size = [most(sizes.map(([along]) => along)), most(sizes.map(([, across]) => across))] as const;
  const { width, height } = boxOf(outlines[of.patches[0] as number] as Polygon);
  return {
    shape: size[0] === size[1] ? 'square' : 'rectangle',
    finished: [length(width), length(height)],
    size,
    exact: size,
    gives: 1,
    template: null,
  };
};

const most = (sizes: readonly Length[]): Length => length(Math.max(...sizes));

/** The sheets of the mirrored block. */
export const mirroredSections = (sections: Sections, width: number): Sections => {
  const faced = (line: SeamLine): SeamLine =>
    seamLine(at(width - line.from.x, line.from.y), at(width - line.to.x, line.to.y));
  return {
    ...sections,
    sections: sections.sections.map((order) => order.map(({ patch, line }) => ({ patch, line: line && faced(line) }))),
    joins: sections.joins.map((join) => ({ ...join, line: faced(join.line) })),
  };
};

/** Where a step goes along a line of a sheet. */
export interface OnPaper {
  /** Its section, and how many the block has. */
  readonly section: number;
  readonly of: number;
  /** All patches of the section, in the order of sewing. */
  readonly order: readonly number[];
  /** How many of them lie on the sheet after this step. */
  readonly laid: number;
}

/** @param patches of a step: what lies on the sheet already, and the patch that is sewn on */
export const onPaper = (
  { sections }: Sections,
  patches: readonly [readonly number[], readonly number[]],
): OnPaper | null => {
  const [added] = patches[1];
  const laid = patches[0].length + 1;
  const section = sections.findIndex((order) => order.length > 1 && order[laid - 1]?.patch === added);
  const order = sections[section]?.map(({ patch }) => patch);
  return order === undefined ? null : { section: section + 1, of: sections.length, order, laid };
};
