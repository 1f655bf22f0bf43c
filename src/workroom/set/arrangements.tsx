// Arrangements of one's own block, as small live pictures: the rule that turns each block does the rest.
import { useEffect, useMemo, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { type Scene, SmallPicture, sceneOfQuilt } from '#workroom/drawing';
import type { JsonObject } from '#workroom/editing';
import { quiltAddress, useQuilt, useRoom } from '#workroom/room';
import { type ArrangementKind, arrange, isBlock, rowsOf, type Top } from './top-edits.ts';
import { useBlockName } from './use-block-name.ts';

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

export const Arrangements = () => {
  const { id, document, answer, edit } = useQuilt();
  const nameOf = useBlockName();
  const { top } = document;
  const [wanted, setWanted] = useState<string | null>(null);
  const isThere = document.blocks.some((own) => own.id === wanted);
  const block = isThere ? wanted : blockToArrange(document.top, document.blocks);
  const scenes = useArrangementScenes(block);
  const rows = rowsOf(top, answer?.picture ?? null);
  const [down, across] = [rows?.length ?? 0, rows?.[0]?.length ?? 0];
  const size = useMemo(
    () => (down > 1 && across > 1 ? { rows: down, columns: across } : { rows: begun, columns: begun }),
    [down, across],
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
                run: () => edit(`Arrange: ${named}`, (draft) => arrange(draft.top, { kind, block, ...size })),
              }),
            ),
      [block, scenes, edit, size],
    ),
  );
  if (block === null || scenes === undefined) return null;
  return (
    <section className="arrangements" aria-label="Arrangements">
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
      <ul>
        {kinds.map(([kind, words]) => {
          const scene = scenes?.get(kind);
          return scene === undefined ? null : (
            <li key={kind}>
              <button
                type="button"
                aria-pressed={top.arrangement?.kind === kind && top.arrangement.block === block}
                onClick={() => edit(`Arrange: ${words}`, (draft) => arrange(draft.top, { kind, block, ...size }))}
              >
                <SmallPicture scene={scene} sidePx={picturePx} alt="" />
                {words}
              </button>
            </li>
          );
        })}
      </ul>
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
};

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

/** Null where the block has no light and dark half, or is not square; undefined until that is known. */
const useArrangementScenes = (block: string | null): ReadonlyMap<ArrangementKind, Scene> | null | undefined => {
  const { document, words } = useQuilt();
  const { planner } = useRoom();
  const [scenes, setScenes] = useState<ReadonlyMap<ArrangementKind, Scene> | null>();
  // all that the small pictures depend on, and nothing else
  const asked = useMemo(
    () => (block === null ? '' : JSON.stringify([block, document.blocks, document.fabrics, document.unit])),
    [block, document.blocks, document.fabrics, document.unit],
  );
  useEffect(() => {
    if (asked === '') return;
    const [own, blocks, fabrics, unit] = JSON.parse(asked) as [string, JsonObject[], JsonObject[], string];
    let isLeft = false;
    const draw = async () => {
      const found = new Map<ArrangementKind, Scene>();
      for (const [kind] of kinds) {
        const top = { arrangement: { kind, block: own, rows: shown, columns: shown } };
        const reply = await planner.picture({ format: 'seamstead-quilt', version: 1, unit, fabrics, blocks, top });
        if (isLeft) return;
        if (reply.ok) found.set(kind, sceneOfQuilt(reply.value.picture, words.size));
        else break;
      }
      setScenes(found.size > 0 ? found : null);
    };
    draw().catch(() => undefined); // a block that cannot be arranged has no pictures
    return () => {
      isLeft = true;
    };
  }, [asked, planner, words]);
  return scenes;
};
