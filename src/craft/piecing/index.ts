// Piecing: which pieces a block takes, in what order they are joined, and the size after every seam.
import { cornerTolerance, type DraftedBlock, outlineOf } from '#craft/drafting';
import { type Length, length } from '#craft/measure';
import { drawingOf } from './chords.ts';
import { formSorter } from './congruence.ts';
import { kindsOf } from './kinds.ts';
import { labelAt } from './labels.ts';
import { logSteps } from './log-cabin.ts';
import type { PiecedBlock, PieceKind, SewingStep } from './pieced.ts';
import { type SewnBlock, stepsOf } from './steps.ts';
import { planJoins } from './tree.ts';

export { chordsOf, drawingOf } from './chords.ts';
export { labelAt } from './labels.ts';
export { machineTurn } from './machine.ts';
export type { Part, PiecedBlock, PieceKind, SewingStep } from './pieced.ts';
export { joinTop, type TopJoin } from './top.ts';
export { provenUpTo } from './tree.ts';

/**
 * Labels, steps and check sizes of one block in one colouring.
 *
 * @param block     tiled patches
 * @param fabrics   the fabric of each patch
 * @param lightness CIE L* of a fabric, for pressing
 * @param seam      allowance
 */
export const pieceBlock = (of: {
  readonly block: DraftedBlock;
  readonly fabrics: readonly string[];
  readonly lightness: (fabric: string) => number;
  readonly seam: Length;
}): PiecedBlock => {
  const { block, fabrics } = of;
  const larger = length(Math.max(...block.size));
  const slack = cornerTolerance * larger;
  const outlines = block.patches.map((patch) => outlineOf(patch, slack));
  const kindOf = kindsOf(
    outlines.map((points, i) => ({ points, fabric: fabrics[i] as string })),
    larger,
  );
  const sewn: SewnBlock = {
    outlines,
    kindOf,
    size: block.size,
    seam: of.seam,
    slack,
    lightnessOf: (patch) => of.lightness(fabrics[patch] as string),
  };
  if (block.patches.length === 1)
    return labelled({ block, fabrics, kindOf, steps: [], leastUnits: 'proven', stuck: null });
  if (block.added) {
    return labelled({ block, fabrics, kindOf, steps: logSteps(sewn, block.added), leastUnits: 'proven', stuck: null });
  }
  const drawing = drawingOf(outlines, slack);
  const tree = planJoins({ drawing, kindOf, formOf: formSorter({ patches: outlines, kindOf, size: larger }) });
  if ('stuck' in tree) return labelled({ block, fabrics, kindOf, steps: [], leastUnits: 'proven', stuck: tree.stuck });
  return labelled({ block, fabrics, kindOf, steps: stepsOf(sewn, tree), leastUnits: tree.leastUnits, stuck: null });
};

/** Renumbers kinds in the order of sewing and gives them their labels. */
const labelled = (of: {
  readonly block: DraftedBlock;
  readonly fabrics: readonly string[];
  readonly kindOf: readonly number[];
  readonly steps: readonly SewingStep[];
  readonly leastUnits: PiecedBlock['leastUnits'];
  readonly stuck: readonly number[] | null;
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
    joining: of.stuck ? 'none' : 'straight',
    steps,
    leastUnits: of.leastUnits,
    stuck: of.stuck ?? [],
  };
};
