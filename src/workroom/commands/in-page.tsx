// The book of commands in the page: views offer what they can do, and keys reach it.
import { createContext, useContext, useEffect, useSyncExternalStore } from 'react';
import { type Command, type CommandBook, commandBook } from './book.ts';
import { isTyping, keysOf } from './keys.ts';

const Book = createContext<CommandBook>(commandBook());
export const CommandsProvider = Book.Provider;

export const useBook = (): CommandBook => useContext(Book);

/** While the view stands, these can be done. Hand in a list that changes only when it must. */
export const useCommands = (commands: readonly Command[]): void => {
  const book = useBook();
  useEffect(() => book.offer(commands), [book, commands]);
};

export const useAllCommands = (): readonly Command[] => {
  const book = useBook();
  return useSyncExternalStore(book.subscribe, book.all);
};

/** The space bar presses what has the focus, where that is a key. */
const isPressing = ({ key, target }: KeyboardEvent): boolean =>
  key === ' ' &&
  target instanceof Element &&
  target.closest('button, summary, [role=button], [role=menuitem]') !== null;

/** Held with the command key, these are a field's own. */
const fieldKeys: ReadonlySet<string> = new Set(['z', 'y', 'a', 'c', 'v', 'x']);

/** Keys run commands where shortcuts are on; single keys never while one types. */
export const useShortcuts = (shortcuts: 'on' | 'off'): void => {
  const book = useBook();
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (event.defaultPrevented) return;
      const isHeld = event.ctrlKey || event.metaKey;
      if (shortcuts === 'off' || (!isHeld && isTyping(event.target))) return;
      if (document.querySelector('[role=dialog]') !== null) return;
      if (isPressing(event)) return;
      const command = book.forKeys(keysOf(event));
      if (command === null) return;
      // a field has its own undo, copy and paste while one types in it, and words that are chosen are copied as words
      if (isHeld && isTyping(event.target) && fieldKeys.has(event.key.toLowerCase())) return;
      if (isHeld && event.key.toLowerCase() === 'c' && document.getSelection()?.isCollapsed === false) return;
      event.preventDefault();
      command.run();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [book, shortcuts]);
};
