// The list to search: any command by a word of it. And the sheet of keys, from the same book.

import { useState } from 'react';
import { type Command, found, keyWords, useAllCommands } from '#workroom/commands';
import { Sheet } from '#workroom/room';

const keyboard = /Mac|iPhone|iPad/.test(navigator.userAgent) ? 'apple' : 'other';

/** What belongs to the view itself first, what is everywhere last. */
const lastParts = ['Edit', 'Quilt', 'Go', 'Help'];
const inOrder = (commands: readonly Command[]): readonly Command[] =>
  commands.toSorted((a, b) => lastParts.indexOf(a.part) - lastParts.indexOf(b.part));

export const FindCommand = ({ onClose }: { readonly onClose: () => void }) => {
  const commands = inOrder(useAllCommands()).filter(({ id, isOff }) => !isOff && id !== 'find');
  const [words, setWords] = useState('');
  const shown = found(commands, words);
  const run = (command: Command | undefined) => {
    if (command === undefined) return;
    onClose();
    command.run();
  };
  return (
    <Sheet title="Find something to do" onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          run(shown[0]);
        }}
      >
        <label className="field">
          <span>What would you like to do?</span>
          {/* biome-ignore lint/a11y/noAutofocus: the sheet was opened to type here */}
          <input type="search" value={words} autoFocus onChange={(event) => setWords(event.target.value)} />
        </label>
      </form>
      <p className="quiet" role="status">
        {shown.length === 0
          ? 'Nothing here is called that. Try a shorter word.'
          : `${shown.length} found; Enter does the first`}
      </p>
      <ul className="command-list">
        {shown.map((command) => (
          <li key={command.id}>
            <button type="button" className="command-line" onClick={() => run(command)}>
              <span className="quiet">{command.part}</span>
              <span>{command.words}</span>
              <KeysShown command={command} />
            </button>
          </li>
        ))}
      </ul>
    </Sheet>
  );
};

const KeysShown = ({ command }: { readonly command: Command }) =>
  command.keys?.[0] === undefined ? null : <kbd>{keyWords(command.keys[0], keyboard)}</kbd>;

const drawingKeys: readonly (readonly [string, string])[] = [
  ['Arrow keys', 'to the neighbour'],
  [`${keyWords('Mod', keyboard)} and arrow keys`, 'move the drawing'],
  ['Shift and arrow keys', 'one more place or patch'],
  ['Space', 'one more, or one less'],
  ['+  −  0', 'larger, smaller, whole'],
  ['Enter', 'into a block, to its pieces'],
  ['Escape', 'out again; nothing chosen'],
];

const handKeys: readonly (readonly [string, string])[] = [
  ['Arrow keys', 'to the next line or seam'],
  ['Enter', 'begin or end a seam, lay a patch, set a corner'],
  ['Backspace', 'the last point back'],
  ['Escape', 'let go; then back to choosing'],
];

export const KeySheet = (of: {
  readonly shortcuts: 'on' | 'off';
  readonly onSwitch: (to: 'on' | 'off') => void;
  readonly onClose: () => void;
}) => {
  const commands = inOrder(useAllCommands()).filter(({ keys }) => keys !== undefined);
  const parts = [...new Set(commands.map(({ part }) => part))];
  return (
    <Sheet title="Keys" onClose={of.onClose} isWide>
      <label className="check">
        <input
          type="checkbox"
          checked={of.shortcuts === 'on'}
          onChange={(event) => of.onSwitch(event.target.checked ? 'on' : 'off')}
        />
        Use these keys
      </label>
      <div className="key-parts">
        {parts.map((part) => (
          <section key={part}>
            <h3>{part}</h3>
            <dl className="pairs">
              {commands
                .filter((command) => command.part === part)
                .map((command) => (
                  <div key={command.id}>
                    <dt>{command.words}</dt>
                    <dd>
                      <KeysShown command={command} />
                    </dd>
                  </div>
                ))}
            </dl>
          </section>
        ))}
        <KeysThere where="In a drawing" keys={drawingKeys} />
        <KeysThere where="With a seam or a patch in hand" keys={handKeys} />
      </div>
    </Sheet>
  );
};

const KeysThere = (of: { readonly where: string; readonly keys: typeof drawingKeys }) => (
  <section>
    <h3>{of.where}</h3>
    <dl className="pairs">
      {of.keys.map(([keys, what]) => (
        <div key={keys}>
          <dt>{what}</dt>
          <dd>{keys}</dd>
        </div>
      ))}
    </dl>
  </section>
);
