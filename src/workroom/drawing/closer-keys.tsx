// Below a drawing: keys to look closer, after those of the view's own.
import type { ReactNode } from 'react';
import { zoomStep } from './drawing-keys.ts';
import type { Looking } from './use-looking.ts';

export const CloserKeys = (of: {
  readonly looking: Looking;
  readonly keys: 'shown' | 'none';
  /** What is long may also be seen as wide as the screen. */
  readonly isLong: boolean;
  readonly foot: ReactNode;
}) => {
  const { looking, keys, isLong, foot } = of;
  if (keys === 'none' && foot === undefined) return null;
  return (
    <div className="drawing-foot">
      {foot}
      {keys === 'shown' && (
        <fieldset className="drawing-keys" aria-label="Look closer">
          <button type="button" onClick={() => looking.zoom(1 / zoomStep)} aria-label="Smaller">
            −
          </button>
          <button type="button" onClick={() => looking.fitAgain('whole')}>
            Whole
          </button>
          {isLong && (
            <button type="button" onClick={() => looking.fitAgain('start')}>
              Across
            </button>
          )}
          <button type="button" onClick={() => looking.zoom(zoomStep)} aria-label="Larger">
            +
          </button>
        </fieldset>
      )}
    </div>
  );
};
