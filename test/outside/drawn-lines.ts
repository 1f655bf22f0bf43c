// Lines and areas as the file itself draws them, in points from the left and top of the page: from the drawing commands
// of its pages (ISO 32000-2, 8 and 14.6).

import type { FileParts } from './file-parts.ts';

export type At = readonly [x: number, y: number];

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Line {
  /** A curve by points on it. */
  readonly points: readonly At[];
  readonly isClosed: boolean;
}

export interface Drawn {
  readonly lines: readonly Line[];
  readonly isFilled: boolean;
  /** Null where nothing is stroked. */
  readonly widthPt: number | null;
  readonly isDashed: boolean;
  /** The boxes that it is cut to, outermost first. */
  readonly cutTo: readonly Box[];
  /** Marked content that it belongs to; null: an ornament of the page. */
  readonly mark: number | null;
}

/** Where a piece of text begins. */
export interface Lettering {
  readonly at: At;
  readonly cutTo: readonly Box[];
  readonly mark: number | null;
}

export interface DrawnPage {
  readonly width: number;
  readonly height: number;
  readonly drawn: readonly Drawn[];
  readonly lettering: readonly Lettering[];
}

export const boxOf = (points: readonly At[]): Box => ({
  left: Math.min(...points.map(([x]) => x)),
  top: Math.min(...points.map(([, y]) => y)),
  right: Math.max(...points.map(([x]) => x)),
  bottom: Math.max(...points.map(([, y]) => y)),
});

/** What two boxes share; turned inside out where that is nothing. */
export const shared = (a: Box, b: Box): Box => ({
  left: Math.max(a.left, b.left),
  top: Math.max(a.top, b.top),
  right: Math.min(a.right, b.right),
  bottom: Math.min(a.bottom, b.bottom),
});

export const drawnPages = (parts: FileParts): readonly DrawnPage[] =>
  parts.pages.map(({ object, contents }) => {
    const media = parts.dictionaryOf(object)['/MediaBox'] as readonly [number, number, number, number];
    const [width, height] = [media[2] - media[0], media[3] - media[1]];
    return { width, height, ...read(contents.map(parts.streamOf).join('\n'), height) };
  });

type Matrix = readonly [number, number, number, number, number, number];

/** The first is done first. */
const after = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[1] * n[2],
  m[0] * n[1] + m[1] * n[3],
  m[2] * n[0] + m[3] * n[2],
  m[2] * n[1] + m[3] * n[3],
  m[4] * n[0] + m[5] * n[2] + n[4],
  m[4] * n[1] + m[5] * n[3] + n[5],
];

interface Pen {
  readonly matrix: Matrix;
  readonly widthPt: number;
  readonly isDashed: boolean;
  readonly cutTo: readonly Box[];
}

const read = (commands: string, height: number): Pick<DrawnPage, 'drawn' | 'lettering'> => {
  const drawn: Drawn[] = [];
  const lettering: Lettering[] = [];
  const kept: Pen[] = [];
  const marks: (number | null)[] = [];
  let pen: Pen = { matrix: [1, 0, 0, 1, 0, 0], widthPt: 1, isDashed: false, cutTo: [] };
  let lines: { points: At[]; isClosed: boolean }[] = [];
  let corner: At = [0, 0];
  let cuts = false;
  let words: string[] = [];
  let text: Matrix = pen.matrix;

  const onPage = ([x, y]: At, { matrix: m }: Pen): At => [
    m[0] * x + m[2] * y + m[4],
    height - (m[1] * x + m[3] * y + m[5]),
  ];
  const numbers = (): readonly number[] => words.map(Number);
  const mark = (): number | null => marks.findLast((one) => one !== null) ?? null;
  const add = (p: At): void => {
    corner = p;
    lines.at(-1)?.points.push(onPage(p, pen));
  };
  const curve = (a: At, b: At, c: At): void => {
    const from = corner;
    for (const t of [0.25, 0.5, 0.75, 1]) {
      const u = 1 - t;
      const on = (k: 0 | 1): number => u ** 3 * from[k] + 3 * u ** 2 * t * a[k] + 3 * u * t ** 2 * b[k] + t ** 3 * c[k];
      add([on(0), on(1)]);
    }
  };
  const paint = (of: { readonly isFilled: boolean; readonly isStroked: boolean }): void => {
    const all = lines.flatMap(({ points }) => points);
    if (all.length > 0 && (of.isFilled || of.isStroked)) {
      const scale = Math.sqrt(Math.abs(pen.matrix[0] * pen.matrix[3] - pen.matrix[1] * pen.matrix[2]));
      drawn.push({
        lines,
        isFilled: of.isFilled,
        widthPt: of.isStroked ? pen.widthPt * scale : null,
        isDashed: pen.isDashed,
        cutTo: pen.cutTo,
        mark: mark(),
      });
    }
    if (cuts && all.length > 0) pen = { ...pen, cutTo: [...pen.cutTo, boxOf(all)] };
    cuts = false;
    lines = [];
  };
  const close = (): void => {
    const last = lines.at(-1);
    if (last) last.isClosed = true;
  };
  const does: Readonly<Record<string, () => void>> = {
    q: () => kept.push(pen),
    Q: () => {
      pen = kept.pop() ?? pen;
    },
    cm: () => {
      pen = { ...pen, matrix: after(numbers() as unknown as Matrix, pen.matrix) };
    },
    w: () => {
      pen = { ...pen, widthPt: numbers()[0] ?? 0 };
    },
    d: () => {
      pen = { ...pen, isDashed: words.join(' ').replace(/[[\]\s]/g, '').length > 1 };
    },
    m: () => {
      lines.push({ points: [], isClosed: false });
      add(numbers() as unknown as At);
    },
    l: () => add(numbers() as unknown as At),
    c: () => {
      const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers();
      curve([a, b], [c, d], [e, f]);
    },
    v: () => {
      const [c = 0, d = 0, e = 0, f = 0] = numbers();
      curve(corner, [c, d], [e, f]);
    },
    y: () => {
      const [a = 0, b = 0, e = 0, f = 0] = numbers();
      curve([a, b], [e, f], [e, f]);
    },
    re: () => {
      const [x = 0, y = 0, w = 0, h = 0] = numbers();
      lines.push({ points: [], isClosed: true });
      for (const p of [
        [x, y],
        [x + w, y],
        [x + w, y + h],
        [x, y + h],
      ] as const)
        add(p);
    },
    h: close,
    W: () => {
      cuts = true;
    },
    'W*': () => {
      cuts = true;
    },
    n: () => paint({ isFilled: false, isStroked: false }),
    f: () => paint({ isFilled: true, isStroked: false }),
    'f*': () => paint({ isFilled: true, isStroked: false }),
    S: () => paint({ isFilled: false, isStroked: true }),
    s: () => {
      close();
      paint({ isFilled: false, isStroked: true });
    },
    B: () => paint({ isFilled: true, isStroked: true }),
    'B*': () => paint({ isFilled: true, isStroked: true }),
    BT: () => {
      text = [1, 0, 0, 1, 0, 0];
    },
    Tm: () => {
      text = numbers() as unknown as Matrix;
    },
    Tj: () => lettering.push({ at: onPage([text[4], text[5]], pen), cutTo: pen.cutTo, mark: mark() }),
    TJ: () => lettering.push({ at: onPage([text[4], text[5]], pen), cutTo: pen.cutTo, mark: mark() }),
    BDC: () => {
      const number = /\/MCID (\d+)/.exec(words.join(' '))?.[1];
      marks.push(number === undefined ? null : Number(number));
    },
    BMC: () => marks.push(null),
    EMC: () => marks.pop(),
    Do: () => {
      throw new Error('a page holds a drawing of its own, which this reader does not follow');
    },
  };
  // a string, a dictionary's brackets, an array's, a name, or a word
  const parts =
    /\((?:\\[\s\S]|[^\\()]|\((?:\\[\s\S]|[^\\()])*\))*\)|<<|>>|<[0-9A-Fa-f\s]*>|[[\]]|\/[^\s()<>[\]/%]*|[^\s()<>[\]/%]+/g;
  for (const [part] of commands.matchAll(parts)) {
    const done = does[part];
    if (done) done();
    else if (!/^[A-Za-z'"][\w*'"]*$/.test(part) || part === 'true' || part === 'false') {
      words.push(part);
      continue;
    }
    words = [];
  }
  return { drawn, lettering };
};

const edgePt = 0.1;

const isWithin = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left - edgePt &&
  inner.top >= outer.top - edgePt &&
  inner.right <= outer.right + edgePt &&
  inner.bottom <= outer.bottom + edgePt;

/**
 * What a page loses: lines drawn beyond the box of their picture, text that begins beyond the box that it is cut to, and
 * anything nearer to the edge of the page than printers reach (a quarter of an inch, common practice). A sheet of a larger
 * drawing cuts its part out of the whole by a box of its own, within the picture's.
 */
export const cutOff = ({ width, height, drawn, lettering }: DrawnPage): readonly string[] => {
  const reach: Box = { left: 18, top: 18, right: width - 18, bottom: height - 18 };
  const place = ({ left, top, right, bottom }: Box): string =>
    [left, top, right, bottom].map((side) => side.toFixed(1)).join(', ');
  const lines = drawn.flatMap(({ lines, cutTo }) => {
    const whole = boxOf(lines.flatMap(({ points }) => points));
    const seen = cutTo.slice(1).reduce(shared, whole);
    if (seen.left >= seen.right + edgePt || seen.top >= seen.bottom + edgePt) return [];
    const outer = cutTo[0];
    if (outer && !isWithin(seen, outer)) return [`lines in ${place(seen)} are cut off at ${place(outer)}`];
    return isWithin(outer ? shared(seen, outer) : seen, reach) ? [] : [`lines in ${place(seen)} leave the page`];
  });
  const texts = lettering.flatMap(({ at: [x, y], cutTo }) =>
    cutTo.every((box) => isWithin({ left: x, right: x, top: y, bottom: y }, box))
      ? []
      : [`text at ${x.toFixed(1)}, ${y.toFixed(1)} is cut off`],
  );
  return [...lines, ...texts];
};
