import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { BlockPlan } from '#craft';
import { collection } from '#craft/collection';
import { type Met, meetingsFound, nestedOf, planned, quilt } from '#documents';
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
    cells: fc.array(
      fc.record({
        halved: fc.constantFrom('no', 'rising', 'falling'),
        tones: fc.tuple(fc.constantFrom('light', 'medium', 'dark'), fc.constantFrom('light', 'dark')),
      }),
      { minLength: 12, maxLength: 12 },
    ),
  })
  .map(({ across, down, cells }) => ({
    id: 'drawn',
    size: [4 * across, 4 * down],
    patches: {
      grid: [across, down],
      list: Array.from({ length: across * down }, (_, i) => {
        const { halved, tones } = cells[i] as (typeof cells)[number];
        const [x, y] = [i % across, Math.floor(i / across)];
        const [a, b, c, d] = [
          [x, y],
          [x + 1, y],
          [x + 1, y + 1],
          [x, y + 1],
        ] as const;
        if (halved === 'no') return [{ points: [a, b, c, d], tone: tones[0] }];
        const halves =
          halved === 'rising'
            ? [
                [a, b, d],
                [b, c, d],
              ]
            : [
                [a, b, c],
                [a, c, d],
              ];
        return halves.map((points, half) => ({ points, tone: tones[half] }));
      }).flat(),
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
