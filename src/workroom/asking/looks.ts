// What one view alone shows of a plan, worked out when it is looked at: each look takes the plan and what of it is in sight.
import type { QuiltPlan } from '#craft';
import { seeChainPictures, seeChainStep, seeChains } from './seen-chains.ts';
import { seeCutSteps } from './seen-cut-steps.ts';
import { seeCutting } from './seen-cutting.ts';
import { seeFinish } from './seen-finish.ts';
import { seePressing } from './seen-pressing.ts';
import { seePrints } from './seen-prints.ts';
import { seeEntry, seeSewing, seeStep } from './seen-sewing.ts';
import { seeSizes } from './seen-sizes.ts';
import { seeVersion } from './seen-version.ts';

const looks = {
  chainPictures: seeChainPictures,
  chains: seeChains,
  chainStep: seeChainStep,
  cutting: seeCutting,
  cutSteps: seeCutSteps,
  finish: seeFinish,
  pressing: seePressing,
  prints: seePrints,
  sewing: seeSewing,
  sewingEntry: seeEntry,
  sewingStep: seeStep,
  sizes: seeSizes,
  version: seeVersion,
};

export type LookName = keyof typeof looks;
/** What of the plan is in sight. */
export type Look<Name extends LookName> = Parameters<(typeof looks)[Name]>[1];
export type Seen<Name extends LookName> = ReturnType<(typeof looks)[Name]>;

export const lookAt = <Name extends LookName>(plan: QuiltPlan, name: Name, look: Look<Name>): Seen<Name> => {
  const see = looks[name] as (plan: QuiltPlan, look: Look<Name>) => Seen<Name>;
  return see(plan, look);
};
