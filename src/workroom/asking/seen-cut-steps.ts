// One cloth step by step, in the order of cutting, as the pages say it: each strip with its picture, each step with a key of its own so that
// it can be ticked off.
import type { QuiltPlan } from '#craft';
import type { ClothDirections, PatternCut } from '#craft/directions';
import { clothSignsFor, signOf } from '#paper/cloth';
import { forHand } from '#paper/cutting';
import { drawStripAlone } from '#paper/drawing';
import { lengthOnPaper } from '#paper/lengths';
import { clothDirections, cutBefore, nestedDrawings, ownDirections } from '#paper/pages';
import type { CuttingLook } from './seen-cutting.ts';

export interface CutStepsSeen {
  readonly cloth: string;
  readonly letter: string;
  readonly name: string;
  /** How the cloth must lie. */
  readonly before: readonly string[];
  readonly leads: readonly CutLead[];
  /** What is cut apart once it has its size. */
  readonly apart: readonly CutStep[];
  /** SVG text: how pieces nest in a strip at an angle, or in pairs. */
  readonly nested: readonly string[];
  readonly kept: string;
  readonly effort: string;
}

/** Strips that are cut first, and what is then cut from each kind of them. */
export interface CutLead extends CutStep {
  readonly strips: readonly CutStrip[];
}

export interface CutStrip extends CutStep {
  /** As the layout numbers its kinds of strip. */
  readonly number: string;
  /** SVG text, drawn for the hand that cuts. */
  readonly picture: string;
  /** Where one cut is not all there is. */
  readonly cuts: readonly { readonly number: string; readonly text: string }[];
}

export interface CutStep {
  /** What is done, whatever its number: the same step of another plan has the same key. */
  readonly key: string;
  readonly text: string;
}

export interface CutStepsLook extends CuttingLook {
  /** Room for a strip's picture. */
  readonly widthPt: number;
}

/** @returns null where nothing is cut from the cloth that was asked for */
export const seeCutSteps = (plan: QuiltPlan, { cloth, hand, widthPt }: CutStepsLook): CutStepsSeen | null => {
  const found = cloth === null ? plan.fabrics[0] : plan.fabrics.find(({ id }) => id === cloth);
  if (found === undefined) return null;
  const sign = signOf(clothSignsFor(plan), found.id);
  const { fabric, hand: cutBy } = forHand(found, hand);
  const { unit } = plan.quilt;
  const texts = clothDirections({ plan, fabric, sign, hand: cutBy });
  const keyed = keysFor(fabric.id);
  const drawn = patternsOf([...cutBefore(fabric).map(({ directions }) => directions), ownDirections(fabric)]);
  return {
    cloth: fabric.id,
    letter: sign.letter,
    name: sign.name,
    before: texts.before,
    leads: texts.cuts.map(({ lead, strips }) => ({
      key: keyed(lead),
      text: lead,
      strips: strips.map((strip) => {
        const one = drawn.get(strip.number);
        if (one === undefined) throw new Error(`the directions lack the strip ${strip.number}`);
        const { pattern, width } = one;
        const picture = drawStripAlone({
          pattern,
          width,
          sign,
          unit,
          fitPt: [widthPt, 200],
          hand: cutBy,
          alt: `Strip ${strip.number}, ${lengthOnPaper(pattern.strip.height, unit)} high, to scale`,
        });
        return {
          key: keyed([strip.text, ...strip.cuts.map(({ text }) => text)].join(' ')),
          number: strip.number,
          text: strip.text,
          cuts: strip.cuts,
          picture: picture.svg,
        };
      }),
    })),
    apart: texts.apart.map((text) => ({ key: keyed(text), text })),
    nested: nestedDrawings({ plan, fabric, sign, widthPt }).map(({ drawing }) => drawing.svg),
    kept: texts.kept,
    effort: texts.effort,
  };
};

/** Steps that say the same are told apart by how often it was said before. */
const keysFor = (cloth: string): ((text: string) => string) => {
  const times = new Map<string, number>();
  return (text) => {
    const time = (times.get(text) ?? 0) + 1;
    times.set(text, time);
    return `${cloth}: ${text}${time === 1 ? '' : ` (${time})`}`;
  };
};

const patternsOf = (
  all: readonly ClothDirections[],
): ReadonlyMap<string, { readonly pattern: PatternCut; readonly width: number }> =>
  new Map(
    all
      .flatMap(({ parts }) => parts)
      .flatMap((part) =>
        part.heights.flatMap(({ patterns }) =>
          patterns.map((pattern) => [String(pattern.number), { pattern, width: part.layout.width }] as const),
        ),
      ),
  );
