// Where something lies in a document, in the maker's words: a pointer such as /top/rows/2/0 is for files.
import type { QuiltDocument } from '#craft/design';

/** The pointer itself where there are no better words. */
export const placeWords = (where: string, document: QuiltDocument): string => {
  const [part = '', first = '', second = '', third = ''] = where.replace(/^\//, '').split('/');
  const nth = Number(first);
  switch (part) {
    case 'blocks':
      return `Block ${document.blocks[nth]?.title || document.blocks[nth]?.id || nth + 1}`;
    case 'fabrics':
      return `Cloth ${document.fabrics[nth]?.name || document.fabrics[nth]?.id || nth + 1}`;
    case 'finish':
      return first === '' ? 'The finish' : `The finish: ${first}`;
    case 'top':
      return topWords({ part: first, first: second, second: third, borders: document.top.borders?.length ?? 0 });
    default:
      return where;
  }
};

const topWords = (of: {
  readonly part: string;
  readonly first: string;
  readonly second: string;
  readonly borders: number;
}): string => {
  const { part, first, second, borders } = of;
  const number = Number(first) + 1;
  switch (part) {
    case 'rows':
    case 'between': {
      const row = first === '' ? 'The rows' : `Row ${number}`;
      return second === '' ? row : `${row}, place ${Number(second) + 1}`;
    }
    case 'borders':
      return first === '' ? 'The borders' : borderWords(number, borders);
    case 'sashing':
      return 'The sashing';
    case 'arrangement':
      return 'The arrangement';
    default:
      return 'The top';
  }
};

/** @param number from the inside, from 1 */
export const borderWords = (number: number, count: number): string => {
  if (count === 1) return 'Border';
  if (number === 1) return 'Inner border';
  return number === count ? 'Outer border' : `Border ${number}`;
};
