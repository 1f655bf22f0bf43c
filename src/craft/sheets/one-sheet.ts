// Could all pieces be cut from one sheet, by what the program of sheets in fractions says? Its answer may be no; it never says
// for certain that they can.
import type { Cutting, Job } from '#craft/strips';
import { sheetTaskFor } from './fill.ts';
import { relaxationFor, relaxed } from './linear.ts';

/** Table cells looked at in one step: about 10 ms. */
const stepWork = 2_000_000;
/** Above one by more than rounding in the program. */
const over = 1 + 1e-5;

/**
 * Some rounds of the program a step.
 *
 * @returns whether it is proven that cloth of the job's width and this length does not hold the pieces
 */
export function* isTooShort(of: {
  readonly job: Job;
  readonly cutting: Cutting;
  readonly length: number;
}): Generator<void, boolean, void> {
  const { job, cutting, length } = of;
  const sheet = { width: job.width, height: length, cost: 1, stock: null };
  const relaxation = relaxationFor(sheetTaskFor({ kinds: job.kinds, cutting, sheets: [sheet], solver: null }));
  let done = 0;
  for (;;) {
    const { bound, state, work } = relaxed(relaxation);
    if (bound > over) return true;
    if (state === 'solved') return false;
    done += work;
    if (done < stepWork) continue;
    done = 0;
    yield;
  }
}
