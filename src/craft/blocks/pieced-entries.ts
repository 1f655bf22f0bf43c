// Every block that the top uses as it is made, in one colouring and mirrored or not: its order of joining, and the ways in which its
// units are made.
import type { Natures } from '#craft/cloths';
import type { CutRule } from '#craft/cutting';
import type { BlockDesign, Colouring, Quilt } from '#craft/design';
import { type DraftedBlock, fabricsOf, mirrored } from '#craft/drafting';
import type { Likeness } from '#craft/fabric';
import { paperMarks, type Sections } from '#craft/foundation';
import { type PiecedBlock, pieceBlock } from '#craft/piecing';
import type { PlacedBlock, SetTop } from '#craft/setting';
import { sewnAs } from '#craft/tones';
import { wholeIn } from '#craft/ways';
import { noRecall, type Recall } from '#ground/recall';
import {
  inRising,
  type MadeUnit,
  madeUnits,
  setUses,
  type UnitsOfBlock,
  unmade,
  wayMarks,
  withoutUnits,
  withSharedStrips,
} from './unit-ways.ts';

/** A block as it is made: of one design and colouring, mirrored or not. */
export interface PiecedEntry {
  readonly entry: PlacedBlock;
  readonly design: BlockDesign;
  /** Not mirrored. */
  readonly block: DraftedBlock;
  /** Its sheets, not mirrored; null where seams alone join it. */
  readonly foundations: Sections | null;
  readonly pieced: PiecedBlock;
  /** With the ways that its units are made, not mirrored; and those units as they lie in the entry. */
  readonly plain: PiecedWithWays;
  readonly made: readonly MadeUnit[];
  readonly size: DraftedBlock['size'];
  /** The cloths that each patch may be cut from. */
  readonly lists: readonly (readonly string[])[];
  /** Where it lies: indexes into the top's placed blocks. */
  readonly places: readonly number[];
}

/** Every block that the top uses, in the order of first use, with the order of joining it. */
export const pieceEntries = (of: {
  readonly quilt: Quilt;
  readonly drafted: ReadonlyMap<string, DraftedBlock>;
  /** By block, of those that are pieced on foundations. */
  readonly foundations: ReadonlyMap<string, Sections>;
  readonly set: SetTop;
  readonly lightness: (fabric: string) => number;
  readonly likeness: (fabric: string) => Likeness;
  readonly natures: Natures;
  readonly rule: CutRule;
  readonly memory?: Recall;
}): readonly PiecedEntry[] => {
  const designs = new Map(of.quilt.blocks.map((b) => [b.id, b]));
  const known = new Map<string, PiecedWithWays>();
  const entries = entriesOf(of.set.placed).map(({ entry, places }): PiecedEntry => {
    const design = designs.get(entry.block) as BlockDesign;
    const colouring = design.colourings[entry.colouring] as Colouring;
    const block = of.drafted.get(entry.block) as DraftedBlock;
    const lists = block.patches.map((patch) => fabricsOf(patch, colouring));
    const key = pieceKey(entry);
    const foundations = of.foundations.get(block.id) ?? null;
    const plain =
      known.get(key) ??
      (foundations
        ? pieceOnPaper({ ...of, design, block, lists, foundations, count: places.length })
        : pieceWithWays({ ...of, design, block, lists, count: places.length }));
    known.set(key, plain);
    const made =
      foundations === null
        ? inEntry(plain.made.made, {
            ...of,
            design,
            block: entry.mirror ? mirrored(block) : block,
            lists,
            count: places.length,
          })
        : plain.made.made;
    return { entry, design, block, foundations, plain, made, pieced: plain.joined, size: block.size, lists, places };
  });
  const uses = setUses(entries.map(({ made, places }) => ({ made, count: places.length })));
  return entries.map((one) => ({ ...one, made: withSharedStrips(one.made, { ...of, uses }) }));
};

/** A block and its mirror image are pieced alike. */
export const pieceKey = ({ block, colouring }: PlacedBlock): string => JSON.stringify([block, colouring]);

interface PiecedWithWays {
  readonly joined: PiecedBlock;
  readonly made: ReturnType<typeof madeUnits>;
}

/** Ways to make have no place on paper: pieces are sewn on one by one, and trimmed there. */
const pieceOnPaper = (
  of: UnitsOfBlock & {
    readonly lightness: (fabric: string) => number;
    readonly likeness: (fabric: string) => Likeness;
    readonly foundations: Sections;
  },
): PiecedWithWays => {
  const { design, block, lists, foundations } = of;
  const marks = paperMarks(foundations, block.patches.length);
  const joined = pieceBlock({
    block,
    fabrics: lists.map((list, i) => sewnAs(list) + motifMark(design, block.patches[i]?.tone) + marks[i]),
    lightness: (name) => of.lightness(unmarked(name)),
    likeness: (name) => of.likeness(unmarked(name)),
    seam: of.rule.seam,
    foundations,
  });
  const units = madeUnits(of);
  return { joined, made: withoutUnits(units, new Set(units.made.map(({ key }) => key)), 'on-paper') };
};

/** Units that the order of joining does not make by themselves are cut and sewn singly after all. */
const pieceWithWays = (
  of: UnitsOfBlock & {
    readonly lightness: (fabric: string) => number;
    readonly likeness: (fabric: string) => Likeness;
    readonly memory?: Recall;
  },
): PiecedWithWays => {
  const { design, block, lists } = of;
  const joinedWith = (made: readonly MadeUnit[]): PiecedBlock => {
    const marks = wayMarks(made, block.patches.length);
    const fabrics = lists.map((list, i) => sewnAs(list) + motifMark(design, block.patches[i]?.tone) + marks[i]);
    const lightness = (name: string): number => of.lightness(unmarked(name));
    const likeness = (name: string): Likeness => of.likeness(unmarked(name));
    const whole = made.flatMap(({ unit, way }) => wholeIn(unit, way));
    const { memory = noRecall } = of;
    const { seam } = of.rule;
    const cloths = fabrics.map((name) => [name, lightness(name), likeness(name)]);
    const { size, patches, added } = block;
    return memory.recall(JSON.stringify(['pieced', size, patches, added, cloths, seam, whole]), () =>
      pieceBlock({ block, fabrics, lightness, likeness, seam, whole, memory }),
    );
  };
  let made = madeUnits(of);
  let joined = joinedWith(made.made);
  for (let left = unmade(made.made, joined.steps); left.size > 0; left = unmade(made.made, joined.steps)) {
    made = withoutUnits(made, left, 'not-a-unit');
    joined = joinedWith(made.made);
  }
  return { joined, made };
};

/** The same units in one entry, which may be mirrored: their places may lie otherwise, and strips are cut for its count. */
const inEntry = (made: readonly MadeUnit[], of: UnitsOfBlock): readonly MadeUnit[] => {
  if (made.length === 0) return made;
  const keys = new Set(made.map(({ unit }) => inRising(unit.patches)));
  return madeUnits(of).made.filter(({ unit }) => keys.has(inRising(unit.patches)));
};

/** Pieces that are cut round a motif are a kind of their own; no id holds the sign. */
const motifSign = '#';

const motifMark = ({ motifs = [] }: BlockDesign, tone: string | undefined): string =>
  tone !== undefined && motifs.includes(tone) ? motifSign : '';

/** A cloth's name without the marks of motifs, ways and paper. */
const unmarked = (name: string): string => name.replace(/[#~^].*$/, '');

/** Blocks as they are made, in the order of first use, and where they are placed (indexes). */
const entriesOf = (
  placed: readonly PlacedBlock[],
): readonly { readonly entry: PlacedBlock; readonly places: readonly number[] }[] => {
  const entries = new Map<string, { entry: PlacedBlock; places: number[] }>();
  placed.forEach((entry, place) => {
    const key = entryName(entry);
    const known = entries.get(key);
    if (known) known.places.push(place);
    else entries.set(key, { entry, places: [place] });
  });
  return [...entries.values()];
};

/** What a block's entry is called where things are joined: its id, its colouring unless that is the default, and "mirrored". */
export const entryName = (entry: Pick<PlacedBlock, 'block' | 'colouring' | 'mirror'>): string =>
  [
    entry.block,
    ...(entry.colouring === 'default' ? [] : [entry.colouring]),
    ...(entry.mirror ? ['mirrored'] : []),
  ].join(' / ');
