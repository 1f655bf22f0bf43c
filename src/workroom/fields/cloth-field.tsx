// One cloth of the quilt's, with its colour beside its name.
import type { QuiltDocument } from '#craft/design';

export interface ClothFieldOf {
  readonly label: string;
  readonly fabrics: QuiltDocument['fabrics'];
  /** Null: none, where that may be. */
  readonly value: string | null;
  /** What none is called; without it one must be chosen. */
  readonly none?: string;
  readonly onChange: (id: string | null) => void;
}

export const ClothField = ({ label, fabrics, value, none, onChange }: ClothFieldOf) => (
  <label className="field">
    <span>{label}</span>
    <span className="cloth-field">
      <span
        className="swatch"
        style={{ background: fabrics.find(({ id }) => id === value)?.colour ?? 'transparent' }}
        aria-hidden="true"
      />
      <select value={value ?? ''} onChange={(event) => onChange(event.target.value === '' ? null : event.target.value)}>
        {none !== undefined && <option value="">{none}</option>}
        {fabrics.map(({ id, name }) => (
          <option key={id} value={id}>
            {name || id}
          </option>
        ))}
      </select>
    </span>
  </label>
);
