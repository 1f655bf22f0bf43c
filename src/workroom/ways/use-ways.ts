// The choices that are worth it, as they are found for the quilt as it is; an edit begins anew.
import { useEffect, useState, useSyncExternalStore } from 'react';
import type { QuiltDocument } from '#craft/design';
import type { WaysSeen } from '#workroom/compute';
import type { JsonObject } from '#workroom/editing';
import { useQuilt, useRoom } from '#workroom/room';

export interface Ways {
  /** Null before the first is found. */
  readonly seen: WaysSeen | null;
  readonly isDone: boolean;
}

/** How long one rests after an edit before choices are planned. */
const restMs = 300;

export const useWays = (): Ways => {
  const { planner } = useRoom();
  const { document } = useQuilt();
  const { working, reply } = useSyncExternalStore(planner.subscribe, planner.state);
  const isSound = working !== 'first' && reply?.ok === true;
  const [found, setFound] = useState<Ways & { readonly of: QuiltDocument | null }>({
    of: null,
    seen: null,
    isDone: false,
  });
  useEffect(() => {
    if (!isSound) return;
    let end = (): void => undefined;
    const rest = setTimeout(() => {
      end = planner.ways(document as unknown as JsonObject, {
        tell: (seen) => setFound({ of: document, seen, isDone: false }),
        done: () => setFound((now) => ({ ...now, isDone: true })),
      });
    }, restMs);
    return () => {
      clearTimeout(rest);
      end();
    };
  }, [planner, document, isSound]);
  // what was found for the quilt before its last edit stands until there is something new
  return { seen: found.seen, isDone: found.of === document && found.isDone };
};
