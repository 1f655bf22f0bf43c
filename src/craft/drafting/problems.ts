// What can be wrong with a drawing: patches that do not cover the block exactly once, seams that divide
// nothing, patches whose tone is not known. Areas in square units of the document, places from the block's upper
// left corner, finished.

interface Spot {
  readonly path: string;
  readonly block: string;
  /** A place where it shows. */
  readonly at: readonly [number, number];
}

export type DraftingProblem = CoverProblem | SeamProblem | ToneProblem | FoundationProblem;

/** Not every seam runs from edge to edge, or there are no patches, or more than are pieced on paper. */
export type FoundationProblem = Omit<Spot, 'at'> & {
  readonly code: 'drafting/no-foundation';
  readonly patches: number;
  readonly most: number;
  /** It has curved seams. */
  readonly curved: boolean;
};

type CoverProblem =
  | (Spot & {
      readonly code: 'drafting/overlap';
      /** 0-based, as listed in the document. */
      readonly patches: readonly [number, number];
      readonly area: number;
    })
  | (Spot & {
      readonly code: 'drafting/units-overlap';
      /** 0-based, as listed in the recipe. */
      readonly units: readonly [number, number];
      readonly area: number;
    })
  | (Spot & { readonly code: 'drafting/gap'; readonly area: number });

type SeamProblem =
  /** The seam comes to its end without reaching another seam or the block's edge. */
  | (Spot & { readonly code: 'drafting/seam-ends-inside' })
  /** Seams that close round a patch, and that nothing joins to the others: the patch outside would have a hole. */
  | (Spot & { readonly code: 'drafting/patch-round-patch' })
  | (Omit<Spot, 'at'> & { readonly code: 'drafting/too-many-patches'; readonly most: number })
  /** Seams so near to each other that no sound patches come out. */
  | (Omit<Spot, 'at'> & { readonly code: 'drafting/seams-too-near' });

type ToneProblem =
  | (Spot & { readonly code: 'drafting/tone-on-seam' })
  | (Spot & {
      readonly code: 'drafting/two-tones';
      /** 0-based, as listed under "tonesAt". */
      readonly tones: readonly [number, number];
    })
  | (Spot & { readonly code: 'drafting/patch-without-tone'; readonly area: number });
