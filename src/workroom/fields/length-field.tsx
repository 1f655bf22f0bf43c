// A length, written as makers write it: "2 1/2", "2½", "6 cm". What cannot be read is said beside the field, and changes nothing.
import { useEffect, useId, useState } from 'react';
import { parseLength, type Sign, type Unit } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { figureOnPaper } from '#paper/lengths';

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

/** With true fractions where they can be typed again as they stand; what names its own unit is left as it was written. */
const shown = (value: string | number, unit: Unit): string => {
  const text = String(value);
  const read = parseLength(text, { unit, sign: 'any' });
  if (!read.ok || /[a-z"'″′]/i.test(text)) return text;
  const figure = figureOnPaper(toNumber(read.value), unit);
  return figure.includes('⁄') ? text : figure;
};

export const LengthField = ({ label, value, unit, sign = 'positive', onChange }: LengthFieldOf) => {
  const own = shown(value, unit);
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
    const read = parseLength(text, { unit, sign });
    setRefused(!read.ok);
    if (read.ok) onChange(text);
  };
  const id = useId();
  return (
    <label className="field">
      <span>
        {label} <span className="quiet">{unit}</span>
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
          ◆ This is not {wants[sign]}. Write it like {unit === 'in' ? '2 1/2 or 2½' : '6.5'}.
        </span>
      )}
    </label>
  );
};
