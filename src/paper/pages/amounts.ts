// What is in each amount of cloth: where its length goes, whether less could do, and what would change it.
import type { FabricPlan, QuiltPlan } from '#craft';
import { type PurchaseChange, strongestOf } from '#craft/shopping';
import { toNumber } from '#ground/exact';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { checkLength, lengthOnPaper, withTrueFractions } from '#paper/lengths';
import { capital, changeText, inWords } from '#paper/words';
import { countedSheets, sheetNamesOf } from './sheet-names.ts';

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
  // without changes an empty column keeps the figures together on the left
  return {
    head: [...headOf(shrinks), changes.length === 0 ? '' : 'With another cloth or cut'],
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

/** Where the bought length of one cloth goes, under the heads of the table; none of sheets and of what is not bought. */
export const amountLines = (
  plan: QuiltPlan,
  fabric: FabricPlan,
): readonly (readonly [what: string, amount: string])[] => {
  const shrinks = fabric.allowances !== null && fabric.allowances.shrinkage > 0;
  const [, ...heads] = headOf(shrinks);
  const figures = figuresOf(plan, fabric, shrinks);
  return heads.flatMap((what, i) => {
    const figure = figures[i] ?? '–';
    return figure === '–' ? [] : [[what, figure] as const];
  });
};

const headOf = (shrinks: boolean): readonly string[] => [
  'Cloth',
  'Laid out',
  'Ends',
  ...(shrinks ? ['Shrinkage'] : []),
  'Left over',
];

const figuresOf = (plan: QuiltPlan, fabric: FabricPlan, shrinks: boolean): readonly string[] => {
  const { allowances, laid } = fabric;
  const { unit } = plan.quilt;
  if ('sheets' in laid) {
    // of each length both ends are squared up; what shrinks and is left over differs from one to the next
    const isLengths = sheetNamesOf(plan, fabric)(0).noun === 'length';
    const ends = isLengths ? lengthOnPaper(2 * laid.sheets.length * toNumber(plan.quilt.buying.squaring), unit) : '–';
    return [countedSheets(plan, fabric, laid), ends, ...(shrinks ? ['–'] : []), '–'];
  }
  // nothing is bought where ends at hand hold everything
  if (allowances === null) return ['–', '–', ...(shrinks ? ['–'] : []), '–'];
  const repeat = allowances.cut - laid.layout.length;
  return [
    `${lengthOnPaper(laid.layout.length, unit)}${repeat > 1e-9 ? ` and one repeat, ${lengthOnPaper(repeat, unit)}` : ''}`,
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

/** Of which cloths no layout could do with less; where kinds of sheet differ, with fewer of them or at a lower cost. */
export const provenLines = (plan: QuiltPlan, signs: ClothSigns): readonly string[] => {
  const proven = plan.fabrics.filter(({ buy }) => buy.proven);
  if (proven.length === 0) return [];
  const named = (kept: Kept): string | null => {
    const letters = proven
      .filter((fabric) => keptLeast(plan, fabric) === kept)
      .map(({ id }) => signOf(signs, id).letter);
    if (letters.length === 0) return null;
    return letters.length === plan.fabrics.length
      ? 'any cloth'
      : `${letters.length === 1 ? 'cloth' : 'cloths'} ${inWords(letters)}`;
  };
  const ways = [
    ['does with less of', named('amount')],
    ['takes fewer sheets of', named('sheets')],
    ['costs less in', named('cost')],
  ].flatMap(([verb, cloths]) => (cloths === null ? [] : [`${verb} ${cloths}`]));
  return [`No way of laying out these pieces ${inWords(ways, 'or')}: that is proven.`];
};

/** What is kept least of a cloth: what is bought of it, whatever its price; the number of sheets that differ in size; or what they cost. */
type Kept = 'amount' | 'sheets' | 'cost';

const keptLeast = (plan: QuiltPlan, { id, laid }: FabricPlan): Kept => {
  const fabric = plan.quilt.fabrics.find((one) => one.id === id);
  if (fabric === undefined || !('sheets' in laid)) return 'amount';
  const { bought, price } = fabric;
  if (bought.kind === 'stock' && bought.sheets.length > 1) return laid.kept;
  if (bought.kind !== 'lengths' || bought.lengths.length === 1) return 'amount';
  return bought.lengths.every((kind) => (kind.price ?? price) !== null) ? 'cost' : 'amount';
};
