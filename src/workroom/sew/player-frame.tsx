// How a block's steps and the batches of all blocks are played alike: one of them, told as it is come to, with the rest beside it; in
// large type it stands alone, to be read beside the machine.
import { type ReactNode, useEffect, useMemo } from 'react';
import { useMedia, usePreferences, useRoom } from '#workroom/room';
import { EntryStrip } from './entry-strip.tsx';
import type { SewPlace } from './sew-address.ts';
import type { Sewing } from './use-sewing.ts';

/** How large the letters in its pictures are, and who cuts. */
export const usePictured = (type: SewPlace['type']) => {
  const { preferences } = useRoom();
  const { hand } = usePreferences(preferences);
  const isNarrow = useMedia('(max-width: 700px)');
  const letters = isNarrow || type === 'large' ? 'large' : 'usual';
  return useMemo(() => ({ letters, hand }) as const, [letters, hand]);
};

/** @param of.told what is said of it; null before it is shown */
export const useArrival = (of: {
  readonly sewing: Sewing;
  readonly entry: string;
  readonly step: number;
  readonly told: string | null;
}): void => {
  const { entry, step, told } = of;
  const { arrived } = of.sewing;
  const { say } = useRoom();
  useEffect(() => arrived(entry, step), [arrived, entry, step]);
  useEffect(() => {
    if (told !== null) say(told);
  }, [told, say]);
};

export const PlayerFrame = (of: {
  readonly sewing: Sewing;
  readonly entry: string;
  readonly type: SewPlace['type'];
  /** Null before it is drawn. */
  readonly card: ReactNode | null;
  /** What stands beside it, and its name. */
  readonly side: ReactNode;
  readonly sideName: string;
}) => {
  const { sewing, entry, type, card, side, sideName } = of;
  if (type === 'large') return <div className="sew-large">{card}</div>;
  return (
    <>
      <EntryStrip sewing={sewing} here={entry} />
      <div className="view-parts sew-parts">
        <div className="stage">
          {card ?? (
            <p className="empty" role="status">
              Laying it out …
            </p>
          )}
        </div>
        <aside className="side" aria-label={sideName}>
          {side}
        </aside>
      </div>
    </>
  );
};
