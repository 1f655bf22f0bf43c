// Sashing: one width or one for each way, its cloth, its cornerstones.
import type { WrittenTop } from './document.ts';
import type { SashingDesign } from './quilt.ts';
import { fabricAt, type TopReading } from './read-cells.ts';

export const readSashing = (written: WrittenTop['sashing'], around: TopReading): SashingDesign | null => {
  if (written === undefined) return null;
  const path = '/top/sashing';
  const { width } = written;
  const pair = typeof width === 'object';
  const across = around.reading.length({
    written: pair ? width.across : width,
    path: pair ? `${path}/width/across` : `${path}/width`,
  });
  const down = pair ? around.reading.length({ written: width.down, path: `${path}/width/down` }) : across;
  const fabric = fabricAt(written.fabric, { ...around, path: `${path}/fabric` });
  const { cornerstones = null, outer = false } = written;
  if (cornerstones !== null) fabricAt(cornerstones, { ...around, path: `${path}/cornerstones` });
  return across && down && { across, down, fabric, cornerstones, outer };
};
