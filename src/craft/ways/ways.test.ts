import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import type { CutRule } from '#craft/cutting';
import { mayTrim, type UnitKind, type WayName, waysOfKind } from '#craft/design';
import { length } from '#craft/measure';
import { rational } from '#ground/exact';
import { at, boxOf, offLine, type Point, type Polygon, quarterTurned, signedArea } from '#ground/plane';
import {
  type Face,
  layingsOf,
  outlinesOf,
  rowsIn,
  type Stage,
  stageFor,
  type Unit,
  unitKey,
  unitsIn,
  type Way,
  wayFor,
} from './index.ts';

const inches: CutRule = { seam: length(0.25), ruler: rational(1, 8) };
const centimetres: CutRule = { seam: length(0.75), ruler: rational(1, 10) };

interface Drawn {
  readonly points: Polygon;
  readonly fabric: string;
}

const patch = (fabric: string, ...corners: readonly (readonly [number, number])[]): Drawn => ({
  fabric,
  points: corners.map(([x, y]) => at(x, y)),
});

/** Units as a drawing has them, w wide: written down here once more, by hand. */
const drawings: Readonly<Record<UnitKind, (w: number) => readonly Drawn[]>> = {
  'half-square': (w) => [patch('oat', [0, 0], [w, 0], [0, w]), patch('bark', [w, 0], [w, w], [0, w])],
  'quarter-square': (w) => [
    patch('oat', [0, 0], [w, 0], [w / 2, w / 2]),
    patch('bark', [w, 0], [w, w], [w / 2, w / 2]),
    patch('oat', [w, w], [0, w], [w / 2, w / 2]),
    patch('bark', [0, w], [0, 0], [w / 2, w / 2]),
  ],
  'flying-geese': (w) => [
    patch('bark', [w / 2, 0], [w, w / 2], [0, w / 2]),
    patch('oat', [0, 0], [w / 2, 0], [0, w / 2]),
    patch('oat', [w / 2, 0], [w, 0], [w, w / 2]),
  ],
  'square-in-square': (w) => [
    patch('bark', [w / 2, 0], [w, w / 2], [w / 2, w], [0, w / 2]),
    patch('oat', [0, 0], [w / 2, 0], [0, w / 2]),
    patch('oat', [w / 2, 0], [w, 0], [w, w / 2]),
    patch('oat', [w, w / 2], [w, w], [w / 2, w]),
    patch('oat', [w / 2, w], [0, w], [0, w / 2]),
  ],
  'sewn-corners': (w) => [
    patch('bark', [w / 4, 0], [w, 0], [w, w / 3], [w - w / 3, (2 * w) / 3], [0, (2 * w) / 3], [0, w / 4]),
    patch('oat', [0, 0], [w / 4, 0], [0, w / 4]),
    patch('sand', [w, w / 3], [w, (2 * w) / 3], [w - w / 3, (2 * w) / 3]),
  ],
  rails: (w) => [
    patch('oat', [0, 0], [w / 4, 0], [w / 4, w], [0, w]),
    patch('bark', [w / 4, 0], [w / 2, 0], [w / 2, w], [w / 4, w]),
    patch('sand', [w / 2, 0], [w, 0], [w, w], [w / 2, w]),
  ],
  'four-patch': (w) => chequered(w, 2),
  'nine-patch': (w) => chequered(w, 3),
};

const chequered = (w: number, side: number): readonly Drawn[] =>
  Array.from({ length: side * side }, (_, i) => {
    const [x, y, one] = [((i % side) * w) / side, (Math.floor(i / side) * w) / side, w / side];
    return patch(
      (i + Math.floor(i / side) * (side === 2 ? 1 : 0)) % 2 === 0 ? 'oat' : 'bark',
      [x, y],
      [x + one, y],
      [x + one, y + one],
      [x, y + one],
    );
  });

const turnedBy = (quarters: number, drawn: readonly Drawn[]): readonly Drawn[] => {
  const turned = drawn.map(({ fabric, points }) => ({ fabric, points: points.map((p) => quarterTurned(p, quarters)) }));
  const { x, y } = boxOf(turned.flatMap(({ points }) => points));
  return turned.map(({ fabric, points }) => ({ fabric, points: points.map((p) => at(p.x - x + 2, p.y - y + 5)) }));
};

const only = <T>(list: readonly T[]): T => {
  assert.equal(list.length, 1);
  return list[0] as T;
};

const unitOf = (kind: UnitKind, w: number): Unit => only(unitsIn(drawings[kind](w), 1e-6 * w));

/** Twenty units from cloth 40 wide. */
const roomFor = ({ patches }: Unit) => ({ units: 20, widths: patches.map(() => length(40)) });

const wayOf = (unit: Unit, name: WayName, trimmed: boolean, rule: CutRule): Way => {
  const way = wayFor({ unit, name, trimmed, rule, room: roomFor(unit) });
  assert.notEqual(typeof way, 'string', `${name} is refused: ${String(way)}`);
  return way as Way;
};

const kinds = Object.keys(drawings) as UnitKind[];

/** Every way to make it in stages, each exact and, where that may be, with room. */
const waysOf = (kind: UnitKind): readonly (readonly [WayName, boolean])[] =>
  waysOfKind[kind]
    .filter((name) => name !== 'singly')
    .flatMap((name) => [[name, false] as const, ...(mayTrim(kind, name) ? [[name, true] as const] : [])]);

/** The places that each stage joins, in an order of sewing. */
const joinsOf = ({ kind, patches }: Unit): readonly (readonly [readonly number[], readonly number[]])[] => {
  switch (kind) {
    case 'four-patch':
      return [[[0], [1]]];
    case 'nine-patch':
      return [
        [[3], [4]],
        [[3, 4], [5]],
        [[0], [1]],
        [[0, 1], [2]],
      ];
    case 'half-square':
      return [[[0], [1]]];
    case 'quarter-square':
      return [
        [[0], [1]],
        [[2], [3]],
        [
          [0, 1],
          [2, 3],
        ],
      ];
    default:
      return patches.slice(1).map((_, i) => [patches.slice(0, i + 1).map((_, place) => place), [i + 1]] as const);
  }
};

const stagesOf = (unit: Unit, way: Way, rule: CutRule): readonly Stage[] =>
  joinsOf(unit).map((parts) => {
    const stage = stageFor({ unit, way, seam: rule.seam, parts });
    assert.ok(stage);
    return stage;
  });

/** Area that two convex outlines share. */
const shared = (one: Polygon, other: Polygon): number => {
  const rest = other.reduce<Polygon>((left, a, i) => {
    const b = other[(i + 1) % other.length] as Point;
    return left.flatMap((to, j): Polygon => {
      const from = left.at(j - 1) as Point;
      const [f, t] = [offLine(a, b, from), offLine(a, b, to)];
      const share = f / (f - t);
      const crossing = f > 0 !== t > 0 ? [at(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y))] : [];
      return t > 0 ? [...crossing, to] : crossing;
    });
  }, one);
  return rest.length < 3 ? 0 : signedArea(rest);
};

const isNear = (a: number, b: number): boolean => Math.abs(a - b) < 1e-8 * Math.max(1, Math.abs(b));

/** Trimmed it is as large as the unit with its allowances, and every patch shows where the drawing has it. */
const isWanted = (face: Face, unit: Unit, seam: number): void => {
  const box = boxOf(face.flatMap(({ outline }) => outline));
  assert.ok(isNear(box.width, unit.size[0] + 2 * seam) && isNear(box.height, unit.size[1] + 2 * seam), 'its size');
  outlinesOf(unit).forEach((outline, place) => {
    const wanted = outline.map((p) => at(p.x + seam, p.y + seam));
    const cloth = face.filter((shown) => unit.fabrics[shown.place] === unit.fabrics[place]);
    const covered = cloth.reduce((sum, shown) => sum + shared(shown.outline, wanted), 0);
    assert.ok(isNear(covered, signedArea(wanted)), `place ${place}: ${covered} of ${signedArea(wanted)}`);
  });
  const all = face.reduce((sum, { outline }) => sum + signedArea(outline), 0);
  assert.ok(all > box.width * box.height - 1e-8, 'no hole, and nothing short of the edge');
};

const strips: readonly UnitKind[] = ['rails', 'four-patch', 'nine-patch'];

/** What the first cut of a strip set gives, laid like a row: the strips run upright then. */
const sliceOf = ({ pressed, slices }: Stage): Face => {
  const whole = pressed[0] as Face;
  const slice = Math.max(...whole.flatMap(({ outline }) => outline.map(({ x }) => x))) / (slices?.each ?? 1);
  return whole.map(({ place, outline }) => ({
    place,
    outline: outline.map((p) => at(p.y, slice - Math.min(p.x, slice))),
  }));
};

/** The first row of a grid as a unit of its own. */
const rowOf = (unit: Unit): Unit => ({
  ...unit,
  kind: 'rails',
  size: [unit.size[0], unit.strips?.height ?? length(0)],
  patches: unit.patches.slice(0, unit.strips?.widths.length),
});

describe('units', () => {
  for (const kind of kinds) {
    test(`a unit of ${kind} is the same kind however it is turned, of its finished size`, () => {
      const keys = [0, 1, 2, 3].map((quarters) => unitKey(only(unitsIn(turnedBy(quarters, drawings[kind](6)), 1e-5))));
      assert.equal(new Set(keys).size, 1);
      const unit = unitOf(kind, 6);
      assert.equal(unit.kind, kind);
      assert.equal(Math.max(...unit.size), 6);
    });
  }

  test('the places of a unit lie as its outlines say, so that patch and place are one', () => {
    for (const kind of kinds) {
      const unit = unitOf(kind, 6);
      const drawn = drawings[kind](6);
      const fits = [0, 1, 2, 3].some((quarters) =>
        outlinesOf(unit).every((outline, place) => {
          const turned = turnedBy(quarters, drawn)[unit.patches[place] as number]?.points ?? [];
          const moved = turned.map((p) => at(p.x - 2, p.y - 5));
          return isNear(shared(moved, outline), signedArea(outline)) || kind === 'sewn-corners';
        }),
      );
      assert.ok(fits, kind);
    }
  });

  test('a triangle beside a plain square is no unit', () => {
    assert.deepEqual(
      unitsIn([patch('oat', [0, 0], [2, 0], [0, 2]), patch('bark', [2, 0], [4, 0], [4, 2], [2, 2])], 1e-6),
      [],
    );
  });
});

describe('ways to make', () => {
  for (const [unit, rule] of [
    ['in', inches],
    ['cm', centimetres],
  ] as const) {
    for (const kind of kinds) {
      for (const [name, trimmed] of waysOf(kind)) {
        test(`${kind} ${name}${trimmed ? ' with room' : ''}, sewn, cut, pressed and trimmed, is the unit that is drawn (${unit})`, () => {
          // sewn corners are not trimmed: their sizes lie on the marks
          const wide = unit === 'in' ? [2, 3, 4.5, 6] : [6, 9, 15];
          for (const w of kind === 'sewn-corners' || strips.includes(kind) ? [6, 12] : wide) {
            const made = unitOf(kind, w);
            const way = wayOf(made, name, trimmed, rule);
            const last = stagesOf(made, way, rule).at(-1) as Stage;
            if (rowsIn(made).length > 1) {
              isWanted(sliceOf(last), rowOf(made), rule.seam);
              continue;
            }
            assert.ok(last.trimmed);
            assert.equal(last.trimmed.length * last.perSet, way.gives);
            for (const face of last.trimmed) isWanted(face, made, rule.seam);
          }
        });
      }
    }
  }

  test('what one set gives uses up every patch that its squares hold', () => {
    for (const kind of kinds) {
      const unit = unitOf(kind, 4);
      // two sorts of row have sets of their own
      if (strips.includes(kind)) continue;
      for (const [name] of waysOf(kind)) {
        const way = wayOf(unit, name, false, inches);
        for (const role of new Set(way.roles)) {
          const places = way.roles.flatMap((one, place) => (one === role ? [place] : []));
          const cut = way.cuts[places[0] as number];
          assert.ok(cut);
          assert.equal((cut.perSet ?? 0) * cut.gives, way.gives * places.length, `${kind} ${name} ${role}`);
        }
      }
    }
  });

  // common practice, no source: strips 1/2 in wider than they finish, cut across every finished height and 1/2 in
  test('forty rows of two 2 in squares come from three strip sets of fourteen slices, 2 1/2 in by 35 in', () => {
    const unit = unitOf('four-patch', 4);
    const way = wayOf(unit, 'strip-sets', false, inches);
    // twenty four-patches take forty slices; 40 in hold sixteen of 2 1/2 in, so three sets of fourteen
    assert.deepEqual(way.cuts[0]?.size, [35, 2.5]);
    assert.equal(way.cuts[0]?.gives, 14);
    const stage = stagesOf(unit, way, inches)[0] as Stage;
    assert.equal(layingsOf(stage, { way, units: 20 }), 3);
    assert.equal(stage.cut.length, 14);
  });

  // 'Do the Math', a teacher's page, 22 Feb 2011: half-squares 7/8 larger, quarter-squares 1 1/4
  test('6 in half-squares two at a time come from 6 7/8 in squares; eight at a time at 3 in from 7 3/4 in', () => {
    assert.equal(wayOf(unitOf('half-square', 6), 'two-at-a-time', false, inches).cuts[0]?.size[0], 6.875);
    const eight = wayOf(unitOf('half-square', 3), 'eight-at-a-time', false, inches).cuts[0];
    // derived: 2·3 + 2·0.25·(2 + √2)
    assert.equal(eight?.size[0], 7.75);
    assert.ok(isNear(eight?.exact[0] ?? 0, 7.707106781186548));
    assert.equal(wayOf(unitOf('quarter-square', 6), 'from-half-squares', false, inches).cuts[0]?.size[0], 7.25);
  });

  // a teacher's page, 28 March 2012: 2 × 4 geese, large square 5 1/4, small squares 2 7/8
  test('four 2 × 4 in geese come from one 5 1/4 in square and four of 2 7/8 in', () => {
    const { cuts, gives } = wayOf(unitOf('flying-geese', 4), 'four-at-a-time', false, inches);
    assert.deepEqual(
      cuts.map((cut) => [cut?.size[0], cut?.perSet]),
      [
        [5.25, 1],
        [2.875, 4],
        [2.875, 4],
      ],
    );
    assert.equal(gives, 4);
  });

  // common practice, no source: the goose's rectangle and two squares half as wide, each 1/2 in larger
  test('a 6 × 3 in goose sewn and flipped takes a rectangle 6 1/2 × 3 1/2 in and two squares 3 1/2 in', () => {
    const { cuts } = wayOf(unitOf('flying-geese', 6), 'sew-and-flip', false, inches);
    assert.deepEqual(
      cuts.map((cut) => cut?.size),
      [
        [6.5, 3.5],
        [3.5, 3.5],
        [3.5, 3.5],
      ],
    );
  });

  test('four unlike cloths in a quarter-square, or two unlike skies, forbid the ways that would mirror them', () => {
    const four = drawings['quarter-square'](4).map((one, i) => ({ ...one, fabric: `cloth-${i}` }));
    const quarter = only(unitsIn(four, 1e-6));
    assert.equal(
      wayFor({ unit: quarter, name: 'from-half-squares', trimmed: false, rule: inches, room: roomFor(quarter) }),
      'mirrored',
    );
    const skies = drawings['flying-geese'](4).map((one, i) => (i === 2 ? { ...one, fabric: 'sand' } : one));
    const goose = only(unitsIn(skies, 1e-6));
    assert.equal(
      wayFor({ unit: goose, name: 'four-at-a-time', trimmed: false, rule: inches, room: roomFor(goose) }),
      'unlike-skies',
    );
  });
});
