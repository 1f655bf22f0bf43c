// A name, kept letter by letter: from coming into the field until leaving it is one gesture.
import { limits } from '#craft/limits';
import { useGesture } from '#workroom/room';

export interface NameFieldOf {
  readonly label: string;
  /** Undefined where it has none. */
  readonly value: string | undefined;
  /** What it is called as long as it has none. */
  readonly otherwise: string;
  /** Tells this name from every other of the quilt. */
  readonly named: string;
  readonly onChange: (name: string, gesture: string) => void;
}

export const NameField = ({ label, value, otherwise, named, onChange }: NameFieldOf) => {
  const gesture = useGesture();
  return (
    <label className="field">
      <span>{label}</span>
      <input
        type="text"
        value={value ?? ''}
        placeholder={otherwise}
        maxLength={limits.titleCharacters}
        onFocus={gesture.begin}
        onChange={(event) => onChange(event.target.value, gesture.named(named))}
      />
    </label>
  );
};
