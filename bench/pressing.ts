// How many seams nest in every example, and what it costs to find their ways.

import { readdirSync, readFileSync } from 'node:fs';
import { type BlockPlan, planQuilt, type QuiltPlan, turnsAlike } from '#craft';
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
    const { all, between, variants, turns, proven } = plan.top.pressing;
    const task = pressingOf(plan);
    const { medianMs } = await timed(() => planPressing(task));
    rows.push([
      file.slice(0, -ending.length),
      ofText(all.nested - between.nested, all.meetings - between.meetings),
      ofText(between.nested, between.meetings),
      all.meetings === 0 ? '' : `${((100 * all.nested) / all.meetings).toFixed(1)} %`,
      ofText(variants.filter((variant) => variant === 1).length, variants.length),
      ofText(turns.filter((turn) => turn !== 0).length, turns.length),
      proven ? 'yes' : 'no',
      msText(medianMs),
    ]);
  }
  printTable([
    ['quilt', 'nested inside blocks', 'between', 'share', 'blocks the other way', 'turned', 'proven most', 'time'],
    ...rows,
  ]);
};

/** The blocks of a plan face as they lie: no placed block is to be mirrored once more. */
const pressingOf = ({ quilt, top, blocks }: QuiltPlan): Parameters<typeof planPressing>[0] => {
  const upright = new Set(quilt.fabrics.filter(({ print }) => print !== 'none').map(({ id }) => id));
  return {
    entries: blocks.map((block) => {
      const places = placesOf(top, block);
      const motifs = quilt.blocks.find(({ id }) => id === block.id)?.motifs ?? [];
      const tones = new Map(block.pieces.map(({ label, tone, fabrics }) => [label, { tone, fabrics }]));
      const patches = block.patches.map(({ piece, points }) => {
        const { tone = '', fabrics = [] } = tones.get(piece) ?? {};
        const cloths = fabrics.map(({ fabric }) => fabric);
        const isUpright = motifs.includes(tone) || cloths.some((cloth) => upright.has(cloth));
        return { points, cloth: cloths.join(), isUpright };
      });
      const drawn = places.map((place) => top.drawn[place] ?? null);
      const turns = turnsAlike({ size: block.finished, patches, drawn });
      return { pieced: block, size: block.finished, places, turns };
    }),
    set: { ...top.set, placed: top.set.placed.map((placed) => ({ ...placed, mirror: false })) },
  };
};

const placesOf = ({ set }: QuiltPlan['top'], { id, colouring, mirror }: BlockPlan): readonly number[] =>
  set.placed.flatMap((placed, place) =>
    placed.block === id && placed.colouring === colouring && placed.mirror === mirror ? [place] : [],
  );
