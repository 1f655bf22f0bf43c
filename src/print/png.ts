// A picture as PNG, for screens and for places that take no SVG.
import sharp from 'sharp';

export interface PngOf {
  /** Whole; the height follows the picture's own proportions. */
  readonly widthPx: number;
  /** Small for files that are kept, quick for what is looked at once: a quarter of the time for a quarter more bytes. */
  readonly written?: 'small' | 'quick';
}

export const pngOf = async (svg: string, of: PngOf): Promise<Uint8Array> => {
  const bytes = Buffer.from(svg);
  const { width } = await sharp(bytes).metadata();
  if (!(width > 0)) throw new Error('a picture without width');
  // rendered at its final size rather than enlarged: 72 dots are one point
  const density = Math.min(2400, Math.max(1, (72 * of.widthPx) / width));
  return sharp(bytes, { density })
    .resize({ width: of.widthPx })
    .flatten({ background: '#ffffff' })
    .png({ compressionLevel: of.written === 'quick' ? 6 : 9 })
    .toBuffer();
};
