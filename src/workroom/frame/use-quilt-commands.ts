// What can be done with a whole quilt from any view: go to another, save it, copy it, print it.
import { useMemo } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { JsonObject } from '#workroom/editing';
import { documentFile, go, jobStops, quiltAddress, type Stop, saveFile, stops } from '#workroom/room';
import { type Desk, titleOf } from '#workroom/store';
import { nameless, stopWords } from './stop-words.ts';

export const useQuiltCommands = (of: {
  readonly desk: Desk;
  readonly stop: Stop;
  readonly copyOut: (copy: JsonObject) => void;
}): void => {
  const { desk, stop, copyOut } = of;
  useCommands(
    useMemo((): readonly Command[] => {
      const documentNow = () => desk.state().editing.document;
      return [
        ...stops.map(
          (to, index): Command => ({
            id: `go ${to}`,
            part: 'Go',
            words: `To ${stopWords[to]}`,
            ...(index < jobStops.length ? { keys: [String(index + 1)] } : {}),
            run: () => go(quiltAddress(desk.id, to)),
          }),
        ),
        { id: 'go home', part: 'Go', words: 'To all quilts', keys: ['H'], run: () => go('#/') },
        {
          id: 'save file',
          part: 'Quilt',
          words: 'Save to a file',
          keys: ['Mod+S'],
          run: () => {
            const { name, content } = documentFile(documentNow());
            saveFile(name, content);
          },
        },
        {
          id: 'copy quilt',
          part: 'Quilt',
          words: 'Make a copy of the quilt',
          run: () => copyOut({ ...documentNow(), title: `${titleOf(documentNow()) || nameless}, a copy` }),
        },
        // there the same keys print
        ...(stop === 'print' ? [] : [printing(desk.id)]),
      ];
    }, [desk, stop, copyOut]),
  );
};

const printing = (id: string): Command => ({
  id: 'print',
  part: 'Quilt',
  words: 'Print the pattern',
  keys: ['Mod+P'],
  run: () => go(quiltAddress(id, 'print')),
});
