// The cloths of a document, each with its defaults.

import { parseColour, usualWidth } from '#craft/fabric';
import { narrowestCloth } from '#craft/limits';
import { fromDecimal } from '#ground/exact';
import type { WrittenFabric } from './document.ts';
import type { Buying, Fabric } from './quilt.ts';
import { joiningSheet, readBought } from './read-bought.ts';
import { readEnds } from './read-ends.ts';
import { readPhoto } from './read-photo.ts';
import { readRepeat } from './read-repeat.ts';
import type { Reading } from './reading.ts';

/** @param buying null where it could not be read */
export const readFabrics = (
  written: readonly WrittenFabric[],
  { reading, buying }: { readonly reading: Reading; readonly buying: Buying | null },
): readonly Fabric[] => {
  const first = new Map<string, string>();
  return written.flatMap((fabric, i) => {
    const path = `/fabrics/${i}`;
    const earlier = first.get(fabric.id);
    if (earlier !== undefined) {
      reading.report({ code: 'design/fabric-twice', path: `${path}/id`, id: fabric.id, first: earlier });
    } else first.set(fabric.id, path);
    reading.name(fabric.id, `${path}/id`);
    const bought = readBought(fabric.bought, { path: `${path}/bought`, reading, buying });
    const width = bought && (joiningSheet(bought)?.[0] ?? null);
    if (width && fabric.usableWidth !== undefined)
      reading.report({ code: 'design/width-of-sheets', path: `${path}/usableWidth`, fabric: fabric.id });
    const stated = reading.length({
      written: fabric.usableWidth,
      path: `${path}/usableWidth`,
      least: narrowestCloth[reading.unit],
      missing: usualWidth[reading.unit],
    });
    if (bought !== null && bought.kind !== 'yardage') refuseBeside(fabric, { path, reading });
    const ends = readEnds(fabric.ends, { path: `${path}/ends`, reading });
    const repeat = readRepeat(fabric.repeat, { path: `${path}/repeat`, reading });
    const photo = readPhoto(fabric.photo, { path: `${path}/photo`, reading });
    const colour = parseColour(fabric.colour);
    if (stated === null || bought === null || !colour.ok) return [];
    return [
      {
        id: fabric.id,
        name: fabric.name ?? fabric.id,
        colour: colour.value,
        photo,
        usableWidth: width ?? stated,
        bought,
        ends,
        repeat,
        print: fabric.print ?? 'none',
        printRuns: fabric.printRuns ?? 'lengthwise',
        reversible: fabric.reversible ?? false,
        turning: fabric.turning ?? 'as-they-may',
        price: fabric.price === undefined ? null : fromDecimal(fabric.price),
      },
    ];
  });
};

const refuseBeside = (
  fabric: WrittenFabric,
  { path, reading }: { readonly path: string; readonly reading: Reading },
): void => {
  for (const key of ['ends', 'repeat'] as const) {
    if (fabric[key] !== undefined)
      reading.report({ code: 'design/only-by-length', path: `${path}/${key}`, key, fabric: fabric.id });
  }
};
