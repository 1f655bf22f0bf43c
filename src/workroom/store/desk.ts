// One quilt on the desk: edits go in at once, and are kept as soon as the store is free. Another tab that keeps the same quilt is
// met halfway; where both changed one place the maker chooses, and nothing is lost either way.
import {
  type Edit,
  type Editing,
  edited,
  isSame,
  type JsonObject,
  merged,
  patchesBetween,
  redone,
  undone,
} from '#workroom/editing';
import { type KeptQuilt, type Save, type Store, StoreFull } from './store.ts';

export type Keeping =
  | { readonly state: 'kept'; readonly atMs: number }
  | { readonly state: 'keeping' }
  /** It goes on trying with the next edit. */
  | { readonly state: 'failed'; readonly why: 'full' | 'other' }
  /** Another tab changed the same place: nothing is written until the maker has chosen. */
  | { readonly state: 'parted'; readonly hers: KeptQuilt }
  | { readonly state: 'removed' };

export interface DeskState {
  readonly editing: Editing<JsonObject>;
  readonly keeping: Keeping;
  /** How often what another tab kept was taken in. */
  readonly takenIn: number;
}

export interface Desk {
  readonly id: string;
  readonly state: () => DeskState;
  readonly subscribe: (see: () => void) => () => void;
  readonly edit: (edit: Edit<JsonObject>) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  /** After a parting: what the other tab has, or what is here, which then is one step after hers. */
  readonly choose: (whose: 'hers' | 'mine') => void;
  /** Resolves when all is kept or cannot be. */
  readonly settled: () => Promise<void>;
  readonly close: () => void;
}

export interface DeskTask {
  readonly store: Store;
  readonly kept: KeptQuilt;
  readonly nowMs: () => number;
}

export const openDesk = ({ store, kept, nowMs }: DeskTask): Desk => {
  const { id } = kept;
  const watchers = new Set<() => void>();
  let common = kept;
  let state: DeskState = { editing: kept.editing, keeping: { state: 'kept', atMs: kept.changedMs }, takenIn: 0 };
  let running: Promise<void> | null = null;

  const become = (next: Partial<DeskState>): void => {
    state = { ...state, ...next };
    for (const see of watchers) see();
  };
  const isStopped = (): boolean => state.keeping.state === 'parted' || state.keeping.state === 'removed';
  const isDirty = (): boolean => state.editing !== common.editing;

  /** Hers under mine; a place that both changed stops all keeping. */
  const meet = (hers: KeptQuilt): void => {
    const both = merged({ common: common.editing, mine: state.editing, hers: hers.editing });
    if (both === null) {
      become({ keeping: { state: 'parted', hers } });
      return;
    }
    common = hers;
    become({ editing: both, takenIn: state.takenIn + 1 });
  };

  const keepOnce = async (): Promise<void> => {
    const mine = state.editing;
    const save = saveFor({ id, common, mine, nowMs });
    const saved = await store.save(save);
    switch (saved.outcome) {
      case 'saved':
        common = { id, title: save.title, changedMs: save.changedMs, revision: saved.revision, editing: mine };
        break;
      case 'newer':
        meet(saved.kept);
        break;
      case 'removed':
        become({ keeping: { state: 'removed' } });
        break;
    }
  };

  const keepAll = async (): Promise<void> => {
    try {
      while (isDirty() && !isStopped()) {
        if (state.keeping.state !== 'keeping') become({ keeping: { state: 'keeping' } });
        await keepOnce();
      }
      if (!isStopped()) become({ keeping: { state: 'kept', atMs: common.changedMs } });
    } catch (error) {
      become({ keeping: { state: 'failed', why: error instanceof StoreFull ? 'full' : 'other' } });
    }
  };

  const keep = (): void => {
    if (running !== null || isStopped()) return;
    running = keepAll().finally(() => {
      running = null;
      if (isDirty() && !isStopped() && state.keeping.state !== 'failed') keep();
    });
  };

  const settled = async (): Promise<void> => {
    while (running !== null) await running;
  };

  /** A save that is on its way may have been taken before what we heard of: its answer comes first. */
  const lookAgain = async (): Promise<void> => {
    await settled();
    const hers = await store.read(id);
    if (running !== null || isStopped()) return; // a save that began meanwhile will meet it
    if (hers === null) become({ keeping: { state: 'removed' } });
    else if (hers.revision > common.revision) {
      meet(hers);
      keep();
    }
  };
  const unwatch = store.watch((changed) => {
    if (changed === id) void lookAgain().catch(() => undefined);
  });

  const put = (editing: Editing<JsonObject>): void => {
    if (editing === state.editing) return;
    become({ editing });
    keep();
  };

  return {
    id,
    state: () => state,
    subscribe: (see) => {
      watchers.add(see);
      return () => void watchers.delete(see);
    },
    edit: (edit) => put(edited(state.editing, edit)),
    undo: () => put(undone(state.editing)),
    redo: () => put(redone(state.editing)),
    choose: (whose) => {
      if (state.keeping.state !== 'parted') return;
      const { hers } = state.keeping;
      common = hers;
      become({
        editing: whose === 'hers' ? hers.editing : mineAfter(hers.editing, state.editing),
        keeping: { state: 'keeping' },
      });
      keep();
    },
    settled,
    close: unwatch,
  };
};

const saveFor = (of: {
  readonly id: string;
  readonly common: KeptQuilt;
  readonly mine: Editing<JsonObject>;
  readonly nowMs: () => number;
}): Save => {
  const { id, common, mine, nowMs } = of;
  const [was, is] = [common.editing.steps, mine.steps];
  let keep = 0;
  while (keep < was.length && keep < is.length && was[keep] === is[keep]) keep += 1;
  const { document, done } = mine;
  return {
    id,
    basis: common.revision,
    title: titleOf(document),
    changedMs: nowMs(),
    document,
    keep,
    add: is.slice(keep),
    done,
  };
};

/** The title that lists show; a document may have none. */
export const titleOf = ({ title }: JsonObject): string => (typeof title === 'string' ? title : '');

const mineAfter = (hers: Editing<JsonObject>, mine: Editing<JsonObject>): Editing<JsonObject> => {
  if (isSame(hers.document, mine.document)) return hers;
  const step = { what: 'What this tab had', patches: patchesBetween(hers.document, mine.document) };
  const steps = [...hers.steps.slice(0, hers.done), step];
  return { document: mine.document, steps, done: steps.length };
};
