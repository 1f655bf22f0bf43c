// The shop's server, which prints: the same road as the command line's, so that a file from here is the file from there.
import {
  filesPath,
  isRefusal,
  type PagesTold,
  type PageWishes,
  type PrintWishes,
  pagePath,
  pagesPath,
  pagesToldIn,
  pageWishesText,
  printWishesText,
  type Refusal,
  refusalOf,
} from '#wire';

/** A file of a document, as wished. */
export interface Order {
  /** The document as JSON. */
  readonly text: string;
  /** Of the file. */
  readonly name: string;
  readonly wishes: PrintWishes;
}

export type Had<T> = { readonly had: 'yes'; readonly value: T } | Not;
/** The printer does not answer, or will not. */
export type Not = { readonly had: 'no'; readonly why: 'silent' | 'refused'; readonly refusal: Refusal };

const silent: Not = {
  had: 'no',
  why: 'silent',
  refusal: refusalOf({
    where: '',
    what: 'The program that prints does not answer.',
    mend: 'See whether the program that opened the workroom still runs, then try again. Your quilt is safe: this browser keeps it.',
  }),
};

/** Each rejects only where it was given up by `signal`. */
export const askPages = (order: Order, signal: AbortSignal): Promise<Had<PagesTold>> =>
  asked({ path: pagesPath, order, signal, query: '' }, async (answer) => pagesToldIn(await answer.json()));

export const askPage = (of: {
  readonly order: Order;
  readonly page: PageWishes;
  readonly signal: AbortSignal;
}): Promise<Had<Blob>> => {
  const { order, page, signal } = of;
  return asked({ path: pagePath, order, signal, query: `&${pageWishesText(page)}` }, (answer) => answer.blob());
};

export const askFile = (order: Order, signal: AbortSignal): Promise<Had<Blob>> =>
  asked({ path: filesPath, order, signal, query: '' }, (answer) => answer.blob());

const asked = async <T>(
  of: { readonly path: string; readonly order: Order; readonly query: string; readonly signal: AbortSignal },
  read: (answer: Response) => Promise<T | null>,
): Promise<Had<T>> => {
  const { path, order, query, signal } = of;
  try {
    // from where the page is, which need not be at the root of its server
    const at = `.${path}${encodeURIComponent(order.name)}?${printWishesText(order.wishes)}${query}`;
    const headers = { 'content-type': 'application/json' };
    const answer = await fetch(at, { method: 'POST', headers, body: order.text, signal });
    if (!answer.ok) {
      const told: unknown = await answer.json();
      return isRefusal(told) ? { had: 'no', why: 'refused', refusal: told } : silent;
    }
    const value = await read(answer);
    return value === null ? silent : { had: 'yes', value };
  } catch (error) {
    if (signal.aborted) throw error;
    return silent;
  }
};
