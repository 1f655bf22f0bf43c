// What a version holds: now and as it changes, from the steps, from the store, or out of the document's other sizes.
import { useEffect, useMemo, useRef, useState, useSyncExternalStore } from 'react';
import type { QuiltDocument } from '#craft/design';
import { isSame, type JsonObject } from '#workroom/editing';
import { useQuilt, useRoom } from '#workroom/room';
import { documentAfter, documentInSize, type Version } from './versions.ts';

export interface VersionFound {
  /** Null while it comes, and where it is gone. */
  readonly document: QuiltDocument | null;
  readonly state: 'there' | 'coming' | 'gone';
}

const coming: VersionFound = { document: null, state: 'coming' };

/** @param version the same value while it is the same */
export const useVersion = (version: Version): VersionFound => {
  const { document, editing } = useQuilt();
  const kept = useKept(version);
  const now = useMemo((): VersionFound => ({ document, state: 'there' }), [document]);
  const other = useMemo((): VersionFound => {
    switch (version.kind) {
      case 'step':
        return foundOr(documentAfter(editing, version.done));
      case 'size':
        return foundOr(documentInSize(document, version.id) as JsonObject | null);
      default:
        return kept ?? coming;
    }
  }, [version, editing, document, kept]);
  const steady = useSteady(other);
  return version.kind === 'now' ? now : steady;
};

/** As it was, while its document is the same to the letter: what is done to the quilt now is no reason to plan it anew. */
const useSteady = (found: VersionFound): VersionFound => {
  const last = useRef(found);
  const [before, after] = [last.current, found].map(({ document }) => document as unknown as JsonObject | null);
  if (last.current.state !== found.state || !isSame(before ?? null, after ?? null)) last.current = found;
  return last.current;
};

const foundOr = (document: JsonObject | null): VersionFound =>
  document === null
    ? { document: null, state: 'gone' }
    : { document: document as unknown as QuiltDocument, state: 'there' };

/** Restore points and other quilts are read from the store; another tab may change them. */
const useKept = (version: Version): VersionFound | null => {
  const { points } = useQuilt();
  const { store } = useRoom();
  const [found, setFound] = useState<{ readonly of: Version; readonly found: VersionFound } | null>(null);
  const listed = useSyncExternalStore(points.subscribe, points.state).points;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a list that is another may have lost it
  useEffect(() => {
    if (version.kind !== 'point' && version.kind !== 'quilt') return;
    let isOvertaken = false;
    const read = async () => {
      const document =
        version.kind === 'point'
          ? ((await points.read(version.id))?.document ?? null)
          : ((await store.read(version.id))?.editing.document ?? null);
      if (!isOvertaken) setFound({ of: version, found: foundOr(document) });
    };
    const readAgain = () => void read().catch(() => setFound({ of: version, found: foundOr(null) }));
    readAgain();
    const unwatch = store.watch((changed) => {
      if (version.kind === 'quilt' && changed === version.id) readAgain();
    });
    return () => {
      isOvertaken = true;
      unwatch();
    };
  }, [version, points, store, listed]);
  return found !== null && found.of === version ? found.found : null;
};
