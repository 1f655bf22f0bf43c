// Where files of a quilt are had. To each address the quilt's document is sent as JSON by POST, the wishes behind a question mark; a document
// that cannot be planned is answered by a `Refusal` with status 422, wishes that cannot be read by one with 400, a name that the quilt
// has not by one with 404.

/** With a file's name behind it: that file, byte for byte as the command line writes it. */
export const filesPath = '/api/files/';
/** With the name of a PDF behind it: `PagesTold`. */
export const pagesPath = '/api/pages/';
/** The same, with which page and how wide (`PageWishes`): that page as PNG. */
export const pagePath = '/api/page/';

/** What a PDF is like, and what stands in it that cannot be printed. */
export interface PagesTold {
  readonly pages: number;
  readonly sizePt: readonly [width: number, height: number];
  readonly bytes: number;
  /** Signs in the maker's words that no letters of the pages have: an empty square stands in their place. */
  readonly missingSigns: readonly string[];
}

/** Null where it is something else. */
export const pagesToldIn = (value: unknown): PagesTold | null => {
  const told = value as Partial<PagesTold> | null;
  return typeof told === 'object' && told !== null && typeof told.pages === 'number' && Array.isArray(told.sizePt)
    ? (value as PagesTold)
    : null;
};
