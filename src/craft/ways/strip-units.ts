// Squares and rectangles that strip sets may make: grids of two by two and three by three squares in two rows by turns, and rows
// of what lies side by side with one height.
import { type Length, tidy } from '#craft/measure';
import { type Box, boxOf, signedArea } from '#ground/plane';
import type { Laid, Unit } from './unit.ts';

interface Rectangle extends Box {
  readonly patch: number;
  readonly fabric: string;
}

/**
 * In reading order, none sharing a patch with another: nine-patches, four-patches, then the longest rows.
 *
 * @param of.taken patches of other units
 */
export const stripUnits = (
  patches: readonly Laid[],
  of: { readonly taken: ReadonlySet<number>; readonly slack: number },
): readonly Unit[] => {
  const { slack } = of;
  const all = patches.flatMap(({ points, fabric }, patch): readonly Rectangle[] => {
    if (of.taken.has(patch) || points.length !== 4) return [];
    const box = boxOf(points);
    const isWhole = Math.abs(box.width * box.height - signedArea(points)) < 4 * slack * (box.width + box.height);
    return isWhole ? [{ ...box, patch, fabric }] : [];
  });
  const inOrder = all.toSorted((a, b) => a.y - b.y || a.x - b.x);
  const used = new Set<number>();
  const free = (one: Rectangle): boolean => !used.has(one.patch);
  const beside = besideIn(inOrder, slack);
  const units: Unit[] = [];
  const take = (unit: Unit | null): void => {
    if (unit === null) return;
    units.push(unit);
    for (const patch of unit.patches) used.add(patch);
  };
  for (const side of [3, 2] as const)
    for (const corner of inOrder) if (free(corner)) take(gridAt({ corner, side, free, beside, slack }));
  const rows = (['across', 'down'] as const).flatMap((way) => inOrder.map((first) => ({ way, first })));
  const chains = rows
    .map(({ way, first }) => chainFrom(first, (one) => beside(one, way), free))
    .toSorted((a, b) => b.length - a.length);
  for (const chain of chains) if (chain.every(free)) take(railsOf(chain));
  return units;
};

type Beside = (of: Rectangle, way: 'across' | 'down') => Rectangle | null;

/** The rectangle that has a whole side in common with another, at its right or below it. */
const besideIn = (all: readonly Rectangle[], slack: number): Beside => {
  const near = 4 * slack;
  const key = (x: number, y: number): string => `${Math.round(x / near / 16)} ${Math.round(y / near / 16)}`;
  const at = new Map<string, Rectangle[]>();
  for (const one of all) at.set(key(one.x, one.y), [...(at.get(key(one.x, one.y)) ?? []), one]);
  return (of, way) => {
    const [x, y] = way === 'across' ? [of.x + of.width, of.y] : [of.x, of.y + of.height];
    const around = [-1, 0, 1].flatMap((dx) =>
      [-1, 0, 1].flatMap((dy) => at.get(key(x + dx * near * 16, y + dy * near * 16)) ?? []),
    );
    const isEven = (one: Rectangle): boolean =>
      Math.abs(one.x - x) < near &&
      Math.abs(one.y - y) < near &&
      Math.abs(way === 'across' ? one.height - of.height : one.width - of.width) < near;
    return around.find(isEven) ?? null;
  };
};

const gridAt = (of: {
  readonly corner: Rectangle;
  readonly side: 2 | 3;
  readonly free: (one: Rectangle) => boolean;
  readonly beside: Beside;
  readonly slack: number;
}): Unit | null => {
  const { corner, side, free, beside, slack } = of;
  const isLike = (one: Rectangle | null): one is Rectangle =>
    one !== null &&
    free(one) &&
    Math.abs(one.width - corner.width) < 4 * slack &&
    Math.abs(one.height - corner.width) < 4 * slack;
  const cells: Rectangle[] = [];
  let first: Rectangle | null = corner;
  for (let row = 0; row < side; row++) {
    let cell: Rectangle | null = first;
    for (let column = 0; column < side; column++) {
      if (!isLike(cell)) return null;
      cells.push(cell);
      cell = beside(cell, 'across');
    }
    first = first && beside(first, 'down');
  }
  const fabrics = cells.map(({ fabric }) => fabric);
  if (!isByTurns(fabrics)) return null;
  const width = tidy(corner.width);
  const whole = tidy(side * width);
  // a four-patch looks the same after a quarter turn but for its cloths: the lesser name stands first
  const turned = side === 2 && (fabrics[1] as string) < (fabrics[0] as string);
  const order = turned ? [1, 3, 0, 2] : cells.map((_, i) => i);
  return {
    kind: side === 2 ? 'four-patch' : 'nine-patch',
    size: [whole, whole],
    patches: order.map((i) => (cells[i] as Rectangle).patch),
    fabrics: order.map((i) => fabrics[i] as string),
    legs: [],
    strips: { widths: Array.from({ length: side }, () => width), height: width },
  };
};

/** Two cloths by turns, as on a chequered board. */
const isByTurns = (fabrics: readonly string[]): boolean => {
  const side = Math.sqrt(fabrics.length);
  const [a, b] = [fabrics[0], fabrics[1]];
  return a !== b && fabrics.every((fabric, i) => fabric === ((Math.floor(i / side) + (i % side)) % 2 === 0 ? a : b));
};

const chainFrom = (
  first: Rectangle,
  next: (one: Rectangle) => Rectangle | null,
  free: (one: Rectangle) => boolean,
): readonly Rectangle[] => {
  const chain: Rectangle[] = [];
  for (let one: Rectangle | null = first; one !== null && free(one); one = next(one)) chain.push(one);
  return chain;
};

const railsOf = (chain: readonly Rectangle[]): Unit | null => {
  if (chain.length < 2 || new Set(chain.map(({ fabric }) => fabric)).size < 2) return null;
  const [first, second] = chain as readonly [Rectangle, Rectangle];
  const isAcross = Math.abs(first.y - second.y) < Math.abs(first.x - second.x);
  const widthOf = (one: Rectangle): Length => tidy(isAcross ? one.width : one.height);
  const look = (list: readonly Rectangle[]): string =>
    JSON.stringify(list.map((one) => [one.fabric, Math.round(widthOf(one) * 1e6)]));
  const back = chain.toReversed();
  const places = look(back) < look(chain) ? back : chain;
  const height = tidy(isAcross ? first.height : first.width);
  const whole = places.reduce((all, one) => all + widthOf(one), 0);
  return {
    kind: 'rails',
    size: [tidy(whole), height],
    patches: places.map(({ patch }) => patch),
    fabrics: places.map(({ fabric }) => fabric),
    legs: [],
    strips: { widths: places.map(widthOf), height },
  };
};
