// How does a check size come about? It is the sum of what is cut, less two allowances and the turn of the cloth at every seam
// crossed; where seams lie slanted, each counts with the cosine of its slant. Linear in every cut and every allowance, and so exact.
import type { Cut } from '#craft/cutting';
import { cornerTolerance } from '#craft/limits';
import { type Length, length, tidy } from '#craft/measure';
import { checkTurn, graphOf, outlineOfUnit } from '#craft/piecing';
import type { Arc } from '#ground/arc';
import { boxOf, dot, type Point, type Polygon, turned } from '#ground/plane';
import { type SeamSteps, seamSteps } from './seam-steps.ts';
import { isKeptTrue, type SewnBlock, type SewnPatch, type SewnStep, unitOf } from './sewn-block.ts';
import { type Crossed, type MeasuredWay, type SizePath, sizePath } from './size-path.ts';

export type Way = 'across' | 'down';

/** The size of one unit one way. */
export interface SizeModel {
  /** Index of the step after which it is measured. */
  readonly step: number;
  readonly way: Way;
  /** As drawn. */
  readonly drawn: Length;
  /** Of pieces cut on the marks they are cut on, sewn as they should be. */
  readonly expected: Length;
  readonly cuts: readonly CutTerm[];
  readonly seams: readonly SeamTerm[];
  /** Units on the way that were trimmed to their size; none where missing. */
  readonly trims?: readonly TrimTerm[];
  /** Where it is measured, on the unit's finished outline. */
  readonly line: readonly [Point, Point];
}

/** How much the size grows for each unit that a cut of a piece is too large. */
export interface CutTerm {
  readonly patch: number;
  readonly piece: string;
  /** Which side of a rectangle, as its cut lists them; 0 for all other shapes, whose cut is one size. */
  readonly side: 0 | 1;
  readonly grows: number;
  /** Of a block that is sewn into a top: what it is made of, as it counts in this size. Missing where a piece is cut in one. */
  readonly sewn?: SewnIn;
}

export type SewnIn = Pick<SizeModel, 'cuts' | 'seams'>;

/** How much the size shrinks for each unit that the seam's place takes more: once for the turn of the cloth, twice for the allowance. */
export interface SeamTerm {
  /** Index of the step that sews it; null where it is not known. */
  readonly step: number | null;
  readonly between: readonly [number, number];
  readonly shrinks: number;
}

/** How much the size grows for each unit that what a step made is trimmed too large, both ways. */
export interface TrimTerm {
  /** Index of the step that made it. */
  readonly step: number;
  readonly grows: number;
}

/**
 * Models of every check size of a block, across and down, in the order of its steps. A size is missing only where no straight
 * way within the unit joins its ends (a unit with inside corners), of steps on a foundation, whose lines keep it true, and of stages
 * before units that are made together are cut apart. What is trimmed to its size adds nothing to what it goes into.
 *
 * @source docs/formulas.md#accuracy
 */
export const sizeModels = (block: SewnBlock, seam: Length): readonly SizeModel[] => {
  const slack = cornerTolerance * Math.max(...block.finished);
  const outlines = block.patches.map(({ points }) => points);
  const graph = graphOf(
    outlines,
    slack,
    block.patches.map(({ arcs }) => arcs ?? []),
  );
  return block.steps.flatMap((made, step) => {
    if (made.onPaper !== undefined || made.made?.isLast === false) return [];
    const unit = unitOf(made);
    const steps = seamSteps(block, step);
    const { points: outline, arcs } = outlineOfUnit(graph, new Set(unit), slack);
    return waysOf({ outline, arcs, seam, slack }, made).flatMap(({ way, measured, drawn }) => {
      const path = sizePath({ outlines, unit, outline, seam, slack, way: measured });
      if (path === null) return [];
      const isTrue = (one: number): boolean => isKeptTrue(block.steps[one] as SewnStep);
      const cuts = cutTerms(block, path.crossed, { ends: path.ends, along: measured.along }).filter(
        ({ patch }) => !steps.stepsOf(patch).some((one) => isTrue(one) && block.steps[one]?.onPaper === undefined),
      );
      const seams = seamTerms(path.crossed, steps, measured.along).filter(
        (seam) => seam.step === null || !isTrue(seam.step),
      );
      const trims = trimTerms(block, path, steps, measured.along);
      const expected = tidy(drawn + offMarks(block, cuts));
      const line = [path.from, path.to] as const;
      return [{ step, way, drawn, expected, cuts, seams, ...(trims.length === 0 ? {} : { trims }), line }];
    });
  });
};

const waysOf = (
  unit: {
    readonly outline: Polygon;
    readonly arcs: readonly Arc[];
    readonly seam: Length;
    readonly slack: number;
  },
  step: SewnStep,
): readonly { readonly way: Way; readonly measured: MeasuredWay; readonly drawn: Length }[] => {
  const turn = checkTurn(unit);
  const level = turned({ x: 1, y: 0 }, -turn);
  const upright = turned({ x: 0, y: 1 }, -turn);
  const frame = boxOf(unit.outline.map((p) => turned(p, turn)));
  // a slanted unit in a mirrored block may be told the other way about
  const [across, down] = step.unfinished;
  const isTurned = (frame.width - frame.height) * (across - down) < -1e-6;
  return [
    { way: 'across', measured: isTurned ? wayAlong(upright, level) : wayAlong(level, upright), drawn: across },
    { way: 'down', measured: isTurned ? wayAlong(level, upright) : wayAlong(upright, level), drawn: down },
  ];
};

const wayAlong = (along: Point, across: Point): MeasuredWay => ({ along, across });

const cutTerms = (
  block: SewnBlock,
  crossed: readonly Crossed[],
  measured: { readonly ends: readonly [number, number]; readonly along: Point },
): readonly CutTerm[] => {
  const terms: CutTerm[] = [];
  crossed.forEach(({ patch, enters, leaves }, i) => {
    const sewn = block.patches[patch] as SewnPatch;
    const cut = (block.pieces.find(({ label }) => label === sewn.piece) as { readonly cut: Cut }).cut;
    const edges = [
      { normal: enters, weight: i === 0 ? measured.ends[0] : -dot(enters, measured.along) },
      { normal: leaves, weight: i === crossed.length - 1 ? measured.ends[1] : dot(leaves, measured.along) },
    ];
    for (const { normal, weight } of edges) {
      const side = sideAlong(cut, sewn.points, normal);
      const grows = weight * edgeShare(cut);
      const known = terms.findIndex((term) => term.patch === patch && term.side === side);
      const before = terms[known];
      if (before) terms[known] = { ...before, grows: before.grows + grows };
      else terms.push({ patch, piece: sewn.piece, side, grows });
    }
  });
  return terms.filter(({ grows }) => Math.abs(grows) > 1e-9).map((term) => ({ ...term, grows: tidy(term.grows) }));
};

/** Pieces that lie on the way one after another within one trimmed unit: its outer edges move by half of what it is too large. */
const trimTerms = (block: SewnBlock, path: SizePath, steps: SeamSteps, along: Point): readonly TrimTerm[] => {
  const trimmedBy = (patch: number): number | undefined =>
    steps.stepsOf(patch).find((step) => block.steps[step]?.made?.way.trimmed === true);
  const runs: { readonly step: number | undefined; readonly first: number; last: number }[] = [];
  path.crossed.forEach(({ patch }, i) => {
    const step = trimmedBy(patch);
    const run = runs.at(-1);
    const seam = i === 0 ? null : steps.stepBetween((path.crossed[i - 1] as Crossed).patch, patch);
    if (run !== undefined && run.step === step && seam !== null && isWithin(block, seam, step)) run.last = i;
    else runs.push({ step, first: i, last: i });
  });
  return runs.flatMap(({ step, first, last }) => {
    if (step === undefined) return [];
    const [enters, leaves] = [path.crossed[first] as Crossed, path.crossed[last] as Crossed];
    const before = first === 0 ? path.ends[0] : -dot(enters.enters, along);
    const after = last === path.crossed.length - 1 ? path.ends[1] : dot(leaves.leaves, along);
    return [{ step, grows: tidy((before + after) / 2) }];
  });
};

/** Whether a seam was sewn when a step's unit was made: by it, or by a stage before. */
const isWithin = (block: SewnBlock, seam: number, step: number | undefined): boolean =>
  step !== undefined && seam <= step && block.steps[seam]?.made !== undefined;

/**
 * How far each edge of a piece moves out for each unit that its cut is too large: half at either end of a rectangle, all round
 * a triangle as its square grows.
 *
 * @source docs/formulas.md#offset-triangle
 */
const edgeShare = ({ shape }: Cut): number => {
  if (shape === 'half-square') return 1 / (2 + Math.SQRT2);
  return shape === 'quarter-square' ? 1 / (2 + 2 * Math.SQRT2) : 1 / 2;
};

const isRectangle = ({ shape }: Cut): boolean => shape === 'square' || shape === 'rectangle';

/** Which of a rectangle's two cut sides lies along a normal: a piece may lie turned against the cut it is listed with. */
export const sideAlong = (cut: Cut, points: Polygon, normal: Point): 0 | 1 => {
  if (cut.shape !== 'rectangle') return 0;
  const places = points.map((p) => dot(p, normal));
  const long = Math.max(...places) - Math.min(...places);
  return Math.abs(long - cut.finished[0]) <= Math.abs(long - cut.finished[1]) ? 0 : 1;
};

/** Squares and rectangles are sewn as they are cut; what is trimmed after sewing comes true. */
const offMarks = (block: SewnBlock, terms: readonly CutTerm[]): number =>
  terms.reduce((all, { piece, side, grows }) => {
    const { cut } = block.pieces.find(({ label }) => label === piece) as { readonly cut: Cut };
    return isRectangle(cut) ? all + grows * (cut.size[side] - cut.exact[side]) : all;
  }, 0);

const seamTerms = (crossed: readonly Crossed[], steps: SeamSteps, along: Point): readonly SeamTerm[] =>
  crossed.slice(1).map((after, i) => {
    const before = crossed[i] as Crossed;
    return {
      step: steps.stepBetween(before.patch, after.patch),
      between: [before.patch, after.patch],
      shrinks: tidy(dot(before.leaves, along)),
    };
  });

/**
 * What the size shrinks by for each unit that all allowances are too wide, and for each unit that every seam's turn takes; of a top the
 * seams within its blocks counted in.
 */
export const sensitivity = (
  size: Pick<SizeModel, 'seams'> & Partial<SewnIn>,
): { readonly allowance: number; readonly fold: number } => {
  const fold = tidy(shrinkOf(size));
  return { allowance: length(2 * fold), fold };
};

const shrinkOf = ({ cuts = [], seams }: Parameters<typeof sensitivity>[0]): number =>
  seams.reduce((all, { shrinks }) => all + shrinks, 0) +
  cuts.reduce((all, { sewn }) => (sewn === undefined ? all : all + shrinkOf(sewn)), 0);

/** Seams that the size goes over, those within blocks counted in. */
export const seamsCrossed = ({ cuts, seams }: SewnIn): number =>
  cuts.reduce((all, { sewn }) => (sewn === undefined ? all : all + seamsCrossed(sewn)), seams.length);

/** By piece: what the size grows by for each unit that all cuts of its kind are too large. */
export const cutSensitivity = ({ cuts }: Pick<SizeModel, 'cuts'>): ReadonlyMap<string, number> => {
  const kinds = new Map<string, number>();
  for (const { piece, grows } of cuts) kinds.set(piece, (kinds.get(piece) ?? 0) + grows);
  return kinds;
};
