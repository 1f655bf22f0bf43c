// What do the maker's motifs cost in cloth?
import type { Quilt } from '#craft/design';
import { tidy } from '#craft/measure';
import type { FabricPlan, Note } from '#craft/plan';
import { toNumber } from '#ground/exact';

/** One for each cloth of which pieces are cut round a motif. */
export const motifNotes = (quilt: Quilt, fabrics: readonly FabricPlan[]): readonly Note[] =>
  fabrics.flatMap(({ id, motifs }): readonly Note[] => {
    const place = quilt.fabrics.findIndex((fabric) => fabric.id === id);
    const repeat = quilt.fabrics[place]?.repeat ?? null;
    if (motifs === null || repeat === null) return [];
    return [
      {
        code: 'cutting/on-motifs',
        level: 'note',
        path: `/fabrics/${place}/repeat`,
        fabric: id,
        pieces: motifs.pieces,
        centred: motifs.centred,
        anywhere: tidy(motifs.anywhere),
        repeat: tidy(toNumber(repeat.along)),
      },
    ];
  });
