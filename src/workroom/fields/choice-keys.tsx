// A few choices side by side, one of them taken.

export interface ChoiceKeysOf<T extends string | number> {
  readonly label: string;
  /** Where what stands above does not say what is chosen. */
  readonly isLabelSeen?: boolean;
  readonly choices: readonly { readonly value: T; readonly words: string; readonly spoken?: string }[];
  readonly value: T | null;
  readonly onChoose: (value: T) => void;
}

export const ChoiceKeys = <T extends string | number>(of: ChoiceKeysOf<T>) => (
  <fieldset className="choice-keys" aria-label={of.label}>
    {of.isLabelSeen === true && (
      <span className="choice-label" aria-hidden="true">
        {of.label}
      </span>
    )}
    {of.choices.map((choice) => (
      <button
        key={choice.value}
        type="button"
        aria-pressed={choice.value === of.value}
        aria-label={choice.spoken}
        onClick={() => of.onChoose(choice.value)}
      >
        {choice.words}
      </button>
    ))}
  </fieldset>
);
