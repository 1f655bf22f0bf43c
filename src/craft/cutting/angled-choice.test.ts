import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Print } from '#craft/fabric';
import { length } from '#craft/measure';
import { rational } from '#ground/exact';
import { at, boxOf, type Polygon, signedArea, turned } from '#ground/plane';
import { straightOnEdge } from './angled-grain.ts';
import type { ClothNature } from './cloth.ts';
import { cutFor } from './cut.ts';
import { ledgerOf, type Wanted } from './ledger.ts';

const rule = { seam: length(0.25), ruler: rational(1, 8) };
const cloth = (of: Partial<ClothNature> = {}): ClothNature => ({
  width: length(40),
  length: null,
  print: 'none',
  printRuns: 'lengthwise',
  reversible: false,
  ...of,
});

const wantOf = (outline: Polygon, count: number, turn: Wanted<object>['turn'] = 0): Wanted<{ name: string }> => ({
  fabric: 'oat',
  cut: cutFor(outline, rule),
  lie: 'free',
  turn,
  count,
  use: { name: 'piece' },
  path: '/blocks/0',
});

const linesOf = (wanted: readonly Wanted<{ name: string }>[], nature: ClothNature) => {
  const { lines, problems } = ledgerOf(wanted, new Map([['oat', nature]]));
  assert.deepEqual(problems, []);
  return lines.get('oat') ?? [];
};

const areaOf = (lines: ReturnType<typeof linesOf>): number =>
  lines.reduce((all, { cut, count }) => all + cut[0] * cut[1] * count, 0);

const starSide = 12 / (2 + Math.SQRT2);
const slant = starSide * Math.SQRT1_2;
const star: Polygon = [at(slant, 0), at(slant + starSide, 0), at(starSide, slant), at(0, slant)];
/** Half a hexagon with sides of 2 in. */
const half: Polygon = [at(1, 0), at(3, 0), at(4, Math.sqrt(3)), at(0, Math.sqrt(3))];
const mirrored = (outline: Polygon): Polygon => outline.map((p) => at(-p.x, p.y)).toReversed();

test('twenty diamonds of the star take two strips as full as the cloth is wide and one for the last four', () => {
  // by hand: 8 in 40 in, so 2 strips of 8, 8·3√2 + 3 = 36.94, up to 37, and 4 more: 4·3√2 + 3 = 19.97, up to 20
  const lines = linesOf([wantOf(star, 20)], cloth());
  assert.deepEqual(
    lines.map(({ cut, shape, gives, count, uses }) => [...cut, shape, gives, count, uses[0]?.count]),
    [
      [37, 3, 'angled', 8, 2, 16],
      [20, 3, 'angled', 4, 1, 4],
    ],
  );
});

test('a diamond that lies slanted in its block shares the strips of one that lies level', () => {
  const lines = linesOf(
    [
      wantOf(star, 5),
      wantOf(
        star.map((p) => turned(p, Math.PI / 4)),
        3,
      ),
    ],
    cloth(),
  );
  // by hand: 8 of one kind fill a strip
  assert.deepEqual(
    lines.map(({ count, gives, uses }) => [count, gives, uses.map((use) => use.count)]),
    [[1, 8, [5, 3]]],
  );
});

test('one piece alone keeps its template, for a strip would be no smaller than its box', () => {
  // by hand: its box is 6 5/8 by 3, tips trimmed; a strip for one is 3√2 + 3 long, up to 7 1/4
  assert.deepEqual(
    linesOf([wantOf(star, 1)], cloth()).map(({ shape, count }) => [shape, count]),
    [['template', 1]],
  );
});

test('a one-way print keeps parallel cuts and refuses those by turns, a two-way print allows both', () => {
  const shapes = (print: Print, outline: Polygon) =>
    linesOf([wantOf(outline, 16)], cloth({ print })).map((l) => l.shape);
  assert.ok(shapes('one-way', star).every((shape) => shape === 'angled'));
  assert.ok(shapes('one-way', half).every((shape) => shape === 'template'));
  assert.ok(shapes('two-way', half).every((shape) => shape === 'angled'));
});

test('where a print stands upright, strips of a block that lies on its side are cut lengthwise', () => {
  // by hand: turned by a quarter, the level side of the diamond stands along the cloth; 120 of 9√2 square inches each would
  // make a square of 39.1 in, so that 8 to a strip, in 37 in, are not too long
  const [line] = linesOf([wantOf(star, 120, 90)], cloth({ print: 'two-way' }));
  assert.deepEqual([...(line?.cut ?? []), line?.count, line?.mayTurn], [3, 37, 15, false]);
  const box = boxOf((line?.outlines ?? []).flat());
  assert.ok(box.x > -1e-9 && box.x + box.width < 3 + 1e-9 && box.y > -1e-9 && box.y + box.height < 40);
});

test('mirror images have strips of their own, but share them in a cloth without a right side', () => {
  const leaning: Polygon = [at(2, 0), at(8, 0), at(6, 2), at(0, 2)];
  const both = [wantOf(leaning, 6), wantOf(mirrored(leaning), 6)];
  const apart = linesOf(both, cloth());
  const one = linesOf(both, cloth({ reversible: true }));
  assert.ok(apart.every(({ uses }) => uses.length === 1));
  assert.ok(one.some(({ uses }) => uses.length === 2));
});

test('five odd templates lie in two pairs and one alone', () => {
  // by hand: a quarter of a disc in four corners; it has no strip, and two nest in less than two boxes
  const odd: Polygon = [at(0, 0), at(6, 0), at(5, 3), at(0, 6)];
  const lines = linesOf([wantOf(odd, 5)], cloth());
  assert.deepEqual(lines.map(({ shape, gives, count }) => [shape, gives, count]).sort(), [
    ['template', 1, 1],
    ['template', 2, 2],
  ]);
  const upright = linesOf([wantOf(odd, 5)], cloth({ print: 'one-way' }));
  assert.deepEqual(
    upright.map(({ gives, count }) => [gives, count]),
    [[1, 5]],
  );
});

test('a template turned by a half turn is the same, in a cloth whose print has no way', () => {
  // by hand: two of each are four alike, two pairs on one line; under a print with a top they are two kinds
  const odd: Polygon = [at(0, 0), at(6, 0), at(5, 3), at(0, 6)];
  const half = odd.map((p) => at(6 - p.x, 6 - p.y));
  const lines = (print: Print) => linesOf([wantOf(odd, 2), wantOf(half, 2)], cloth({ print }));
  assert.deepEqual(
    lines('none').map(({ gives, count }) => [gives, count]),
    [[2, 2]],
  );
  assert.equal(lines('one-way').length, 2);
});

test('no side on the block’s edge comes to lie on the bias', () => {
  // by hand: the slanted side of the half hexagon lies along the edge of the block, so its parallel sides are slanted there
  const onEdge = half.map((p) => turned(p, -Math.PI / 3));
  const box = boxOf(onEdge);
  const placed = onEdge.map((p) => at(p.x - box.x, p.y - box.y));
  const size = [box.width, box.height] as const;
  const kept = (outlines: readonly Polygon[], block: readonly [number, number]) =>
    straightOnEdge(cutFor(placed, rule), { outlines, size: block, rule }).ways?.length;
  assert.equal(kept([placed], size), 0);
  const inside = placed.map((p) => at(p.x + 1, p.y + 1));
  assert.equal(kept([inside], [box.width + 2, box.height + 2]), 1);
  // an equilateral triangle is like itself turned: its level side lies along the strip
  const level: Polygon = [at(2, 0), at(4, 2 * Math.sqrt(3)), at(0, 2 * Math.sqrt(3))];
  const thirds = straightOnEdge(cutFor(level, rule), { outlines: [level], size: [4, 2 * Math.sqrt(3)], rule });
  assert.deepEqual(
    thirds.ways?.map(({ edge }) => edge),
    ['outward', 'outward', 'outward'],
  );
  // one of several that lie turned is enough
  assert.equal(kept([inside, placed], [box.width + 2, box.height + 2]), 0);
});

const corner = fc
  .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }))
  .map(([x, y]) => at(x / 4, y / 4));
const outline = fc
  .oneof(
    fc.tuple(corner, corner, corner).map((corners): Polygon => corners),
    fc
      .tuple(
        fc.integer({ min: 2, max: 30 }),
        fc.integer({ min: 2, max: 30 }),
        fc.integer({ min: 2, max: 20 }),
        fc.integer({ min: -20, max: 20 }),
      )
      .map(([b, t, h, l]): Polygon => [at(l / 4, 0), at((l + t) / 4, 0), at(b / 4, h / 4), at(0, h / 4)]),
  )
  .map((points) => (signedArea(points) < 0 ? points.toReversed() : points))
  .filter((points) => signedArea(points) > 0.5);

test('of every kind just as many are cut as are wanted, on no more cloth than in boxes of one, within the cloth', () => {
  const print = fc.constantFrom<Print>('none', 'two-way', 'one-way');
  const kinds = fc.array(fc.tuple(outline, fc.integer({ min: 1, max: 60 })), { minLength: 1, maxLength: 3 });
  fc.assert(
    fc.property(kinds, print, fc.boolean(), (list, way, reversible) => {
      const wanted = list.map(([points, count]) => wantOf(points, count));
      const nature = cloth({ print: way, reversible });
      const lines = linesOf(wanted, nature);
      for (const { cut, count, gives, uses, outlines, shape } of lines) {
        const pieces = uses.reduce((all, use) => all + use.count, 0);
        assert.equal(count, Math.ceil(pieces / gives));
        if (shape === 'angled' || outlines.length > 0) assert.equal(count * gives, pieces);
        if (outlines.length > 0) assert.equal(outlines.length, gives);
        const box = outlines.length > 0 ? boxOf(outlines.flat()) : { x: 0, y: 0, width: 0, height: 0 };
        assert.ok(box.x > -1e-9 && box.y > -1e-9);
        assert.ok(box.width <= cut[0] + 1e-9 && box.height <= cut[1] + 1e-9 && cut[0] <= nature.width);
      }
      const all = lines.flatMap(({ uses }) => uses).reduce((sum, use) => sum + use.count, 0);
      assert.equal(
        all,
        list.reduce((sum, [, count]) => sum + count, 0),
      );
      const boxes = wanted.map((want) => ({ ...want, cut: { ...want.cut, ways: [], pair: null } }));
      assert.ok(areaOf(lines) <= areaOf(linesOf(boxes, nature)) + 1e-6);
    }),
    { seed: 63, numRuns: 200 },
  );
});
