// A quilt brought to a wanted size: its counts, its outer border, and the bed that it is for, in one change.
import type { QuiltDocument } from '#craft/design';
import type { Unit } from '#craft/measure';
import type { Measured, QuiltPicture } from '#workroom/compute';
import { isStrip } from './border-edits.ts';
import type { Drawn, TargetChoice } from './target-sizes.ts';
import { countsOf, resize, setOf } from './top-edits.ts';
import { inUnit, writtenLength } from './written-length.ts';

type Bed = NonNullable<NonNullable<QuiltDocument['finish']>['bed']>;

export const becomeSize = (
  draft: QuiltDocument,
  of: {
    readonly choice: TargetChoice;
    readonly picture: QuiltPicture | null;
    /** Null: no bed is meant. */
    readonly bed: Bed | null;
    /** Of a border where there was none. */
    readonly cloth: string;
  },
): void => {
  const { choice, picture, bed, cloth } = of;
  const { rows, columns, border } = choice;
  resize(draft.top, { rows, columns, picture });
  const outer = draft.top.borders?.at(-1);
  if (isStrip(outer)) outer.width = writtenLength(border);
  else if (border > 0) {
    draft.top.borders ??= [];
    draft.top.borders.push({ width: writtenLength(border), fabric: cloth });
  }
  if (bed === null) return;
  draft.finish ??= {};
  draft.finish.bed = { ...bed };
};

/** What counts and borders there are to begin from; null where rows and columns are not what makes the size, or nothing is measured. */
export const drawnFor = (
  { top, unit }: Pick<QuiltDocument, 'top' | 'unit'>,
  of: { readonly measured: Measured; readonly picture: QuiltPicture | null },
): Drawn | null => {
  const { rings } = of.measured;
  const borders = top.borders ?? [];
  const counts = countsOf(top, of.picture);
  const [middle] = rings;
  const whole = rings[borders.length];
  if (setOf(top) === 'sections' || counts === null || middle === undefined || whole === undefined) return null;
  const inner = isStrip(borders.at(-1)) ? (rings[borders.length - 1] ?? whole) : whole;
  return {
    middle,
    rows: counts.rows,
    columns: counts.columns,
    over: setOf(top) === 'straight' ? sashOver(top, unit) : [0, 0],
    fixed: [inner[0] - middle[0], inner[1] - middle[1]],
    strip: isStrip(borders.at(-1)) ? 'stays' : 'may-be-added',
  };
};

const sashOver = ({ sashing }: QuiltDocument['top'], unit: Unit): readonly [number, number] => {
  if (sashing === undefined) return [0, 0];
  const { width, outer } = sashing;
  const sign = outer === true ? 1 : -1;
  const lengthOf = (written: string | number): number => sign * (inUnit(written, unit) ?? 0);
  return typeof width === 'object'
    ? [lengthOf(width.across), lengthOf(width.down)]
    : [lengthOf(width), lengthOf(width)];
};

/** Our own: borders by the half inch or the centimetre, none wider than 12 in or 30 cm. */
export const borderSteps = { in: { step: 0.5, widest: 12 }, cm: { step: 1, widest: 30 } } as const;
