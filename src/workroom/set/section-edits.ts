// A top in sections, edited part by part: a part beside another on any side, moved in its run, taken out, filled up.
import { clothOf, isRun, partsOf, type Section, sectionAt } from './place-edits.ts';
import type { Top } from './top-edits.ts';

export type Side = 'left' | 'right' | 'above' | 'below';
type Way = 'across' | 'down';

const wayOf: Readonly<Record<Side, Way>> = { left: 'across', right: 'across', above: 'down', below: 'down' };
const isBefore = (side: Side): boolean => side === 'left' || side === 'above';

export const rootPath = '/top/sections';

/** The run that a part lies in, and its number there; null for the root. */
const parentOf = (path: string): { readonly path: string; readonly way: Way; readonly at: number } | null => {
  const found = /^(.*)\/(across|down)\/(\d+)$/.exec(path);
  return found === null ? null : { path: found[1] as string, way: found[2] as Way, at: Number(found[3]) };
};

const run = (way: Way, parts: Section[]): Section => (way === 'across' ? { across: parts } : { down: parts });

const putAt = (top: Top, path: string, section: Section): void => {
  const parent = parentOf(path);
  const around = parent === null ? undefined : sectionAt(top, parent.path);
  if (parent === null) top.sections = section;
  else if (around !== undefined) partsOf(around).splice(parent.at, 1, section);
};

/**
 * Lays a part on one side of another: in its run where that goes the same way, else in a run of the two.
 *
 * @returns where the new part is; null where the pointer is to none
 */
export const putBeside = (
  top: Top,
  of: { readonly path: string; readonly side: Side; readonly part: Section },
): string | null => {
  const { path, side, part } = of;
  const here = sectionAt(top, path);
  if (here === undefined) return null;
  const way = wayOf[side];
  if (way in here) {
    const parts = partsOf(here);
    const at = isBefore(side) ? 0 : parts.length;
    parts.splice(at, 0, part);
    return `${path}/${way}/${at}`;
  }
  const parent = parentOf(path);
  const around = parent === null ? undefined : sectionAt(top, parent.path);
  if (parent !== null && around !== undefined && parent.way === way) {
    const at = isBefore(side) ? parent.at : parent.at + 1;
    partsOf(around).splice(at, 0, part);
    return `${parent.path}/${way}/${at}`;
  }
  const own = copyOf(here);
  putAt(top, path, run(way, isBefore(side) ? [part, own] : [own, part]));
  return `${path}/${way}/${isBefore(side) ? 0 : 1}`;
};

/** Of a draft that is being changed: what is moved into something new must be its own. */
const copyOf = (section: Section): Section => JSON.parse(JSON.stringify(section)) as Section;

/** One place earlier or later in its run. @returns where it is then */
export const movePart = (top: Top, of: { readonly path: string; readonly by: 1 | -1 }): string => {
  const parent = parentOf(of.path);
  const around = parent === null ? undefined : sectionAt(top, parent.path);
  if (parent === null || around === undefined) return of.path;
  const parts = partsOf(around);
  const to = parent.at + of.by;
  if (to < 0 || to >= parts.length) return of.path;
  const [part] = parts.splice(parent.at, 1);
  if (part !== undefined) parts.splice(to, 0, part);
  return `${parent.path}/${parent.way}/${to}`;
};

/** A run that is left with nothing goes too; the last part of all stays. @returns what is chosen then */
export const takePartOut = (top: Top, path: string): string => {
  const parent = parentOf(path);
  const around = parent === null ? undefined : sectionAt(top, parent.path);
  if (parent === null || around === undefined) return path;
  const parts = partsOf(around);
  if (parts.length === 1) return parent.path === rootPath ? path : takePartOut(top, parent.path);
  parts.splice(parent.at, 1);
  return `${parent.path}/${parent.way}/${Math.min(parent.at, parts.length - 1)}`;
};

/** A strip's width lies along its run; a fill has none. */
export const widen = (top: Top, of: { readonly path: string; readonly width: string }): void => {
  const part = sectionAt(top, of.path);
  if (part !== undefined && 'strip' in part) part.width = of.width;
};

/** A plain part as a strip of one width, or as a fill that takes what is left. */
export const becomePlain = (
  top: Top,
  of: { readonly path: string; readonly kind: 'strip' | 'fill'; readonly width: string },
): void => {
  const part = sectionAt(top, of.path);
  const cloth = part === undefined || isRun(part) ? null : clothOf(part);
  if (cloth === null) return;
  putAt(top, of.path, of.kind === 'fill' ? { fill: cloth } : { strip: cloth, width: of.width });
};

/** What a part lacks beside its neighbours a fill takes: square to its run, at its end, or on both sides of it. */
export const fillUp = (
  top: Top,
  of: { readonly path: string; readonly cloth: string; readonly where: 'end' | 'both' },
): void => {
  const parent = parentOf(of.path);
  const here = sectionAt(top, of.path);
  if (parent === null || here === undefined) return;
  const way: Way = parent.way === 'across' ? 'down' : 'across';
  const fill = (): Section => ({ fill: of.cloth });
  const own = way in here ? partsOf(copyOf(here)) : [copyOf(here)];
  putAt(top, of.path, run(way, of.where === 'both' ? [fill(), ...own, fill()] : [...own, fill()]));
};

/** Whether there is anything beside it in its run. */
export const neighboursOf = (top: Top, path: string): { readonly before: number; readonly after: number } => {
  const parent = parentOf(path);
  const around = parent === null ? undefined : sectionAt(top, parent.path);
  if (parent === null || around === undefined) return { before: 0, after: 0 };
  return { before: parent.at, after: partsOf(around).length - 1 - parent.at };
};

/** Which way the run of a part goes; null for the root. */
export const wayAround = (path: string): Way | null => parentOf(path)?.way ?? null;
