// How a drawing lies on the screen: scale and place, in CSS pixels.

export interface View {
  /** Pixels for one unit of the drawing. */
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface Extent {
  readonly width: number;
  readonly height: number;
}

/** Room left round a drawing that fills its place. */
const marginPx = 28;
/** A drawing may be seen so many times larger than it fits, and no smaller than a quarter of that. */
const most = 40;
const least = 0.25;

export const fitted = (drawing: Extent, screen: Extent): View => {
  const margin = Math.min(marginPx, screen.width / 14, screen.height / 14);
  const scale = Math.max(
    1e-6,
    Math.min((screen.width - 2 * margin) / drawing.width, (screen.height - 2 * margin) / drawing.height),
  );
  return { scale, x: (screen.width - drawing.width * scale) / 2, y: (screen.height - drawing.height * scale) / 2 };
};

/** As wide as the screen, from the top down: what is long is then moved along. Never larger than `most` pixels for one unit. */
export const fittedAcross = (drawing: Extent, screen: Extent, most: number): View => {
  const whole = fitted(drawing, screen);
  const margin = Math.min(marginPx, screen.width / 14, screen.height / 14);
  const scale = Math.max(whole.scale, Math.min(most, (screen.width - 2 * margin) / drawing.width));
  return { scale, x: (screen.width - drawing.width * scale) / 2, y: margin / 2 };
};

/** Moved no further than it takes to see a box, where it has room at all. */
export const inSight = (
  view: View,
  of: { readonly box: readonly [x: number, y: number, width: number, height: number]; readonly screen: Extent },
): View => {
  const { box, screen } = of;
  const [x, y, width, height] = box.map((value) => value * view.scale) as [number, number, number, number];
  return { ...view, x: shifted(view.x, x, width, screen.width), y: shifted(view.y, y, height, screen.height) };
};

const sightPx = 12;

const shifted = (from: number, at: number, long: number, screen: number): number => {
  if (at + from < sightPx) return sightPx - at;
  return at + long + from > screen - sightPx
    ? Math.min(from, Math.max(sightPx - at, screen - sightPx - at - long))
    : from;
};

/** Larger or smaller by a factor, while the point of the drawing under the finger stays there. */
export const zoomed = (
  view: View,
  of: { readonly by: number; readonly at: readonly [number, number]; readonly fit: View },
): View => {
  const { by, at, fit } = of;
  const scale = Math.min(fit.scale * most, Math.max(fit.scale * least, view.scale * by));
  const k = scale / view.scale;
  return { scale, x: at[0] - (at[0] - view.x) * k, y: at[1] - (at[1] - view.y) * k };
};

export const moved = (view: View, by: readonly [number, number]): View => ({
  ...view,
  x: view.x + by[0],
  y: view.y + by[1],
});

/** A screen point in the drawing's own units. */
export const onDrawing = (view: View, [x, y]: readonly [number, number]): readonly [number, number] => [
  (x - view.x) / view.scale,
  (y - view.y) / view.scale,
];
