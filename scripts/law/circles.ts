// Finds rings of files that import each other, types included: such files are one idea in several pieces.

import { posix } from 'node:path';
import type { Reading } from './reading.ts';

interface Arrow {
  readonly line: number;
  readonly to: string;
}

/**
 * @param readings  by path from the root
 * @param names     what an import by name stands for; one star stands for one folder
 * @returns for each import that closes a ring, where it stands and the whole ring
 */
export function circlesIn(
  readings: ReadonlyMap<string, Reading>,
  names: ReadonlyMap<string, string>,
): { file: string; line: number; says: string }[] {
  const arrowsFrom = (file: string): Arrow[] =>
    (readings.get(file)?.imports ?? []).flatMap(({ line, from }) => {
      const to = from === null ? null : targetOf(from, file, names);
      return to !== null && readings.has(to) ? [{ line, to }] : [];
    });

  const found: { file: string; line: number; says: string }[] = [];
  const walked = new Set<string>();
  const walk = (file: string, road: readonly string[]): void => {
    walked.add(file);
    const here = [...road, file];
    for (const { line, to } of arrowsFrom(file)) {
      const begun = here.indexOf(to);
      if (begun >= 0) found.push({ file, line, says: `closes a circle: ${[...here.slice(begun), to].join(' -> ')}` });
      else if (!walked.has(to)) walk(to, here);
    }
  };
  for (const file of readings.keys()) if (!walked.has(file)) walk(file, []);
  return found;
}

function targetOf(from: string, file: string, names: ReadonlyMap<string, string>): string | null {
  if (from.startsWith('.')) return posix.join(posix.dirname(file), from);
  for (const [name, path] of names) {
    const [before = '', after] = name.split('*');
    if (after === undefined ? from === name : from.startsWith(before) && from.endsWith(after)) {
      return posix.normalize(path.replace('*', from.slice(before.length, from.length - (after?.length ?? 0))));
    }
  }
  return null;
}
