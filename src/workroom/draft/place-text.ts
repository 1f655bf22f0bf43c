// Places on a block's grid, as they are said and typed: squares from the left, squares from the top.
import { parseNumber } from '#craft/measure';
import { toNumber } from '#ground/exact';
import type { Point } from '#ground/plane';

const shownParts = [1, 2, 3, 4, 5, 6, 8, 10, 12, 16];

export const figureText = (value: number): string => {
  for (const parts of shownParts) {
    const count = Math.round(value * parts);
    if (Math.abs(value * parts - count) > 1e-6) continue;
    const [whole, rest] = [Math.floor(count / parts), count % parts];
    if (rest === 0) return String(whole);
    return whole === 0 ? `${rest}/${parts}` : `${whole} ${rest}/${parts}`;
  }
  return String(Number(value.toFixed(4)));
};

export const placeText = ({ x, y }: Point): string => `${figureText(x)} across, ${figureText(y)} down`;

/** @returns null where it is no number from 0 to the most */
export const figureIn = (text: string, most: number): number | null => {
  const read = parseNumber(text.trim());
  if (!read.ok) return null;
  const value = toNumber(read.value);
  return value >= 0 && value <= most ? value : null;
};
