// Stands in for fast-check while fuzzing: all of it, but more cases and another seed.

import * as fastCheck from 'fast-check';

const { SEAMSTEAD_RUNS: runs, SEAMSTEAD_SEED: seed } = process.env;

export * from 'fast-check';
export const assert = (property, wishes = {}) =>
  fastCheck.assert(property, {
    ...wishes,
    numRuns: Math.max(wishes.numRuns ?? 0, Number(runs)),
    seed: seed ? Number(seed) : Date.now() | 0,
  });

const { default: _, ...rest } = fastCheck;
const fuzzed = { ...rest, assert };
export default fuzzed;
