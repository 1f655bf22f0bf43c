// All pages small: one comes when it is in sight. Arrow keys go from page to page.
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { PagePictures } from './page-pictures.ts';

export interface ThumbnailsOf {
  readonly pictures: PagePictures;
  readonly count: number;
  readonly sizePt: readonly [width: number, height: number];
  readonly here: number;
  readonly onTurn: (page: number) => void;
}

const widthPx = 80;

export const Thumbnails = ({ pictures, count, sizePt, here, onTurn }: ThumbnailsOf) => {
  const list = useRef<HTMLOListElement>(null);
  const isOwnTurn = useRef(false);
  useEffect(() => {
    const key = list.current?.querySelector<HTMLElement>(`[data-page="${here}"]`);
    key?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    if (isOwnTurn.current) key?.focus();
    isOwnTurn.current = false;
  }, [here]);
  const press = (event: KeyboardEvent) => {
    const to = {
      ArrowDown: here + 1,
      ArrowRight: here + 1,
      ArrowUp: here - 1,
      ArrowLeft: here - 1,
      Home: 1,
      End: count,
    }[event.key];
    if (to === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    isOwnTurn.current = true;
    onTurn(to);
  };
  return (
    <nav className="thumbnails" aria-label="All pages">
      <ol ref={list} onKeyDown={press}>
        {Array.from({ length: count }, (_, i) => i + 1).map((page) => (
          <li key={page}>
            <button
              type="button"
              data-page={page}
              aria-label={`Page ${page}`}
              aria-current={page === here ? 'page' : undefined}
              tabIndex={page === here ? 0 : -1}
              onClick={() => onTurn(page)}
            >
              <Thumbnail pictures={pictures} page={page} heightPx={(widthPx * sizePt[1]) / sizePt[0]} />
              <span>{page}</span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
};

const Thumbnail = (of: { readonly pictures: PagePictures; readonly page: number; readonly heightPx: number }) => {
  const { pictures, page, heightPx } = of;
  const place = useRef<HTMLSpanElement>(null);
  const [url, setUrl] = useState<string | null>(null);
  useEffect(() => {
    const element = place.current;
    if (element === null) return;
    let isLeft = false;
    const watch = new IntersectionObserver((entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      watch.disconnect();
      // twice as many dots: most screens show two for one
      void pictures.of({ page, widthPx: 2 * widthPx }, 'in-turn').then((found) => {
        if (!isLeft) setUrl(found);
      });
    });
    watch.observe(element);
    return () => {
      isLeft = true;
      watch.disconnect();
    };
  }, [pictures, page]);
  return (
    <span
      ref={place}
      className={url === null ? 'thumbnail is-coming' : 'thumbnail'}
      style={{ width: widthPx, height: heightPx }}
    >
      {url !== null && <img src={url} width={widthPx} height={heightPx} alt="" />}
    </span>
  );
};
