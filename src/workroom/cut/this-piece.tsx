// One piece of the cloth: what it is, and where it goes, lit in its block and in the quilt; and back, from a patch to its pieces.
import { memo, useMemo, useState } from 'react';
import type { ClothUnrolled, QuiltPicture } from '#workroom/compute';
import { DrawingView, patchOfKey, placeOfKey, sceneOfBlock, sceneOfQuilt, stripOfKey } from '#workroom/drawing';
import { useQuilt } from '#workroom/room';
import { type PiecePlaces, placesOf, type Spot } from './piece-places.ts';
import { litInBlock, litInQuilt, litOver } from './quilt-over.ts';

export interface ThisPieceOf {
  readonly cloth: ClothUnrolled;
  /** Places in the cloth's list. */
  readonly of: readonly number[];
  /** How the very piece lies, where one is pointed at. */
  readonly lies: 'turned' | 'as-listed' | null;
  readonly picture: QuiltPicture;
  readonly pale: string;
  /** The block in which a place was chosen: it stays in sight while the keys go about in it. */
  readonly entry: number | null;
  readonly onSpot: (spot: Spot | null) => void;
}

export const ThisPiece = memo(({ cloth, of, lies, picture, pale, entry, onSpot }: ThisPieceOf) => {
  const [at, setAt] = useState<string | null>(null);
  const { words } = useQuilt();
  const pieces = of.flatMap((index) => cloth.pieces[index] ?? []);
  const key = of.join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the pieces are those of the key
  const places = useMemo(
    () => placesOf({ cloth: cloth.id, uses: pieces.flatMap(({ uses }) => uses), picture }),
    [cloth, key, picture],
  );
  const scene = useMemo(() => sceneOfQuilt(picture, words.nearSize), [picture, words]);
  const over = useMemo(
    () => litOver({ lit: litInQuilt(scene, places, picture), scene, colour: cloth.colour, pale }),
    [scene, places, picture, cloth.colour, pale],
  );
  return (
    <section className="this-piece">
      <h2>{pieces.length === 0 ? 'Where it goes' : pieces.map(({ mark }) => mark).join(', ')}</h2>
      {pieces.length === 0 ? (
        <p className="quiet">Point at a piece of the cloth, or choose a patch of the quilt: each shows the other.</p>
      ) : (
        pieces.map((piece) => (
          <p key={piece.mark}>
            {piece.count} of {piece.size}, {piece.shape}. For {piece.usedFor}.
            {lies === 'turned' ? ' This one lies turned.' : ''}
          </p>
        ))
      )}
      <BlockPictures places={places} first={entry} cloth={cloth} picture={picture} pale={pale} onSpot={onSpot} />
      <div className="piece-quilt">
        <DrawingView
          scene={scene}
          label="Where it goes in the quilt"
          chosen={at}
          closerKeys="none"
          over={over}
          onChoose={(chosen) => {
            setAt(chosen);
            const strip = stripOfKey(chosen);
            if (strip !== null) onSpot({ strip });
            else if (chosen === null) onSpot(null);
          }}
          onPatch={(chosen, patch) => {
            const placed = placeOfKey(chosen);
            if (placed !== null) onSpot({ placed, patch });
          }}
        />
      </div>
      {pieces.length > 0 && places.patches.length + places.strips.length === 0 && (
        <p className="quiet">It is no patch of the quilt’s top.</p>
      )}
    </section>
  );
});

/** Blocks shown at most: of a sampler's commonest piece. */
const mostBlocks = 3;

const BlockPictures = (of: {
  readonly places: PiecePlaces;
  readonly first: number | null;
  readonly cloth: ClothUnrolled;
  readonly picture: QuiltPicture;
  readonly pale: string;
  readonly onSpot: (spot: Spot | null) => void;
}) => {
  const { places, first } = of;
  const all =
    first === null
      ? places.entries
      : [
          places.entries.find(({ entry }) => entry === first) ?? { entry: first, patches: [] },
          ...places.entries.filter(({ entry }) => entry !== first),
        ];
  const shown = all.slice(0, mostBlocks);
  const more = all.length - shown.length;
  if (shown.length === 0) return null;
  return (
    <>
      <ul className="piece-blocks">
        {shown.map(({ entry, patches }) => (
          <BlockLit key={entry} {...of} entry={entry} patches={patches} />
        ))}
      </ul>
      {more > 0 && <p className="quiet">and in {more === 1 ? 'one more block' : `${more} more blocks`}</p>}
    </>
  );
};

const BlockLit = (of: {
  readonly entry: number;
  readonly patches: readonly number[];
  readonly cloth: ClothUnrolled;
  readonly picture: QuiltPicture;
  readonly pale: string;
  readonly onSpot: (spot: Spot | null) => void;
}) => {
  const { entry, patches, cloth, picture, pale, onSpot } = of;
  const [at, setAt] = useState<string | null>(null);
  const { words } = useQuilt();
  const block = picture.entries[entry];
  const scene = useMemo(
    () =>
      block === undefined ? null : sceneOfBlock({ picture: block, cloths: picture.cloths, sizeWords: words.size }),
    [block, picture.cloths, words],
  );
  const over = useMemo(
    () =>
      scene === null ? undefined : litOver({ lit: litInBlock(scene, patches), scene, colour: cloth.colour, pale }),
    [scene, patches, cloth.colour, pale],
  );
  if (block === undefined || scene === null || over === undefined) return null;
  return (
    <li>
      <DrawingView
        scene={scene}
        label={`Where it goes in ${block.title}`}
        chosen={at}
        closerKeys="none"
        over={over}
        onChoose={(chosen) => {
          setAt(chosen);
          onSpot(chosen === null ? null : { entry, patch: patchOfKey(chosen) });
        }}
      />
      <span>{block.title}</span>
    </li>
  );
};
