// Do the texts that are shown hold signs that no one can see? Line breaks and tabs are kept in notes.
import { pointer, type Segment } from './pointer.ts';
import type { FormProblem } from './problems.ts';

interface Shown {
  readonly place: readonly Segment[];
  readonly mayBreak: boolean;
}

export const textProblems = (document: Readonly<Record<string, unknown>>): readonly FormProblem[] => {
  const named = (list: string, key: string): readonly Shown[] =>
    (Array.isArray(document[list]) ? document[list] : []).map((_, i) => ({ place: [list, i, key], mayBreak: false }));
  const shown: readonly Shown[] = [
    ...['title', 'designer', 'edition', 'date', 'currency'].map((key) => ({ place: [key], mayBreak: false })),
    { place: ['notes'], mayBreak: true },
    ...named('corrections', 'edition'),
    ...named('corrections', 'text').map((one) => ({ ...one, mayBreak: true })),
    ...named('fabrics', 'name'),
    ...namedInFabrics(document.fabrics),
    ...named('blocks', 'title'),
    ...named('colourways', 'title'),
    ...named('sizes', 'title'),
  ];
  return shown.flatMap(({ place, mayBreak }) => {
    const text = textAt(document, place);
    if (text === null) return [];
    const position = unseenAt(text, mayBreak ? seenInNotes : nothing);
    return position < 0 ? [] : [{ code: 'design/control-character', path: pointer(place), position }];
  });
};

/** Sheets and ends have names of their own. */
const namedInFabrics = (fabrics: unknown): readonly Shown[] =>
  (Array.isArray(fabrics) ? fabrics : []).flatMap((fabric, i) =>
    [['bought', 'sheets'], ['ends']].flatMap((way) => {
      const list = way.reduce<unknown>(
        (value, key) =>
          typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>)[key] : undefined,
        fabric,
      );
      return (Array.isArray(list) ? list : []).map((_, j) => ({
        place: ['fabrics', i, ...way, j, 'name'],
        mayBreak: false,
      }));
    }),
  );

const nothing: ReadonlySet<number> = new Set();
const seenInNotes: ReadonlySet<number> = new Set([9, 10, 13]);

/** Control characters of ISO 6429, the signs that turn the direction of writing, and halves of surrogate pairs. */
const unseenAt = (text: string, allowed: ReadonlySet<number>): number => {
  let i = 0;
  for (const sign of text) {
    const c = sign.codePointAt(0) as number;
    const control = c < 32 || (c >= 127 && c < 160);
    const turning = (c >= 0x202a && c <= 0x202e) || (c >= 0x2066 && c <= 0x2069);
    const half = c >= 0xd800 && c <= 0xdfff;
    if ((control && !allowed.has(c)) || turning || half) return i;
    i += sign.length;
  }
  return -1;
};

const textAt = (document: Readonly<Record<string, unknown>>, place: readonly Segment[]): string | null => {
  let value: unknown = document;
  for (const segment of place) {
    if (typeof value !== 'object' || value === null) return null;
    value = (value as Readonly<Record<Segment, unknown>>)[segment];
  }
  return typeof value === 'string' ? value : null;
};
