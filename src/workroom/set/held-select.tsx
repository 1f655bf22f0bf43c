// What may lie in a place: a block of the quilt, or a plain piece of one of its cloths.
import { useBlockName, useQuilt } from '#workroom/room';
import { clothOf, type Held, holding, plain } from './place-edits.ts';
import { isBlock } from './top-edits.ts';

export interface HeldSelectOf {
  readonly label: string;
  /** Null where several places hold different things. */
  readonly value: string | null;
  readonly onChoose: (value: string) => void;
}

export const HeldSelect = ({ label, value, onChoose }: HeldSelectOf) => {
  const { blocks, fabrics } = useQuilt().document;
  const nameOf = useBlockName();
  return (
    <label className="field">
      <span>{label}</span>
      <select value={value ?? ''} onChange={(event) => onChoose(event.target.value)}>
        {value === null && (
          <option value="" disabled>
            different things
          </option>
        )}
        <optgroup label="Blocks">
          {blocks.map(({ id }) => (
            <option key={id} value={chosenOf({ block: id })}>
              {nameOf(id)}
            </option>
          ))}
        </optgroup>
        <optgroup label="A plain piece of">
          {fabrics.map(({ id, name }) => (
            <option key={id} value={chosenOf({ plain: id })}>
              {name || id}
            </option>
          ))}
        </optgroup>
      </select>
    </label>
  );
};

/** Of a select, for what a place holds. */
export const chosenOf = (held: Held): string => (isBlock(held) ? `block ${held.block}` : `plain ${clothOf(held)}`);

/** A place comes to hold what was chosen. */
export const becoming = (value: string): ((held: Held) => Held) => {
  const [kind, ...rest] = value.split(' ');
  return (kind === 'block' ? holding : plain)(rest.join(' '));
};
