// Borders, from the inside outward: strips, and blocks side by side that fit what they go round.
import type { QuiltDocument } from '#craft/design';
import { spacerFor } from '#craft/setting';
import type { Top } from './top-edits.ts';
import { writtenLength } from './written-length.ts';

export type Border = NonNullable<Top['borders']>[number];
export type StripBorder = Extract<Border, { width: unknown }>;
export type PiecedBorder = Extract<Border, { pieced: unknown }>;
type Block = QuiltDocument['blocks'][number];
type Size = readonly [width: number, height: number];

export const isStrip = (border: Border | undefined): border is StripBorder => border !== undefined && 'width' in border;
export const isPieced = (border: Border | undefined): border is PiecedBorder =>
  border !== undefined && 'pieced' in border;

/** Changes places with its neighbour, one further in or out. */
export const moveBorder = (borders: Border[], of: { readonly from: number; readonly by: 1 | -1 }): void => {
  const to = of.from + of.by;
  if (to < 0 || to >= borders.length) return;
  const [border] = borders.splice(of.from, 1);
  if (border !== undefined) borders.splice(to, 0, border);
};

/** Finished lengths of what a border is pieced of fall on these, our own. */
export const fitMark = { in: 1 / 8, cm: 0.1 } as const;

export interface Fit {
  /** Finished length of a block along the border. */
  readonly along: number;
  /** So many blocks lie along the top and along a side. */
  readonly counts: readonly [across: number, down: number];
  /** Strips before it: left and right, top and bottom. */
  readonly spacer: readonly [sides: number, ends: number];
}

/** Of its own size, with the spacers that this takes. */
export const fitAsItIs = (of: { readonly sides: Size; readonly along: number; readonly seam: number }): Fit => {
  const { sides, along, seam } = of;
  const spacer = sides.map((side) => spacerFor({ side, unit: along, least: seam })) as [number, number];
  const counts = sides.map((side, i) => Math.round((side + 2 * (spacer[i] as number)) / along)) as [number, number];
  return { along, counts, spacer };
};

/** Lengths on the ruler's marks that divide both sides, at most twice and at least half as long; the nearest first. */
export const fitsNear = (of: {
  readonly sides: Size;
  readonly near: number;
  /** The finest that a finished size is given in. */
  readonly mark: number;
}): readonly Fit[] => {
  const { sides, near, mark } = of;
  const [across, down] = sides;
  const most = Math.floor((2 * across) / near);
  const fits: Fit[] = [];
  for (let count = Math.max(1, Math.ceil(across / (2 * near))); count <= most; count++) {
    const along = across / count;
    const other = down / along;
    if (isWhole(along / mark) && isWhole(other))
      fits.push({ along, counts: [count, Math.round(other)], spacer: [0, 0] });
  }
  const far = ({ along }: Fit): number => Math.abs(Math.log(along / near));
  return fits.toSorted((a, b) => far(a) - far(b));
};

const isWhole = (value: number): boolean => value > 0.5 && Math.abs(value - Math.round(value)) < 1e-6;

/** Widths of the strip border inside it at which blocks of this length fit by themselves: the nearest to its own. */
export const stripBefore = (of: {
  /** What the strip border goes round. */
  readonly sides: Size;
  readonly width: number;
  readonly along: number;
  readonly mark: number;
}): number | null => {
  const { sides, width, along, mark } = of;
  const [across, down] = sides;
  const near = Math.round((across + 2 * width) / along);
  for (const count of [near, near + 1, near - 1, near + 2]) {
    const found = (count * along - across) / 2;
    if (found > mark && isWhole(found / mark) && isWhole((down + 2 * found) / along)) return found;
  }
  return null;
};

/** The block of a pieced border gets another length, its height with it; where it lies elsewhere too, the border gets its own. */
export const fitBlock = (
  draft: QuiltDocument,
  of: { readonly index: number; readonly along: number; readonly size: Size },
): void => {
  const border = draft.top.borders?.[of.index];
  if (!isPieced(border)) return;
  const id = border.pieced.block;
  const block = draft.blocks.find((one) => one.id === id);
  if (block?.size === undefined) return;
  const height = (of.size[1] * of.along) / of.size[0];
  const [wide, high] = [writtenLength(of.along), writtenLength(height)];
  const size = wide === high ? wide : ([wide, high] as [string, string]);
  if (isElsewhere(draft, { id, index: of.index })) {
    const own = freeId(`${id}-border`, draft.blocks);
    draft.blocks.push({
      ...structuredClone(plainCopy(block)),
      id: own,
      title: `${block.title ?? id}, in the border`,
      size,
    });
    border.pieced.block = own;
  } else block.size = size;
};

/** Of a draft that is being changed. */
const plainCopy = (block: Block): Block => JSON.parse(JSON.stringify(block)) as Block;

/** A cell, a section, a log cabin's centre and another border name a block under "block". */
const isElsewhere = (draft: QuiltDocument, of: { readonly id: string; readonly index: number }): boolean => {
  const { top, blocks, sizes } = draft;
  const others = { ...top, borders: top.borders?.filter((_, i) => i !== of.index) };
  return JSON.stringify([others, blocks, sizes]).includes(`"block":${JSON.stringify(of.id)}`);
};

const freeId = (wanted: string, taken: readonly { readonly id: string }[]): string => {
  let id = wanted;
  for (let n = 2; taken.some((one) => one.id === id); n++) id = `${wanted}-${n}`;
  return id;
};

/** What a border has long been pieced of, as units of their own. */
export const borderUnits = ['squares', 'sawtooth', 'geese', 'keys'] as const;
export type BorderUnit = (typeof borderUnits)[number];

interface UnitForm {
  readonly title: string;
  /** So many times as long along the border as it is high. */
  readonly long: number;
  /** So many pieces share its length. */
  readonly parts: number;
  readonly grid: readonly [number, number];
  readonly units: readonly NonNullable<Extract<Block['recipe'], { kind: 'units' }>>['units'][number][];
}

const forms: Readonly<Record<BorderUnit, UnitForm>> = {
  squares: {
    title: 'Border of squares',
    long: 2,
    parts: 2,
    grid: [2, 1],
    units: [
      { at: [0, 0], unit: 'square', tones: ['dark'] },
      { at: [1, 0], unit: 'square', tones: ['light'] },
    ],
  },
  sawtooth: {
    title: 'Sawtooth border',
    long: 1,
    parts: 1,
    grid: [1, 1],
    units: [{ at: [0, 0], unit: 'half-square', tones: ['light', 'dark'] }],
  },
  geese: {
    title: 'Border of flying geese',
    long: 2,
    parts: 2,
    grid: [2, 1],
    units: [{ at: [0, 0], span: [2, 1], unit: 'flying-geese', tones: ['dark', 'light'] }],
  },
  keys: {
    title: 'Border of piano keys',
    long: 1,
    parts: 2,
    grid: [1, 1],
    units: [{ at: [0, 0], unit: 'rails', turn: 90, tones: ['dark', 'light'] }],
  },
};

export const unitTitle = (unit: BorderUnit): string => forms[unit].title;

/** Usual heights of a pieced border, our own. */
const usualHigh = { in: 3, cm: 8 } as const;

/** Outside all others, of a length that fits where one near the usual does; spacers take up what is missing. */
export const addPieced = (
  draft: QuiltDocument,
  of: {
    readonly unit: BorderUnit;
    /** What it goes round; null where that is not known. */
    readonly sides: Size | null;
    readonly mark: number;
    readonly cloths: { readonly light: string; readonly dark: string };
  },
): void => {
  const { unit, sides, mark, cloths } = of;
  const { title, long, parts, grid, units } = forms[unit];
  const near = usualHigh[draft.unit] * long;
  const along = (sides === null ? undefined : fitsNear({ sides, near, mark: mark * parts })[0]?.along) ?? near;
  const [wide, high] = [writtenLength(along), writtenLength(along / long)];
  const id = freeId(`border-${unit}`, draft.blocks);
  draft.blocks.push({
    id,
    title,
    size: wide === high ? wide : [wide, high],
    recipe: { kind: 'units', grid: [...grid], units: units.map((one) => structuredClone(one)) },
    colourings: { default: { light: cloths.light, dark: cloths.dark } },
  });
  draft.top.borders ??= [];
  draft.top.borders.push({ pieced: { block: id, spacer: cloths.light } });
};
