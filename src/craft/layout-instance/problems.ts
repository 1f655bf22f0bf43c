// What can be wrong with an instance, or with what is asked of it: codes and facts, each with its place as a JSON pointer.
// Wording is paper's.

interface At {
  readonly path: string;
}

interface InText {
  readonly line: number;
  readonly column: number;
}

/** What may stand in a place. */
export type Shape = 'object' | 'list' | 'text' | 'whole-number' | 'number' | 'true-or-false' | 'item';

/** `found` is JSON text, cut short where it is long. */
export type InstanceProblem =
  | (At & { readonly code: 'instance/too-long'; readonly found: number; readonly most: number })
  | (At & InText & { readonly code: 'instance/not-json'; readonly found: string | null })
  | (At & { readonly code: 'instance/too-deep'; readonly most: number })
  | (At & InText & { readonly code: 'instance/key-twice'; readonly key: string })
  | (At & { readonly code: 'instance/missing-key'; readonly key: string; readonly expected: Shape })
  | (At & { readonly code: 'instance/wrong-type'; readonly found: string; readonly expected: Shape })
  | (At & {
      readonly code: 'instance/out-of-range';
      readonly found: string;
      readonly least: number;
      readonly most: number;
    })
  | (At & { readonly code: 'instance/not-one-of'; readonly found: string; readonly options: readonly string[] })
  | (At & { readonly code: 'instance/too-many'; readonly what: Counted; readonly found: number; readonly most: number })
  | (At & { readonly code: 'instance/no-items' })
  | (At & { readonly code: 'instance/id-twice'; readonly id: string; readonly first: string })
  | (At & { readonly code: 'instance/unknown-problem'; readonly found: string; readonly known: readonly string[] })
  /** Pieces cut to size without a trimming cut. */
  | (At & { readonly code: 'instance/untrimmed'; readonly problem: string })
  | (At & { readonly code: 'instance/stages'; readonly problem: string; readonly found: number })
  | (At & { readonly code: 'instance/cut-along-first'; readonly problem: string })
  | (At & { readonly code: 'instance/no-cloth'; readonly problem: string })
  | (At & { readonly code: 'instance/no-sheets'; readonly problem: string })
  | (At & {
      readonly code: 'instance/too-large';
      readonly size: readonly [width: number, height: number];
      readonly mayTurn: boolean;
      /** Width of the cloth, or null on sheets. */
      readonly cloth: number | null;
    })
  /** The sheets at hand cannot hold the pieces; or not proven, no layout was found in which they do. */
  | (At & { readonly code: 'instance/too-few-sheets'; readonly problem: string; readonly isProven: boolean });

export type Counted = 'items' | 'pieces' | 'sheets' | 'problems';
