// Compare: two versions side by side, drawn to one scale, line by line with the difference in words; and the restore points of the quilt.
import { useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import {
  goInPlace,
  lengthWordsFor,
  quiltAddress,
  usePreferences,
  useQuilt,
  useRoom,
  type Within,
} from '#workroom/room';
import type { QuiltLine } from '#workroom/store';
import { DifferenceTable } from './difference-table.tsx';
import { linesOf } from './differences.ts';
import { Pictures } from './pictures.tsx';
import { RestorePoints } from './restore-points.tsx';
import { useWeighed, type Weighed } from './use-weighed.ts';
import { VersionField } from './version-field.tsx';
import { VersionKeys } from './version-keys.tsx';
import { usualVersions, type VersionsAround, versionWords } from './version-words.ts';
import { type Version, versionIn, versionText } from './versions.ts';

export const CompareView = ({ within }: { readonly within: Within }) => {
  const { id, document, editing, points } = useQuilt();
  const { preferences } = useRoom();
  const liked = usePreferences(preferences);
  const listed = useSyncExternalStore(points.subscribe, points.state).points;
  const kept = listed ?? none;
  const quilts = useOtherQuilts(id);
  const { sizes } = document;
  const around = useMemo(
    (): VersionsAround => ({ editing, sizes, points: kept, quilts }),
    [editing, sizes, kept, quilts],
  );
  const usual = usualVersions({ editing, points: kept }).map(versionText);
  const [left, right] = [within[0] ?? usual[0] ?? 'now', within[1] ?? usual[1] ?? 'now'];
  const first = useMemo((): Version => versionIn(left) ?? now, [left]);
  const second = useMemo((): Version => versionIn(right) ?? now, [right]);
  const weigh = useCallback(
    (a: Version, b: Version) => goInPlace(quiltAddress(id, 'compare', versionText(a), versionText(b))),
    [id],
  );
  // what is weighed stays, whatever is kept or done meanwhile
  const isNamed = within.length > 0 || listed === null;
  useEffect(() => {
    if (!isNamed) weigh(first, second);
  }, [isNamed, weigh, first, second]);
  const sides = [useWeighed(first), useWeighed(second)] as const;
  const names = [versionWords(first, around), versionWords(second, around)] as const;
  useCommands(
    useMemo(
      (): readonly Command[] => [
        {
          id: 'swap versions',
          part: 'Compare',
          words: 'The two versions change places',
          keys: ['X'],
          run: () => weigh(second, first),
        },
      ],
      [weigh, first, second],
    ),
  );
  const [a, b] = [sides[0].seen, sides[1].seen];
  const lines = useMemo(() => {
    if (a === null || b === null) return null;
    return linesOf({
      first: a,
      second: b,
      words: { first: lengthWordsFor(a, liked.unit), second: lengthWordsFor(b, liked.unit) },
      are: first.kind === 'quilt' || second.kind === 'quilt' ? 'two-quilts' : 'one-quilt',
    });
  }, [a, b, liked.unit, first, second]);
  return (
    <div className="compare">
      <div className="compare-inner">
        <section className="versions" aria-label="What is compared">
          <VersionField label="First" value={first} around={around} onChange={(to) => weigh(to, second)} />
          <button type="button" className="swap-key" onClick={() => weigh(second, first)}>
            Change places
          </button>
          <VersionField label="Second" value={second} around={around} onChange={(to) => weigh(first, to)} />
        </section>
        <Pictures sides={sides} names={names} />
        <div className="version-keys">
          <VersionKeys side={sides[0]} name={names[0]} />
          <VersionKeys side={sides[1]} name={names[1]} />
        </div>
        <DifferenceTable
          lines={lines}
          names={names}
          isWithout={sides.some(isWithoutFigures)}
          isSettled={!sides.some(({ isSearching }) => isSearching)}
          isOne={versionText(first) === versionText(second)}
        />
        <RestorePoints onWeigh={(point) => weigh({ kind: 'point', id: point }, now)} />
      </div>
    </div>
  );
};

/** And none will come by waiting. */
const isWithoutFigures = ({ seen, found, problems }: Weighed): boolean =>
  seen === null && (found.state === 'gone' || problems.length > 0);

const now: Version = { kind: 'now' };
const none = [] as const;

const useOtherQuilts = (own: string): readonly QuiltLine[] => {
  const { store } = useRoom();
  const [quilts, setQuilts] = useState<readonly QuiltLine[]>(none);
  useEffect(() => {
    let isLeft = false;
    const look = () =>
      void store.list().then(
        (all) => (isLeft ? undefined : setQuilts(all.filter(({ id }) => id !== own))),
        () => undefined,
      );
    look();
    const unwatch = store.watch((changed) => {
      if (changed !== own) look();
    });
    return () => {
      isLeft = true;
      unwatch();
    };
  }, [store, own]);
  return quilts;
};
