// What can be wrong with a drawing: patches that do not cover the block exactly once.

export type DraftingProblem =
  | {
      readonly code: 'drafting/overlap';
      readonly path: string;
      readonly block: string;
      /** 0-based, as listed in the document. */
      readonly patches: readonly [number, number];
      /** Square units of the document. */
      readonly area: number;
      /** A place inside the overlap, from the block's upper left corner, finished. */
      readonly at: readonly [number, number];
    }
  | {
      readonly code: 'drafting/gap';
      readonly path: string;
      readonly block: string;
      readonly area: number;
      readonly at: readonly [number, number];
    };
