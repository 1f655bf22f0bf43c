// The whole finish in a few lines: what each part is, and what it takes; what it lacks, and one key to add it.
import { moneyText } from '#paper/pages';
import { capital, inWords } from '#paper/words';
import type { FinishSeen, FinishTopic } from '#workroom/compute';
import { countWords, focusSoon, type LengthWords, quiltAddress, useQuilt, useRoom } from '#workroom/room';
import { addPart, lackingParts } from './finish-edits.ts';
import { withoutKey } from './finish-ways.ts';
import { partNames, topicNames, topics } from './part-names.ts';
import type { Prices } from './use-prices.ts';

export interface FinishSumOf {
  readonly seen: FinishSeen;
  readonly prices: Prices;
}

const sumId = 'finish-sum';

export const FinishSum = ({ seen, prices }: FinishSumOf) => {
  const { id, document, words } = useQuilt();
  const whole = prices.taken('without finish');
  const borders = document.top.borders?.length ?? 0;
  return (
    <section className="finish-sum" aria-label="The finish in all" id={sumId} tabIndex={-1}>
      <Lacking prices={prices} />
      <table>
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col">What it is</th>
            <th scope="col">What it takes</th>
          </tr>
        </thead>
        <tbody>
          {topics.map((topic) => (
            <tr key={topic}>
              <th scope="row">
                <a href={quiltAddress(id, 'finish', topic)}>{topicNames[topic]}</a>
              </th>
              <td>{isWords(topic, { seen, words, borders })}</td>
              <td>{takesWords(topic, { seen, prices, borders, currency: document.currency ?? '' })}</td>
            </tr>
          ))}
        </tbody>
        {whole !== '' && document.finish !== undefined && (
          <tfoot>
            <tr>
              <th scope="row">In all</th>
              <td>{borders === 0 ? 'all parts' : 'all but the borders'}</td>
              <td>{whole}</td>
            </tr>
          </tfoot>
        )}
      </table>
      {seen.total.map((line) => (
        <p key={line}>{line}</p>
      ))}
      <p className="quiet">
        What a part takes is what would be bought less without it: what is cut from cloth that is bought anyway takes
        none.
        {seen.total.length === 0 && (
          <>
            {' '}
            No cloth has a price yet: give them <a href={quiltAddress(id, 'finish', 'prices')}>prices</a>, and it is
            told in money too.
          </>
        )}
      </p>
    </section>
  );
};

const Lacking = ({ prices }: { readonly prices: Prices }) => {
  const { document, edit } = useQuilt();
  const { say } = useRoom();
  const lacks = lackingParts(document);
  if (lacks.length === 0) return null;
  const named = lacks.map((part) => partNames[part]);
  const all = inWords(named);
  const price = prices.more('with all');
  return (
    <div className="finish-lacking">
      <p>{capital(`no ${inWords(named, 'or')} yet.`)}</p>
      <button
        type="button"
        className="main-key"
        onClick={() => {
          edit('Add what the finish lacks', (draft) => lacks.map((part) => addPart(draft, part)));
          say(`Added: ${all}.`);
          focusSoon(sumId);
        }}
      >
        Add {all}
      </button>
      <span className="quiet">{price}</span>
    </div>
  );
};

const none = 'none';

const isWords = (
  topic: FinishTopic,
  of: { readonly seen: FinishSeen; readonly words: LengthWords; readonly borders: number },
): string => {
  const { seen, words, borders } = of;
  const { top, backing, batting, binding, sleeve, label, bed } = seen.figures;
  switch (topic) {
    case 'borders':
      return borders === 0
        ? none
        : `${countWords(borders, 'border', 'borders')}; with ${borders === 1 ? 'it' : 'them'} the quilt is ${words.nearSize(top)}`;
    case 'backing': {
      if (backing === null) return none;
      const run = backing.run === 'upright' ? 'top to bottom' : 'side to side';
      return `${words.nearSize(backing.size)}, ${backing.panels === 1 ? 'in one piece' : `${backing.panels} panels, seams from ${run}`}`;
    }
    case 'batting':
      return batting === null ? none : words.nearSize(batting.size);
    case 'quilting':
      return batting === null ? none : `lines at most ${words.length(batting.spacing)} apart`;
    case 'sleeve':
      return sleeve === null ? none : words.nearSize(sleeve.size);
    case 'binding':
      return binding === null
        ? none
        : `${binding.length}, cut ${words.length(binding.cut)} ${binding.grain === 'bias' ? 'on the bias' : 'straight'}, ${countWords(binding.joins, 'join', 'joins')}`;
    case 'label':
      return label === null ? none : words.size(label.size);
    case 'bed':
      return bed === null ? none : `${words.size(bed.wanted)} asked for${bed.isLarge ? '' : ': this quilt is smaller'}`;
  }
};

const takesWords = (
  topic: FinishTopic,
  of: { readonly seen: FinishSeen; readonly prices: Prices; readonly borders: number; readonly currency: string },
): string => {
  const { seen, prices, borders, currency } = of;
  switch (topic) {
    case 'borders':
      return borders === 0 ? '' : prices.taken('without borders');
    case 'backing':
    case 'sleeve':
    case 'binding':
    case 'label':
      return seen.figures[topic] === null ? '' : prices.taken(withoutKey(topic));
    case 'batting': {
      const cost = seen.figures.batting?.cost ?? null;
      return cost === null ? '' : moneyText(cost, currency);
    }
    default:
      return '';
  }
};
