// The steps of a form of sizes as they lie in the quilt: by row, section and border of the top; a block's are one group without a name.
import type { SizesSeen } from '#workroom/compute';

export type SizeStep = SizesSeen['steps'][number];

export interface SizeGroup {
  readonly place: string;
  readonly steps: readonly SizeStep[];
}

/** Only steps after which something is measured, each beside those before and after it that have the same place. */
export const sizeGroups = (steps: readonly SizeStep[]): readonly SizeGroup[] => {
  const groups: { readonly place: string; readonly steps: SizeStep[] }[] = [];
  for (const step of steps) {
    if (step.across === '' && step.down === '') continue;
    const last = groups.at(-1);
    if (last?.place === step.place) last.steps.push(step);
    else groups.push({ place: step.place, steps: [step] });
  }
  return groups;
};

/** "step 4", "steps 4 to 12" */
export const stepsText = (steps: readonly SizeStep[]): string => {
  const [first, last] = [steps[0]?.number, steps.at(-1)?.number];
  return first === last ? `step ${first}` : `steps ${first} to ${last}`;
};
