// The best store that this browser gives. Nothing here asks for a secure context: a shop's own network is plain http.
import { indexedStore } from './indexed-store.ts';
import { localStore } from './local-store.ts';
import { memoryShelf } from './memory-store.ts';
import type { Store } from './store.ts';

export const openStore = async (): Promise<Store> => {
  try {
    return await indexedStore();
  } catch {
    return canStore() ? localStore() : memoryShelf()();
  }
};

const canStore = (): boolean => {
  try {
    localStorage.setItem('seamstead/try', '1');
    localStorage.removeItem('seamstead/try');
    return true;
  } catch {
    return false;
  }
};
