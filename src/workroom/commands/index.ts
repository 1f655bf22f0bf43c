// Commands: what can be done, in one book.
export { type Command, type CommandBook, commandBook, found } from './book.ts';
export { CommandsProvider, useAllCommands, useCommands, useShortcuts } from './in-page.tsx';
export { keyWords } from './keys.ts';
