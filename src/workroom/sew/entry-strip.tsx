// All that is sewn, in order, each with how far it is.
import { seamWords, useHereInSight } from '#workroom/room';
import { chainsEntry } from './sew-address.ts';
import type { Sewing } from './use-sewing.ts';

export const EntryStrip = ({ sewing, here }: { readonly sewing: Sewing; readonly here: string | null }) => {
  const list = useHereInSight<HTMLOListElement>(here);
  return (
    <nav className="row-of-links sew-entries" aria-label="Chains; blocks and top, in the order of sewing">
      <ol ref={list}>
        {sewing.entries.some(({ kind, steps }) => kind === 'block' && steps.length > 0) && (
          <li>
            <a
              href={sewing.addressOf({ entry: chainsEntry, step: null, sight: 'both', type: 'usual' })}
              aria-current={here === chainsEntry ? 'true' : undefined}
            >
              <span className="sew-entry-name">In chains</span>
              <span className="sew-entry-far">all blocks at once</span>
            </a>
          </li>
        )}
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
  return entry.kind === 'block' ? `${entry.count} to make` : seamWords(entry.seams);
};
