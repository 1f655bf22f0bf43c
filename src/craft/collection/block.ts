// A block of the collection as it is written down: its names, where they come from, and its drawing on a grid.

export interface CollectionBlock {
  /** Small letters and hyphens: what a document's "from" names. */
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly history: string;
  /** Where the history was read; "common practice, no source" where nothing was. */
  readonly source: string;
  readonly drawing: GridDrawing | CabinDrawing;
}

/** Patches on a square grid of `grid` a side, x to the right, y down, clockwise on screen. */
export interface GridDrawing {
  readonly kind: 'grid';
  readonly grid: number;
  readonly cloths: readonly (ClothRole & {
    /**
     * Corners of each patch as "x,y x,y x,y". Where an arc leads to a corner its centre follows: "x,y)cx,cy" clockwise, "x,y(cx,cy"
     * the other way.
     */
    readonly patches: readonly string[];
  })[];
}

/** A square centre and logs of one width, in the order of sewing, on a square grid of `grid` a side. */
export interface CabinDrawing {
  readonly kind: 'log-cabin';
  readonly grid: number;
  readonly centre: ClothRole & { readonly side: number };
  readonly logWidth: number;
  readonly order: readonly ('left' | 'top' | 'right' | 'bottom')[];
  readonly rounds: readonly (readonly ClothRole[])[];
}

/** A tone, and the letter of one of the cloths that play it. */
export interface ClothRole {
  readonly tone: 'light' | 'medium' | 'dark' | 'accent';
  readonly letter: string;
}
