import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { BlockPlan, QuiltPlan } from '#craft';
import { collection } from '#craft/collection';
import { length } from '#craft/measure';
import { cell, type Met, meetingsFound, nestedOf, patchesOfCell, planned, quilt } from '#documents';
import { at, type Point, quarterTurned } from '#ground/plane';
import { type EntryToPress, planPressing } from './index.ts';
import { isSpun, type Press } from './press.ts';

const nestedWith = ({ seams }: BlockPlan, met: readonly Met[], presses: readonly Press[]): number =>
  nestedOf(
    met,
    seams.map(({ step }) => presses[step] as Press),
  );

const isKept = ({ why }: BlockPlan['steps'][number]['wish']): boolean => why === 'outward' || why === 'hollow';

/** The most that nest over every way to press the steps that are free. */
const mostNested = (met: readonly Met[], block: BlockPlan): number => {
  const presses: Press[] = block.steps.map(() => 1);
  const free = block.steps.flatMap(({ wish }, step) => (isKept(wish) ? [] : [step]));
  let most = 0;
  for (let choice = 0; choice < 2 ** free.length; choice++) {
    free.forEach((step, bit) => {
      presses[step] = ((choice >> bit) & 1) as 0 | 1;
    });
    most = Math.max(most, nestedWith(block, met, presses));
  }
  return most;
};

const compare = (block: BlockPlan): void => {
  const met = meetingsFound(block.seams, Math.max(...block.finished));
  const presses = block.steps.map(({ pressTo }) => pressTo);
  assert.equal(block.pressing.meetings, met.length, `${block.id}: meetings`);
  assert.equal(block.pressing.nested, nestedWith(block, met, presses), `${block.id}: nested as told`);
  const most = mostNested(met, block);
  // a spun seam may nest where none pressed to one side does
  if (presses.every((press) => !isSpun(press)))
    assert.equal(block.pressing.nested, most, `${block.id}: nested at most`);
  else assert.ok(block.pressing.nested >= most, `${block.id}: nested ${block.pressing.nested}, to sides ${most}`);
  assert.equal(block.pressing.loose.length, met.length - block.pressing.nested);
  const darker = block.steps.map(({ wish }) => wish.toward);
  assert.ok(block.pressing.nested >= nestedWith(block, met, darker), `${block.id}: all to the darker side nests more`);
};

/** Steps whose every combination is tried. */
const mostFree = 16;

const oneBlock = (block: Readonly<Record<string, unknown>> & { readonly id: string }): BlockPlan =>
  planned(quilt({ blocks: [block], top: { rows: [[{ block: block.id }]] } })).blocks[0] as BlockPlan;

test('of every block of the collection as many seams nest as any choice of directions could nest', () => {
  let compared = 0;
  for (const { id } of collection) {
    const entry = oneBlock({ id, from: id, size: '12', colourings: { default: { accent: 'medium' } } });
    if (entry.steps.filter(({ wish }) => !isKept(wish)).length > mostFree) continue;
    compare(entry);
    compared++;
  }
  assert.ok(compared >= 25, `${compared} compared`);
});

/** A grid of squares and squares halved corner to corner, which straight seams make. */
const patchwork = fc
  .record({
    across: fc.integer({ min: 2, max: 4 }),
    down: fc.integer({ min: 2, max: 3 }),
    cells: fc.array(cell, { minLength: 12, maxLength: 12 }),
  })
  .map(({ across, down, cells }) => ({
    id: 'drawn',
    size: [4 * across, 4 * down],
    patches: {
      grid: [across, down],
      list: cells.slice(0, across * down).flatMap((one, i) =>
        patchesOfCell(one, at(i % across, Math.floor(i / across))).map(({ points, tone }) => ({
          points: points.map(({ x, y }) => [x, y]),
          tone,
        })),
      ),
    },
  }));

test('of random blocks as many seams nest as any choice of directions could nest', () => {
  let [met, compared] = [0, 0];
  fc.assert(
    fc.property(patchwork, (drawn) => {
      const entry = oneBlock(drawn);
      if (entry.steps.length > mostFree) return;
      compare(entry);
      compared++;
      met += entry.pressing.meetings;
    }),
    { numRuns: 220 },
  );
  assert.ok(compared >= 200, `${compared} compared`);
  assert.ok(met > 400, `${met} meetings`);
});

/** The pieced block as it lies after a turn by quarters. */
const turnedBy = ({ steps, seams, finished }: BlockPlan, quarters: number): EntryToPress => {
  const [width, height] = finished;
  const [across, down] = quarters % 2 === 0 ? [width, height] : [height, width];
  const onward = ({ x, y }: Point): Point => {
    const p = quarterTurned(at(x - width / 2, y - height / 2), quarters);
    return at(p.x + across / 2, p.y + down / 2);
  };
  return {
    pieced: {
      steps,
      seams: seams.map((seam) => ({ ...seam, path: seam.path.map(onward), heading: seam.heading + 90 * quarters })),
    },
    size: [across, down],
    places: [0],
  };
};

const aloneIn = (plan: QuiltPlan, entry: EntryToPress) => {
  const [width, height] = entry.size;
  const set = { ...plan.top.set, width: length(width), height: length(height) };
  const { blocks, top } = planPressing({ entries: [entry], set });
  return { presses: blocks[0]?.presses, why: blocks[0]?.loose.map(({ why }) => why), ...top.all };
};

const compareTurned = (drawn: Readonly<Record<string, unknown>> & { readonly id: string }): void => {
  const plan = planned(quilt({ blocks: [drawn], top: { rows: [[{ block: drawn.id }]] } }));
  const block = plan.blocks[0] as BlockPlan;
  const asDrawn = aloneIn(plan, turnedBy(block, 0));
  for (const quarters of [1, 2, 3]) {
    assert.deepEqual(aloneIn(plan, turnedBy(block, quarters)), asDrawn, `${drawn.id} turned by ${quarters} quarters`);
  }
};

test('turned by quarters, every block of the collection and random ones are pressed the same way at every step', () => {
  for (const { id } of collection)
    compareTurned({ id, from: id, size: '12', colourings: { default: { accent: 'medium' } } });
  fc.assert(fc.property(patchwork, compareTurned), { numRuns: 60 });
});
