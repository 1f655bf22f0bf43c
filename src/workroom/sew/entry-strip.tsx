// All that is sewn, in order, each with how far it is.
import { useEffect, useRef } from 'react';
import { countWords } from '#workroom/room';
import type { Sewing } from './use-sewing.ts';

export const EntryStrip = ({ sewing, here }: { readonly sewing: Sewing; readonly here: string | null }) => {
  const list = useRef<HTMLOListElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the line is moved when another entry is come to
  useEffect(() => {
    const line = list.current;
    const link = line?.querySelector<HTMLElement>('[aria-current]');
    if (line == null || link == null) return;
    const [own, whole] = [link.getBoundingClientRect(), line.getBoundingClientRect()];
    if (own.left < whole.left || own.right > whole.right) line.scrollLeft += own.left - whole.left;
  }, [here]);
  return (
    <nav className="sew-entries" aria-label="Blocks and top, in the order of sewing">
      <ol ref={list}>
        {sewing.entries.map((entry) => (
          <li key={entry.key}>
            <a
              href={sewing.addressOf({ entry: entry.key, step: null, sight: 'both', type: 'usual' })}
              aria-current={entry.key === here ? 'true' : undefined}
            >
              <span className="sew-entry-name">{entry.title}</span>
              <span className="sew-entry-far">{farWords(sewing, entry)}</span>
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
};

/** "36 to make", "84 of 432 seams", "sewn" */
const farWords = (sewing: Sewing, entry: Sewing['entries'][number]): string => {
  const done = sewing.sumOf(entry.steps);
  if (entry.seams > 0 && done === entry.seams) return 'sewn';
  if (done > 0) return `${done} of ${entry.seams} seams`;
  return entry.kind === 'block' ? `${entry.count} to make` : countWords(entry.seams, 'seam', 'seams');
};
