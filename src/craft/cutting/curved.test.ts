import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { type Length, length } from '#craft/measure';
import { type Arc, chordPoints, edgesOf, isOnArc, type Outline, outlineBox, pointOnArc, radiusOf } from '#ground/arc';
import { rational } from '#ground/exact';
import { isOnSide } from '#ground/outline';
import { at, distance, type Point } from '#ground/plane';
import { curvedCut, cutEdge, tightestHollow } from './curved.ts';

const near = (found: number, expected: number, tolerance: number): void =>
  assert.ok(Math.abs(found - expected) <= tolerance, `found ${found}, expected ${expected}`);

type Corner = Point | { readonly centre: Point; readonly clockwise: boolean };

/** Corners in walking order; an arc between two corners stands between them. */
const outline = (...list: readonly Corner[]): Outline => {
  const corners = list.filter((one): one is Point => 'x' in one);
  const arcs: Arc[] = [];
  const points = list.flatMap((one, i): readonly Point[] => {
    if ('x' in one) return [one];
    const arc: Arc = { ...one, from: list[i - 1] as Point, to: (list[i + 1] ?? corners[0]) as Point };
    arcs.push(arc);
    return chordPoints(arc, 1e-4);
  });
  return { points, arcs };
};
const round = (x: number, y: number): Corner => ({ centre: at(x, y), clockwise: true });
const hollow = (x: number, y: number): Corner => ({ centre: at(x, y), clockwise: false });

const shapes: readonly (readonly [string, Outline])[] = [
  ['a quarter of a circle', outline(at(0, 0), at(3, 0), round(0, 0), at(0, 3))],
  ['a square without a quarter of a circle', outline(at(3, 0), at(4, 0), at(4, 4), at(0, 4), at(0, 3), hollow(0, 0))],
  ['a melon', outline(at(0, 0), round(0, 4), at(4, 4), round(4, 0))],
  ['the corner beside a melon, with two tips without any angle', outline(at(0, 0), hollow(4, 0), at(4, 4), at(0, 4))],
  ['a half-circle', outline(at(0, 2), round(2, 2), at(4, 2))],
  ['a wave along one side', outline(at(0, 1), round(1, 1), at(2, 1), hollow(3, 1), at(4, 1), at(4, 4), at(0, 4))],
  ['a clamshell', outline(at(0, 2), round(2, 2), at(4, 2), hollow(4, 4), at(2, 4), hollow(0, 4))],
];

const isOnEdge = (p: Point, { points, arcs }: Outline, slack: number): boolean =>
  edgesOf({ points, arcs }).some(({ from, to, arc }) =>
    arc === null ? isOnSide(p, [from, to], slack) : isOnArc(p, arc, slack),
  );

/** Places along the true outline, with the way out of it there; not at its corners. */
const sampled = (of: Outline): readonly { readonly on: Point; readonly out: Point }[] =>
  edgesOf(of).flatMap(({ from, to, arc }) =>
    Array.from({ length: 25 }, (_, i) => (i + 0.5) / 25).map((share) => {
      if (arc === null) {
        const long = distance(from, to);
        const on = at(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
        return { on, out: at((to.y - from.y) / long, -(to.x - from.x) / long) };
      }
      const on = pointOnArc(arc, share);
      const sign = (arc.clockwise ? 1 : -1) / radiusOf(arc);
      return { on, out: at((on.x - arc.centre.x) * sign, (on.y - arc.centre.y) * sign) };
    }),
  );

const fromOutline = (p: Point, of: Outline): number =>
  Math.min(
    ...edgesOf(of).flatMap(({ from, to, arc }) => {
      const ends = [distance(p, from), distance(p, to)];
      if (arc !== null) {
        const onCircle = Math.abs(distance(p, arc.centre) - radiusOf(arc));
        const way = at(arc.centre.x + ((p.x - arc.centre.x) * radiusOf(arc)) / distance(p, arc.centre), 0);
        const foot = at(way.x, arc.centre.y + ((p.y - arc.centre.y) * radiusOf(arc)) / distance(p, arc.centre));
        return isOnArc(foot, arc, 1e-9) ? [onCircle, ...ends] : ends;
      }
      const long = distance(from, to);
      const along = ((p.x - from.x) * (to.x - from.x) + (p.y - from.y) * (to.y - from.y)) / long;
      const off = Math.abs((p.x - from.x) * (to.y - from.y) - (p.y - from.y) * (to.x - from.x)) / long;
      return along >= 0 && along <= long ? [off, ...ends] : ends;
    }),
  );

/** Beside a tip without any angle the two allowances lie over each other: what is cut off there is not missed. */
const tipsOf = (name: string): readonly Point[] => (name.startsWith('the corner beside') ? [at(0, 0), at(4, 4)] : []);

for (const [name, shape] of shapes) {
  const tips = tipsOf(name);
  test(`${name} has the allowance everywhere along its seam line, and nowhere less`, () => {
    fc.assert(
      fc.property(fc.constantFrom(0.1, 0.25, 0.375), (allowance) => {
        const seam = length(allowance) as Length;
        const edge = cutEdge(shape, seam);
        for (const { on, out } of sampled(shape)) {
          const there = at(on.x + out.x * seam, on.y + out.y * seam);
          assert.ok(
            isOnEdge(there, edge, 1e-9) || tips.some((tip) => distance(tip, there) < 3 * seam),
            `${there.x}, ${there.y} is not on the cut edge of ${name}`,
          );
        }
        // chords run inside the arcs they stand for, by a ten-thousandth of an inch at the usual allowance
        for (const p of edge.points) {
          const far = fromOutline(p, shape);
          assert.ok(far > seam - 1e-9, `the cut edge comes as near as ${far}`);
        }
      }),
      { numRuns: 3 },
    );
  });
}

test('a quarter of a circle is cut from a box two allowances larger, exactly', () => {
  const cut = curvedCut(shapes[0]?.[1] as Outline, { seam: length(0.25), ruler: rational(1, 8) });
  assert.deepEqual([cut.shape, cut.exact, cut.size, cut.finished], ['template', [3.5, 3.5], [3.5, 3.5], [3, 3]]);
  // the cut edge round the same centre: radius 3 1/4, by hand
  const arc = cut.template?.arcs?.[0] as Arc;
  near(radiusOf(arc), 3.25, 1e-12);
  assert.deepEqual([cut.ways, cut.gives], [[], 1]);
});

test('both pieces of a curved seam have their marks at the same places of it', () => {
  const rule = { seam: length(0.25), ruler: rational(1, 8) };
  const [inner, outer] = shapes.slice(0, 2).map(([, shape]) => {
    const { template } = curvedCut(shape, rule);
    // from the template's box back into the block: the seam line says how far it was moved
    const [first, there] = [template?.seamLine[0] as Point, shape.points[0] as Point];
    return template?.marks?.map(({ on }) => at(on.x - first.x + there.x, on.y - first.y + there.y)) ?? [];
  }) as [Point[], Point[]];
  // 3 · π/2 = 4.71 in is shorter than 6 in: the middle alone
  assert.deepEqual([inner.length, outer.length], [1, 1]);
  near(distance(inner[0] as Point, outer[0] as Point), 0, 1e-12);
  near((inner[0] as Point).x, 3 * Math.SQRT1_2, 1e-12);
  const long = curvedCut(outline(at(0, 0), at(6, 0), round(0, 0), at(0, 6)), rule);
  assert.equal(long.template?.marks?.length, 3);
});

test('a mark runs square to the seam line, out to the cut edge', () => {
  for (const [, shape] of shapes) {
    const { template } = curvedCut(shape, { seam: length(0.25), ruler: rational(1, 8) });
    for (const { on, out } of template?.marks ?? []) {
      near(distance(on, out), 0.25, 1e-12);
      assert.ok(isOnEdge(out, { points: template?.points ?? [], arcs: template?.arcs ?? [] }, 1e-9));
    }
  }
});

test('the tightest hollow side is found, and rounded ones are none', () => {
  assert.equal(tightestHollow(shapes[0]?.[1] as Outline), Number.POSITIVE_INFINITY);
  assert.equal(tightestHollow(shapes[1]?.[1] as Outline), 3);
  assert.equal(outlineBox(shapes[5]?.[1] as Outline).height, 4);
});
