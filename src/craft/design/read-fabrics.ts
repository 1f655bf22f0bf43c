// The cloths of a document, each with its defaults.

import { parseColour } from '#craft/fabric';
import { convert, type Unit } from '#craft/measure';
import { fromDecimal, type Rational, rational } from '#ground/exact';
import type { WrittenFabric } from './document.ts';
import { narrowestCloth } from './limits.ts';
import type { Bought, Fabric } from './quilt.ts';
import type { Reading, Spot } from './reading.ts';

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
    const bought = readBought(fabric.bought, { path: `${path}/bought`, reading });
    if (bought?.kind === 'sheets' && fabric.usableWidth !== undefined)
      reading.report({ code: 'design/width-of-sheets', path: `${path}/usableWidth`, fabric: fabric.id });
    const stated = reading.length({
      written: fabric.usableWidth,
      path: `${path}/usableWidth`,
      least: narrowestCloth[reading.unit],
      missing: usualWidth[reading.unit],
    });
    const colour = parseColour(fabric.colour);
    if (stated === null || bought === null || !colour.ok) return [];
    return [
      {
        id: fabric.id,
        name: fabric.name ?? fabric.id,
        colour: colour.value,
        usableWidth: bought.kind === 'sheets' ? bought.size[0] : stated,
        bought,
        print: fabric.print ?? 'none',
        printRuns: fabric.printRuns ?? 'lengthwise',
        reversible: fabric.reversible ?? false,
        price: fabric.price === undefined ? null : fromDecimal(fabric.price),
      },
    ];
  });
};

/**
 * What is left of a fat quarter (18 × 22 in as sold) and a fat eighth (9 × 22 in) when the edges are cut straight: common
 * practice, no source. In centimetres the same, exactly.
 */
const namedSheets = {
  'fat-quarter': [rational(35, 2), rational(41, 2)],
  'fat-eighth': [rational(17, 2), rational(41, 2)],
} as const;

const readBought = (written: WrittenFabric['bought'], { path, reading }: Spot): Bought | null => {
  if (written === undefined || written === 'yardage') return { kind: 'yardage' };
  if (typeof written === 'string') {
    const [across, along] = namedSheets[written];
    const inUnit = (inches: Rational): Rational => convert(inches, { from: 'in', to: reading.unit });
    return { kind: 'sheets', name: written, size: [inUnit(across), inUnit(along)] };
  }
  const across = reading.length({ written: written.sheet[0], path: `${path}/sheet/0` });
  const along = reading.length({ written: written.sheet[1], path: `${path}/sheet/1` });
  return across === null || along === null ? null : { kind: 'sheets', name: 'sheet', size: [across, along] };
};
