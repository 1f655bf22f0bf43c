// Words on a page with the boxes that they stand in, from the file's own coordinates (poppler's pdftotext -bbox).

import { type PrintedFile, said } from './pdf.ts';

export interface Word {
  readonly text: string;
  /** Points from the page's left and top. */
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface PageOfWords {
  readonly width: number;
  readonly height: number;
  readonly words: readonly Word[];
}

const signs: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", '#39': "'" };

const plain = (text: string): string => text.replace(/&([#\w]+);/g, (whole, name: string) => signs[name] ?? whole);

export const wordsOf = (file: Pick<PrintedFile, 'path'>): readonly PageOfWords[] => {
  const pages: { width: number; height: number; words: Word[] }[] = [];
  for (const line of said('pdftotext', ['-bbox', file.path, '-']).split('\n')) {
    const page = /<page width="([\d.]+)" height="([\d.]+)"/.exec(line);
    if (page) pages.push({ width: Number(page[1]), height: Number(page[2]), words: [] });
    const word = /<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*)<\/word>/.exec(line);
    if (word)
      pages.at(-1)?.words.push({
        left: Number(word[1]),
        top: Number(word[2]),
        right: Number(word[3]),
        bottom: Number(word[4]),
        text: plain(word[5] ?? ''),
      });
  }
  return pages;
};

/** Letters fill the middle of the line that a font keeps for them: ascent and descent are left out above and below. */
const inner = ({ left, top, right, bottom }: Word) => ({
  left: left + 0.3,
  right: right - 0.3,
  top: top + 0.28 * (bottom - top),
  bottom: bottom - 0.24 * (bottom - top),
});

/** Pairs of words whose letters lie on each other. */
export const overlapping = ({ words }: PageOfWords): readonly (readonly [Word, Word])[] => {
  const found: (readonly [Word, Word])[] = [];
  const sorted = words
    .filter(({ left, right, text }) => right > left && text.trim() !== '')
    .toSorted((a, b) => a.top - b.top);
  sorted.forEach((a, i) => {
    const one = inner(a);
    for (const b of sorted.slice(i + 1)) {
      if (b.top > a.bottom) break;
      const other = inner(b);
      const apart =
        one.right <= other.left || other.right <= one.left || one.bottom <= other.top || other.bottom <= one.top;
      if (!apart) found.push([a, b]);
    }
  });
  return found;
};

/** Words that leave the page, or come nearer to its edge than printers reach (a quarter of an inch, common practice). */
export const outside = ({ words, width, height }: PageOfWords): readonly Word[] =>
  words.filter(({ left, top, right, bottom }) => left < 18 || top < 18 || right > width - 18 || bottom > height - 18);

/** Points from the page's lower edge to where its text ends and its foot with the page number begins. */
const foot = 50;

/** A colon at the end of a page's text: what it leads stands on the next page. */
export const leadsAlone = ({ words, height }: PageOfWords): readonly Word[] => {
  const text = words.filter(({ bottom }) => bottom < height - foot);
  // after a word on its line, or on a line below it
  const isAfter = (one: Word, word: Word): boolean =>
    one.top > word.bottom - 3 || (one.bottom > word.top + 3 && one.left > word.right - 1);
  return text.filter((word) => word.text.endsWith(':') && !text.some((one) => isAfter(one, word)));
};
