// What lies ready besides cloth: thread by the length of the seams, needles, tools.
import type { QuiltPlan } from '#craft';
import { figureOnPaper } from '#paper/lengths';
import type { FinishPart } from './finish.ts';

/**
 * Needles and tools as an extension leaflet lists them (docs/sources.md, S3); thread as docs/formulas.md#thread.
 */
export const notionsOf = (plan: QuiltPlan): readonly FinishPart[] => {
  const { thread, seams } = plan.thread;
  return [
    {
      heading: 'Thread',
      lines: [
        `Piecing takes about ${longText(thread, plan)} of thread: ${longText(seams, plan)} of seam, at two and a half times its length, as the sewing trade figures a lockstitch, and 15 % for waste. Half of it goes on bobbins. Fine cotton in a middle grey or beige goes with most cloths.`,
      ],
    },
    {
      heading: 'Needles',
      lines: ['Machine needles 70/10 or 80/12. Start a quilt with a new one.'],
    },
    {
      heading: 'Tools',
      lines: [
        'Rotary cutter, cutting mat, a clear ruler with a line for the seam allowance; scissors; fine pins; an iron and a firm board.',
        'For quilting: a walking foot, and rust-proof safety pins to hold the layers.',
      ],
    },
  ];
};

/** Whole yards or metres, up. */
const longText = (value: number, { quilt }: QuiltPlan): string =>
  quilt.unit === 'in'
    ? `${figureOnPaper(Math.ceil(value / 36 - 1e-9), 'in')}\u00a0yd`
    : `${figureOnPaper(Math.ceil(value / 100 - 1e-9), 'cm')}\u00a0m`;
