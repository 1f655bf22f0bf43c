// Sections: every part in a list as it is sewn, and what can be done with the chosen one.
import { useEffect, useRef, useState } from 'react';
import type { QuiltDocument } from '#craft/design';
import { ChoiceKeys, LengthField } from '#workroom/fields';
import { type LengthWords, useBlockName, useQuilt, useRoom } from '#workroom/room';
import { usualPlain } from './cloths.ts';
import { isRun, partsOf, type Section, sectionAt } from './place-edits.ts';
import {
  becomePlain,
  fillUp,
  movePart,
  neighboursOf,
  putBeside,
  rootPath,
  type Side,
  takePartOut,
  wayAround,
  widen,
} from './section-edits.ts';
import { usualStrip } from './top-edits.ts';
import type { Choice } from './use-choice.ts';
import { inUnit } from './written-length.ts';

const sides: readonly (readonly [Side, string])[] = [
  ['left', 'Left'],
  ['right', 'Right'],
  ['above', 'Above'],
  ['below', 'Below'],
];

export const SectionFields = ({ choice }: { readonly choice: Choice }) => {
  const { document } = useQuilt();
  const { sections } = document.top;
  const list = useRef<HTMLUListElement>(null);
  const { path } = choice;
  useEffect(() => {
    // the list alone is moved, not the page that it stands in
    const own = list.current?.querySelector(`[data-path="${path}"]`)?.getBoundingClientRect();
    const box = list.current?.getBoundingClientRect();
    if (list.current === null || own === undefined || box === undefined) return;
    if (own.top < box.top || own.bottom > box.bottom) list.current.scrollTop += own.top - box.top - box.height / 3;
  }, [path]);
  if (sections === undefined) return null;
  const here = choice.path !== null && sectionAt(document.top, choice.path) !== undefined ? choice.path : null;
  return (
    <section>
      <h2>Sections</h2>
      <p className="quiet">
        Parts side by side, or one below the other, as they are sewn. A fill takes what its neighbours leave.
      </p>
      <ul className="section-parts" ref={list}>
        <Part section={sections} path={rootPath} here={here} onChoose={choice.choosePath} />
      </ul>
      {here === null ? (
        <p className="quiet">Choose a part, here or in the quilt, to change it or to put another beside it.</p>
      ) : (
        <PartFields path={here} choice={choice} />
      )}
    </section>
  );
};

interface PartOf {
  readonly section: Section;
  readonly path: string;
  readonly here: string | null;
  readonly onChoose: (path: string) => void;
}

const Part = ({ section, path, here, onChoose }: PartOf) => {
  const { document, words, problems } = useQuilt();
  const nameOf = useBlockName();
  const isWrong = problems.some(({ where }) => where === path || (!isRun(section) && where.startsWith(`${path}/`)));
  const way = 'down' in section ? 'down' : 'across';
  return (
    <li>
      <button type="button" data-path={path} aria-pressed={path === here} onClick={() => onChoose(path)}>
        {isWrong && (
          <span className="problem-mark">
            <span aria-hidden="true">◆</span>
            <span className="unseen">To mend: </span>
          </span>
        )}
        {'block' in section ? nameOf(section.block) : plainWords(section, document, words)}
      </button>
      {isRun(section) && (
        <ul>
          {partsOf(section).map((part, i) => {
            const own = `${path}/${way}/${i}`;
            return <Part key={own} section={part} path={own} here={here} onChoose={onChoose} />;
          })}
        </ul>
      )}
    </li>
  );
};

const plainWords = (
  section: Exclude<Section, { block: string }>,
  { fabrics, unit }: QuiltDocument,
  words: LengthWords,
): string => {
  const clothName = (id: string): string => fabrics.find((one) => one.id === id)?.name || id;
  if ('down' in section) return `One below the other, ${section.down.length}`;
  if ('across' in section) return `Side by side, ${section.across.length}`;
  if ('fill' in section) return `Fill, ${clothName(section.fill)}`;
  const width = inUnit(section.width, unit);
  return `Strip, ${clothName(section.strip)}, ${width === null ? section.width : words.length(width)}`;
};

const PartFields = ({ path, choice }: { readonly path: string; readonly choice: Choice }) => {
  const { document, edit } = useQuilt();
  const { say } = useRoom();
  const { top, unit } = document;
  const part = sectionAt(top, path);
  const { before, after } = neighboursOf(top, path);
  const isAcross = wayAround(path) === 'across';
  const cloth = usualPlain(document);
  const move = (by: 1 | -1) => {
    const moved = movePart(structuredClone(top), { path, by });
    edit('Move a part', (draft) => void movePart(draft.top, { path, by }));
    choice.choosePath(moved);
    say('The part is moved');
  };
  const takeOut = () => {
    const next = takePartOut(structuredClone(top), path);
    edit('Take a part out', (draft) => void takePartOut(draft.top, path));
    choice.choosePath(next);
    say('The part is taken out');
  };
  return (
    <>
      {part !== undefined && ('strip' in part || 'fill' in part) && (
        <ChoiceKeys
          label="How it takes its size"
          choices={[
            { value: 'strip', words: 'Strip of a width' },
            { value: 'fill', words: 'Fill' },
          ]}
          value={'strip' in part ? 'strip' : 'fill'}
          onChoose={(kind: 'strip' | 'fill') =>
            edit('Change a part', (draft) => becomePlain(draft.top, { path, kind, width: usualStrip[unit] }))
          }
        />
      )}
      {part !== undefined && 'strip' in part && (
        <LengthField
          label="Width of the strip"
          value={part.width}
          unit={unit}
          onChange={(width) => edit('Change the width of a strip', (draft) => widen(draft.top, { path, width }))}
        />
      )}
      <PutBeside path={path} choice={choice} cloth={cloth} />
      {wayAround(path) !== null && (
        <>
          <fieldset className="choose-keys">
            <legend>Fill up to its neighbours</legend>
            <button
              type="button"
              onClick={() => {
                edit('Fill up beside a part', (draft) => fillUp(draft.top, { path, cloth, where: 'end' }));
                say(isAcross ? 'A fill lies below it' : 'A fill lies to its right');
              }}
            >
              {isAcross ? 'Below it' : 'To its right'}
            </button>
            <button
              type="button"
              onClick={() => {
                edit('Fill up beside a part', (draft) => fillUp(draft.top, { path, cloth, where: 'both' }));
                say('A fill lies on either side of it');
              }}
            >
              On either side
            </button>
          </fieldset>
          <div className="choose-keys">
            <button type="button" disabled={before === 0} onClick={() => move(-1)}>
              {isAcross ? 'To the left' : 'Up'}
            </button>
            <button type="button" disabled={after === 0} onClick={() => move(1)}>
              {isAcross ? 'To the right' : 'Down'}
            </button>
            <button type="button" onClick={takeOut}>
              Take out
            </button>
          </div>
        </>
      )}
    </>
  );
};

const PutBeside = (of: { readonly path: string; readonly choice: Choice; readonly cloth: string }) => {
  const { path, choice, cloth } = of;
  const { document, edit } = useQuilt();
  const { say } = useRoom();
  const { top, blocks, unit } = document;
  const nameOf = useBlockName();
  const [wanted, setWanted] = useState('strip');
  const part = (): Section => {
    if (wanted === 'fill') return { fill: cloth };
    const block = blocks.find(({ id }) => wanted === `block ${id}`);
    return block === undefined ? { strip: cloth, width: usualStrip[unit] } : { block: block.id };
  };
  return (
    <fieldset className="choose-keys">
      <legend>Put beside it</legend>
      <select aria-label="What to put beside it" value={wanted} onChange={(event) => setWanted(event.target.value)}>
        <option value="strip">a strip</option>
        <option value="fill">a fill</option>
        {blocks.map(({ id }) => (
          <option key={id} value={`block ${id}`}>
            {nameOf(id)}
          </option>
        ))}
      </select>
      {sides.map(([side, words]) => (
        <button
          key={side}
          type="button"
          onClick={() => {
            const put = putBeside(structuredClone(top), { path, side, part: part() });
            edit('Put a part beside another', (draft) => void putBeside(draft.top, { path, side, part: part() }));
            if (put !== null) choice.choosePath(put);
            say('The new part is chosen');
          }}
        >
          {words}
        </button>
      ))}
    </fieldset>
  );
};
