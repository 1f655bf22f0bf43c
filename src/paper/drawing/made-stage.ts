// A step of units that are made together, as it lies at the machine: whole squares right sides together, the lower one even with the
// edges or showing beside, what is drawn, sewn and cut.
import type { StepWay } from '#craft';
import { length } from '#craft/measure';
import { type Line, type Stage, stageFor } from '#craft/ways';
import { type Box, boxOf, centroid, distance, type Point, type Polygon } from '#ground/plane';
import { signOf } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import { ink, inkOn, patchEdgePt, softInk } from './ink.ts';
import { drawLabels } from './label.ts';
import { cutLine, sewnLine } from './machine-lines.ts';
import { wrongSide, wrongSideUp } from './machine-marks.ts';
import { rectOutline } from './placed.ts';
import { patchAt } from './seam.ts';
import { fitted, framed, lineOf, pathOf } from './shape.ts';
import type { StepPicture } from './step.ts';
import type { Drawing } from './svg.ts';
import { element, group, picture } from './svg.ts';

/** The lower part shows by so much of its side, so that one sees that there are two. */
const peepPt = 3.5;

/** @param of.seam the allowance, in the document's unit; null where the step is sewn as every other */
export const drawMadeStage = (
  of: StepPicture & {
    readonly made: StepWay;
    readonly seam: number;
    /** Which cuts. */
    readonly hand: Hand;
  },
): Drawing | null => {
  const { block, made, signs } = of;
  const whole = stageFor({ ...made, seam: length(of.seam) });
  if (whole === null) return null;
  const stage = of.hand === 'left' ? cutFromRight(shortened(whole)) : shortened(whole);
  const clothAt = (place: number) => patchAt(block, made.unit.patches[place] as number);
  const all = [...stage.under, ...stage.over].flatMap(({ outline }) => outline);
  const frame = fitted({
    box: boxOf(all),
    into: { x: 6, y: 6, width: of.fitPt[0] - 12 - peepPt, height: of.fitPt[1] - 12 - peepPt },
  });
  const onPaper = (outline: Polygon): Polygon => framed(outline, frame);
  const below = { ...frame, x: frame.x + peepPt, y: frame.y + peepPt };
  const under = stage.under.map(({ place, outline }) => ({ patch: clothAt(place), outline: framed(outline, below) }));
  const over = stage.over.map(({ place, outline }) => ({ patch: clothAt(place), outline: onPaper(outline) }));
  const bounds = boxOf([...under, ...over].flatMap(({ outline }) => outline));
  const fillOf = (fabric: string) => signOf(signs, fabric).colour;
  const names = over.map(({ patch, outline }) => ({ text: patch.piece, outline: aside(outline), fill: ink }));
  const covered = boxOf(over.flatMap(({ outline }) => outline));
  const isCovered = covered.width > 0.9 * bounds.width - peepPt && covered.height > 0.9 * bounds.height - peepPt;
  return picture({
    widthPt: of.fitPt[0],
    heightPt: of.fitPt[1],
    alt: of.alt,
    parts: [
      wrongSide,
      group(
        { class: 'step-unit' },
        under.map(({ patch, outline }) =>
          element('path', {
            d: pathOf([outline]),
            fill: fillOf(patch.fabric),
            stroke: ink,
            'stroke-width': patchEdgePt,
            'stroke-linejoin': 'round',
          }),
        ),
      ),
      group({ class: 'step-next' }, [
        ...over.map(({ patch, outline }) => wrongSideUp([outline], fillOf(patch.fabric))),
        ...drawLabels({ labels: names, bounds, tooSmall: 'leave-out' }),
      ]),
      ...(isCovered
        ? []
        : drawLabels({
            labels: under.map(({ patch, outline }) => ({
              text: patch.piece,
              outline,
              fill: inkOn(fillOf(patch.fabric)),
            })),
            bounds,
            tooSmall: 'leave-out',
          })),
      group(
        { class: 'step-cut' },
        stage.cut.map((line) => cutLine(onPaper(line))),
      ),
      group(
        { class: 'step-drawn' },
        stage.drawn.map((line) => drawnLine(onPaper(line))),
      ),
      group(
        { class: 'step-seam' },
        stage.sewn.map((line) => sewnLine(onPaper(line))),
      ),
    ],
  });
};

/** Of a strip set its end, so long that a few cuts are seen. */
const shortened = (stage: Stage): Stage => {
  if (stage.slices === undefined) return stage;
  const box = boxOf([...stage.under, ...stage.over].flatMap(({ outline }) => outline));
  const most = Math.min(box.width, mostStripShare * box.height);
  const short = (line: Line): Line => [
    { x: Math.min(line[0].x, most), y: line[0].y },
    { x: Math.min(line[1].x, most), y: line[1].y },
  ];
  const shortFace = (face: Stage['under']): Stage['under'] =>
    face.map(({ place, outline }) => ({ place, outline: outline.map((p) => ({ x: Math.min(p.x, most), y: p.y })) }));
  return {
    ...stage,
    under: shortFace(stage.under),
    over: shortFace(stage.over),
    sewn: stage.sewn.map(short),
    cut: stage.cut.filter(([from]) => from.x < most - 1e-6),
  };
};

/** A left-handed cutter takes slices from a strip set's right end. Corners and squares lie as their unit has them, whoever cuts. */
const cutFromRight = (stage: Stage): Stage => {
  if (stage.slices === undefined) return stage;
  const box = boxOf([...stage.under, ...stage.over].flatMap(({ outline }) => outline));
  const turned = ({ x, y }: Point): Point => ({ x: 2 * box.x + box.width - x, y });
  const face = (of: Stage['under']): Stage['under'] =>
    of.map(({ place, outline }) => ({ place, outline: outline.map(turned).toReversed() }));
  const line = ([from, to]: Line): Line => [turned(from), turned(to)];
  return {
    ...stage,
    under: face(stage.under),
    over: face(stage.over),
    sewn: stage.sewn.map(line),
    cut: stage.cut.map(line),
  };
};

/** Of its height. */
const mostStripShare = 2.2;

/** Beside the lines, which go through the middle. */
const aside = (outline: Polygon): Polygon =>
  outline.length === 3 ? asideInTriangle(outline) : asideInBox(boxOf(outline));

const asideInBox = ({ x, y, width, height }: Box): Polygon =>
  rectOutline({ x: x + width * 0.04, y: y + height * 0.2, width: width * 0.32, height: height * 0.32 });

/** From the middle along the longest side, so that two halves of one square have their names apart. */
const asideInTriangle = (outline: Polygon): Polygon => {
  const [from, to] = outline
    .map((p, i) => [p, outline[(i + 1) % 3] ?? p] as const)
    .reduce((longest, [a, b]) => (distance(a, b) > distance(longest[0], longest[1]) + 1e-6 ? [a, b] : longest));
  const [left, right] = from.x < to.x ? [from, to] : [to, from];
  const middle = centroid(outline);
  const side = distance(left, right);
  const x = middle.x + 0.2 * (left.x - right.x);
  const y = middle.y + 0.2 * (left.y - right.y);
  return rectOutline({ x: x - 0.1 * side, y: y - 0.1 * side, width: 0.2 * side, height: 0.2 * side });
};

const drawnLine = (line: Polygon): string =>
  element('path', { d: lineOf(line), stroke: softInk, 'stroke-width': 0.5, fill: 'none' });
