// Asks the workers, newest first: an edit is answered by the first good layouts at once, and by the best ones when the maker
// rests. A search that an edit has overtaken is ended; an answer older than what is shown is dropped.
import { proxy, type Remote, transfer, wrap } from 'comlink';
import type {
  FoundAnswer,
  Look,
  LookName,
  QuiltAnswer,
  Reply,
  Seen,
  WaysSeen,
  Weighed,
  Weighing,
} from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import { pageSolver } from './page-solver.ts';
import { withoutPhotos } from './without-photos.ts';
import type { Door } from './worker.ts';

export interface PlannerState {
  /** Of the newest document that was answered; null before the first answer. */
  readonly reply: Reply<QuiltAnswer> | null;
  /** The last answer that was no refusal: what to draw while a problem stands. */
  readonly lastGood: QuiltAnswer | null;
  /** Asked, and not answered yet: first layouts, or the best ones; between the two a rest, in which the next edit may come. */
  readonly working: 'first' | 'rest' | 'best' | null;
}

/** What is worked out beside all else: questions of the worker, as its door has them. */
type Beside = 'block' | 'collection' | 'drawn' | 'finishWays' | 'measures' | 'photo' | 'picture' | 'standIn' | 'text';

type Asked<Question extends Beside> = (
  ...of: Parameters<Door[Question]>
) => Promise<Awaited<ReturnType<Door[Question]>>>;

type AskedBeside = { readonly [Question in Beside]: Asked<Question> };

export interface Planner extends AskedBeside {
  readonly state: () => PlannerState;
  readonly subscribe: (see: () => void) => () => void;
  readonly ask: (document: JsonObject) => void;
  /** Of the plan behind `lastGood`, what one view shows; null where none is kept, or another has come since. */
  readonly look: <Name extends LookName>(name: Name, look: Look<Name>) => Promise<Seen<Name> | null>;
  /** Ends the search for better layouts; what it has found so far stands. */
  readonly stopSearch: () => void;
  /**
   * Weighs choices of the quilt behind `lastGood`, worked out beside all else; an edit ends it.
   *
   * @returns ends it
   */
  readonly weigh: (
    weighing: Weighing,
    hear: { readonly tell: (weighed: Weighed) => void; readonly done: () => void },
  ) => () => void;
  /**
   * Finds the ways to make the units of a quilt that are worth choosing, beside all else; asking anew ends it.
   *
   * @returns ends it
   */
  readonly ways: (
    document: JsonObject,
    hear: { readonly tell: (seen: WaysSeen) => void; readonly done: () => void },
  ) => () => void;
  /** Another quilt comes onto the desk. */
  readonly forget: () => void;
  readonly close: () => void;
}

interface Hand {
  readonly door: Remote<Door>;
  readonly end: () => void;
}

const hire = (): Hand => {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  return { door: wrap<Door>(worker), end: () => worker.terminate() };
};

/** One for all planners of the page. */
const solver = pageSolver();

/** How long after the last edit the search begins. */
const restMs = 600;

/** How long a search that is to end may go on before its worker is let go, and another comes when it is needed: less than a rest. */
const hearsWithinMs = 100;

export const openPlanner = (): Planner => {
  const quick = hire();
  let other: Hand | null = null;
  const beside = (): Hand => {
    other ??= hire();
    return other;
  };
  let searcher: Hand | null = null;
  let rest: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;
  /** Answers to what was asked before this are of another quilt. */
  let oldest = 0;
  let waiting: { readonly document: JsonObject; readonly number: number } | null = null;
  let isAsking = false;
  let state: PlannerState = { reply: null, lastGood: null, working: null };
  /** The plan behind `lastGood`, which the quick hand keeps: its number, and what it is of. */
  let kept: { readonly number: number; readonly document: JsonObject } | null = null;
  let weigher: Hand | null = null;
  let isWeighing = false;
  /** Hears nothing while it looks for ways: it is let go when another question comes. */
  let wayfinder: Hand | null = null;
  const watchers = new Set<() => void>();

  const become = (next: Partial<PlannerState>): void => {
    state = { ...state, ...next };
    for (const see of watchers) see();
  };
  const shown = (reply: Reply<QuiltAnswer>, of: NonNullable<typeof kept>): Partial<PlannerState> => {
    if (!reply.ok) return { reply };
    kept = of;
    return { reply, lastGood: reply.value };
  };
  /** A better layout, or at last the best: the picture stays as it is drawn. */
  const takeIn = (found: FoundAnswer, number: number): void => {
    const { lastGood } = state;
    if (number !== kept?.number || number < oldest || lastGood === null) return;
    const better = { ...lastGood, ...found };
    become(number === asked ? { reply: { ok: true, value: better }, lastGood: better } : { lastGood: better });
  };

  const letGo = (hand: Hand): void => {
    hand.end();
    if (searcher === hand) searcher = null;
  };
  const endSearch = (): void => {
    clearTimeout(rest);
    if (state.working !== 'best' || searcher === null) return;
    // kept for the next search, for one that begins anew takes long to become quick; it hears between two steps of its search
    const hand = searcher;
    const late = setTimeout(() => letGo(hand), hearsWithinMs);
    void hand.door.endSearch().then(() => clearTimeout(late));
  };
  const isSearched = (number: number): boolean => number === asked && state.working === 'best';

  const search = async (document: JsonObject, number: number): Promise<void> => {
    const hand = searcher ?? hire();
    searcher = hand;
    become({ working: 'best' });
    // what is found goes past the page, which hears the figures alone
    const { port1, port2 } = new MessageChannel();
    const hear = (found: FoundAnswer): void => {
      takeIn(found, number);
      if (found.care === 'best' && isSearched(number)) become({ working: null });
    };
    try {
      await quick.door.follow(transfer(port1, [port1]), number, proxy(hear));
      const compiled = await solver();
      if (isSearched(number)) await hand.door.search(withoutPhotos(document), transfer(port2, [port2]), compiled);
    } catch (error) {
      // the solver did not come, as where the server is gone: the first layouts stand, and the next search asks for it anew
      if (isSearched(number)) {
        letGo(hand);
        become({ working: null });
      }
      throw error;
    }
  };

  const endWeighing = (): void => {
    if (!isWeighing) return;
    weigher?.end();
    weigher = null;
    isWeighing = false;
  };

  const weighOut = async (
    weighing: Weighing,
    hear: { readonly tell: (weighed: Weighed) => void; readonly done: () => void },
  ): Promise<void> => {
    if (kept === null) return;
    const { number, document } = kept;
    const hand = weigher ?? hire();
    weigher = hand;
    isWeighing = true;
    const { port1, port2 } = new MessageChannel();
    try {
      await quick.door.share(transfer(port1, [port1]), number);
      const compiled = await solver();
      if (weigher !== hand) return;
      await hand.door.weigh({ document, weighing, compiled }, transfer(port2, [port2]), proxy(hear.tell));
      hear.done();
    } finally {
      if (weigher === hand) isWeighing = false;
    }
  };

  const endWays = (): void => {
    wayfinder?.end();
    wayfinder = null;
  };

  const findWays: Planner['ways'] = (document, hear) => {
    endWays();
    const hand = hire();
    wayfinder = hand;
    const isHeard = (): boolean => wayfinder === hand;
    void hand.door
      .ways(
        withoutPhotos(document),
        proxy((seen: WaysSeen) => {
          if (isHeard()) hear.tell(seen);
        }),
      )
      .then(() => {
        if (!isHeard()) return;
        endWays();
        hear.done();
      });
    return () => {
      if (isHeard()) endWays();
    };
  };

  const answerNext = async (): Promise<void> => {
    isAsking = true;
    try {
      while (waiting !== null) {
        const { document, number } = waiting;
        waiting = null;
        const bare = withoutPhotos(document);
        const reply = await quick.door.quilt(bare, number);
        if (number < oldest) continue;
        const working = number < asked ? 'first' : reply.ok ? 'rest' : null;
        become({ ...shown(reply, { number, document: bare }), working });
        if (working === 'rest') rest = setTimeout(() => void search(document, number), restMs);
      }
    } finally {
      isAsking = false;
    }
  };

  return {
    state: () => state,
    subscribe: (see) => {
      watchers.add(see);
      return () => void watchers.delete(see);
    },
    ask: (document) => {
      endSearch();
      endWeighing();
      asked += 1;
      waiting = { document, number: asked };
      become({ working: 'first' });
      if (!isAsking) void answerNext();
    },
    look: async (name, look) => {
      if (kept === null) return null;
      const { number } = kept;
      const seen = await (quick.door.look as Door['look'])(number, name, look);
      return number < oldest ? null : seen;
    },
    stopSearch: () => {
      endSearch();
      if (state.working !== 'first') become({ working: null });
    },
    weigh: (weighing, hear) => {
      endWeighing();
      void weighOut(weighing, hear);
      return endWeighing;
    },
    ways: findWays,
    block: (document, id) => beside().door.block(withoutPhotos(document), id),
    drawn: (document, id) => beside().door.drawn(withoutPhotos(document), id),
    text: (text) => beside().door.text(text),
    collection: () => beside().door.collection(),
    measures: (document) => beside().door.measures(withoutPhotos(document)),
    finishWays: (document, ways) => beside().door.finishWays(withoutPhotos(document), ways),
    picture: (document) => beside().door.picture(withoutPhotos(document)),
    standIn: (document) => beside().door.standIn(withoutPhotos(document)),
    photo: (file, crop) => beside().door.photo(file, crop),
    forget: () => {
      endSearch();
      endWeighing();
      endWays();
      asked += 1;
      oldest = asked;
      waiting = null;
      kept = null;
      become({ reply: null, lastGood: null, working: null });
    },
    close: () => {
      endSearch();
      quick.end();
      searcher?.end();
      weigher?.end();
      endWays();
      other?.end();
    },
  };
};
