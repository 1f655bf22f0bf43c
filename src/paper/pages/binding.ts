// The binding: which strips, how they are joined, and how it is sewn on, corner by corner, for who has never done it.
import type { QuiltPlan } from '#craft';
import { toNumber } from '#ground/exact';
import { signOf } from '#paper/cloth';
import { drawBias, drawBindingCorner } from '#paper/drawing';
import { checkLength, lengthOnPaper } from '#paper/lengths';
import { counted } from '#paper/words';
import { type Picture, shown } from './album.ts';
import { clothText, type FinishOf, type FinishPart, takenMarks } from './finish-part.ts';

/** How it is made and sewn on: common practice, no source. */
export const binding = (of: FinishOf): readonly FinishPart[] => {
  const { plan } = of;
  const planned = plan.finish.binding;
  if (planned === null) return [{ heading: 'Binding', lines: ['This pattern plans no binding.'] }];
  return [
    planned.bias === null ? straightBinding(of, planned) : biasBinding(of, planned, planned.bias),
    { heading: 'Sewing on the binding', lines: sewingLines(plan, planned.cut), picture: cornerPicture(of, planned) },
  ];
};

type Binding = NonNullable<QuiltPlan['finish']['binding']>;

const cornerPicture = ({ signs, album }: FinishOf, { fabric }: Binding): Picture =>
  shown(
    album,
    'binding-corner',
    drawBindingCorner(
      signOf(signs, fabric),
      'The lower right corner of the quilt three times: 1, the binding sewn down along the right edge, the seam ending an allowance before the lower edge; 2, the binding folded out to the right, its fold at 45° over the corner; 3, folded back to the left along the lower edge and sewn from the fold.',
    ),
  );

const straightBinding = (of: FinishOf, planned: Binding): FinishPart => {
  const { plan } = of;
  const { unit } = plan.quilt;
  const strips = planned.strips === 1 ? 'the strip' : `the ${planned.strips} strips`;
  return {
    heading: 'Binding',
    lines: [
      `Take ${strips} ${takenMarks(of, { role: 'binding', fabric: planned.fabric })}, ${lengthOnPaper(planned.cut, unit)} by the width of ${clothText(of.signs, planned.fabric)}.`,
      ...joinLines(plan, planned.joins),
      `That gives ${lengthOnPaper(planned.gives, unit)}; round the quilt and for the tails it takes ${checkLength(planned.length, plan.quilt)}.`,
      'Fold it in half along its length, wrong sides together, and press.',
    ],
  };
};

const joinLines = ({ quilt }: QuiltPlan, joins: number): readonly string[] =>
  joins === 0
    ? []
    : [
        `Join them end to end with ${counted(joins, 'join')} at 45°: lay one end across the other at right angles, right sides together; sew from corner to corner over the square where they cross; trim to ${lengthOnPaper(toNumber(quilt.seam), quilt.unit)} and press the seam open.`,
      ];

const biasBinding = (of: FinishOf, planned: Binding, bias: NonNullable<Binding['bias']>): FinishPart => {
  const { plan, signs, album } = of;
  const { unit } = plan.quilt;
  const { side, squares } = bias;
  const across = lengthOnPaper(side, unit);
  const marks = takenMarks(of, { role: 'binding', fabric: planned.fabric });
  return {
    heading: 'Binding on the bias',
    lines: [
      `Take ${squares === 1 ? 'the square' : `the ${squares} squares`} ${marks}, ${across}, of ${clothText(signs, planned.fabric)}.`,
      `Cut ${squares === 1 ? 'it' : 'each'} once, corner to corner. Sew the two triangles together along two straight-grain edges, right sides facing, so that they make a slanted sheet; press the seam open.`,
      `Draw lines ${lengthOnPaper(planned.cut, unit)} apart along the bias edges. Sew the two straight-grain edges to a tube with the lines one step out of line, and cut along the lines: one long strip.`,
      ...(planned.joins === 0 ? [] : ['Join what the squares give end to end at 45°.']),
      `That gives ${checkLength(planned.gives, plan.quilt)}, the seams counted; round the quilt and for the tails it takes ${checkLength(planned.length, plan.quilt)}.`,
      'Handle it gently: a bias edge stretches. Fold it in half along its length, wrong sides together, and press.',
    ],
    picture: shown(
      album,
      'bias',
      drawBias({
        sign: signOf(signs, planned.fabric),
        side: across,
        alt: 'A square cut from corner to corner; its two halves joined to a slanted sheet along a straight-grain edge; lines on the sheet along its bias edges.',
      }),
    ),
  };
};

/** Left loose at the start, and left unsewn before it; common practice, no source. */
const tailAndGap = { in: [8, 10], cm: [20, 25] } as const;

const sewingLines = ({ quilt, top }: QuiltPlan, cut: number): readonly string[] => {
  const { unit } = quilt;
  const seam = lengthOnPaper(toNumber(quilt.seam), unit);
  // no longer than half a side of a small quilt
  const half = Math.max(1, Math.floor(Math.max(top.set.width, top.set.height) / 2));
  const [tail, gap] = tailAndGap[unit].map((value) => lengthOnPaper(Math.min(value, half), unit));
  return [
    `Sew it to the front with an allowance of ${seam}, raw edges even with the edge of the quilt. Begin in the middle of a side and leave a tail of ${tail} loose.`,
    `At a corner stop ${seam} before the edge, back-stitch, and take the quilt from the needle (1). Fold the binding away from the quilt, in line with the next edge, so that its fold lies at 45° over the corner (2). Then fold it back over itself along that edge, the new fold even with the edge just sewn, and sew on from that fold (3).`,
    `Stop ${gap} before the first stitch. Lay both tails flat along the gap and cut them so that they overlap by ${lengthOnPaper(cut, unit)}; open them, join them at 45° as above, fold again, and sew the gap shut.`,
    'Turn the fold over the edge to the back until it covers the seam, lay each corner in a mitre, and sew it down by hand.',
  ];
};
