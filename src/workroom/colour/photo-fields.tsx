// The photograph of a cloth: taken, looked at with its size, changed, taken away.
import { useCallback, useMemo, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { LengthField } from '#workroom/fields';
import { pickFile, useQuilt, useRoom } from '#workroom/room';
import { changeLook, removePhoto } from './colourway-edits.ts';
import { roomForPhoto } from './photo-room.ts';
import { PhotoSheet } from './photo-sheet.tsx';
import type { SeenCloth } from './seen-cloths.ts';

export const ClothPhoto = ({ seen, colourway }: { readonly seen: SeenCloth; readonly colourway: string | null }) => {
  const { document, edit } = useQuilt();
  const { say } = useRoom();
  const [file, setFile] = useState<File | null>(null);
  const { id, name, photo } = seen;
  const pick = useCallback(() => {
    void pickFile('image/jpeg,image/png,image/webp').then(setFile);
  }, []);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'photo', part: 'Colour', words: `Take ${name} from a photograph`, keys: ['P'], run: pick },
      ],
      [name, pick],
    ),
  );
  return (
    <>
      {photo === undefined ? (
        <button type="button" onClick={pick}>
          From a photograph …
        </button>
      ) : (
        <>
          <div className="photo-shown">
            <img src={photo.image} alt={`${name}, photographed`} />
          </div>
          <LengthField
            label="Cloth from edge to edge of it"
            value={photo.width}
            unit={document.unit}
            onChange={(width) =>
              edit('Change the width of the photograph', (draft) =>
                changeLook(draft, { cloth: id, colourway, look: { photo: { image: photo.image, width } } }),
              )
            }
          />
          <p className="quiet">
            Its mean colour stands above: light and dark are judged by it, and pages are printed in it.
          </p>
          <div className="row">
            <button type="button" onClick={pick}>
              Another photograph …
            </button>
            <button
              type="button"
              onClick={() => {
                edit('Take the photograph away', (draft) => removePhoto(draft, { cloth: id, colourway }));
                say(`${name} is shown in its colour`);
              }}
            >
              Take it away
            </button>
          </div>
        </>
      )}
      {file !== null && (
        <PhotoSheet
          file={file}
          clothName={name}
          room={roomForPhoto(document, { cloth: id, colourway })}
          onClose={() => setFile(null)}
          onTaken={({ image, colour, width }) => {
            edit('Take the cloth from a photograph', (draft) =>
              changeLook(draft, { cloth: id, colourway, look: { colour, photo: { image, width } } }),
            );
            say(`${name} is shown by its photograph`);
            setFile(null);
          }}
        />
      )}
    </>
  );
};
