// One side of a comparison, planned beside: the quilt as it stands by the planner that all views have, another version by one of its own.
import { useEffect, useState, useSyncExternalStore } from 'react';
import type { QuiltDocument } from '#craft/design';
import {
  openPlanner,
  type Planner,
  type PlannerState,
  type QuiltAnswer,
  type VersionSeen,
  type WorkroomProblem,
} from '#workroom/compute';
import type { JsonObject } from '#workroom/editing';
import { useLookAt, useQuilt, useRoom } from '#workroom/room';
import { useVersion, type VersionFound } from './use-version.ts';
import type { Version } from './versions.ts';

export interface Weighed {
  readonly version: Version;
  readonly found: VersionFound;
  /** The last that could be planned; null before the first. */
  readonly answer: QuiltAnswer | null;
  readonly seen: VersionSeen | null;
  readonly problems: readonly WorkroomProblem[];
  /** Layouts that take less cloth may still be found. */
  readonly isSearching: boolean;
}

const all = {};
const idle: PlannerState = { reply: null, lastGood: null, working: null };
const atRest = { subscribe: () => () => undefined, state: () => idle };

/** @param version the same value while it is the same */
export const useWeighed = (version: Version): Weighed => {
  const room = useRoom();
  const quilt = useQuilt();
  const found = useVersion(version);
  const isNow = version.kind === 'now';
  const own = useOwnPlanner(isNow ? null : found.document, version);
  const planner = isNow ? room.planner : own;
  const state = useSyncExternalStore((planner ?? atRest).subscribe, (planner ?? atRest).state);
  const answer = isNow ? quilt.answer : state.lastGood;
  const seen = useLookAt({ planner, answer }, 'version', all);
  const problems = isNow ? quilt.problems : state.reply?.ok === false ? state.reply.problems : none;
  return { version, found, answer, seen, problems, isSearching: state.working !== null };
};

const none: readonly WorkroomProblem[] = [];

/** One for each version that is weighed; it is let go with it, and its search with it. Null for none. */
const useOwnPlanner = (document: QuiltDocument | null, version: Version): Planner | null => {
  const [own, setOwn] = useState<{ readonly of: Version; readonly planner: Planner } | null>(null);
  const isWanted = document !== null;
  useEffect(() => {
    if (!isWanted) return;
    const planner = openPlanner();
    setOwn({ of: version, planner });
    return () => {
      setOwn(null);
      planner.close();
    };
  }, [isWanted, version]);
  const planner = own !== null && own.of === version ? own.planner : null;
  useEffect(() => {
    if (planner !== null && document !== null) planner.ask(document as unknown as JsonObject);
  }, [planner, document]);
  return planner;
};
