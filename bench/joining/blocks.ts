// Blocks of straight seams of any number of patches, of the kinds that quilters draw.

import type { DraftedBlock } from '#craft/drafting';
import { length } from '#craft/measure';
import { chanceFrom } from '#ground/chance';
import { fromDecimal } from '#ground/exact';
import { at, type Polygon } from '#ground/plane';

export interface BenchBlock {
  readonly block: DraftedBlock;
  readonly fabrics: readonly string[];
}

interface Drawn {
  readonly outlines: readonly Polygon[];
  readonly fabrics: readonly string[];
  readonly size: readonly [number, number];
}

export type BlockShape = 'squares' | 'checks' | 'random cuts' | 'cabins in rows' | 'half-squares';

export const blockShapes: readonly BlockShape[] = [
  'squares',
  'checks',
  'random cuts',
  'cabins in rows',
  'half-squares',
];

/** A block of about so many patches; the same seed draws the same block. */
export const benchBlock = (of: {
  readonly shape: BlockShape;
  readonly patches: number;
  readonly seed: number;
}): BenchBlock => {
  const { outlines, fabrics, size } = drawings[of.shape](of.patches, chanceFrom(of.seed));
  return {
    block: {
      id: 'b',
      title: 'B',
      path: '/blocks/0',
      exactSize: [fromDecimal(size[0]), fromDecimal(size[1])],
      size: [length(size[0]), length(size[1])],
      patches: outlines.map((points) => ({ tone: 't', path: '', points })),
      added: null,
    },
    fabrics,
  };
};

const box = (x: number, y: number, w: number, h: number): Polygon => [
  at(x, y),
  at(x + w, y),
  at(x + w, y + h),
  at(x, y + h),
];

const cloth = (chance: () => number, cloths: number): string => `cloth-${Math.floor(cloths * chance())}`;

const gridOf = (patches: number): readonly [number, number] => {
  const rows = Math.max(1, Math.floor(Math.sqrt(patches)));
  return [Math.round(patches / rows), rows];
};

const cellsOf = (columns: number, rows: number): readonly (readonly [number, number])[] =>
  Array.from({ length: columns * rows }, (_, i) => [i % columns, Math.floor(i / columns)]);

const drawings: Readonly<Record<BlockShape, (patches: number, chance: () => number) => Drawn>> = {
  squares: (patches, chance) => {
    const [columns, rows] = gridOf(patches);
    const cells = cellsOf(columns, rows);
    return {
      outlines: cells.map(([x, y]) => box(x, y, 1, 1)),
      fabrics: cells.map(() => cloth(chance, 8)),
      size: [columns, rows],
    };
  },
  checks: (patches) => {
    const [columns, rows] = gridOf(patches);
    const cells = cellsOf(columns, rows);
    return {
      outlines: cells.map(([x, y]) => box(x, y, 1, 1)),
      fabrics: cells.map(([x, y]) => `cloth-${(x + y) % 2}`),
      size: [columns, rows],
    };
  },
  'random cuts': (patches, chance) => {
    const boxes = [{ x: 0, y: 0, w: 64, h: 64 }];
    while (boxes.length < patches) {
      const weights = boxes.map((b) => b.w * b.h * (0.5 + chance()));
      const i = weights.indexOf(Math.max(...weights));
      const b = boxes[i] as (typeof boxes)[number];
      const share = [0.25, 0.5, 0.75][Math.floor(3 * chance())] as number;
      const upright = b.w > b.h || (b.w === b.h && chance() < 0.5);
      boxes.splice(
        i,
        1,
        upright ? { ...b, w: b.w * share } : { ...b, h: b.h * share },
        upright
          ? { ...b, x: b.x + b.w * share, w: b.w * (1 - share) }
          : { ...b, y: b.y + b.h * share, h: b.h * (1 - share) },
      );
    }
    return {
      outlines: boxes.map((b) => box(b.x, b.y, b.w, b.h)),
      fabrics: boxes.map(() => cloth(chance, 3)),
      size: [64, 64],
    };
  },
  'cabins in rows': (patches, chance) => {
    const [columns, rows] = gridOf(patches / 13);
    const kinds = [0, 1].map(() => Array.from({ length: 13 }, () => cloth(chance, 6)));
    const cells = cellsOf(columns, rows);
    return {
      outlines: cells.flatMap(([x, y]) => cabin(7 * x, 7 * y)),
      fabrics: cells.flatMap(([x, y]) => kinds[(x + y) % 2] as readonly string[]),
      size: [7 * columns, 7 * rows],
    };
  },
  'half-squares': (patches, chance) => {
    const [columns, rows] = gridOf(patches / 2);
    const cells = cellsOf(columns, rows);
    return {
      outlines: cells.flatMap(([x, y]) => {
        const [p, q, r, s] = box(x, y, 1, 1) as unknown as readonly [Point, Point, Point, Point];
        return chance() < 0.5
          ? [
              [p, q, s],
              [q, r, s],
            ]
          : [
              [p, q, r],
              [p, r, s],
            ];
      }),
      fabrics: Array.from({ length: 2 * columns * rows }, () => cloth(chance, 4)),
      size: [columns, rows],
    };
  },
};

type Point = Polygon[number];

/** A centre of 1 and three rounds of logs of 1, seven across. */
const cabin = (x: number, y: number): readonly Polygon[] => {
  const made: Polygon[] = [box(x + 3, y + 3, 1, 1)];
  for (let round = 1; round <= 3; round++) {
    const [low, long] = [3 - round, 2 * round + 1];
    made.push(
      box(x + low, y + low + 1, 1, long - 2),
      box(x + low, y + low, long - 1, 1),
      box(x + low + long - 1, y + low, 1, long - 1),
      box(x + low, y + low + long - 1, long, 1),
    );
  }
  return made;
};
