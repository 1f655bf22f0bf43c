// Twenty simulated students: what they did is known here, what they are told is asked of the command and of the form.
import type { BlockPlan } from '#craft';
import { anywhere, type CutTerm, type SizeModel, sewByChance, sizeModels, usualCare } from '#craft/accuracy';
import { length } from '#craft/measure';
import { chanceFrom } from '#ground/chance';
import { toNumber } from '#ground/exact';
import { example } from './asked.ts';
import { planned } from './documents.ts';

export interface Student {
  readonly example: string;
  readonly block: string;
  /** Each allowance is so much too wide, in the document's unit. */
  readonly habit: number;
  /** A piece that is cut too wide by so much. */
  readonly wrong?: readonly [piece: string, by: number];
  /** Steps after which the unit is measured; all where none are named. */
  readonly steps?: readonly number[];
  /** Marks of the ruler in one unit. */
  readonly marks: number;
  readonly expects: string;
}

export const students: Readonly<Record<string, Student>> = {
  'sews true': { example: 'harvest-home-throw', block: 'cabin', habit: 0, marks: 16, expects: 'true' },
  'sews 1/32 in too wide': { example: 'harvest-home-throw', block: 'cabin', habit: 1 / 32, marks: 16, expects: 'wide' },
  'sews 1/32 in too narrow': {
    example: 'harvest-home-throw',
    block: 'cabin',
    habit: -1 / 32,
    marks: 16,
    expects: 'narrow',
  },
  'sews 1/16 in too wide': { example: 'orchard-gate', block: 'cabin', habit: 1 / 16, marks: 8, expects: 'wide' },
  'sews 1/64 in too wide and reads to 1/32 in': {
    example: 'orchard-gate',
    block: 'cabin',
    habit: 1 / 64,
    marks: 32,
    expects: 'wide',
  },
  'measures every second step': {
    example: 'drying-barn',
    block: 'cabin',
    habit: 1 / 24,
    steps: [2, 4, 6, 8, 10, 12],
    marks: 16,
    expects: 'wide',
  },
  'measures the first round alone': {
    example: 'drying-barn',
    block: 'cabin',
    habit: 1 / 16,
    steps: [1, 2, 3, 4],
    marks: 16,
    expects: 'wide',
  },
  'measures the last step alone': {
    example: 'drying-barn',
    block: 'cabin',
    habit: 1 / 32,
    steps: [12],
    marks: 16,
    expects: 'too-few',
  },
  'measures one step alone': {
    example: 'orchard-gate',
    block: 'cabin',
    habit: 0,
    steps: [1],
    marks: 16,
    expects: 'too-few',
  },
  'cuts a log 1/4 in too wide': {
    example: 'harvest-home-throw',
    block: 'cabin',
    habit: 0,
    wrong: ['F', 1 / 4],
    marks: 16,
    expects: 'cut F',
  },
  'cuts a log 1/8 in too narrow': {
    example: 'harvest-home-throw',
    block: 'cabin',
    habit: 0,
    wrong: ['G', -1 / 8],
    marks: 16,
    expects: 'cut G',
  },
  'cuts the last log 1/8 in too wide': {
    example: 'harvest-home-throw',
    block: 'cabin',
    habit: 1 / 64,
    wrong: ['M', 1 / 8],
    marks: 32,
    expects: 'cut M',
  },
  'cuts the centre 1/8 in too large': {
    example: 'orchard-gate',
    block: 'cabin',
    habit: 0,
    wrong: ['A', 1 / 8],
    marks: 16,
    expects: 'cut A',
  },
  'sews too wide and cuts a log too narrow': {
    example: 'orchard-gate',
    block: 'cabin',
    habit: 1 / 32,
    wrong: ['I', -3 / 16],
    marks: 16,
    expects: 'cut I',
  },
  'sews a nine patch too wide': { example: 'bramble-lane', block: 'nine', habit: 1 / 16, marks: 16, expects: 'wide' },
  'sews a shoo fly too narrow': { example: 'bramble-lane', block: 'fly', habit: -1 / 16, marks: 16, expects: 'narrow' },
  'sews a star too wide': { example: 'lantern-lane', block: 'star', habit: 1 / 16, marks: 16, expects: 'wide' },
  'sews a ladder true': { example: 'twelve-fields', block: 'ladder', habit: 0, marks: 16, expects: 'true' },
  'sews a small cabin too wide': { example: 'biscuit-box', block: 'cabin', habit: 1 / 32, marks: 32, expects: 'wide' },
  'sews a large cabin too wide, in centimetres': {
    example: 'heron-hanging',
    block: 'cabin',
    habit: 0.1,
    marks: 10,
    expects: 'wide',
  },
};

const fractionText = (size: number, marks: number): string => {
  const parts = Math.round(size * marks);
  const [whole, rest] = [Math.floor(parts / marks), parts % marks];
  return rest === 0 ? `${whole}` : `${whole === 0 ? '' : `${whole} `}${rest}/${marks}`;
};

/** What a student writes down of one step. */
export interface Reading {
  readonly step: number;
  readonly width: string;
  readonly height: string;
}

/** What a student writes down of one block. */
export const readingsOf = (student: Student, seed: number): readonly Reading[] => {
  const { quilt, blocks } = planned(example(student.example));
  const block = blocks.find(({ id }) => id === student.block) as BlockPlan;
  const models = sizeModels(block, length(toNumber(quilt.seam)));
  const habit = { allowance: length(student.habit), fold: length(0) };
  const sewn = sewByChance(models, usualCare(quilt.unit), habit)(chanceFrom(seed), anywhere);
  const slip = ({ piece, side, grows }: CutTerm): number => {
    const cut = block.pieces.find(({ label }) => label === piece)?.cut.size ?? [0, 0];
    const isWidth = cut[side] === Math.min(...cut);
    return piece === student.wrong?.[0] && isWidth ? grows * student.wrong[1] : 0;
  };
  const sizeOf = (step: number, way: 'across' | 'down'): string => {
    const i = models.findIndex((model) => model.step === step && model.way === way);
    const model = models[i] as SizeModel;
    const slipped = model.cuts.reduce((all, cut) => all + slip(cut), 0);
    return fractionText(model.drawn + (sewn[i]?.off ?? 0) + slipped, student.marks);
  };
  const steps = student.steps ?? block.steps.map((_, step) => step + 1);
  return steps.map((step) => ({ step, width: sizeOf(step - 1, 'across'), height: sizeOf(step - 1, 'down') }));
};

/** As the command reads it. */
export const measuredText = (readings: readonly Reading[]): string =>
  readings.map(({ step, width, height }) => `${step}: ${width} x ${height}`).join('; ');
