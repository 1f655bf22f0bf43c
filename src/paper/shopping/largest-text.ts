// The largest quilt from the cloth at hand, in plain text of 80 columns.
import type { QuiltPlan } from '#craft';
import type { ClothFit, Counts, LargestFound, SizedQuilt } from '#craft/shopping';
import { checkLength } from '#paper/lengths';
import { columns, heading, wrapped } from '#paper/summary';
import { amountText, inWords } from '#paper/words';

/** @param plan of the quilt as drawn */
export const largestText = (plan: QuiltPlan, found: LargestFound): string => {
  const { drawn, best } = found;
  return [
    ...wrapped(plan.quilt.title, ''),
    '',
    heading('As drawn'),
    ...wrapped(`${sizedText(plan, drawn)}: ${enoughText(drawn)}`, '  '),
    ...(drawn === best ? [] : columns(lackingRows(plan, drawn))),
    '',
    heading('The largest from the cloth at hand'),
    ...bestLines(plan, found),
    '',
  ].join('\n');
};

const bestLines = (plan: QuiltPlan, { drawn, best, next }: LargestFound): readonly string[] => {
  if (best === null) {
    const smallest = next === null ? '' : ` Even ${sizedText(plan, next)}, lacks ${lacksText(plan, next)}.`;
    return wrapped(`The cloth does for no size of this quilt.${smallest}`, '  ');
  }
  return [
    ...wrapped(best === drawn ? 'The quilt as drawn.' : `${sizedText(plan, best)}.`, '  '),
    ...(best === drawn ? [] : continuedLines(best, drawn)),
    ...columns(best.cloths.map((fit) => clothRow(plan, fit))),
    ...nextLines(plan, best, next),
  ];
};

const nextLines = (plan: QuiltPlan, best: SizedQuilt, next: SizedQuilt | null): readonly string[] => {
  if (best.counts === null)
    return wrapped('A top in sections has one size: only whether the cloth does for it is looked at.', '  ');
  if (next === null)
    return wrapped(
      'Quilts beyond the size of a king-size bed, or much longer or wider than drawn, were not looked at.',
      '  ',
    );
  return wrapped(`The next larger, ${sizedText(plan, next)}, lacks ${lacksText(plan, next)}.`, '  ');
};

/** "8 rows of 10, 100 in × 82 in". */
const sizedText = (plan: QuiltPlan, { counts, size }: SizedQuilt): string => {
  const finished = size.map((side) => plain(checkLength(side, plan.quilt))).join(' × ');
  return counts === null ? finished : `${rowsText(counts)}, ${finished}`;
};

/** "8 rows of 10". */
export const rowsText = ({ rows, columns: across }: Counts): string =>
  rows === 1 ? `1 row of ${across}` : `${rows} rows of ${across}`;

const enoughText = ({ cloths }: SizedQuilt): string => {
  const short = cloths.filter(({ lacks }) => lacks > 0);
  if (short.length === 0) return 'the cloth at hand does for it.';
  return `the cloth at hand does not do for it. ${short.length === 1 ? 'One cloth is' : `${short.length} cloths are`} too short:`;
};

const lackingRows = (plan: QuiltPlan, { cloths }: SizedQuilt): readonly (readonly string[])[] =>
  cloths.filter(({ lacks }) => lacks > 0).map((fit) => clothRow(plan, fit));

const clothRow = (plan: QuiltPlan, fit: ClothFit): readonly string[] => {
  const name = nameOf(plan, fit.fabric);
  const needs = figure(plan, fit, fit.needs);
  if (fit.has === null)
    return [
      name,
      needs,
      // ends at hand may hold all of it
      fit.buy === null ? '' : `to buy: ${fit.buy.amount === 0 ? 'none' : amountText(fit.buy.amount, fit.buy.unit)}`,
    ];
  const shorter = fit.others === 0 ? '' : ` beside ${fit.others} shorter`;
  const has = `of ${figure(plan, fit, fit.has)}${shorter}`;
  if (fit.lacks > 0)
    return [
      name,
      needs,
      `${has}: lacks ${figure(plan, fit, fit.lacks)}${fit.proven ? ', however it is laid out' : ''}`,
    ];
  return [name, needs, fit.left > 0 ? `${has}, ${figure(plan, fit, fit.left)} left` : `${has}, all of it`];
};

const lacksText = (plan: QuiltPlan, { cloths }: SizedQuilt): string => {
  const short = cloths.filter(({ lacks }) => lacks > 0);
  const named = short.map((fit) => `${figure(plan, fit, fit.lacks)} of ${nameOf(plan, fit.fabric)}`);
  const all = inWords(named);
  return short.some(({ proven }) => proven) ? `${all}; no layout would do` : `${all} in the best layout found`;
};

/** What becomes of a pattern that does not repeat. */
const continuedLines = ({ continued, counts }: SizedQuilt, drawn: SizedQuilt): readonly string[] => {
  if (continued === null || counts === null || drawn.counts === null) return [];
  const lines = [
    { how: continued[0], found: counts.rows, was: drawn.counts.rows, noun: 'row' },
    { how: continued[1], found: counts.columns, was: drawn.counts.columns, noun: 'column' },
  ].flatMap(({ how, found, was, noun }) => {
    if (how === 'cut-short')
      return [was - found === 1 ? `the last ${noun} is left out` : `the last ${was - found} ${noun}s are left out`];
    return how === 'begun-again' ? [`the ${was} ${noun}s are repeated`] : [];
  });
  return lines.length === 0 ? [] : wrapped(`As its pattern does not repeat, ${lines.join(', and ')}.`, '  ');
};

const nameOf = (plan: QuiltPlan, id: string): string => plan.quilt.fabrics.find((one) => one.id === id)?.name ?? id;

const figure = (plan: QuiltPlan, { of }: ClothFit, value: number): string =>
  of === 'sheets' ? amountText(value, 'sheets') : plain(checkLength(value, plan.quilt));

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
