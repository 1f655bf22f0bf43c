import assert from 'node:assert/strict';
import { test } from 'node:test';
import { drawingOf } from '#craft/chords';
import { length } from '#craft/measure';
import { mergedBlock, type Tiling, tilings } from '#documents';
import { convexOutlines } from '#ground/outline';
import { centroid, type Point, type Polygon, signedArea } from '#ground/plane';
import { formSorter } from './congruence.ts';
import { graphOf } from './graph.ts';
import type { Join } from './join.ts';
import { kindsOf } from './kinds.ts';
import { planJoins } from './tree.ts';

/** What an order of joining costs, in the order in which it counts. */
interface Cost {
  readonly corners: number;
  readonly rings: number;
  readonly units: number;
  readonly depth: number;
  /** Of each different unit's seam, from the last one sewn on. */
  readonly lies: readonly number[];
  readonly places: readonly number[];
}

const compare = (a: Cost, b: Cost): number =>
  a.corners - b.corners ||
  a.rings - b.rings ||
  a.units - b.units ||
  a.depth - b.depth ||
  firstDifference(a.lies, b.lies) ||
  // lower (or further right) seams are sewn last
  firstDifference(b.places, a.places);

const firstDifference = (a: readonly number[], b: readonly number[]): number => {
  for (let i = 0; i < Math.min(a.length, b.length); i++) {
    const difference = (a[i] as number) - (b[i] as number);
    if (Math.abs(difference) > 1e-6) return difference;
  }
  return 0;
};

// The slow twin. Units are sets of patches, written as bits; nothing of the product's own search is used but which
// patches are one kind of piece. Any two units that share a seam may be joined; a ring of three or more units round
// another may be joined by a partial seam.

interface Edge {
  readonly a: number;
  readonly b: number;
  readonly hands: readonly number[];
}

interface Board {
  readonly corners: readonly Point[];
  readonly edges: readonly Edge[];
  readonly all: number;
}

const boardOf = (outlines: readonly Polygon[]): Board => {
  const corners: Point[] = [];
  const cornerAt = (p: Point): number => {
    const known = corners.findIndex((q) => Math.hypot(p.x - q.x, p.y - q.y) < 1e-5);
    return known >= 0 ? known : corners.push(p) - 1;
  };
  for (const outline of outlines) outline.forEach(cornerAt);
  const edges = new Map<string, { a: number; b: number; hands: number[] }>();
  outlines.forEach((outline, patch) => {
    outline.forEach((p, i) => {
      const q = outline[(i + 1) % outline.length] as Point;
      const along = (r: Point): number => ((r.x - p.x) * (q.x - p.x) + (r.y - p.y) * (q.y - p.y)) / distance(p, q) ** 2;
      const stops = corners
        .map((r, corner) => ({ corner, t: along(r), off: distance(r, between(p, q, along(r))) }))
        .filter(({ t, off }) => off < 1e-5 && t > -1e-6 && t < 1 + 1e-6)
        .sort((m, n) => m.t - n.t);
      for (let k = 0; k + 1 < stops.length; k++) {
        const [a, b] = [stops[k]?.corner, stops[k + 1]?.corner].sort((m, n) => (m as number) - (n as number)) as [
          number,
          number,
        ];
        const edge = edges.get(`${a},${b}`) ?? { a, b, hands: [] };
        edge.hands.push(patch);
        edges.set(`${a},${b}`, edge);
      }
    });
  });
  return { corners, edges: [...edges.values()], all: 2 ** outlines.length - 1 };
};

const distance = (p: Point, q: Point): number => Math.hypot(q.x - p.x, q.y - p.y);
const between = (p: Point, q: Point, t: number): Point => ({ x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) });
const has = (set: number, patch: number): boolean => ((set >> patch) & 1) === 1;
const lowest = (set: number): number => 31 - Math.clz32(set & -set);
const isSingle = (set: number): boolean => (set & (set - 1)) === 0;
const patchesIn = (set: number): readonly number[] =>
  Array.from({ length: 32 - Math.clz32(set) }, (_, i) => i).filter((i) => has(set, i));

/** Corners in order, or null where the edges are not one walk that meets no corner twice; a closed one ends where it began. */
const walkOf = (edges: readonly Edge[]): readonly number[] | null => {
  const next = new Map<number, number[]>();
  for (const { a, b } of edges) {
    next.set(a, [...(next.get(a) ?? []), b]);
    next.set(b, [...(next.get(b) ?? []), a]);
  }
  if ([...next.values()].some((ends) => ends.length > 2)) return null;
  const start = [...next].find(([, ends]) => ends.length === 1)?.[0] ?? edges[0]?.a;
  if (start === undefined) return null;
  const walk = [start];
  for (let before = -1; ; ) {
    const here = walk.at(-1) as number;
    const on = (next.get(here) as number[]).find((end, i, ends) => end !== before || ends.indexOf(end) !== i);
    if (on === undefined) break;
    walk.push(on);
    if (on === start) break;
    before = here;
  }
  return walk.length === edges.length + 1 ? walk : null;
};

const isStraightAt = (p: Point, q: Point, r: Point): boolean => distance(p, q) + distance(q, r) - distance(p, r) < 1e-7;

interface Split {
  readonly parts: readonly number[];
  readonly corners: number;
  readonly rings: number;
  readonly lie: number;
  readonly place: number;
}

class Twin {
  readonly #board: Board;
  readonly #kindOf: readonly number[];
  readonly #outlines: readonly Polygon[];
  readonly #discs = new Map<number, boolean>();
  readonly #splits = new Map<number, readonly Split[]>();
  readonly #troubles = new Map<number, readonly [number, number]>();
  readonly #forms = new Map<number, string>();
  #best: Cost | null = null;

  constructor(outlines: readonly Polygon[], kindOf: readonly number[]) {
    this.#board = boardOf(outlines);
    this.#outlines = outlines;
    this.#kindOf = kindOf;
  }

  least(): Cost {
    this.#visit([this.#board.all], new Map());
    return this.#best as Cost;
  }

  /** Makes the units that wait, the last seam first; a unit of a form that is made already is made like it. */
  #visit(waiting: readonly number[], made: Map<string, Split>): void {
    if (this.#best && made.size > this.#best.units) return;
    const [unit, ...rest] = waiting;
    if (unit === undefined) {
      const cost = this.#costOf(made);
      if (!this.#best || compare(cost, this.#best) < 0) this.#best = cost;
      return;
    }
    if (isSingle(unit) || made.has(this.#formOf(unit))) {
      this.#visit(rest, made);
      return;
    }
    const form = this.#formOf(unit);
    for (const split of this.#leastSplits(unit)) {
      made.set(form, split);
      this.#visit([...split.parts, ...rest], made);
      made.delete(form);
    }
  }

  #costOf(made: ReadonlyMap<string, Split>): Cost {
    const of = (unit: number): readonly [corners: number, rings: number, depth: number] => {
      if (isSingle(unit)) return [0, 0, 0];
      const split = made.get(this.#formOf(unit)) as Split;
      const parts = split.parts.map(of);
      return [
        parts.reduce((all, part) => all + part[0], split.corners),
        parts.reduce((all, part) => all + part[1], split.rings),
        1 + Math.max(...parts.map((part) => part[2])),
      ];
    };
    const [corners, rings, depth] = of(this.#board.all);
    const splits = [...made.values()];
    return {
      corners,
      rings,
      units: splits.length,
      depth,
      lies: splits.map((s) => s.lie),
      places: splits.map((s) => s.place),
    };
  }

  /** Corners and rings add up over a tree, so every part of a least tree is a least tree itself. */
  #trouble(unit: number): readonly [number, number] {
    if (isSingle(unit)) return [0, 0];
    const known = this.#troubles.get(unit);
    if (known) return known;
    let best: readonly [number, number] = [Number.POSITIVE_INFINITY, 0];
    for (const split of this.#allSplits(unit)) {
      const found = this.#troubleWith(split);
      if (found[0] < best[0] || (found[0] === best[0] && found[1] < best[1])) best = found;
    }
    this.#troubles.set(unit, best);
    return best;
  }

  #troubleWith({ parts, corners, rings }: Split): readonly [number, number] {
    return parts.reduce<readonly [number, number]>(
      (all, part) => [all[0] + this.#trouble(part)[0], all[1] + this.#trouble(part)[1]],
      [corners, rings],
    );
  }

  #leastSplits(unit: number): readonly Split[] {
    const [corners, rings] = this.#trouble(unit);
    return this.#allSplits(unit).filter((split) => {
      const found = this.#troubleWith(split);
      return found[0] === corners && found[1] === rings;
    });
  }

  #allSplits(unit: number): readonly Split[] {
    const known = this.#splits.get(unit);
    if (known) return known;
    const found = [...this.#joinedByOneSeam(unit), ...this.#rings(unit)];
    this.#splits.set(unit, found);
    return found;
  }

  #joinedByOneSeam(unit: number): readonly Split[] {
    const found: Split[] = [];
    const rest = unit & ~(unit & -unit);
    // every part that has the unit's lowest patch
    for (let more = (rest - 1) & rest; ; more = (more - 1) & rest) {
      const a = (unit & -unit) | more;
      const b = unit & ~a;
      if (b !== 0 && this.#isDisc(a) && this.#isDisc(b)) {
        const split = this.#seamBetween(a, b);
        if (split) found.push(split);
      }
      if (more === 0) break;
    }
    return found;
  }

  /** A unit is one piece of cloth without a hole or a pinch. */
  #isDisc(set: number): boolean {
    const known = this.#discs.get(set);
    if (known !== undefined) return known;
    const rim = this.#board.edges.filter(({ hands }) => hands.filter((patch) => has(set, patch)).length === 1);
    const walk = walkOf(rim);
    const corners = walk?.map((c) => this.#board.corners[c] as Point) ?? [];
    const area = patchesIn(set).reduce((all, patch) => all + signedArea(this.#outlines[patch] as Polygon), 0);
    const isDisc = walk !== null && Math.abs(Math.abs(signedArea(corners.slice(1))) - area) < 1e-6;
    this.#discs.set(set, isDisc);
    return isDisc;
  }

  #shared(a: number, b: number): readonly Edge[] {
    return this.#board.edges.filter(
      ({ hands: [p, q] }) =>
        q !== undefined && ((has(a, p as number) && has(b, q)) || (has(b, p as number) && has(a, q))),
    );
  }

  #seamBetween(a: number, b: number): Split | null {
    const walk = walkOf(this.#shared(a, b));
    if (!walk || walk[0] === walk.at(-1)) return null;
    const at = (i: number): Point => this.#board.corners[walk[i] as number] as Point;
    const turns = walk
      .map((_, i) => i)
      .filter((i) => i > 0 && i + 1 < walk.length && !isStraightAt(at(i - 1), at(i), at(i + 1)));
    const stops = [0, ...turns, walk.length - 1];
    const runs = stops.slice(1).map((to, i) => lineOf(at(stops[i] as number), at(to)));
    const longest = Math.max(...runs.map((run) => run.long));
    const run = runs
      .filter(({ long }) => long > longest * (1 - 1e-6))
      .reduce((m, n) => ((n.lie - m.lie || m.place - n.place) < 0 ? n : m));
    // the part that lies above or left of the longest run comes first: look at the patches along it
    const beside = this.#shared(a, b).find((edge) =>
      [edge.a, edge.b].every((c) => isOnRun(this.#board.corners[c] as Point, run)),
    ) as Edge;
    const upper = beside.hands.reduce((p, q) => (this.#isUpper(p, beside, run) ? p : q));
    const first = has(a, upper) ? a : b;
    return { parts: [first, first === a ? b : a], corners: turns.length, rings: 0, lie: run.lie, place: run.place };
  }

  /** Whether the patch lies on the edge's upper (or left) hand. */
  #isUpper(patch: number, edge: Edge, run: Line): boolean {
    const outline = this.#outlines[patch] as Polygon;
    const [p, q] = [this.#board.corners[edge.a], this.#board.corners[edge.b]] as [Point, Point];
    const middle = between(p, q, 0.5);
    // outlines run clockwise: walked so, the patch lies on the right hand
    const side = outline.findIndex((from, i) => isStraightAt(from, middle, outline[(i + 1) % outline.length] as Point));
    const [from, to] = [outline[side], outline[(side + 1) % outline.length]] as [Point, Point];
    return run.lie === 0 ? to.x < from.x : to.y > from.y;
  }

  /** Units round a middle, each of whose seams lies on the middle and on the unit before it, all in one line. */
  #rings(unit: number): readonly Split[] {
    const found: Split[] = [];
    for (let middle = (unit - 1) & unit; middle > 0; middle = (middle - 1) & unit) {
      const isInside = this.#board.edges.every(
        ({ hands }) => !hands.some((p) => has(middle, p)) || (hands.length === 2 && hands.every((p) => has(unit, p))),
      );
      if (isInside && this.#isDisc(middle)) this.#ringsRound(middle, unit & ~middle, [], found);
    }
    return found;
  }

  #ringsRound(middle: number, left: number, arms: readonly number[], found: Split[]): void {
    if (left === 0) {
      if (arms.length >= 3 && this.#isRing(middle, arms))
        found.push({ parts: [middle, ...arms], corners: 0, rings: 1, lie: 3, place: 0 });
      return;
    }
    for (let arm = left; arm > 0; arm = (arm - 1) & left) {
      // the first arm has the lowest patch
      if (arms.length === 0 && lowest(arm) !== lowest(left)) continue;
      if (!this.#isDisc(arm)) continue;
      const before = arms.at(-1);
      if (before === undefined || this.#isStraightSeam(arm, middle, before))
        this.#ringsRound(middle, left & ~arm, [...arms, arm], found);
    }
  }

  #isRing(middle: number, arms: readonly number[]): boolean {
    return arms.every((arm, i) => {
      const before = arms[(i + arms.length - 1) % arms.length] as number;
      const others = arms.filter((_, k) => k !== i && k !== (i + 1) % arms.length && arms[k] !== before);
      return (
        this.#isStraightSeam(arm, middle, before) && others.every((other) => this.#shared(arm, other).length === 0)
      );
    });
  }

  #isStraightSeam(arm: number, middle: number, before: number): boolean {
    if (this.#shared(arm, middle).length === 0 || this.#shared(arm, before).length === 0) return false;
    const walk = walkOf(this.#shared(arm, middle | before));
    if (!walk) return false;
    const corners = walk.map((c) => this.#board.corners[c] as Point);
    return corners.every(
      (p, i) =>
        i === 0 || i + 1 === corners.length || isStraightAt(corners[i - 1] as Point, p, corners[i + 1] as Point),
    );
  }

  /** The same text for units that are the same but for a turn: least over all turns that bring a farthest corner up. */
  #formOf(unit: number): string {
    const known = this.#forms.get(unit);
    if (known !== undefined) return known;
    const patches = patchesIn(unit);
    const all = patches.flatMap((patch) => this.#outlines[patch] as Polygon);
    const areas = patches.map((patch) => signedArea(this.#outlines[patch] as Polygon));
    const whole = areas.reduce((sum, area) => sum + area, 0);
    const middle = patches
      .map((patch) => centroid(this.#outlines[patch] as Polygon))
      .reduce(
        (sum, c, i) => ({
          x: sum.x + (c.x * (areas[i] as number)) / whole,
          y: sum.y + (c.y * (areas[i] as number)) / whole,
        }),
        { x: 0, y: 0 },
      );
    const far = Math.max(...all.map((p) => distance(p, middle)));
    const texts = all
      .filter((p) => distance(p, middle) > far - 1e-6)
      .map((p) => {
        const turn = Math.atan2(p.y - middle.y, p.x - middle.x);
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        const marks = patches.map((patch) => {
          const points = (this.#outlines[patch] as Polygon).map((q) => {
            const [x, y] = [q.x - middle.x, q.y - middle.y];
            return `${Math.floor((x * c + y * s) * 1e4 + 0.3183)},${Math.floor((y * c - x * s) * 1e4 + 0.3183)}`;
          });
          return `${this.#kindOf[patch]}:${points.sort().join(' ')}`;
        });
        return marks.sort().join('|');
      });
    const form = texts.sort()[0] as string;
    this.#forms.set(unit, form);
    return form;
  }
}

interface Line {
  readonly from: Point;
  readonly to: Point;
  readonly long: number;
  readonly lie: number;
  readonly place: number;
}

/** Level, upright or slanted, and how far down (level) or right it lies: where a slanted one crosses the top. */
const lineOf = (from: Point, to: Point): Line => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const lie = Math.abs(dy) < 1e-6 ? 0 : Math.abs(dx) < 1e-6 ? 1 : 2;
  return { from, to, long: distance(from, to), lie, place: lie === 0 ? from.y : from.x - (from.y * dx) / dy };
};

const isOnRun = (p: Point, run: Line): boolean => distance(run.from, p) + distance(p, run.to) - run.long < 1e-7;

const slack = 12e-6;

const planned = (outlines: readonly Polygon[], kindOf: readonly number[]): Cost & { readonly isProven: boolean } => {
  const graph = graphOf(outlines, slack);
  const convexOutline = convexOutlines(outlines, slack);
  const tree = planJoins(
    {
      drawing: drawingOf(outlines, slack),
      graph: () => graph,
      formOf: formSorter({ patches: outlines, kindOf, size: 12 }),
      kindOf,
      isConvex: (unit) => convexOutline(unit) !== null,
      isCurved: false,
      centres: outlines.map(centroid),
    },
    outlines.map((_, i) => i),
  );
  const joins = [...tree.joins.values()];
  const of = (form: number): readonly [number, number, number] => {
    const join = tree.joins.get(form) as Join;
    const parts = join.branches.map((branch) => ('form' in branch ? of(branch.form) : ([0, 0, 0] as const)));
    return [
      parts.reduce((all, part) => all + part[0], join.kind === 'seam' ? join.bends : 0),
      parts.reduce((all, part) => all + part[1], join.kind === 'ring' ? 1 : 0),
      1 + Math.max(...parts.map((part) => part[2])),
    ];
  };
  const [corners, rings, depth] = of(tree.root);
  return {
    corners,
    rings,
    units: joins.length,
    depth,
    lies: joins.map((join) => (join.kind === 'ring' ? 3 : join.line.lie)),
    places: joins.map((join) => (join.kind === 'ring' ? 0 : join.line.place)),
    isProven: tree.leastUnits === 'proven',
  };
};

const runs = Math.ceil(2000 / tilings.length);

const kindsIn = (outlines: readonly Polygon[], fabrics: readonly string[]): readonly number[] =>
  kindsOf(
    outlines.map((points, i) => ({ points, fabric: fabrics[i] as string })),
    length(12),
  );

const checkSeed = (tiling: Tiling, seed: number): void => {
  const { outlines, fabrics } = mergedBlock({ tiling, seed, most: 9 });
  const kindOf = kindsIn(outlines, fabrics);
  const { isProven, ...found } = planned(outlines, kindOf);
  const least = new Twin(outlines, kindOf).least();
  const where = `${tiling} ${seed}, ${outlines.length} patches: ${JSON.stringify(found)} for ${JSON.stringify(least)}`;
  assert.equal(Math.sign(compare(found, least)), 0, where);
  assert.equal(found.corners + found.rings + found.depth, least.corners + least.rings + least.depth, where);
  assert.ok(isProven, where);
};

for (const tiling of tilings) {
  test(`${tiling}: the planned order costs what the least of all orders costs, cost by cost`, () => {
    for (let seed = 1; seed <= runs; seed++) checkSeed(tiling, seed);
  });
}
