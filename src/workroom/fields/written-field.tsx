// A figure that is written by hand and read: a length, a place. What cannot be read is said beside the field, and changes nothing.
import { useEffect, useId, useState } from 'react';

export interface WrittenFieldOf {
  readonly label: string;
  /** What it is counted in. */
  readonly unit: string;
  /** As it stands, in the words that it would be written in. */
  readonly own: string;
  /** What is wanted, where something else was written. */
  readonly wanted: string;
  /** Takes what was written; false where it cannot be read. */
  readonly onTake: (written: string) => boolean;
}

export const WrittenField = ({ label, unit, own, wanted, onTake }: WrittenFieldOf) => {
  const [written, setWritten] = useState(own);
  const [isRefused, setRefused] = useState(false);
  useEffect(() => {
    setWritten(own);
    setRefused(false);
  }, [own]);
  const take = () => {
    const text = written.trim();
    setRefused(text !== own && !onTake(text));
  };
  const id = useId();
  return (
    <label className="field">
      <span>
        {label} <span className="quiet">{unit}</span>
      </span>
      <input
        type="text"
        autoComplete="off"
        value={written}
        aria-invalid={isRefused}
        aria-describedby={isRefused ? id : undefined}
        onChange={(event) => setWritten(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
        }}
      />
      {isRefused && (
        <span className="field-problem" id={id} role="alert">
          ◆ {wanted}
        </span>
      )}
    </label>
  );
};
