// Foundations of each block at true size, with the order of sewing and the pieces to cut for them.
import type { BlockPlan, QuiltPlan } from '#craft';
import {
  type FoundationOrder,
  foundationsOf,
  mostFoundationPatches,
  roughCut,
  type Sections,
  type UnitOnOne,
  unitsOnOne,
} from '#craft/foundation';
import { type Length, length } from '#craft/measure';
import { type Rational, toNumber } from '#ground/exact';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { entryTitle } from '#paper/cutting';
import { asFirstPlaced, drawTiles, foundation, type Lies, type Tile } from '#paper/drawing';
import { sizeOnPaper } from '#paper/lengths';
import { capital, inWords } from '#paper/words';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';
import { cutText } from './cut-text.ts';
import { measurePt } from './measure.ts';
import { partName } from './naming.ts';
import { sheetText } from './sheet-text.ts';
import { pointsPer } from './template.ts';

export interface FoundationBlock {
  readonly title: string;
  /** Whether it can be pieced so, on how many sheets, and how they are joined. */
  readonly words: readonly string[];
  /** Of a block that does not go on foundations as a whole: the units of it that do. */
  readonly sections: readonly FoundationSheets[];
}

interface FoundationSheets {
  readonly title: string;
  /** Of a single piece, which takes no sheet: how it is cut; else empty. */
  readonly alone: string;
  /** What is laid on, in order. */
  readonly pieces: readonly { readonly number: string; readonly cloth: string; readonly cut: string }[];
  readonly sheets: readonly { readonly sheet: string; readonly picture: Picture }[];
}

interface PagesOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

/** A mirror image has sheets of its own; colourings share theirs. Of a quilt with blocks that are pieced so, those alone. */
export const foundationPages = (of: PagesOf): readonly FoundationBlock[] => {
  const meant = of.plan.blocks
    .filter((block) => block.foundations !== null)
    .map((block) => asFirstPlaced(of.plan, block));
  const blocks = meant.length > 0 ? meant : of.plan.blocks;
  const isFirst = ({ id, mirror }: BlockPlan, place: number): boolean =>
    blocks.findIndex((other) => other.id === id && other.mirror === mirror) === place;
  return blocks.flatMap((block, place) =>
    block.patches.length > 0 && isFirst(block, place) ? [blockFoundations(of, block, place)] : [],
  );
};

const blockFoundations = (of: PagesOf, block: BlockPlan, place: number): FoundationBlock => {
  const { id, colouring, mirror } = block;
  const title = entryTitle(of.plan, { block: id, colouring, mirror });
  const found = block.foundations ?? foundationsOf(block);
  const units = found === null && block.patches.length <= mostFoundationPatches ? unitsOnOne(block) : [];
  const told =
    found === null
      ? units.map(({ step, order }) => ({ order, title: capital(unitName(block, step)) }))
      : found.sections.map((order, index) => ({
          order,
          title: found.sections.length === 1 ? 'The foundation' : `Part ${index + 1}`,
        }));
  return {
    title,
    words:
      found === null
        ? [noneText(block), ...unitsTexts(block, units)]
        : [countText(found, block), ...joinTexts(found), ...copiesTexts(of, block)],
    sections: told.map((one, index) =>
      sheetsOf(of, { ...one, block, name: `foundation-${place + 1}-${index + 1}`, says: title }),
    ),
  };
};

/** "Of its units these can be, each on one foundation: unit 3, 4 in a block." */
const unitsTexts = (block: BlockPlan, units: readonly UnitOnOne[]): readonly string[] =>
  units.length === 0
    ? []
    : [
        `Of its units ${units.length === 1 ? 'one can be, on a foundation' : 'these can be, each on one foundation'}: ${inWords(
          units.map(({ step }) => `${unitName(block, step)}, ${block.steps[step]?.perBlock} in a block`),
        )}. Sew what is left as the steps of the block say.`,
      ];

const unitName = ({ steps }: BlockPlan, step: number): string => partName(steps[step]?.makes ?? '');

const noneText = ({ joining, patches }: BlockPlan): string => {
  if (patches.some(({ arcs }) => arcs !== undefined))
    return 'It cannot be pieced on foundations: it has curved seams, and a patch is sewn to a foundation along a straight line.';
  return joining === 'straight'
    ? 'It has too many patches to be pieced on foundations.'
    : 'It cannot be pieced on foundations: not every one of its seams runs from edge to edge.';
};

/** Of a block that is meant to be pieced so: "Print 4 of its sheet, one for each block." */
const copiesTexts = ({ plan }: PagesOf, { id, mirror, foundations }: BlockPlan): readonly string[] => {
  if (foundations === null) return [];
  const count = plan.blocks
    .filter((block) => block.id === id && block.mirror === mirror)
    .reduce((all, block) => all + block.count, 0);
  return count === 1 ? [] : [`Print them ${count} times, once for each block.`];
};

const countText = ({ sections, least }: Sections, { foundations }: BlockPlan): string => {
  if (sections.length === 1) return `It ${foundations === null ? 'can be' : 'is'} pieced on one foundation.`;
  const alone = sections.filter(({ length: patches }) => patches === 1).length;
  const singles = alone === 0 ? '' : `, ${alone} of them a single piece`;
  const fewer = least === 'proven' ? 'no fewer will do' : 'the fewest that were found';
  return `It takes ${sections.length} parts${singles}: ${fewer}.`;
};

/** "Then sew 1 to 2, and 1 and 2 to 3." */
const joinTexts = ({ joins }: Sections): readonly string[] => {
  if (joins.length === 0) return [];
  const named = (sections: readonly number[]): string => inWords(sections.map((section) => String(section + 1)));
  return [
    `Take the paper out of the allowances and join them: ${joins.map(({ first, second }) => `${named(first)} to ${named(second)}`).join('; ')}.`,
  ];
};

/** Room below its words on a Letter page of its own. */
const tallestPt = 636;

const sheetsOf = (
  of: PagesOf,
  at: {
    readonly block: BlockPlan;
    readonly order: FoundationOrder;
    readonly title: string;
    readonly name: string;
    readonly says: string;
  },
): FoundationSheets => {
  const { block, order } = at;
  const { quilt } = of.plan;
  const seam = length(toNumber(quilt.seam));
  const points = (patch: number) => block.patches[patch]?.points ?? [];
  const [only] = order;
  if (order.length === 1 && only !== undefined)
    return { title: at.title, alone: aloneText(of, block, only.patch), pieces: [], sheets: [] };
  const patches = order.map(({ patch }) => points(patch));
  const laid = (lies: Lies): readonly Tile[] =>
    drawTiles({
      whole: foundation({ patches, seam, lies, scale: pointsPer[quilt.unit] }),
      fitPt: [measurePt, tallestPt],
      alt: ({ number, row, column }) =>
        `${at.says}, ${at.title.toLowerCase()} in mirror image at true size${lies === 'on-its-side' ? ` and ${sideText}` : ''}: the lines to sew on, with the patches numbered 1 to ${order.length} in the order of sewing. Sheet ${number}: row ${row}, place ${column}.`,
    });
  const [asInBlock, onItsSide] = [laid('as-in-block'), laid('on-its-side')];
  // what goes on fewer sheets has fewer joins to tape
  const isTurned = onItsSide.length < asInBlock.length;
  const tiles = isTurned ? onItsSide : asInBlock;
  return {
    title: at.title,
    alone: '',
    pieces: order.map(({ patch, line }, index) => ({
      number: String(index + 1),
      cloth: clothsOf(of, block, patch),
      cut: sizeOnPaper(roughSize({ block, patch, line, seam, ruler: quilt.ruler }), quilt.unit),
    })),
    sheets: tiles.map(({ sheet, drawing }) => ({
      sheet: [sheetText(sheet, tiles.length), isTurned ? sideText : ''].filter((text) => text !== '').join('; '),
      picture: shown(of.album, `${at.name}-${sheet.number}`, drawing),
    })),
  };
};

const sideText = 'on its side, the top of the block at the right';

const aloneText = (of: PagesOf, block: BlockPlan, patch: number): string => {
  const piece = pieceAt(block, patch);
  const cut = piece === undefined ? '' : `: ${cutText(piece, of.plan)}, cloth ${clothsOf(of, block, patch)}`;
  return `One piece, cut to its own size${cut}.`;
};

/** As it is planned; of a block that could be pieced so, as it would be. */
const roughSize = (of: {
  readonly block: BlockPlan;
  readonly patch: number;
  readonly line: FoundationOrder[number]['line'];
  readonly seam: Length;
  readonly ruler: Rational;
}): readonly [Length, Length] => {
  const piece = of.block.foundations && pieceAt(of.block, of.patch);
  return piece ? piece.cut.size : roughCut({ ...of, patch: of.block.patches[of.patch]?.points ?? [] });
};

const pieceAt = (block: BlockPlan, patch: number): BlockPlan['pieces'][number] | undefined =>
  block.pieces.find(({ label }) => label === block.patches[patch]?.piece);

/** Letters of the cloths that the patch has, in each colouring in which the block stands so. */
const clothsOf = ({ plan, signs }: PagesOf, { id, mirror }: BlockPlan, patch: number): string => {
  const letters = plan.blocks
    .filter((block) => block.id === id && block.mirror === mirror)
    .flatMap((block) => {
      const piece = pieceAt(block, patch);
      return piece?.fabrics.map(({ fabric }) => signOf(signs, fabric).letter) ?? [];
    });
  return [...new Set(letters)].join(' or ');
};
