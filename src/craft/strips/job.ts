// What is to be cut from one cloth, in whole units: equal pieces are one kind. Knows nothing of fabric, prints or shops.

/** Rectangles of one size, in whole units: width across the cloth, height along it. When they may turn, width <= height. */
export interface Kind {
  readonly width: number;
  readonly height: number;
  readonly count: number;
  readonly mayTurn: boolean;
}

/** Pieces to be cut from cloth of this width and any length. */
export interface Job {
  readonly width: number;
  readonly kinds: readonly Kind[];
}

/**
 * How the knife may go. Two stages: strips across the cloth, pieces along a strip, each trimmed to its height. Three: parts
 * along a strip, pieces down a part, each trimmed to its width. A strip is as high as some piece, or as any stack of them.
 */
export type Cutting = { readonly stages: 2 } | { readonly stages: 3; readonly stripHeights: 'piece' | 'any' };

/** Cloth is bought in whole steps: so much for (length + before). Lets a search work at what the maker pays first. */
export interface ShopStep {
  readonly step: number;
  readonly before: number;
}
