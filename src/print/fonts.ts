// Where the two families of the pages lie, and which signs they can draw.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const faces = [
  { home: '@expo-google-fonts/source-sans-3', cut: '400Regular', file: 'SourceSans3_400Regular.ttf' },
  { home: '@expo-google-fonts/source-sans-3', cut: '600SemiBold', file: 'SourceSans3_600SemiBold.ttf' },
  { home: '@expo-google-fonts/source-sans-3', cut: '700Bold', file: 'SourceSans3_700Bold.ttf' },
  { home: '@expo-google-fonts/source-serif-4', cut: '600SemiBold', file: 'SourceSerif4_600SemiBold.ttf' },
] as const;

/** Font files, found by their package's name wherever it is installed. */
export const fontFiles = (): readonly string[] => {
  const { resolve } = createRequire(import.meta.url);
  return faces.map(({ home, cut, file }) => join(dirname(resolve(`${home}/package.json`)), cut, file));
};

/** A font's bytes, to read figures from. */
export const openFont = (path: string): DataView => {
  const bytes = readFileSync(path);
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
};

/**
 * Glyph of each code point that a TrueType file has one for.
 *
 * @source OpenType specification, "cmap", subtable formats 4 and 12
 * Throws when the file has neither a format 12 nor a format 4 subtable.
 */
export const glyphsOf = (font: DataView): ReadonlyMap<number, number> => {
  const cmap = tableAt(font, 'cmap');
  const subtables = Array.from({ length: font.getUint16(cmap + 2) }, (_, i) => cmap + font.getUint32(cmap + 8 + 8 * i));
  const byFormat = new Map(subtables.map((at) => [font.getUint16(at), at]));
  const full = byFormat.get(12);
  if (full !== undefined) return fromGroups(font, full);
  const basic = byFormat.get(4);
  if (basic !== undefined) return fromSegments(font, basic);
  throw new Error('no Unicode map in the font');
};

export const tableAt = (font: DataView, tag: string): number => {
  const count = font.getUint16(4);
  for (let i = 0; i < count; i++) {
    const at = 12 + 16 * i;
    const name = String.fromCharCode(...[0, 1, 2, 3].map((k) => font.getUint8(at + k)));
    if (name === tag) return font.getUint32(at + 8);
  }
  throw new Error(`the font lacks the table ${tag}`);
};

const fromGroups = (font: DataView, at: number): ReadonlyMap<number, number> => {
  const glyphs = new Map<number, number>();
  const groups = font.getUint32(at + 12);
  for (let i = 0; i < groups; i++) {
    const group = at + 16 + 12 * i;
    const glyph = font.getUint32(group + 8);
    const first = font.getUint32(group);
    for (let code = first; code <= font.getUint32(group + 4); code++) {
      if (glyph + code - first !== 0) glyphs.set(code, glyph + code - first);
    }
  }
  return glyphs;
};

const fromSegments = (font: DataView, at: number): ReadonlyMap<number, number> => {
  const glyphs = new Map<number, number>();
  const count = font.getUint16(at + 6) / 2;
  const ends = at + 14;
  const starts = ends + 2 * count + 2;
  const deltas = starts + 2 * count;
  const offsets = deltas + 2 * count;
  for (let i = 0; i < count; i++) {
    const offset = font.getUint16(offsets + 2 * i);
    const first = font.getUint16(starts + 2 * i);
    for (let code = first; code <= font.getUint16(ends + 2 * i) && code < 0xffff; code++) {
      const raw = offset === 0 ? code : font.getUint16(offsets + 2 * i + offset + 2 * (code - first));
      const glyph = raw === 0 ? 0 : (raw + font.getUint16(deltas + 2 * i)) & 0xffff;
      if (glyph !== 0) glyphs.set(code, glyph);
    }
  }
  return glyphs;
};
