// The pens that mark what lies on cloth. Each line lies on a wider one of the other shade, so that it shows on light and on dark.

/** On cloth, whose colours no theme changes. */
export const ink = '#24211c';
export const white = '#ffffff';
export const thread = '#a13d2b';

export interface Line {
  readonly width: number;
  readonly colour: string;
  readonly dash: number[];
  readonly alpha?: number;
}

export const faultLines: readonly Line[] = [
  { width: 5, colour: white, dash: [] },
  { width: 3, colour: thread, dash: [6, 4] },
];

/** The path on its way, line over line. */
export const stroke = (to: CanvasRenderingContext2D, lines: readonly Line[]): void => {
  for (const { width, colour, dash, alpha = 1 } of lines) {
    to.lineWidth = width;
    to.strokeStyle = colour;
    to.globalAlpha = alpha;
    to.setLineDash(dash);
    to.stroke();
  }
  to.globalAlpha = 1;
  to.setLineDash([]);
};
