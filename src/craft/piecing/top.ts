// The order of joining a top, from the way it is set: every run from its first part to its last, every round
// side by side, borders last. Units that are made alike are made together.

import type { Side } from '#craft/design';
import { type Length, length, tidy } from '#craft/measure';
import {
  type Assembly,
  type BorderRing,
  outlineOfPlaced,
  type PlacedBlock,
  type PlacedStrip,
  type Round,
  type SetTop,
  type TopThing,
  turnedBy,
} from '#craft/setting';
import { boxOf, centroid, grown, hullOf, type Polygon } from '#ground/plane';
import { type Edge, type Extent, extentOf, inFrame, joinedExtent, seamAlong, seamBetween } from './frame-extent.ts';
import { headingOf, machineTurn, wholeTurn } from './machine.ts';
import {
  pressBetweenRows,
  pressInBorder,
  pressInRow,
  pressInSection,
  pressKept,
  type TopWish,
} from './top-pressing.ts';

/** A thing, or the unit of an earlier step. */
export type TopPart = TopThing | { readonly unit: number };

export interface TopJoin {
  readonly join: readonly [TopPart, TopPart];
  /** A mitre closes the corner between two borders that hang on the quilt already; the other of them is in the unit. */
  readonly kind: 'straight' | 'partial-close';
  /** Where the second lies, seen from the first, in a frame turned clockwise by `angle` from the top's. */
  readonly side: Side;
  readonly angle: number;
  /** Clockwise, in degrees, from how the first part lay: brings the new seam to the right hand. */
  readonly machineTurn: number;
  readonly seam: Length;
  readonly press: 0 | 1 | 'open';
  readonly unfinished: readonly [Length, Length];
  readonly perBlock: number;
  /**
   * What it is about: within a row or a section, rows joined to the middle, a corner of a set on point, a border (put
   * together, or sewn on) or the mitre of two borders.
   */
  readonly stage: 'row' | 'rows' | 'section' | 'corner' | 'border' | 'mitre';
  /** 0-based: the row, the section in reading order, the corner, or the ring of the borders. */
  readonly of: number;
  /**
   * For what is sewn round the quilt: measure the quilt's width or height through the middle in three places, and cut the
   * part to that.
   */
  readonly measure: 'width' | 'height' | null;
  /** What it joins as it lies in the top: the first part's things, then the second's. */
  readonly things: readonly [readonly TopThing[], readonly TopThing[]];
  /** All seams that it sews, as `topSeams` has them; none for a mitre. */
  readonly seams: readonly number[];
}

/** A seam of the top as it lies there. */
export interface TopSeam {
  readonly path: Polygon;
  /** Where the second part lies, square to the seam: degrees clockwise, 0 to the right. */
  readonly heading: number;
  readonly stage: Exclude<TopJoin['stage'], 'mitre'>;
  readonly of: number;
  readonly wish: TopWish;
  /** What it joins: the first part's things, then the second's. */
  readonly things: TopJoin['things'];
}

interface Unit {
  readonly part: TopPart;
  /** Units of one sign are made alike. */
  readonly sign: string;
  /** Clockwise, of the frame that its extent and `before` are seen in. */
  readonly angle: number;
  readonly extent: Extent;
  /** Convex, in the top's own frame; only kept where it lies slanted. */
  readonly outline: Polygon | null;
  readonly things: readonly TopThing[];
  readonly before: Side | null;
}

interface Joining {
  readonly set: SetTop;
  readonly kindOfStrip: readonly number[];
  readonly isPrinted: (fabric: string) => boolean;
  readonly seam: Length;
  readonly slack: number;
  readonly sashed: boolean;
  readonly pressOf: (seam: TopSeam) => { readonly press: TopJoin['press']; readonly seam: number };
  /** Two placed blocks of one sign, turned alike, are one and the same. */
  readonly signOfBlock: (placed: number) => string;
  /** How much further than in the set a placed block is turned. */
  readonly turnOfBlock: (placed: number) => number;
  readonly steps: TopJoin[];
  /** The step that makes units of a sign. */
  readonly known: Map<string, number>;
}

interface TopToJoin {
  readonly set: SetTop;
  /** Strips of one kind are one piece to make and to cut. */
  readonly kindOfStrip: readonly number[];
  /** Whether a cloth has an upright. */
  readonly isPrinted: (fabric: string) => boolean;
  /** Allowance. */
  readonly seam: Length;
}

/**
 * @param presses  by seam, as `topSeams` has them; a mitre is pressed open
 * @param variants by placed block: how its own seams are pressed, where that is one of two ways
 * @param turns    by placed block: how much further it is turned, clockwise, where it looks the same so
 */
export const joinTop = (
  top: TopToJoin & {
    readonly presses: readonly TopJoin['press'][];
    readonly variants: readonly number[];
    readonly turns: readonly number[];
  },
): readonly TopJoin[] => {
  const { presses, variants, turns } = top;
  let sewn = 0;
  return joins(top, {
    pressOf: () => ({ press: presses[sewn] as TopJoin['press'], seam: sewn++ }),
    signOfBlock: (placed) => `${variants[placed] as number}`,
    turnOfBlock: (placed) => turns[placed] as number,
  });
};

/** Every seam of a top but its mitres, in the order of joining, with what it wishes. */
export const topSeams = (set: SetTop): readonly TopSeam[] => {
  const seams: TopSeam[] = [];
  const plain = { set, kindOfStrip: set.strips.map((_, i) => i), isPrinted: () => false, seam: length(0) };
  joins(plain, {
    pressOf: (seam) => {
      seams.push(seam);
      return { press: 1, seam: seams.length - 1 };
    },
    signOfBlock: (placed) => `${placed}`,
    turnOfBlock: () => 0,
  });
  return seams;
};

const joins = (top: TopToJoin, of: Pick<Joining, 'pressOf' | 'signOfBlock' | 'turnOfBlock'>): readonly TopJoin[] => {
  const { set } = top;
  const joining: Joining = {
    ...top,
    ...of,
    slack: 1e-7 * Math.max(set.width, set.height),
    sashed: set.strips.some((s) => s.role === 'sash'),
    steps: [],
    known: new Map(),
  };
  set.borders.reduce(
    (core, ring, of) => bordered(joining, { core, ring, of }),
    joined(joining, { assembly: set.assembly, angle: 0 }),
  );
  return joining.steps;
};

/** @param angle of the frame in which the unit is wanted */
const joined = (on: Joining, of: { readonly assembly: Assembly; readonly angle: number }): Unit => {
  const { assembly } = of;
  if ('thing' in assembly) return single(on, assembly.thing, of.angle);
  if ('run' in assembly) return joinedRun(on, assembly);
  const core = joined(on, { assembly: assembly.core, angle: assembly.round.angle });
  return cornered(on, core, assembly.round);
};

const single = (on: Joining, thing: TopThing, angle: number): Unit => {
  const outline = outlineOfThing(on.set, thing);
  return {
    part: thing,
    sign: signOf(on, thing, angle),
    angle,
    extent: extentOf({ outlines: [outline], angle, slack: on.slack }),
    outline: angle % 90 === 0 ? null : outline,
    things: [thing],
    before: null,
  };
};

const nameOfThing = (thing: TopThing): string => ('strip' in thing ? `s${thing.strip}` : `b${thing.block}`);

type Run = Extract<Assembly, { readonly run: string }>;

const joinedRun = (on: Joining, run: Run): Unit => {
  const { set } = on;
  const { angle, stage } = run;
  const parts = run.parts.map((assembly) => joined(on, { assembly, angle }));
  const side = run.run === 'across' ? 'right' : 'bottom';
  return parts.reduce((first, second, i) => {
    const seam = { first: first.things.at(-1) as TopThing, second: second.things[0] as TopThing };
    const name = `${stage} ${nameOfThing(seam.first)} ${nameOfThing(seam.second)}`;
    const wish = {
      row: () => pressInRow(set, { ...seam, row: run.of, sashed: on.sashed }),
      rows: () => pressBetweenRows(set, i),
      section: () => pressInSection(set, seam, name),
      border: () => pressInBorder(set, { ...seam, ring: run.of, name }),
    }[stage]();
    const of = stage === 'rows' ? i : run.of;
    return sewn(on, { first, second, side, angle, wish, stage, of, across: 'counted', measure: null });
  });
};

/** The four corners of a set on point. */
const cornered = (on: Joining, core: Unit, { angle, parts }: Round): Unit => {
  const whole = parts.reduce((first, { side, assembly }, of) => {
    const second = joined(on, { assembly, angle });
    const wish = pressKept(1);
    return sewn(on, { first, second, side, angle, wish, stage: 'corner', of, across: 'counted', measure: null });
  }, core);
  return seenFrom(on, whole, 0);
};

const bordered = (
  on: Joining,
  { core, ring, of }: { readonly core: Unit; readonly ring: BorderRing; readonly of: number },
): Unit => {
  const { angle } = ring;
  const across = ring.kind === 'mitred' ? 'hanging' : 'counted';
  // blocks have seams of their own: their border is pressed away from them
  const wish = pressKept(ring.kind === 'pieced' ? 0 : 1);
  const whole = ring.parts.reduce((first, { side, assembly }) => {
    const second = joined(on, { assembly, angle });
    const measure = side === 'left' || side === 'right' ? 'height' : 'width';
    return sewn(on, { first, second, side, angle, wish, stage: 'border', of, across, measure });
  }, core);
  return ring.kind === 'mitred' ? mitred(on, { whole, ring, of }) : whole;
};

interface Sewing extends Pick<TopJoin, 'angle' | 'of' | 'measure'> {
  readonly first: Unit;
  readonly second: Unit;
  readonly side: Edge;
  readonly wish: TopWish;
  readonly stage: Exclude<TopJoin['stage'], 'mitre'>;
  /** Whether what the second reaches beyond the first along the seam belongs to the unit's size. */
  readonly across: 'counted' | 'hanging';
}

const sewn = (on: Joining, sewing: Sewing): Unit => {
  const { side, angle, stage, wish, of, across, measure } = sewing;
  const first = seenFrom(on, sewing.first, angle);
  const second = seenFrom(on, sewing.second, angle);
  const { press, seam } = on.pressOf({
    path: seamAlong(first.extent, second.extent, side).map((p) => turnedBy(p, angle)),
    heading: wholeTurn(headingOf[side] + angle),
    stage,
    of,
    wish,
    things: [first.things, second.things],
  });
  const extent = joinedExtent({ first: first.extent, second: second.extent, side, across, slack: on.slack });
  const outline = angle % 90 === 0 ? null : hullOf([...outlineIn(on, first), ...outlineIn(on, second)], on.slack);
  const name = [side, press, turnedSign(sewing.first, angle), turnedSign(sewing.second, angle)].join('|');
  const same = on.known.get(name);
  const step = same ?? on.steps.length;
  if (same === undefined) {
    on.known.set(name, step);
    on.steps.push({
      join: [first.part, second.part],
      kind: 'straight',
      side,
      angle,
      machineTurn: turnFor(on, { unit: sewing.first, side, angle }),
      seam: tidy(seamBetween(first.extent, second.extent, side)),
      press,
      unfinished: unfinishedSize(on, { extent, outline, angle, stage }),
      perBlock: 1,
      stage,
      of,
      measure,
      things: [first.things, second.things],
      seams: [seam],
    });
  } else {
    const known = on.steps[same] as TopJoin;
    on.steps[same] = { ...known, perBlock: known.perBlock + 1, seams: [...known.seams, seam] };
  }
  const things = [...first.things, ...second.things];
  return { part: { unit: step }, sign: `#${step}`, angle, extent, outline, things, before: side };
};

/** The corner seams of a ring, clockwise from the upper left: each closes between two strips that hang already. */
const mitred = (on: Joining, of: { readonly whole: Unit; readonly ring: BorderRing; readonly of: number }): Unit => {
  const { whole, ring } = of;
  const strip = (side: Edge): TopThing => {
    const part = ring.parts.find((one) => one.side === side)?.assembly;
    if (part === undefined || !('thing' in part)) throw new Error(`a mitred ring without a strip at the ${side}`);
    return part.thing;
  };
  const last = on.steps.at(-1) as TopJoin;
  let closed = whole;
  for (const side of ['top', 'top', 'bottom', 'bottom'] as const) {
    const second = strip(side);
    const { rect } = on.set.strips[(second as { readonly strip: number }).strip] as PlacedStrip;
    const unit = on.steps.length;
    on.steps.push({
      ...last,
      join: [closed.part, second],
      kind: 'partial-close',
      side,
      machineTurn: turnFor(on, { unit: closed, side, angle: ring.angle }),
      seam: tidy(Math.SQRT2 * rect.height),
      press: 'open',
      stage: 'mitre',
      of: of.of,
      measure: null,
      things: [whole.things.filter((thing) => !isSame(thing, second)), [second]],
      seams: [],
    });
    closed = { ...closed, part: { unit }, sign: `#${unit}`, before: side };
  }
  return closed;
};

const isSame = (a: TopThing, b: TopThing): boolean =>
  'strip' in a ? 'strip' in b && a.strip === b.strip : 'block' in b && a.block === b.block;

/** A square piece of cloth without direction looks the same from every side; a square block does not. */
const turnFor = (on: Joining, of: { readonly unit: Unit; readonly side: Side; readonly angle: number }): number => {
  const { before, extent, part } = of.unit;
  if (before !== null) {
    return machineTurn(headingOf[of.side], { heading: headingOf[before], turn: of.unit.angle - of.angle });
  }
  const square =
    'strip' in part &&
    !on.isPrinted(on.set.strips[part.strip]?.fabric as string) &&
    Math.abs(extent.right - extent.left - (extent.bottom - extent.top)) < 1e-6;
  return machineTurn(headingOf[of.side], square ? 'square' : 'as on the board');
};

/**
 * Allowances included: upright, or along the slanted rows of a set on point. With its corners on, that is measured
 * upright, for its tips reach all four edges already.
 */
const unfinishedSize = (
  on: Joining,
  of: Pick<TopJoin, 'angle' | 'stage'> & { readonly extent: Extent; readonly outline: Polygon | null },
): readonly [Length, Length] => {
  const { extent, outline, angle, stage } = of;
  const within = (width: number, height: number, allowance: number): readonly [Length, Length] => [
    tidy(width + 2 * allowance),
    tidy(height + 2 * allowance),
  ];
  if (outline === null) return within(extent.right - extent.left, extent.bottom - extent.top, on.seam);
  const { width, height } = boxOf(stage === 'corner' ? outline : inFrame(grown(outline, on.seam), angle));
  return within(width, height, stage === 'corner' ? on.seam : length(0));
};

const outlineIn = (on: Joining, unit: Unit): Polygon =>
  unit.outline ?? unit.things.flatMap((thing) => outlineOfThing(on.set, thing));

/** The same unit in the frame of what joins it. */
const seenFrom = (on: Joining, unit: Unit, angle: number): Unit => {
  if (unit.angle === angle) return unit;
  const outlines = unit.outline ? [unit.outline] : unit.things.map((thing) => outlineOfThing(on.set, thing));
  return { ...unit, angle, extent: extentOf({ outlines, angle, slack: on.slack }), before: unit.before };
};

/** What a unit is and how it lies in a frame. */
const turnedSign = (unit: Unit, angle: number): string => `${unit.sign}@${turnFrom(unit.angle, angle)}`;

const turnFrom = (turn: number, angle: number): number => (((turn - angle) % 360) + 360) % 360;

const outlineOfThing = (set: SetTop, thing: TopThing): Polygon =>
  'strip' in thing
    ? (set.strips[thing.strip] as PlacedStrip).points
    : outlineOfPlaced(set.placed[thing.block] as PlacedBlock);

const signOf = (on: Joining, thing: TopThing, angle: number): string => {
  if ('strip' in thing) {
    const { points } = on.set.strips[thing.strip] as PlacedStrip;
    return `s${on.kindOfStrip[thing.strip]}:${lieOf(inFrame(points, angle))}`;
  }
  const { block, colouring, mirror, turn } = on.set.placed[thing.block] as PlacedBlock;
  const turned = turnFrom(turn + on.turnOfBlock(thing.block), angle);
  return JSON.stringify([block, colouring, mirror, on.signOfBlock(thing.block), turned]);
};

/** How an outline lies: its middle's place in its box tells turned triangles apart, the box's sides turned strips. */
const lieOf = (points: Polygon): string => {
  const { x, y, width, height } = boxOf(points);
  const middle = centroid(points);
  return [width, height, middle.x - x, middle.y - y].map((value) => value.toFixed(6)).join(',');
};
