// What is chosen in the quilt: the one that the keys stand at, and the places that the next change is for. Known by where the
// document has them, so that it stays chosen while other places change.
import { useCallback, useMemo, useState } from 'react';
import type { Scene, SeveralOf, Thing } from '#workroom/drawing';

/** The things of one pointer are told apart by their order: sashes, the strips of a border. */
interface Mark {
  readonly path: string;
  readonly nth: number;
}

export interface Choice {
  /** Where the document has what is chosen, a run of a section too. */
  readonly path: string | null;
  readonly thing: Thing | null;
  /** The places that a change is for: one, several, or none where a strip is chosen. */
  readonly places: readonly string[];
  /** Whether more than the one at the keys was asked for. */
  readonly isSeveral: boolean;
  readonly taps: SeveralOf['taps'];
  readonly choosePath: (path: string) => void;
  readonly chooseKey: (key: string | null) => void;
  readonly choosePlaces: (paths: readonly string[]) => void;
  readonly tapTo: (taps: SeveralOf['taps']) => void;
  readonly several: SeveralOf;
}

/** @param all every place of the top */
export const useChoice = (scene: Scene | null, all: readonly string[]): Choice => {
  const [mark, setMark] = useState<Mark | null>(null);
  const [more, setMore] = useState<readonly string[]>([]);
  const [taps, tapTo] = useState<SeveralOf['taps']>('choose');
  const known = useMemo(() => new Set(all), [all]);
  const byPath = useMemo(() => thingsByPath(scene), [scene]);
  const thing = mark === null ? null : (byPath.get(mark.path)?.[mark.nth] ?? null);
  const stillThere = useMemo(() => more.filter((path) => known.has(path)), [more, known]);
  const places = useMemo(() => {
    if (stillThere.length > 0) return stillThere;
    return mark !== null && known.has(mark.path) ? [mark.path] : [];
  }, [stillThere, mark, known]);

  const markOf = useCallback(
    (key: string | null): Mark | null => {
      const found = scene?.things.find((one) => one.key === key);
      if (found?.path === undefined) return null;
      const { path } = found;
      return { path, nth: byPath.get(path)?.indexOf(found) ?? 0 };
    },
    [scene, byPath],
  );
  const chooseKey = useCallback(
    (key: string | null) => {
      // where taps add, the keys walk without letting go; nothing chosen lets go of all
      if (taps === 'choose' || key === null) setMore([]);
      setMark(markOf(key));
    },
    [markOf, taps],
  );
  const choosePath = useCallback((path: string) => {
    setMore([]);
    setMark({ path, nth: 0 });
  }, []);
  const choosePlaces = useCallback((paths: readonly string[]) => {
    setMore(paths);
    setMark((was) => (was !== null && paths.includes(was.path) ? was : { path: paths[0] ?? '', nth: 0 }));
  }, []);
  const toggle = useCallback(
    (key: string) => {
      const next = markOf(key);
      if (next === null) return;
      setMark(next);
      if (!known.has(next.path)) return;
      setMore(places.includes(next.path) && more.length > 0 ? without(places, next.path) : [...places, next.path]);
    },
    [markOf, known, places, more],
  );
  const extend = useCallback(
    (key: string) => {
      const next = markOf(key);
      if (next === null) return;
      setMark(next);
      if (known.has(next.path)) setMore([...without(places, next.path), next.path]);
    },
    [markOf, known, places],
  );
  const several = useMemo(
    (): SeveralOf => ({
      keys: new Set(
        (stillThere.length > 0 ? stillThere : within(mark, all)).flatMap(
          (path) => byPath.get(path)?.map(({ key }) => key) ?? [],
        ),
      ),
      taps,
      onToggle: toggle,
      onExtend: extend,
    }),
    [stillThere, mark, all, byPath, taps, toggle, extend],
  );
  return {
    path: mark?.path ?? null,
    thing,
    places,
    isSeveral: stillThere.length > 1,
    taps,
    choosePath,
    chooseKey,
    choosePlaces,
    tapTo,
    several,
  };
};

/** Every place of a run. */
const within = (mark: Mark | null, all: readonly string[]): readonly string[] =>
  mark === null ? [] : all.filter((path) => path.startsWith(`${mark.path}/`));

const without = (paths: readonly string[], path: string): readonly string[] => paths.filter((one) => one !== path);

const thingsByPath = (scene: Scene | null): ReadonlyMap<string, readonly Thing[]> => {
  const found = new Map<string, Thing[]>();
  for (const thing of scene?.things ?? []) {
    if (thing.path === undefined) continue;
    const same = found.get(thing.path);
    if (same === undefined) found.set(thing.path, [thing]);
    else same.push(thing);
  }
  return found;
};
