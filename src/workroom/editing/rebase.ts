// Two makers changed one document at once: mine are carried over onto hers. Where both touched the same place there is
// no right answer to compute, and none is invented.

import { isObject, type Json } from './json.ts';
import type { Patch, Path } from './patch.ts';

/**
 * @param mine patches made on the common document, in order
 * @param over what the other made of the same document, in order
 * @returns my patches as they fit what she made; null where both changed one place
 */
export const rebased = (mine: readonly Patch[], over: readonly Patch[]): readonly Patch[] | null => {
  let hers: readonly Patch[] = over;
  const out: Patch[] = [];
  for (const patch of mine) {
    const both = pastAll(patch, hers);
    if (both === null) return null;
    out.push(both.patch);
    hers = both.hers;
  }
  return out;
};

/** The patch past all of hers, and hers past the patch: what the next of mine has to pass. */
const pastAll = (patch: Patch, hers: readonly Patch[]): { patch: Patch; hers: readonly Patch[] } | null => {
  let moved = patch;
  const others: Patch[] = [];
  for (const her of hers) {
    const next = past(moved, her);
    const other = past(her, moved);
    if (next === null || other === null) return null;
    moved = next;
    others.push(other);
  }
  return { patch: moved, hers: others };
};

/** One patch as it reads after another that was made beside it; null where they touch. */
const past = (patch: Patch, other: Patch): Patch | null => {
  if (isAt(other.path, patch.path) && isAt(patch.path, other.path)) return pastBeside(patch, other);
  if (isAt(patch.path, other.path)) return isClearBelow(other, patch) ? patch : null;
  if (!isAt(other.path, patch.path)) return patch;
  const path = pathPast(patch.path, other);
  return path === null ? null : { ...patch, path };
};

/** Whether `inner` lies at `outer` or within it. */
const isAt = (outer: Path, inner: Path): boolean =>
  outer.length <= inner.length && outer.every((step, i) => step === inner[i]);

/** Both at one object or list. */
const pastBeside = (patch: Patch, other: Patch): Patch | null => {
  if (patch.kind === 'value' || other.kind === 'value') return null;
  if (patch.kind === 'run' && other.kind === 'run') return runPast(patch, other);
  if (patch.kind === 'run' || other.kind === 'run' || patch.key === other.key) return null;
  const shift = other.at < patch.at ? (other.kind === 'key' ? 1 : -1) : 0;
  return { ...patch, at: patch.at + shift };
};

type Run = Extract<Patch, { readonly kind: 'run' }>;

const runPast = (patch: Run, other: Run): Patch | null => {
  const [end, otherEnd] = [patch.at + patch.was.length, other.at + other.was.length];
  if (otherEnd < patch.at) return { ...patch, at: patch.at + other.is.length - other.was.length };
  if (end < other.at) return patch;
  // both put named things at one place, neither took any away: hers first, then mine
  const isAdding = patch.was.length === 0 && other.was.length === 0 && patch.at === other.at;
  return isAdding && areNamedApart(patch.is, other.is) ? { ...patch, at: patch.at + other.is.length } : null;
};

const areNamedApart = (mine: readonly Json[], hers: readonly Json[]): boolean => {
  const names = [...mine, ...hers].map((one) => (isObject(one) ? one.id : null));
  return names.every((name) => typeof name === 'string') && new Set(names).size === names.length;
};

/** The outer patch leaves alone what lies at the inner one's path. */
const isClearBelow = (inner: Patch, outer: Patch): boolean => {
  const step = inner.path[outer.path.length];
  switch (outer.kind) {
    case 'value':
      return false;
    case 'key':
    case 'no-key':
      return outer.key !== step;
    case 'run':
      return typeof step === 'number' && (step < outer.at || step >= outer.at + outer.was.length);
  }
};

/** A path within what the other patch changed; null where it leads into what is no more. */
const pathPast = (path: Path, other: Patch): Path | null => {
  const depth = other.path.length;
  const step = path[depth];
  switch (other.kind) {
    case 'value':
      return null;
    case 'key':
    case 'no-key':
      return other.key === step ? null : path;
    case 'run': {
      if (typeof step !== 'number' || step < other.at) return path;
      if (step < other.at + other.was.length) return null;
      return path.with(depth, step + other.is.length - other.was.length);
    }
  }
};
