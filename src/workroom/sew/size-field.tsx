// A size as it was read off the ruler: taken when it is left, or at Enter; what is wrong with it is said by its row.
import { useEffect, useState } from 'react';

export interface SizeFieldOf {
  /** For those who do not see the row. */
  readonly label: string;
  readonly name: string;
  readonly should: string;
  readonly own: string;
  readonly problemId: string | null;
  readonly onTake: (text: string) => void;
}

export const SizeField = ({ label, name, should, own, problemId, onTake }: SizeFieldOf) => {
  const [text, setText] = useState(own);
  useEffect(() => setText(own), [own]);
  const take = (): void => {
    if (text !== own) onTake(text.trim());
  };
  const isWrong = problemId !== null && own !== '';
  return (
    <label className="sew-wrong-size">
      <span className="quiet">
        {name}, should be {should}
      </span>
      <input
        type="text"
        autoComplete="off"
        aria-label={label}
        aria-invalid={isWrong}
        aria-describedby={isWrong ? problemId : undefined}
        value={text}
        onChange={(event) => setText(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
        }}
      />
    </label>
  );
};
