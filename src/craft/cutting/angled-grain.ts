// Which ways to cut from a strip keep bias off the block's outer edge? A side on that edge should lie along the strip's edge,
// or square to it.
import { distance, type Point, type Polygon } from '#ground/plane';
import { stripWaysFor } from './angled.ts';
import type { Cut } from './cloth.ts';
import type { CutRule } from './rule.ts';

/**
 * The cut without the ways that would bring bias to the block's edge. A template, with its grain as drawn, remains.
 *
 * @param outlines all patches of this kind of piece in the block, clockwise: they may lie turned
 * @param size     of the block, finished
 */
export const straightOnEdge = (
  cut: Cut,
  of: { readonly outlines: readonly Polygon[]; readonly size: readonly [number, number]; readonly rule: CutRule },
): Cut => {
  if (!cut.ways || cut.ways.length === 0) return cut;
  const slack = 1e-6 * Math.max(...of.size);
  const onBias = new Set<string>();
  const placed = new Set<string>();
  for (const outline of of.outlines) {
    const outer = sidesOf(outline).filter((side) => isOnEdge(side, of.size, slack));
    if (outer.length === 0) continue;
    const ways = stripWaysFor(outline, of.rule);
    // of a piece that is like itself turned, one side that does suffices
    const straight = new Set(
      ways.filter(({ side }) => outer.every((one) => isStraight(side, one))).map(({ way }) => way.key),
    );
    for (const { way, side } of ways) {
      if (!straight.has(way.key)) onBias.add(way.key);
      else if (outer.some((one) => !isStraight(side, one))) placed.add(way.key);
    }
  }
  const ways = cut.ways.filter(({ key }) => !onBias.has(key));
  return { ...cut, ways: ways.map((way) => (placed.has(way.key) ? { ...way, edge: 'outward' } : way)) };
};

type Side = readonly [Point, Point];

const sidesOf = (outline: Polygon): readonly Side[] =>
  outline.map((p, i) => [p, outline[(i + 1) % outline.length] as Point]);

const isOnEdge = ([a, b]: Side, [width, height]: readonly [number, number], slack: number): boolean => {
  const near = (p: number, q: number, edge: number): boolean =>
    Math.abs(p - edge) < slack && Math.abs(q - edge) < slack;
  return near(a.x, b.x, 0) || near(a.x, b.x, width) || near(a.y, b.y, 0) || near(a.y, b.y, height);
};

/** Parallel or square to each other. */
const isStraight = ([a, b]: Side, [c, d]: Side): boolean => {
  const both = distance(a, b) * distance(c, d);
  const along = (b.x - a.x) * (d.x - c.x) + (b.y - a.y) * (d.y - c.y);
  const square = (b.x - a.x) * (d.y - c.y) - (b.y - a.y) * (d.x - c.x);
  return Math.min(Math.abs(along), Math.abs(square)) < 1e-6 * both;
};
