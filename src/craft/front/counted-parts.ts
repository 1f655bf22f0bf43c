// The pieces of a quilt's parts by the lines that they are cut in: what every way of each part has cut, and what is cut anyway.
import type { ClothNature } from '#craft/cutting';
import { type CutCounts, type CutLine, countedIn } from './lines.ts';
import type { QuiltParts } from './parts.ts';

export interface CountedParts {
  readonly lines: ReadonlyMap<string, CutLine>;
  /** By part and option. */
  readonly options: readonly (readonly CutCounts[])[];
  /** Whichever ways are gone: one for each way in which the borders may lie. */
  readonly fixed: readonly CutCounts[];
}

export const countedParts = (parts: QuiltParts, natures: ReadonlyMap<string, ClothNature>): CountedParts => {
  const lines = new Map<string, CutLine>();
  return {
    lines,
    options: parts.parts.map(({ options }) => options.map(({ pieces }) => countedIn(lines, pieces.flat(), natures))),
    fixed: parts.pieces.map((pieces) => countedIn(lines, pieces, natures)),
  };
};
