// The pages as they will lie on paper: one at a time, as large as one likes, with all of them small beside it.
import { useCallback, useEffect, useMemo, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { useRoom } from '#workroom/room';
import { LargePage } from './large-page.tsx';
import { openPagePictures } from './page-pictures.ts';
import { zooms } from './page-size.ts';
import { PrintingTold } from './printing-told.tsx';
import { SavingTold } from './saving-told.tsx';
import { Thumbnails } from './thumbnails.tsx';
import type { Printing } from './use-print.ts';
import type { Saving } from './use-saving.ts';

export interface PreviewOf {
  readonly printing: Printing;
  /** From 1. */
  readonly page: number;
  readonly onPage: (page: number) => void;
  readonly isSewn: boolean;
  readonly onSave: () => void;
  readonly onOpen: () => void;
  readonly saving: Pick<Saving, 'state' | 'stop'>;
}

export const Preview = ({ printing, page, onPage, isSewn, onSave, onOpen, saving }: PreviewOf) => {
  const { print, waitingSinceMs } = printing;
  const { say } = useRoom();
  const pictures = useMemo(() => (print === null ? null : openPagePictures(print.order)), [print]);
  useEffect(() => () => pictures?.close(), [pictures]);
  const pages = print?.told.pages ?? 0;
  useEffect(() => {
    if (print !== null) say(print.told.pages === 1 ? 'One page is set.' : `${print.told.pages} pages are set.`);
  }, [print, say]);
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
  const isLargest = pages === 0 || zoom >= zooms.length - 1;
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
          isOff: isLargest,
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
      [page, pages, zoom, isLargest, turn, closer],
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
          <button type="button" aria-label="Page larger" disabled={isLargest} onClick={() => closer(1)}>
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
      <PrintingTold printing={printing} isSewn={isSewn} />
      <SavingTold {...saving} />
      <div className={waitingSinceMs === null ? 'print-pages' : 'print-pages is-behind'}>
        {print !== null && pictures !== null && (
          <>
            <Thumbnails pictures={pictures} count={pages} sizePt={print.told.sizePt} here={page} onTurn={turn} />
            <LargePage
              pictures={pictures}
              page={page}
              count={pages}
              sizePt={print.told.sizePt}
              zoom={zoom}
              onTurn={turn}
            />
          </>
        )}
      </div>
    </div>
  );
};
