// The desk of the quilt at an address: opened from the store, closed when one leaves.
import { useEffect, useState, useSyncExternalStore } from 'react';
import { useRoom } from '#workroom/room';
import { type Desk, type DeskState, openDesk } from '#workroom/store';

export type Opened =
  | { readonly state: 'opening' }
  | { readonly state: 'missing' }
  | { readonly state: 'failed' }
  | { readonly state: 'open'; readonly desk: Desk };

export const useDesk = (id: string): Opened => {
  const { store, planner } = useRoom();
  const [opened, setOpened] = useState<Opened>({ state: 'opening' });
  useEffect(() => {
    let desk: Desk | null = null;
    let isLeft = false;
    setOpened({ state: 'opening' });
    store.read(id).then(
      (kept) => {
        if (isLeft) return;
        if (kept === null) setOpened({ state: 'missing' });
        else {
          planner.forget();
          desk = openDesk({ store, kept, nowMs: Date.now });
          setOpened({ state: 'open', desk });
        }
      },
      () => setOpened({ state: 'failed' }),
    );
    return () => {
      isLeft = true;
      desk?.close();
    };
  }, [id, store, planner]);
  return opened;
};

export const useDeskState = (desk: Desk): DeskState => useSyncExternalStore(desk.subscribe, desk.state);
