// The blocks of a plan: one entry per block, colouring and mirror image that the top uses, with its
// pieces cut to size and its steps numbered and counted over the whole quilt.
import { type BlockSize, blockDrift, rulerSizes } from '#craft/accuracy';
import { adviceFor, adviceForCurves, type CurvedAdvice } from '#craft/advice';
import type { Natures } from '#craft/cloths';
import { type Cut, type CutRule, patchCut, straightOnEdge } from '#craft/cutting';
import type { BlockDesign, Colouring, Quilt } from '#craft/design';
import { type DraftedBlock, draftBlock, fabricsOf, mirrored, mirroredSide, outlineOf } from '#craft/drafting';
import type { Likeness } from '#craft/fabric';
import { mirroredSections, onPaper, paperCut, paperMarks, type Sections } from '#craft/foundation';
import { cornerTolerance } from '#craft/limits';
import { type Length, length } from '#craft/measure';
import {
  type Lying,
  machineTurn,
  type Part,
  type PiecedBlock,
  type PieceKind,
  pieceBlock,
  type SewingStep,
  wholeTurn,
} from '#craft/piecing';
import type { BlockNesting, BlockPlan, Note, PlannedPiece, PlannedStep, StepWay } from '#craft/plan';
import { type BlockPressing, isSpun, type Press, pressInMirror } from '#craft/pressing';
import type { PlacedBlock, SetTop } from '#craft/setting';
import { type DrawnCloths, sewnAs } from '#craft/tones';
import { setsOf, stageFor, wholeIn } from '#craft/ways';
import type { Arc, Outline } from '#ground/arc';
import { at, boxOf, type Point, type Polygon } from '#ground/plane';
import { noRecall, type Recall } from '#ground/recall';
import {
  inRising,
  type MadeUnit,
  madeUnits,
  notTakenNote,
  setUses,
  type UnitsOfBlock,
  unitAt,
  unmade,
  unmetNotes,
  wayCutAt,
  wayMarks,
  withoutUnmade,
  withSharedStrips,
} from './unit-ways.ts';

export interface BlockPlans {
  readonly blocks: readonly BlockPlan[];
  readonly notes: readonly Note[];
}

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
        ? pieceOnPaper({ ...of, design, block, lists, foundations })
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
const pieceKey = ({ block, colouring }: PlacedBlock): string => JSON.stringify([block, colouring]);

/** @param pressing by entry */
export const planBlocks = (of: {
  readonly quilt: Quilt;
  readonly entries: readonly PiecedEntry[];
  readonly pressing: readonly BlockPressing[];
  readonly drawn: DrawnCloths;
  readonly natures: Natures;
  readonly rule: CutRule;
  readonly memory?: Recall;
}): BlockPlans => {
  const known = new Set<string>();
  const notes: Note[] = [];
  const uses = setUses(of.entries.map(({ made, places }) => ({ made, count: places.length })));
  const among: Among = (set) =>
    (uses.get(set) ?? []).map(({ entry, units }) => {
      const { block: id, colouring, mirror } = (of.entries[entry] as PiecedEntry).entry;
      return { id, colouring, mirror, units };
    });
  const blocks = of.entries.map((one, index): BlockPlan => {
    const { entry, design, block, foundations, plain, made, pieced, lists, places } = one;
    const isNew = !known.has(pieceKey(entry));
    const isFirst = !known.has(block.id);
    known.add(pieceKey(entry)).add(block.id);
    if (isNew)
      notes.push(
        ...piecingNotes({ design, pieced, block, isFirst, memory: of.memory }),
        ...plain.made.notTaken.map(notTakenNote),
      );
    const plan = entryPlan({
      design,
      entry,
      count: places.length,
      block: entry.mirror ? mirrored(block) : block,
      lists,
      cut: cutOf(of.drawn, places),
      pieced: entry.mirror ? inMirror(pieced, block) : pieced,
      made,
      among,
      pressing: entry.mirror
        ? mirroredPressing(of.pressing[index] as BlockPressing)
        : (of.pressing[index] as BlockPressing),
      rule: of.rule,
      foundations: foundations && entry.mirror ? mirroredSections(foundations, block.size[0]) : foundations,
      natures: of.natures,
    });
    if (isNew) notes.push(...markNotes({ plan, design, block, rule: of.rule }), ...elsewhereNotes(plan, design));
    return plan;
  });
  return { blocks, notes: [...notes, ...unmetNotes(of.quilt, [...new Set(of.entries.map(({ plain }) => plain))])] };
};

interface PiecedWithWays {
  readonly joined: PiecedBlock;
  readonly made: ReturnType<typeof madeUnits>;
}

/** Ways to make have no place on paper: pieces are sewn on one by one, and trimmed there. */
const pieceOnPaper = (
  of: Omit<UnitsOfBlock, 'natures' | 'count'> & {
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
  return { joined, made: { made: [], notTaken: [], met: [] } };
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
    made = withoutUnmade(made, left);
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

/** How many of some patches of a block are cut from a cloth, over all places of the block; `first` where nothing is drawn. */
type CutOf = (of: { readonly patches: readonly number[]; readonly fabric: string; readonly first: string }) => number;

const cutOf =
  (drawn: DrawnCloths, places: readonly number[]): CutOf =>
  ({ patches, fabric, first }) => {
    let count = 0;
    for (const place of places) {
      const cloths = drawn[place];
      if (!cloths) count += fabric === first ? patches.length : 0;
      else for (const patch of patches) if (cloths[patch] === fabric) count++;
    }
    return count;
  };

/** What a block's entry is called where things are joined: its id, its colouring unless that is the default, and "mirrored". */
export const entryName = (entry: Pick<PlacedBlock, 'block' | 'colouring' | 'mirror'>): string =>
  [
    entry.block,
    ...(entry.colouring === 'default' ? [] : [entry.colouring]),
    ...(entry.mirror ? ['mirrored'] : []),
  ].join(' / ');

const entryPlan = (of: {
  readonly design: BlockDesign;
  readonly entry: PlacedBlock;
  readonly count: number;
  readonly block: DraftedBlock;
  /** The cloths that each patch may be cut from. */
  readonly lists: readonly (readonly string[])[];
  readonly cut: CutOf;
  readonly pieced: PiecedBlock;
  readonly made: readonly MadeUnit[];
  readonly among: Among;
  readonly pressing: BlockPressing;
  readonly rule: CutRule;
  readonly foundations: Sections | null;
  readonly natures: Natures;
}): BlockPlan => {
  const { block, pieced, pressing, count, made, among, foundations } = of;
  const slack = cornerTolerance * Math.max(...block.size);
  const outlines = block.patches.map((patch) => outlineOf(patch, slack));
  const outlineAt = (patch: number): Outline => ({
    points: outlines[patch] as Polygon,
    arcs: block.patches[patch]?.arcs ?? [],
  });
  return {
    id: block.id,
    title: of.design.title,
    colouring: of.entry.colouring,
    mirror: of.entry.mirror,
    count,
    finished: block.size,
    unfinished: [length(block.size[0] + 2 * of.rule.seam), length(block.size[1] + 2 * of.rule.seam)],
    joining: pieced.joining,
    leastUnits: pieced.leastUnits,
    foundations,
    patches: outlines.map((points, i) => ({
      piece: pieced.kinds[pieced.kindOf[i] as number]?.label as string,
      fabric: of.lists[i]?.[0] as string,
      points,
      ...(block.patches[i]?.arcs === undefined ? {} : { arcs: block.patches[i].arcs }),
    })),
    pieces: pieced.kinds.map((kind, index) => ({
      label: kind.label,
      fabric: of.lists[kind.patch]?.[0] as string,
      fabrics: fabricsCut(of, kind),
      tone: kind.tone,
      perBlock: kind.perBlock,
      cut:
        paperCutOf(of, kind) ??
        wayCutAt(made, kind.patch) ??
        straightOnEdge(patchCut(outlineAt(kind.patch), of.rule), {
          outlines: outlines.filter((_, patch) => pieced.kindOf[patch] === index),
          size: block.size,
          rule: of.rule,
        }),
    })),
    steps: pieced.steps.map((step, i) => ({
      ...plannedStep({
        step,
        pieced,
        press: pressing.presses[i] as Press,
        other: pressing.other?.presses[i] ?? null,
        id: entryName(of.entry),
        count,
      }),
      ...wayOfStep(step, { made, count, among, seam: of.rule.seam }),
      ...paperOfStep(step, foundations),
    })),
    pressing: blockNesting({ pieced, pressing, mirrored: of.entry.mirror ? block.size[0] : null }),
    seams: pieced.seams,
  };
};

const paperCutOf = (
  of: {
    readonly foundations: Sections | null;
    readonly block: DraftedBlock;
    readonly lists: readonly (readonly string[])[];
    readonly pieced: PiecedBlock;
    readonly natures: Natures;
    readonly rule: CutRule;
  },
  kind: PieceKind,
): Cut | null => {
  const index = of.pieced.kinds.indexOf(kind);
  const isPrinted = of.lists[kind.patch]?.some((fabric) => of.natures.get(fabric)?.print !== 'none') ?? false;
  return paperCut({
    ...of,
    sections: of.foundations,
    patches: of.pieced.kindOf.flatMap((one, patch) => (one === index ? [patch] : [])),
    print: isPrinted ? 'printed' : 'plain',
  });
};

const paperOfStep = (step: SewingStep, foundations: Sections | null): Partial<Pick<PlannedStep, 'onPaper'>> => {
  const found = foundations && step.kind === 'foundation' ? onPaper(foundations, step.patches) : null;
  return found ? { onPaper: found } : {};
};

/** The entries that share a set of pieces, by its name. */
type Among = (set: string) => StepWay['among'];

/** Units that are made at once. */
export const unitsAmong = ({ among }: Pick<StepWay, 'among'>): number =>
  among.reduce((all, { units }) => all + units, 0);

/** How a step is gone about, where it belongs to a unit that is made in a way of its own. */
const wayOfStep = (
  step: SewingStep,
  of: {
    readonly made: readonly MadeUnit[];
    readonly count: number;
    readonly among: Among;
    readonly seam: Length;
  },
): Partial<Pick<PlannedStep, 'made' | 'unfinished'>> => {
  const { made, count, seam } = of;
  const at = unitAt(made, step);
  // pieces that are only cut larger are joined as ever, and trimmed in the end
  if (at === null) return {};
  const { unit, way, key, set } = at.made;
  const units = count * made.filter((one) => one.key === key).length;
  const isLast = at.parts.flat().length === unit.patches.length;
  const stage = stageFor({ unit, way, seam, parts: at.parts });
  if (stage === null && !way.trimmed) return {};
  const among = of.among(set);
  const sets = setsOf(stage, { way, units: unitsAmong({ among }) });
  // strips are measured as the unit that is cut from them
  const isSeen = stage !== null && !isLast && stage.slices === undefined;
  const box = isSeen ? boxOf((stage.pressed[0] ?? []).flatMap(({ outline }) => outline)) : null;
  return {
    made: { unit, way, parts: at.parts, units, among, sets, isLast },
    ...(box ? { unfinished: [length(box.width), length(box.height)] as const } : {}),
  };
};

const mirroredPressing = (pressing: BlockPressing): BlockPressing => ({
  ...pressing,
  presses: pressing.presses.map(pressInMirror),
  other: pressing.other && { ...pressing.other, presses: pressing.other.presses.map(pressInMirror) },
});

/** @param of.mirrored the block's width, where what lies in it is to be seen in the mirror */
const blockNesting = (of: {
  readonly pieced: PiecedBlock;
  readonly pressing: BlockPressing;
  readonly mirrored: number | null;
}): BlockNesting => {
  const { meetings, nested, loose, other, turned } = of.pressing;
  return {
    meetings,
    nested,
    otherWay: other?.count ?? 0,
    turned,
    loose: loose.map(({ at: { x, y }, steps, over, why }) => ({
      at: at(of.mirrored === null ? x : of.mirrored - x, y),
      steps: [steps[0] + 1, steps[1] + 1],
      over: over + 1,
      why,
    })),
  };
};

const fabricsCut = (
  of: { readonly lists: readonly (readonly string[])[]; readonly cut: CutOf; readonly pieced: PiecedBlock },
  kind: PieceKind,
): PlannedPiece['fabrics'] => {
  const list = of.lists[kind.patch] as readonly string[];
  const label = of.pieced.kinds.indexOf(kind);
  const patches = of.pieced.kindOf.flatMap((k, patch) => (k === label ? [patch] : []));
  return list.map((fabric) => ({ fabric, count: of.cut({ patches, fabric, first: list[0] as string }) }));
};

const plannedStep = (of: {
  readonly step: SewingStep;
  readonly pieced: PiecedBlock;
  readonly press: Press;
  readonly other: Press | null;
  readonly id: string;
  readonly count: number;
}): PlannedStep => {
  const { step, pieced, press, other } = of;
  const nameOf = (part: Part): string =>
    'piece' in part ? (pieced.kinds[part.piece]?.label as string) : `#${part.unit + 1}`;
  const join = [nameOf(step.join[0]), nameOf(step.join[1])] as const;
  return {
    id: `${of.id.replaceAll(' / ', '-')}-${step.number}`,
    number: step.number,
    join,
    makes: `#${step.number}`,
    side: step.side,
    machineTurn: step.machineTurn,
    kind: step.kind,
    corners: step.corners,
    seam: step.seam,
    press: press === 'open' ? 'open' : isSpun(press) ? 'spin' : join[press],
    pressTo: press,
    wish: step.wish,
    otherWay: other === press ? null : other,
    unfinished: step.unfinished,
    perBlock: step.perBlock,
    total: step.perBlock * of.count,
    patches: step.patches,
    stopsAt: step.stopsAt,
    line: step.line,
    ...(step.arcs === undefined ? {} : { arcs: step.arcs }),
  };
};

/** The same pieces and steps with left and right exchanged: a mirrored block keeps its labels. */
const inMirror = (pieced: PiecedBlock, block: DraftedBlock): PiecedBlock => ({
  ...pieced,
  seams: pieced.seams.map((seam) => ({
    ...seam,
    heading: wholeTurn(180 - seam.heading),
    path: seam.path.map((p) => at(block.size[0] - p.x, p.y)),
  })),
  steps: pieced.steps.map((step) => {
    const heading = wholeTurn(180 - step.heading);
    const over = (p: Point): Point => at(block.size[0] - p.x, p.y);
    const lying: Lying =
      typeof step.lying === 'string'
        ? step.lying
        : { heading: wholeTurn(180 - step.lying.heading), turn: wholeTurn(-step.lying.turn) };
    return {
      ...step,
      side: mirroredSide(step.side),
      heading,
      machineTurn: machineTurn(heading, lying),
      lying,
      stopsAt: step.stopsAt.map(over),
      line: step.line.map(over),
      ...(step.arcs === undefined ? {} : { arcs: step.arcs.map((arc) => turnedOver(arc, over)) }),
    };
  }),
});

/** Walked as before, it runs round its centre the other way. */
const turnedOver = ({ from, to, centre, clockwise }: Arc, over: (p: Point) => Point): Arc => ({
  from: over(from),
  to: over(to),
  centre: over(centre),
  clockwise: !clockwise,
});

interface NotedBlock {
  readonly design: BlockDesign;
  readonly pieced: PiecedBlock;
  readonly block: DraftedBlock;
  /** Of the colourings of its block: lines are the same for all of them. */
  readonly isFirst: boolean;
  readonly memory: Recall | undefined;
}

const piecingNotes = (of: NotedBlock): readonly Note[] => {
  const { design, pieced, block } = of;
  const { path, id } = design;
  const notes: Note[] = [];
  if (pieced.joining !== 'straight') {
    const corners = pieced.steps.reduce((all, step) => all + step.corners * step.perBlock, 0);
    const seamsOf = (kind: SewingStep['kind']): number =>
      pieced.steps.reduce((all, step) => all + (step.kind === kind ? step.perBlock : 0), 0);
    const partial = seamsOf('partial-begin');
    const { joining } = pieced;
    notes.push({
      code: 'piecing/not-straight',
      level: 'note',
      path,
      block: id,
      joining,
      corners,
      partial,
      curved: seamsOf('curved'),
    });
    const advised = of.isFirst ? adviceOn(of) : null;
    if (advised?.kind === 'lines') {
      const { lines, more, isLeast } = advised.advice;
      const joins = hasCurves(block) ? 'curved' : 'straight';
      notes.push({
        code: 'piecing/lines-to-add',
        level: 'note',
        path,
        block: id,
        lines,
        more,
        corners,
        partial,
        joins,
        isLeast,
      });
    }
    if (advised?.kind === 'none-found')
      notes.push({ code: 'piecing/no-lines-to-add', level: 'note', path, block: id, isProven: advised.isWhole });
  }
  if (pieced.joining === 'straight' && pieced.leastUnits === 'searched') {
    notes.push({ code: 'piecing/searched', level: 'note', path, block: id, patches: block.patches.length });
  }
  return notes;
};

const hasCurves = ({ patches }: DraftedBlock): boolean => patches.some(({ arcs = [] }) => arcs.length > 0);

/** Of the patches that no frame is sewn round. */
const adviceOn = ({ block, memory = noRecall }: NotedBlock): CurvedAdvice | null => {
  const slack = cornerTolerance * Math.max(...block.size);
  const core = block.patches.slice(0, block.patches.length - (block.added ?? []).length);
  const { x, y } = boxOf(core.flatMap(({ points }) => points));
  const onCore = (p: Point): Point => at(p.x - x, p.y - y);
  if (hasCurves({ ...block, patches: core })) {
    const own = core.map(({ points, arcs = [] }) => ({
      points: points.map(onCore),
      arcs: arcs.map((arc) => ({ ...arc, from: onCore(arc.from), to: onCore(arc.to), centre: onCore(arc.centre) })),
    }));
    return memory.recall(JSON.stringify(['advised', own]), () => adviceForCurves(own, slack));
  }
  const own = core.map((patch) => outlineOf(patch, slack).map(onCore));
  const advice = memory.recall(JSON.stringify(['advised', own]), () => adviceFor(own, slack));
  return advice && { kind: 'lines', advice };
};

const elsewhereNotes = ({ finished, unfinished }: BlockPlan, { path, id, shape }: BlockDesign): readonly Note[] =>
  shape.kind === 'elsewhere'
    ? [{ code: 'design/made-elsewhere', level: 'note', path, block: id, finished, unfinished }]
    : [];

interface MarkedBlock {
  readonly plan: BlockPlan;
  readonly design: BlockDesign;
  readonly block: DraftedBlock;
  readonly rule: CutRule;
}

/** Squares and rectangles that no mark fits and that are not trimmed later, so that the maker must know. */
const markNotes = (of: MarkedBlock): readonly Note[] => {
  const { path, id } = of.design;
  const inTrimmed = trimmedLabels(of.plan);
  const off = of.plan.pieces.flatMap(({ label, cut: { shape, size, exact, gives } }) => {
    // what gives several is sewn first, and trimmed
    if ((shape !== 'square' && shape !== 'rectangle') || gives > 1 || inTrimmed.has(label)) return [];
    return ([0, 1] as const)
      .filter((side) => !(shape === 'square' && side === 1) && Math.abs(size[side] - exact[side]) > 1e-9)
      .map((side) => ({ label, exact: exact[side] as Length, size: size[side] as Length }));
  });
  if (off.length === 0) return [];
  const friendly = friendlySize(of);
  const { across, down } = blockDrift(of.block, of.rule);
  const drift: Note = { code: 'accuracy/drift', level: 'warning', path, block: id, across, down };
  return [
    ...off.map((piece): Note => ({ code: 'cutting/off-marks', level: 'warning', path, block: id, ...piece, friendly })),
    ...(across === 0 && down === 0 ? [] : [drift]),
  ];
};

/** Pieces of units that are trimmed to their size once they are sewn. */
const trimmedLabels = ({ patches, steps }: BlockPlan): ReadonlySet<string> =>
  new Set(
    steps.flatMap(({ made }) =>
      made?.way.trimmed ? made.unit.patches.flatMap((one) => patches[one]?.piece ?? []) : [],
    ),
  );

/** Of the block without its frame. None where it has that size already, or where another block's size decides. */
const friendlySize = ({ design, rule }: MarkedBlock): BlockSize | null => {
  const shape = design.shape.kind === 'framed' ? design.shape.inner : design.shape;
  if (shape.kind === 'log-cabin' && shape.centreBlock !== null) return null;
  const bare = draftBlock({ ...design, shape });
  if (!bare.ok) return null;
  const [width] = bare.value.size;
  const { nearest } = rulerSizes({ block: bare.value, near: width, rule, each: 1 });
  return nearest !== null && Math.abs(nearest[0] - width) > 1e-9 ? nearest : null;
};
