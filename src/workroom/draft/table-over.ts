// What the drafting table shows over the patches: the grid, what is bare or double at its place, the seam on its way, the hand.
import type { Drawn } from '#craft/redrawing';
import type { Point } from '#ground/plane';
import { faultLines, ink, type Line, type Over, stroke, thread, type View, white } from '#workroom/drawing';

export interface ShownOver {
  readonly drawn: Drawn;
  readonly size: readonly [width: number, height: number];
  /** Into so many parts a square is divided. */
  readonly parts: number;
  readonly grid: 'shown' | 'faint';
  readonly bare: readonly (readonly Point[])[];
  readonly double: readonly (readonly Point[])[];
  /** Lines that would let straight seams alone join the block. */
  readonly advised: readonly (readonly Point[])[];
  readonly chosen: readonly (readonly Point[])[];
  readonly run: readonly Point[];
  /** Places that are set. */
  readonly marks: readonly Point[];
  /** Where the run would lead to, or the shape that would be laid. */
  readonly next: readonly Point[];
  readonly isClosed: boolean;
  /** Null where the hand chooses. */
  readonly cursor: Point | null;
}

interface Pen {
  readonly to: CanvasRenderingContext2D;
  readonly on: (p: Point) => readonly [number, number];
}

export const overTable = (shown: ShownOver): Over => ({
  paint: (to, { view, density }) => {
    to.setTransform(density, 0, 0, density, 0, 0);
    const pen: Pen = { to, on: placer(shown, view) };
    gridLines(pen, shown);
    for (const points of shown.double) hatched(pen, points, 'overlap');
    for (const points of shown.bare) hatched(pen, points, 'gap');
    for (const points of shown.advised) line(pen, points, { isClosed: false, lines: advisedLines });
    if (shown.advised[0] !== undefined) beside(pen, shown.advised[0], 'line to add');
    for (const points of shown.chosen) line(pen, points, { isClosed: true, lines: chosenLines });
    if (shown.next.length > 1) line(pen, shown.next, { isClosed: shown.isClosed, lines: nextLines });
    if (shown.run.length > 1) line(pen, shown.run, { isClosed: false, lines: runLines });
    for (const p of shown.marks) dot(pen, p, 4);
    if (shown.cursor !== null) hand(pen, shown.cursor);
  },
});

const placer =
  ({ drawn, size }: ShownOver, view: View): Pen['on'] =>
  ({ x, y }) => [
    view.x + (x * size[0] * view.scale) / drawn.grid[0],
    view.y + (y * size[1] * view.scale) / drawn.grid[1],
  ];

const runLines: readonly Line[] = [
  { width: 6, colour: white, dash: [] },
  { width: 3, colour: thread, dash: [] },
];
const nextLines: readonly Line[] = [
  { width: 4, colour: white, dash: [] },
  { width: 2, colour: thread, dash: [7, 5] },
];
const advisedLines: readonly Line[] = [
  { width: 6, colour: white, dash: [] },
  { width: 2.5, colour: ink, dash: [10, 6] },
];
const chosenLines: readonly Line[] = [
  { width: 6, colour: ink, dash: [] },
  { width: 3.5, colour: white, dash: [] },
  { width: 1, colour: ink, dash: [] },
];
const gridStrokes: readonly Line[] = [
  { width: 1.5, colour: white, dash: [], alpha: 0.5 },
  { width: 0.75, colour: ink, dash: [], alpha: 0.55 },
];

const trace = ({ to, on }: Pen, points: readonly Point[], isClosed: boolean): void => {
  to.beginPath();
  for (const [i, p] of points.entries()) {
    if (i === 0) to.moveTo(...(on(p) as [number, number]));
    else to.lineTo(...(on(p) as [number, number]));
  }
  if (isClosed) to.closePath();
};

const line = (
  pen: Pen,
  points: readonly Point[],
  { isClosed, lines }: { readonly isClosed: boolean; readonly lines: readonly Line[] },
): void => {
  trace(pen, points, isClosed);
  pen.to.lineJoin = 'round';
  stroke(pen.to, lines);
};

/** Lines nearer than this on the screen are left out: they would hide the cloth. */
const leastGapPx = 7;

const gridLines = (pen: Pen, { drawn, size, parts, grid }: ShownOver): void => {
  const [across, down] = drawn.grid;
  const [x0, y0] = pen.on({ x: 0, y: 0 });
  const [x1, y1] = pen.on({ x: across, y: down });
  const gap = Math.min((x1 - x0) / across, (y1 - y0) / down);
  const fine = gap / parts >= leastGapPx ? parts : 1;
  if (gap < leastGapPx || size[0] <= 0) return;
  pen.to.beginPath();
  for (let i = 1; i < across * fine; i++) {
    const [x] = pen.on({ x: i / fine, y: 0 });
    pen.to.moveTo(x, y0);
    pen.to.lineTo(x, y1);
  }
  for (let i = 1; i < down * fine; i++) {
    const [, y] = pen.on({ x: 0, y: i / fine });
    pen.to.moveTo(x0, y);
    pen.to.lineTo(x1, y);
  }
  const lines = grid === 'shown' ? gridStrokes : gridStrokes.map((one) => ({ ...one, alpha: (one.alpha ?? 1) / 3 }));
  stroke(pen.to, lines);
};

const hatchPx = 8;

const hatched = (pen: Pen, points: readonly Point[], word: 'gap' | 'overlap'): void => {
  const { to, on } = pen;
  const placed = points.map(on);
  const [left, right] = [Math.min(...placed.map(([x]) => x)), Math.max(...placed.map(([x]) => x))];
  const [top, bottom] = [Math.min(...placed.map(([, y]) => y)), Math.max(...placed.map(([, y]) => y))];
  to.save();
  trace(pen, points, true);
  to.clip();
  to.globalAlpha = word === 'gap' ? 0.85 : 0.55;
  to.fillStyle = white;
  to.fillRect(left, top, right - left, bottom - top);
  to.globalAlpha = 1;
  to.beginPath();
  const lean = word === 'gap' ? 1 : -1;
  for (let at = left - (bottom - top); at < right + (bottom - top); at += hatchPx) {
    to.moveTo(at, lean > 0 ? bottom : top);
    to.lineTo(at + (bottom - top), lean > 0 ? top : bottom);
  }
  stroke(to, [{ width: 1.25, colour: thread, dash: [] }]);
  to.restore();
  line(pen, points, { isClosed: true, lines: faultLines });
  label(pen, word, { x: (left + right) / 2, y: (top + bottom) / 2, room: right - left });
};

const label = (
  { to }: Pen,
  word: string,
  { x, y, room }: { readonly x: number; readonly y: number; readonly room: number },
): void => {
  to.font = '600 13px "Source Sans 3", sans-serif';
  const { width } = to.measureText(word);
  if (room < width + 12) return;
  to.fillStyle = white;
  to.fillRect(x - width / 2 - 5, y - 10, width + 10, 20);
  to.fillStyle = thread;
  to.textAlign = 'center';
  to.textBaseline = 'middle';
  to.fillText(word, x, y + 1);
};

/** Words in the middle of a line, where they fit on it. */
const beside = (pen: Pen, points: readonly Point[], word: string): void => {
  const [[x, y], [u, v]] = [points[0], points.at(-1)].map((p) => pen.on(p as Point)) as [
    readonly [number, number],
    readonly [number, number],
  ];
  label(pen, word, { x: (x + u) / 2, y: (y + v) / 2, room: Math.hypot(u - x, v - y) });
};

const dot = ({ to, on }: Pen, p: Point, radius: number): void => {
  to.beginPath();
  to.arc(...(on(p) as [number, number]), radius, 0, 2 * Math.PI);
  to.fillStyle = thread;
  to.fill();
  stroke(to, [{ width: 1.5, colour: white, dash: [] }]);
};

const hand = (pen: Pen, p: Point): void => {
  const [x, y] = pen.on(p);
  const { to } = pen;
  to.beginPath();
  to.arc(x, y, 7, 0, 2 * Math.PI);
  for (const [dx, dy] of [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const) {
    to.moveTo(x + 4 * dx, y + 4 * dy);
    to.lineTo(x + 13 * dx, y + 13 * dy);
  }
  stroke(to, [
    { width: 4, colour: white, dash: [] },
    { width: 1.75, colour: ink, dash: [] },
  ]);
};
