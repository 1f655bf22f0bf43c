// What is in each amount of cloth: where its length goes, whether less could do, and what would change it.
import type { FabricPlan, QuiltPlan } from '#craft';
import { type PurchaseChange, strongestOf } from '#craft/shopping';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { checkLength, lengthOnPaper, withTrueFractions } from '#paper/lengths';
import { changeText } from '#paper/words';
import { inWords } from './in-words.ts';

export interface Amounts {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  readonly remarks: readonly string[];
}

/** Changes told of each cloth. */
const mostChanges = 2;

/** @param changes of all cloths; empty where nobody asked */
export const amountsOf = (of: {
  readonly plan: QuiltPlan;
  readonly signs: ClothSigns;
  readonly changes: readonly PurchaseChange[];
}): Amounts => {
  const { plan, signs, changes } = of;
  const shrinks = plan.fabrics.some(({ allowances }) => allowances !== null && allowances.shrinkage > 0);
  const head = ['Cloth', 'Laid out', 'Ends', ...(shrinks ? ['Shrinkage'] : []), 'Left over'];
  // without changes an empty column keeps the figures together on the left
  return {
    head: [...head, changes.length === 0 ? '' : 'With another cloth or cut'],
    rows: plan.fabrics.map((fabric) => [
      signOf(signs, fabric.id).letter,
      ...figuresOf(plan, fabric, shrinks),
      changesText(
        plan,
        strongestOf(
          changes.filter((change) => change.fabric === fabric.id),
          mostChanges,
        ),
      ),
    ]),
    remarks: provenLines(plan, signs),
  };
};

const figuresOf = (plan: QuiltPlan, { allowances, laid }: FabricPlan, shrinks: boolean): readonly string[] => {
  const { unit } = plan.quilt;
  if (allowances === null) {
    const count = 'sheets' in laid ? laid.sheets.length : 0;
    return [`${count} ${count === 1 ? 'sheet' : 'sheets'}`, '–', ...(shrinks ? ['–'] : []), '–'];
  }
  return [
    lengthOnPaper(allowances.cut, unit),
    lengthOnPaper(allowances.squaring, unit),
    ...(shrinks ? [checkLength(allowances.shrinkage, plan.quilt)] : []),
    checkLength(allowances.spare, plan.quilt),
  ];
};

const changesText = (plan: QuiltPlan, changes: readonly PurchaseChange[]): string => {
  const text = changes.map((change) =>
    withTrueFractions(changeText(change, plan.quilt.unit)).replaceAll('\u00a0', ' '),
  );
  return text.length === 0 ? '' : `${capital(text.join('; '))}.`;
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Of which cloths no layout could do with less. */
export const provenLines = (plan: QuiltPlan, signs: ClothSigns): readonly string[] => {
  const letters = plan.fabrics.flatMap(({ id, buy }) => (buy.proven ? [signOf(signs, id).letter] : []));
  if (letters.length === 0) return [];
  if (letters.length === plan.fabrics.length)
    return ['No way of laying out these pieces does with less of any cloth: that is proven.'];
  const names = `${letters.length === 1 ? 'cloth' : 'cloths'} ${inWords(letters)}`;
  return [`No way of laying out these pieces does with less of ${names}: that is proven.`];
};
