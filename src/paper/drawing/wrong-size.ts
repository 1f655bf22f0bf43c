// A unit that came out the wrong size: what was measured and what it should be, the piece and the seams to look at, what is
// to be trimmed off, or the strips to sew round it.
import type { BlockPlan, PlannedStep } from '#craft';
import { boxOf, centroid, grown, hullOf, type Polygon } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { cutEdgePt, hairlinePt, hush, ink, lettering, softInk, thread } from './ink.ts';
import { drawLabels } from './label.ts';
import { drawPatches, patchLabels } from './patches.ts';
import { rectOutline } from './placed.ts';
import { framed, lineOf, pathOf } from './shape.ts';
import { type Drawing, element, numberText, picture } from './svg.ts';

export interface WrongSize {
  readonly block: BlockPlan;
  readonly signs: ClothSigns;
  readonly seam: number;
  /** The last that was measured. */
  readonly step: PlannedStep;
  /** Labels of pieces to look at, and numbers of the steps whose seams are to be sewn again. */
  readonly pieces: readonly string[];
  readonly again: readonly number[];
  /** In width and in height; null where nothing is trimmed. */
  readonly trim: readonly [number, number] | null;
  /** The label of the piece at whose edge it is trimmed; null: as much at either side. */
  readonly trimAt: string | null;
  /** Finished widths of strips at the sides, and at top and bottom; null for none. */
  readonly strips: readonly [number, number] | null;
  /** What stands at its width and its height. */
  readonly words: readonly [string, string];
  readonly fitPt: readonly [number, number];
  readonly alt: string;
}

const marginPt = 30;
const letterPt = 10;

export const drawWrongSize = (of: WrongSize): Drawing => {
  const patches = [...new Set(of.step.patches.flat())];
  const outlines = patches.map((patch) => of.block.patches[patch]?.points as Polygon);
  const unit = hullOf(outlines.flat(), 1e-6 * Math.max(...of.block.finished));
  const cut = grown(unit, of.seam);
  const raw = boxOf(cut);
  const [across, down] = of.strips ?? [0, 0];
  const whole = { width: raw.width + 2 * across, height: raw.height + 2 * down };
  const scale = Math.min((of.fitPt[0] - 2 * marginPt) / whole.width, (of.fitPt[1] - 2 * marginPt) / whole.height);
  const frame = {
    scale,
    x: marginPt - (raw.x - across) * scale,
    y: marginPt - (raw.y - down) * scale,
  };
  const at = (polygon: Polygon): Polygon => framed(polygon, frame);
  const laid = patches.map((patch, i) => ({
    patch: of.block.patches[patch] as BlockPlan['patches'][number],
    outline: at(outlines[i] as Polygon),
  }));
  const size = { widthPt: whole.width * scale + 2 * marginPt, heightPt: whole.height * scale + 2 * marginPt };
  const edge = boxOf(at(cut));
  return picture({
    ...size,
    alt: of.alt,
    parts: [
      ...stripsRound(of, size),
      outlined(at(cut), { fill: hush, stroke: ink, width: cutEdgePt }),
      ...drawPatches({ laid, signs: of.signs, fill: 'colour' }),
      ...drawLabels({ labels: patchLabels(laid, of.signs), bounds: edge, tooSmall: 'leave-out' }),
      ...laid
        .filter(({ patch }) => of.pieces.includes(patch.piece))
        .map(({ outline }) => outlined(outline, { fill: 'none', stroke: thread, width: 2.5 })),
      ...of.block.steps
        .filter(({ number }) => of.again.includes(number) && number <= of.step.number)
        .map(({ line }) => run(at(line))),
      ...trimmedOff(of, edge, { scale, at: laid.find(({ patch }) => patch.piece === of.trimAt)?.outline ?? null }),
      ...measures(of.words, edge),
    ],
  });
};

const outlined = (
  polygon: Polygon,
  of: { readonly fill: string; readonly stroke: string; readonly width: number; readonly dashes?: string },
): string =>
  element('path', {
    d: pathOf([polygon]),
    fill: of.fill,
    stroke: of.stroke,
    'stroke-width': of.width,
    'stroke-dasharray': of.dashes,
    'stroke-linejoin': 'round',
  });

const run = (line: Polygon): string =>
  element('path', {
    d: lineOf(line),
    fill: 'none',
    stroke: thread,
    'stroke-width': 2.5,
    'stroke-dasharray': '5 3',
  });

const stripsRound = (
  { strips }: WrongSize,
  { widthPt, heightPt }: { readonly widthPt: number; readonly heightPt: number },
): readonly string[] =>
  strips === null
    ? []
    : [
        outlined(
          rectOutline({ x: marginPt, y: marginPt, width: widthPt - 2 * marginPt, height: heightPt - 2 * marginPt }),
          { fill: 'none', stroke: thread, width: 1.5, dashes: '5 3' },
        ),
      ];

/** The least that a cut is drawn inside the edge, so that it can be told from it. */
const leastPt = 4;

/** Where the unit is to end: what lies outside it goes. */
const trimmedOff = (
  { trim }: WrongSize,
  edge: ReturnType<typeof boxOf>,
  { scale, at }: { readonly scale: number; readonly at: Polygon | null },
): readonly string[] => {
  if (trim === null) return [];
  const [x, y] = trim.map((by) => (by <= 0 ? 0 : Math.max(leastPt, by * scale))) as [number, number];
  const middle = at === null ? null : centroid(at);
  // all of it at the side where the piece lies, else half at each
  const before = (from: number, long: number, place: number | undefined): number =>
    place === undefined ? 0.5 : place < from + long / 2 ? 1 : 0;
  const inner = {
    x: edge.x + x * before(edge.x, edge.width, middle?.x),
    y: edge.y + y * before(edge.y, edge.height, middle?.y),
    width: edge.width - x,
    height: edge.height - y,
  };
  return [outlined(rectOutline(inner), { fill: 'none', stroke: thread, width: 1.5, dashes: '5 3' })];
};

/** What was measured stands above and at the left, along the edges. */
export const measures = (
  [width, height]: readonly [string, string],
  edge: ReturnType<typeof boxOf>,
): readonly string[] => {
  const middle = { x: edge.x + edge.width / 2, y: edge.y + edge.height / 2 };
  const upright = lettering({ text: height, x: 0, y: 0, sizePt: letterPt });
  const turn = `translate(${numberText(edge.x - 14)} ${numberText(middle.y)}) rotate(-90)`;
  const line = (d: string): string => element('path', { d, fill: 'none', stroke: softInk, 'stroke-width': hairlinePt });
  return [
    ...(width === '' ? [] : [lettering({ text: width, x: middle.x, y: edge.y - 14, sizePt: letterPt })]),
    ...(height === '' ? [] : [element('g', { transform: turn }, upright)]),
    ...(width === '' ? [] : [line(`M${numberText(edge.x)} ${numberText(edge.y - 6)}h${numberText(edge.width)}`)]),
    ...(height === '' ? [] : [line(`M${numberText(edge.x - 6)} ${numberText(edge.y)}v${numberText(edge.height)}`)]),
  ];
};
