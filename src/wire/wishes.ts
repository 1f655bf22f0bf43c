// What is wished for of a print, as it stands behind the question mark of an address; and read again, where nothing is guessed.
import { done, type Outcome, refused } from '#ground/outcome';

export type PrintPaper = 'letter' | 'a4';
export const printPapers: readonly PrintPaper[] = ['letter', 'a4'];

export type PrintHand = 'right' | 'left';
export const printHands: readonly PrintHand[] = ['right', 'left'];

export interface PrintWishes {
  readonly paper: PrintPaper;
  /** For which cutting is drawn. */
  readonly hand: PrintHand;
  /** Names of chapters of the pattern; null: the usual ones. Whether there are such chapters is for whoever prints. */
  readonly chapters: readonly string[] | null;
  /** Ids of other sizes of the document, printed in the same pattern. */
  readonly sizes: readonly string[];
}

/** One page to look at. */
export interface PageWishes {
  /** From 1. */
  readonly page: number;
  readonly widthPx: number;
}

/** A key that is wrong, what it holds, and what it may hold. */
export interface WishProblem {
  readonly key: string;
  readonly found: string;
  readonly allowed: string;
}

/** Of the picture of a page: from a thumbnail to a page that fills a large screen. Our own figures. */
export const pageWidths = { least: 40, most: 2600 } as const;
const mostPages = 10_000;

export const printWishesText = ({ paper, hand, chapters, sizes }: PrintWishes): string =>
  [
    `paper=${paper}`,
    `hand=${hand}`,
    ...(chapters === null ? [] : [`chapters=${listText(chapters)}`]),
    ...(sizes.length === 0 ? [] : [`sizes=${listText(sizes)}`]),
  ].join('&');

export const pageWishesText = ({ page, widthPx }: PageWishes): string => `page=${page}&width=${widthPx}`;

const listText = (names: readonly string[]): string => names.map(encodeURIComponent).join(',');

/** As a server hands on what stands behind the question mark: a key that stands there twice has a list. */
export type Query = Readonly<Record<string, unknown>>;

const printKeys = ['paper', 'hand', 'chapters', 'sizes'];

export const printWishesIn = (query: Query): Outcome<PrintWishes, WishProblem> => {
  const problems = unknownKeys(query, printKeys);
  const paper = printPapers.find((one) => one === (query.paper ?? 'letter'));
  if (paper === undefined) problems.push(wrong(query, 'paper', printPapers.join(' or ')));
  const hand = printHands.find((one) => one === (query.hand ?? 'right'));
  if (hand === undefined) problems.push(wrong(query, 'hand', printHands.join(' or ')));
  const chapters = namesIn(query, 'chapters');
  const sizes = namesIn(query, 'sizes');
  if (chapters === 'wrong') problems.push(wrong(query, 'chapters', someNames));
  if (sizes === 'wrong') problems.push(wrong(query, 'sizes', someNames));
  return problems.length > 0 || paper === undefined || hand === undefined || chapters === 'wrong' || sizes === 'wrong'
    ? refused(problems)
    : done({ paper, hand, chapters, sizes: sizes ?? [] });
};

/** Which page of which print. */
export interface PrintedPage {
  readonly print: PrintWishes;
  readonly page: PageWishes;
}

export const pageWishesIn = (query: Query): Outcome<PrintedPage, WishProblem> => {
  const { page, width, ...rest } = query;
  const print = printWishesIn(rest);
  const [number, widthPx] = [wholeIn(page, 1, mostPages), wholeIn(width, pageWidths.least, pageWidths.most)];
  const problems = [
    ...(print.ok ? [] : print.problems),
    ...(number === null ? [wrong(query, 'page', 'a whole number from 1')] : []),
    ...(widthPx === null
      ? [wrong(query, 'width', `a whole number from ${pageWidths.least} to ${pageWidths.most}`)]
      : []),
  ];
  return !print.ok || number === null || widthPx === null
    ? refused(problems)
    : done({ print: print.value, page: { page: number, widthPx } });
};

const someNames = 'names with commas between';

const unknownKeys = (query: Query, known: readonly string[]): WishProblem[] =>
  Object.keys(query)
    .filter((key) => !known.includes(key))
    .map((key) => wrong(query, key, `only ${known.join(', ')}`));

const wrong = (query: Query, key: string, allowed: string): WishProblem => ({
  key,
  found: JSON.stringify(query[key] ?? '').slice(0, 80),
  allowed,
});

/** Null where the key does not stand there. Each name once. */
const namesIn = (query: Query, key: string): readonly string[] | null | 'wrong' => {
  const written = query[key];
  if (written === undefined) return null;
  const names = typeof written === 'string' ? written.split(',') : [];
  return names.length === 0 || names.includes('') ? 'wrong' : [...new Set(names)];
};

const wholeIn = (written: unknown, least: number, most: number): number | null => {
  const value = typeof written === 'string' && /^\d{1,6}$/.test(written) ? Number(written) : Number.NaN;
  return value >= least && value <= most ? value : null;
};
