// How true do people cut and sew? Limits within which single cuts and seams vary, besides any habit. Our own figures, not
// measured: half a thirty-second of an inch for a cut, half of that for an allowance.
import { inchIn, type Length, length, type Unit } from '#craft/measure';

export interface Care {
  /** A piece's cut size is off by at most this much, either way. */
  readonly cut: Length;
  /** An allowance wanders by at most this much from the maker's own habit, either way. */
  readonly seam: Length;
}

/** What is so in every seam of one maker and machine. */
export interface Habit {
  /** Each allowance is too wide by this much; below zero: too narrow. */
  readonly allowance: Length;
  /** What the turn of the cloth takes at each pressed seam. */
  readonly fold: Length;
}

export const trueHabit: Habit = { allowance: length(0), fold: length(0) };

const inches = { cut: 1 / 64, seam: 1 / 128, habit: 1 / 64 } as const;

export const usualCare = (unit: Unit): Care => ({
  cut: length(inches.cut * inchIn[unit]),
  seam: length(inches.seam * inchIn[unit]),
});

/** How far the allowance of a maker of whom nothing is known may be off by habit, either way: our own figure, not measured. */
export const unknownHabit = (unit: Unit): Length => length(inches.habit * inchIn[unit]);
