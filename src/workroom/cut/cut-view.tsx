// Cut: the cloths and what is bought of them; one unrolled in the middle, or its directions; the piece that is pointed at, and what would
// change the purchase, at the right.
import { useCallback, useDeferredValue, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import type { ClothUnrolled, CuttingLook, CuttingSeen, QuiltPicture } from '#workroom/compute';
import { DrawingView } from '#workroom/drawing';
import {
  go,
  quiltAddress,
  useHereInSight,
  useLook,
  usePreferences,
  useQuilt,
  useRoom,
  type Within,
} from '#workroom/room';
import { WaysView, waysPlace } from '#workroom/ways';
import { clothOver } from './cloth-over.ts';
import { type ClothScene, clothLabel, pieceWords, sceneOfCloth } from './cloth-scene.ts';
import { CutSteps } from './cut-steps.tsx';
import { OtherWays } from './other-ways.tsx';
import { clothAt, piecesAt, type Spot } from './piece-places.ts';
import { ThisPiece } from './this-piece.tsx';
import { useGroundColours } from './use-ground-colours.ts';

const none: readonly number[] = [];

/** What is chosen: a piece on the cloth, or a place in the quilt whose pieces are then lit. */
type Chosen = { readonly key: string; readonly cloth: string } | { readonly spot: Spot; readonly cloth: string } | null;

export const CutView = ({ within }: { readonly within: Within }) =>
  within[0] === waysPlace ? <WaysView picked={within[1] ?? null} /> : <ClothsView within={within} />;

const ClothsView = ({ within }: { readonly within: Within }) => {
  const [cloth = null, part = 'layout', step = null] = within;
  const { id, document, answer, problems } = useQuilt();
  const { say, preferences } = useRoom();
  const { hand } = usePreferences(preferences);
  const look = useMemo(() => ({ cloth, hand }), [cloth, hand]);
  const seen = useLook('cutting', look);
  const [chosen, choose] = useState<Chosen>(null);
  const [pointed, point] = useState<string | null>(null);
  const ground = useGroundColours();
  const here = seen?.shown ?? null;
  const isSteps = part === 'steps';
  const picture = answer?.picture ?? null;

  const { unit } = document;
  const scene = useMemo(() => (here === null ? null : sceneOfCloth(here, unit)), [here, unit]);
  const isHere = chosen !== null && chosen.cloth === here?.id;
  const ownKey = isHere && 'key' in chosen ? chosen.key : null;
  const spot = isHere && 'spot' in chosen ? chosen.spot : null;
  const shownKey = (isSteps ? null : pointed) ?? ownKey;
  const place = shownKey === null ? undefined : scene?.places.get(shownKey);
  const spotPieces = useMemo(
    () =>
      here === null || picture === null || spot === null ? none : piecesAt({ pieces: here.pieces, picture, spot }),
    [here, picture, spot],
  );
  const onePiece = place?.of ?? null;
  // going from piece to piece of one size lights nothing anew
  const of = useMemo(() => (onePiece === null ? spotPieces : [onePiece]), [onePiece, spotPieces]);
  const lit = useMemo(() => new Set(of), [of]);
  // a key is answered on the cloth first; where the piece goes follows
  const told = useDeferredValue(of);
  const lies =
    place === undefined
      ? null
      : here?.panels[place.panel]?.pieces[place.piece]?.turned
        ? ('turned' as const)
        : ('as-listed' as const);

  const cloths = seen?.cloths;
  const goBy = useCallback(
    (by: 1 | -1) => {
      if (cloths === undefined || cloths.length === 0) return;
      const at = cloths.findIndex((one) => one.id === (cloth ?? cloths[0]?.id));
      const to = cloths[(at + by + cloths.length) % cloths.length];
      if (to === undefined) return;
      go(quiltAddress(id, 'cut', to.id, ...(isSteps ? ['steps'] : [])));
      say(`Cloth ${to.letter}, ${to.name}: ${to.buy}`);
    },
    [cloths, cloth, id, isSteps, say],
  );
  const shownId = here?.id ?? null;
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'next cloth', part: 'Cut', words: 'To the next cloth', keys: ['N'], run: () => goBy(1) },
        { id: 'cloth before', part: 'Cut', words: 'To the cloth before', keys: ['P'], run: () => goBy(-1) },
        {
          id: 'cut steps',
          part: 'Cut',
          words: isSteps ? 'Look at the cloth' : 'Cut it step by step',
          keys: ['S'],
          isOff: shownId === null,
          run: () => go(quiltAddress(id, 'cut', shownId ?? '', ...(isSteps ? [] : ['steps']))),
        },
        {
          id: 'cutting hand',
          part: 'Cut',
          words: hand === 'left' ? 'Cut with the right hand' : 'Cut with the left hand',
          run: () => {
            const to = hand === 'left' ? 'right' : 'left';
            preferences.prefer({ hand: to });
            say(`Drawn for the ${to} hand`);
          },
        },
      ],
      [goBy, hand, id, isSteps, preferences, say, shownId],
    ),
  );

  const spotChosen = useCallback(
    (spot: Spot | null) => {
      const at = spot === null || picture === null ? null : clothAt(picture, spot);
      if (spot === null || at === null) {
        choose(null);
        return;
      }
      choose({ spot, cloth: at });
      if (at !== shownId) go(quiltAddress(id, 'cut', at, ...(isSteps ? ['steps'] : [])));
      const line = cloths?.find((one) => one.id === at);
      if (line !== undefined) say(`It is cut from cloth ${line.letter}, ${line.name}`);
    },
    [picture, shownId, id, isSteps, cloths, say],
  );

  return (
    <div className="view-parts cut-view">
      <div className="stage">
        {seen !== null && <ClothList seen={seen} shown={here?.id ?? null} part={isSteps ? 'steps' : 'layout'} />}
        {here !== null && <StageKeys cloth={here} part={isSteps ? 'steps' : 'layout'} />}
        {here === null || scene === null || picture === null ? (
          <p className="empty" role="status">
            {emptyWords({ seen, cloth, isStuck: problems.length > 0 })}
          </p>
        ) : isSteps ? (
          <StepsOf cloth={here.id} look={look} at={step} />
        ) : (
          <Unrolled
            cloth={here}
            scene={scene}
            lit={lit}
            soft={ground.soft}
            chosen={ownKey}
            onChoose={(key) => choose(key === null ? null : { key, cloth: here.id })}
            onPoint={point}
            line={place === undefined ? '' : pieceWords(here, place.of, lies ?? 'as-listed')}
          />
        )}
      </div>
      <aside className="side" aria-label="This cloth">
        {here !== null && (
          <>
            <ClothFacts cloth={here} />
            {picture !== null && (
              <ThisPiece
                cloth={here}
                of={told}
                lies={told === of ? lies : null}
                picture={picture}
                pale={ground.pale}
                entry={entryOf(chosen, picture)}
                onSpot={spotChosen}
              />
            )}
            <OtherWays cloth={here.id} name={here.name} />
          </>
        )}
      </aside>
    </div>
  );
};

const [leastPicturePt, mostPicturePt] = [140, 460];
/** What stands beside a picture, and how large a point is on the screen: as in page/cut.css. */
const [besidePx, pxInPt] = [104, 1.4];

/** In steps, so that a window drawn larger does not ask anew at every pixel. */
const pictureWidthPt = (px: number): number =>
  Math.max(leastPicturePt, Math.min(mostPicturePt, Math.floor((px - besidePx) / pxInPt / 20) * 20));

/** Asked for only where they are looked at. */
const StepsOf = (of: { readonly cloth: string; readonly look: CuttingLook; readonly at: string | null }) => {
  const place = useRef<HTMLDivElement>(null);
  const [widthPt, setWidthPt] = useState(0);
  useLayoutEffect(() => {
    const box = place.current;
    if (box === null) return;
    const measure = () => setWidthPt(pictureWidthPt(box.clientWidth));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(box);
    return () => observer.disconnect();
  }, []);
  const look = useMemo(() => ({ ...of.look, widthPt: widthPt || leastPicturePt }), [of.look, widthPt]);
  const steps = useLook('cutSteps', look);
  return (
    <div className="cut-steps-place" ref={place}>
      {steps !== null && steps.cloth === of.cloth && <CutSteps seen={steps} at={of.at} />}
    </div>
  );
};

/** The block that a chosen place lies in. */
const entryOf = (chosen: Chosen, picture: QuiltPicture): number | null => {
  if (chosen === null || !('spot' in chosen) || 'strip' in chosen.spot) return null;
  return 'entry' in chosen.spot ? chosen.spot.entry : (picture.placed[chosen.spot.placed]?.entry ?? null);
};

const emptyWords = (of: {
  readonly seen: CuttingSeen | null;
  readonly cloth: string | null;
  readonly isStuck: boolean;
}): string => {
  if (of.isStuck && of.seen === null) return 'It can be laid out when what stands above is mended.';
  if (of.seen === null) return 'Laying out the cloth …';
  if (of.seen.cloths.length === 0) return 'Nothing of this quilt is cut here.';
  return of.cloth === null ? 'Laying out the cloth …' : 'Nothing is cut from this cloth. Choose another above.';
};

type Part = 'layout' | 'steps';

/** The cloths of the quilt with what is bought of each. */
const ClothList = ({
  seen,
  shown,
  part,
}: {
  readonly seen: CuttingSeen;
  readonly shown: string | null;
  readonly part: Part;
}) => {
  const { id } = useQuilt();
  const list = useHereInSight<HTMLUListElement>(shown);
  return (
    <nav className="row-of-links cut-cloths" aria-label="Cloths">
      <ul ref={list}>
        {seen.cloths.map(({ id: cloth, letter, name, colour, buy, cost }) => (
          <li key={cloth}>
            <a
              href={quiltAddress(id, 'cut', cloth, ...(part === 'steps' ? ['steps'] : []))}
              aria-current={cloth === shown ? 'page' : undefined}
            >
              <span className="cut-swatch" style={{ background: colour }} aria-hidden="true" />
              <span className="cut-cloth-name">
                {letter} {name}
              </span>
              <span className="cut-cloth-buy">
                {buy}
                {cost === '' ? '' : ` · ${cost}`}
              </span>
            </a>
          </li>
        ))}
      </ul>
      <a className="cut-to-ways" href={quiltAddress(id, 'cut', waysPlace)}>
        Ways to make
      </a>
      {seen.total.map((line) => (
        <p key={line} className="quiet">
          {line}
        </p>
      ))}
    </nav>
  );
};

const StageKeys = ({ cloth, part }: { readonly cloth: ClothUnrolled; readonly part: Part }) => {
  const { id } = useQuilt();
  const { preferences } = useRoom();
  const { hand } = usePreferences(preferences);
  return (
    <div className="stage-keys cut-keys">
      <nav className="link-keys" aria-label="How to look at it">
        <a href={quiltAddress(id, 'cut', cloth.id)} aria-current={part === 'layout' ? 'page' : undefined}>
          Unrolled
        </a>
        <a href={quiltAddress(id, 'cut', cloth.id, 'steps')} aria-current={part === 'steps' ? 'page' : undefined}>
          Step by step
        </a>
      </nav>
      <label className="check">
        <input
          type="checkbox"
          checked={hand === 'left'}
          onChange={(event) => preferences.prefer({ hand: event.target.checked ? 'left' : 'right' })}
        />
        Left-handed
      </label>
    </div>
  );
};

const mostPx = { in: 17, cm: 17 / 2.54 } as const;

const Unrolled = (of: {
  readonly cloth: ClothUnrolled;
  readonly scene: ClothScene;
  readonly lit: ReadonlySet<number>;
  readonly soft: string;
  readonly chosen: string | null;
  readonly onChoose: (key: string | null) => void;
  readonly onPoint: (key: string | null) => void;
  /** What the piece is that is pointed at or chosen. */
  readonly line: string;
}) => {
  const { cloth, scene, lit, soft, chosen, onChoose, onPoint, line } = of;
  const { document } = useQuilt();
  const over = useMemo(() => clothOver({ scene, cloth, lit, soft }), [scene, cloth, lit, soft]);
  return (
    <DrawingView
      // another cloth begins at its own upper end
      key={cloth.id}
      scene={scene}
      label={clothLabel(cloth)}
      chosen={chosen}
      onChoose={onChoose}
      onPoint={onPoint}
      over={over}
      acrossMost={mostPx[document.unit]}
      foot={<p className="piece-line">{line}</p>}
    />
  );
};

const unitNames = { in: 'inches', cm: 'centimetres' } as const;

const ClothFacts = ({ cloth }: { readonly cloth: ClothUnrolled }) => {
  const { words } = cloth;
  const { document, words: liked } = useQuilt();
  return (
    <section>
      <h2>
        {cloth.letter} {cloth.name}
      </h2>
      {words.bound !== '' && <p>{words.bound}</p>}
      {words.amounts.length > 0 && (
        <dl className="facts">
          {words.amounts.map(([what, amount]) => (
            <div key={what} className="fact">
              <dt>{what}</dt>
              <dd>{amount}</dd>
            </div>
          ))}
        </dl>
      )}
      {words.kept !== '' && <p className="quiet">Worth keeping: {words.kept}.</p>}
      <p className="quiet">{words.effort}</p>
      {liked.unit !== document.unit && (
        <p className="quiet">
          What is cut stays in {unitNames[document.unit]}, as the quilt has it: its sizes lie on the marks of that
          ruler.
        </p>
      )}
    </section>
  );
};
