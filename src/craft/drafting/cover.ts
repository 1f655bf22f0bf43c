// Where a drawing lies double or bare: the block is cut into upright slabs at every corner and
// crossing; inside a slab edges do not cross, so the cover can be counted from edge to edge.
// Only asked when a drawing is known to be at fault, so it is plain rather than quick.
import { boxOf, type Point, type Polygon } from '#ground/plane';

export type CoverFault =
  | { readonly kind: 'gap'; readonly area: number; readonly at: readonly [number, number] }
  | {
      readonly kind: 'overlap';
      readonly patches: readonly [number, number];
      readonly area: number;
      readonly at: readonly [number, number];
    };

interface Edge {
  readonly left: Point;
  readonly right: Point;
  readonly owner: number;
}

interface Cell {
  readonly left: number;
  readonly right: number;
  readonly leftSpan: readonly [number, number];
  readonly rightSpan: readonly [number, number];
  readonly area: number;
  readonly at: readonly [number, number];
}

/** Areas below slack times the block's side are rounding, not faults. The outline's own edges have owner −1. */
export const coverFaults = (drawing: {
  readonly outline: Polygon;
  readonly patches: readonly Polygon[];
  readonly slack: number;
}): readonly CoverFault[] => {
  const edges = [drawing.outline, ...drawing.patches].flatMap((polygon, i) => edgesOf(polygon, i - 1));
  const stops = slabStops(edges, drawing.slack);
  const bare: Cell[] = [];
  const doubled = new Map<string, { patches: readonly [number, number]; cells: Cell[] }>();
  for (let i = 0; i + 1 < stops.length; i++) {
    const left = stops[i] as number;
    const right = stops[i + 1] as number;
    for (const { cell, owners } of cellsIn(edges, left, right)) {
      if (!owners.has(-1)) continue;
      const covering = [...owners].filter((o) => o >= 0).sort((a, b) => a - b);
      if (covering.length === 0) bare.push(cell);
      for (let a = 0; a < covering.length; a++) {
        for (let b = a + 1; b < covering.length; b++) {
          const pair = [covering[a] as number, covering[b] as number] as const;
          const known = doubled.get(pair.join());
          if (known) known.cells.push(cell);
          else doubled.set(pair.join(), { patches: pair, cells: [cell] });
        }
      }
    }
  }
  const box = boxOf(drawing.outline);
  const least = drawing.slack * Math.max(box.width, box.height);
  const faults: CoverFault[] = [];
  for (const cells of regionsOf(bare, drawing.slack)) faults.push({ kind: 'gap', ...total(cells) });
  for (const { patches, cells } of doubled.values()) faults.push({ kind: 'overlap', patches, ...total(cells) });
  return faults.filter((f) => f.area > least).sort((a, b) => b.area - a.area);
};

const edgesOf = (polygon: Polygon, owner: number): readonly Edge[] =>
  polygon.flatMap((a, i) => {
    const b = polygon[(i + 1) % polygon.length] as Point;
    if (a.x === b.x) return [];
    return [a.x < b.x ? { left: a, right: b, owner } : { left: b, right: a, owner }];
  });

const slabStops = (edges: readonly Edge[], slack: number): readonly number[] => {
  const stops: number[] = [];
  edges.forEach((e, i) => {
    stops.push(e.left.x, e.right.x);
    for (let j = i + 1; j < edges.length; j++) {
      const x = crossingX(e, edges[j] as Edge);
      if (x !== null) stops.push(x);
    }
  });
  stops.sort((a, b) => a - b);
  return stops.filter((x, i) => i === 0 || x - (stops[i - 1] as number) > slack / 1000);
};

const crossingX = (e: Edge, f: Edge): number | null => {
  const from = Math.max(e.left.x, f.left.x);
  const to = Math.min(e.right.x, f.right.x);
  if (from >= to) return null;
  const before = heightAt(e, from) - heightAt(f, from);
  const after = heightAt(e, to) - heightAt(f, to);
  return before * after < 0 ? from + ((to - from) * before) / (before - after) : null;
};

const heightAt = (e: Edge, x: number): number =>
  e.left.y + ((e.right.y - e.left.y) * (x - e.left.x)) / (e.right.x - e.left.x);

const cellsIn = (edges: readonly Edge[], left: number, right: number) => {
  const middle = (left + right) / 2;
  const here = edges
    .filter((e) => e.left.x <= middle && e.right.x >= middle)
    .map((edge) => ({ edge, y: heightAt(edge, middle) }))
    .sort((a, b) => a.y - b.y);
  const inside = new Set<number>();
  const cells: { readonly cell: Cell; readonly owners: ReadonlySet<number> }[] = [];
  for (let i = 0; i + 1 < here.length; i++) {
    const upper = here[i] as (typeof here)[number];
    const lower = here[i + 1] as (typeof here)[number];
    if (inside.has(upper.edge.owner)) inside.delete(upper.edge.owner);
    else inside.add(upper.edge.owner);
    const area = (lower.y - upper.y) * (right - left);
    if (area <= 0) continue;
    cells.push({
      owners: new Set(inside),
      cell: {
        left,
        right,
        leftSpan: [heightAt(upper.edge, left), heightAt(lower.edge, left)],
        rightSpan: [heightAt(upper.edge, right), heightAt(lower.edge, right)],
        area,
        at: [middle, (upper.y + lower.y) / 2],
      },
    });
  }
  return cells;
};

/** Cells that touch along a slab's side or lie one upon the other belong to one bare region. */
const regionsOf = (cells: readonly Cell[], slack: number): readonly (readonly Cell[])[] => {
  const group = cells.map((_, i) => i);
  const rootOf = (i: number): number => (group[i] === i ? i : rootOf(group[i] as number));
  const meet = (a: readonly [number, number], b: readonly [number, number]) =>
    Math.min(a[1], b[1]) - Math.max(a[0], b[0]) > slack;
  cells.forEach((a, i) => {
    cells.forEach((b, j) => {
      const beside = a.right === b.left && meet(a.rightSpan, b.leftSpan);
      const upon =
        a.left === b.left &&
        Math.abs(a.leftSpan[1] - b.leftSpan[0]) + Math.abs(a.rightSpan[1] - b.rightSpan[0]) < slack;
      if (beside || upon) group[rootOf(j)] = rootOf(i);
    });
  });
  const regions = new Map<number, Cell[]>();
  cells.forEach((cell, i) => {
    const root = rootOf(i);
    const region = regions.get(root);
    if (region) region.push(cell);
    else regions.set(root, [cell]);
  });
  return [...regions.values()];
};

const total = (cells: readonly Cell[]): { readonly area: number; readonly at: readonly [number, number] } => {
  const largest = cells.reduce((a, b) => (b.area > a.area ? b : a));
  return { area: cells.reduce((all, c) => all + c.area, 0), at: largest.at };
};
