// Files to take along: pictures, the cut list, the plan, the document itself.
import { useState } from 'react';
import type { Seen } from '#workroom/compute';
import { documentFile, saveFile, useQuilt } from '#workroom/room';

export interface FilesAlongOf {
  readonly prints: Seen<'prints'> | null;
  readonly isSewn: boolean;
  /** By the name that the command line gives it. */
  readonly onSave: (name: string) => void;
}

export const FilesAlong = ({ prints, isSewn, onSave }: FilesAlongOf) => {
  const { editing } = useQuilt();
  const pictures = prints?.pictures ?? [];
  const [chosen, setChosen] = useState<string | null>(null);
  const picture = pictures.find(({ id }) => id === chosen) ?? pictures[0];
  const save = (name: string, words: string, spoken: string) => (
    <button type="button" aria-label={spoken} disabled={!isSewn} onClick={() => onSave(name)}>
      {words}
    </button>
  );
  return (
    <section aria-labelledby="files-along">
      <h2 id="files-along">To take along</h2>
      {picture !== undefined && (
        <div className="file-line">
          <label className="field">
            <span>A picture of</span>
            <select value={picture.id} onChange={(event) => setChosen(event.target.value)}>
              {pictures.map(({ id, title }) => (
                <option key={id} value={id}>
                  {title}
                </option>
              ))}
            </select>
          </label>
          {save(`${picture.id}.svg`, 'SVG', `${picture.title} as SVG, in lines`)}
          {save(`${picture.id}.png`, 'PNG', `${picture.title} as PNG, in dots`)}
        </div>
      )}
      <div className="file-line">
        <span>The cut list, for a spreadsheet</span>
        {save('cutting.csv', 'CSV', 'The cut list as CSV')}
      </div>
      <div className="file-line">
        <span>The whole plan, for other programs</span>
        {save('plan.json', 'JSON', 'The plan as JSON')}
      </div>
      <div className="file-line">
        <span>The quilt’s document, to open here again</span>
        <button
          type="button"
          aria-label="Save the document"
          onClick={() => {
            const { name, content } = documentFile(editing.document);
            saveFile(name, content);
          }}
        >
          Save
        </button>
      </div>
    </section>
  );
};
