// What every view of the workroom stands in: the store, the planner, the maker's likings; and, at a quilt, the quilt itself.
import { createContext, useContext } from 'react';
import type { QuiltDocument } from '#craft/design';
import type { Planner, QuiltAnswer, WorkroomProblem } from '#workroom/compute';
import type { JsonObject } from '#workroom/editing';
import type { DeskState, PointBook, Store } from '#workroom/store';
import type { PreferenceBook } from './preferences.ts';
import type { Shelf } from './shelf.ts';
import type { LengthWords } from './words.ts';

export interface Room {
  readonly store: Store;
  readonly planner: Planner;
  readonly preferences: PreferenceBook;
  readonly shelf: Shelf;
  /** Reads out what happened, to those who do not see it. */
  readonly say: (words: string) => void;
  /** Whether nothing on the desk would be lost if one left it now. */
  readonly isKept: () => boolean;
  /** The desk says so. */
  readonly keepingIs: (kept: boolean) => void;
}

/** The quilt that is open, and what follows from it. */
export interface QuiltRoom {
  readonly id: string;
  readonly document: QuiltDocument;
  readonly editing: DeskState['editing'];
  readonly edit: (what: string, change: (draft: QuiltDocument) => void, gesture?: string) => void;
  /** The last that could be planned; null before the first. */
  readonly answer: QuiltAnswer | null;
  /** Why the quilt as it stands cannot be planned; none where it can. */
  readonly problems: readonly WorkroomProblem[];
  readonly words: LengthWords;
  /** What was kept of it by name. */
  readonly points: PointBook;
  /** A restore point of the quilt as it stands. */
  readonly keepPoint: () => Promise<void>;
  /** A quilt of its own begins with this document, and is gone to. */
  readonly copyOut: (document: JsonObject) => void;
}

const RoomContext = createContext<Room | null>(null);
const QuiltContext = createContext<QuiltRoom | null>(null);
export const RoomProvider = RoomContext.Provider;
export const QuiltProvider = QuiltContext.Provider;

export const useRoom = (): Room => {
  const room = useContext(RoomContext);
  if (room === null) throw new Error('a view stands outside the workroom');
  return room;
};

export const useQuilt = (): QuiltRoom => {
  const quilt = useContext(QuiltContext);
  if (quilt === null) throw new Error('a view of a quilt stands outside it');
  return quilt;
};
