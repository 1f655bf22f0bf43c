// Large tops of log cabins with a centre and five rounds of four: 21 patches each.

import { chanceFrom } from '#ground/chance';

const blockQuarters = 48;
const rounds = 5;
const cloths = 12;

/** `columns` by `rows` blocks of 12 in; `distinct`: each has logs and colours of its own, else all are the same block. */
export const cabinTop = (of: {
  readonly columns: number;
  readonly rows: number;
  readonly blocks: 'distinct' | 'one';
}) => {
  const chance = chanceFrom(7);
  const count = of.blocks === 'distinct' ? of.columns * of.rows : 1;
  const nameOf = (cell: number): string => `cabin-${of.blocks === 'distinct' ? cell : 0}`;
  return {
    format: 'seamstead-quilt',
    version: 1,
    unit: 'in',
    fabrics: Array.from({ length: cloths }, (_, i) => ({
      id: `cloth-${i}`,
      colour: `#${(0x204060 + 0x0d0b09 * i).toString(16).padStart(6, '0')}`,
    })),
    blocks: Array.from({ length: count }, (_, i) => cabin(nameOf(i), chance)),
    top: {
      rows: Array.from({ length: of.rows }, (_, row) =>
        Array.from({ length: of.columns }, (_, column) => ({
          block: nameOf(row * of.columns + column),
          turn: 90 * ((row + column) % 4),
        })),
      ),
    },
  };
};

/** Logs of 3/4 to 1 1/4 in by chance; the centre takes what is left of the 12 in. */
const cabin = (id: string, chance: () => number) => {
  const widths = Array.from({ length: rounds }, () => Array.from({ length: 4 }, () => 3 + Math.floor(3 * chance())));
  const along = (sides: readonly number[]): number =>
    widths.reduce((all, round) => all + sides.reduce((sum, side) => sum + (round[side] as number), 0), 0);
  const tones = Array.from({ length: 1 + 4 * rounds }, (_, i) => `t${i}`);
  return {
    id,
    recipe: {
      kind: 'log-cabin',
      centre: [(blockQuarters - along([0, 2])) / 4, (blockQuarters - along([1, 3])) / 4],
      centreTone: 't0',
      order: ['left', 'top', 'right', 'bottom'],
      rounds: widths.map((round, i) => ({
        width: round.map((quarters) => quarters / 4),
        tones: round.map((_, side) => `t${1 + 4 * i + side}`),
      })),
    },
    colourings: { default: Object.fromEntries(tones.map((tone) => [tone, `cloth-${Math.floor(cloths * chance())}`])) },
  };
};
