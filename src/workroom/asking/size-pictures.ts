// The picture beside an answer on wrong sizes: the last unit that was measured, what it came to, what to look at and what can be saved.
import type { BlockPlan, PlannedStep, QuiltPlan, TopStep } from '#craft';
import type { SizeModel } from '#craft/accuracy';
import type { Diagnosis } from '#craft/diagnosis';
import { placeOfThing, type TopThing } from '#craft/setting';
import { topAsBlock } from '#craft/top-sizes';
import { clothSignsFor } from '#paper/cloth';
import { topPartNames } from '#paper/diagnosis';
import { type Drawing, drawWrongSize, drawWrongTop } from '#paper/drawing';
import { inWords, lengthText, nearText } from '#paper/words';

export const topPictureOf = (plan: QuiltPlan, models: readonly SizeModel[], diagnosis: Diagnosis): Drawing => {
  const { sizes, verdict } = diagnosis;
  const last = Math.max(...sizes.map(({ step }) => step));
  const step = plan.top.steps[last] as TopStep;
  const read = sizes.filter((size) => size.step === last);
  const at = verdict.kind === 'cut' ? (verdict.at ?? null) : null;
  const blamed = piecesBlamed(verdict).map((piece) => ({ piece, things: thingsCalled(plan, step, { piece, at }) }));
  const ringed = blamed.filter(({ things }) => things.length > 0);
  const names = inWords(ringed.map(({ piece }) => topPartNames(plan)(piece, at).short));
  const [across, down] = [readWords(diagnosis, last, 'across'), readWords(diagnosis, last, 'down')];
  return drawWrongTop({
    plan,
    signs: clothSignsFor(plan),
    seam: diagnosis.seam,
    step,
    ringed: ringed.flatMap(({ things }) => things),
    lines: models
      .filter((model) => read.some(({ way }) => model.step === last && model.way === way))
      .map(({ line }) => line),
    // rows of blocks at the sides are measured as they are sewn, level
    words: step.angle % 180 === 90 ? [down, across] : [across, down],
    fitPt: fit,
    alt: `The unit after step ${step.number}, dashed where it was measured${ringed.length === 0 ? '' : `, ${names} ringed`}`,
  });
};

/** What a step joins, of that label, or of it those at some places. */
const thingsCalled = (
  { top }: QuiltPlan,
  { things }: TopStep,
  { piece, at }: { readonly piece: string; readonly at: readonly number[] | null },
): readonly TopThing[] => {
  const { patches } = topAsBlock(top);
  return things.flat().filter((thing) => {
    const place = placeOfThing(top.set, thing);
    return patches[place]?.piece === piece && (at?.includes(place) ?? true);
  });
};

/** "17 11/16 in, should be 18½ in"; empty where it was not measured. */
const readWords = ({ sizes, unit }: Diagnosis, step: number, way: 'across' | 'down'): string => {
  const size = sizes.findLast((one) => one.step === step && one.way === way);
  if (size === undefined) return '';
  const found = lengthText(size.size, unit);
  return Math.abs(size.off) < 1e-9 ? `${found}, right` : `${found}, should be ${nearText(size.drawn, unit)}`;
};

/** Narrower than its place on a screen: its letters are read there. */
const fit = [250, 250] as const;

export const blockPictureOf = (plan: QuiltPlan, block: BlockPlan, diagnosis: Diagnosis): Drawing => {
  const { sizes, rescues, verdict } = diagnosis;
  const last = Math.max(...sizes.map(({ step }) => step));
  const step = block.steps[last] as PlannedStep;
  const trim = rescues.find((rescue) => rescue.kind === 'trim');
  const strips = rescues.find((rescue) => rescue.kind === 'strips');
  const unpicked = rescues.flatMap((one) => (one.kind === 'resew' || one.kind === 'replace' ? one.steps : []));
  const again = [...new Set(unpicked)].map((one) => one + 1);
  const pieces = piecesBlamed(verdict);
  const isWhole = last === block.steps.length - 1;
  return drawWrongSize({
    block,
    signs: clothSignsFor(plan),
    seam: diagnosis.seam,
    step,
    pieces,
    again,
    trim: trim?.by ?? null,
    trimAt: trim?.at ?? null,
    strips: isWhole && trim === undefined ? (strips?.finished ?? null) : null,
    words: [readWords(diagnosis, last, 'across'), readWords(diagnosis, last, 'down')],
    fitPt: fit,
    alt: altOf(step, { pieces, again, isTrimmed: trim !== undefined }),
  });
};

const piecesBlamed = (verdict: Diagnosis['verdict']): readonly string[] => {
  switch (verdict.kind) {
    case 'cut':
    case 'cut-both':
      return [verdict.piece];
    case 'swap':
      return verdict.pieces;
    default:
      return [];
  }
};

const altOf = (
  { number }: PlannedStep,
  of: { readonly pieces: readonly string[]; readonly again: readonly number[]; readonly isTrimmed: boolean },
): string =>
  [
    `The unit after step ${number}`,
    ...(of.pieces.length === 0 ? [] : [`${of.pieces.join(' and ')} ringed`]),
    ...(of.again.length === 0 ? [] : [`the seams to sew again dashed: step ${of.again.join(', ')}`]),
    ...(of.isTrimmed ? ['a dashed line to trim to'] : []),
  ].join(', ');
