// A block as a recipe of units on a grid: each unit inside the grid, with the tones that its name asks for.
// Whether the units cover the grid once is drafting's question.
import { add, compare, mul, one, type Rational, toNumber, two } from '#ground/exact';
import type { WrittenBlock, WrittenUnits } from './document.ts';
import type { QuarterTurn, UnitDesign, UnitName, UnitsDesign } from './quilt.ts';
import { isOnGrid, readCounts, readPlace, readSize } from './read-grid.ts';
import type { Reading, Spot } from './reading.ts';

/** @param at.path of the block */
export const readUnits = (
  block: WrittenBlock & { readonly recipe: WrittenUnits },
  { path, reading }: Spot,
): UnitsDesign | null => {
  const { recipe } = block;
  const size = readSize(block.size, { path: `${path}/size`, reading });
  const grid = readCounts(recipe.grid, { path: `${path}/recipe/grid`, reading });
  const units = recipe.units.map((unit, i) =>
    readUnit(unit, { grid, block: block.id, path: `${path}/recipe/units/${i}`, reading }),
  );
  if (size === null || grid === null || units.some((unit) => unit === null)) return null;
  return { kind: 'units', size, grid, units: units.flatMap((unit) => unit ?? []) };
};

interface UnitSpot extends Spot {
  readonly grid: UnitsDesign['grid'] | null;
  readonly block: string;
}

type WrittenUnit = WrittenUnits['units'][number];

const readUnit = (written: WrittenUnit, spot: UnitSpot): UnitDesign | null => {
  const { path, reading, grid, block } = spot;
  const { unit, turn = 0, tones } = written;
  const at = readPlace(written.at, { path: `${path}/at`, reading });
  const span = written.span ? readCounts(written.span, { path: `${path}/span`, reading }) : usualSpan(unit, turn);
  const sound = [
    ...tones.map((tone, i) => reading.name(tone, `${path}/tones/${i}`)),
    hasItsTones({ unit, tones, path, reading }),
    span !== null && isInProportion({ unit, turn, span, path, reading }),
  ];
  if (at === null || span === null || grid === null) return null;
  const far = [add(at[0], span[0]), add(at[1], span[1])] as const;
  const inside = [at, far].map((place) => isOnGrid({ place, grid, block, path, reading }));
  return sound.every(Boolean) && inside.every(Boolean) ? { unit, at, span, turn, tones } : null;
};

const isUpright = (turn: QuarterTurn): boolean => turn === 0 || turn === 180;

/** One square of the grid; flying geese take two, side by side as the point stands up. */
const usualSpan = (unit: UnitName, turn: QuarterTurn): UnitDesign['span'] => {
  if (unit !== 'flying-geese') return [one, one];
  return isUpright(turn) ? [two, one] : [one, two];
};

const tonesFor: Readonly<Record<Exclude<UnitName, 'rails'>, number>> = {
  square: 1,
  'half-square': 2,
  'quarter-square': 4,
  'flying-geese': 2,
  'square-in-square': 2,
  'four-patch': 2,
};

const fewestRails = 2;

const hasItsTones = (of: {
  readonly unit: UnitName;
  readonly tones: readonly string[];
  readonly path: string;
  readonly reading: Reading;
}): boolean => {
  const { unit, tones, path, reading } = of;
  const found = tones.length;
  const expected = unit === 'rails' ? fewestRails : tonesFor[unit];
  if (unit === 'rails' ? found >= expected : found === expected) return true;
  reading.report({ code: 'design/unit-tones', path: `${path}/tones`, unit, found, expected });
  return false;
};

const isInProportion = (of: {
  readonly unit: UnitName;
  readonly turn: QuarterTurn;
  readonly span: readonly [Rational, Rational];
  readonly path: string;
  readonly reading: Reading;
}): boolean => {
  const { unit, turn, span, path, reading } = of;
  if (unit !== 'flying-geese') return true;
  const [long, short] = isUpright(turn) ? span : [span[1], span[0]];
  if (compare(long, mul(two, short)) === 0) return true;
  reading.report({
    code: 'design/unit-span',
    path: `${path}/span`,
    found: [toNumber(span[0]), toNumber(span[1])],
    turn,
  });
  return false;
};
