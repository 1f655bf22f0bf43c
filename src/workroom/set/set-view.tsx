// Set: the quilt in the middle, what is chosen and the top at the right, arrangements below.
import { useCallback, useEffect, useMemo, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { QuiltPicture } from '#workroom/compute';
import { DrawingView, placeKey, placeOfKey, sceneOfQuilt, stripKey } from '#workroom/drawing';
import { useQuilt, useRoom } from '#workroom/room';
import { Arrangements } from './arrangements.tsx';
import { BorderFields } from './border-fields.tsx';
import { ChosenBlock } from './chosen-block.tsx';
import { SashingFields } from './sashing-fields.tsx';
import { changeCell, isBlock, mirrored, quarterOn, rowsOf, turned } from './top-edits.ts';
import { TopFields } from './top-fields.tsx';

export const SetView = () => {
  const { document, answer, words, edit, problems } = useQuilt();
  const { say } = useRoom();
  const [chosen, setChosen] = useState<string | null>(null);
  const picture = answer?.picture ?? null;
  const scene = useMemo(() => (picture === null ? null : sceneOfQuilt(picture, words.size)), [picture, words]);
  useEffect(() => {
    // what is chosen goes with what it was part of
    if (scene !== null && chosen !== null && !scene.things.some(({ key }) => key === chosen)) setChosen(null);
  }, [scene, chosen]);

  const place = placeOfKey(chosen);
  const cell = place === null ? null : (picture?.placed[place]?.cell ?? null);
  const own = cell === null ? undefined : rowsOf(document.top, picture)?.[cell[0]]?.[cell[1]];
  const turn = useCallback(() => {
    if (cell === null || !isBlock(own)) return;
    const to = quarterOn(own.turn);
    edit('Turn the block', (draft) => changeCell(draft.top, { at: cell, picture, change: turned(to) }));
    say(to === 0 ? 'Turned back upright' : `Turned ${to}° clockwise`);
  }, [cell, own, picture, edit, say]);
  const mirror = useCallback(() => {
    if (cell === null || !isBlock(own)) return;
    edit('Mirror the block', (draft) => changeCell(draft.top, { at: cell, picture, change: mirrored }));
    say(own.mirror === true ? 'No longer mirrored' : 'Mirrored');
  }, [cell, own, picture, edit, say]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'turn', part: 'Set', words: 'Turn the chosen block', keys: ['T'], isOff: !isBlock(own), run: turn },
        { id: 'mirror', part: 'Set', words: 'Mirror the chosen block', keys: ['M'], isOff: !isBlock(own), run: mirror },
      ],
      [own, turn, mirror],
    ),
  );

  const lit = useMemo(() => litKeys(problems, picture), [problems, picture]);
  return (
    <div className="view-parts">
      <div className="stage">
        {scene === null ? (
          <p className="empty" role="status">
            {problems.length > 0 ? 'It can be drawn when the problem above is mended.' : 'Drawing the quilt …'}
          </p>
        ) : (
          <DrawingView
            scene={scene}
            label={`The quilt, ${words.size([scene.width, scene.height])}`}
            chosen={chosen}
            onChoose={setChosen}
            lit={lit}
          />
        )}
        <Arrangements />
      </div>
      <aside className="side" aria-label="What is chosen">
        <ChosenBlock chosen={chosen} scene={scene} cell={cell} own={own} />
        <TopFields />
        <SashingFields />
        <BorderFields />
      </aside>
    </div>
  );
};

/** What of the drawing a problem names: blocks by their place in the rows, or by what they are; strips by where they come from. */
const litKeys = (problems: readonly { readonly where: string }[], picture: QuiltPicture | null): readonly string[] =>
  picture === null ? [] : problems.flatMap(({ where }) => [...litBlocks(where, picture), ...litStrips(where, picture)]);

const litBlocks = (where: string, { placed }: QuiltPicture): readonly string[] => {
  const found = /^\/top\/rows\/(\d+)(?:\/(\d+))?/.exec(where);
  if (found === null) return [];
  return placed.flatMap(({ cell }, place) =>
    cell !== null && cell[0] === Number(found[1]) && (found[2] === undefined || cell[1] === Number(found[2]))
      ? [placeKey(place)]
      : [],
  );
};

const litStrips = (where: string, { strips }: QuiltPicture): readonly string[] =>
  strips.flatMap(({ path }, strip) => (where === path || where.startsWith(`${path}/`) ? [stripKey(strip)] : []));
