// Finishing: backing, batting, quilting, binding, the label.
import type { QuiltPlan } from '#craft';
import { type EvenLines, joinAllowance } from '#craft/finishing';
import { toNumber, zero } from '#ground/exact';
import { signOf } from '#paper/cloth';
import { drawBacking, drawQuilting, drawSleeve } from '#paper/drawing';
import { checkLength, checkSize, lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import type { Picture } from './album.ts';
import { shown } from './album.ts';
import { binding } from './binding.ts';
import { clothText, type FinishOf, type FinishPart, takenMarks } from './finish-part.ts';
import { moneyText } from './money.ts';

/** What the chapter tells of, in its order. */
export type FinishTopic = 'backing' | 'batting' | 'quilting' | 'sleeve' | 'binding' | 'label' | 'bed';

export const finishParts = (of: FinishOf): readonly FinishPart[] => finishTold(of).flatMap(({ parts }) => parts);

export const finishTold = (
  of: FinishOf,
): readonly { readonly topic: FinishTopic; readonly parts: readonly FinishPart[] }[] => [
  { topic: 'backing', parts: [{ ...backing(of), ...backingPicture(of) }] },
  { topic: 'batting', parts: [batting(of.plan)] },
  { topic: 'quilting', parts: [layering, ...quiltingLines(of)] },
  { topic: 'sleeve', parts: sleeve(of) },
  { topic: 'binding', parts: binding(of) },
  { topic: 'label', parts: [label(of)] },
  { topic: 'bed', parts: bed(of.plan) },
];

const layering: FinishPart = {
  heading: 'Layering and quilting',
  lines: [
    'Lay the backing wrong side up and tape its edges down, flat but not stretched; then the batting; then the top, pressed, right side up, in the middle.',
    'Baste the three layers with pins or thread, from the middle outward, a hand apart. Count the pins in and out.',
    'To quilt is to sew through all three layers: with the walking foot and a stitch a little longer than for seams, from the middle outward. Then trim batting and backing even with the top and square the corners.',
  ],
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
          fitPt: [180, 128],
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
    fitPt: [180, 128],
    alt: `The backing in ${of.panels} panels, seams ${run}; the top lies in its middle, its edge dashed.`,
  });
  return { picture: shown(album, 'backing', drawing) };
};

/** Sewn with the binding: the raw edges of the sleeve are caught in it. */
const sleeve = (chapter: FinishOf): readonly FinishPart[] => {
  const { plan, signs } = chapter;
  const of = plan.finish.sleeve;
  const { unit } = plan.quilt;
  if (of === null) return [];
  const joined =
    of.cuts.length < 2
      ? []
      : [
          `Join it end to end from ${of.cuts.map((cut) => sizeOnPaper(cut, unit)).join(' and ')}, and press the seam open.`,
        ];
  return [
    {
      heading: 'Hanging sleeve',
      lines: [
        `Take ${takenMarks(chapter, { role: 'sleeve', fabric: of.fabric })} of ${clothText(signs, of.fabric)}, for a strip of ${sizeOnPaper(of.cut, unit)}.`,
        ...joined,
        `Turn each end in twice and sew it: the sleeve is then ${checkLength(of.finished[0], plan.quilt)} long. Fold it along its length, wrong sides together, and lay its raw edges even with the upper edge of the back, in the middle, before the binding is sewn on.`,
        'When the binding is on, push the lower fold up a little, so that the rod has room and the front stays flat, and sew the fold to the back by hand; no stitch goes through to the front.',
      ],
      picture: sleevePicture(chapter, of),
    },
  ];
};

const sleevePicture = (
  { plan, signs, album }: FinishOf,
  sleeve: NonNullable<QuiltPlan['finish']['sleeve']>,
): Picture => {
  const { backing, binding } = plan.finish;
  const size = checkSize(sleeve.finished, plan.quilt);
  return shown(
    album,
    'sleeve',
    drawSleeve({
      plan,
      sleeve,
      sign: signOf(signs, sleeve.fabric),
      back: backing && signOf(signs, backing.fabric),
      edge: binding && signOf(signs, binding.fabric),
      widthPt: 300,
      alt: `The upper part of the back: the sleeve, ${size}, lies along the upper edge in the middle${binding === null ? '' : ', its raw edges under the binding'}; its lower fold is sewn down, dashed.`,
    }),
  );
};

const label = (chapter: FinishOf): FinishPart => {
  const { plan, signs } = chapter;
  const of = plan.finish.label;
  const { unit } = plan.quilt;
  const words = 'the name of the quilt, who made it, when and where';
  if (of === null) return { heading: 'Label', lines: [`Sew a label to the back: ${words}.`] };
  return {
    heading: 'Label',
    lines: [
      `Take ${takenMarks(chapter, { role: 'label', fabric: of.fabric })}, ${sizeOnPaper(of.cut, unit)} of ${clothText(signs, of.fabric)}: ${sizeOnPaper(of.finished, unit)} when its edges are turned under.`,
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

const backing = (chapter: FinishOf): FinishPart => {
  const { plan, signs } = chapter;
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
    return `${count} of ${sizeOnPaper(cut, unit)} (${takenMarks(chapter, { role: 'backing', fabric: of.fabric, cut })})`;
  });
  if (of.panels === 1) {
    const [cut] = of.cuts;
    const marks = takenMarks(chapter, { role: 'backing', fabric: of.fabric });
    // of a piece as wide across the cloth as the backing is, the selvages run down
    const isUpright = cut === undefined || Math.abs(cut[0] - of.width) < 1e-6;
    return {
      heading: 'Backing',
      lines: [
        `The backing is one piece, ${marks} of ${clothText(signs, of.fabric)}: it lies ${size}, its selvages from ${isUpright ? 'top to bottom' : 'side to side'}.`,
      ],
    };
  }
  return {
    heading: 'Backing',
    lines: [
      `The backing is ${size}, in ${of.panels} panels of ${clothText(signs, of.fabric)} (across the cloth × along it): ${counted.join(', ')}.`,
      `Cut off the selvages, join the panels along their long sides with allowances of ${checkLength(joinAllowance(unit), plan.quilt)}, and press the ${of.panels === 2 ? 'seam open. The seam runs' : 'seams open. The seams run'} ${of.run === 'upright' ? 'from top to bottom' : 'from side to side'}.`,
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
  const costs = of.cost === undefined ? '' : ` It costs ${moneyText(of.cost, plan.cost.currency)}.`;
  return {
    heading: 'Batting',
    lines: [`Cut the batting ${checkSize([of.width, of.height], plan.quilt)}. ${bought}${costs}`],
  };
};
