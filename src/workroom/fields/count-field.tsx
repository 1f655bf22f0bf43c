// A whole number: typed, or one more and one less.
import { useEffect, useState } from 'react';

export interface CountFieldOf {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly onChange: (value: number) => void;
}

export const CountField = ({ label, value, least, most, onChange }: CountFieldOf) => {
  const [written, setWritten] = useState(String(value));
  useEffect(() => setWritten(String(value)), [value]);
  const take = (text: string) => {
    const number = /^\d+$/.test(text.trim()) ? Number(text) : Number.NaN;
    if (number >= least && number <= most) onChange(number);
    else setWritten(String(value));
  };
  return (
    <div className="field count">
      <span aria-hidden="true">{label}</span>
      <div className="count-keys">
        <button
          type="button"
          aria-label={`${label}: one less`}
          disabled={value <= least}
          onClick={() => onChange(value - 1)}
        >
          −
        </button>
        <input
          type="text"
          inputMode="numeric"
          aria-label={label}
          value={written}
          onChange={(event) => setWritten(event.target.value)}
          onBlur={(event) => take(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') take(event.currentTarget.value);
          }}
        />
        <button
          type="button"
          aria-label={`${label}: one more`}
          disabled={value >= most}
          onClick={() => onChange(value + 1)}
        >
          +
        </button>
      </div>
    </div>
  );
};
