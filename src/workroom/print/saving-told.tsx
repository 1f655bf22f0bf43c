// What becomes of a file that was asked for.
import { Problems, useQuilt } from '#workroom/room';
import type { Saving } from './use-saving.ts';

export const SavingTold = ({ state, stop }: Pick<Saving, 'state' | 'stop'>) => {
  const { document } = useQuilt();
  switch (state.at) {
    case 'rest':
      return null;
    case 'making':
      return (
        <div className="print-told is-passing">
          <p role="status">Making {state.name} …</p>
          <button type="button" onClick={stop}>
            Stop
          </button>
        </div>
      );
    case 'done':
      return (
        <div className="print-told is-passing">
          <p role="status">{state.words}</p>
        </div>
      );
    case 'trouble': {
      const { problems, more } = state.not.refusal;
      return (
        <div className="print-told" role="alert">
          <h2>{state.name} was not made</h2>
          <Problems problems={problems} more={more} document={document} />
          <div className="row">
            <button type="button" onClick={stop}>
              Put this away
            </button>
          </div>
        </div>
      );
    }
  }
};
