// What of a drawing can be chosen now, and what is: the things of the whole, or those inside of one that was gone into.
import { useCallback, useMemo, useState } from 'react';
import type { Scene, Thing } from './scene.ts';
import { inReadingOrder } from './scenes.ts';

export interface ChosenThings {
  /** In the order of reading. */
  readonly things: readonly Thing[];
  /** The thing that was gone into. */
  readonly entered: Thing | undefined;
  /** Whether these are the things inside of one. */
  readonly isInside: boolean;
  /** Key of the one that the keys stand at. */
  readonly current: string | null;
  /** Goes into a thing, to one that lies in it. */
  readonly enter: (thing: Thing, first: Thing) => void;
  readonly leave: () => void;
  /** Stands at another thing inside. */
  readonly standAt: (inner: Thing) => void;
}

export const useChosenThings = (scene: Scene, chosen: string | null): ChosenThings => {
  const [inside, setInside] = useState<string | null>(null);
  const [inner, setInner] = useState<string | null>(null);
  const entered = inside === null ? undefined : scene.things.find(({ key }) => key === inside);
  const within = useMemo(() => entered?.inside?.() ?? null, [entered]);
  const things = useMemo(() => within ?? inReadingOrder(scene.things, scene.height), [within, scene]);
  return {
    things,
    entered,
    isInside: within !== null,
    current: within === null ? chosen : inner,
    enter: useCallback((thing: Thing, first: Thing) => {
      setInside(thing.key);
      setInner(first.key);
    }, []),
    leave: useCallback(() => setInside(null), []),
    standAt: useCallback((one: Thing) => setInner(one.key), []),
  };
};
