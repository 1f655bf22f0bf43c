// Lengths as they are set on paper: true fractions, also where no single glyph exists for one, with
// spaces that do not break. The wording of a length itself is the words' room.
import type { Unit } from '#craft/measure';
import { lengthText } from '#paper/words';

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const lowered = '₀₁₂₃₄₅₆₇₈₉';

const inFigures = (digits: string, figures: string): string =>
  [...digits].map((digit) => figures[Number(digit)] ?? digit).join('');

/** "4 5/16 in" becomes "4 ⁵⁄₁₆ in", kept on one line. */
export const withTrueFractions = (text: string): string =>
  text
    .replace(/(\d+)\/(\d+)/g, (_, n: string, d: string) => `${inFigures(n, raised)}⁄${inFigures(d, lowered)}`)
    .replaceAll(' ', '\u00a0');

/** "2½ in", "4 ⁵⁄₁₆ in", "6.5 cm". */
export const lengthOnPaper = (value: number, unit: Unit): string => withTrueFractions(lengthText(value, unit));

/** The figure alone, for drawings and columns that say their unit once. */
export const figureOnPaper = (value: number, unit: Unit): string =>
  lengthOnPaper(value, unit).slice(0, -(unit.length + 1));

/** "6½ × 3½ in", on one line: across, then down (on cloth: across, then along). */
export const sizeOnPaper = (size: readonly [number, number], unit: Unit): string =>
  `${figureOnPaper(size[0], unit)}\u00a0×\u00a0${lengthOnPaper(size[1], unit)}`;
