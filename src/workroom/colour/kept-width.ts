// How wide the kept part of a photograph is, exactly, as a document writes it.
import { exactText, parseLength, type Unit } from '#craft/measure';
import { mul, rational } from '#ground/exact';

/**
 * @param width of the whole photograph, as written: RangeError where it is no length
 * @param share left and right edge of what is kept, in whole hundredths of the width
 */
export const keptWidth = (of: {
  readonly width: string;
  readonly share: readonly [left: number, right: number];
  readonly unit: Unit;
}): string => {
  const read = parseLength(of.width, { unit: of.unit, sign: 'positive' });
  if (!read.ok) throw new RangeError(`not a length: ${of.width}`);
  const [left, right] = of.share;
  return right - left === 100 ? of.width : exactText(mul(read.value, rational(right - left, 100)));
};
