// Photographs of cloths as a drawing takes them: loaded once, as the eyes in question see them, in several sizes.
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import { type Sight, seePixels } from '#craft/fabric';
import { parseLength, type Unit } from '#craft/measure';
import { toNumber } from '#ground/exact';

export interface ClothPicture {
  /** From the whole down by halves. */
  readonly levels: readonly { readonly pattern: CanvasPattern; readonly widthPx: number }[];
  /** What it shows, in the drawing's unit. */
  readonly size: readonly [width: number, height: number];
  readonly isUpright: boolean;
}

/** By cloth; a cloth without one, or whose photograph is not there yet, is drawn in its colour. */
export type ClothPictures = ReadonlyMap<string, ClothPicture>;

export interface PicturedCloth {
  readonly id: string;
  readonly colour: string;
  readonly photo?: { readonly image: string; readonly width: string | number } | undefined;
  readonly print?: 'none' | 'one-way' | 'two-way' | undefined;
}

const none: ClothPictures = new Map();
const Pictures = createContext<ClothPictures>(none);

export const useClothPictures = (): ClothPictures => useContext(Pictures);

/** Drawings inside show these cloths by their photographs. */
export const ClothPhotos = (of: {
  readonly cloths: readonly PicturedCloth[];
  readonly unit: Unit;
  readonly sight?: Sight | null;
  readonly children: ReactNode;
}) => {
  const { cloths, unit, sight = null, children } = of;
  const [loaded, setLoaded] = useState<ReadonlyMap<string, Loaded>>(new Map());
  const images = useMemo(() => [...new Set(cloths.flatMap(({ photo }) => photo?.image ?? []))], [cloths]);
  const wanted = images.join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: the same photographs are the same, whatever list they stand in
  useEffect(() => {
    let isOvertaken = false;
    const load = async () => {
      const all = new Map<string, Loaded>();
      for (const image of images) {
        const one = await loadedOnce(image, sight);
        if (isOvertaken) return;
        if (one !== null) all.set(image, one);
      }
      setLoaded((before) => (before.size === 0 && all.size === 0 ? before : all));
    };
    void load();
    return () => {
      isOvertaken = true;
    };
  }, [wanted, sight]);
  const pictures = useMemo((): ClothPictures => {
    if (loaded.size === 0) return none;
    return new Map(
      cloths.flatMap(({ id, photo, print }) => {
        const one = photo === undefined ? undefined : loaded.get(photo.image);
        const width = photo === undefined ? null : parseLength(photo.width, { unit, sign: 'positive' });
        if (one === undefined || width === null || !width.ok) return [];
        const across = toNumber(width.value);
        const size = [across, (across * one.heightPx) / one.widthPx] as const;
        const isUpright = print !== undefined && print !== 'none';
        return [[id, { levels: one.levels, size, isUpright }] as const];
      }),
    );
  }, [cloths, unit, loaded]);
  return <Pictures.Provider value={pictures}>{children}</Pictures.Provider>;
};

interface Loaded {
  readonly levels: ClothPicture['levels'];
  readonly widthPx: number;
  readonly heightPx: number;
}

/** So many photographs stay at hand, each as it was seen last. */
const most = 60;
const atHand = new Map<string, Promise<Loaded | null>>();

const loadedOnce = (image: string, sight: Sight | null): Promise<Loaded | null> => {
  const key = `${sight ?? 'usual'} ${image}`;
  const known = atHand.get(key);
  if (known !== undefined) return known;
  const [oldest] = atHand.keys();
  if (atHand.size >= most && oldest !== undefined) atHand.delete(oldest);
  // what is no picture after all is drawn in its cloth's colour
  const coming = load(image, sight).catch(() => null);
  atHand.set(key, coming);
  return coming;
};

const leastPx = 24;

const load = async (image: string, sight: Sight | null): Promise<Loaded> => {
  const picture = new Image();
  picture.src = image;
  await picture.decode();
  const { naturalWidth: widthPx, naturalHeight: heightPx } = picture;
  const levels: { pattern: CanvasPattern; widthPx: number }[] = [];
  let from: CanvasImageSource = picture;
  for (let by = 1; by === 1 || Math.min(widthPx, heightPx) / by >= leastPx; by *= 2) {
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(widthPx / by));
    canvas.height = Math.max(1, Math.round(heightPx / by));
    const to = canvas.getContext('2d', { willReadFrequently: by === 1 && sight !== null });
    if (to === null) throw new Error('the browser gives no canvas');
    to.imageSmoothingQuality = 'high';
    // what can be seen through lies on white
    to.fillStyle = '#ffffff';
    to.fillRect(0, 0, canvas.width, canvas.height);
    to.drawImage(from, 0, 0, canvas.width, canvas.height);
    if (by === 1 && sight !== null) {
      const pixels = to.getImageData(0, 0, canvas.width, canvas.height);
      seePixels(pixels.data, sight);
      to.putImageData(pixels, 0, 0);
    }
    const pattern = to.createPattern(canvas, 'repeat');
    if (pattern !== null) levels.push({ pattern, widthPx: canvas.width });
    from = canvas;
  }
  return { levels, widthPx, heightPx };
};
