// What a maker must know of a block before she begins: how its seams run, lines that would make it easier, pieces between two marks.
import { type BlockSize, blockDrift, rulerSizes } from '#craft/accuracy';
import { adviceFor, adviceForCurves, type CurvedAdvice } from '#craft/advice';
import type { CutRule } from '#craft/cutting';
import type { BlockDesign } from '#craft/design';
import { type DraftedBlock, draftBlock, outlineOf } from '#craft/drafting';
import { cornerTolerance } from '#craft/limits';
import type { Length } from '#craft/measure';
import type { PiecedBlock, SewingStep } from '#craft/piecing';
import type { BlockPlan, Note } from '#craft/plan';
import { at, boxOf, type Point } from '#ground/plane';
import { noRecall, type Recall } from '#ground/recall';

interface NotedBlock {
  readonly design: BlockDesign;
  readonly pieced: PiecedBlock;
  readonly block: DraftedBlock;
  /** Of the colourings of its block: lines are the same for all of them. */
  readonly isFirst: boolean;
  readonly memory: Recall | undefined;
}

export const piecingNotes = (of: NotedBlock): readonly Note[] => {
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

export const elsewhereNotes = (
  { finished, unfinished }: BlockPlan,
  { path, id, shape }: BlockDesign,
): readonly Note[] =>
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
export const markNotes = (of: MarkedBlock): readonly Note[] => {
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
