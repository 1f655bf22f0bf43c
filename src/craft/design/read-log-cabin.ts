// A log cabin's recipe laid out log by log.
import type { Rational } from '#ground/exact';
import type { WrittenLogCabin } from './document.ts';
import type { CentreBlock, LogCabinDesign, LogDesign, Side } from './quilt.ts';
import type { Reading, Spot } from './reading.ts';
import { sizeOf } from './size.ts';

/** The most usual turning order, used where a recipe names none (docs/document.md). */
const usualOrder: readonly Side[] = ['left', 'top', 'right', 'bottom'];

/**
 * @param at.path     of the recipe
 * @param at.centreOf finds a pieced centre by its id, or reports why there is none
 * @returns null when something in it was reported
 */
export const readLogCabin = (written: WrittenLogCabin, at: CabinSpot): LogCabinDesign | null => {
  const { path, reading } = at;
  const centre = readCentre(written, at);
  const order = written.order ?? usualOrder;
  const logs = written.rounds.map((round, i) =>
    readRound({ round, order, index: i, last: i === written.rounds.length - 1, path: `${path}/rounds/${i}`, reading }),
  );
  const { centreTone } = written;
  const pieced = isPieced(written.centre);
  if (centreTone === undefined && !pieced) {
    reading.report({ code: 'design/missing-key', path: `${path}/centreTone`, key: 'centreTone' });
    return null;
  }
  const sound = centreTone === undefined || reading.name(centreTone, `${path}/centreTone`);
  if (centre === null || !sound || logs.some((round) => round === null)) return null;
  return { kind: 'log-cabin', ...centre, centreTone: centreTone ?? '', logs: logs.flatMap((round) => round ?? []) };
};

export interface CabinSpot extends Spot {
  readonly centreOf: (block: string, path: string) => CentreBlock | null;
}

type Centre = Pick<LogCabinDesign, 'centre' | 'centreBlock'>;

const isPieced = (centre: WrittenLogCabin['centre']): centre is { block: string } =>
  typeof centre === 'object' && !Array.isArray(centre);

const readCentre = ({ centre }: WrittenLogCabin, { path, reading, centreOf }: CabinSpot): Centre | null => {
  if (isPieced(centre)) {
    const centreBlock = centreOf(centre.block, `${path}/centre/block`);
    return centreBlock && { centre: sizeOf(centreBlock.shape), centreBlock };
  }
  const sides = Array.isArray(centre) ? centre : [centre];
  const lengths = sides.map((side, i) =>
    reading.length({ written: side, path: Array.isArray(centre) ? `${path}/centre/${i}` : `${path}/centre` }),
  );
  const width = lengths[0];
  const height = lengths.length === 1 ? width : lengths[1];
  return width && height ? { centre: [width, height], centreBlock: null } : null;
};

interface RoundAt {
  readonly round: WrittenLogCabin['rounds'][number];
  readonly order: readonly Side[];
  readonly index: number;
  readonly last: boolean;
  readonly path: string;
  readonly reading: Reading;
}

const readRound = ({ round, order, index, last, path, reading }: RoundAt): readonly LogDesign[] | null => {
  const { tones } = round;
  let sound = true;
  if (tones.length > order.length) {
    reading.report({
      code: 'design/tones-beyond-cycle',
      path: `${path}/tones`,
      found: tones.length,
      most: order.length,
    });
    sound = false;
  } else if (tones.length < order.length && !last) {
    reading.report({ code: 'design/part-round', path: `${path}/tones`, found: tones.length, expected: order.length });
    sound = false;
  }
  const widths = readWidths({ round, path, reading });
  const logs = tones.map((tone, place): LogDesign | null => {
    const named = reading.name(tone, `${path}/tones/${place}`);
    const side = order[place];
    const width = widths?.[place];
    return named && side && width ? { side, width, tone, round: index, place } : null;
  });
  return sound && logs.every((log) => log !== null) ? logs : null;
};

const readWidths = ({
  round,
  path,
  reading,
}: Pick<RoundAt, 'round' | 'path' | 'reading'>): readonly Rational[] | null => {
  const { width, tones } = round;
  if (!Array.isArray(width)) {
    const one = reading.length({ written: width, path: `${path}/width` });
    return one && tones.map(() => one);
  }
  if (width.length !== tones.length) {
    reading.report({
      code: 'design/widths-and-tones',
      path: `${path}/width`,
      found: width.length,
      expected: tones.length,
    });
    return null;
  }
  const read = width.map((written, i) => reading.length({ written, path: `${path}/width/${i}` }));
  return read.every((one) => one !== null) ? read : null;
};
