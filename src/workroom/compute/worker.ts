// The worker: planning away from the page, so that typing never waits for it.
import { expose } from 'comlink';
import { type FabricPlan, type QuiltPlan, withBetterCloth } from '#craft';
import type { IntegerSolver } from '#craft/strips';
import { recalling } from '#ground/recall';
import type { CompiledSolver } from '#solver';
import type {
  BlockAnswer,
  CollectedBlock,
  DrawnAnswer,
  FinishPrices,
  FinishWay,
  FoundAnswer,
  Look,
  LookName,
  Measured,
  QuiltAnswer,
  QuiltPicture,
  Reply,
  Seen,
  TextReply,
  WaysSeen,
  Weighed,
  Weighing,
} from '#workroom/asking';
import {
  answerFor,
  askBlock,
  askCollection,
  askDrawn,
  askFinishWays,
  askMeasures,
  askQuilt,
  askText,
  foundIn,
  lookAt,
  planBest,
  planFirst,
  seeWays,
  standIn,
  weigh,
} from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import { type PhotoCrop, type TakenPhoto, takePhoto } from './photo.ts';

export interface Door {
  /** The first good layouts. The plan is kept under its number for looks at it, where there is one, until the next. */
  quilt(document: JsonObject, number: number): Reply<QuiltAnswer>;
  /**
   * Takes in what another worker finds for the plan of that number, as long as it is kept, and tells the page.
   *
   * @param from the other end of `search`
   */
  follow(from: MessagePort, number: number, tell: (found: FoundAnswer) => void): void;
  /** Searches for the best layouts, and sends each better one on its way to who follows. The worker hears between two steps. */
  search(document: JsonObject, to: MessagePort, compiled: CompiledSolver): Promise<void>;
  /** Ends the search; it is done when this is answered. */
  endSearch(): void;
  /** Sends what the plan of that number has come to so far; null where it is not kept. */
  share(to: MessagePort, number: number): void;
  /** Weighs choices of a quilt one after another; the worker hears nothing until it is done. @param from the other end of `share` */
  weigh(
    of: { readonly document: JsonObject; readonly weighing: Weighing; readonly compiled: CompiledSolver },
    from: MessagePort,
    tell: (weighed: Weighed) => void,
  ): Promise<void>;
  /** Plans choices of ways to make one after another; the worker hears nothing until it is done. */
  ways(document: JsonObject, tell: (seen: WaysSeen) => void): void;
  /** Null where that plan is not kept. */
  look<Name extends LookName>(number: number, name: Name, look: Look<Name>): Seen<Name> | null;
  /** A quilt that is not the one on the desk, for its picture: its plan is not kept. */
  picture(document: JsonObject): Reply<QuiltAnswer>;
  /** A quilt with faults, as far as it can be drawn: null where too little is left. */
  standIn(document: JsonObject): QuiltPicture | null;
  /** One block by itself. */
  block(document: JsonObject, id: string): Reply<BlockAnswer>;
  /** The same as patches on its grid, with what is bare or double. */
  drawn(document: JsonObject, id: string): Reply<DrawnAnswer>;
  text(text: string): TextReply;
  collection(): readonly CollectedBlock[];
  /** Sizes of blocks and of what borders go round. */
  measures(document: JsonObject): Measured;
  /** What each way of finishing takes more or less than the quilt as it stands. */
  finishWays(document: JsonObject, ways: readonly FinishWay[]): Reply<FinishPrices>;
  /** A photograph of cloth, small enough for a document. */
  photo(file: Blob, crop: PhotoCrop): Promise<TakenPhoto>;
}

/**
 * From a worker that searches to the one that keeps the plan, past the page: a cloth on the way, at the end all that a search decides. The
 * quilt itself does not travel: its exact numbers would not survive it.
 */
type Found = { readonly cloth: FabricPlan } | { readonly best: Searched };
type Searched = Pick<QuiltPlan, 'fabrics' | 'cost' | 'notes'>;

const searchedIn = ({ fabrics, cost, notes }: QuiltPlan): Searched => ({ fabrics, cost, notes });

/** The solver is large: it comes when the first search wants it. */
const solver: { opened: Promise<IntegerSolver> | null } = { opened: null };

const openedSolver = (compiled: CompiledSolver): Promise<IntegerSolver> => {
  solver.opened ??= import('#solver').then(({ openSolver }) => openSolver({ compiled }));
  return solver.opened;
};

const kept: { plan: QuiltPlan | null; document: JsonObject; number: number } = { plan: null, document: {}, number: -1 };

/** Blocks and layouts, our own figure: of many edits of a large quilt. */
const memory = recalling(1000);

/** Counts searches, and each end of one. */
const searching = { turn: 0 };

/** For how long a search goes on before the worker hears what has come meanwhile. Our own figure. */
const sliceMs = 8;

/** When all that has come meanwhile was heard. */
const heard = (): Promise<void> =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      done();
    };
    port2.postMessage(null);
  });

/** What the steps come to; null where another search, or the end of this one, was asked for on the way. */
const hearingBetween = async <T>(steps: Generator<void, T, void>, turn: number): Promise<T | null> => {
  for (let since = performance.now(); searching.turn === turn; ) {
    const step = steps.next();
    if (step.done === true) return step.value;
    if (performance.now() - since < sliceMs) continue;
    await heard();
    since = performance.now();
  }
  return null;
};

const door: Door = {
  quilt: (document, number) => {
    const planned = planFirst(document, memory);
    if (planned.ok) Object.assign(kept, { plan: planned.value, document, number });
    return answerFor(planned, { document, care: 'first' });
  },
  follow: (from, number, tell) => {
    from.onmessage = ({ data }: MessageEvent<Found>) => {
      if (kept.plan === null || kept.number !== number) {
        from.close();
        return;
      }
      const isWhole = 'best' in data;
      const plan = isWhole ? { ...kept.plan, ...data.best } : withBetterCloth(kept.plan, data.cloth);
      if (plan === kept.plan) return;
      kept.plan = plan;
      tell(foundIn(plan, { document: kept.document, care: isWhole ? 'best' : 'first' }));
    };
  },
  search: async (document, to, compiled) => {
    searching.turn += 1;
    const { turn } = searching;
    const send = (found: Found): void => to.postMessage(found);
    const watch = (cloth: FabricPlan): void => send({ cloth });
    const steps = planBest(document, { solver: await openedSolver(compiled), watch, memory });
    const planned = await hearingBetween(steps, turn);
    if (planned?.ok === true) send({ best: searchedIn(planned.value) });
    to.close();
  },
  endSearch: () => {
    searching.turn += 1;
  },
  share: (to, number) => {
    to.postMessage(kept.plan === null || kept.number !== number ? null : searchedIn(kept.plan));
    to.close();
  },
  weigh: async ({ document, weighing, compiled }, from, tell) => {
    const searched = await new Promise<Searched | null>((done) => {
      from.onmessage = ({ data }: MessageEvent<Searched | null>) => done(data);
    });
    from.close();
    const planned = planFirst(document);
    if (searched === null || !planned.ok) return;
    const plan = { ...planned.value, ...searched };
    for (const weighed of weigh({ ...weighing, plan, solver: await openedSolver(compiled) })) tell(weighed);
  },
  ways: (document, tell) => {
    const planned = planFirst(document);
    if (!planned.ok) return;
    const search = seeWays(planned.value);
    for (let at = search.next(); ; at = search.next()) {
      tell(at.value);
      if (at.done === true) return;
    }
  },
  look: (number, name, look) => (kept.plan === null || kept.number !== number ? null : lookAt(kept.plan, name, look)),
  picture: askQuilt,
  standIn,
  block: askBlock,
  drawn: askDrawn,
  text: askText,
  collection: askCollection,
  measures: askMeasures,
  finishWays: askFinishWays,
  photo: takePhoto,
};

expose(door);
