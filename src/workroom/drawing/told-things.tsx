// What a screen reader finds in a drawing, and where its keys are pressed: the things that can be chosen, or the hand.
import { type KeyboardEvent, memo, useId } from 'react';
import type { HandOf } from './hand.ts';
import type { ChosenThings } from './use-chosen-things.ts';

/** Of more things than this only those about the chosen one stand on the page for screen readers, each with its place among all. */
const mostTold = 1000;
const toldBeside = 60;

export const ToldHand = (of: { readonly hand: HandOf; readonly onKeyDown: (event: KeyboardEvent) => void }) => (
  <div
    className="drawing-list"
    role="application"
    // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys move the hand
    tabIndex={0}
    aria-label={of.hand.label}
    onKeyDown={of.onKeyDown}
  />
);

export const ToldThings = (of: {
  readonly label: string;
  readonly chosen: ChosenThings;
  readonly choosing: 'one' | 'several';
  readonly among: ReadonlySet<string> | undefined;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}) => {
  const { label, chosen, choosing, among, onKeyDown } = of;
  const { things, entered, current } = chosen;
  const at = things.findIndex(({ key }) => key === current);
  const isAll = things.length <= mostTold;
  const first = isAll ? 0 : Math.max(0, at - toldBeside);
  const inReach = isAll ? things : things.slice(first, first + 2 * toldBeside);
  const list = useId();
  const optionId = (key: string): string => `${list}-${key.replaceAll(' ', '-')}`;
  return (
    <div
      className="drawing-list"
      role="listbox"
      aria-multiselectable={choosing === 'several' ? true : undefined}
      tabIndex={0}
      aria-label={entered === undefined ? label : `Pieces of ${entered.name}`}
      aria-activedescendant={at < 0 || current === null ? undefined : optionId(current)}
      onKeyDown={onKeyDown}
    >
      {inReach.map(({ key, name }, index) => (
        <Option
          key={key}
          id={optionId(key)}
          name={name}
          at={first + index + 1}
          of={things.length}
          isChosen={among === undefined || chosen.isInside ? key === current : among.has(key)}
        />
      ))}
    </div>
  );
};

interface OptionOf {
  readonly id: string;
  readonly name: string;
  readonly at: number;
  readonly of: number;
  readonly isChosen: boolean;
}

/** Of thousands only the two that change are made anew. */
const Option = memo(({ id, name, at, of, isChosen }: OptionOf) => (
  <div id={id} role="option" aria-selected={isChosen} aria-posinset={at} aria-setsize={of} tabIndex={-1}>
    {`${name}, ${at} of ${of}`}
  </div>
));
