// Every command in one book: menus, shortcuts, the list to search and the sheet of keys all read it.
import type { Keys } from './keys.ts';

export interface Command {
  readonly id: string;
  /** What happens, as a button says it. */
  readonly words: string;
  /** What it belongs to. */
  readonly part: string;
  readonly keys?: readonly Keys[];
  /** Not now: it is shown, and does nothing. */
  readonly isOff?: boolean;
  readonly run: () => void;
}

export interface CommandBook {
  /** In the order they were offered; of one id the last. */
  readonly all: () => readonly Command[];
  /** @returns takes them out again */
  readonly offer: (commands: readonly Command[]) => () => void;
  readonly subscribe: (see: () => void) => () => void;
  /** @returns null where nothing that can be done now has these keys */
  readonly forKeys: (keys: Keys) => Command | null;
}

export const commandBook = (): CommandBook => {
  const pages = new Set<readonly Command[]>();
  const watchers = new Set<() => void>();
  let all: readonly Command[] = [];
  const turn = (): void => {
    all = [...new Map([...pages].flat().map((command) => [command.id, command])).values()];
    for (const see of watchers) see();
  };
  return {
    all: () => all,
    offer: (commands) => {
      pages.add(commands);
      turn();
      return () => {
        pages.delete(commands);
        turn();
      };
    },
    subscribe: (see) => {
      watchers.add(see);
      return () => void watchers.delete(see);
    },
    forKeys: (keys) => all.findLast((command) => command.keys?.includes(keys) && !command.isOff) ?? null,
  };
};

/** Those that hold every word, wherever it stands; in the book's order. */
export const found = (commands: readonly Command[], words: string): readonly Command[] => {
  const wanted = words
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  return commands.filter(({ words: own, part }) => {
    const text = `${part} ${own}`.toLowerCase();
    return wanted.every((word) => text.includes(word));
  });
};
