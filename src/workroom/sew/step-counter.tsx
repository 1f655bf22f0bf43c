// How many of this step, or of this batch of all blocks, are sewn so far: tapped while one feeds them in a chain.

export interface StepCounterOf {
  readonly done: number;
  readonly total: number;
  readonly count: (to: number) => void;
}

export const StepCounter = ({ done, total, count }: StepCounterOf) => (
  <fieldset className="sew-counter">
    <legend className="unseen">How many so far</legend>
    <button type="button" aria-label="One less sewn" disabled={done === 0} onClick={() => count(done - 1)}>
      −
    </button>
    <span className="sew-count">
      <strong>{done}</strong> of {total} sewn
    </span>
    <button
      type="button"
      aria-label="One more sewn"
      disabled={done === total}
      onClick={() => count(done + 1)}
      className="sew-more"
    >
      +
    </button>
    {total > 1 && (
      <button type="button" disabled={done === total} onClick={() => count(total)} className="sew-all">
        All
      </button>
    )}
  </fieldset>
);
