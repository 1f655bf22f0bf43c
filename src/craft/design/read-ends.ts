// Ends of a cloth that are at hand already.
import type { WrittenFabric } from './document.ts';
import type { ClothEnd } from './quilt.ts';
import { readSize } from './read-bought.ts';
import type { Spot } from './reading.ts';

export const readEnds = (written: WrittenFabric['ends'], { path, reading }: Spot): readonly ClothEnd[] =>
  (written ?? []).flatMap(({ size, count, name }, i) => {
    const read = readSize(size, { path: `${path}/${i}/size`, reading });
    return read === null ? [] : [{ name: name ?? null, size: read, count: count ?? 1 }];
  });
