// The tags of a file in reading order: which part of the text or which picture comes after which, and on which page.

import { type Dictionary, type FileParts, textOf, type Value } from './file-parts.ts';

export interface Tagged {
  /** Tags from the document down to the content, such as Table, TR, TH. */
  readonly tags: readonly string[];
  /** The innermost element of each of those tags, by a number of its own. */
  readonly elements: readonly number[];
  /** From 0. */
  readonly page: number;
  /** Marked content of the page. */
  readonly mark: number;
  /** Of the nearest element that has one. */
  readonly alt: string;
}

export const taggedIn = (parts: FileParts): readonly Tagged[] => {
  const pageOf = new Map(parts.pages.map(({ object }, i) => [object, i]));
  const found: Tagged[] = [];
  let numbered = 0;
  interface Above {
    readonly tags: readonly string[];
    readonly elements: readonly number[];
    readonly page: number;
    readonly alt: string;
  }
  const walk = (value: Value, above: Above): void => {
    if (typeof value === 'number') {
      found.push({ ...above, mark: value });
      return;
    }
    if (Array.isArray(value)) {
      for (const kid of value as readonly Value[]) walk(kid, above);
      return;
    }
    const element: Dictionary = parts.dictionaryOf(value);
    const page = pageOf.get(String(element['/Pg'] ?? '')) ?? above.page;
    if (typeof element['/MCID'] === 'number') {
      found.push({ ...above, page, mark: element['/MCID'] });
      return;
    }
    const kids = element['/K'];
    if (kids === undefined) return;
    const tag = String(element['/S'] ?? '').slice(1);
    walk(typeof kids === 'string' ? kids : parts.lookUp(kids), {
      tags: tag === '' ? above.tags : [...above.tags, tag],
      elements: tag === '' ? above.elements : [...above.elements, numbered++],
      page,
      alt: textOf(element['/Alt']) || above.alt,
    });
  };
  const root = parts.dictionaryOf(parts.trailer['/Root']);
  const tree = parts.dictionaryOf(root['/StructTreeRoot']);
  walk(tree['/K'] ?? null, { tags: [], elements: [], page: -1, alt: '' });
  return found;
};

const isHeading = (tag: string): boolean => /^H[1-6]?$/.test(tag);

/** Headings of which the next part of the text, or the next picture, stands on another page. */
export const headingsAlone = (tagged: readonly Tagged[]): readonly Tagged[] =>
  tagged.filter((one, i) => {
    const place = one.tags.findIndex(isHeading);
    if (place < 0) return false;
    const own = one.elements[place];
    const next = tagged.slice(i + 1).find(({ elements }) => !elements.includes(own as number));
    return next === undefined || next.page !== one.page;
  });

/** Table heads that stand on a page without a row of their table. */
export const tableHeadsAlone = (tagged: readonly Tagged[]): readonly Tagged[] =>
  tagged.filter((one) => {
    if (!one.tags.includes('TH')) return false;
    const table = one.elements[one.tags.lastIndexOf('Table')] as number;
    return !tagged.some(
      ({ tags, elements, page }) => tags.includes('TD') && elements.includes(table) && page === one.page,
    );
  });
