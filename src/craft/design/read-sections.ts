// A top in sections: a tree of runs, side by side or one under the other, of blocks, strips and fills.
import type { WrittenTop } from './document.ts';
import type { SectionDesign } from './quilt.ts';
import { fabricAt, readPlace, type TopReading } from './read-cells.ts';

type WrittenSection = NonNullable<WrittenTop['sections']>;

/** Null where a strip's width could not be read. */
export const readSection = (
  section: WrittenSection,
  at: TopReading & { readonly path: string },
): SectionDesign | null => {
  const { path } = at;
  if ('down' in section) return readRun('down', section.down, at);
  if ('across' in section) return readRun('across', section.across, at);
  if ('block' in section) return readPlace(section, at);
  if ('fill' in section) return { kind: 'fill', fabric: fabricAt(section.fill, { ...at, path: `${path}/fill` }) };
  const fabric = fabricAt(section.strip, { ...at, path: `${path}/strip` });
  const width = at.reading.length({ written: section.width, path: `${path}/width` });
  return width && { kind: 'strip', fabric, width };
};

const readRun = (
  run: 'across' | 'down',
  parts: readonly WrittenSection[],
  at: TopReading & { readonly path: string },
): SectionDesign => ({
  kind: 'run',
  run,
  parts: parts.flatMap((part, i) => readSection(part, { ...at, path: `${at.path}/${run}/${i}` }) ?? []),
});
