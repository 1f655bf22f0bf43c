// What stands in the way of the pages, or how long they have been waited for.
import { useEffect, useState } from 'react';
import { Problems, useQuilt } from '#workroom/room';
import type { Printing } from './use-print.ts';

export const PrintingTold = ({ printing, isSewn }: { readonly printing: Printing; readonly isSewn: boolean }) => {
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
      <div className="print-told is-passing">
        <p role="status">Stopped. {printing.print === null ? '' : 'What is seen here is older than the quilt.'}</p>
        <button type="button" onClick={again}>
          Set the pages
        </button>
      </div>
    );
  }
  if (waitingSinceMs === null) return null;
  return (
    <div className="print-told is-passing">
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
