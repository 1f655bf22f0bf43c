// A photograph of a cloth, and how much of the cloth it shows.
import type { WrittenPhoto } from './document.ts';
import type { ClothPhoto } from './quilt.ts';
import type { Spot } from './reading.ts';

export const readPhoto = (written: WrittenPhoto | undefined, { path, reading }: Spot): ClothPhoto | null => {
  if (written === undefined) return null;
  const width = reading.length({ written: written.width, path: `${path}/width` });
  return width === null ? null : { image: written.image, width };
};
