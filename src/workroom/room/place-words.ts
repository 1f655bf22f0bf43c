// Where something lies in a document, in the maker's words: a pointer such as /top/rows/2/0 is for files.
import type { QuiltDocument } from '#craft/design';

/** The pointer itself where there are no better words. */
export const placeWords = (where: string, document: QuiltDocument): string => {
  const [part = '', first = '', second = '', third = ''] = where.replace(/^\//, '').split('/');
  if (where.startsWith('/top/sections/')) return `Part ${sectionNumber(where)}`;
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
      return cellWords('Row', first, second) || 'The rows';
    case 'between':
      return cellWords('Between, row', first, second) || 'The places between the rows';
    case 'sections':
      return 'The sections';
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

const cellWords = (line: string, row: string, place: string): string => {
  if (row === '') return '';
  return `${line} ${Number(row) + 1}${place === '' ? '' : `, place ${Number(place) + 1}`}`;
};

/** "1.3": the number of a part in each run, from the whole on. */
const sectionNumber = (where: string): string =>
  [...where.matchAll(/\/(?:down|across)\/(\d+)/g)].map(([, part]) => Number(part) + 1).join('.');

/** @param number from the inside, from 1 */
export const borderWords = (number: number, count: number): string => {
  if (count === 1) return 'Border';
  if (number === 1) return 'Inner border';
  return number === count ? 'Outer border' : `Border ${number}`;
};
