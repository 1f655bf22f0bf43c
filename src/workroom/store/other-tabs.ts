// Word between tabs of one browser that a quilt was kept. Where there is no channel, the storage's own events carry it.

export interface OtherTabs {
  readonly tell: (id: string) => void;
  readonly watch: (see: (id: string) => void) => () => void;
  readonly close: () => void;
}

const name = 'seamstead quilts';
const bell = 'seamstead/bell';

export const otherTabs = (): OtherTabs => (typeof BroadcastChannel === 'function' ? byChannel() : byStorage());

const byChannel = (): OtherTabs => {
  const channel = new BroadcastChannel(name);
  const watchers = new Set<(id: string) => void>();
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (typeof data === 'string') for (const see of watchers) see(data);
  };
  return {
    tell: (id) => channel.postMessage(id),
    watch: (see) => {
      watchers.add(see);
      return () => void watchers.delete(see);
    },
    close: () => channel.close(),
  };
};

const byStorage = (): OtherTabs => {
  const ends = new Set<() => void>();
  return {
    // the same word twice is no event: the time makes it another
    tell: (id) => localStorage.setItem(bell, `${Date.now()} ${id}`),
    watch: (see) => {
      const hear = ({ key, newValue }: StorageEvent): void => {
        if (key === bell && newValue !== null) see(newValue.slice(newValue.indexOf(' ') + 1));
      };
      window.addEventListener('storage', hear);
      const end = () => window.removeEventListener('storage', hear);
      ends.add(end);
      return end;
    },
    close: () => {
      for (const end of ends) end();
    },
  };
};
