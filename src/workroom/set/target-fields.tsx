// A wanted size: of a bed with its drop, or typed; and two or three ways to come to it, each one tap.
import { memo, useEffect, useMemo, useState } from 'react';
import type { QuiltDocument } from '#craft/design';
import { type BedName, bedNames, mattressOf, quiltForBed } from '#craft/finishing';
import { length } from '#craft/measure';
import { capital } from '#paper/words';
import type { Measured } from '#workroom/compute';
import type { JsonObject } from '#workroom/editing';
import { bedWords, LengthField } from '#workroom/fields';
import { type LengthWords, useQuilt, useRoom } from '#workroom/room';
import { ends } from './cloths.ts';
import { becomeSize, borderSteps, drawnFor } from './target-edits.ts';
import { type Size, type TargetChoice, targetSizes } from './target-sizes.ts';
import { mostLines } from './top-edits.ts';
import { inUnit } from './written-length.ts';

type Bed = NonNullable<NonNullable<QuiltDocument['finish']>['bed']>;

/** As the document has them where it says nothing else. */
const usual = { in: { drop: '12', tuck: '10', side: '60' }, cm: { drop: '30', tuck: '25', side: '150' } } as const;

export const TargetFields = memo(({ measured }: { readonly measured: Measured }) => {
  const { document, answer, words } = useQuilt();
  const { unit, finish } = document;
  const own = finish?.bed;
  const [wish, setWish] = useState<BedName | 'own' | ''>('');
  const [drop, setDrop] = useState(String(own?.drop ?? usual[unit].drop));
  const [tuck, setTuck] = useState(String(own?.tuck ?? usual[unit].tuck));
  const [across, setAcross] = useState<string>(usual[unit].side);
  const [down, setDown] = useState<string>(usual[unit].side);
  const bed = useMemo(
    (): Bed | null => (wish === '' || wish === 'own' ? null : { size: wish, drop, tuck }),
    [wish, drop, tuck],
  );
  const wanted = useMemo((): Size | null => {
    if (wish === '') return null;
    const [one, other] = (wish === 'own' ? [across, down] : [drop, tuck]).map((written) => inUnit(written, unit));
    if (one === null || one === undefined || other === null || other === undefined) return null;
    if (wish === 'own') return [one, other];
    return quiltForBed({ bed: wish, drop: length(one), tuck: length(other), unit });
  }, [wish, across, down, drop, tuck, unit]);
  const drawn = drawnFor(document, { measured, picture: answer?.picture ?? null });
  return (
    <section>
      <h2>A size to reach</h2>
      <label className="field">
        <span>For</span>
        <select value={wish} onChange={(event) => setWish(event.target.value as typeof wish)}>
          <option value="">nothing yet</option>
          {bedNames.map((name) => (
            <option key={name} value={name}>
              {bedWords[name]}, {words.size(mattressOf(name, unit))}
            </option>
          ))}
          <option value="own">a size of my own</option>
        </select>
      </label>
      {wish !== '' && wish !== 'own' && (
        <>
          <div className="pair">
            <LengthField label="Drop" value={drop} unit={unit} sign="zero-or-more" onChange={setDrop} />
            <LengthField label="Pillow tuck" value={tuck} unit={unit} sign="zero-or-more" onChange={setTuck} />
          </div>
          <p className="quiet">
            {wanted !== null && `${capital(words.size(wanted))} covers it. `}
            Mattresses are as the trade has them and differ a little: measure yours.
          </p>
        </>
      )}
      {wish === 'own' && (
        <div className="pair">
          <LengthField label="Width" value={across} unit={unit} onChange={setAcross} />
          <LengthField label="Length" value={down} unit={unit} onChange={setDown} />
        </div>
      )}
      {wanted !== null && drawn === null && (
        <p className="quiet">
          {document.top.set === 'sections'
            ? 'A top in sections is as large as its parts: change those, or add borders.'
            : 'Ways to reach it are told when the top can be set.'}
        </p>
      )}
      {wanted !== null && drawn !== null && (
        <Ways
          choices={targetSizes({ drawn, wanted, ...borderSteps[unit], most: mostLines })}
          bed={bed}
          key={`${wanted.join(' ')} ${bed?.size ?? ''}`}
        />
      )}
    </section>
  );
});

const Ways = ({ choices, bed }: { readonly choices: readonly TargetChoice[]; readonly bed: Bed | null }) => {
  const { document, answer, words, edit } = useQuilt();
  const { say } = useRoom();
  const picture = answer?.picture ?? null;
  const cloth = ends(document.fabrics).dark;
  const sizes = useTrueSizes(choices, { document, picture, cloth });
  if (choices.length === 0) return <p className="quiet">No number of these blocks comes near it.</p>;
  return (
    <ul className="ways">
      {choices.map((choice, i) => {
        const size = sizes?.[i] ?? choice.size;
        return (
          <li key={`${choice.rows} ${choice.columns}`}>
            <button
              type="button"
              onClick={() => {
                edit('Bring the quilt to a size', (draft) => becomeSize(draft, { choice, picture, bed, cloth }));
                say(`The quilt is ${words.nearSize(size)}`);
              }}
            >
              <strong>{words.nearSize(size)}</strong>
              <span>{wayWords(choice, words)}</span>
            </button>
          </li>
        );
      })}
    </ul>
  );
};

const wayWords = ({ rows, columns, border }: TargetChoice, words: LengthWords): string =>
  `${columns} × ${rows} blocks, ${border === 0 ? 'no border more' : `outer border ${words.length(border)}`}`;

/** What each choice really comes to: blocks of unlike sizes, and pieced borders, do not grow evenly. Null until it is known. */
const useTrueSizes = (
  choices: readonly TargetChoice[],
  of: Pick<ReturnType<typeof useQuilt>, 'document'> & {
    readonly picture: Parameters<typeof becomeSize>[1]['picture'];
    readonly cloth: string;
  },
): readonly (Size | undefined)[] | null => {
  const { planner } = useRoom();
  const { document, picture, cloth } = of;
  const asked = JSON.stringify(choices);
  const [sizes, setSizes] = useState<{ readonly asked: string; readonly found: readonly (Size | undefined)[] } | null>(
    null,
  );
  useEffect(() => {
    let isOvertaken = false;
    const ask = async () => {
      const found: (Size | undefined)[] = [];
      for (const choice of JSON.parse(asked) as TargetChoice[]) {
        const own = structuredClone(document);
        becomeSize(own, { choice, picture, bed: null, cloth });
        const { rings } = await planner.measures(own as unknown as JsonObject);
        if (isOvertaken) return;
        found.push(rings[own.top.borders?.length ?? 0]);
      }
      setSizes({ asked, found });
    };
    ask().catch(() => undefined); // the page is closing
    return () => {
      isOvertaken = true;
    };
  }, [asked, document, picture, cloth, planner]);
  return sizes?.asked === asked ? sizes.found : null;
};
