// A length, written as makers write it: "2 1/2", "2½", "6 cm", in the unit that she likes. What cannot be read is said beside the
// field, and changes nothing.
import { useEffect, useId, useState } from 'react';
import { parseLength, type Sign, type Unit } from '#craft/measure';
import { useQuilt } from '#workroom/room';
import { lengthShown, lengthTaken } from './length-text.ts';

export interface LengthFieldOf {
  readonly label: string;
  /** As the document has it. */
  readonly value: string | number;
  readonly unit: Unit;
  readonly sign?: Sign;
  readonly onChange: (written: string) => void;
}

const wants: Readonly<Record<Sign, string>> = {
  positive: 'a length above zero',
  'zero-or-more': 'a length, or 0',
  any: 'a length',
};

export const LengthField = ({ label, value, unit, sign = 'positive', onChange }: LengthFieldOf) => {
  const liked = useQuilt().words.unit;
  const own = lengthShown(value, { unit, liked });
  const [written, setWritten] = useState(own);
  const [isRefused, setRefused] = useState(false);
  useEffect(() => {
    setWritten(own);
    setRefused(false);
  }, [own]);
  const take = () => {
    const text = written.trim();
    if (text === own) {
      setRefused(false);
      return;
    }
    const taken = lengthTaken(text, { unit, liked });
    const read = parseLength(taken, { unit, sign });
    setRefused(!read.ok);
    if (read.ok) onChange(taken);
  };
  const id = useId();
  return (
    <label className="field">
      <span>
        {label} <span className="quiet">{liked}</span>
      </span>
      <input
        type="text"
        inputMode="text"
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
          ◆ This is not {wants[sign]}. Write it like {liked === 'in' ? '2 1/2 or 2½' : '6.5'}.
        </span>
      )}
    </label>
  );
};
