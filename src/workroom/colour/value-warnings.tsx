// Where light and dark do not read apart: in which block, for whose eyes, by how much, and which cloth would part them.
import { isReversed, readsApart, type Sight, seenAs } from '#craft/fabric';
import type { ValuesNear } from '#workroom/compute';
import { useBlockName, useQuilt, useRoom } from '#workroom/room';
import type { SeenCloth } from './seen-cloths.ts';
import { exchangeTones, recolourTone } from './tone-edits.ts';
import { ClothPatch } from './value-ladder.tsx';
import { mendsFor, type ValueMend } from './value-mends.ts';

export interface ValueWarningsOf {
  /** Of the colourway that is looked at. */
  readonly near: readonly ValuesNear[];
  readonly cloths: readonly SeenCloth[];
  readonly colourway: string | null;
  readonly onLook: (sight: Sight) => void;
  readonly marks: 'shown' | 'hidden';
  readonly onMarks: (marks: 'shown' | 'hidden') => void;
}

export const ValueWarnings = ({ near, cloths, colourway, onLook, marks, onMarks }: ValueWarningsOf) => {
  if (near.length === 0) return null;
  return (
    <section className="value-warnings">
      <h2>
        <span className="problem-mark" aria-hidden="true">
          ◆
        </span>
        {near.every(isReversed) ? 'Light is darker than dark' : 'Light and dark read alike'}
      </h2>
      <p className="quiet">A difference of {readsApart} is seen at a glance.</p>
      <label className="check">
        <input
          type="checkbox"
          checked={marks === 'shown'}
          onChange={(event) => onMarks(event.target.checked ? 'shown' : 'hidden')}
        />
        Mark them in the drawing
      </label>
      <ul className="notes">
        {grouped(near).map((same) => (
          <ValueWarning
            key={`${same[0].block} ${same[0].colouring}`}
            same={same}
            cloths={cloths}
            colourway={colourway}
            onLook={onLook}
          />
        ))}
      </ul>
    </section>
  );
};

type Same = readonly [ValuesNear, ...ValuesNear[]];

/** What is told of one block in one colouring for several eyes stands together. */
const grouped = (near: readonly ValuesNear[]): readonly Same[] => {
  const groups = new Map<string, Same>();
  for (const one of near) {
    const key = JSON.stringify([one.block, one.colouring]);
    const known = groups.get(key);
    groups.set(key, known === undefined ? [one] : [...known, one]);
  }
  return [...groups.values()];
};

const ValueWarning = (of: {
  readonly same: Same;
  readonly cloths: readonly SeenCloth[];
  readonly colourway: string | null;
  readonly onLook: (sight: Sight) => void;
}) => {
  const { same, cloths, colourway, onLook } = of;
  const { document, edit } = useQuilt();
  const { say } = useRoom();
  const [near] = same;
  const title = useBlockName()(near.block);
  const nameOf = (id: string): string => cloths.find((cloth) => cloth.id === id)?.name ?? id;
  const isTurned = isReversed(near);
  const mends = colourway === null && !isTurned ? mendsFor({ near, document, cloths }) : [];
  const exchange = () => {
    const [light, dark] = [near.light.tones[0], near.dark.tones[0]];
    if (light === undefined || dark === undefined) return;
    const tones = [light, dark] as const;
    edit(`${light} and ${dark} change places`, (draft) =>
      exchangeTones(draft, { block: near.block, colouring: near.colouring, tones }),
    );
    say(`${light} and ${dark} have changed places in ${title}`);
  };
  const take = (mend: ValueMend) => {
    edit(`${nameOf(mend.cloth)} for ${mend.tone}`, (draft) =>
      recolourTone(draft, {
        tone: mend.tone,
        cloths: [mend.cloth],
        blocks: [near.block],
        colouring: near.colouring,
      }),
    );
    say(`${nameOf(mend.cloth)} stands for ${mend.tone} in ${title}`);
  };
  return (
    <li className="note is-warning">
      <h3>
        {title}
        {near.colouring === 'default' ? '' : `, ${near.colouring}`}
      </h3>
      {near.sight !== null && (
        <p>
          For{' '}
          {same.map(({ sight }, i) =>
            sight === null ? null : (
              <span key={sight}>
                {i > 0 ? ', ' : ''}
                <button type="button" className="word-key" onClick={() => onLook(sight)}>
                  {sight} eyes
                </button>
              </span>
            ),
          )}
        </p>
      )}
      {([near.light, near.dark] as const).map((side, i) => (
        <p key={i === 0 ? 'light' : 'dark'} className="value-side">
          <span className="value-cloths">
            {side.fabrics.map((id) => {
              const cloth = cloths.find((one) => one.id === id);
              const colour = cloth?.colour ?? '#808080';
              return (
                <ClothPatch
                  key={id}
                  className="value-cloth"
                  colour={near.sight === null ? colour : seenAs(colour, near.sight)}
                  image={undefined}
                />
              );
            })}
          </span>
          <span>
            {side.fabrics.map(nameOf).join(', ')} <span className="quiet">({side.tones.join(', ')})</span>
          </span>
          <span>{Math.round(side.lightness)}</span>
        </p>
      ))}
      {isTurned && <p>What is named light is the darker of the two. It may stay so if it is meant.</p>}
      {isTurned && colourway === null && (
        <button type="button" onClick={exchange}>
          Let them change places
        </button>
      )}
      {mends.map((mend) => (
        <button key={mend.way} type="button" onClick={() => take(mend)}>
          {nameOf(mend.cloth)} for {mend.tone}: {mend.way}
        </button>
      ))}
      {!isTurned && mends.length === 0 && (
        <p className="quiet">
          {colourway === null
            ? 'No cloth of the quilt would part them: add a lighter or a darker one, or change a colour.'
            : 'Give one of them a lighter or a darker colour in this colourway.'}
        </p>
      )}
    </li>
  );
};
