// What another way of cutting the same quilt comes to beside this one, in a few words: cloth, its cost, work.
import type { QuiltPlan } from '#craft';
import { clothSignsFor, signOf } from '#paper/cloth';
import { withTrueFractions } from '#paper/lengths';
import { amountText, counted, inWords } from '#paper/words';
import { workInAll } from './cut-before.ts';
import { amountMoreText, moneyMoreText } from './more-text.ts';

export interface Difference {
  /** "⅛ yd more of A and ¼ yd less of C", "no more cloth"; "" where both are the same in all. */
  readonly cloth: string;
  /** "1.50 EUR more"; "" where it costs the same or nothing has a price. */
  readonly cost: string;
  /** "2 strip heights and 12 strokes fewer"; "" where the work is the same. */
  readonly work: string;
}

export const differenceText = (now: QuiltPlan, then: QuiltPlan): Difference => {
  const cost = (then.cost.total ?? 0) - (now.cost.total ?? 0);
  return {
    cloth: clothText(now, then),
    cost: moneyMoreText(cost, now.cost.currency),
    work: workText(now, then),
  };
};

const clothText = (now: QuiltPlan, then: QuiltPlan): string => {
  const signs = clothSignsFor(now);
  const parts = now.fabrics.flatMap(({ id, buy }) => {
    const after = then.fabrics.find((one) => one.id === id)?.buy;
    const { letter } = signOf(signs, id);
    if (after === undefined) return [`none of ${letter}`];
    if (after.unit !== buy.unit)
      return [`${withTrueFractions(amountText(after.amount, after.unit))} of ${letter} instead`];
    const difference = after.amount - buy.amount;
    if (Math.abs(difference) < 1e-9) return [];
    return [`${amountMoreText(difference, buy.unit)} of ${letter}`];
  });
  return parts.length === 0 ? 'no more cloth' : inWords(parts);
};

const workText = (now: QuiltPlan, then: QuiltPlan): string => {
  const [before, after] = [now, then].map(({ fabrics }) => {
    const all = fabrics.map(workInAll);
    const sum = (of: (one: (typeof all)[number]) => number) => all.reduce((total, one) => total + of(one), 0);
    return {
      heights: sum(({ heights }) => heights),
      settings: sum(({ settings }) => settings),
      strokes: sum(({ strokes }) => strokes),
    };
  }) as [Work, Work];
  const changed = (['heights', 'settings', 'strokes'] as const).flatMap((key) => {
    const by = after[key] - before[key];
    return by === 0 ? [] : [`${counted(Math.abs(by), nouns[key])} ${by < 0 ? 'fewer' : 'more'}`];
  });
  return changed.length === 0 ? '' : inWords(changed);
};

type Work = Readonly<Record<'heights' | 'settings' | 'strokes', number>>;
const nouns = { heights: 'strip height', settings: 'ruler setting', strokes: 'stroke' } as const;
