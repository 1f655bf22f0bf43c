// Where the pieces of a cloth go in the quilt, and which piece a patch of the quilt is: the two ways round between cloth and quilt.
import type { BlockPicture, PieceSeen, QuiltPicture } from '#workroom/compute';

/** A patch of a placed block, or a strip of the top, as it is chosen in the quilt's picture. */
export type Spot =
  | { readonly placed: number; readonly patch: number }
  | { readonly entry: number; readonly patch: number }
  | { readonly strip: number };

export interface PiecePlaces {
  /** Patches by placed block. */
  readonly patches: readonly { readonly placed: number; readonly patch: number }[];
  /** Patches by block as it is made. */
  readonly entries: readonly { readonly entry: number; readonly patches: readonly number[] }[];
  readonly strips: readonly number[];
}

type Use = PieceSeen['uses'][number];

export const placesOf = (of: {
  readonly cloth: string;
  readonly uses: readonly Use[];
  readonly picture: QuiltPicture;
}): PiecePlaces => {
  const { cloth, uses, picture } = of;
  const patches: { readonly placed: number; readonly patch: number }[] = [];
  const byEntry = new Map<number, Set<number>>();
  const labels = picture.entries.map((entry) => patchesFor(entry, uses));
  picture.placed.forEach(({ entry, fabrics, turn }, placed) => {
    const block = picture.entries[entry];
    for (const { patch, use } of labels[entry] ?? []) {
      const fabric = fabrics?.[patch] ?? block?.patches[patch]?.fabric;
      if (fabric !== cloth || (use.turn !== null && use.turn !== turn)) continue;
      patches.push({ placed, patch });
      const own = byEntry.get(entry) ?? new Set<number>();
      byEntry.set(entry, own.add(patch));
    }
  });
  return {
    patches,
    entries: [...byEntry].map(([entry, own]) => ({ entry, patches: [...own].toSorted((a, b) => a - b) })),
    strips: picture.strips.flatMap(({ fabric, role, label }, strip) =>
      fabric === cloth && uses.some((use) => use.block === null && use.role === role && use.label === label)
        ? [strip]
        : [],
    ),
  };
};

const patchesFor = (
  block: BlockPicture,
  uses: readonly Use[],
): readonly { readonly patch: number; readonly use: Use }[] => {
  const own = uses.filter((use) => isOf(use, block));
  if (own.length === 0) return [];
  return block.patches.flatMap(({ label }, patch) =>
    own.filter((use) => use.label === label).map((use) => ({ patch, use })),
  );
};

const isOf = (use: Use, { id, colouring, mirror }: BlockPicture): boolean =>
  use.block === id && (use.colouring ?? 'default') === colouring && use.mirror === mirror;

/** The cloth that lies there; null where there is nothing. */
export const clothAt = (picture: QuiltPicture, spot: Spot): string | null => {
  if ('strip' in spot) return picture.strips[spot.strip]?.fabric ?? null;
  if ('entry' in spot) return picture.entries[spot.entry]?.patches[spot.patch]?.fabric ?? null;
  const placed = picture.placed[spot.placed];
  const entry = placed === undefined ? undefined : picture.entries[placed.entry];
  return placed?.fabrics?.[spot.patch] ?? entry?.patches[spot.patch]?.fabric ?? null;
};

/** Places in the cloth's list of the pieces that a spot is of: one, or those for each turn where the block has several. */
export const piecesAt = (of: {
  readonly pieces: readonly PieceSeen[];
  readonly picture: QuiltPicture;
  readonly spot: Spot;
}): readonly number[] => {
  const { pieces, picture, spot } = of;
  const isThere = (use: Use): boolean => {
    if ('strip' in spot) {
      const strip = picture.strips[spot.strip];
      return use.block === null && use.role === strip?.role && use.label === strip.label;
    }
    const placed = 'placed' in spot ? picture.placed[spot.placed] : undefined;
    const entry = picture.entries[placed?.entry ?? ('entry' in spot ? spot.entry : -1)];
    if (entry === undefined || !isOf(use, entry)) return false;
    const isTurned = placed === undefined || use.turn === null || use.turn === placed.turn;
    return isTurned && use.label === entry.patches[spot.patch]?.label;
  };
  return pieces.flatMap(({ uses }, index) => (uses.some(isThere) ? [index] : []));
};
