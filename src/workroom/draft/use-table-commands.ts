// What the drafting table can do, in the book of commands.
import { useMemo, useRef } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { type Tool, toolWords } from './use-hand.ts';
import type { TableState } from './use-table.ts';

const toolKeys: Readonly<Record<Tool, string>> = { choose: 'E', move: 'G', rule: 'R', curve: 'C', lay: 'P' };
const toolNames = Object.keys(toolKeys) as readonly Tool[];

export const useTableCommands = (table: TableState): void => {
  // the table is another at every step of the hand, and the book need not be
  const now = useRef(table);
  now.current = table;
  const isOff = table.drawn === null;
  const chosen = table.chosen.length;
  // with a seam or a patch in hand Backspace takes back a point
  const isHeld = table.tool === 'rule' || table.tool === 'curve' || table.tool === 'lay';
  useCommands(
    useMemo((): readonly Command[] => {
      if (isOff) return [];
      const part = 'Draft';
      const few = { isOff: chosen === 0 };
      return [
        ...toolNames.map(
          (tool): Command => ({
            id: `table ${tool}`,
            part,
            words: toolWords[tool],
            keys: [toolKeys[tool]],
            run: () => now.current.take(tool),
          }),
        ),
        {
          id: 'turn patches',
          part,
          words: 'Turn the chosen patches',
          keys: ['T'],
          ...few,
          run: () => now.current.turn(),
        },
        {
          id: 'mirror patches',
          part,
          words: 'Mirror the chosen patches across',
          keys: ['M'],
          ...few,
          run: () => now.current.mirror('left-right'),
        },
        {
          id: 'mirror patches down',
          part,
          words: 'Mirror the chosen patches down',
          keys: ['Shift+M'],
          ...few,
          run: () => now.current.mirror('top-bottom'),
        },
        {
          id: 'take out patches',
          part,
          words: 'Take out the chosen patches',
          keys: ['Delete', 'Backspace'],
          isOff: chosen === 0 || isHeld,
          run: () => now.current.takeOut(),
        },
        {
          id: 'join patches',
          part,
          words: 'Take out the seams between the chosen patches',
          keys: ['J'],
          isOff: chosen < 2,
          run: () => now.current.join(),
        },
        {
          id: 'repeat round',
          part,
          words: 'Repeat the chosen patches round the middle',
          keys: ['Shift+R'],
          ...few,
          run: () => now.current.repeat('round'),
        },
        { id: 'next corner', part, words: 'To the next corner', keys: ['.'], run: () => now.current.toCorner(1) },
        { id: 'last corner', part, words: 'To the corner before', keys: [','], run: () => now.current.toCorner(-1) },
        {
          id: 'all patches',
          part,
          words: 'Choose all patches',
          keys: ['Shift+A'],
          run: () => now.current.choose(0, now.current.drawn?.patches.map((_, index) => index) ?? []),
        },
        { id: 'fill gaps', part, words: 'Fill the gaps', run: () => now.current.fill() },
        { id: 'cut overlaps', part, words: 'Cut away what lies under', run: () => now.current.trim() },
      ];
    }, [isOff, chosen, isHeld]),
  );
};
