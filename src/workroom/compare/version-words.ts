// What a version is called, where it is chosen and where it stands.
import type { QuiltDocument } from '#craft/design';
import type { Editing, JsonObject } from '#workroom/editing';
import type { PointLine, QuiltLine } from '#workroom/store';
import { type Version, versionText } from './versions.ts';

export interface VersionsAround {
  readonly editing: Editing<JsonObject>;
  readonly sizes: QuiltDocument['sizes'];
  readonly points: readonly PointLine[];
  /** Those of this browser but the one that is open. */
  readonly quilts: readonly QuiltLine[];
}

export interface VersionGroup {
  readonly name: string;
  readonly versions: readonly { readonly version: Version; readonly words: string }[];
}

/** So many steps are offered one by one. */
const mostSteps = 20;

export const versionGroups = (around: VersionsAround): readonly VersionGroup[] => {
  const { editing, sizes = [], points, quilts } = around;
  const worded = (version: Version) => ({ version, words: versionWords(version, around) });
  const { done } = editing;
  const back = Array.from({ length: Math.min(done, mostSteps) }, (_, i) => done - 1 - i);
  const steps = [...back, ...(done > mostSteps ? [0] : [])];
  const ahead = Array.from({ length: Math.min(editing.steps.length - done, mostSteps) }, (_, i) => done + 1 + i);
  const groups: readonly VersionGroup[] = [
    { name: 'This quilt', versions: [worded({ kind: 'now' })] },
    { name: 'Restore points', versions: points.map(({ id }) => worded({ kind: 'point', id })) },
    { name: 'Steps back', versions: steps.map((step) => worded({ kind: 'step', done: step })) },
    { name: 'Steps that are undone', versions: ahead.map((step) => worded({ kind: 'step', done: step })) },
    { name: 'Its other sizes', versions: sizes.map(({ id }) => worded({ kind: 'size', id })) },
    { name: 'Other quilts', versions: quilts.map(({ id }) => worded({ kind: 'quilt', id })) },
  ];
  return groups.filter(({ versions }) => versions.length > 0);
};

export const versionWords = (version: Version, around: VersionsAround): string => {
  const { editing, sizes, points, quilts } = around;
  switch (version.kind) {
    case 'now':
      return 'Now';
    case 'step': {
      const { steps, done } = editing;
      const [last, next] = [steps[version.done - 1], steps[version.done]];
      if (version.done === 0) return 'As it began';
      if (last === undefined) return 'A step that is gone';
      return version.done < done && next !== undefined ? `Before “${next.what}”` : `After “${last.what}”`;
    }
    case 'point':
      return points.find(({ id }) => id === version.id)?.name ?? 'A restore point that is gone';
    case 'size':
      return sizes?.find(({ id }) => id === version.id)?.title || version.id;
    case 'quilt': {
      const line = quilts.find(({ id }) => id === version.id);
      return line === undefined ? 'A quilt that is gone' : line.title || 'The quilt without a name';
    }
  }
};

/** Where an address names none: the last restore point, else as it began, against how it stands now. */
export const usualVersions = ({
  editing,
  points,
}: Pick<VersionsAround, 'editing' | 'points'>): readonly [Version, Version] => {
  const [last] = points;
  const now: Version = { kind: 'now' };
  if (last !== undefined) return [{ kind: 'point', id: last.id }, now];
  return [editing.done > 0 ? { kind: 'step', done: 0 } : now, now];
};

export const isVersion = (one: Version, other: Version): boolean => versionText(one) === versionText(other);
