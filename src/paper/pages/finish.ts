// Finishing: backing, batting, quilting, binding, the label.
import type { QuiltPlan } from '#craft';
import type { EvenLines } from '#craft/finishing';
import { toNumber, zero } from '#ground/exact';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { drawBacking, drawBias, drawQuilting } from '#paper/drawing';
import { checkLength, checkSize, lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import type { Album, Picture } from './album.ts';
import { shown } from './album.ts';

export interface FinishPart {
  readonly heading: string;
  readonly lines: readonly string[];
  readonly picture?: Picture;
}

interface FinishOf {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly album: Album;
}

export const finishParts = (of: FinishOf): readonly FinishPart[] => {
  const { plan, signs } = of;
  return [
    { ...backing(plan, signs), ...backingPicture(of) },
    batting(plan),
    {
      heading: 'Layering and quilting',
      lines: [
        'Lay the backing wrong side up and smooth it flat; then the batting; then the top, right side up, in the middle.',
        'Baste the three layers with pins or thread, from the middle outward, a hand apart. Count the pins in and out.',
        'Quilt from the middle outward. Then trim batting and backing even with the top and square the corners.',
      ],
    },
    ...quiltingLines(of),
    ...sleeve(plan, signs),
    { ...binding(plan, signs), ...biasPicture(of) },
    label(plan, signs),
    ...bed(plan),
  ];
};

const quiltingLines = ({ plan, album }: FinishOf): readonly FinishPart[] => {
  const { batting } = plan.finish;
  if (batting === null) return [];
  const { unit, finish } = plan.quilt;
  const { upright, level } = batting.lines;
  const spacing = lengthOnPaper(toNumber(finish.batting?.spacing ?? zero), unit);
  const counted = (lines: EvenLines, way: string): string =>
    lines.count === 0
      ? `none ${way}`
      : `${lines.count} ${way}, ${checkLength(lines.apart, plan.quilt)} apart${lines.count === 1 ? ' from the edges' : ''}`;
  const words = `${counted(upright, 'from top to bottom')}, and ${counted(level, 'from side to side')}`;
  return [
    {
      heading: 'Quilting lines',
      lines: [
        `No part of the batting should lie free for more than ${spacing}; where its package says otherwise, keep to that. Straight lines do it: ${words}. Any pattern that leaves no larger gap will do as well.`,
      ],
      picture: shown(
        album,
        'quilting',
        drawQuilting({
          plan,
          lines: batting.lines,
          fitPt: [200, 150],
          alt: `Straight quilting lines over the top: ${words}.`,
        }),
      ),
    },
  ];
};

const backingPicture = ({ plan, signs, album }: FinishOf): { readonly picture?: Picture } => {
  const of = plan.finish.backing;
  if (of === null || of.panels === 1) return {};
  const run = of.run === 'upright' ? 'from top to bottom' : 'from side to side';
  const drawing = drawBacking({
    plan,
    backing: of,
    sign: signOf(signs, of.fabric),
    fitPt: [200, 150],
    alt: `The backing in ${of.panels} panels, seams ${run}; the top lies in its middle, its edge dashed.`,
  });
  return { picture: shown(album, 'backing', drawing) };
};

const biasPicture = ({ plan, signs, album }: FinishOf): { readonly picture?: Picture } => {
  const of = plan.finish.binding;
  if (of === null || of.bias === null) return {};
  const drawing = drawBias({
    sign: signOf(signs, of.fabric),
    side: lengthOnPaper(of.bias.side, plan.quilt.unit),
    alt: 'A square cut from corner to corner; its two halves joined to a slanted sheet along a straight-grain edge; lines on the sheet along its bias edges.',
  });
  return { picture: shown(album, 'bias', drawing) };
};

/** Sewn with the binding: the raw edges of the sleeve are caught in it. */
const sleeve = (plan: QuiltPlan, signs: ClothSigns): readonly FinishPart[] => {
  const of = plan.finish.sleeve;
  const { unit } = plan.quilt;
  if (of === null) return [];
  const joined =
    of.cuts.length < 2
      ? []
      : [`Join it end to end from ${of.cuts.map((cut) => sizeOnPaper(cut, unit)).join(' and ')}.`];
  return [
    {
      heading: 'Hanging sleeve',
      lines: [
        `Cut a strip ${sizeOnPaper(of.cut, unit)} from ${clothText(signs, of.fabric)}.`,
        ...joined,
        `Turn each end in twice and sew it: the sleeve is then ${checkLength(of.finished[0], plan.quilt)} long. Fold it along its length, wrong sides together, and lay its raw edges even with the upper edge of the back, in the middle, before the binding is sewn on.`,
        'When the binding is on, push the lower fold up a little, so that the rod has room and the front stays flat, and sew the fold to the back by hand; no stitch goes through to the front.',
      ],
    },
  ];
};

const label = (plan: QuiltPlan, signs: ClothSigns): FinishPart => {
  const of = plan.finish.label;
  const { unit } = plan.quilt;
  const words = 'the name of the quilt, who made it, when and where';
  if (of === null) return { heading: 'Label', lines: [`Sew a label to the back: ${words}.`] };
  return {
    heading: 'Label',
    lines: [
      `Cut the label ${sizeOnPaper(of.cut, unit)} from ${clothText(signs, of.fabric)}: ${sizeOnPaper(of.finished, unit)} when its edges are turned under.`,
      `Write on it ${words}, and sew it to the back.`,
    ],
  };
};

const bedWords = {
  twin: 'a twin',
  'twin-xl': 'a long twin',
  full: 'a full',
  queen: 'a queen',
  king: 'a king',
  'california-king': 'a California king',
} as const;

const bed = (plan: QuiltPlan): readonly FinishPart[] => {
  const of = plan.finish.bed;
  const { unit } = plan.quilt;
  if (of === null) return [];
  const { set } = plan.top;
  const lacks = Math.max(...of.lacks) > 1e-9;
  return [
    {
      heading: 'On the bed',
      lines: [
        `For ${bedWords[of.size]} mattress of ${sizeOnPaper(of.mattress, unit)}, with the drop and tuck asked for, a quilt should be ${sizeOnPaper(of.wanted, unit)}. This one is ${checkSize([set.width, set.height], plan.quilt)}${lacks ? ', and hangs down less' : ''}. Mattresses differ: measure yours, with what lies on it.`,
      ],
    },
  ];
};

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
  const { unit } = plan.quilt;
  const bought =
    of.package === null
      ? 'That is larger than the packages commonly sold: buy it by the length, or join two with their edges butted, not overlapped.'
      : `A package commonly marked “${of.package.name}”, ${sizeOnPaper([of.package.width, of.package.height], unit)}, is large enough; makers differ, so read the package.`;
  return {
    heading: 'Batting',
    lines: [`Cut the batting ${checkSize([of.width, of.height], plan.quilt)}. ${bought}`],
  };
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
      `That gives ${checkLength(of.gives, plan.quilt)}, the seams counted; round the quilt and for the tails it takes ${checkLength(of.length, plan.quilt)}.`,
      'Handle it gently: a bias edge stretches. Fold it in half along its length, wrong sides together, and sew it on as any binding.',
    ],
  };
};
