// How a block or the top is pressed, as a whole: every seam with its arrow, where seams meet and whether they nest, and why.
import type { QuiltPlan } from '#craft';
import { clothSignsFor } from '#paper/cloth';
import { type Drawing, drawPressedBlock, drawPressedTop, drawSpunBack } from '#paper/drawing';
import {
  blockNestingLines,
  pointerText,
  pressReason,
  spunBackAlt,
  stepWords,
  titleOf,
  topNestingLines,
  topStepWords,
} from '#paper/pages';
import { blockOfEntry, topEntry } from './entries.ts';

export interface PressingLook {
  readonly entry: string;
  /** Number of the step whose seams are looked at; null for none. */
  readonly chosen: number | null;
  /** Of a block that is pressed in two ways. */
  readonly way: 'first' | 'other';
}

export interface PressingSeen extends PressingLook {
  readonly title: string;
  readonly picture: Drawing;
  /** Whether some blocks are pressed the other way. */
  readonly ways: 1 | 2;
  readonly share: readonly string[];
  /** Of a chosen step that is spun, from the back; else null. */
  readonly back: Drawing | null;
  readonly steps: readonly { readonly number: number; readonly heading: string; readonly press: string }[];
}

/** The smaller the room, the larger the arrows on the screen; the top has many. */
const fits = { block: [230, 230], top: [330, 330] } as const;

export const seePressing = (plan: QuiltPlan, look: PressingLook): PressingSeen | 'nowhere' => {
  const signs = clothSignsFor(plan);
  if (look.entry === topEntry) {
    const areTurned = plan.top.pressing.turns.some((turn) => turn !== 0);
    const share = [...topNestingLines(plan), ...(areTurned ? [pointerText] : [])];
    const alt = `The top with an arrow across every seam, the way that it is pressed. ${share.join(' ')}`;
    return {
      ...look,
      title: 'The top',
      picture: drawPressedTop({ plan, signs, fitPt: fits.top, chosen: look.chosen, alt }),
      ways: 1,
      back: null,
      share,
      steps: plan.top.steps.map((step) => {
        const { heading, press } = topStepWords({ plan, signs }, step);
        return { number: step.number, heading, press };
      }),
    };
  }
  const block = blockOfEntry(plan, look.entry);
  if (block === null || block.patches.length === 0) return 'nowhere';
  const share = blockNestingLines(block);
  const chosen = block.steps.find(({ number }) => number === look.chosen);
  const title = titleOf(plan, block);
  const alt = `${title} with an arrow across every seam, the way that it is pressed. ${share.join(' ')}`;
  return {
    ...look,
    title,
    picture: drawPressedBlock({ block, signs, fitPt: fits.block, chosen: look.chosen, way: look.way, alt }),
    ways: block.pressing.otherWay > 0 ? 2 : 1,
    back: chosen === undefined ? null : drawSpunBack({ block, step: chosen, sidePt: 110, alt: spunBackAlt(chosen) }),
    share,
    steps: block.steps.map((step) => ({
      number: step.number,
      heading: stepWords(plan, { block, step, counts: [block.count] }).heading,
      press: pressReason(look.way === 'other' ? { ...step, pressTo: step.otherWay ?? step.pressTo } : step),
    })),
  };
};
