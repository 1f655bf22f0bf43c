// One page, as large as it fits its room or as one likes.
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { PagePictures } from './page-pictures.ts';
import { pictureWidth, shownWidth } from './page-size.ts';
import { useRoomFor } from './use-room-for.ts';

/** What came, and of what: until that of another page has come, this is no longer shown. */
interface Seen {
  readonly pictures: PagePictures;
  readonly page: number;
  /** Null: it did not come. */
  readonly url: string | null;
}

interface PageOf {
  readonly pictures: PagePictures;
  readonly page: number;
  readonly count: number;
  readonly sizePt: readonly [width: number, height: number];
  /** Index into the zooms. */
  readonly zoom: number;
  readonly onTurn: (page: number) => void;
}

export const LargePage = ({ pictures, page, count, sizePt, zoom, onTurn }: PageOf) => {
  const place = useRef<HTMLElement>(null);
  const room = useRoomFor(place);
  const width = room === null ? 0 : shownWidth({ room, sizePt, zoom });
  const widthPx = width === 0 ? 0 : pictureWidth(width * devicePixelRatio);
  const [seen, setSeen] = useState<Seen | null>(null);
  useEffect(() => {
    if (widthPx === 0) return;
    let isLeft = false;
    void pictures.of({ page, widthPx }, 'now').then((url) => {
      if (isLeft) return;
      setSeen({ pictures, page, url });
      // the one that is likely wanted next
      if (url !== null && page < count) void pictures.of({ page: page + 1, widthPx }, 'in-turn');
    });
    return () => {
      isLeft = true;
    };
  }, [pictures, page, count, widthPx]);
  useEffect(() => {
    if (page > 0) place.current?.scrollTo({ top: 0 });
  }, [page]);
  const height = (width * sizePt[1]) / sizePt[0];
  const own = seen?.pictures === pictures && seen.page === page ? seen : null;
  const url = own?.url ?? pictures.had(page);
  const press = (event: KeyboardEvent) => {
    if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey || event.altKey) return;
    const to = { ArrowRight: page + 1, ArrowLeft: page - 1, Home: 1, End: count }[event.key];
    // a page that is wider than its room is moved by these keys
    if (to === undefined || (zoom > 0 && event.key.startsWith('Arrow'))) return;
    event.preventDefault();
    onTurn(to);
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys must be able to scroll it
    <section className="print-page" aria-label="Page" ref={place} tabIndex={0} onKeyDown={press}>
      <div className={own === null && url === null ? 'print-paper is-coming' : 'print-paper'} style={{ width, height }}>
        {url !== null && <img src={url} width={width} height={height} alt={`Page ${page} of ${count}`} />}
        {url === null && (
          <p className="empty">
            {own === null ? `Drawing page ${page} …` : 'The picture of this page did not come. The PDF may still.'}
          </p>
        )}
      </div>
    </section>
  );
};
