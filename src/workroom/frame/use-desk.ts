// The desk of the quilt at an address: opened from the store, closed when one leaves.
import { useEffect, useState, useSyncExternalStore } from 'react';
import { useRoom } from '#workroom/room';
import { type Desk, type DeskState, openDesk, openPoints, type PointBook } from '#workroom/store';
import { freshId } from './beginnings.ts';

export type Opened =
  | { readonly state: 'opening' }
  | { readonly state: 'missing' }
  | { readonly state: 'failed' }
  | { readonly state: 'open'; readonly desk: Desk; readonly points: PointBook };

export const useDesk = (id: string): Opened => {
  const { store, planner } = useRoom();
  const [opened, setOpened] = useState<Opened>({ state: 'opening' });
  useEffect(() => {
    let desk: Desk | null = null;
    let points: PointBook | null = null;
    let isLeft = false;
    setOpened({ state: 'opening' });
    store.read(id).then(
      (kept) => {
        if (isLeft) return;
        if (kept === null) setOpened({ state: 'missing' });
        else {
          planner.forget();
          desk = openDesk({ store, kept, nowMs: Date.now });
          points = openPoints({ store, quilt: id, nowMs: Date.now, freshId });
          setOpened({ state: 'open', desk, points });
        }
      },
      () => setOpened({ state: 'failed' }),
    );
    return () => {
      isLeft = true;
      desk?.close();
      points?.close();
    };
  }, [id, store, planner]);
  return opened;
};

export const useDeskState = (desk: Desk): DeskState => useSyncExternalStore(desk.subscribe, desk.state);
