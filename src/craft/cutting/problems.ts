// What can stop a cutting plan: a piece that no lie on its cloth has room for.
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
    };
