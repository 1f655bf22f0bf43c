// Where something lies in a document, in the maker's words: a pointer such as /top/rows/2/0 is for files.
import type { QuiltDocument } from '#craft/design';
import { capital } from '#paper/words';

/** The pointer itself where there are no better words. */
export const placeWords = (where: string, document: QuiltDocument): string => {
  const [part = '', first = '', second = ''] = where.replace(/^\//, '').split('/');
  const spot = spotWords(where);
  if (spot !== '') return capital(spot);
  const nth = Number(first);
  switch (part) {
    case 'blocks':
      return `Block ${document.blocks[nth]?.title || document.blocks[nth]?.id || nth + 1}`;
    case 'fabrics':
      return `Cloth ${document.fabrics[nth]?.name || document.fabrics[nth]?.id || nth + 1}`;
    case 'finish':
      return first === '' ? 'The finish' : `The finish: ${first}`;
    case 'top':
      return topWords({ part: first, nth: second, borders: document.top.borders?.length ?? 0 });
    default:
      return where;
  }
};

/** A row, a cell by its row and place, a part of a section by its number in each run: "part 1.3"; nothing for all else. */
export const spotWords = (where: string): string => {
  const [, part, ...rest] = where.slice(1).split('/');
  const numbers = rest.filter((step) => /^\d+$/.test(step)).map((step) => Number(step) + 1);
  if (numbers.length === 0) return '';
  switch (part) {
    case 'rows':
      return cellWords('row', numbers);
    case 'between':
      return cellWords('between, row', numbers);
    case 'sections':
      return `part ${numbers.join('.')}`;
    default:
      return '';
  }
};

const cellWords = (line: string, [row, place]: readonly number[]): string =>
  `${line} ${row}${place === undefined ? '' : `, place ${place}`}`;

const topWords = (of: { readonly part: string; readonly nth: string; readonly borders: number }): string => {
  const { part, nth, borders } = of;
  switch (part) {
    case 'rows':
      return 'The rows';
    case 'between':
      return 'The places between the rows';
    case 'sections':
      return 'The sections';
    case 'borders':
      return nth === '' ? 'The borders' : borderWords(Number(nth) + 1, borders);
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
