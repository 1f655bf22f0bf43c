// The text of a length in a field: shown in the unit that the maker likes, stored as she writes it. What she does not touch stays.
import { convert, parseLength, type Unit } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { figureOnPaper } from '#paper/lengths';
import { lengthText } from '#paper/words';

interface Units {
  /** Of the document. */
  readonly unit: Unit;
  /** What lengths are shown in. */
  readonly liked: Unit;
}

/** A letter or a sign for a unit: it says itself what it is in. */
const namesUnit = /[a-z"'″′]/i;

/** So finely a length is shown in the other unit: a hundredth of a centimetre, a 64th of an inch. */
const steps: Readonly<Record<Unit, number>> = { cm: 100, in: 64 };

/** With true fractions where they can be typed again as they stand; what names its own unit is left as it was written. */
export const lengthShown = (value: string | number, { unit, liked }: Units): string => {
  const text = String(value);
  const read = parseLength(text, { unit, sign: 'any' });
  if (!read.ok || namesUnit.test(text)) return text;
  if (liked !== unit) {
    const there = toNumber(convert(read.value, { from: unit, to: liked }));
    return lengthText(Math.round(there * steps[liked]) / steps[liked], liked).slice(0, -(liked.length + 1));
  }
  const figure = figureOnPaper(toNumber(read.value), unit);
  return figure.includes('⁄') ? text : figure;
};

/** As the document gets it: a figure alone is meant in the unit that is shown. */
export const lengthTaken = (written: string, { unit, liked }: Units): string => {
  const text = written.trim();
  return liked === unit || namesUnit.test(text) || text === '' ? text : `${text} ${liked}`;
};
