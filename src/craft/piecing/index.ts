// Piecing: which pieces a block takes, in what order they are joined, and the size after every seam.

import { drawingOf } from '#craft/chords';
import { type DraftedBlock, outlineOf } from '#craft/drafting';
import type { Likeness } from '#craft/fabric';
import type { Sections } from '#craft/foundation';
import { cornerTolerance } from '#craft/limits';
import { type Length, length } from '#craft/measure';
import { type Arc, landmarksOf } from '#ground/arc';
import { convexOutlines } from '#ground/outline';
import { centroid } from '#ground/plane';
import { noRecall, type Recall } from '#ground/recall';
import { formSorter } from './congruence.ts';
import { graphOf, outlineOfUnit } from './graph.ts';
import type { JoinTree } from './join.ts';
import { kindsOf } from './kinds.ts';
import { labelAt } from './labels.ts';
import { logSteps } from './log-cabin.ts';
import { paperJoins } from './on-paper.ts';
import type { PiecedBlock, PieceKind, SewingStep } from './pieced.ts';
import type { SewnBlock } from './sewn.ts';
import { stepsOf } from './steps.ts';
import { planJoins } from './tree.ts';

export { bentDivisions, forcedCorners } from './bent.ts';
export { checkTurn } from './check-size.ts';
export { formSorter } from './congruence.ts';
export type { SeamDivision } from './division.ts';
export { graphOf, outlineOfUnit, type PatchGraph } from './graph.ts';
export { labelAt } from './labels.ts';
export { type Lying, machineTurn, wholeTurn } from './machine.ts';
export type { Part, PiecedBlock, PieceKind, PressWish, SeamInPlace, SewingStep } from './pieced.ts';
export { joinTop, type TopJoin, type TopSeam, topSeams } from './top.ts';
export type { TopWish } from './top-pressing.ts';

/**
 * Labels, steps and check sizes of one block in one colouring.
 *
 * @param block     tiled patches
 * @param fabrics   the fabric of each patch
 * @param lightness CIE L* of a fabric, for pressing
 * @param likeness  how pieces of a fabric may lie and still be one kind; any turn and no mirror image when missing
 * @param seam      allowance
 * @param whole     patches that are made as a unit of their own, where a straight seam round them allows it
 * @param foundations of a block that is pieced on paper: all of its patches in the order of sewing; else its seams are chosen here
 * @param memory    of the orders of joining that were found before
 */
export const pieceBlock = (of: {
  readonly block: DraftedBlock;
  readonly fabrics: readonly string[];
  readonly lightness: (fabric: string) => number;
  readonly likeness?: (fabric: string) => Likeness;
  readonly seam: Length;
  readonly whole?: readonly (readonly number[])[];
  readonly foundations?: Sections | null;
  readonly memory?: Recall;
}): PiecedBlock => {
  const { block, fabrics, likeness = plainLikeness, whole = [], foundations = null, memory = noRecall } = of;
  const larger = length(Math.max(...block.size));
  const slack = cornerTolerance * larger;
  const outlines = block.patches.map((patch) => outlineOf(patch, slack));
  const arcs = block.patches.map((patch) => patch.arcs ?? []);
  // what tells patches from each other: of curved ones their true corners, not those of chords
  const landmarks = outlines.map((points, i) => landmarksOf({ points, arcs: arcs[i] as readonly Arc[] }, slack));
  const kindOf = kindsOf(
    outlines.map((points, i) => ({
      points,
      arcs: arcs[i] as readonly Arc[],
      fabric: fabrics[i] as string,
      likeness: likeness(fabrics[i] as string),
    })),
    larger,
  );
  const graph = once(() => graphOf(outlines, slack, arcs));
  const convexOutline = convexOutlines(outlines, slack);
  const sewn: SewnBlock = {
    outlines,
    arcs,
    kindOf,
    size: block.size,
    seam: of.seam,
    slack,
    lightnessOf: (patch) => of.lightness(fabrics[patch] as string),
    looksAlikeTurned: (patch) => likeness(fabrics[patch] as string).turns === 'any',
    outlineOf: (unit) => outlineOfUnit(graph(), new Set(unit), slack),
    convexOutline,
  };
  const added = foundations ? [] : (block.added ?? []);
  const core = outlines.slice(0, outlines.length - added.length).map((_, patch) => patch);
  const turnsOf = (patch: number) => likeness(fabrics[patch] as string).turns;
  const formOf = formSorter({ patches: landmarks, kindOf, size: larger, turnsOf });
  const tree: JoinTree | null = foundations
    ? { ...paperJoins(foundations, formOf), leastUnits: 'proven' }
    : core.length > 1
      ? memory.recall(
          JSON.stringify(['joined', landmarks, arcs, kindOf, core.length, larger, core.map(turnsOf), whole]),
          () =>
            planJoins(
              {
                drawing: drawingOf(outlines, slack, arcs),
                graph,
                formOf,
                kindOf,
                isConvex: (unit) => convexOutline(unit) !== null,
                centres: outlines.map(centroid),
                isCurved: arcs.some((some) => some.length > 0),
                whole,
              },
              core,
            ),
        )
      : null;
  const { steps: coreSteps, seams } = tree ? stepsOf(sewn, tree) : { steps: [], seams: [] };
  const logs = logSteps({ block: sewn, core: coreSteps, added });
  const steps = [...coreSteps, ...logs];
  const logSeams = logs.map(({ line, heading }, i) => ({ step: coreSteps.length + i, path: line, heading }));
  return labelled({
    block,
    fabrics,
    kindOf,
    steps,
    seams: [...seams, ...logSeams],
    leastUnits: tree?.leastUnits ?? 'proven',
  });
};

const plainLikeness = (): Likeness => ({ turns: 'any', flips: false });

const once = <T>(make: () => T): (() => T) => {
  const made: T[] = [];
  return () => {
    if (made.length === 0) made.push(make());
    return made[0] as T;
  };
};

const joiningOf = (steps: readonly SewingStep[]): PiecedBlock['joining'] => {
  if (steps.some((step) => step.kind === 'set-in')) return 'set-in';
  if (steps.some((step) => step.kind === 'partial-begin')) return 'partial';
  return steps.some((step) => step.kind === 'curved') ? 'curved' : 'straight';
};

/** Renumbers kinds in the order of sewing and gives them their labels. */
const labelled = (of: {
  readonly block: DraftedBlock;
  readonly fabrics: readonly string[];
  readonly kindOf: readonly number[];
  readonly steps: readonly SewingStep[];
  readonly seams: PiecedBlock['seams'];
  readonly leastUnits: PiecedBlock['leastUnits'];
}): PiecedBlock => {
  const order = new Map<number, number>();
  const meet = (kind: number): void => {
    if (!order.has(kind)) order.set(kind, order.size);
  };
  for (const step of of.steps) for (const part of step.join) if ('piece' in part) meet(part.piece);
  of.kindOf.forEach(meet);
  const renumbered = of.kindOf.map((kind) => order.get(kind) as number);
  const kinds = [...order.values()].map((place): PieceKind => {
    const patch = renumbered.indexOf(place);
    return {
      label: labelAt(place),
      fabric: of.fabrics[patch] as string,
      tone: of.block.patches[patch]?.tone as string,
      patch,
      perBlock: renumbered.filter((k) => k === place).length,
    };
  });
  const steps = of.steps.map((step) => ({
    ...step,
    join: step.join.map((part) =>
      'piece' in part ? { piece: order.get(part.piece) as number } : part,
    ) as unknown as SewingStep['join'],
  }));
  return {
    kinds,
    kindOf: renumbered,
    joining: joiningOf(steps),
    steps,
    seams: of.seams,
    leastUnits: of.leastUnits,
  };
};
