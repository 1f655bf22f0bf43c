// Which units does a drawing hold that can be made in more than one way? Found by their shapes alone, wherever they stand and
// however they are turned; whether the order of joining makes one as a unit is not asked here.
import type { UnitKind } from '#craft/design';
import { type Length, tidy } from '#craft/measure';
import { at, boxOf, distance, type Point, type Polygon, signedArea } from '#ground/plane';
import { stripUnits } from './strip-units.ts';
import type { Laid, Unit } from './unit.ts';

/**
 * Every unit in a drawing, none sharing a patch with another: triangles first, then grids of squares, then what lies side by side.
 *
 * @param patches outlines clockwise, without corners on straight sides
 * @param slack   differences below it are none
 */
export const unitsIn = (patches: readonly Laid[], slack: number): readonly Unit[] => {
  const triangles = patches.map(({ points }) => triangleOf(points, slack));
  const find: Finding = { patches, triangles, slack, beside: edgesOf(patches, slack) };
  const triangled = [...halfSquares(find), ...quarterSquares(find), ...aroundMiddles(find)];
  const taken = new Set(triangled.flatMap((unit) => unit.patches));
  return [...triangled, ...stripUnits(patches, { taken, slack })];
};

/** Units of one name are one kind: made together wherever they stand. */
export const unitKey = ({ kind, size, fabrics, legs, strips }: Unit): string =>
  JSON.stringify([kind, size.map(fine), (strips?.widths ?? legs).map(fine), fabrics]);

const fine = (value: number): number => Math.round(value * 1e6) / 1e6;

interface Triangle {
  readonly corner: Point;
  /** Clockwise after the right angle. */
  readonly ends: readonly [Point, Point];
  readonly leg: Length;
  readonly lies: 'legs' | 'long-side';
}

interface Finding {
  readonly patches: readonly Laid[];
  readonly triangles: readonly (Triangle | null)[];
  readonly slack: number;
  /** Patches that have a side from one point to another. */
  readonly beside: (a: Point, b: Point) => readonly number[];
}

/** Right-angled with equal legs, and its legs or its long side along the block's sides. */
const triangleOf = (points: Polygon, slack: number): Triangle | null => {
  if (points.length !== 3) return null;
  for (const [i, corner] of points.entries()) {
    const [a, b] = [points[(i + 1) % 3] as Point, points[(i + 2) % 3] as Point];
    const [first, second] = [distance(corner, a), distance(corner, b)];
    const isRight = Math.abs(distance(a, b) - Math.SQRT2 * first) < 3 * slack && Math.abs(first - second) < 3 * slack;
    if (!isRight) continue;
    const lies = isAlong(corner, a, slack) ? 'legs' : isAlong(a, b, slack) ? 'long-side' : null;
    return lies && { corner, ends: [a, b], leg: tidy(first), lies };
  }
  return null;
};

const isAlong = (a: Point, b: Point, slack: number): boolean =>
  Math.min(Math.abs(a.x - b.x), Math.abs(a.y - b.y)) < 3 * slack;

const edgesOf = (patches: readonly Laid[], slack: number): Finding['beside'] => {
  const grain = 8 * slack;
  const near = (value: number, by: number): number => Math.round(value / grain) + by;
  const found = new Map<string, number[]>();
  const middle = (a: Point, b: Point): Point => at((a.x + b.x) / 2, (a.y + b.y) / 2);
  patches.forEach(({ points }, patch) => {
    points.forEach((a, i) => {
      const m = middle(a, points[(i + 1) % points.length] as Point);
      const key = `${near(m.x, 0)} ${near(m.y, 0)}`;
      found.set(key, [...(found.get(key) ?? []), patch]);
    });
  });
  const hasSide = (patch: number, a: Point, b: Point): boolean => {
    const { points } = patches[patch] as Laid;
    return points.some((p, i) => {
      const q = points[(i + 1) % points.length] as Point;
      const same = distance(p, b) < 3 * slack && distance(q, a) < 3 * slack;
      return same || (distance(p, a) < 3 * slack && distance(q, b) < 3 * slack);
    });
  };
  return (a, b) => {
    const m = middle(a, b);
    const around = [-1, 0, 1].flatMap((dx) =>
      [-1, 0, 1].flatMap((dy) => found.get(`${near(m.x, dx)} ${near(m.y, dy)}`) ?? []),
    );
    return [...new Set(around)].filter((patch) => hasSide(patch, a, b));
  };
};

/** The one patch beyond a triangle's long side. */
const beyond = (find: Finding, patch: number): number | null => {
  const { ends } = find.triangles[patch] as Triangle;
  const others = find.beside(...ends).filter((other) => other !== patch);
  return others.length === 1 ? (others[0] as number) : null;
};

const fabricsAt = ({ patches }: Finding, places: readonly number[]): readonly string[] =>
  places.map((patch) => (patches[patch] as Laid).fabric);

const halfSquares = (find: Finding): readonly Unit[] =>
  find.triangles.flatMap((triangle, patch): readonly Unit[] => {
    if (triangle?.lies !== 'legs') return [];
    const other = beyond(find, patch);
    if (other === null || other < patch || find.triangles[other]?.lies !== 'legs') return [];
    const [a, b] = fabricsAt(find, [patch, other]) as [string, string];
    if (a === b) return [];
    // turned by a half turn its places change over: the lesser name is first
    const places = a < b ? [patch, other] : [other, patch];
    const size = [triangle.leg, triangle.leg] as const;
    return [{ kind: 'half-square', size, patches: places, fabrics: fabricsAt(find, places), legs: [] }];
  });

const quarterSquares = (find: Finding): readonly Unit[] => {
  const byCorner = new Map<string, number[]>();
  const grain = 64 * find.slack;
  find.triangles.forEach((triangle, patch) => {
    if (triangle?.lies !== 'long-side') return;
    const { corner } = triangle;
    const key = `${Math.round(corner.x / grain)} ${Math.round(corner.y / grain)} ${Math.round(triangle.leg / grain)}`;
    byCorner.set(key, [...(byCorner.get(key) ?? []), patch]);
  });
  return [...byCorner.values()].flatMap((four): readonly Unit[] => {
    if (four.length !== 4) return [];
    // clockwise from the top
    const angle = (patch: number): number => {
      const { corner, ends } = find.triangles[patch] as Triangle;
      const [x, y] = [(ends[0].x + ends[1].x) / 2 - corner.x, (ends[0].y + ends[1].y) / 2 - corner.y];
      return Math.abs(y) > Math.abs(x) ? (y < 0 ? 0 : 2) : x > 0 ? 1 : 3;
    };
    const around = four.toSorted((a, b) => angle(a) - angle(b));
    if (around.some((patch, i) => angle(patch) !== i)) return [];
    const fabrics = fabricsAt(find, around);
    if (new Set(fabrics).size === 1) return [];
    const first = leastTurn(fabrics.map((_, turn) => JSON.stringify(rotated(fabrics, turn))));
    const places = rotated(around, first);
    const { leg } = find.triangles[places[0] as number] as Triangle;
    const side = tidy(leg * Math.SQRT2);
    return [
      { kind: 'quarter-square', size: [side, side], patches: places, fabrics: fabricsAt(find, places), legs: [] },
    ];
  });
};

/** A middle with triangles on its corners: together they are a rectangle. */
const aroundMiddles = (find: Finding): readonly Unit[] => {
  const corners = new Map<number, number[]>();
  find.triangles.forEach((triangle, patch) => {
    if (triangle?.lies !== 'legs') return;
    const middle = beyond(find, patch);
    if (middle === null || find.triangles[middle]?.lies === 'legs') return;
    corners.set(middle, [...(corners.get(middle) ?? []), patch]);
  });
  return [...corners].flatMap(([middle, triangles]) => aroundMiddle(find, middle, triangles) ?? []);
};

const aroundMiddle = (find: Finding, middle: number, triangles: readonly number[]): Unit | null => {
  const all = [middle, ...triangles].map((patch) => (find.patches[patch] as Laid).points);
  const box = boxOf(all.flat());
  const area = all.reduce((sum, points) => sum + signedArea(points), 0);
  if (triangles.length > 4 || Math.abs(area - box.width * box.height) > 16 * find.slack * (box.width + box.height))
    return null;
  // by corner of the box, from the upper left clockwise
  const boxCorners = [
    at(box.x, box.y),
    at(box.x + box.width, box.y),
    at(box.x + box.width, box.y + box.height),
    at(box.x, box.y + box.height),
  ];
  const standing = boxCorners.map((corner) =>
    triangles.find((patch) => distance((find.triangles[patch] as Triangle).corner, corner) < 4 * find.slack),
  );
  if (standing.filter((patch) => patch !== undefined).length !== triangles.length) return null;
  const legs = standing.map((patch) => (patch === undefined ? tidy(0) : (find.triangles[patch] as Triangle).leg));
  const looks = [0, 1, 2, 3].map((turn) => {
    const size = turn % 2 === 0 ? [box.width, box.height] : [box.height, box.width];
    const cloths = rotated(standing, turn).map((patch) => (patch === undefined ? '' : fabricsAt(find, [patch])[0]));
    // of lying and standing, lying; corners toward the upper edge
    const isStanding = (size[0] as number) < (size[1] as number) - 4 * find.slack;
    return JSON.stringify([
      isStanding ? 1 : 0,
      rotated(legs, turn).map((leg) => (1e6 - leg).toFixed(4).padStart(12, '0')),
      cloths,
    ]);
  });
  const turn = leastTurn(looks);
  const placed = rotated(standing, turn);
  const patches = [middle, ...placed.filter((patch) => patch !== undefined)];
  const sides = [tidy(box.width), tidy(box.height)] as const;
  const size = turn % 2 === 0 ? sides : ([sides[1], sides[0]] as const);
  return {
    kind: kindAround(find, middle, { size, legs }),
    size,
    patches,
    fabrics: fabricsAt(find, patches),
    legs: rotated(legs, turn),
  };
};

const kindAround = (find: Finding, middle: number, { size, legs }: Pick<Unit, 'size' | 'legs'>): UnitKind => {
  if (find.triangles[middle]?.lies === 'long-side') return 'flying-geese';
  const half = size[0] / 2;
  const isSquare = Math.abs(size[0] - size[1]) < 4 * find.slack;
  return isSquare && legs.every((leg) => Math.abs(leg - half) < 4 * find.slack) ? 'square-in-square' : 'sewn-corners';
};

const rotated = <T>(list: readonly T[], by: number): readonly T[] => [...list.slice(by), ...list.slice(0, by)];

const leastTurn = (texts: readonly string[]): number => texts.indexOf(texts.toSorted()[0] as string);
