// Finishing: backing, batting, quilting, binding, the label.
import type { QuiltPlan } from '#craft';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { checkLength, checkSize, lengthOnPaper, sizeOnPaper } from '#paper/lengths';

export interface FinishPart {
  readonly heading: string;
  readonly lines: readonly string[];
}

export const finishParts = (plan: QuiltPlan, signs: ClothSigns): readonly FinishPart[] => [
  backing(plan, signs),
  batting(plan),
  {
    heading: 'Layering and quilting',
    lines: [
      'Lay the backing wrong side up and smooth it flat; then the batting; then the top, right side up, in the middle.',
      'Baste the three layers with pins or thread, from the middle outward, a hand apart. Count the pins in and out.',
      'Quilt from the middle outward. Then trim batting and backing even with the top and square the corners.',
    ],
  },
  binding(plan, signs),
  { heading: 'Label', lines: ['Sew a label to the back: the name of the quilt, who made it, when and where.'] },
];

const clothText = (signs: ClothSigns, fabric: string): string => {
  const sign = signOf(signs, fabric);
  return `cloth ${sign.letter}, ${sign.name}`;
};

const backing = (plan: QuiltPlan, signs: ClothSigns): FinishPart => {
  const of = plan.finish.backing;
  const { unit } = plan.quilt;
  if (of === null)
    return {
      heading: 'Backing',
      lines: ['This pattern plans no backing. It should be larger than the top on every side.'],
    };
  const size = checkSize([of.width, of.height], plan.quilt);
  const cuts = [...new Map(of.cuts.map((cut) => [cut.join(), cut])).values()];
  const counted = cuts.map((cut) => {
    const count = of.cuts.filter((other) => other.join() === cut.join()).length;
    return `${count} of ${sizeOnPaper(cut, unit)}`;
  });
  if (of.panels === 1) {
    return {
      heading: 'Backing',
      lines: [`The backing is one piece of ${clothText(signs, of.fabric)}: ${counted.join(', ')}. It is ${size}.`],
    };
  }
  return {
    heading: 'Backing',
    lines: [
      `The backing is ${size}, in ${of.panels} panels of ${clothText(signs, of.fabric)} (across the cloth × along it): ${counted.join(', ')}.`,
      `Cut off the selvages, join the panels along their long sides, and press the seams open. The seams run ${of.run === 'upright' ? 'from top to bottom' : 'from side to side'}.`,
    ],
  };
};

const batting = (plan: QuiltPlan): FinishPart => {
  const of = plan.finish.batting;
  if (of === null)
    return {
      heading: 'Batting',
      lines: ['This pattern plans no batting. It should be larger than the top on every side.'],
    };
  return { heading: 'Batting', lines: [`Cut the batting ${checkSize([of.width, of.height], plan.quilt)}.`] };
};

const binding = (plan: QuiltPlan, signs: ClothSigns): FinishPart => {
  const of = plan.finish.binding;
  const { unit } = plan.quilt;
  if (of === null) return { heading: 'Binding', lines: ['This pattern plans no binding.'] };
  if (of.bias !== null) return biasBinding(plan, signs);
  const joins = of.joins === 1 ? '1 join' : `${of.joins} joins`;
  return {
    heading: 'Binding',
    lines: [
      `Cut ${of.strips} ${of.strips === 1 ? 'strip' : 'strips'} ${lengthOnPaper(of.cut, unit)} by the width of ${clothText(signs, of.fabric)}.`,
      ...(of.joins === 0 ? [] : [`Join them end to end with ${joins} at 45°, trim, and press the seams open.`]),
      `That gives ${lengthOnPaper(of.gives, unit)}; round the quilt and for the tails it takes ${checkLength(of.length, plan.quilt)}.`,
      'Fold the binding in half along its length, wrong sides together, and press. Sew it to the front with raw edges even, folding a mitre at each corner; join the tails; turn it to the back and sew it down.',
    ],
  };
};

const biasBinding = (plan: QuiltPlan, signs: ClothSigns): FinishPart => {
  const of = plan.finish.binding;
  const { unit } = plan.quilt;
  if (of === null || of.bias === null) return { heading: 'Binding', lines: [] };
  const { side, squares } = of.bias;
  return {
    heading: 'Binding on the bias',
    lines: [
      `Cut ${squares === 1 ? 'a square' : `${squares} squares`} of ${lengthOnPaper(side, unit)} from ${clothText(signs, of.fabric)}.`,
      `Cut ${squares === 1 ? 'it' : 'each'} once, corner to corner. Sew the two triangles together along two straight-grain edges, right sides facing, so that they make a slanted sheet; press the seam open.`,
      `Draw lines ${lengthOnPaper(of.cut, unit)} apart along the bias edges. Sew the two straight-grain edges to a tube with the lines one step out of line, and cut along the lines: one long strip.`,
      ...(of.joins === 0 ? [] : [`Join what the squares give end to end at 45°.`]),
      `That gives ${lengthOnPaper(of.gives, unit)}, the seams counted; round the quilt and for the tails it takes ${lengthOnPaper(of.length, unit)}.`,
      'Handle it gently: a bias edge stretches. Fold it in half along its length, wrong sides together, and sew it on as any binding.',
    ],
  };
};
