// The pictures of a pattern, collected by name while its chapters are written.
import type { Drawing } from '#paper/drawing';

/** How a chapter names a picture: the printer finds the file, the reader's ear the words. */
export interface Picture {
  readonly name: string;
  readonly widthPt: number;
  readonly heightPt: number;
  readonly alt: string;
}

/** SVG text by picture name; filled by `shown`. */
export type Album = Map<string, string>;

/** Puts a drawing into the album under a name that no other picture has. */
export const shown = (album: Album, name: string, drawing: Drawing): Picture => {
  if (album.has(name)) throw new Error(`two pictures of one name: ${name}`);
  album.set(name, drawing.svg);
  return { name, widthPt: drawing.widthPt, heightPt: drawing.heightPt, alt: drawing.alt };
};
