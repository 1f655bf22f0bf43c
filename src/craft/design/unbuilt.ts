// What version 1 of the format can say and this edition cannot plan yet: refused by name, never ignored.
// To build a feature, take its row out and read it.
import type { QuiltDocument, WrittenBlock } from './document.ts';
import type { Feature } from './feature.ts';
import { pointer, type Segment } from './pointer.ts';
import type { DesignProblem } from './problems.ts';

type Place = readonly Segment[];

interface Unbuilt {
  readonly feature: Feature;
  /** Every place of a document that asks for it. */
  readonly places: (document: QuiltDocument) => readonly Place[];
}

const unbuilt: readonly Unbuilt[] = [
  { feature: 'extras', places: (d) => given(d.extras, ['extras']) },
  {
    feature: 'arcs',
    places: (d) =>
      inBlocks(d, (b) => (b.drawing?.seams ?? []).flatMap((seam, i) => arcsIn(seam, ['drawing', 'seams', i]))),
  },
];

export const unbuiltProblems = (document: QuiltDocument): readonly DesignProblem[] =>
  unbuilt.flatMap(({ feature, places }) =>
    places(document).map((place): DesignProblem => ({ code: 'design/not-built', path: pointer(place), feature })),
  );

const arcsIn = (points: readonly unknown[], place: Place): readonly Place[] =>
  points.flatMap((point, i) => when(!Array.isArray(point), [...place, i]));

const when = (asked: boolean, place: Place): readonly Place[] => (asked ? [place] : []);

const given = (value: unknown, place: Place): readonly Place[] => when(value !== undefined, place);

const inside = <T>(list: readonly T[], base: Place, places: (one: T) => readonly Place[]): readonly Place[] =>
  list.flatMap((one, i) => places(one).map((place) => [...base, i, ...place]));

const inBlocks = (document: QuiltDocument, places: (block: WrittenBlock) => readonly Place[]) =>
  inside(document.blocks, ['blocks'], places);
