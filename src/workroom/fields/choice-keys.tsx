// A few choices side by side, one of them taken.

export interface ChoiceKeysOf<T extends string | number> {
  readonly label: string;
  readonly choices: readonly { readonly value: T; readonly words: string; readonly spoken?: string }[];
  readonly value: T | null;
  readonly onChoose: (value: T) => void;
}

export const ChoiceKeys = <T extends string | number>({ label, choices, value, onChoose }: ChoiceKeysOf<T>) => (
  <fieldset className="choice-keys" aria-label={label}>
    {choices.map((choice) => (
      <button
        key={choice.value}
        type="button"
        aria-pressed={choice.value === value}
        aria-label={choice.spoken}
        onClick={() => onChoose(choice.value)}
      >
        {choice.words}
      </button>
    ))}
  </fieldset>
);
