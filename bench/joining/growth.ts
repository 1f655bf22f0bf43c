// How long the order of joining takes, and how many different units it comes to, from 50 to 2,000 patches.

import { length } from '#craft/measure';
import { type PiecedBlock, pieceBlock } from '#craft/piecing';
import { printTable } from '../table.ts';
import { growthSlope } from '../timing.ts';
import { benchBlock, blockShapes } from './blocks.ts';

const sizes = [50, 100, 200, 500, 1000, 2000];
const seeds = [1, 2, 3, 4, 5];
const warmUp = 10;
const wanted: Readonly<Record<number, string>> = { 200: '50 ms', 1000: '1000 ms' };

/** Processor time, warm, median over the seeds; the units are those of all seeds together. */
export const printJoining = (): void => {
  const rows = blockShapes.flatMap((shape) => {
    const points: (readonly [number, number])[] = [];
    const lines = sizes.map((patches) => {
      const times: number[] = [];
      const made: { readonly patches: number; readonly block: PiecedBlock }[] = [];
      for (let run = -warmUp; run < seeds.length; run++) {
        const drawn = benchBlock({ shape, patches, seed: seeds[Math.max(run, 0)] as number });
        const before = process.cpuUsage();
        const block = pieceBlock({ ...drawn, lightness: () => 50, seam: length(0.25) });
        const { user, system } = process.cpuUsage(before);
        if (run < 0) continue;
        times.push((user + system) / 1000);
        made.push({ patches: drawn.block.patches.length, block });
      }
      times.sort((a, b) => a - b);
      const median = times[Math.floor(times.length / 2)] as number;
      points.push([patches, median]);
      const units = made.reduce((all, { block }) => all + block.steps.length, 0) / made.length;
      const depth = made.reduce((all, { block }) => all + depthOf(block), 0) / made.length;
      return [
        shape,
        String(made[0]?.patches),
        `${median.toFixed(1)} ms`,
        `${times[0]?.toFixed(1)} to ${times.at(-1)?.toFixed(1)} ms`,
        wanted[patches] ?? '',
        units.toFixed(1),
        depth.toFixed(1),
      ];
    });
    return [...lines, [`${shape}: slope`, '', growthSlope(points).toFixed(2), '', '', '', '']];
  });
  printTable([['block', 'patches', 'median', 'spread', 'wanted', 'different units', 'depth'], ...rows]);
};

const depthOf = ({ steps }: PiecedBlock): number => {
  const depths: number[] = [];
  for (const step of steps)
    depths.push(1 + Math.max(...step.join.map((part) => ('unit' in part ? (depths[part.unit] as number) : 0))));
  return depths.at(-1) ?? 0;
};
