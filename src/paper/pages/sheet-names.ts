// How what a cloth comes in is called: sheets, lengths as they are sold, ends at hand. Names and sizes only where they tell one from another.
import type { FabricPlan, QuiltPlan } from '#craft';
import type { LaidSheets } from '#craft/cutting';
import { type Rational, toNumber } from '#ground/exact';
import { sizeOnPaper } from '#paper/lengths';
import { counted, type SheetName } from '#paper/words';
import { soldText } from './bought.ts';

/** By kind; its size apart, for captions. */
export interface NamedSheet extends SheetName {
  readonly size: string;
}

export type SheetNames = (kind: number) => NamedSheet;

/** Of what is bought; cloth by the length and sheets of one kind need no telling apart. */
export const sheetNamesOf = (plan: QuiltPlan, { id }: Pick<FabricPlan, 'id'>): SheetNames => {
  const bought = plan.quilt.fabrics.find((fabric) => fabric.id === id)?.bought;
  if (bought?.kind === 'lengths')
    return (kind) => {
      const sold = bought.lengths.length > 1 ? soldText(plan, toNumber(bought.lengths[kind]?.length as Rational)) : '';
      return { noun: 'length', kind: sold, size: sold };
    };
  if (bought?.kind !== 'stock' || bought.sheets.length === 1) return () => ({ noun: 'sheet', kind: '', size: '' });
  return (kind) => named('sheet', bought.sheets[kind], plan);
};

/** Of ends at hand: which of them is meant is always told. */
export const endNamesOf = (plan: QuiltPlan, { id }: Pick<FabricPlan, 'id'>): SheetNames => {
  const ends = plan.quilt.fabrics.find((fabric) => fabric.id === id)?.ends ?? [];
  return (kind) => named('end at hand', ends[kind], plan);
};

/** "3 sheets", "1 length". */
export const countedSheets = (plan: QuiltPlan, fabric: Pick<FabricPlan, 'id'>, { sheets }: LaidSheets): string => {
  const { noun } = sheetNamesOf(plan, fabric)(sheets[0]?.kind ?? 0);
  return counted(sheets.length, noun);
};

const named = (
  noun: SheetName['noun'],
  of: { readonly size: readonly [Rational, Rational]; readonly name: string | null } | undefined,
  plan: QuiltPlan,
): NamedSheet => {
  if (of === undefined) throw new Error('a layout on a kind of sheet that the document lacks');
  const size = sizeOnPaper([toNumber(of.size[0]), toNumber(of.size[1])], plan.quilt.unit).replaceAll(' ', '\u00a0');
  return { noun, kind: of.name === null ? size : `${of.name}, ${size}`, size };
};
