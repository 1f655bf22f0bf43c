// A photograph of cloth, made small enough to stand in a document: cut to what is wanted, scaled down, and its mean colour taken. Runs
// in a worker: a large picture takes a second.
import { meanColour } from '#craft/fabric';
import { limits } from '#craft/limits';

/** What is kept of a photograph, in whole hundredths of its width and height. */
export interface PhotoCrop {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export type TakenPhoto =
  | {
      readonly outcome: 'taken';
      /** A whole data address. */
      readonly image: string;
      /** #rrggbb, the mean of what is kept. */
      readonly colour: string;
    }
  | { readonly outcome: 'refused'; readonly fault: PhotoFault };

export type PhotoFault = 'not-a-picture' | 'too-large' | 'too-small' | 'no-means';

/** Our own figures: more than any camera of today makes. */
export const mostFileBytes = 60_000_000;
const mostPixels = 120_000_000;
const leastPixels = 8;

/** The longer side, and how finely it is written: the first that is short enough is taken. */
const tries = [
  [720, 0.85],
  [640, 0.8],
  [512, 0.75],
  [384, 0.7],
  [256, 0.6],
] as const;

/** Half of what a document takes, so that many cloths of a quilt can have one. */
const wantedCharacters = limits.photoCharacters / 2;

export const takePhoto = async (file: Blob, crop: PhotoCrop): Promise<TakenPhoto> => {
  if (file.size > mostFileBytes) return { outcome: 'refused', fault: 'too-large' };
  if (typeof OffscreenCanvas === 'undefined') return { outcome: 'refused', fault: 'no-means' };
  const whole = await createImageBitmap(file).catch(() => null);
  if (whole === null) return { outcome: 'refused', fault: 'not-a-picture' };
  try {
    return await cutAndWritten(whole, crop);
  } finally {
    whole.close();
  }
};

const cutAndWritten = async (whole: ImageBitmap, crop: PhotoCrop): Promise<TakenPhoto> => {
  const [left, right] = [crop.left, crop.right].map((edge) => (edge * whole.width) / 100) as [number, number];
  const [top, bottom] = [crop.top, crop.bottom].map((edge) => (edge * whole.height) / 100) as [number, number];
  const [width, height] = [right - left, bottom - top];
  if (whole.width * whole.height > mostPixels) return { outcome: 'refused', fault: 'too-large' };
  if (Math.min(width, height) < leastPixels) return { outcome: 'refused', fault: 'too-small' };
  for (const [side, quality] of tries) {
    const scale = Math.min(1, side / Math.max(width, height));
    const canvas = new OffscreenCanvas(Math.max(1, Math.round(width * scale)), Math.max(1, Math.round(height * scale)));
    const to = canvas.getContext('2d', { willReadFrequently: true });
    if (to === null) return { outcome: 'refused', fault: 'no-means' };
    to.imageSmoothingQuality = 'high';
    // what can be seen through lies on white
    to.fillStyle = '#ffffff';
    to.fillRect(0, 0, canvas.width, canvas.height);
    to.drawImage(whole, left, top, width, height, 0, 0, canvas.width, canvas.height);
    const image = await dataAddress(await canvas.convertToBlob({ type: 'image/jpeg', quality }));
    if (image.length > wantedCharacters) continue;
    const { data } = to.getImageData(0, 0, canvas.width, canvas.height);
    return { outcome: 'taken', image, colour: meanColour(data) };
  }
  return { outcome: 'refused', fault: 'too-large' };
};

const dataAddress = async (blob: Blob): Promise<string> => {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const signs: string[] = [];
  for (let at = 0; at < bytes.length; at += 8192) signs.push(String.fromCharCode(...bytes.subarray(at, at + 8192)));
  return `data:image/jpeg;base64,${btoa(signs.join(''))}`;
};
