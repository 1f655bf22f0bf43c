// The pages that the compiler draws in one SVG text, one under the other, taken apart: each a picture of its own with the letters
// that stand on it.

export interface PagePictures {
  /** Of each page. */
  readonly sizePt: readonly [width: number, height: number];
  /** SVG texts. */
  readonly pages: readonly string[];
}

/** Every page begins with its paper; it is moved down to its place. All letters stand once, behind the last page. */
const paperLine = /^ {4}<path class="typst-shape" fill="#ffffff"[^>]*\/>$/gm;
const place = /<g transform="matrix\(1 0 0 1 0 [\d.]+\)">/;
const lettersBegin = '\n    <defs id="glyph">';

/** Throws where the text is not of that form: another compiler writes another. */
export const pagesIn = (svg: string): PagePictures => {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  const starts = [...svg.matchAll(paperLine)].map(({ index }) => index);
  const end = svg.indexOf(lettersBegin);
  if (width === undefined || height === undefined || starts.length === 0 || end < 0) {
    throw new Error('the pages are not drawn in the form that is known');
  }
  const sizePt = [thousandths(Number(width)), thousandths(Number(height) / starts.length)] as const;
  const letters = new Map(
    [...svg.slice(end).matchAll(/<symbol id="(\w+)".*?<\/symbol>/gs)].map(([whole, id = '']) => [id, whole]),
  );
  const pages = starts.map((start, i) => {
    const drawn = svg.slice(start, starts[i + 1] ?? end);
    const own = i === 0 ? drawn : drawn.replace(place, '<g>');
    const used = new Set([...own.matchAll(/xlink:href="#(\w+)"/g)].map(([, id = '']) => id));
    const defs = [...used].map((id) => letters.get(id) ?? '').join('');
    return `<svg viewBox="0 0 ${sizePt[0]} ${sizePt[1]}" width="${sizePt[0]}" height="${sizePt[1]}" xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink">${own}<defs>${defs}</defs></svg>`;
  });
  return { sizePt, pages };
};

/** The pages' sum is written with what adding leaves over. */
const thousandths = (pt: number): number => Math.round(pt * 1000) / 1000;
