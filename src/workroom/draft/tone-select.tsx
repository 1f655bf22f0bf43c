// A tone of the block, or a cloth of the quilt by itself, with its colour beside it.
import { useQuilt } from '#workroom/room';
import type { ToneChoice } from './tones.ts';

export const ToneSelect = (of: {
  readonly label: string;
  /** Where the place is narrow the colour says it. */
  readonly isLabelHidden?: boolean;
  readonly tones: readonly ToneChoice[];
  /** Null where several are meant. */
  readonly value: string | null;
  readonly onChange: (tone: string) => void;
}) => {
  const { document } = useQuilt();
  const cloth = of.tones.find(({ tone }) => tone === of.value)?.cloth;
  const groups = [
    { label: 'Tones of this block', of: of.tones.filter((one) => one.of === 'block') },
    { label: 'Cloths of the quilt', of: of.tones.filter((one) => one.of === 'cloths') },
  ].filter((group) => group.of.length > 0);
  return (
    <label className="field">
      <span className={of.isLabelHidden === true ? 'unseen' : undefined}>{of.label}</span>
      <span className="cloth-field">
        <span
          className="swatch"
          style={{ background: document.fabrics.find(({ id }) => id === cloth)?.colour ?? 'transparent' }}
          aria-hidden="true"
        />
        <select value={of.value ?? ''} onChange={(event) => of.onChange(event.target.value)}>
          {of.value === null && <option value="">several</option>}
          {groups.map((group) => (
            <optgroup key={group.label} label={group.label}>
              {group.of.map(({ tone, words }) => (
                <option key={tone} value={tone}>
                  {words}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </span>
    </label>
  );
};
