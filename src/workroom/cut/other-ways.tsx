// Other ways to buy, lay and cut, each with what it comes to before it is taken.
import { memo } from 'react';
import type { QuiltDocument } from '#craft/design';
import { capital } from '#paper/words';
import type { Weighed } from '#workroom/compute';
import { useQuilt, useRoom } from '#workroom/room';
import { type Choice, takeChange } from './choices.ts';
import { useWeighed } from './use-weighed.ts';

export const OtherWays = memo(({ cloth, name }: { readonly cloth: string; readonly name: string }) => {
  const { edit } = useQuilt();
  const { say } = useRoom();
  const { ofQuilt, ofCloth, known, changes, state } = useWeighed(cloth);
  const take = (what: string, apply: (draft: QuiltDocument) => void) => {
    edit(what, apply);
    say(`${what}: taken`);
  };
  const line = (choice: Choice) => (
    <ChoiceLine
      key={choice.id}
      choice={choice}
      weighed={known.get(choice.id)}
      onTake={() => take(choice.what, choice.apply)}
    />
  );
  return (
    <>
      <section className="other-ways">
        <h2>Other ways to cut {name}</h2>
        <Waiting state={state} />
        <ul>
          {changes.map((one) => (
            <li key={one.words}>
              <button type="button" onClick={() => take(capital(one.words), (draft) => takeChange(draft, one))}>
                <span>{capital(one.words)}</span>
                {one.cost !== '' && <span className="quiet">{one.cost}</span>}
              </button>
            </li>
          ))}
          {ofCloth.map(line)}
        </ul>
        {state === 'done' && changes.length === 0 && (
          <p className="quiet">No other usual width and no other way to buy it changes what is bought.</p>
        )}
      </section>
      <section className="other-ways">
        <h2>Other ways for all cloths</h2>
        <ul>{ofQuilt.map(line)}</ul>
      </section>
    </>
  );
});

const Waiting = ({ state }: { readonly state: 'waiting' | 'weighing' | 'done' }) =>
  state === 'done' ? null : (
    <p className="quiet" role="status">
      {state === 'waiting' ? 'Weighed when the layouts stand.' : 'Weighing what each would come to …'}
    </p>
  );

const ChoiceLine = (of: {
  readonly choice: Choice;
  readonly weighed: Weighed | undefined;
  readonly onTake: () => void;
}) => {
  const { choice, weighed, onTake } = of;
  const price = priceWords(weighed);
  return (
    <li>
      <button type="button" disabled={weighed === undefined || weighed.kind === 'refused'} onClick={onTake}>
        <span>{choice.words}</span>
        <span className="quiet">{price}</span>
      </button>
    </li>
  );
};

/** "⅛ yd less of A; 12 strokes fewer; 1.50 EUR less" */
const priceWords = (weighed: Weighed | undefined): string => {
  if (weighed === undefined) return '…';
  switch (weighed.kind) {
    case 'refused':
      return `It cannot be cut so: ${weighed.why}`;
    case 'variant':
      return [weighed.difference.cloth, weighed.difference.work, weighed.difference.cost]
        .filter((text) => text !== '')
        .join('; ');
    case 'cloth':
      return weighed.cost;
  }
};
