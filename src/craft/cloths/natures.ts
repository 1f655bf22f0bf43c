// What is each cloth like to cut from, by what the document says of it?
import type { ClothNature, MotifRepeat } from '#craft/cutting';
import { joiningSheet, type PrintRepeat, type Quilt } from '#craft/design';
import { length } from '#craft/measure';
import { toNumber } from '#ground/exact';
import { stockOf } from './bought-as.ts';

/** By fabric. */
export type Natures = ReadonlyMap<string, ClothNature>;

export const naturesOf = (quilt: Quilt): Natures =>
  new Map(
    quilt.fabrics.map((fabric) => {
      const { id, usableWidth, bought, print, printRuns, reversible } = fabric;
      const stock = stockOf(fabric, quilt);
      const sheet = joiningSheet(bought);
      return [
        id,
        {
          width: length(toNumber(usableWidth)),
          length: bought.kind === 'sheets' ? length(toNumber(bought.size[1])) : null,
          ...(stock === undefined ? {} : { stock }),
          ...(sheet === null ? {} : { joining: [length(toNumber(sheet[0])), length(toNumber(sheet[1]))] }),
          ...(fabric.repeat === null ? {} : { repeat: repeatOf(fabric.repeat) }),
          print,
          printRuns,
          reversible,
        },
      ];
    }),
  );

const repeatOf = ({ along, across, motif }: PrintRepeat): MotifRepeat => ({
  along: length(toNumber(along)),
  across: across && length(toNumber(across)),
  motif: [length(toNumber(motif[0])), length(toNumber(motif[1]))],
});
