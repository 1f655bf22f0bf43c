// Pictures of the pages of one print, each asked for once: the page that one looks at before thumbnails, thumbnails one after another.
import type { PageWishes } from '#wire';
import { askPage, type Order } from './shop.ts';

export interface PagePictures {
  /** An address for an image; null where it did not come. */
  readonly of: (page: PageWishes, hurry: 'now' | 'in-turn') => Promise<string | null>;
  /** The widest that has come of that page, to be seen until a better one has; null where none has. */
  readonly had: (page: number) => string | null;
  /** Lets go of all of them. */
  readonly close: () => void;
}

export const openPagePictures = (order: Order): PagePictures => {
  const giveUp = new AbortController();
  const pictures = new Map<string, Promise<string | null>>();
  let last: Promise<unknown> = Promise.resolve();
  const come = new Map<string, { readonly of: PageWishes; readonly url: string }>();
  const ask = async (page: PageWishes): Promise<string | null> => {
    if (giveUp.signal.aborted) return null;
    const had = await askPage({ order, page, signal: giveUp.signal });
    if (had.had === 'no') return null;
    const url = URL.createObjectURL(had.value);
    come.set(url, { of: page, url });
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
    had: (page) => {
      const own = [...come.values()].filter(({ of }) => of.page === page);
      return own.toSorted((a, b) => b.of.widthPx - a.of.widthPx)[0]?.url ?? null;
    },
    close: () => {
      giveUp.abort();
      for (const url of come.keys()) URL.revokeObjectURL(url);
    },
  };
};
