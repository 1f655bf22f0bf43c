// Arrangements of one's own block, as small live pictures: the rule that turns each block does the rest.
import { memo, useCallback, useEffect, useMemo, useState } from 'react';
import { type Quarters, quartersFor } from '#craft/setting';
import { type Command, useCommands } from '#workroom/commands';
import { type Scene, SmallPicture, sceneOfQuilt } from '#workroom/drawing';
import type { JsonObject } from '#workroom/editing';
import { quiltAddress, useBlockName, useQuilt, useRoom } from '#workroom/room';
import { arrangePlaces, isWrittenOut, ownQuarters, placesToArrange } from './arranged-edits.ts';
import { usualPlain } from './cloths.ts';
import {
  type ArrangementKind,
  arrange,
  betweenSize,
  countsOf,
  filledWith,
  isBlock,
  setOf,
  type Top,
} from './top-edits.ts';

const kinds: readonly (readonly [ArrangementKind, string])[] = [
  ['barn-raising', 'Barn raising'],
  ['straight-furrow', 'Straight furrow'],
  ['sunshine-and-shadow', 'Sunshine and shadow'],
  ['streak-of-lightning', 'Streak of lightning'],
  ['fields-and-furrows', 'Fields and furrows'],
  ['pinwheel', 'Pinwheel'],
];
const picturePx = 64;
/** Blocks a side in a small picture. */
const shown = 4;
/** Blocks a side where the top has fewer than two. */
const begun = 6;

export const Arrangements = memo(({ chosen }: { readonly chosen: readonly string[] }) => {
  const { id, document, answer, edit } = useQuilt();
  const { say } = useRoom();
  const nameOf = useBlockName();
  const { top } = document;
  const [wanted, setWanted] = useState<string | null>(null);
  const isThere = document.blocks.some((own) => own.id === wanted);
  const block = isThere ? wanted : blockToArrange(document.top, document.blocks);
  const arranged = useArrangementScenes(block, setOf(top) === 'on-point' ? 'on-point' : 'straight');
  const scenes = arranged === null ? null : arranged?.scenes;
  const picture = answer?.picture ?? null;
  const { rows, columns } = countsOf(top, picture) ?? { rows: 0, columns: 0 };
  const size = useMemo(
    () => (rows > 1 && columns > 1 ? { rows, columns } : { rows: begun, columns: begun }),
    [rows, columns],
  );
  const own = arranged?.own ?? 0;
  const isForChosen = chosen.length > 1 && isWrittenOut(top, chosen);
  const take = useCallback(
    (kind: ArrangementKind, named: string) => {
      if (block === null) return;
      const paths = isForChosen ? chosen : placesToArrange(top, picture);
      edit(`Arrange: ${named}`, (draft) => {
        if (isWrittenOut(top, chosen)) arrangePlaces(draft.top, { paths, kind, block, own, picture });
        else arrange(draft.top, { kind, block, ...size });
      });
      say(isForChosen ? `${named}, in ${paths.length} places` : named);
    },
    [block, isForChosen, chosen, top, picture, edit, own, size, say],
  );
  useCommands(
    useMemo(
      () =>
        block === null
          ? []
          : kinds.map(
              ([kind, named]): Command => ({
                id: `arrange ${kind}`,
                part: 'Set',
                words: `Arrange: ${named}`,
                isOff: !scenes?.has(kind),
                run: () => take(kind, named),
              }),
            ),
      [block, scenes, take],
    ),
  );
  if (block === null) return null;
  // until they are known their room is kept, or the drawing would move under the hand
  const isAwaited = scenes === undefined;
  return (
    <section className="arrangements" aria-label="Arrangements" aria-busy={isAwaited}>
      {document.blocks.length > 1 && (
        <label className="field arranged">
          <span>Arrange the block</span>
          <select value={block} onChange={(event) => setWanted(event.target.value)}>
            {document.blocks.map((own) => (
              <option key={own.id} value={own.id}>
                {nameOf(own.id)}
              </option>
            ))}
          </select>
        </label>
      )}
      {scenes === null && (
        <p className="quiet">
          Arrangements such as the barn raising turn a square block that is half light, half dark.{' '}
          <a href={quiltAddress(id, 'draft')}>Add a log cabin in Draft</a>
        </p>
      )}
      {isForChosen && scenes !== null && <p className="quiet">In the {chosen.length} chosen places:</p>}
      {scenes !== null && (
        <ul>
          {kinds.map(([kind, words]) => {
            const scene = scenes?.get(kind);
            return scene === undefined && !isAwaited ? null : (
              <li key={kind}>
                <button
                  type="button"
                  aria-disabled={isAwaited}
                  aria-pressed={top.arrangement?.kind === kind && top.arrangement.block === block}
                  onClick={isAwaited ? undefined : () => take(kind, words)}
                >
                  {scene === undefined ? (
                    <span style={{ width: picturePx, height: picturePx }} />
                  ) : (
                    <SmallPicture scene={scene} sidePx={picturePx} alt="" />
                  )}
                  {words}
                </button>
              </li>
            );
          })}
        </ul>
      )}
      {top.arrangement !== undefined && (
        <label className="check">
          <input
            type="checkbox"
            checked={top.arrangement.swap === true}
            onChange={(event) => {
              const { checked } = event.target;
              edit('Let light and dark change places', (draft) => {
                if (draft.top.arrangement === undefined) return;
                if (checked) draft.top.arrangement.swap = true;
                else delete draft.top.arrangement.swap;
              });
            }}
          />
          Light and dark change places
        </label>
      )}
    </section>
  );
});

/** The arrangement's own block, or the one that the top has most. */
const blockToArrange = (top: Top, blocks: readonly { readonly id: string }[]): string | null => {
  if (top.arrangement !== undefined) return top.arrangement.block;
  const counts = new Map<string, number>();
  for (const cell of [...(top.rows ?? []), ...(top.between ?? [])].flat()) {
    if (isBlock(cell)) counts.set(cell.block, (counts.get(cell.block) ?? 0) + 1);
  }
  const [most] = [...counts].toSorted(([, a], [, b]) => b - a);
  return most?.[0] ?? blocks[0]?.id ?? null;
};

interface Arranged {
  readonly scenes: ReadonlyMap<ArrangementKind, Scene>;
  readonly own: Quarters;
}

/** Null where the block has no light and dark half, or is not square; undefined until that is known. */
const useArrangementScenes = (block: string | null, set: 'straight' | 'on-point'): Arranged | null | undefined => {
  const { document, words } = useQuilt();
  const { planner } = useRoom();
  const [found, setFound] = useState<Arranged | null>();
  const cloth = usualPlain(document);
  // all that the small pictures depend on, and nothing else
  const asked = useMemo(
    () => (block === null ? '' : JSON.stringify([block, document.blocks, document.fabrics, document.unit, set, cloth])),
    [block, document.blocks, document.fabrics, document.unit, set, cloth],
  );
  useEffect(() => {
    if (asked === '') return;
    const [own, blocks, fabrics, unit, way, plain] = JSON.parse(asked) as [
      string,
      JsonObject[],
      JsonObject[],
      string,
      typeof set,
      string,
    ];
    let isLeft = false;
    const pictureOf = (top: Top) =>
      planner.picture({
        format: 'seamstead-quilt',
        version: 1,
        unit,
        fabrics,
        blocks,
        top: top as unknown as JsonObject,
      });
    const draw = async () => {
      const scenes = new Map<ArrangementKind, Scene>();
      let lies: Quarters = 0;
      for (const [kind] of kinds) {
        const ruled: Top = { arrangement: { kind, block: own, rows: shown, columns: shown } };
        const isMeasured = scenes.size > 0 && way === 'on-point';
        const reply = await pictureOf(isMeasured ? onPoint({ kind, block: own, lies, plain }) : ruled);
        if (isLeft) return;
        if (!reply.ok) break;
        const { picture } = reply.value;
        if (scenes.size === 0) {
          const [[quarters = 0] = []] = quartersFor({ kind, rows: shown, columns: shown });
          lies = ownQuarters({ turn: picture.placed[0]?.turn ?? 0, quarters });
        }
        const drawn =
          way === 'straight' || isMeasured ? reply : await pictureOf(onPoint({ kind, block: own, lies, plain }));
        if (isLeft) return;
        if (drawn.ok) scenes.set(kind, sceneOfQuilt(drawn.value.picture, words.nearSize));
      }
      setFound(scenes.size > 0 ? { scenes, own: lies } : null);
    };
    draw().catch(() => {
      // a block that cannot be arranged has no pictures
      if (!isLeft) setFound(null);
    });
    return () => {
      isLeft = true;
    };
  }, [asked, planner, words]);
  return found;
};

/** Main rows and columns of a small picture on point. */
const shownOnPoint = 3;

const onPoint = (of: {
  readonly kind: ArrangementKind;
  readonly block: string;
  readonly lies: Quarters;
  readonly plain: string;
}): Top => {
  const { kind, block, lies, plain } = of;
  const top: Top = {
    set: 'on-point',
    settingFabric: plain,
    rows: filledWith({ block }, [shownOnPoint, shownOnPoint]),
    between: filledWith({ block }, betweenSize(shownOnPoint, shownOnPoint)),
  };
  arrangePlaces(top, { paths: placesToArrange(top, null), kind, block, own: lies, picture: null });
  return top;
};
