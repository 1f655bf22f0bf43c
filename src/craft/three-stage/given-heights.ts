// Can the pieces be cut from strips of exactly these heights? Strips of a height are taken together: which parts, out of all that no
// layout of this kind can do without, fill their widths? Asked of the solver, and then shared out among the strips.
import type { IntegerProgram, IntegerRow, IntegerSolver, SolverLimits } from '#craft/strips';
import { exactly } from './cover.ts';
import type { Filler } from './fill.ts';
import type { Lies } from './lies.ts';
import { type Pile, pileHeight, pileWidth, type Strip, stripOf } from './strip.ts';
import { fillAcross } from './worth-most.ts';

export interface GivenHeights {
  readonly lies: Lies;
  readonly filler: Filler;
  readonly solver: IntegerSolver;
  readonly heights: readonly (readonly [height: number, strips: number])[];
  /** Of one piece of each kind: the better they suit these strips, the fewer parts come in. */
  readonly worth: Float64Array;
  readonly limits: SolverLimits;
  /** Parts at most; with more the question is left open. */
  readonly most: number;
}

export type GivenAnswer =
  | { readonly status: 'found'; readonly strips: readonly Strip[] }
  /** No layout has strips of exactly these heights. */
  | { readonly status: 'none' }
  | { readonly status: 'open' };

const isOpen: GivenAnswer = { status: 'open' };

export const stripsOfHeights = (of: GivenHeights): GivenAnswer => {
  const { lies, solver, heights, limits } = of;
  const classes = classesFor(of);
  const worthInAll = classes.reduce((all, { strips, worths }) => all + strips * (worths[lies.width] as number), 0);
  const needed = of.worth.reduce((all, y, k) => all + y * (lies.demand[k] as number), 0);
  const spare = worthInAll - needed;
  if (spare < -1e-6 * needed) return { status: 'none' };
  const parts: Part[] = [];
  for (const one of classes) if (!addParts({ of, one, spare: spare + 1e-6 * needed, into: parts })) return isOpen;
  const answer = solver.minimise(programFor(lies, heights, parts), limits);
  if (answer.status === 'none') return answer.isImpossible === true ? { status: 'none' } : isOpen;
  const strips = sharedOut({ lies, heights, parts, times: answer.x });
  return strips === null ? isOpen : { status: 'found', strips: exactly(lies, strips, lies.demand) };
};

/** Strips of one height. */
interface Class {
  readonly height: number;
  readonly strips: number;
  /** Most worth of parts side by side, by the width they have. */
  readonly worths: Float64Array;
}

interface Part {
  readonly height: number;
  readonly pile: Pile;
  readonly width: number;
}

const classesFor = ({ lies, filler, heights, worth }: GivenHeights): readonly Class[] => {
  const { stacks, across } = filler;
  stacks.build({ worth, left: lies.demand, height: heights[0]?.[0] ?? 0, widest: lies.width });
  return heights.map(([height, strips]) => {
    fillAcross({ lies, filler, demand: lies.demand, height });
    return { height, strips, worths: Float64Array.from({ length: lies.width + 1 }, (_, room) => across.bestIn(room)) };
  });
};

/** Steps of the search for parts, for each part that may come in. */
const stepsPerPart = 60;

/**
 * Adds the parts that leave the strips of this height no more than `spare` below the worth they can have, each filled until
 * nothing more fits. @returns false when they are too many
 */
const addParts = (of: {
  readonly of: GivenHeights;
  readonly one: Class;
  readonly spare: number;
  readonly into: Part[];
}): boolean => {
  const { one, spare, into } = of;
  const { lies, worth, most } = of.of;
  const budget = { steps: stepsPerPart * most };
  const whole = one.worths[lies.width] as number;
  for (const width of new Set(lies.wide)) {
    const need = whole - spare - (one.worths[lies.width - width] as number);
    const found = pilesOf({ lies, worth, width, height: one.height, need, budget, most: most - into.length });
    if (found === null) return false;
    for (const pile of found) into.push({ height: one.height, pile, width });
  }
  return true;
};

interface Piling {
  readonly lies: Lies;
  readonly worth: Float64Array;
  readonly width: number;
  readonly height: number;
  readonly need: number;
  readonly budget: { steps: number };
  readonly most: number;
}

/** Piles exactly so wide that are worth at least the need and take nothing more; null when they are too many. */
const pilesOf = (of: Piling): readonly Pile[] | null => {
  const { lies, worth, width, height, need, budget, most } = of;
  const lying = flattestWithin(lies, width).filter((lie) => (lies.tall[lie] as number) <= height);
  const rate = (lie: number): number => (worth[lies.kind[lie] as number] as number) / (lies.tall[lie] as number);
  lying.sort((a, b) => rate(b) - rate(a) || a - b);
  const piles: Pile[] = [];
  const times = new Int32Array(lying.length);
  const isFull = (room: number): boolean =>
    lying.every(
      (lie, i) => (lies.tall[lie] as number) > room || times[i] === (lies.demand[lies.kind[lie] as number] as number),
    );
  const keep = (): boolean => {
    const pile = lying.flatMap((lie, i) => ((times[i] as number) > 0 ? [lie, times[i] as number] : []));
    if (pile.length > 0 && pileWidth(lies, pile) === width && isFull(height - pileHeight(lies, pile))) piles.push(pile);
    return piles.length <= most;
  };
  const go = (at: number, room: number, had: number): boolean => {
    if (--budget.steps < 0) return false;
    const lie = lying[at];
    if (had + (lie === undefined ? 0 : room * rate(lie)) < need) return true;
    if (lie === undefined) return keep();
    const tall = lies.tall[lie] as number;
    const kind = lies.kind[lie] as number;
    for (let n = Math.min(lies.demand[kind] as number, Math.floor(room / tall)); n >= 0; n--) {
      times[at] = n;
      if (!go(at + 1, room - n * tall, had + n * (worth[kind] as number))) return false;
    }
    return true;
  };
  return go(0, height, 0) ? piles : null;
};

/** Each kind in the flattest of its ways of lying that are no wider. */
const flattestWithin = (lies: Lies, width: number): number[] => {
  const lieOf = new Map<number, number>();
  for (let lie = 0; lie < lies.size; lie++) {
    if ((lies.wide[lie] as number) > width) continue;
    const before = lieOf.get(lies.kind[lie] as number);
    if (before === undefined || (lies.tall[lie] as number) < (lies.tall[before] as number))
      lieOf.set(lies.kind[lie] as number, lie);
  }
  return [...lieOf.values()];
};

const programFor = (lies: Lies, heights: GivenHeights['heights'], parts: readonly Part[]): IntegerProgram => {
  const terms: (readonly [number, number])[][] = Array.from(lies.demand, () => []);
  parts.forEach(({ pile }, j) => {
    const { gives } = stripOf(lies, [pile]);
    for (let i = 0; i < gives.length; i += 2) terms[gives[i] as number]?.push([j, gives[i + 1] as number]);
  });
  const demands: readonly IntegerRow[] = terms.map((list, k) => ({ least: lies.demand[k] as number, terms: list }));
  const widths: readonly IntegerRow[] = heights.map(([height, strips]) => ({
    least: -strips * lies.width,
    terms: parts.flatMap((part, j) => (part.height === height ? [[j, -part.width] as const] : [])),
  }));
  const stripsOf = new Map(heights);
  return {
    cost: parts.map(() => 0),
    upper: parts.map((part) => (stripsOf.get(part.height) as number) * Math.floor(lies.width / part.width)),
    rows: [...demands, ...widths],
  };
};

/** Tries at sharing parts out among strips of one height. */
const mostTries = 2000;

/** Strips with these parts; null when they were not found to fit side by side. */
const sharedOut = (of: {
  readonly lies: Lies;
  readonly heights: GivenHeights['heights'];
  readonly parts: readonly Part[];
  readonly times: readonly number[];
}): readonly Strip[] | null => {
  const { lies, heights, parts, times } = of;
  const strips: Strip[] = [];
  for (const [height, count] of heights) {
    const own = parts
      .flatMap((part, j) => (part.height === height ? Array.from({ length: times[j] as number }, () => part) : []))
      .sort((a, b) => b.width - a.width);
    const rooms = new Int32Array(count).fill(lies.width);
    const piles: Pile[][] = Array.from({ length: count }, () => []);
    let tries = 0;
    const put = (at: number): boolean => {
      const part = own[at];
      if (part === undefined) return true;
      if (++tries > mostTries) return false;
      const seen = new Set<number>();
      for (let s = 0; s < count; s++) {
        const room = rooms[s] as number;
        if (room < part.width || seen.has(room)) continue;
        seen.add(room);
        rooms[s] = room - part.width;
        piles[s]?.push(part.pile);
        if (put(at + 1)) return true;
        rooms[s] = room;
        piles[s]?.pop();
      }
      return false;
    };
    if (!put(0)) return null;
    for (const each of piles) if (each.length > 0) strips.push(stripOf(lies, each));
  }
  return strips;
};
