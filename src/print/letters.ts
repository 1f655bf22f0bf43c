// Letters as outlines: a picture whose words are drawn so looks the same wherever it is shown, whatever letters are at hand there.
import { glyphsOf, openFont, tableAt } from './fonts.ts';

/** One cut of one family, as its file has it. */
export interface Face {
  /** Font units from one letter's beginning to the next one's; letters are set without kerning. */
  readonly advance: (glyph: number) => number;
  /** Contours in font units, y up, each a row of points; a point off the curve draws it toward itself. */
  readonly outline: (glyph: number) => readonly Contour[];
  /** 0, the sign for none, where the face has no glyph. */
  readonly glyphOf: (code: number) => number;
  readonly unitsPerEm: number;
}

interface Point {
  readonly x: number;
  readonly y: number;
  readonly isOn: boolean;
}
type Contour = readonly Point[];

/** @source OpenType specification, "head", "hhea", "hmtx", "loca" and "glyf" */
export const openFace = (path: string): Face => {
  const font = openFont(path);
  const glyphs = glyphsOf(font);
  const [head, metrics, glyf, loca] = ['head', 'hmtx', 'glyf', 'loca'].map((tag) => tableAt(font, tag)) as [
    number,
    number,
    number,
    number,
  ];
  const isLong = font.getInt16(head + 50) === 1;
  const metricCount = font.getUint16(tableAt(font, 'hhea') + 34);
  const offset = (glyph: number): number =>
    isLong ? font.getUint32(loca + 4 * glyph) : 2 * font.getUint16(loca + 2 * glyph);
  const outline = (glyph: number): readonly Contour[] => {
    const at = glyf + offset(glyph);
    if (offset(glyph + 1) === offset(glyph)) return []; // a space
    const contours = font.getInt16(at);
    return contours >= 0 ? simple(font, at, contours) : composite(font, at, outline);
  };
  return {
    advance: (glyph) => font.getUint16(metrics + 4 * Math.min(glyph, metricCount - 1)),
    outline,
    glyphOf: (code) => glyphs.get(code) ?? 0,
    unitsPerEm: font.getUint16(head + 18),
  };
};

const flags = { on: 1, xShort: 2, yShort: 4, repeat: 8, xSameOrPositive: 16, ySameOrPositive: 32 } as const;

const simple = (font: DataView, at: number, contours: number): readonly Contour[] => {
  const ends = Array.from({ length: contours }, (_, i) => font.getUint16(at + 10 + 2 * i));
  const count = (ends.at(-1) ?? -1) + 1;
  const afterEnds = at + 10 + 2 * contours;
  let next = afterEnds + 2 + font.getUint16(afterEnds);
  const marks: number[] = [];
  while (marks.length < count) {
    const mark = font.getUint8(next++);
    const times = mark & flags.repeat ? font.getUint8(next++) + 1 : 1;
    for (let i = 0; i < times; i++) marks.push(mark);
  }
  const along = (short: number, same: number): readonly number[] => {
    let value = 0;
    return marks.map((mark) => {
      if (mark & short) value += mark & same ? font.getUint8(next++) : -font.getUint8(next++);
      else if (!(mark & same)) {
        value += font.getInt16(next);
        next += 2;
      }
      return value;
    });
  };
  const xs = along(flags.xShort, flags.xSameOrPositive);
  const ys = along(flags.yShort, flags.ySameOrPositive);
  const points = marks.map((mark, i): Point => ({ x: xs[i] ?? 0, y: ys[i] ?? 0, isOn: (mark & flags.on) !== 0 }));
  return ends.map((end, i) => points.slice((ends[i - 1] ?? -1) + 1, end + 1));
};

const parts = { words: 1, areOffsets: 2, scale: 8, more: 32, twoScales: 64, matrix: 128 } as const;

/** A letter put together from others, as é from e and ´. */
const composite = (font: DataView, at: number, outline: (glyph: number) => readonly Contour[]): readonly Contour[] => {
  const contours: Contour[] = [];
  let next = at + 10;
  for (;;) {
    const mark = font.getUint16(next);
    const glyph = font.getUint16(next + 2);
    const isWide = (mark & parts.words) !== 0;
    if (!(mark & parts.areOffsets)) throw new Error('a letter whose parts are joined at points');
    const [dx, dy] = isWide
      ? [font.getInt16(next + 4), font.getInt16(next + 6)]
      : [font.getInt8(next + 4), font.getInt8(next + 5)];
    next += isWide ? 8 : 6;
    const scales = mark & parts.matrix ? 4 : mark & parts.twoScales ? 2 : mark & parts.scale ? 1 : 0;
    const read = Array.from({ length: scales }, (_, i) => font.getInt16(next + 2 * i) / 16384);
    next += 2 * scales;
    const [a = 1, b = 0, c = 0, d = 1] = scales === 4 ? read : [read[0] ?? 1, 0, 0, read[1] ?? read[0] ?? 1];
    const moved = ({ x, y, isOn }: Point): Point => ({ x: a * x + c * y + dx, y: b * x + d * y + dy, isOn });
    contours.push(...outline(glyph).map((contour) => contour.map(moved)));
    if (!(mark & parts.more)) return contours;
  }
};

export interface SetLine {
  readonly text: string;
  readonly face: Face;
  /** Of the em, in the picture's unit. */
  readonly size: number;
  /** Where the line stands on its base, and which of its ends stands there. */
  readonly at: readonly [x: number, y: number];
  readonly anchor: 'start' | 'middle' | 'end';
}

/** The `d` of an SVG path. */
export const linePath = ({ text, face, size, at: [x, y], anchor }: SetLine): string => {
  const scale = size / face.unitsPerEm;
  const glyphs = [...text].map((sign) => face.glyphOf(sign.codePointAt(0) ?? 0));
  const width = glyphs.reduce((sum, glyph) => sum + face.advance(glyph), 0) * scale;
  let left = x - { start: 0, middle: width / 2, end: width }[anchor];
  let path = '';
  for (const glyph of glyphs) {
    const from = left;
    const place = ({ x: px, y: py }: Pick<Point, 'x' | 'y'>): string =>
      `${short(from + px * scale)} ${short(y - py * scale)}`;
    for (const contour of face.outline(glyph)) path += contourPath(contour, place);
    left += face.advance(glyph) * scale;
  }
  return path;
};

const short = (value: number): string => String(Math.round(value * 1000) / 1000);

/** Between two points off the curve lies one on it, half-way, which the font leaves out. */
const contourPath = (contour: Contour, place: (point: Pick<Point, 'x' | 'y'>) => string): string => {
  const full = contour.flatMap((point, i): readonly Point[] => {
    const before = contour.at(i - 1) ?? point;
    const half = { x: (before.x + point.x) / 2, y: (before.y + point.y) / 2, isOn: true };
    return before.isOn || point.isOn ? [point] : [half, point];
  });
  const first = full.findIndex(({ isOn }) => isOn);
  if (first < 0) return '';
  const round = [...full.slice(first), ...full.slice(0, first + 1)];
  let path = '';
  for (const [i, point] of round.entries()) {
    if (i === 0) path += `M${place(point)}`;
    else if (!point.isOn) path += `Q${place(point)} `;
    else path += round[i - 1]?.isOn === false ? place(point) : `L${place(point)}`;
  }
  return `${path}Z`;
};
