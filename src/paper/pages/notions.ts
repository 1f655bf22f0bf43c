// What lies ready besides cloth: thread by the length of the seams, needles, tools.
import type { QuiltPlan } from '#craft';
import { checkSize, figureOnPaper } from '#paper/lengths';
import type { FinishPart } from './finish-part.ts';
import { type SizedPlan, sizeTitle } from './sized.ts';

/**
 * Needles and tools as an extension leaflet lists them (docs/sources.md, S3); thread as docs/formulas.md#thread.
 *
 * @param sizes other sizes in the same pattern, each with its own thread and batting
 */
export const notionsOf = (plan: QuiltPlan, sizes: readonly SizedPlan[]): readonly FinishPart[] => {
  const { thread, seams } = plan.thread;
  return [
    ...battingPart(plan, sizes),
    {
      heading: 'Thread',
      lines: [
        `${seams > 0 ? `Piecing takes about ${longText(thread, plan)} of thread: ${longText(seams, plan)} of seam, at two and a half times its length, as the sewing trade figures a lockstitch, and 15 % for waste. Half of it goes on bobbins. ` : ''}Fine cotton in a middle grey or beige goes with most cloths.`,
        ...sizes.map((size) => `${sizeTitle(size)}: about ${longText(size.plan.thread.thread, size.plan)}.`),
      ],
    },
    {
      heading: 'Needles',
      lines: ['Machine needles 70/10 or 80/12. Start a quilt with a new one.'],
    },
    {
      heading: 'Tools',
      lines: [
        'Rotary cutter, cutting mat, a clear ruler with a line for the seam allowance; scissors and a seam ripper; fine pins; a tape measure; an iron and a firm board.',
        'For quilting: a walking foot, and rust-proof safety pins to hold the layers.',
      ],
    },
  ];
};

const battingPart = (plan: QuiltPlan, sizes: readonly SizedPlan[]): readonly FinishPart[] => {
  const lines = [
    ...battingLine(plan),
    ...sizes.flatMap((size) => battingLine(size.plan).map((line) => `${sizeTitle(size)}: ${line}`)),
  ];
  return lines.length === 0 ? [] : [{ heading: 'Batting', lines }];
};

const battingLine = ({ quilt, finish: { batting } }: QuiltPlan): readonly string[] => {
  if (batting === null) return [];
  const bought =
    batting.package === null
      ? 'by the length: larger than the packages commonly sold'
      : `or a package marked “${batting.package.name}”`;
  return [`${checkSize([batting.width, batting.height], quilt)}, ${bought}.`];
};

/** Whole yards or metres, up. */
const longText = (value: number, { quilt }: QuiltPlan): string =>
  quilt.unit === 'in'
    ? `${figureOnPaper(Math.ceil(value / 36 - 1e-9), 'in')}\u00a0yd`
    : `${figureOnPaper(Math.ceil(value / 100 - 1e-9), 'cm')}\u00a0m`;
