// An exact place on the grid, typed: where the hand stands.
import { useEffect, useId, useState } from 'react';
import { at, type Point } from '#ground/plane';
import { figureIn, figureText } from './place-text.ts';

export const PlaceFields = (of: {
  readonly value: Point;
  readonly grid: readonly [number, number];
  readonly onChange: (place: Point) => void;
}) => (
  <div className="pair">
    <FigureField label="Across" value={of.value.x} most={of.grid[0]} onChange={(x) => of.onChange(at(x, of.value.y))} />
    <FigureField label="Down" value={of.value.y} most={of.grid[1]} onChange={(y) => of.onChange(at(of.value.x, y))} />
  </div>
);

/** Squares of the grid, with fractions. */
export const FigureField = (of: {
  readonly label: string;
  readonly value: number;
  readonly most: number;
  readonly onChange: (value: number) => void;
}) => {
  const own = figureText(of.value);
  const [written, setWritten] = useState(own);
  const [isRefused, setRefused] = useState(false);
  useEffect(() => {
    setWritten(own);
    setRefused(false);
  }, [own]);
  const take = () => {
    if (written.trim() === own) {
      setRefused(false);
      return;
    }
    const read = figureIn(written, of.most);
    setRefused(read === null);
    if (read !== null) of.onChange(read);
  };
  const id = useId();
  return (
    <label className="field">
      <span>
        {of.label} <span className="quiet">squares</span>
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
          ◆ From 0 to {figureText(of.most)} squares. Write it like 2 or 1 1/2.
        </span>
      )}
    </label>
  );
};
