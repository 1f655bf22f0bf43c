import assert from 'node:assert/strict';
import { test } from 'node:test';
import { graphOf, type PatchGraph } from '#craft/piecing';
import {
  cutAlong,
  type Drawn,
  type DrawnPatch,
  dividedAlike,
  edgesIn,
  joined,
  laidCurve,
  quarterRise,
  slackOf,
} from '#craft/redrawing';
import { type Edge, edgeDirection, pointOnArc, reversedEdge, sweepOf } from '#ground/arc';
import { chanceFrom } from '#ground/chance';
import { at, distance, type Point } from '#ground/plane';
import { adviceForCurves } from './index.ts';

const grid = [4, 4] as const;
const slack = slackOf(grid);

// The slow twin: every way to part a unit in two, each seam judged by itself, and its own lines.

type Patches = readonly DrawnPatch[];

const graphIn = (patches: Patches): PatchGraph =>
  graphOf(
    patches.map(({ points }) => points),
    slack,
    patches.map(({ arcs = [] }) => arcs),
  );

/** The edges between two parts in order, as one path; null where they make none. */
const pathBetween = ({ corners, edges }: PatchGraph, a: ReadonlySet<number>, b: ReadonlySet<number>): Edge[] | null => {
  const shared = edges.filter(({ left, right }) => (a.has(left) && b.has(right)) || (b.has(left) && a.has(right)));
  const ends = new Map<number, typeof shared>();
  for (const edge of shared) for (const end of [edge.from, edge.to]) ends.set(end, [...(ends.get(end) ?? []), edge]);
  const loose = [...ends].filter(([, own]) => own.length === 1).map(([corner]) => corner);
  if (loose.length !== 2 || [...ends.values()].some((own) => own.length > 2)) return null;
  const path: Edge[] = [];
  const left = new Set(shared);
  for (let here = loose[0] as number; ; ) {
    const next = ends.get(here)?.find((edge) => left.has(edge));
    if (next === undefined) break;
    left.delete(next);
    const own: Edge = {
      from: corners[next.from] as Point,
      to: corners[next.to] as Point,
      arc: next.bow?.arc ?? null,
      chords: [],
    };
    path.push(next.from === here ? own : reversedEdge(own));
    here = next.from === here ? next.to : next.from;
  }
  return left.size === 0 ? path : null;
};

const isSmooth = (path: readonly Edge[]): boolean => {
  let turn = 0;
  return path.every((edge, i) => {
    const before = path[i - 1];
    if (before !== undefined) {
      const [p, q] = [edgeDirection(before, 'to'), edgeDirection(edge, 'from')];
      if (p.x * q.x + p.y * q.y < Math.cos(Math.PI / 90)) return false;
    }
    if (edge.arc === null) return true;
    const sweep = sweepOf(edge.arc) * (edge.arc.clockwise ? 1 : -1);
    turn = turn * sweep > 0 ? turn + sweep : sweep;
    return Math.abs(turn) < Math.PI + 1e-3;
  });
};

const isSewn = (patches: Patches): boolean => {
  const graph = graphIn(patches);
  const known = new Map<number, boolean>();
  const sewn = (unit: number): boolean => {
    const own = patches.flatMap((_, i) => ((unit >> i) & 1 ? [i] : []));
    if (own.length < 2) return true;
    const before = known.get(unit);
    if (before !== undefined) return before;
    let found = false;
    for (let part = (unit - 1) & unit; part > 0 && !found; part = (part - 1) & unit) {
      if (part < (unit & ~part)) continue;
      const other = unit & ~part;
      const [a, b] = [part, other].map((bits) => new Set(own.filter((i) => (bits >> i) & 1))) as [
        Set<number>,
        Set<number>,
      ];
      const path = pathBetween(graph, a, b);
      found = path !== null && isSmooth(path) && sewn(part) && sewn(other);
    }
    known.set(unit, found);
    return found;
  };
  return sewn(2 ** patches.length - 1);
};

const off = (a: Point, b: Point, p: Point): number =>
  ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / distance(a, b);

const near = 1e-4;

const linesOf = (patches: Patches): readonly (readonly [Point, Point])[] => {
  const edges = patches.flatMap(edgesIn);
  const places = edges.flatMap(({ from, arc }) => (arc === null ? [from] : [from, pointOnArc(arc, 0.5)]));
  const all = [...places, ...edges.flatMap(({ arc }) => arc?.centre ?? [])];
  const lines: (readonly [Point, Point])[] = [];
  for (const a of places) {
    for (const b of all) {
      if (
        distance(a, b) < near ||
        lines.some(([c, d]) => Math.abs(off(c, d, a)) < near && Math.abs(off(c, d, b)) < near)
      )
        continue;
      lines.push([a, b]);
    }
  }
  return lines;
};

const around = (patch: DrawnPatch): number =>
  edgesIn(patch).reduce((all, { from, to, arc }) => all + (arc === null ? distance(from, to) : 0), 0);

/** Along each line, in any of the patches that it crosses: what the drawing is then, and how much longer its seams. */
const cutsOf = (patches: Patches): readonly { readonly patches: Patches; readonly length: number }[] =>
  linesOf(patches).flatMap(([a, b]) => {
    const long = distance(a, b);
    const [dx, dy] = [((b.x - a.x) * 20) / long, ((b.y - a.y) * 20) / long];
    const run = [at(a.x - dx, a.y - dy), at(b.x + dx, b.y + dy)];
    const crossed = patches
      .map((patch) => ({ patch, parts: cutAlong([patch], run, slack).patches }))
      .filter(({ parts }) => parts.length > 1)
      .map(({ patch, parts }) => ({
        patch,
        parts,
        length: (parts.reduce((all, part) => all + around(part), 0) - around(patch)) / 2,
      }));
    return Array.from({ length: 2 ** crossed.length - 1 }, (_, i) => {
      const taken = crossed.filter((__, k) => ((i + 1) >> k) & 1);
      return {
        patches: dividedAlike(
          [
            ...patches.filter((patch) => !taken.some((one) => one.patch === patch)),
            ...taken.flatMap(({ parts }) => parts),
          ],
          slack,
        ),
        length: taken.reduce((all, one) => all + one.length, 0),
      };
    });
  });

const leastOf = (patches: Patches, lines: 1 | 2): number =>
  Math.min(
    ...cutsOf(patches).map((cut) => {
      if (lines === 1) return isSewn(cut.patches) ? cut.length : Number.POSITIVE_INFINITY;
      return cut.length + leastOf(cut.patches, 1);
    }),
    Number.POSITIVE_INFINITY,
  );

/** Curves and lines from place to place of a grid of four, some of them taken out again. */
const drawing = (seed: number, most: number): Drawn => {
  const chance = chanceFrom(seed);
  const pick = (count: number): number => Math.floor(chance() * count);
  let drawn: Drawn = { grid, patches: [{ points: [at(0, 0), at(4, 0), at(4, 4), at(0, 4)], tone: '' }] };
  for (let tries = 0; tries < 60 && drawn.patches.length < most + 2; tries++) {
    const [from, to] = [at(pick(5), pick(5)), at(pick(5), pick(5))];
    if (distance(from, to) < 0.5) continue;
    const rise = [0, 1, -1][pick(3)] as number;
    const laid = laidCurve(drawn, { from, to, rise: rise * quarterRise(distance(from, to)), way: 'rule' });
    if (laid.ok) drawn = { grid, patches: laid.value.patches };
  }
  for (let tries = 0; tries < 30 && drawn.patches.length > most; tries++) {
    const patches = joined(drawn.patches, [pick(drawn.patches.length), pick(drawn.patches.length)], slack);
    if (patches !== null) drawn = { grid, patches };
  }
  return drawn;
};

test('what is sewn along straight seams and smooth curves needs no advice; all else is told lines, or that none are found', () => {
  const counts = { none: 0, one: 0 };
  for (let seed = 1; seed <= 40; seed++) {
    const { patches } = drawing(seed, 4);
    if (patches.length > 5) continue;
    const found = adviceForCurves(patches, slack);
    assert.equal(found.kind === 'none-needed', isSewn(patches), `seed ${seed}`);
    if (found.kind === 'none-needed') {
      counts.none += 1;
      continue;
    }
    const least = leastOf(patches, 1);
    const lines = found.kind === 'lines' ? found.advice.lines.length : 0;
    assert.equal(lines === 1, Number.isFinite(least), `seed ${seed}`);
    if (lines !== 1 || found.kind !== 'lines') continue;
    counts.one += 1;
    assert.ok(Math.abs(found.advice.length - least) < 1e-3, `seed ${seed}: ${found.advice.length} for ${least}`);
    assert.ok(found.advice.isLeast);
    const seams = found.advice.lines.flatMap((line) => line.seams);
    const taken = seams.reduce((all, seam) => cutAlong(all, seam, slack).patches, patches);
    assert.ok(isSewn(taken), `seed ${seed}`);
  }
  assert.ok(counts.none > 8 && counts.one > 3, JSON.stringify(counts));
});
