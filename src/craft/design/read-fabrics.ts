// The cloths of a document, each with its defaults.

import { parseColour } from '#craft/fabric';
import type { Unit } from '#craft/measure';
import { fromDecimal, type Rational, rational } from '#ground/exact';
import type { WrittenFabric } from './document.ts';
import { narrowestCloth } from './limits.ts';
import type { Fabric } from './quilt.ts';
import type { Reading } from './reading.ts';

/** Usable width of cloth between the selvages, as docs/document.md sets it. */
const usualWidth: Readonly<Record<Unit, Rational>> = { in: rational(40), cm: rational(1016, 10) };

export const readFabrics = (written: readonly WrittenFabric[], reading: Reading): readonly Fabric[] => {
  const first = new Map<string, string>();
  return written.flatMap((fabric, i) => {
    const path = `/fabrics/${i}`;
    const earlier = first.get(fabric.id);
    if (earlier !== undefined) {
      reading.report({ code: 'design/fabric-twice', path: `${path}/id`, id: fabric.id, first: earlier });
    } else first.set(fabric.id, path);
    reading.name(fabric.id, `${path}/id`);
    const usableWidth = reading.length({
      written: fabric.usableWidth,
      path: `${path}/usableWidth`,
      least: narrowestCloth[reading.unit],
      missing: usualWidth[reading.unit],
    });
    const colour = parseColour(fabric.colour);
    if (usableWidth === null || !colour.ok) return [];
    return [
      {
        id: fabric.id,
        name: fabric.name ?? fabric.id,
        colour: colour.value,
        usableWidth,
        print: fabric.print ?? 'none',
        printRuns: fabric.printRuns ?? 'lengthwise',
        reversible: fabric.reversible ?? false,
        price: fabric.price === undefined ? null : fromDecimal(fabric.price),
      },
    ];
  });
};
