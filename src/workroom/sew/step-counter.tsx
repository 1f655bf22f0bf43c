// How many of this step are sewn so far: tapped while one feeds them in a chain.
import type { StepLine } from '#workroom/compute';
import type { Sewing } from './use-sewing.ts';

export const StepCounter = ({ sewing, step }: { readonly sewing: Sewing; readonly step: StepLine }) => {
  const done = sewing.countOf(step);
  const count = (to: number): void => sewing.count(step, to);
  return (
    <fieldset className="sew-counter">
      <legend className="unseen">How many so far</legend>
      <button type="button" aria-label="One less sewn" disabled={done === 0} onClick={() => count(done - 1)}>
        −
      </button>
      <span className="sew-count">
        <strong>{done}</strong> of {step.total} sewn
      </span>
      <button
        type="button"
        aria-label="One more sewn"
        disabled={done === step.total}
        onClick={() => count(done + 1)}
        className="sew-more"
      >
        +
      </button>
      {step.total > 1 && (
        <button type="button" disabled={done === step.total} onClick={() => count(step.total)} className="sew-all">
          All
        </button>
      )}
    </fieldset>
  );
};
