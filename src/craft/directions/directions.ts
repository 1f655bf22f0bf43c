// How is a cloth cut, step by step, and what is left of it? Facts in the order of cutting, for words, pictures and the plan.
import type { Allowances, LaidOut, LaidSheets, Layout, Strip } from '#craft/cutting';
import { type Length, length, type Unit } from '#craft/measure';
import { areaLeft, type Left, namesIn, type Remnant, remnantsOf } from './remnants.ts';
import { type Offcut, type RightEnd, type StripCut, stripCutsFor } from './strip-cuts.ts';
import { type CutEffort, workOf } from './work.ts';

export interface ClothDirections {
  /** Cloth by the length is one part; of sheets those that are cut alike. */
  readonly parts: readonly CutPart[];
  readonly effort: CutEffort;
  readonly remnants: readonly Remnant[];
  /** All that is bought, in square units: `pieces`, `remnants` and `waste` add up to it. */
  readonly area: {
    readonly bought: number;
    readonly pieces: number;
    readonly remnants: number;
    readonly waste: number;
  };
}

export interface CutPart {
  /** Sheets that are cut like this; 1 for cloth by the length. */
  readonly count: number;
  /** Index of the kind of sheet; null for cloth by the length. */
  readonly sheet: number | null;
  /** Of the cloth, or of one of the sheets. */
  readonly layout: Layout;
  /** Strips of one height are cut together, in this order. */
  readonly heights: readonly HeightCut[];
  /** What is left of the length: across, along; null where nothing is. */
  readonly end: { readonly size: readonly [Length, Length]; readonly remnant: string | null } | null;
}

export interface HeightCut {
  readonly height: Length;
  /** Strips of this height in one such part. */
  readonly count: number;
  readonly patterns: readonly PatternCut[];
}

/** Strips that are filled alike. */
export interface PatternCut {
  /** From 1, in the order of cutting, over the whole cloth. */
  readonly number: number;
  readonly count: number;
  /** The first of them in its layout, for pictures. */
  readonly strip: Strip;
  readonly cuts: readonly StripCut[];
  readonly offcuts: readonly (Offcut & { readonly remnant: string | null })[];
}

export interface DirectionsTask {
  readonly laid: LaidOut | LaidSheets;
  /** Of cloth by the length: where the bought length goes. Without it nothing is left beyond the layout. */
  readonly allowances: Allowances | null;
  readonly unit: Unit;
  /** Folded selvage to selvage: the layout ends at the fold. */
  readonly end?: RightEnd;
}

/** @source docs/formulas.md#remnants */
export const directionsFor = (task: DirectionsTask): ClothDirections => {
  const bare = 'sheets' in task.laid ? sheetParts(task.laid) : clothPart(task.laid.layout, task);
  // round motifs pieces stand apart, and what falls off lies between them
  const standsApart = !('sheets' in task.laid) && task.laid.motifs !== undefined;
  const left = bare.flatMap(leftOf).filter(({ from }) => !standsApart || from === 'cloth-end');
  const remnants = remnantsOf(left, task.unit);
  const nameOf = namesIn(remnants);
  let number = 0;
  const parts = bare.map(
    ({ part, end }): CutPart => ({
      count: part.count,
      sheet: part.sheet,
      layout: part.layout,
      heights: part.heights.map((height) => ({
        ...height,
        patterns: height.patterns.map((pattern) => {
          number++;
          return {
            ...pattern,
            number,
            offcuts: pattern.offcuts.map((offcut) => ({ ...offcut, remnant: nameOf(offcut) })),
          };
        }),
      })),
      end: end && { size: end.size, remnant: nameOf(end) },
    }),
  );
  return { parts, effort: workOf(parts), remnants, area: areasOf(task, remnants) };
};

interface BarePart {
  readonly part: Omit<CutPart, 'heights' | 'end'> & { readonly heights: readonly BareHeight[] };
  readonly end: Left | null;
}

interface BareHeight extends Omit<HeightCut, 'patterns'> {
  readonly patterns: readonly BarePattern[];
}

interface BarePattern extends Omit<PatternCut, 'number' | 'offcuts'> {
  readonly offcuts: readonly Offcut[];
}

const clothPart = (
  layout: Layout,
  { allowances, end = 'edge' }: Pick<DirectionsTask, 'allowances' | 'end'>,
): readonly BarePart[] => {
  const spare = allowances?.spare ?? 0;
  if (layout.strips.length === 0) return [];
  return [
    {
      part: { count: 1, sheet: null, layout, heights: heightsOf(layout, end) },
      end: spare > 1e-9 ? { from: 'cloth-end', size: [layout.width, length(spare)], count: 1 } : null,
    },
  ];
};

const sheetParts = ({ sheets }: LaidSheets): readonly BarePart[] => {
  const alike = new Map<string, (typeof sheets)[number][]>();
  for (const sheet of sheets) {
    const key = JSON.stringify([sheet.kind, sheet.strips]);
    alike.set(key, [...(alike.get(key) ?? []), sheet]);
  }
  return [...alike.values()].map((same): BarePart => {
    const [sheet] = same as [(typeof sheets)[number]];
    const used = sheet.strips.reduce((low, { at, height }) => Math.max(low, at + height), 0);
    return {
      part: { count: same.length, sheet: sheet.kind, layout: sheet, heights: heightsOf(sheet, 'edge') },
      end:
        sheet.length - used > 1e-9
          ? { from: 'sheet-end', size: [sheet.width, length(sheet.length - used)], count: same.length }
          : null,
    };
  });
};

/** Strips of one height together, of those the ones filled alike, each in the order of its first strip. */
const heightsOf = (layout: Layout, end: RightEnd): readonly BareHeight[] => {
  const heights = new Map<Length, Map<string, { readonly strip: Strip; count: number }>>();
  for (const strip of layout.strips) {
    const patterns = heights.get(strip.height) ?? new Map<string, { readonly strip: Strip; count: number }>();
    heights.set(strip.height, patterns);
    const key = JSON.stringify(strip.parts);
    const known = patterns.get(key);
    if (known) known.count++;
    else patterns.set(key, { strip, count: 1 });
  }
  return [...heights].map(([height, patterns]) => ({
    height,
    count: [...patterns.values()].reduce((all, { count }) => all + count, 0),
    patterns: [...patterns.values()].map(({ strip, count }) => ({
      count,
      strip,
      ...stripCutsFor(strip, { width: layout.width, end }),
    })),
  }));
};

const leftOf = ({ part, end }: BarePart): readonly Left[] => [
  ...part.heights.flatMap(({ patterns }) =>
    patterns.flatMap(({ offcuts, count }) =>
      offcuts.map(({ from, size }) => ({ from, size, count: count * part.count })),
    ),
  ),
  ...(end ? [end] : []),
];

const areasOf = ({ laid, allowances }: DirectionsTask, remnants: readonly Remnant[]): ClothDirections['area'] => {
  const { layout } = laid;
  const bought =
    'sheets' in laid
      ? laid.sheets.reduce((all, { width, length: long }) => all + width * long, 0)
      : layout.width *
        (allowances
          ? allowances.cut + allowances.squaring + allowances.shrinkage + allowances.rounding
          : layout.length);
  const pieces = layout.strips.reduce(
    (all, { parts }) =>
      all + parts.reduce((n, part) => n + part.pieces.reduce((sum, { cut }) => sum + cut[0] * cut[1], 0), 0),
    0,
  );
  const left = areaLeft(remnants);
  return { bought, pieces, remnants: left, waste: Math.max(0, bought - pieces - left) };
};
