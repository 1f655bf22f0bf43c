// Does the cloth at hand do for a planned quilt? What each cloth needs, what is left of it, and what is lacking.
import type { FabricPlan, QuiltPlan } from '#craft';
import { asTaken, type ClothPurchase, type LaidOut, neededFor } from '#craft/cutting';
import { type Length, tidy } from '#craft/measure';
import { toNumber } from '#ground/exact';
import type { AtHand, Cupboard } from './at-hand.ts';

/** Lengths are in the document's unit, with squaring and shrinkage and before any shop's step; of sheets their number. */
export interface ClothFit {
  readonly fabric: string;
  readonly of: 'length' | 'sheets';
  readonly needs: number;
  /** Null: it is not at hand and will be bought. */
  readonly has: number | null;
  /** Shorter pieces at hand beside it, cut first; `needs` and `left` are of the longest. */
  readonly others: number;
  /** 0 where it is bought, or lacking. */
  readonly left: number;
  /** 0 where it does. */
  readonly lacks: number;
  /** What is bought of it; null where it is at hand. */
  readonly buy: ClothPurchase | null;
  /** It lacks, and no layout at all would do with what is at hand. */
  readonly proven: boolean;
}

/** One entry a used cloth, in the plan's order. */
export const clothFits = (plan: QuiltPlan, cupboard: Cupboard): readonly ClothFit[] =>
  plan.fabrics.map((cloth) => clothFit(cloth, plan, cupboard.get(cloth.id) ?? null));

export const isEnough = (fits: readonly ClothFit[]): boolean => fits.every(({ lacks }) => lacks === 0);

/** A billionth is no difference. */
const near = 1e-9;

const clothFit = ({ id, laid, buy }: FabricPlan, { quilt }: QuiltPlan, hand: AtHand | null): ClothFit => {
  const needed = (long: Length, of: LaidOut): number =>
    long <= 0 ? 0 : toNumber(neededFor(asTaken(long, of), quilt.buying));
  const [needs, least] =
    'sheets' in laid ? [laid.sheets.length, laid.bound] : [needed(laid.layout.length, laid), needed(laid.bound, laid)];
  const of = 'sheets' in laid ? 'sheets' : 'length';
  if (hand === null) return { fabric: id, of, needs, has: null, others: 0, left: 0, lacks: 0, buy, proven: false };
  const has = hand.kind === 'length' ? hand.length : hand.count;
  const over = tidy(has - needs);
  return {
    fabric: id,
    of,
    needs,
    has,
    others: hand.kind === 'length' ? hand.others.length : 0,
    left: over > near ? over : 0,
    lacks: over < -near ? -over : 0,
    buy: null,
    proven: has < least - near,
  };
};
