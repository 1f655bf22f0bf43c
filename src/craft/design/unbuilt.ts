// What version 1 of the format can say and this edition cannot plan yet: refused by name, never ignored.
// To build a feature, take its row out and read it.
import type { QuiltDocument } from './document.ts';
import type { Feature } from './feature.ts';
import type { DesignProblem } from './problems.ts';

interface Unbuilt {
  readonly feature: Feature;
  readonly path: string;
  readonly asked: (document: QuiltDocument) => boolean;
}

const unbuilt: readonly Unbuilt[] = [{ feature: 'extras', path: '/extras', asked: (d) => d.extras !== undefined }];

export const unbuiltProblems = (document: QuiltDocument): readonly DesignProblem[] =>
  unbuilt
    .filter(({ asked }) => asked(document))
    .map(({ feature, path }): DesignProblem => ({ code: 'design/not-built', path, feature }));
