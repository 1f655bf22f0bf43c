// How large a page is shown, and how many dots its picture has for that.

/** Against the page as it fits its room. */
export const zooms = [1, 1.4, 2, 2.8, 4] as const;

/** Widths that pictures are asked for, so that one of nearly the same width is not asked for again. */
const widths = [306, 612, 918, 1224, 1836, 2448] as const;

/** The least that is as wide, or the widest that there is. */
export const pictureWidth = (wantedPx: number): number => widths.find((width) => width >= wantedPx) ?? 2448;

/** White round a page, on all sides. */
const edgePx = 16;

/** CSS pixels, whole. */
export const shownWidth = (of: {
  readonly room: readonly [width: number, height: number];
  readonly sizePt: readonly [width: number, height: number];
  readonly zoom: number;
}): number => {
  const [width, height] = of.room.map((side) => Math.max(120, side - 2 * edgePx)) as [number, number];
  const fits = Math.min(width, (height * of.sizePt[0]) / of.sizePt[1]);
  return Math.round(fits * (zooms[of.zoom] ?? 1));
};
