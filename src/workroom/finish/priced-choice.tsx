// Ways to do one thing side by side, one of them taken, each with what it takes more or less.

export interface PricedChoiceOf<T extends string> {
  readonly label: string;
  readonly choices: readonly { readonly value: T; readonly words: string; readonly price: string }[];
  readonly value: T;
  readonly onChoose: (value: T) => void;
}

export const PricedChoice = <T extends string>({ label, choices, value, onChoose }: PricedChoiceOf<T>) => (
  <fieldset className="priced">
    <legend>{label}</legend>
    {choices.map((choice) => (
      <button
        key={choice.value}
        type="button"
        aria-pressed={choice.value === value}
        onClick={() => onChoose(choice.value)}
      >
        <span>{choice.words}</span> <span className="quiet">{choice.value === value ? 'as it is' : choice.price}</span>
      </button>
    ))}
  </fieldset>
);
