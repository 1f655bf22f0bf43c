// The two pictures of a step: as it lies on the board, and as it lies at the machine. The next part comes from its side; at the machine
// the unit turns, and the part is laid over.
import type { CSSProperties } from 'react';
import type { StepShown } from '#workroom/compute';
import { LivePicture } from './live-picture.tsx';
import type { SewSight } from './sew-address.ts';

export interface StepPicturesOf {
  readonly seen: StepShown;
  readonly sight: SewSight;
  readonly again: number;
}

export const StepPictures = ({ seen, sight, again }: StepPicturesOf) => {
  const motion = {
    '--away-x': seen.away[0],
    '--away-y': seen.away[1],
    '--turn': `${seen.turn}deg`,
  } as CSSProperties;
  return (
    <div className={`sew-pictures is-${sight}`}>
      <div className="sew-pair">
        {sight !== 'machine' && (
          <figure>
            <LivePicture picture={seen.board} className="sew-board" style={motion} again={again} />
            <figcaption>On the board</figcaption>
          </figure>
        )}
        {sight !== 'board' && (
          <figure>
            <LivePicture picture={seen.machine} className="sew-machine" style={motion} again={again} />
            <figcaption>At the machine</figcaption>
          </figure>
        )}
      </div>
    </div>
  );
};
