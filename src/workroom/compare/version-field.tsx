// Which version is weighed.
import { isVersion, type VersionsAround, versionGroups, versionWords } from './version-words.ts';
import { type Version, versionIn, versionText } from './versions.ts';

export interface VersionFieldOf {
  readonly label: string;
  readonly value: Version;
  readonly around: VersionsAround;
  readonly onChange: (version: Version) => void;
}

export const VersionField = ({ label, value, around, onChange }: VersionFieldOf) => {
  const groups = versionGroups(around);
  const isListed = groups.some(({ versions }) => versions.some(({ version }) => isVersion(version, value)));
  return (
    <label className="field">
      <span>{label}</span>
      <select
        value={versionText(value)}
        onChange={(event) => {
          const version = versionIn(event.target.value);
          if (version !== null) onChange(version);
        }}
      >
        {!isListed && <option value={versionText(value)}>{versionWords(value, around)}</option>}
        {groups.map(({ name, versions }) => (
          <optgroup key={name} label={name}>
            {versions.map(({ version, words }) => (
              <option key={versionText(version)} value={versionText(version)}>
                {words}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
};
