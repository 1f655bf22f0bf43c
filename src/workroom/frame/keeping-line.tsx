// Whether what one did is kept: always in sight, and with a way out where it is not.
import { clockWords } from '#workroom/room';
import type { Desk, Keeping, Store } from '#workroom/store';

export const keepingWords = (keeping: Keeping, lasts: Store['lasts']): string => {
  switch (keeping.state) {
    case 'kept':
      return lasts === 'in-browser'
        ? `Saved ${clockWords(keeping.atMs, Date.now())}`
        : 'Held until you close this page: save it to a file';
    case 'keeping':
      return 'Saving …';
    case 'failed':
      return keeping.why === 'full'
        ? 'Not saved: the browser’s storage is full. Save to a file, or remove a quilt'
        : 'Not saved: the browser refused. Save to a file';
    case 'parted':
      return 'Not saved: another tab changed the same place';
    case 'removed':
      return 'Removed in another tab. Save to a file to keep it';
  }
};

export const Parted = ({ desk }: { readonly desk: Desk }) => (
  <div className="notice" role="alert">
    <p>
      <span className="problem-mark" aria-hidden="true">
        ◆
      </span>
      Another tab changed the same place of this quilt, and saved first. Which shall stand? Undo brings back the other.
    </p>
    <div className="row">
      <button type="button" onClick={() => desk.choose('mine')}>
        What this tab has
      </button>
      <button type="button" onClick={() => desk.choose('hers')}>
        What the other tab has
      </button>
    </div>
  </div>
);
