// In which ways can a unit be made? For each: from what its cloths are cut, and how many units one set of them gives. How it is
// sewn stands in stages.ts.
import { type Cut, type CutRule, cutFor, halfSquareFor, quarterSquareFor } from '#craft/cutting';
import type { WayName } from '#craft/design';
import { type Length, length, toNearestMark, upToMark } from '#craft/measure';
import { outlinesOf } from './outlines.ts';
import type { Unit } from './unit.ts';

export interface Way {
  readonly name: WayName;
  /** Cut with room, and brought to size with the ruler at the end. */
  readonly trimmed: boolean;
  /** By place of the unit; null: as the patch is cut by itself. */
  readonly cuts: readonly (Cut | null)[];
  /** By place: places of one role are cut alike and may stand for each other. */
  readonly roles: readonly number[];
  /** Units that one set of pieces gives. */
  readonly gives: number;
}

/** Why a way is not open to a unit. */
export type WayRefusal = 'mirrored' | 'unlike-skies' | 'no-triangle-cut';

/** What strip sets are cut for: so many units, from cloths that are so wide, by place. */
export interface StripRoom {
  readonly units: number;
  readonly widths: readonly Length[];
}

/**
 * One way of a unit, or why it is none.
 *
 * @param trimmed with room of half an allowance on every triangle, our own choice, taken off after sewing
 */
export const wayFor = (of: {
  readonly unit: Unit;
  readonly name: WayName;
  readonly trimmed: boolean;
  readonly rule: CutRule;
  readonly room: StripRoom;
}): Way | WayRefusal => {
  const { unit, name, trimmed } = of;
  const cutting: Cutting = { ...of, plain: outlinesOf(unit).map((outline) => cutFor(outline, of.rule)) };
  switch (name) {
    case 'singly':
      return trimmed ? singlyWithRoom(cutting) : singly(unit);
    case 'two-at-a-time':
      return { name, trimmed, ...halfSquares(cutting, 2) };
    case 'eight-at-a-time':
      return { name, trimmed, ...halfSquares(cutting, 8) };
    case 'from-half-squares':
      return fromHalfSquares(cutting);
    case 'four-at-a-time':
      return fourGeese(cutting);
    case 'sew-and-flip':
      return sewnAndFlipped(cutting);
    case 'strip-sets':
      return stripSets(cutting, of.room);
  }
};

interface Cutting {
  readonly unit: Unit;
  readonly trimmed: boolean;
  readonly rule: CutRule;
  /** By place, as each patch is cut by itself. */
  readonly plain: readonly Cut[];
}

const singly = ({ patches }: Unit): Way => ({
  name: 'singly',
  trimmed: false,
  cuts: patches.map(() => null),
  roles: patches.map((_, place) => place),
  gives: 1,
});

const singlyWithRoom = ({ unit, plain, rule }: Cutting): Way | WayRefusal => {
  if (!plain.some(({ gives }) => gives > 1)) return 'no-triangle-cut';
  const cuts = plain.map((cut): Cut | null => {
    if (cut.gives === 1) return null;
    const size = withRoom(cut.exact[0], { rule, trimmed: true });
    return { ...cut, size: [size, size] };
  });
  return { ...singly(unit), trimmed: true, cuts };
};

/** A square of a way: so many patches from each, so many of them in a set. */
const square = (of: {
  readonly cutting: Cutting;
  readonly place: number;
  readonly exact: Length;
  readonly gives: number;
  readonly perSet: number;
}): Cut => {
  const { cutting, exact, gives, perSet } = of;
  const size = withRoom(exact, cutting);
  return {
    shape: 'square',
    finished: (cutting.plain[of.place] as Cut).finished,
    exact: [exact, exact],
    size: [size, size],
    gives,
    template: null,
    perSet,
  };
};

const withRoom = (exact: Length, { rule, trimmed }: Pick<Cutting, 'rule' | 'trimmed'>): Length =>
  upToMark(length(exact + (trimmed ? rule.seam / 2 : 0)), rule.ruler).size;

/**
 * Two squares sewn on both sides of a diagonal give two; on both sides of both diagonals eight.
 *
 * @source docs/formulas.md#ways-to-make
 */
const halfSquares = (cutting: Cutting, gives: 2 | 8): Pick<Way, 'cuts' | 'roles' | 'gives'> => {
  const { unit, rule } = cutting;
  const one = halfSquareFor(unit.size[0], rule.seam);
  // eight come from a square of four: the room is wanted on each
  const room = cutting.trimmed && gives === 8 ? rule.seam / 2 : 0;
  const exact = length(gives === 2 ? one : 2 * one + room);
  return {
    cuts: [0, 1].map((place) => square({ cutting, place, exact, gives, perSet: 1 })),
    roles: [0, 1],
    gives,
  };
};

/** Half-squares two at a time, then two of them again: the second comes out mirrored, so it must be alike. */
const fromHalfSquares = (cutting: Cutting): Way | WayRefusal => {
  const { unit, rule, trimmed } = cutting;
  const [top, right, bottom, left] = unit.fabrics as readonly [string, string, string, string];
  const turns = [0, 1, 2, 3].map((turn) => [0, 1, 2, 3].map((place) => unit.fabrics[(place + turn) % 4]).join('|'));
  if (!turns.includes([left, bottom, right, top].join('|'))) return 'mirrored';
  const exact = quarterSquareFor(unit.size[0], rule.seam);
  const isOnePair = top === bottom && right === left;
  return {
    name: 'from-half-squares',
    trimmed,
    cuts: [0, 1, 2, 3].map((place) => square({ cutting, place, exact, gives: 4, perSet: 1 })),
    roles: isOnePair ? [0, 1, 0, 1] : [0, 1, 2, 3],
    gives: isOnePair ? 2 : 4,
  };
};

/** One large square and four small ones, nothing left over. */
const fourGeese = (cutting: Cutting): Way | WayRefusal => {
  const { unit, rule, trimmed } = cutting;
  if (unit.fabrics[1] !== unit.fabrics[2]) return 'unlike-skies';
  const [wide, high] = unit.size;
  const small = { cutting, place: 1, exact: halfSquareFor(high, rule.seam), gives: 2, perSet: 4 };
  const large = { cutting, place: 0, exact: quarterSquareFor(wide, rule.seam), gives: 4, perSet: 1 };
  return {
    name: 'four-at-a-time',
    trimmed,
    cuts: [square(large), square(small), square(small)],
    roles: [0, 1, 1],
    gives: 4,
  };
};

/** A whole rectangle, and a square on each corner: cut to the nearest mark, since nothing is trimmed. */
const sewnAndFlipped = ({ unit, rule, plain }: Cutting): Way => {
  const whole = (finished: readonly [Length, Length], as: readonly [Length, Length], perSet: number): Cut => {
    const exact = [length(finished[0] + 2 * rule.seam), length(finished[1] + 2 * rule.seam)] as const;
    const size = [toNearestMark(exact[0], rule.ruler).size, toNearestMark(exact[1], rule.ruler).size] as const;
    const shape = Math.abs(exact[0] - exact[1]) < 1e-9 ? 'square' : 'rectangle';
    return { shape, finished: as, exact, size, gives: 1, template: null, perSet };
  };
  const corners = unit.legs.filter((leg) => leg > 0);
  const looks = corners.map((leg, i) => `${leg.toFixed(6)} ${unit.fabrics[i + 1]}`);
  return {
    name: 'sew-and-flip',
    trimmed: false,
    cuts: [
      whole(unit.size, unit.size, 1),
      ...corners.map((leg, i) => {
        const alike = looks.filter((look) => look === looks[i]).length;
        return whole([leg, leg], (plain[i + 1] as Cut).finished, alike);
      }),
    ],
    roles: [0, ...looks.map((look) => 1 + looks.indexOf(look))],
    gives: 1,
  };
};

/**
 * Strips as long as the slices that they give, as even in number from set to set as may be. Cut to the nearest mark, since nothing is
 * trimmed.
 */
const stripSets = ({ unit, rule, plain }: Cutting, room: StripRoom): Way => {
  const rows = rowsIn(unit);
  const looks = rows.map((row) => lookOf(unit, row));
  const slice = toNearestMark(length((unit.strips?.height ?? 0) + 2 * rule.seam), rule.ruler).size;
  const cutAt = (place: number): Cut => {
    const row = rows.findIndex((places) => places.includes(place));
    const own = rows[row] as readonly number[];
    const slices = room.units * looks.filter((look) => look === looks[row]).length;
    const most = Math.max(1, Math.floor(Math.min(...own.map((one) => room.widths[one] as number)) / slice + 1e-9));
    const each = Math.ceil(slices / Math.ceil(slices / most));
    const { finished } = plain[place] as Cut;
    const exact = length((unit.strips?.widths[own.indexOf(place)] ?? 0) + 2 * rule.seam);
    const wide = toNearestMark(exact, rule.ruler).size;
    return {
      shape: 'rectangle',
      finished,
      exact: [length(each * slice), exact],
      size: [length(each * slice), wide],
      gives: each,
      template: null,
      perSet: own.filter((one) => roleAt(unit, one) === roleAt(unit, place)).length,
    };
  };
  const cuts = unit.patches.map((_, place) => cutAt(place));
  const names = unit.patches.map((_, place) => roleAt(unit, place));
  const perUnit = looks.filter((look) => look === looks[0]).length;
  return {
    name: 'strip-sets',
    trimmed: false,
    cuts,
    roles: names.map((name) => names.indexOf(name)),
    gives: (cuts[0]?.gives ?? 1) / perUnit,
  };
};

/** Places of a unit row by row. */
export const rowsIn = ({ patches, strips }: Unit): readonly (readonly number[])[] => {
  const across = strips?.widths.length ?? patches.length;
  return Array.from({ length: patches.length / across }, (_, row) =>
    Array.from({ length: across }, (_cell, column) => row * across + column),
  );
};

/** Rows that come from one strip set look alike, from the left or from the right. */
export const lookOf = ({ fabrics, strips }: Unit, row: readonly number[]): string => {
  const cells = row.map((place, i) => `${fabrics[place]} ${strips?.widths[i]?.toFixed(6)}`);
  return [cells.join(), cells.toReversed().join()].toSorted()[0] as string;
};

const roleAt = (unit: Unit, place: number): string => {
  const row = rowsIn(unit).find((places) => places.includes(place)) as readonly number[];
  const width = unit.strips?.widths[row.indexOf(place)]?.toFixed(6);
  return `${lookOf(unit, row)}: ${unit.fabrics[place]} ${width}`;
};

/** Parts of a unit that its way makes by themselves, then the unit: sets of patches that no other seam may divide. */
export const wholeIn = (unit: Unit, { name }: Way): readonly (readonly number[])[] => {
  const { patches } = unit;
  if (name === 'from-half-squares') return [patches.slice(0, 2), patches.slice(2), patches];
  if (name !== 'strip-sets') return [patches];
  const rows = rowsIn(unit).map((row) => row.map((place) => patches[place] as number));
  return rows.length === 1 ? rows : [...rows, patches];
};
