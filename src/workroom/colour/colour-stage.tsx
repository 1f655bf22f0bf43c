// The quilt in its cloths, in their greys or as other eyes see it; or its colourways side by side.
import { useMemo, useState } from 'react';
import { seenAs } from '#craft/fabric';
import type { ValuesNear } from '#workroom/compute';
import { ClothPhotos, DrawingView, placeOfKey, sceneOfQuilt, stripOfKey } from '#workroom/drawing';
import { ChoiceKeys } from '#workroom/fields';
import { usePicture, useQuilt } from '#workroom/room';
import { ColourwaysSideBySide, ownWay } from './colourways.tsx';
import { litFor } from './lit.ts';
import { looks } from './looks.ts';
import type { Colouring } from './use-colouring.ts';

export const ColourStage = (of: {
  readonly colouring: Colouring;
  /** What is to be lit where it lies. */
  readonly near: readonly ValuesNear[];
}) => {
  const { look, sight, isCompared, colourway, cloths } = of.colouring;
  const { document, words, problems } = useQuilt();
  const picture = usePicture();
  const drawn = useMemo(() => (picture === null ? null : sceneOfQuilt(picture, words.nearSize)), [picture, words]);
  const scene = useMemo(
    () =>
      drawn && {
        ...drawn,
        colours: new Map(cloths.map(({ id, colour }) => [id, sight === null ? colour : seenAs(colour, sight)])),
      },
    [drawn, cloths, sight],
  );
  const lit = useMemo(
    () => litFor({ near: of.near, problems, picture, document }),
    [of.near, problems, picture, document],
  );
  const [chosen, setChosen] = useState<string | null>(null);
  const chooseClothOf = (fabric: string | undefined): void => {
    if (fabric !== undefined) of.colouring.chooseCloth(fabric);
  };
  const choose = (key: string | null): void => {
    setChosen(key);
    chooseClothOf(picture?.strips[stripOfKey(key) ?? -1]?.fabric);
  };
  const choosePatch = (key: string, patch: number): void => {
    const placed = picture?.placed[placeOfKey(key) ?? -1];
    chooseClothOf(placed?.fabrics?.[patch] ?? picture?.entries[placed?.entry ?? -1]?.patches[patch]?.fabric);
  };
  if (scene === null)
    return (
      <p className="empty" role="status">
        {problems.length > 0 ? 'It can be drawn when what stands above is mended.' : 'Drawing the quilt …'}
      </p>
    );
  if (isCompared) {
    const { chooseWay, makeWay } = of.colouring;
    return <ColourwaysSideBySide {...{ scene, sight }} chosen={colourway} onChoose={chooseWay} onMake={makeWay} />;
  }
  const seen = look === 'colour' || look === 'grey' ? `in ${look}` : `as ${look} eyes see it`;
  return (
    <ClothPhotos cloths={cloths} unit={document.unit} sight={sight}>
      <DrawingView
        {...{ scene, chosen, lit }}
        label={`The quilt ${seen}, ${words.size([scene.width, scene.height])}`}
        onChoose={choose}
        onPatch={choosePatch}
      />
    </ClothPhotos>
  );
};

export const StageKeys = ({ colouring }: { readonly colouring: Colouring }) => {
  const { look, setLook, isCompared, compare, colourway, chooseWay } = colouring;
  const { colourways = [] } = useQuilt().document;
  return (
    <div className="stage-keys">
      <ChoiceKeys
        label="Look at it"
        choices={looks.map(({ value, words: name, spoken }) => ({ value, words: name, spoken }))}
        value={look}
        onChoose={setLook}
      />
      {!isCompared && colourways.length > 0 && (
        <label className="way-field">
          <span className="unseen">Colourway</span>
          <select
            value={colourway ?? ''}
            onChange={(event) => chooseWay(event.target.value === '' ? null : event.target.value)}
          >
            <option value="">{ownWay}</option>
            {colourways.map(({ id, title }) => (
              <option key={id} value={id}>
                {title || id}
              </option>
            ))}
          </select>
        </label>
      )}
      <button type="button" aria-pressed={isCompared} onClick={() => compare(!isCompared)}>
        Side by side
      </button>
    </div>
  );
};
