// What one does to places: cells of rows, cells between them on point, parts of sections. One place or many, by their pointers
// into the document, in one change.
import type { QuiltPicture } from '#workroom/compute';
import { type BlockCell, type Cell, cellAt, isBlock, rowsOf, type Top, type Turn, writeOut } from './top-edits.ts';

export type Section = NonNullable<Top['sections']>;
/** What one place holds: a block; a plain piece of a cell, or of a section. */
export type Held = Cell | Exclude<Section, { down: unknown } | { across: unknown }>;

export const isRun = (section: Section): section is Extract<Section, { down: unknown } | { across: unknown }> =>
  'down' in section || 'across' in section;

/** The parts of a run; none where it is no run. */
export const partsOf = (section: Section): Section[] =>
  'down' in section ? section.down : 'across' in section ? section.across : [];

/** The section that a pointer such as /top/sections/down/0/across/2 names. */
export const sectionAt = (top: Top, path: string): Section | undefined => {
  const steps = sectionSteps(path);
  let here = top.sections;
  for (const step of steps ?? []) here = here === undefined ? undefined : partsOf(here)[step];
  return steps === null ? undefined : here;
};

/** Numbers of the parts from the root on; null where the pointer is to no section. */
export const sectionSteps = (path: string): readonly number[] | null =>
  /^\/top\/sections(\/(down|across)\/\d+)*$/.test(path)
    ? [...path.matchAll(/\/(?:down|across)\/(\d+)/g)].map(([, step]) => Number(step))
    : null;

/** What lies at a place; undefined where the pointer is to none. */
export const heldAt = (top: Top, path: string, picture: QuiltPicture | null): Held | undefined =>
  heldIn(top, picture)(path);

/** The same for many places: rows that a rule makes are written out once. */
export const heldIn = (top: Top, picture: QuiltPicture | null): ((path: string) => Held | undefined) => {
  const rows = rowsOf(top, picture);
  return (path) => {
    const cell = cellAt(path);
    if (cell !== null) return (cell.part === 'rows' ? rows : top.between)?.[cell.row]?.[cell.place];
    const section = sectionAt(top, path);
    return section === undefined || isRun(section) ? undefined : section;
  };
};

/** The cloth of a plain piece; null for a block. */
export const clothOf = (held: Held): string | null => {
  if ('plain' in held) return held.plain;
  if ('strip' in held) return held.strip;
  return 'fill' in held ? held.fill : null;
};

/** Every place of a top, in the document's order. */
export const placesOf = (top: Top, picture: QuiltPicture | null): readonly string[] => [
  ...cellPaths('rows', rowsOf(top, picture) ?? []),
  ...cellPaths('between', top.between ?? []),
  ...(top.sections === undefined ? [] : leavesOf(top.sections, '/top/sections')),
];

const cellPaths = (part: string, rows: readonly (readonly unknown[])[]): readonly string[] =>
  rows.flatMap((row, i) => row.map((_, j) => `/top/${part}/${i}/${j}`));

const leavesOf = (section: Section, path: string): readonly string[] => {
  if (!isRun(section)) return [path];
  const way = 'down' in section ? 'down' : 'across';
  return partsOf(section).flatMap((part, i) => leavesOf(part, `${path}/${way}/${i}`));
};

export interface PlacesChange {
  readonly paths: readonly string[];
  readonly picture: QuiltPicture | null;
  readonly change: (held: Held, path: string) => Held;
}

/** Places that go their own way end the rule that made the rows. */
export const changePlaces = (top: Top, { paths, picture, change }: PlacesChange): void => {
  writeOut(top, picture);
  for (const path of paths) {
    const held = heldAt(top, path, picture);
    if (held !== undefined) put(top, path, change(held, path));
  }
};

const put = (top: Top, path: string, held: Held): void => {
  const cell = cellAt(path);
  if (cell !== null) {
    const rows = cell.part === 'rows' ? top.rows : top.between;
    rows?.[cell.row]?.splice(cell.place, 1, asCell(held));
    return;
  }
  const own = asSection(held);
  const steps = sectionSteps(path);
  const last = steps?.at(-1);
  const run = sectionAt(top, path.replace(/\/(down|across)\/\d+$/, ''));
  if (last === undefined) top.sections = own;
  else if (run !== undefined) partsOf(run).splice(last, 1, own);
};

const asCell = (held: Held): Cell => ('block' in held || 'plain' in held ? held : { plain: clothOf(held) ?? '' });

const asSection = (held: Held): Section => ('plain' in held ? { fill: held.plain } : held);

/** Two places give each other what they hold. */
export const swapPlaces = (
  top: Top,
  of: { readonly paths: readonly [string, string]; readonly picture: QuiltPicture | null },
): void => {
  const { paths, picture } = of;
  const [one, other] = paths.map((path) => heldAt(top, path, picture));
  if (one === undefined || other === undefined) return;
  changePlaces(top, { paths, picture, change: (_, path) => (path === paths[0] ? { ...other } : { ...one }) });
};

/** One turn for a block, none for what is plain. */
export const turned =
  (turn: Turn) =>
  (held: Held): Held =>
    isBlock(held) ? withKey(held, 'turn', turn === 0 ? undefined : turn) : held;

/** Each a quarter further, from where it lies. */
export const turnedOn = (held: Held): Held => (isBlock(held) ? turned(quarterOn(held.turn))(held) : held);

export const mirrored = (held: Held): Held =>
  isBlock(held) ? withKey(held, 'mirror', held.mirror === true ? undefined : true) : held;

/** Another block lies as the one before it did; where there was none, upright. */
export const holding =
  (block: string) =>
  (held: Held): Held => {
    if (!isBlock(held)) return { block };
    const { colouring: _, ...rest } = held;
    return held.block === block ? held : { ...rest, block };
  };

export const inColouring =
  (colouring: string) =>
  (held: Held): Held =>
    isBlock(held) ? withKey(held, 'colouring', colouring === 'default' ? undefined : colouring) : held;

/** A plain piece; a strip keeps its width. */
export const plain =
  (cloth: string) =>
  (held: Held): Held =>
    'strip' in held ? { ...held, strip: cloth } : 'fill' in held ? { fill: cloth } : { plain: cloth };

const withKey = <K extends keyof BlockCell>(cell: BlockCell, key: K, value: BlockCell[K] | undefined): BlockCell => {
  const { [key]: _, ...rest } = cell;
  return (value === undefined ? rest : { ...rest, [key]: value }) as BlockCell;
};

/** The turn after this one. */
export const quarterOn = (turn: Turn | undefined): Turn => (((turn ?? 0) + 90) % 360) as Turn;

/** The places that share a row with one: in a section the parts of its run. */
export const rowWith = (path: string, places: readonly string[]): readonly string[] => {
  const stem = path.replace(/\/\d+$/, '/');
  return places.filter((one) => one.startsWith(stem) && !one.slice(stem.length).includes('/'));
};

/** The cells that share a column with one; in a section itself alone. */
export const columnWith = (path: string, places: readonly string[]): readonly string[] => {
  const own = cellAt(path);
  if (own === null) return [path];
  return places.filter((one) => {
    const cell = cellAt(one);
    return cell?.part === own.part && cell.place === own.place;
  });
};
