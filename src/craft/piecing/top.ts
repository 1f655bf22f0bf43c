// The order of joining a straight-set top: every row from left to right, the rows from the top down,
// then border by border, sides before ends. Equal beginnings of rows are made together.

import type { Side } from '#craft/design';
import { type Length, length } from '#craft/measure';
import type { PlacedBlock, PlacedStrip, SetTop, TopRow } from '#craft/setting';
import { machineTurn, type QuarterTurns } from './machine.ts';

export type TopThing = { readonly block: number } | { readonly strip: number };
/** A thing, or the unit of an earlier step. */
export type TopPart = TopThing | { readonly unit: number };

export interface TopJoin {
  readonly join: readonly [TopPart, TopPart];
  readonly side: Side;
  readonly machineTurn: QuarterTurns;
  readonly seam: Length;
  readonly press: 0 | 1;
  readonly unfinished: readonly [Length, Length];
  readonly perBlock: number;
  readonly stage: 'row' | 'rows' | 'border';
  /** Row or border ring, 0-based. */
  readonly of: number;
  readonly things: readonly [readonly TopThing[], readonly TopThing[]];
}

/** A part of the top that has been joined: its outline's size, what lies in it and on which side it was last sewn. */
interface Unit {
  readonly part: TopPart;
  readonly size: readonly [number, number];
  readonly things: readonly TopThing[];
  readonly before: Side | null;
}

/**
 * @param kindOfStrip strips of one kind are one piece to make and to cut
 * @param seam        allowance
 */
export const joinTop = (top: {
  readonly set: SetTop;
  readonly kindOfStrip: readonly number[];
  readonly seam: Length;
}): readonly TopJoin[] => {
  const { set, seam } = top;
  const steps: TopJoin[] = [];
  const known = new Map<string, number>();
  const sew = (what: {
    readonly first: Unit;
    readonly second: Unit;
    readonly side: 'right' | 'bottom' | 'left' | 'top';
    readonly press: 0 | 1;
    readonly stage: TopJoin['stage'];
    readonly of: number;
    /** Steps with one name make one kind of unit. */
    readonly name: string;
  }): Unit => {
    const { first, second, side } = what;
    const across = side === 'left' || side === 'right';
    const size: readonly [number, number] = across
      ? [first.size[0] + second.size[0], first.size[1]]
      : [first.size[0], first.size[1] + second.size[1]];
    const same = known.get(what.name);
    if (same === undefined) {
      known.set(what.name, steps.length);
      steps.push({
        join: [first.part, second.part],
        side,
        machineTurn: machineTurn({ next: side, before: first.before, turn: 0 }),
        seam: length(across ? size[1] : size[0]),
        press: what.press,
        unfinished: [length(size[0] + 2 * seam), length(size[1] + 2 * seam)],
        perBlock: 1,
        stage: what.stage,
        of: what.of,
        things: [first.things, second.things],
      });
    } else {
      const step = steps[same] as TopJoin;
      steps[same] = { ...step, perBlock: step.perBlock + 1 };
    }
    return {
      part: { unit: known.get(what.name) as number },
      size,
      things: [...first.things, ...second.things],
      before: side,
    };
  };

  const rows = set.rows.map((row, index) => {
    const nest = nestingOf(set, row, index);
    let name = `row:${nest}`;
    return row.parts
      .map((thing): Unit => ({ part: thing, size: sizeOf(set, thing), things: [thing], before: null }))
      .reduce((first, second, i) => {
        name = i === 1 ? `${name}|${signOf(top, first.things[0] as TopThing)}` : name;
        name = `${name}|${signOf(top, second.things[0] as TopThing)}`;
        const press = pressInRow(set, {
          first: first.things.at(-1) as TopThing,
          second: second.things[0] as TopThing,
          nest,
        });
        return sew({ first, second, side: 'right', press, stage: 'row', of: index, name });
      });
  });
  let whole = rows.reduce((first, second, i) => {
    const press = set.rows[i]?.kind === 'sashes' || set.rows[i - 1]?.kind !== 'sashes' ? 1 : 0;
    return sew({ first, second, side: 'bottom', press, stage: 'rows', of: i, name: `rows:${i}` });
  });
  set.borders.forEach((ring, of) => {
    const sides: readonly (readonly [number, 'left' | 'right' | 'top' | 'bottom'])[] = [
      [ring.sides[0], 'left'],
      [ring.sides[1], 'right'],
      [ring.ends[0], 'top'],
      [ring.ends[1], 'bottom'],
    ];
    for (const [strip, side] of sides) {
      const thing = { strip };
      whole = sew({
        first: whole,
        second: { part: thing, size: sizeOf(set, thing), things: [thing], before: null },
        side,
        press: 1,
        stage: 'border',
        of,
        name: `border:${of}:${side}`,
      });
    }
  });
  return steps;
};

const sizeOf = (set: SetTop, thing: TopThing): readonly [number, number] => {
  if ('block' in thing) return (set.placed[thing.block] as PlacedBlock).size;
  const { rect } = set.strips[thing.strip] as PlacedStrip;
  return [rect.width, rect.height];
};

const signOf = (top: { readonly set: SetTop; readonly kindOfStrip: readonly number[] }, thing: TopThing): string => {
  if ('strip' in thing) return `s${top.kindOfStrip[thing.strip]}`;
  const { block, colouring, mirror, turn } = top.set.placed[thing.block] as PlacedBlock;
  return JSON.stringify([block, colouring, mirror, turn]);
};

/** Rows of blocks set edge to edge are pressed by turns to the right and to the left, so that their seams nest. */
const nestingOf = (set: SetTop, row: TopRow, index: number): 'right' | 'left' | 'sash' => {
  if (set.strips.some((s) => s.role === 'sash')) return 'sash';
  return row.kind === 'blocks' && index % 2 === 0 ? 'right' : 'left';
};

/** Toward the sash, or toward the plain square; blocks by the row's own direction. */
const pressInRow = (
  set: SetTop,
  seam: { readonly first: TopThing; readonly second: TopThing; readonly nest: 'right' | 'left' | 'sash' },
): 0 | 1 => {
  const roles = [seam.first, seam.second].map((thing) =>
    'strip' in thing ? (set.strips[thing.strip] as PlacedStrip).role : 'block',
  );
  if (roles[0] === 'sash') return 0;
  if (roles[1] === 'sash') return 1;
  if (seam.nest === 'sash') return 1;
  return seam.nest === 'right' ? 1 : 0;
};
