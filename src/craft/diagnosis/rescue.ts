// What can be saved of a unit that came out the wrong size? Trimmed where it is too large; seams taken up again where that
// brings it right; the seams to come made narrower; strips round the finished block.
import { type SewnBlock, type SizeModel, sensitivity, type Way } from '#craft/accuracy';
import { inchIn, type Length, length, type Unit } from '#craft/measure';

export type Rescue =
  /** To the size as drawn, by so much in width and in height; at the edge of a piece that is too large, where it lies outside. */
  | {
      readonly kind: 'trim';
      readonly step: number;
      readonly to: Both;
      readonly by: Both;
      readonly at: string | null;
    }
  /** Unpick and sew again with this allowance. */
  | { readonly kind: 'resew'; readonly steps: readonly number[]; readonly allowance: Length }
  /** Unpick, and put in a piece of the right size, or the right piece. */
  | { readonly kind: 'replace'; readonly pieces: readonly string[]; readonly steps: readonly number[] }
  /** Units that a step made are trimmed wrong: to their size where they are too large, else made anew. */
  | { readonly kind: 'retrim'; readonly step: number; readonly to: Both; readonly anew: boolean }
  /** Sew all that is still to come with this allowance. */
  | { readonly kind: 'make-up'; readonly from: number; readonly allowance: Length }
  /** When the block is done: strips at its sides, and at top and bottom, that bring it to a size, unfinished. */
  | { readonly kind: 'strips'; readonly to: Both; readonly finished: Both; readonly cut: Both }
  /** Of a top: blocks that are too large, to their size; all to the smallest, where they are too small (null). */
  | { readonly kind: 'trim-blocks'; readonly piece: string; readonly to: Both | null }
  /** A single block that is off, by its places: taken out and trimmed; or another put in its place, where it is too small (null). */
  | { readonly kind: 'trim-one'; readonly piece: string; readonly at: readonly number[]; readonly to: Both | null }
  /** The longer side is held fuller while it is sewn on. */
  | { readonly kind: 'ease'; readonly by: Length }
  /** Borders to come are cut to what the quilt measures, not to the plan. */
  | { readonly kind: 'fit-borders' }
  /** The last border so much wider, finished, at the sides and at top and bottom: the quilt comes to its size. */
  | { readonly kind: 'widen-border'; readonly by: Both };

export type Both = readonly [across: Length, down: Length];

export type Fault =
  | { readonly kind: 'none' }
  /** The allowances are so much too wide. */
  | { readonly kind: 'habit'; readonly by: Length }
  | {
      readonly kind: 'cut';
      readonly piece: string;
      readonly by: Length;
      readonly orSeam: number | null;
      /** Places of it in a top, where not all of the label are wrong; null: all are. */
      readonly at: readonly number[] | null;
    }
  /** Wrong both ways. */
  | { readonly kind: 'cut-both'; readonly piece: string }
  | { readonly kind: 'trim'; readonly step: number; readonly by: Length }
  | { readonly kind: 'swap'; readonly pieces: readonly [string, string] };

export interface Wrong {
  readonly block: SewnBlock;
  readonly models: readonly SizeModel[];
  readonly seam: Length;
  readonly unit: Unit;
  readonly fineness: Length;
  readonly fault: Fault;
  /** The last step that was measured, and how much its unit is too large. */
  readonly step: number;
  readonly off: Both;
  /** How much too large the block will be, if what is still to be sewn is sewn as it should be. */
  readonly whole: Both;
}

/** Our own figures, in inches: the narrowest and the widest allowance that is worth sewing, and the narrowest strip. */
const sound = { least: 1 / 8, makingUp: 3 / 16, most: 3 / 8, strip: 1 / 4, wider: 1 } as const;

/** What may be done, the least work first. */
export const rescuesFor = (wrong: Wrong): readonly Rescue[] => [
  ...trims(wrong),
  ...makingUp(wrong),
  ...seamsAgain(wrong),
  ...strips(wrong),
];

const inches = ({ unit }: Wrong, value: number): number => value * inchIn[unit];

const drawnAfter = ({ models }: Wrong, step: number): Both | null => {
  const size = (way: Way) => models.find((model) => model.step === step && model.way === way)?.drawn;
  const [across, down] = [size('across'), size('down')];
  return across === undefined || down === undefined ? null : [across, down];
};

const trims = (wrong: Wrong): readonly Rescue[] => {
  const { off, step, fineness } = wrong;
  const to = drawnAfter(wrong, step);
  const by = off.map((one) => length(Math.max(0, one))) as unknown as Both;
  if (to === null || Math.max(...by) < fineness * (1 - 1e-9)) return [];
  return [{ kind: 'trim', step, to, by, at: outerPiece(wrong) }];
};

/** The piece that is too large, where it lies at an edge of the unit. */
const outerPiece = ({ fault, models, step }: Wrong): string | null => {
  if (fault.kind !== 'cut' && fault.kind !== 'cut-both') return null;
  const ends = models.flatMap((model) => (model.step === step ? [model.cuts[0], model.cuts.at(-1)] : []));
  return ends.some((end) => end?.piece === fault.piece) ? fault.piece : null;
};

const lastStep = ({ block }: Wrong): number => block.steps.length - 1;

/** Narrower, or wider, by as much as brings the block right both ways; only where both ways ask for nearly the same. */
export const makingUp = (wrong: Wrong): readonly Rescue[] => {
  const { models, step, seam, off, fineness, fault } = wrong;
  if (fault.kind !== 'habit' || Math.max(...off) >= fineness * (1 - 1e-9)) return [];
  const whole = models.filter((model) => model.step === lastStep(wrong));
  const changes = whole.map((model) => {
    const toCome = model.seams.filter((one) => one.step !== null && one.step > step);
    const takes = sensitivity({ seams: toCome }).allowance;
    const lacks = -(wrong.whole[model.way === 'across' ? 0 : 1] as number);
    return takes > 1e-9 ? lacks / takes : lacks > fineness / 2 ? Number.POSITIVE_INFINITY : 0;
  });
  const [most, least] = [Math.max(...changes), Math.min(...changes)];
  const allowance = length(seam - (most + least) / 2);
  const isSound = allowance >= inches(wrong, sound.makingUp) - 1e-9 && most - least < fineness / 2;
  return isSound && most > fineness / 8 ? [{ kind: 'make-up', from: step + 1, allowance }] : [];
};

export const seamsAgain = (wrong: Wrong): readonly Rescue[] => {
  const { fault, step, seam, fineness } = wrong;
  switch (fault.kind) {
    case 'none':
      return [];
    case 'habit':
      return fault.by > 0 && Math.min(...wrong.off) <= -fineness * (1 - 1e-9)
        ? [{ kind: 'resew', steps: Array.from({ length: step + 1 }, (_, i) => i), allowance: seam }]
        : [];
    case 'cut': {
      const steps = stepsTaking(wrong, fault.piece, fault.at);
      const anew: Rescue = { kind: 'replace', pieces: [fault.piece], steps };
      const allowance = length(seam + fault.by / 2);
      const isSound = allowance >= inches(wrong, sound.least) - 1e-9 && allowance <= inches(wrong, sound.most) + 1e-9;
      return fault.orSeam !== null && isSound ? [{ kind: 'resew', steps: [fault.orSeam], allowance }, anew] : [anew];
    }
    case 'cut-both':
      return [{ kind: 'replace', pieces: [fault.piece], steps: stepsTaking(wrong, fault.piece) }];
    case 'trim': {
      const to = wrong.block.steps[fault.step]?.unfinished;
      return to === undefined ? [] : [{ kind: 'retrim', step: fault.step, to, anew: fault.by < 0 }];
    }
    case 'swap': {
      const steps = [...new Set(fault.pieces.flatMap((piece) => stepsTaking(wrong, piece)))].sort((a, b) => a - b);
      return [{ kind: 'replace', pieces: fault.pieces, steps }];
    }
  }
};

/** Steps that have joined a piece, by its label; where only those at some places are wrong, the steps that have joined these. */
const stepsTaking = (
  { block, step: last }: Wrong,
  piece: string,
  at: readonly number[] | null = null,
): readonly number[] => {
  const isAsked = (patches: readonly number[]): boolean => at === null || patches.some((patch) => at.includes(patch));
  return block.steps
    .slice(0, last + 1)
    .flatMap(({ join, patches }, step) =>
      ([0, 1] as const).some((part) => join[part] === piece && isAsked(patches[part])) ? [step] : [],
    );
};

/** To the size of the other blocks; where the strips would be too narrow to sew, all blocks of the quilt need them, to a larger one. */
const strips = (wrong: Wrong): readonly Rescue[] => {
  const want = drawnAfter(wrong, lastStep(wrong));
  if (want === null || Math.min(...wrong.whole) > -wrong.fineness * (1 - 1e-9)) return [];
  const lacks = wrong.whole.map((off) => -off / 2) as unknown as Both;
  const narrow = Math.min(...lacks) < inches(wrong, sound.strip);
  const wider = narrow ? (wrong.unit === 'in' ? sound.wider : 2) : 0;
  const to = want.map((size) => length(size + wider)) as unknown as Both;
  const finished = lacks.map((lack) => length(lack + wider / 2)) as unknown as Both;
  const cut = finished.map((size) => length(size + 2 * wrong.seam)) as unknown as Both;
  return [{ kind: 'strips', to, finished, cut }];
};
