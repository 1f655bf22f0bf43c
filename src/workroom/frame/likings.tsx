// How the workroom looks and measures: for this browser, whatever the quilt.
import { type Preferences, Sheet, usePreferences, useRoom } from '#workroom/room';

export const Likings = ({ onClose }: { readonly onClose: () => void }) => {
  const { preferences } = useRoom();
  const now = usePreferences(preferences);
  return (
    <Sheet title="How you like it" onClose={onClose}>
      <Choice
        legend="Lengths are shown"
        name="unit"
        value={now.unit}
        choices={[
          ['written', 'as the quilt has them'],
          ['in', 'in inches'],
          ['cm', 'in centimetres'],
        ]}
        onChoose={(unit) => preferences.prefer({ unit })}
      />
      <Choice
        legend="The room is"
        name="theme"
        value={now.theme}
        choices={[
          ['system', 'as the device is'],
          ['light', 'light'],
          ['dark', 'dark'],
        ]}
        onChoose={(theme) => preferences.prefer({ theme })}
      />
      <Choice
        legend="Patterns are printed on"
        name="paper"
        value={now.paper}
        choices={[
          ['by-unit', 'US letter for quilts in inches, A4 for those in centimetres'],
          ['letter', 'US letter'],
          ['a4', 'A4'],
        ]}
        onChoose={(paper) => preferences.prefer({ paper })}
      />
      <Choice
        legend="Cloth is cut with"
        name="hand"
        value={now.hand}
        choices={[
          ['right', 'the right hand'],
          ['left', 'the left hand'],
        ]}
        onChoose={(hand) => preferences.prefer({ hand })}
      />
      <p className="quiet">Cloth keeps its true colour, and the quilt its own unit.</p>
    </Sheet>
  );
};

const Choice = <K extends keyof Preferences>(of: {
  readonly legend: string;
  readonly name: K;
  readonly value: Preferences[K];
  readonly choices: readonly (readonly [Preferences[K], string])[];
  readonly onChoose: (value: Preferences[K]) => void;
}) => (
  <fieldset className="choice">
    <legend>{of.legend}</legend>
    {of.choices.map(([value, words]) => (
      <label key={value} className="check">
        <input type="radio" name={of.name} checked={value === of.value} onChange={() => of.onChoose(value)} />
        {words}
      </label>
    ))}
  </fieldset>
);
