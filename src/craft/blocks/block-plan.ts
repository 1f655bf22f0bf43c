// The blocks of a plan: one entry per block, colouring and mirror image that the top uses, with its
// pieces cut to size and its steps numbered and counted over the whole quilt.
import type { Natures } from '#craft/cloths';
import { type Cut, type CutRule, patchCut, straightOnEdge } from '#craft/cutting';
import type { BlockDesign, Quilt } from '#craft/design';
import { type DraftedBlock, mirrored, mirroredSide, outlineOf } from '#craft/drafting';
import { mirroredSections, onPaper, paperCut, type Sections } from '#craft/foundation';
import { cornerTolerance } from '#craft/limits';
import { type Length, length } from '#craft/measure';
import {
  type Lying,
  machineTurn,
  type Part,
  type PiecedBlock,
  type PieceKind,
  type SewingStep,
  wholeTurn,
} from '#craft/piecing';
import type { BlockNesting, BlockPlan, Note, PlannedPiece, PlannedStep, StepWay } from '#craft/plan';
import { type BlockPressing, isSpun, type Press, pressInMirror } from '#craft/pressing';
import type { PlacedBlock } from '#craft/setting';
import type { DrawnCloths } from '#craft/tones';
import { setsOf, stageFor } from '#craft/ways';
import type { Arc, Outline } from '#ground/arc';
import { at, boxOf, type Point, type Polygon } from '#ground/plane';
import type { Recall } from '#ground/recall';
import { elsewhereNotes, markNotes, piecingNotes } from './block-notes.ts';
import { entryName, type PiecedEntry, pieceKey } from './pieced-entries.ts';
import { type MadeUnit, notTakenNote, setUses, type UnitAt, unitAt, unmetNotes, wayCutAt } from './unit-ways.ts';

export interface BlockPlans {
  readonly blocks: readonly BlockPlan[];
  readonly notes: readonly Note[];
}

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
    core: block.patches.length - (block.added ?? []).length,
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
      ...wayOfStep(step, { made, steps: pieced.steps, count, among, seam: of.rule.seam }),
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
    readonly steps: readonly SewingStep[];
    readonly count: number;
    readonly among: Among;
    readonly seam: Length;
  },
): Partial<Pick<PlannedStep, 'made' | 'unfinished'>> => {
  const { made, count, seam } = of;
  const at = unitAt(made, step);
  // pieces that are only cut larger are joined as ever, and trimmed in the end
  if (at === null) return {};
  const { unit, way, set } = at.made;
  const units = count * unitsOfStep(step, at, of);
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

/** In one block. Where a print stands upright, units of one kind that lie otherwise have steps of their own, and share in the kind. */
const unitsOfStep = (
  step: SewingStep,
  at: UnitAt,
  of: { readonly made: readonly MadeUnit[]; readonly steps: readonly SewingStep[] },
): number => {
  const stage = stageName(at);
  const alike = of.steps.filter((other) => {
    const found = unitAt(of.made, other);
    return found !== null && stageName(found) === stage;
  });
  const all = alike.reduce((sum, { perBlock }) => sum + perBlock, 0);
  const units = of.made.filter(({ key }) => key === at.made.key).length;
  return (units * step.perBlock) / all;
};

/** Steps that come to the same in units of one kind have one name: places of one role may stand for each other. */
const stageName = ({ made: { key, way }, parts }: UnitAt): string =>
  JSON.stringify([key, parts.flatMap((places) => places.map((place) => way.roles[place] as number)).toSorted()]);

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
