// An exact place on the grid, typed: where the hand stands.
import { at, type Point } from '#ground/plane';
import { WrittenField } from '#workroom/fields';
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
}) => (
  <WrittenField
    label={of.label}
    unit="squares"
    own={figureText(of.value)}
    wanted={`From 0 to ${figureText(of.most)} squares. Write it like 2 or 1 1/2.`}
    onTake={(written) => {
      const read = figureIn(written, of.most);
      if (read !== null) of.onChange(read);
      return read !== null;
    }}
  />
);
