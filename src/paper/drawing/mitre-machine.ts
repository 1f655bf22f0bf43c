// A mitre at the machine: the quilt folded at the corner, right sides together, the two strips on each other with their edges even, the
// fold running on into the seam at 45°, and what of the strips lies past it, to be trimmed to an allowance.
import { toNumber } from '#ground/exact';
import { at, boxOf, type Point } from '#ground/plane';
import { signOf } from '#paper/cloth';
import { ink, lettering, patchEdgePt, softInk } from './ink.ts';
import { cutLine } from './machine-lines.ts';
import { seamLine, wrongSide, wrongSideUp } from './machine-marks.ts';
import { fitted, framed, pathOf } from './shape.ts';
import type { Drawing } from './svg.ts';
import { element, group, picture } from './svg.ts';
import { stripAt } from './things.ts';
import { mitreStrips } from './top-seam.ts';
import type { TopStepPicture } from './top-step.ts';

/** The lower strip shows by so much, so that one sees that there are two. */
const peepPt = 3;
const edgePt = 8;
/** How much of quilt and strip is shown, and how far the strip's end stands out past the corner, in widths of the strip. */
const shown = 1.7;
const past = 0.9;

export const drawMitreMachine = (of: TopStepPicture): Drawing => {
  const { plan, step, signs } = of;
  const wide = step.seam / Math.SQRT2;
  const allowed = toNumber(plan.quilt.seam);
  const raw = wide + allowed;
  // the strip runs level, its inner edge at the quilt, before all is turned until the seam runs down
  const turned = ({ x, y }: Point): Point => at((x - y) / Math.SQRT2, (x + y) / Math.SQRT2);
  const strip = [
    at(-shown * wide, 0),
    at(raw + past * wide, 0),
    at(raw + past * wide, raw),
    at(-shown * wide, raw),
  ].map(turned);
  const quilt = [at(0, 0), at(-shown * wide, 0), at(-shown * wide, -shown * wide)].map(turned);
  const seam = [at(0, 0), at(raw, raw)].map(turned);
  const fold = [at(-shown * wide, -shown * wide), at(0, 0)].map(turned);
  const trim = seam.map(({ x, y }) => at(x + allowed, y));
  const [width, height] = of.fitPt;
  const frame = fitted({
    box: boxOf([...strip, ...quilt]),
    into: { x: edgePt, y: edgePt, width: width - 2 * edgePt - peepPt, height: height - 2 * edgePt - peepPt },
  });
  const below = { ...frame, x: frame.x - peepPt, y: frame.y + peepPt };
  const [under, over] = mitreStrips(plan, step).map((thing) => signOf(signs, stripAt(plan, thing.strip).fabric).colour);
  const [foldFrom, foldTo] = framed(fold, frame) as [Point, Point];
  return picture({
    widthPt: width,
    heightPt: height,
    alt: of.alt,
    parts: [
      wrongSide,
      group({ class: 'step-unit' }, [
        element('path', {
          d: pathOf([framed(strip, below)]),
          fill: under ?? '#ffffff',
          stroke: ink,
          'stroke-width': patchEdgePt,
          'stroke-linejoin': 'round',
        }),
      ]),
      group({ class: 'step-next' }, [wrongSideUp([framed(quilt, frame)]), wrongSideUp([framed(strip, frame)], over)]),
      group({ class: 'step-cut' }, [cutLine(framed(trim, frame))]),
      group({ class: 'step-seam' }, [seamLine(framed(seam, frame))]),
      lettering({
        text: 'fold',
        x: foldTo.x - 4,
        y: foldFrom.y + 0.35 * (foldTo.y - foldFrom.y),
        sizePt: 7,
        fill: softInk,
        anchor: 'end',
      }),
    ],
  });
};
