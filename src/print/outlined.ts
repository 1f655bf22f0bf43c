// A picture of ours whose words are outlines: what shows it needs no letters.
import { fontFiles } from './fonts.ts';
import { type Face, linePath, openFace } from './letters.ts';

/** @returns takes SVG text as the pages have it, and gives it with a path in the place of each of its lines of words */
export const openOutliner = (): ((svg: string) => string) => {
  const [regular, semibold] = fontFiles().map(openFace) as [Face, Face];
  return (svg) =>
    svg.replace(/<text ([^>]*)>([^<]*)<\/text>/g, (_whole, attributes: string, words: string) => {
      const named = new Map(
        [...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, name = '', value = '']) => [name, value]),
      );
      const path = linePath({
        text: plain(words),
        face: named.get('font-weight') === '600' ? semibold : regular,
        size: Number(named.get('font-size')),
        at: [Number(named.get('x')), Number(named.get('y'))],
        anchor: anchorIn(named.get('text-anchor')),
      });
      return `<path fill="${named.get('fill')}" d="${path}"/>`;
    });
};

const anchorIn = (written: string | undefined): 'start' | 'middle' | 'end' =>
  written === 'middle' || written === 'end' ? written : 'start';

/** The five escapes of XML; the ampersand last, or what it begins would be read twice. */
const plain = (words: string): string =>
  words.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');
