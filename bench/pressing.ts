// How many seams nest in every example, and what it costs to find their ways.

import { readdirSync, readFileSync } from 'node:fs';
import { type BlockPlan, planQuilt, type QuiltPlan } from '#craft';
import { planPressing } from '#craft/pressing';
import { msText, ofText, printTable } from './table.ts';
import { timed } from './timing.ts';

const examples = new URL('../examples/', import.meta.url);
const ending = '.quilt.json';

export const printPressing = async (): Promise<void> => {
  const rows: (readonly string[])[] = [];
  for (const file of readdirSync(examples).filter((one) => one.endsWith(ending))) {
    const planned = planQuilt(readFileSync(new URL(file, examples), 'utf8'), { budget: { steps: 0 } });
    if (!planned.ok) throw new Error(`${file} is refused: ${planned.problems[0]?.code}`);
    const plan = planned.value;
    const { all, between, variants, proven } = plan.top.pressing;
    const task = pressingOf(plan);
    const { medianMs } = await timed(() => planPressing(task));
    rows.push([
      file.slice(0, -ending.length),
      ofText(all.nested - between.nested, all.meetings - between.meetings),
      ofText(between.nested, between.meetings),
      all.meetings === 0 ? '' : `${((100 * all.nested) / all.meetings).toFixed(1)} %`,
      ofText(variants.filter((variant) => variant === 1).length, variants.length),
      proven ? 'yes' : 'no',
      msText(medianMs),
    ]);
  }
  printTable([
    ['quilt', 'nested inside blocks', 'between', 'share', 'blocks the other way', 'proven most', 'time'],
    ...rows,
  ]);
};

/** The blocks of a plan face as they lie: no placed block is to be mirrored once more. */
const pressingOf = ({ top, blocks }: QuiltPlan): Parameters<typeof planPressing>[0] => ({
  entries: blocks.map((block) => ({ pieced: block, size: block.finished, places: placesOf(top, block) })),
  set: { ...top.set, placed: top.set.placed.map((placed) => ({ ...placed, mirror: false })) },
});

const placesOf = ({ set }: QuiltPlan['top'], { id, colouring, mirror }: BlockPlan): readonly number[] =>
  set.placed.flatMap((placed, place) =>
    placed.block === id && placed.colouring === colouring && placed.mirror === mirror ? [place] : [],
  );
