import assert from 'node:assert/strict';
import { test } from 'node:test';
import { blockStepMinutes, topStepMinutes } from '#craft';
import { length, type Unit } from '#craft/measure';
import { example, planned, quilt } from '#documents';
import { matchesOn, type SewnSeam, seamWork } from './seam-work.ts';
import { minutesWith, usualMinutes } from './table.ts';
import { allWork, minutesOf } from './work.ts';

const near = (found: number, expected: number): void => assert.ok(Math.abs(found - expected) < 1e-9, `${found}`);

const seamMinutes = (step: SewnSeam, unit: Unit = 'in'): number => minutesOf(seamWork(step, unit), usualMinutes);

test('a chain is begun once: all in one take less than one by one, by a beginning for each but the first', () => {
  const step = { seam: length(9), matches: 0 };
  const chained = seamMinutes({ ...step, total: 36 });
  const alone = 36 * seamMinutes({ ...step, total: 1 });
  near(alone - chained, 35 * usualMinutes.chain);
  // by hand, from our own table: 0.5 + 36 · (0.4 + 0.1 + 9 · 0.02 + 0.5)
  near(chained, 0.5 + 36 * 1.18);
});

test('a seam of 22.86 cm takes as long as one of 9 in, and no seam no time', () => {
  const step = { total: 4, matches: 2 };
  near(seamMinutes({ ...step, seam: length(22.86) }, 'cm'), seamMinutes({ ...step, seam: length(9) }));
  assert.equal(seamMinutes({ seam: length(9), total: 0, matches: 0 }), 0);
});

test('seams that meet across the new one are matched: one in a four patch, none where only one part has a seam', () => {
  const square = (x: number, y: number, wide = 1) => [
    { x, y },
    { x: x + wide, y },
    { x: x + wide, y: y + 1 },
    { x, y: y + 1 },
  ];
  const line = [
    { x: 0, y: 1 },
    { x: 2, y: 1 },
  ];
  const first = [square(0, 0), square(1, 0)];
  assert.equal(matchesOn({ line, first, second: [square(0, 1), square(1, 1)], slack: 1e-6 }), 1);
  assert.equal(matchesOn({ line, first, second: [square(0, 1, 2)], slack: 1e-6 }), 0);
});

test('what a shop has measured stands in place of our estimate, the rest stays', () => {
  const table = minutesWith({ cut: 0.1 });
  assert.deepEqual(table, { ...usualMinutes, cut: 0.1 });
  near(minutesOf(allWork([{ cut: 60 }, { cut: 40, fold: 8 }]), table), 10 + 8 * usualMinutes.fold);
});

test('the minutes of all steps together are those of sewing, and a table of the document moves them', () => {
  const document = example('bramble-lane');
  const plan = planned(document as never);
  const steps = [
    ...plan.blocks.flatMap((block) => block.steps.map((step) => blockStepMinutes(plan, block, step))),
    ...plan.top.steps.map((step) => topStepMinutes(plan, step)),
  ];
  assert.equal(Math.round(steps.reduce((all, minutes) => all + minutes, 0)), plan.time.sewing);
  const { cutting, sewing, finishing } = plan.time;
  assert.ok(Math.abs(cutting + sewing + finishing - plan.time.minutes) <= 2);
  const slow = planned({ ...document, minutes: { press: usualMinutes.press + 1 } } as never);
  // one minute more for each seam that is pressed
  assert.ok(Math.abs(slow.time.sewing - plan.time.sewing - plan.time.seams) <= 1);
  assert.equal(slow.time.cutting, plan.time.cutting);
});

test('a curved seam takes longer by what it is matched, pinned and eased', () => {
  const document = example('mill-pond');
  const plan = planned(document as never);
  const curved = plan.blocks.flatMap(({ steps }) => steps).filter(({ kind }) => kind === 'curved');
  // by hand: two in each of four shells, one in each of twelve rings
  assert.equal(
    curved.reduce((all, { total }) => all + total, 0),
    20,
  );
  const plain = planned({ ...document, minutes: { curve: 0 } } as never);
  assert.ok(Math.abs(plan.time.sewing - plain.time.sewing - 20 * usualMinutes.curve) <= 1);
});

test('finishing takes its seams, its square feet, its lines and its edge', () => {
  const panel = { id: 'panel', size: '36', made: 'elsewhere' };
  const finish = { backing: { fabric: 'light' }, batting: { spacing: '9' }, binding: { fabric: 'dark' } };
  const finishing = (more: object): number =>
    planned(quilt({ blocks: [panel], top: { rows: [[{ block: 'panel' }]] }, finish: { ...finish, ...more } })).time
      .finishing;
  // by hand, from our own table: 44 in of backing from cloth 40 in wide is two panels of 44 in, one seam: 0.5 + 0.4 + 0.1 + 44 · 0.02 + 0.5 = 2.38.
  // 9 square feet · 2 = 18; 3 lines each way: 6 · 0.1 + 6 · 36 · 0.05 = 11.4.
  // binding of 156 in from five strips of 40 in: 4 joins of 2 1/2 · √2 in, 0.5 + 4 · (1 + 0.0707) = 4.78; 4 · 0.1 + 144 · 0.22 = 32.08
  assert.equal(finishing({}), Math.round(2.38 + 18 + 11.4 + 4.78 + 32.08));
  // a label 6 by 4 in is sewn down by hand, 20 in all round
  assert.equal(finishing({ label: { fabric: 'light' } }), Math.round(68.64 + 4));
});

test('a document with no block to sew takes no sewing', () => {
  const plan = planned(
    quilt({
      blocks: [{ id: 'panel', size: '9', made: 'elsewhere' }],
      top: { rows: [[{ block: 'panel' }]] },
    }),
  );
  assert.equal(plan.time.sewing, 0);
});
