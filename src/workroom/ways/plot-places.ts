// Where the choices lie in the plot: cloth across, time up, less of both to the lower left; marks that would cover each other are moved apart.
import type { WaysPoint } from '#workroom/compute';

export interface PlotSize {
  readonly width: number;
  readonly height: number;
  /** Left and below for the axes, above and at the right so that no mark is cut off. */
  readonly edge: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
  /** Of a mark, its radius. */
  readonly mark: number;
}

export interface PlotPlace {
  readonly point: WaysPoint;
  /** Where its figures lie. */
  readonly at: readonly [x: number, y: number];
  /** Where its mark stands. */
  readonly mark: readonly [x: number, y: number];
  /** Half the length of the line that shows how far a side may be off. */
  readonly off: number;
}

export interface PlotScale {
  readonly cloth: readonly [least: number, most: number];
  readonly minutes: readonly [least: number, most: number];
}

/** With room of a tenth on both sides, and never nothing. */
export const scaleOf = (points: readonly WaysPoint[]): PlotScale => {
  const range = (values: readonly number[]): readonly [number, number] => {
    const [low, high] = [Math.min(...values), Math.max(...values)];
    const room = high - low < 1e-9 ? Math.max(1, 0.02 * high) : 0.1 * (high - low);
    return [low - room, high + room];
  };
  return { cloth: range(points.map(({ cloth }) => cloth)), minutes: range(points.map(({ minutes }) => minutes)) };
};

export const placesFor = (points: readonly WaysPoint[], size: PlotSize): readonly PlotPlace[] => {
  const scale = scaleOf(points);
  const most = Math.max(...points.map(({ deviation }) => deviation), 1e-9);
  const ats = points.map(({ cloth, minutes }) => [across(cloth, scale, size), up(minutes, scale, size)] as const);
  const marks = apart(ats, size);
  return points.map((point, i) => ({
    point,
    at: ats[i] as readonly [number, number],
    mark: marks[i] as readonly [number, number],
    off: (longestOff * point.deviation) / most,
  }));
};

const longestOff = 26;

/** How far below a mark its line lies. */
export const underMark = 5;

export const across = (cloth: number, { cloth: [low, high] }: PlotScale, { width, edge }: PlotSize): number =>
  edge.left + ((cloth - low) / (high - low)) * (width - edge.left - edge.right);

export const up = (minutes: number, { minutes: [low, high] }: PlotScale, { height, edge }: PlotSize): number =>
  height - edge.bottom - ((minutes - low) / (high - low)) * (height - edge.top - edge.bottom);

const rounds = 60;

/** Pushed from each other a little at a time, and kept within the plot. */
const apart = (
  ats: readonly (readonly [number, number])[],
  { width, height, edge, mark }: PlotSize,
): readonly (readonly [number, number])[] => {
  const marks = ats.map(([x, y]) => ({ x, y }));
  // so that no mark lies on the line under another, not even at its end
  const gap = Math.hypot(longestOff, mark + underMark) + mark + 2;
  for (let round = 0; round < rounds; round++) {
    marks.forEach((one, i) => {
      for (const [j, other] of marks.entries()) {
        if (j <= i) continue;
        const [dx, dy] = [other.x - one.x || 0.01 * (j - i), other.y - one.y || 0.02];
        const far = Math.hypot(dx, dy);
        if (far >= gap) continue;
        const by = (gap - far) / 2 / far;
        one.x -= dx * by;
        one.y -= dy * by;
        other.x += dx * by;
        other.y += dy * by;
      }
    });
    for (const one of marks) {
      one.x = Math.min(width - edge.right, Math.max(edge.left + longestOff + 4, one.x));
      one.y = Math.min(height - edge.bottom - mark - 12, Math.max(edge.top, one.y));
    }
  }
  return marks.map(({ x, y }) => [x, y] as const);
};

/** Round figures along an axis, some four to six. */
export const ticksIn = ([low, high]: readonly [number, number], steps: readonly number[]): readonly number[] => {
  const step = steps.find((one) => (high - low) / one <= 6) ?? (steps.at(-1) as number);
  const first = Math.ceil(low / step - 1e-9);
  return Array.from({ length: Math.max(0, Math.floor(high / step + 1e-9) - first + 1) }, (_, i) => (first + i) * step);
};
