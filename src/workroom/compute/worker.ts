// The worker: planning away from the page, so that typing never waits for it.
import { expose } from 'comlink';
import type { QuiltPlan } from '#craft';
import type { IntegerSolver } from '#craft/strips';
import type {
  BlockAnswer,
  Care,
  CollectedBlock,
  DrawnAnswer,
  Look,
  LookName,
  Measured,
  QuiltAnswer,
  Reply,
  Seen,
} from '#workroom/asking';
import {
  answerFor,
  askBlock,
  askCollection,
  askDrawn,
  askMeasures,
  askQuilt,
  askText,
  lookAt,
  planFor,
} from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import { type PhotoCrop, type TakenPhoto, takePhoto } from './photo.ts';

export interface Door {
  /** The plan is kept under its number for looks at it, where there is one, until the next. */
  quilt(document: JsonObject, care: Care, number: number): Promise<Reply<QuiltAnswer>>;
  /** Null where that plan is not kept. */
  look<Name extends LookName>(number: number, name: Name, look: Look<Name>): Seen<Name> | null;
  /** A quilt whose plan is not kept. */
  picture(document: JsonObject): Reply<QuiltAnswer>;
  block(document: JsonObject, id: string): Reply<BlockAnswer>;
  drawn(document: JsonObject, id: string): Reply<DrawnAnswer>;
  text(text: string): Reply<JsonObject>;
  collection(): readonly CollectedBlock[];
  measures(document: JsonObject): Measured;
  photo(file: Blob, crop: PhotoCrop): Promise<TakenPhoto>;
}

/** The solver is large: it comes when the first search wants it. */
const solver: { opened: Promise<IntegerSolver> | null } = { opened: null };

const openedSolver = (): Promise<IntegerSolver> => {
  solver.opened ??= import('./page-solver.ts').then(({ pageSolver }) => pageSolver());
  return solver.opened;
};

const kept: { plan: QuiltPlan | null; number: number } = { plan: null, number: -1 };

const door: Door = {
  quilt: async (document, care, number) => {
    const planned = planFor(document, care === 'best' ? await openedSolver() : null);
    if (planned.ok) Object.assign(kept, { plan: planned.value, number });
    return answerFor(planned, { document, care });
  },
  look: (number, name, look) => (kept.plan === null || kept.number !== number ? null : lookAt(kept.plan, name, look)),
  picture: askQuilt,
  block: askBlock,
  drawn: askDrawn,
  text: askText,
  collection: askCollection,
  measures: askMeasures,
  photo: takePhoto,
};

expose(door);
