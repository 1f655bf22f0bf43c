// What has been corrected since the first edition, as the document lists it.
import type { QuiltPlan } from '#craft';

export interface Correction {
  /** The edition that has it right. */
  readonly edition: string;
  readonly text: string;
}

export const correctionsOf = ({ quilt }: QuiltPlan): readonly Correction[] => quilt.corrections;
