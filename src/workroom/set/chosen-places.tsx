// What is chosen in the quilt: how it lies, what else could lie there, and what to choose with it.
import { ChoiceKeys } from '#workroom/fields';
import { countWords, quiltAddress, spotWords, useBlockName, useQuilt } from '#workroom/room';
import { becoming, chosenOf, HeldSelect } from './held-select.tsx';
import { clothOf, type Held, inColouring, isRun, mirrored, partsOf, sectionAt, turned } from './place-edits.ts';
import { isBlock, setOf, type Top, type Turn } from './top-edits.ts';
import type { Choice } from './use-choice.ts';
import type { PlacesDone } from './use-places.ts';

export interface ChosenPlacesOf {
  readonly choice: Choice;
  readonly done: PlacesDone;
}

const turns: readonly Turn[] = [0, 90, 180, 270];

export const ChosenPlaces = (of: ChosenPlacesOf) => {
  const { choice, done } = of;
  const { thing, places } = choice;
  const { top } = useQuilt().document;
  const isInSections = setOf(top) === 'sections';
  const title = useTitle(choice, done.held);
  return (
    <section className="chosen-places">
      <h2>{title ?? 'Nothing is chosen'}</h2>
      {title === null && (
        <p className="quiet">Choose a block in the quilt to turn it, mirror it or put another in its place.</p>
      )}
      {title !== null && places.length === 0 && thing?.inside === null && (
        <p className="quiet">It is changed in the fields below.</p>
      )}
      {places.length > 0 && done.held.length > 0 && <PlaceFields choice={choice} done={done} />}
      <fieldset className="choose-keys">
        <legend>Choose</legend>
        {places.length > 0 && (
          <>
            <button type="button" onClick={done.chooseRow}>
              {isInSections ? 'All beside it' : 'The row'}
            </button>
            {!isInSections && (
              <button type="button" onClick={done.chooseColumn}>
                The column
              </button>
            )}
            <button type="button" onClick={done.chooseSame}>
              All like this
            </button>
          </>
        )}
        <button type="button" onClick={done.chooseAll}>
          Every place
        </button>
      </fieldset>
    </section>
  );
};

/** What lies at the one place, and where; of what is no place its name in the drawing. Null where nothing is chosen. */
const useTitle = ({ thing, places, isSeveral, path }: Choice, held: readonly Held[]): string | null => {
  const { document } = useQuilt();
  const nameOf = useBlockName();
  if (isSeveral) return countWords(places.length, 'place', 'places');
  const [[only], [own]] = [places, held];
  if (only === undefined || own === undefined) {
    return thing?.name.replace(/, [^,]* finished, cut [^,]*/, '') ?? runTitle(path, document.top);
  }
  const cloth = document.fabrics.find(({ id }) => id === clothOf(own));
  const what = isBlock(own) ? nameOf(own.block) : `${plainNoun(own)}, ${cloth?.name || cloth?.id}`;
  return `${what}, ${spotWords(only)}`;
};

const plainNoun = (held: Held): string => ('strip' in held ? 'Strip' : 'fill' in held ? 'Fill' : 'Plain piece');

/** A run of a section, which is no thing of the drawing. */
const runTitle = (path: string | null, top: Top): string | null => {
  const section = path === null ? undefined : sectionAt(top, path);
  if (section === undefined || !isRun(section)) return null;
  return `${partsOf(section).length} parts, ${'down' in section ? 'one below the other' : 'side by side'}`;
};

const PlaceFields = ({ choice, done }: Pick<ChosenPlacesOf, 'choice' | 'done'>) => {
  const { document, answer, words, id } = useQuilt();
  const { held, change } = done;
  const blocks = held.filter(isBlock);
  const block = shared(blocks.map((one) => one.block));
  const colourings = Object.keys(document.blocks.find((one) => one.id === block)?.colourings ?? {});
  const entry = block === null ? undefined : answer?.picture.entries.find((one) => one.id === block);
  const isOne = held.length === 1;
  return (
    <>
      <HeldSelect
        label={isOne ? 'What lies here' : 'What lies in these'}
        value={shared(held.map(chosenOf))}
        onChoose={(value) => {
          const what = isOne ? 'Put another in this place' : `Put another in ${held.length} places`;
          change(what, becoming(value), 'It lies there now');
        }}
      />
      {blocks.length > 0 && (
        <>
          <ChoiceKeys
            label="Turned clockwise"
            isLabelSeen
            choices={turns.map((value) => ({ value, words: `${value}°` }))}
            value={shared(blocks.map(({ turn }) => turn ?? 0))}
            onChoose={(turn) =>
              change('Turn the block', turned(turn), turn === 0 ? 'Turned back upright' : `Turned ${turn}° clockwise`)
            }
          />
          {isOne && (
            <label className="check">
              <input
                type="checkbox"
                checked={blocks[0]?.mirror === true}
                onChange={() => change('Mirror the block', mirrored, 'Mirrored')}
              />
              Mirrored
            </label>
          )}
        </>
      )}
      {colourings.length > 1 && blocks.length === held.length && (
        <label className="field">
          <span>Colouring</span>
          <select
            value={shared(blocks.map(({ colouring }) => colouring ?? 'default')) ?? ''}
            onChange={(event) => change('Change the colouring', inColouring(event.target.value), 'Coloured so now')}
          >
            {colourings.map((colouring) => (
              <option key={colouring} value={colouring}>
                {colouring}
              </option>
            ))}
          </select>
        </label>
      )}
      <div className="choose-keys">
        {!isOne && blocks.length > 0 && (
          <>
            <button type="button" onClick={done.turn}>
              Each a quarter on
            </button>
            <button type="button" onClick={done.mirror}>
              Mirror each
            </button>
          </>
        )}
        {choice.places.length === 2 && (
          <button type="button" onClick={done.swap}>
            Swap the two
          </button>
        )}
        {blocks.length > 0 && (
          <button type="button" onClick={done.clear}>
            {isOne ? 'Clear this place' : 'Clear them'}
          </button>
        )}
      </div>
      {isOne && entry !== undefined && (
        <dl className="facts">
          <dt>Finished</dt>
          <dd>{words.size(entry.size)}</dd>
          <dt>Pieces</dt>
          <dd>{entry.patches.length}</dd>
        </dl>
      )}
      {block !== null && <a href={quiltAddress(id, 'draft', block)}>Draft this block</a>}
    </>
  );
};

/** What all have; null where they differ, or there are none. */
const shared = <T,>(all: readonly T[]): T | null => {
  const [first] = all;
  return first !== undefined && all.every((one) => one === first) ? first : null;
};
