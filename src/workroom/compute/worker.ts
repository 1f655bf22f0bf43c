// The worker: planning away from the page, so that typing never waits for it.
import { expose } from 'comlink';
import type { IntegerSolver } from '#craft/strips';
import type { BlockAnswer, Care, CollectedBlock, DrawnAnswer, Measured, QuiltAnswer, Reply } from '#workroom/asking';
import { askBlock, askCollection, askDrawn, askMeasures, askQuilt, askText } from '#workroom/asking';
import type { JsonObject } from '#workroom/editing';
import { type PhotoCrop, type TakenPhoto, takePhoto } from './photo.ts';

export interface Door {
  quilt(document: JsonObject, care: Care): Promise<Reply<QuiltAnswer>>;
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

const door: Door = {
  quilt: async (document, care) => askQuilt(document, care === 'best' ? await openedSolver() : null),
  block: askBlock,
  drawn: askDrawn,
  text: askText,
  collection: askCollection,
  measures: askMeasures,
  photo: takePhoto,
};

expose(door);
