// What travels between the workroom and the shop: addresses, words in them, and the form of answers.

export type PrintPaper = 'letter' | 'a4';
export const printPapers: readonly PrintPaper[] = ['letter', 'a4'];

/** POST a quilt document as JSON; the answer is the pattern as PDF, or `Refusal` with status 422. */
export const patternPath = '/api/pattern';
/** POST a quilt document as JSON; the answer is `PagePictures`, or `Refusal` with status 422. */
export const pagesPath = '/api/pages';
/** Both take the paper as `?paper=`. */
export const paperKey = 'paper';

/** All pages in one SVG text, one under the other, each of the paper's size in points. */
export interface PagePictures {
  readonly svg: string;
  readonly pages: number;
  readonly sizePt: readonly [width: number, height: number];
}

/** Why a document was not printed, or a request not taken: each with what to do. */
export interface Refusal {
  readonly problems: readonly { readonly where: string; readonly what: string; readonly mend: string }[];
  /** Problems beyond those listed. */
  readonly more: number;
}

export const isRefusal = (value: unknown): value is Refusal =>
  typeof value === 'object' && value !== null && 'problems' in value && Array.isArray(value.problems);
