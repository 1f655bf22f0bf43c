// What is said of it? The seams, a piece, two pieces that changed places; or that two explanations agree with the sizes, none
// does, or that there are too few; or that a size is so far off that another block or step may have been measured.
import { type Care, type SewnBlock, type SizeModel, seamsCrossed, sensitivity, type Way } from '#craft/accuracy';
import { inchIn, type Length, length, type Unit } from '#craft/measure';
import type { TopPlan } from '#craft/plan';
import { rareChiSquare } from '#ground/least-squares';
import { never } from '#ground/outcome';
import type { Evidence } from './evidence.ts';
import type { Candidate } from './explanations.ts';
import type { Readings } from './readings.ts';
import { type Interval, mixed, type Weighed } from './weigh.ts';

export type Verdict =
  /** Nothing that could be told from the reading. */
  | { readonly kind: 'true' }
  | { readonly kind: 'wide' | 'narrow' }
  /** By so much too large; below zero: too small. Or else the seam of a step, by half of that; null where no seam does the same. */
  | {
      readonly kind: 'cut';
      readonly piece: string;
      readonly by: Length;
      readonly orSeam: number | null;
      /** Of several of that label in a top the one, or one of these, by their places; missing: all. */
      readonly at?: readonly number[];
    }
  /** Cut too large by the first of it one way, and by the second the other: of a rectangle its two sides, else across and down. */
  | { readonly kind: 'cut-both'; readonly piece: string; readonly by: readonly [Length, Length] }
  /** What the step made is trimmed to a size so much too large; below zero: too small. */
  | { readonly kind: 'trim'; readonly step: number; readonly by: Length }
  | { readonly kind: 'swap'; readonly pieces: readonly [string, string] }
  /** The first two agree with what was measured. */
  | { readonly kind: 'unclear' }
  /** No single thing explains it. */
  | { readonly kind: 'several' }
  | { readonly kind: 'too-few' }
  /** The size after this step is further off than seams and a slip explain: it may be another block, or another step. */
  | { readonly kind: 'far-off'; readonly step: number; readonly way: Way };

/** A block, or a top, and what was read of it. */
export interface Case {
  readonly block: SewnBlock;
  /** Where `block` stands for the whole top: its blocks and plain pieces are the patches, by their places. */
  readonly top?: TopPlan;
  readonly seam: Length;
  readonly unit: Unit;
  readonly models: readonly SizeModel[];
  readonly read: Readings;
  readonly care: Care;
}

/** Different sizes below which nothing is said; and how far limits may lie from the estimate, in inches. Our own figures. */
const enough = { sizes: 3, half: 1 / 32 } as const;
/** How much likelier than the next it must be to be said, and not to let it count toward the seam; marks that are a little slip; the share of a slip that is sure. Our own figures. */
const likely = { said: 3, counted: 5, slip: 1.5, sure: 0.95 } as const;

/** A share of the allowance that each may be off, as by the wrong edge of the foot; and a piece cut by the wrong line, in inches. Our own figures. */
const explains = { habit: 1 / 2, slip: 1 / 4 } as const;

/** The seams as all explanations worth considering have them, each by its share: of those whose slip these sizes tell. */
export const overall = (weighed: readonly Weighed[]): Interval => {
  const told = weighed.filter(({ isTold }) => isTold);
  const most = told[0]?.share ?? 0;
  const counted = told.filter(({ share }) => share * likely.counted >= most);
  if (counted.length === 0)
    return { value: length(0), low: length(Number.NEGATIVE_INFINITY), high: length(Number.POSITIVE_INFINITY) };
  return mixed(counted.flatMap(({ parts }) => parts));
};

export interface Judging extends Case {
  readonly evidence: Evidence;
  readonly weighed: readonly Weighed[];
  readonly allowance: Interval;
}

interface Judged {
  readonly verdict: Verdict;
  /** The explanation that it is taken from; null where nothing explains the sizes. */
  readonly likeliest: Weighed | null;
}

/** One wrong cut or an exchange may bring a size any way off that leaves cloth to sew; seams and slips together only so far. */
export const judged = (of: Judging): Judged => {
  const told = judgedBySize(of);
  const isOneSlip = slips.has(told.verdict.kind) && leavesCloth(of, told.likeliest);
  const isSewable = Math.abs(told.likeliest?.allowance.value ?? 0) <= explains.habit * of.seam;
  const far = isOneSlip && isSewable ? null : furthestOff(of);
  return far === null ? told : { verdict: { kind: 'far-off', step: far.step, way: far.way }, likeliest: null };
};

const slips: ReadonlySet<Verdict['kind']> = new Set(['cut', 'cut-both', 'trim', 'swap']);

/** Whether a piece cut so is still wider than its two allowances; a block of a top has no cut of its own. */
const leavesCloth = ({ block, seam }: Judging, likeliest: Weighed | null): boolean => {
  const explanation = likeliest?.candidate.explanation;
  if (explanation?.kind !== 'cut' && explanation?.kind !== 'one') return true;
  const size = block.pieces.find(({ label }) => label === explanation.piece)?.cut.size[explanation.side];
  return size === undefined || size + (likeliest?.cut?.value ?? 0) > 2 * seam;
};

/** The size that is furthest beyond what seams and a slip explain; null where all are within. */
const furthestOff = ({ evidence, seam, unit }: Judging): SizeModel | null => {
  const slip = explains.slip * inchIn[unit];
  const beyond = evidence.models.map((model, i) => {
    const habit = Math.abs(sensitivity(model).allowance) * explains.habit * seam;
    return Math.abs(evidence.off[i] as number) - habit - slip;
  });
  const most = Math.max(...beyond);
  return most > 1e-9 ? (evidence.models[beyond.indexOf(most)] as SizeModel) : null;
};

const judgedBySize = (of: Judging): Judged => {
  const { evidence, weighed, allowance } = of;
  const likeliest = weighed[0] ?? null;
  const overSeams = evidence.models.filter((model) => seamsCrossed(model) + (model.trims?.length ?? 0) > 0).length;
  const half = (allowance.high - allowance.low) / 2;
  const isVague = half > enough.half * inchIn[of.unit] && likeliest !== null && !isSureSlip(likeliest);
  if (likeliest === null || overSeams < enough.sizes || isVague) return { verdict: { kind: 'too-few' }, likeliest };
  if (likeliest.chiSquare > rareChiSquare(Math.max(1, likeliest.degrees)))
    return { verdict: { kind: 'several' }, likeliest };
  const said = saidOf(of, likeliest);
  return said === null
    ? { verdict: { kind: 'unclear' }, likeliest }
    : { verdict: verdictFrom(of, said), likeliest: said };
};

/** Said even where the seams beside it are told but roughly. */
const isSureSlip = ({ candidate, share, isTold }: Weighed): boolean =>
  candidate.explanation.kind !== 'habit' && isTold && share >= likely.sure;

/** Null where two explanations are nearly as likely, and would have different things done. */
const saidOf = (of: Judging, likeliest: Weighed): Weighed | null => {
  const next = of.weighed[1];
  if (next === undefined || likeliest.share >= likely.said * next.share) return likeliest;
  if (isOfOnePiece(likeliest, next)) return likeliest;
  const habit = [likeliest, next].find(({ candidate }) => candidate.explanation.kind === 'habit');
  const slip = [likeliest, next].find(({ cut }) => cut !== null)?.cut;
  if (habit === undefined || !slip) return null;
  // a slip of a mark or so, or of less than the habit makes, changes nothing of what is to be done
  const little = Math.max(likely.slip * of.read.fineness, wholeOff(of, habit.allowance.value));
  return Math.abs(slip.value) <= little ? habit : null;
};

/** One wrong cut, one way or both: either way the piece is cut anew. */
const isOfOnePiece = (...weighed: readonly [Weighed, Weighed]): boolean => {
  const [one, other] = weighed.map(({ candidate: { explanation } }) =>
    explanation.kind === 'cut' || explanation.kind === 'cut-both' ? explanation.piece : null,
  );
  return one !== null && one === other;
};

const verdictFrom = (of: Judging, { candidate, cut, other }: Weighed): Verdict => {
  const { allowance } = of;
  const { explanation } = candidate;
  switch (explanation.kind) {
    case 'habit': {
      const isTrue = allowance.low <= 0 && allowance.high >= 0;
      if (isTrue || wholeOff(of, allowance.value) < of.read.fineness / 2) return { kind: 'true' };
      return { kind: allowance.value > 0 ? 'wide' : 'narrow' };
    }
    case 'cut': {
      const by = (cut as Interval).value;
      const orSeam = Math.abs(by) / 2 < of.seam ? sameAsSeam(of, candidate, explanation.piece) : null;
      return { kind: 'cut', piece: explanation.piece, by, orSeam };
    }
    case 'one': {
      const { piece, at } = explanation;
      return { kind: 'cut', piece, by: (cut as Interval).value, orSeam: null, at };
    }
    case 'cut-both':
      return {
        kind: 'cut-both',
        piece: explanation.piece,
        by: [(cut as Interval).value, (other as Interval).value],
      };
    case 'trim':
      return { kind: 'trim', step: explanation.step, by: (cut as Interval).value };
    case 'swap':
      return { kind: 'swap', pieces: explanation.pieces };
    default:
      return never(explanation);
  }
};

/** How far a habit brings the whole block off, the way that is more. */
const wholeOff = ({ models, block }: Judging, allowance: number): number =>
  Math.max(
    0,
    ...models
      .filter(({ step }) => step === block.steps.length - 1)
      .map((model) => Math.abs(sensitivity(model).allowance * allowance)),
  );

/** The step joining a piece whose seam is crossed by all sizes that go over the piece, and by no others: one may be wrong for the other. */
const sameAsSeam = ({ block, evidence }: Judging, { moves }: Candidate, piece: string): number | null => {
  const steps = block.steps.flatMap(({ join }, step) => (join.includes(piece) ? [step] : []));
  const found = steps.find((step) =>
    evidence.models.every((model) => {
      const takes = model.seams.reduce((all, seam) => (seam.step === step ? all + seam.shrinks : all), 0);
      return Math.abs(takes - moves(model)) < 1e-9;
    }),
  );
  return found ?? null;
};
