// What can stop a cutting plan: a piece that no lie on its cloth has room for, or one too narrow to be anything.
import type { Length } from '#craft/measure';

export type CuttingProblem =
  | {
      readonly code: 'cutting/wider-than-cloth';
      readonly path: string;
      readonly fabric: string;
      /** Cut size, across and along. */
      readonly needs: readonly [Length, Length];
      readonly usable: Length;
    }
  | {
      readonly code: 'cutting/larger-than-sheet';
      readonly path: string;
      readonly fabric: string;
      readonly needs: readonly [Length, Length];
      readonly sheet: readonly [Length, Length];
    }
  | {
      /** Sheets, remnants or lengths do not suffice: pieces for which no room was found on them, largest first. */
      readonly code: 'cutting/stock-short';
      readonly path: string;
      readonly fabric: string;
      readonly left: readonly { readonly cut: readonly [Length, Length]; readonly count: number }[];
    }
  | {
      /** Triangles come from squares that are cut apart: their middle cannot be chosen. */
      readonly code: 'cutting/motif-in-triangle';
      readonly path: string;
      readonly fabric: string;
      /** Side of the square. */
      readonly square: Length;
    }
  | {
      /** A piece as wide as this fits round none of the motifs across the cloth. */
      readonly code: 'cutting/motif-out-of-reach';
      readonly path: string;
      readonly fabric: string;
      readonly needs: Length;
      readonly usable: Length;
    }
  | {
      /** A piece finishes narrower than half a mark of the ruler: nothing of it is left between its seams. */
      readonly code: 'cutting/nothing-left';
      readonly path: string;
      /** Null for a piece of the top. */
      readonly block: string | null;
      readonly label: string;
      readonly finished: Length;
      readonly ruler: Length;
    }
  | {
      /** The hollow side of a piece is an arc no wider than the allowance, which lies on the side of its centre. */
      readonly code: 'cutting/curve-too-tight';
      readonly path: string;
      readonly block: string;
      readonly label: string;
      readonly radius: Length;
      readonly seam: Length;
    };
