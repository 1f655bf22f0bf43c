// Random quilt documents that are valid by construction: log cabins in any cycle, drawings from straight cuts, two colourings,
// turns and mirrors, sashing, borders, a finish; inches or centimetres. All lengths are whole quarters of the unit.

import fc from 'fast-check';

export interface RandomBlock {
  readonly id: string;
  readonly size?: readonly [number, number];
  readonly recipe?: RandomCabin;
  readonly patches?: { readonly grid: readonly [number, number]; readonly list: readonly RandomPatch[] };
  readonly colourings: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

export interface RandomCabin {
  readonly kind: 'log-cabin';
  readonly centre: readonly [number, number];
  readonly centreTone: string;
  readonly order: readonly Side[];
  readonly rounds: readonly { readonly width: number | readonly number[]; readonly tones: readonly string[] }[];
}

export interface RandomPatch {
  readonly points: readonly (readonly [number, number])[];
  readonly tone: string;
}

export type RandomCell =
  | {
      readonly block: string;
      readonly turn: 0 | 90 | 180 | 270;
      readonly mirror: boolean;
      readonly colouring: 'default' | 'other';
    }
  | { readonly plain: string };

export interface RandomQuilt {
  readonly format: 'seamstead-quilt';
  readonly version: 1;
  readonly unit: 'in' | 'cm';
  readonly seam: number;
  readonly ruler: number;
  readonly cutting: { readonly squaring: number };
  readonly fabrics: readonly { readonly id: string; readonly colour: string; readonly usableWidth: number }[];
  readonly blocks: readonly RandomBlock[];
  readonly top: {
    readonly rows: readonly (readonly RandomCell[])[];
    readonly sashing?: RandomSashing;
    readonly borders?: readonly { readonly width: number; readonly fabric: string; readonly grain: string }[];
  };
  readonly finish?: Readonly<Record<string, Readonly<Record<string, string | number>>>>;
}

export interface RandomSashing {
  readonly width: { readonly across: number; readonly down: number };
  readonly fabric: string;
  readonly cornerstones?: string;
  readonly outer: boolean;
}

type Side = 'left' | 'top' | 'right' | 'bottom';

const sides: readonly Side[] = ['left', 'top', 'right', 'bottom'];
const tones = ['t0', 't1', 't2', 't3'] as const;
const fabricIds = ['f0', 'f1', 'f2', 'f3', 'f4'] as const;
const fabric = fc.constantFrom(...fabricIds);
const tone = fc.constantFrom(...tones);
const quarters = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 4);

const cabin: fc.Arbitrary<RandomCabin> = fc
  .record({
    centre: fc.tuple(quarters(2, 12), quarters(2, 12)),
    centreTone: tone,
    order: fc.array(fc.constantFrom(...sides), { minLength: 1, maxLength: 6 }),
    rounds: fc.array(
      fc.record({
        evenly: fc.boolean(),
        widths: fc.array(quarters(2, 6), { minLength: 6, maxLength: 6 }),
        tones: fc.array(tone, { minLength: 6, maxLength: 6 }),
      }),
      { minLength: 1, maxLength: 3 },
    ),
    lastLogs: fc.integer({ min: 1, max: 6 }),
  })
  .map(({ centre, centreTone, order, rounds, lastLogs }) => ({
    kind: 'log-cabin',
    centre,
    centreTone,
    order,
    rounds: rounds.map((round, i) => {
      const logs = i + 1 < rounds.length ? order.length : Math.min(lastLogs, order.length);
      return {
        width: round.evenly ? (round.widths[0] as number) : round.widths.slice(0, logs),
        tones: round.tones.slice(0, logs),
      };
    }),
  }));

const sizeOfCabin = ({ centre, order, rounds }: RandomCabin): readonly [number, number] => {
  const size: [number, number] = [centre[0], centre[1]];
  for (const { width, tones: logs } of rounds)
    logs.forEach((_, i) => {
      const across = order[i] === 'left' || order[i] === 'right';
      size[across ? 0 : 1] += typeof width === 'number' ? width : (width[i] as number);
    });
  return size;
};

const gridLines = 8;

/** Cuts across random parts of an 8 × 8 grid; some parts halved corner to corner. */
const patchList: fc.Arbitrary<readonly RandomPatch[]> = fc
  .record({
    cuts: fc.array(fc.record({ part: fc.nat(99), at: fc.nat(99), upright: fc.boolean() }), { maxLength: 11 }),
    halved: fc.array(fc.constantFrom('no', 'no', 'rising', 'falling'), { minLength: 12, maxLength: 12 }),
    tones: fc.array(tone, { minLength: 24, maxLength: 24 }),
  })
  .map(({ cuts, halved, tones: drawn }) => {
    let parts = [{ x: 0, y: 0, w: gridLines, h: gridLines }];
    for (const cut of cuts) {
      const index = cut.part % parts.length;
      const part = parts[index] as (typeof parts)[number];
      const long = cut.upright ? part.w : part.h;
      if (long < 2) continue;
      const by = 1 + (cut.at % (long - 1));
      const two = cut.upright
        ? [
            { ...part, w: by },
            { ...part, x: part.x + by, w: part.w - by },
          ]
        : [
            { ...part, h: by },
            { ...part, y: part.y + by, h: part.h - by },
          ];
      parts = [...parts.slice(0, index), ...two, ...parts.slice(index + 1)];
    }
    const outlines = parts.flatMap(({ x, y, w, h }, i): readonly RandomPatch['points'][] => {
      const [a, b, c, d] = [
        [x, y],
        [x + w, y],
        [x + w, y + h],
        [x, y + h],
      ] as const;
      if (halved[i] === 'rising')
        return [
          [a, b, d],
          [b, c, d],
        ];
      return halved[i] === 'falling'
        ? [
            [a, b, c],
            [a, c, d],
          ]
        : [[a, b, c, d]];
    });
    return outlines.map((points, i) => ({ points, tone: drawn[i] as string }));
  });

const colouring = fc
  .tuple(fabric, fabric, fabric, fabric)
  .map((chosen) => Object.fromEntries(tones.map((name, i) => [name, chosen[i] as string])));
const colourings = fc.record({ default: colouring, other: colouring });

const wish = { freq: 1 } as const;

/** @param left leaves out what a law cannot speak of; `runThrough`: level sashes without cornerstones */
export const randomQuilt = (
  left: { readonly borders?: 'none'; readonly finish?: 'none'; readonly runThrough?: 'none' } = {},
): fc.Arbitrary<RandomQuilt> =>
  fc
    .record({
      unit: fc.constantFrom('in', 'cm'),
      cabin,
      cabinColourings: colourings,
      square: fc.boolean(),
      drawn: fc.array(fc.record({ list: patchList, colourings }), { minLength: 1, maxLength: 2 }),
      colours: fc.array(fc.integer({ min: 0, max: 0xffffff }), { minLength: 5, maxLength: 5 }),
      usableWidth: quarters(160, 176),
      rows: fc.integer({ min: 1, max: 3 }),
      columns: fc.integer({ min: 1, max: 3 }),
      cells: fc.array(
        fc.record({
          plain: fc.option(fabric, wish),
          block: fc.nat(2),
          turn: fc.constantFrom<0 | 90 | 180 | 270>(0, 90, 180, 270),
          mirror: fc.boolean(),
          colouring: fc.constantFrom<'default' | 'other'>('default', 'other'),
        }),
        { minLength: 9, maxLength: 9 },
      ),
      sashing: fc.option(
        fc.record({
          width: fc.record({ across: quarters(2, 8), down: quarters(2, 8) }),
          fabric,
          cornerstones: fc.option(fabric, wish),
          outer: fc.boolean(),
        }),
        wish,
      ),
      borders: fc.array(
        fc.record({ width: quarters(2, 16), fabric, grain: fc.constantFrom('least', 'lengthwise', 'crosswise') }),
        { maxLength: 2 },
      ),
      finish: fc.option(fc.record({ binding: fabric, backing: fabric, overage: quarters(0, 16) }), wish),
    })
    .map((of): RandomQuilt => {
      const inches = of.unit === 'in';
      // a square block can lie any way in a row; others keep to half turns
      const cabinSize = sizeOfCabin(of.cabin);
      const isSquare = cabinSize[0] === cabinSize[1] || of.square;
      const size: readonly [number, number] = of.square ? [cabinSize[0], cabinSize[0]] : cabinSize;
      const fits = cabinSize[0] === size[0] && cabinSize[1] === size[1];
      const blocks: readonly RandomBlock[] = [
        ...(fits ? [{ id: 'cabin', recipe: of.cabin, colourings: of.cabinColourings }] : []),
        ...of.drawn.map(({ list, colourings: named }, i) => ({
          id: `drawn${i}`,
          size,
          patches: { grid: [gridLines, gridLines] as const, list },
          colourings: named,
        })),
      ];
      const cellAt = (row: number, column: number): RandomCell => {
        const cell = of.cells[3 * row + column] as (typeof of.cells)[number];
        if (cell.plain !== null && row > 0 && column > 0) return { plain: cell.plain };
        const turn = isSquare ? cell.turn : cell.turn % 180 === 0 ? cell.turn : 180;
        const { mirror, colouring: named } = cell;
        return { block: (blocks[cell.block % blocks.length] as RandomBlock).id, turn, mirror, colouring: named };
      };
      return {
        format: 'seamstead-quilt',
        version: 1,
        unit: of.unit,
        seam: inches ? 0.25 : 0.75,
        ruler: inches ? 0.125 : 0.1,
        cutting: { squaring: inches ? 1 : 2.5 },
        fabrics: fabricIds.map((id, i) => ({
          id,
          colour: `#${(of.colours[i] as number).toString(16).padStart(6, '0')}`,
          usableWidth: inches ? of.usableWidth : 2.5 * of.usableWidth,
        })),
        blocks,
        top: {
          rows: Array.from({ length: of.rows }, (_, row) =>
            Array.from({ length: of.columns }, (_, column) => cellAt(row, column)),
          ),
          ...(of.sashing ? { sashing: sashingOf(of.sashing, left.runThrough) } : {}),
          ...(left.borders === 'none' ? {} : { borders: of.borders }),
        },
        ...(of.finish && left.finish !== 'none'
          ? {
              finish: {
                binding: { fabric: of.finish.binding, cut: inches ? 2.5 : 6.5 },
                backing: { fabric: of.finish.backing, overage: of.finish.overage },
                batting: { overage: of.finish.overage },
              },
            }
          : {}),
      };
    });

const sashingOf = (
  sashing: Omit<RandomSashing, 'cornerstones'> & { readonly cornerstones: string | null },
  runThrough: 'none' | undefined,
): RandomSashing => {
  const { cornerstones, ...rest } = sashing;
  const stones = cornerstones ?? (runThrough === 'none' ? 'f0' : null);
  return stones === null ? rest : { ...rest, cornerstones: stones };
};
