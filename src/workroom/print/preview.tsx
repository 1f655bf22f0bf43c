// The pages as they will lie on paper: one at a time, as large as one likes, with all of them small beside it.
import { type KeyboardEvent, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { Problems, useQuilt, useRoom } from '#workroom/room';
import { openPagePictures, type PagePictures } from './page-pictures.ts';
import { pictureWidth, shownWidth, zooms } from './page-size.ts';
import { Thumbnails } from './thumbnails.tsx';
import type { Printing } from './use-print.ts';
import { useRoomFor } from './use-room-for.ts';

export interface PreviewOf {
  readonly printing: Printing;
  /** From 1. */
  readonly page: number;
  readonly onPage: (page: number) => void;
  readonly isSewn: boolean;
  readonly onSave: () => void;
  readonly onOpen: () => void;
}

export const Preview = ({ printing, page, onPage, isSewn, onSave, onOpen }: PreviewOf) => {
  const { print, waitingSinceMs } = printing;
  const { say } = useRoom();
  const pictures = useMemo(() => (print === null ? null : openPagePictures(print.order)), [print]);
  useEffect(() => () => pictures?.close(), [pictures]);
  const pages = print?.told.pages ?? 0;
  const [zoom, setZoom] = useState(0);
  const turn = useCallback(
    (to: number) => {
      if (to < 1 || to > pages) return;
      onPage(to);
      say(`Page ${to} of ${pages}`);
    },
    [onPage, pages, say],
  );
  const closer = useCallback((by: number) => setZoom((now) => Math.max(0, Math.min(zooms.length - 1, now + by))), []);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        {
          id: 'page next',
          part: 'Print',
          words: 'Next page',
          keys: ['PageDown'],
          isOff: page >= pages,
          run: () => turn(page + 1),
        },
        {
          id: 'page before',
          part: 'Print',
          words: 'Page before',
          keys: ['PageUp'],
          isOff: page <= 1,
          run: () => turn(page - 1),
        },
        {
          id: 'page larger',
          part: 'Print',
          words: 'Page larger',
          keys: ['+'],
          isOff: zoom >= zooms.length - 1,
          run: () => closer(1),
        },
        {
          id: 'page smaller',
          part: 'Print',
          words: 'Page smaller',
          keys: ['-'],
          isOff: zoom <= 0,
          run: () => closer(-1),
        },
        { id: 'page whole', part: 'Print', words: 'The whole page', keys: ['0'], run: () => setZoom(0) },
      ],
      [page, pages, zoom, turn, closer],
    ),
  );
  return (
    <div className="stage print-stage">
      <div className="print-tools">
        <div className="row">
          <button type="button" aria-label="Page before" disabled={page <= 1} onClick={() => turn(page - 1)}>
            ‹
          </button>
          <span className="print-place">{pages === 0 ? 'No pages yet' : `Page ${page} of ${pages}`}</span>
          <button type="button" aria-label="Next page" disabled={page >= pages} onClick={() => turn(page + 1)}>
            ›
          </button>
        </div>
        <div className="row">
          <button type="button" aria-label="Page smaller" disabled={zoom <= 0} onClick={() => closer(-1)}>
            −
          </button>
          <button type="button" disabled={zoom === 0} onClick={() => setZoom(0)}>
            Whole
          </button>
          <button type="button" aria-label="Page larger" disabled={zoom >= zooms.length - 1} onClick={() => closer(1)}>
            +
          </button>
        </div>
        <div className="row print-keys">
          <button type="button" disabled={!isSewn} onClick={onOpen}>
            Open to print
          </button>
          <button type="button" className="main-key" disabled={!isSewn} onClick={onSave}>
            Save the PDF
          </button>
        </div>
      </div>
      <Told printing={printing} isSewn={isSewn} />
      <div className={waitingSinceMs === null ? 'print-pages' : 'print-pages is-behind'}>
        {print !== null && pictures !== null && (
          <>
            <Thumbnails pictures={pictures} count={pages} sizePt={print.told.sizePt} here={page} onTurn={turn} />
            <Page pictures={pictures} page={page} count={pages} sizePt={print.told.sizePt} zoom={zoom} onTurn={turn} />
          </>
        )}
      </div>
    </div>
  );
};

/** What stands in the way, or how long it has been waited for. */
const Told = ({ printing, isSewn }: { readonly printing: Printing; readonly isSewn: boolean }) => {
  const { waitingSinceMs, trouble, isStopped, again, stop } = printing;
  const { document } = useQuilt();
  const seconds = useSeconds(waitingSinceMs);
  if (!isSewn) return <p className="print-told">The pages come when what stands above is mended.</p>;
  if (trouble !== null) {
    return (
      <div className="print-told" role="alert">
        <h2>The pages were not set</h2>
        <Problems problems={trouble.refusal.problems} more={trouble.refusal.more} document={document} />
        <div className="row">
          <button type="button" onClick={again}>
            Try again
          </button>
        </div>
      </div>
    );
  }
  if (isStopped) {
    return (
      <div className="print-told row">
        <p role="status">Stopped. {printing.print === null ? '' : 'What is seen here is older than the quilt.'}</p>
        <button type="button" onClick={again}>
          Set the pages
        </button>
      </div>
    );
  }
  if (waitingSinceMs === null) return null;
  return (
    <div className="print-told row">
      <p role="status">Setting the pages …</p>
      <span className="quiet" aria-hidden="true">
        {seconds} s
      </span>
      {seconds >= slowSeconds && (
        <p role="status">
          A quilt of thousands of pieces, or several at once, takes up to a minute. Go on working if you like: nothing
          waits for it.
        </p>
      )}
      <button type="button" onClick={stop}>
        Stop
      </button>
    </div>
  );
};

/** From then on one wonders. */
const slowSeconds = 8;

const useSeconds = (sinceMs: number | null): number => {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    setSeconds(0);
    if (sinceMs === null) return;
    const clock = setInterval(() => setSeconds(Math.floor((performance.now() - sinceMs) / 1000)), 250);
    return () => clearInterval(clock);
  }, [sinceMs]);
  return seconds;
};

interface PageOf {
  readonly pictures: PagePictures;
  readonly page: number;
  readonly count: number;
  readonly sizePt: readonly [width: number, height: number];
  /** Index into the zooms. */
  readonly zoom: number;
  readonly onTurn: (page: number) => void;
}

const Page = ({ pictures, page, count, sizePt, zoom, onTurn }: PageOf) => {
  const place = useRef<HTMLElement>(null);
  const room = useRoomFor(place);
  const width = room === null ? 0 : shownWidth({ room, sizePt, zoom });
  const widthPx = width === 0 ? 0 : pictureWidth(width * devicePixelRatio);
  const [seen, setSeen] = useState<{ readonly page: number; readonly url: string } | 'none' | null>(null);
  useEffect(() => {
    if (widthPx === 0) return;
    let isLeft = false;
    void pictures.of({ page, widthPx }, 'now').then((url) => {
      if (isLeft) return;
      setSeen(url === null ? 'none' : { page, url });
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
      <div className="print-paper" style={{ width, height }}>
        {seen === 'none' && <p className="empty">The picture of this page did not come. The PDF may still.</p>}
        {seen !== null && seen !== 'none' && seen.page === page && (
          <img src={seen.url} width={width} height={height} alt={`Page ${page} of ${count}`} />
        )}
      </div>
    </section>
  );
};
