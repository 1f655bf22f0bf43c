// Pictures of the pages of one print, each asked for once: the page that one looks at before thumbnails, thumbnails one after another.
import type { PageWishes } from '#wire';
import { askPage, type Order } from './shop.ts';

export interface PagePictures {
  /** An address for an image; null where it did not come. */
  readonly of: (page: PageWishes, hurry: 'now' | 'in-turn') => Promise<string | null>;
  /** Lets go of all of them. */
  readonly close: () => void;
}

export const openPagePictures = (order: Order): PagePictures => {
  const giveUp = new AbortController();
  const pictures = new Map<string, Promise<string | null>>();
  let last: Promise<unknown> = Promise.resolve();
  const urls: string[] = [];
  const ask = async (page: PageWishes): Promise<string | null> => {
    if (giveUp.signal.aborted) return null;
    const had = await askPage({ order, page, signal: giveUp.signal });
    if (had.had === 'no') return null;
    const url = URL.createObjectURL(had.value);
    urls.push(url);
    return url;
  };
  return {
    of: (page, hurry) => {
      const key = `${page.page} ${page.widthPx}`;
      const known = pictures.get(key);
      if (known !== undefined) return known;
      const picture = (hurry === 'now' ? ask(page) : last.then(() => ask(page))).catch(() => null);
      if (hurry === 'in-turn') last = picture;
      pictures.set(key, picture);
      // what did not come is asked for again when it is looked at again
      void picture.then((url) => (url === null ? pictures.delete(key) : undefined));
      return picture;
    },
    close: () => {
      giveUp.abort();
      for (const url of urls) URL.revokeObjectURL(url);
    },
  };
};
