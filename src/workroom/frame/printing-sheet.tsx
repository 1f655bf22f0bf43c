// While the pattern is printed: a way to stop it, and what stood in the way.

import { useEffect, useRef, useState } from 'react';
import type { QuiltDocument } from '#craft/design';
import type { PrintPaper, Refusal } from '#wire';
import type { JsonObject } from '#workroom/editing';
import { Problems, Sheet } from '#workroom/room';
import { fileName, saveFile } from './files.ts';
import { printPattern } from './printing.ts';

export const Printing = (of: {
  readonly document: JsonObject;
  readonly paper: PrintPaper;
  readonly onClose: () => void;
}) => {
  const [refusal, setRefusal] = useState<Refusal | null>(null);
  const task = useRef(of);
  useEffect(() => {
    const { document, paper, onClose } = task.current;
    const stop = new AbortController();
    printPattern(document, { paper, signal: stop.signal }).then(
      (printed) => {
        if (stop.signal.aborted) return;
        if (printed.outcome === 'refused') {
          setRefusal(printed.refusal);
          return;
        }
        saveFile(`${fileName(document.title)}.pdf`, printed.pdf);
        onClose();
      },
      () => undefined, // it was stopped
    );
    return () => stop.abort();
  }, []);
  return refusal === null ? (
    <Sheet title="Printing the pattern" closeWords="Stop" onClose={of.onClose}>
      <p role="status">
        The cloth is laid out and the pages are set. This takes a few seconds; the file then lies with your downloads.
      </p>
      <progress aria-label="Printing" />
    </Sheet>
  ) : (
    <Sheet title="The pattern was not printed" onClose={of.onClose}>
      <Problems problems={refusal.problems} more={refusal.more} document={of.document as unknown as QuiltDocument} />
    </Sheet>
  );
};
