// Binding and backing from print and by hand; where this program rightly says more than print, the test says why.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { QuiltPlan } from '#craft';
import { panelsFor } from '#craft/finishing';
import { length } from '#craft/measure';
import { cloths, plainBlock, planned, quilt, setOf, type Written } from '../documents/documents.ts';

/** A plain top of this size in four blocks, on cloth wide enough for them; the finish comes from cloth of its own. */
const finished = (size: readonly [number, number], finish: Written, usableWidth: number): QuiltPlan =>
  planned(
    quilt({
      fabrics: [...cloths(100), { id: 'finish', colour: '#335577', usableWidth }],
      blocks: [plainBlock('b', size[0] / 2, size[1] / 2)],
      top: setOf('b', { across: 2, down: 2 }),
      finish,
      cutting: { squaring: 0 },
    }),
  );

const bought = (plan: QuiltPlan): number => {
  const cloth = plan.fabrics.find(({ id }) => id === 'finish');
  assert.equal(cloth?.buy.unit, 'yd');
  return cloth.buy.amount;
};

test('binding a 40 by 50 in quilt takes a sixth 2 1/2 in strip of 40 in cloth once joins and tail are counted', () => {
  // shop teacher's blog, 3 Aug 2009: 180/40 = 4.5, five strips, 12 1/2 in. The source counts no joins and asks for no tail;
  // we count both: five strips joined at 45 degrees give 5 · 40 − 4 · 2.5 = 190, short of 180 + 12, so a sixth is needed
  const { binding } = finished([40, 50], { binding: { fabric: 'finish', cut: 2.5 } }, 40).finish;
  assert.ok(binding);
  assert.equal(binding.length - 12, 180);
  assert.equal(Math.ceil((binding.length - 12) / 40), 5);
  assert.deepEqual([binding.strips, binding.joins, binding.gives], [6, 5, 227.5]);
});

test('binding a 70 by 90 in quilt takes nine 2 1/4 in strips of 42 in cloth, 20 1/4 in or 5/8 yd', () => {
  // derived: perimeter + 12 in (craft writer's article, 2009), 45-degree joins counted: n strips give n · 42 − (n − 1) · 2.25
  const plan = finished([70, 90], { binding: { fabric: 'finish', cut: 2.25 } }, 42);
  const { binding } = plan.finish;
  assert.deepEqual([binding?.length, binding?.strips], [332, 9]);
  assert.equal(plan.fabrics.find(({ id }) => id === 'finish')?.laid.layout.length, 20.25);
  assert.equal(bought(plan), 0.625);
});

test('backing 59 by 72 in takes two upright lengths, 144 in or 4 yd, and 118 in when the panels lie level', () => {
  // quilters' forum, 27 Nov 2011: 59 x 72 quilt, two 2-yard lengths, 4 yards. The forum tells no width of cloth; 42 is ours
  const print = panelsFor({
    spans: length(59),
    long: length(72),
    width: length(42),
    join: length(0.5),
    run: 'upright',
  });
  assert.deepEqual([print.panels, print.length, print.length / 36], [2, 144, 4]);
  // derived: two level panels span 2 · 42 − 1 = 83 and are 59 long; the plan takes the shorter way
  const { backing } = finished([59, 72], { backing: { fabric: 'finish', overage: 0 } }, 42).finish;
  assert.deepEqual([backing?.run, backing?.cuts.map(([, along]) => along)], ['level', [59, 59]]);
});

test('backing 60 by 80 in with 4 in round it takes 176 in upright, less than 204 in level, and 5 yd', () => {
  // derived: 68 × 88; upright two panels of 88; level three panels of 68
  const plan = finished([60, 80], { backing: { fabric: 'finish', overage: 4 } }, 42);
  const { backing } = plan.finish;
  assert.deepEqual([backing?.run, backing?.panels, backing?.width, backing?.height], ['upright', 2, 68, 88]);
  assert.equal(
    backing?.cuts.reduce((all, [, along]) => all + along, 0),
    176,
  );
  assert.equal(bought(plan), 5);
});

test('backing 80 by 56 in from 40 in cloth takes 160 in, for two widths joined span 79 in only', () => {
  // quilters' forum, 2017: 80/40 = 2 widths x 56 = 112 in = 3.11 yd. That counts no allowance for the join: with 1/2 in from
  // each panel two widths span 79. Derived: three upright panels take 168, two level ones 2 · 80 = 160 in
  const { backing } = finished([80, 56], { backing: { fabric: 'finish', overage: 0 } }, 40).finish;
  assert.deepEqual([backing?.run, backing?.panels], ['level', 2]);
  assert.equal(
    backing?.cuts.reduce((all, [, along]) => all + along, 0),
    160,
  );
});

test('112 in of cloth are bought as 3 1/8 yd', () => {
  // the same forum: 112 in = 3.11 yd, rounded up; a quilt of 79 by 56 in is what two widths of 40 do span
  const plan = finished([79, 56], { backing: { fabric: 'finish', overage: 0 } }, 40);
  assert.equal(
    plan.finish.backing?.cuts.reduce((all, [, along]) => all + along, 0),
    112,
  );
  assert.equal(bought(plan), 3.125);
});

test('batting is the top and its overage on every side', () => {
  // by hand
  const { batting } = finished([60, 80], { batting: { overage: 4 } }, 42).finish;
  assert.deepEqual([batting?.width, batting?.height], [68, 88]);
});

test('backing from cloth 106 in wide is one panel', () => {
  // by hand: 68 × 88 lies within 106, and the lower way along it is 68
  const { backing } = finished([60, 80], { backing: { fabric: 'finish' } }, 106).finish;
  assert.deepEqual([backing?.panels, backing?.run, backing?.cuts], [1, 'level', [[88, 68]]]);
});

test('a binding on the bias is one square in the cut list of its cloth', () => {
  // derived: 2 · (40 + 50) + 12 = 192 in of 2 1/2: 22² − 22 = 462 < 480 ≤ 23² − 23 = 506, so 23 in, which give 202.4
  const plan = finished([40, 50], { binding: { fabric: 'finish', cut: 2.5, grain: 'bias' } }, 40);
  const { binding } = plan.finish;
  assert.deepEqual([binding?.bias, binding?.strips, binding?.gives], [{ side: 23, squares: 1 }, 0, 202.4]);
  const cloth = plan.fabrics.find(({ id }) => id === 'finish');
  assert.deepEqual(
    cloth?.pieces.map(({ cut, count }) => [cut, count]),
    [[[23, 23], 1]],
  );
});

test('sleeve and label are cut from their cloths, the sleeve joined where it is longer than the cloth is wide', () => {
  const plan = finished([60, 40], { sleeve: { fabric: 'finish' }, label: { fabric: 'finish', size: [6, 4] } }, 42);
  // by hand: 60 in from 42 + 18 1/2, less two allowances; the label with 1/4 in all round
  assert.deepEqual(plan.finish.sleeve?.cuts, [
    [42, 8.5],
    [18.5, 8.5],
  ]);
  const cuts = plan.fabrics.find(({ id }) => id === 'finish')?.pieces.map(({ cut }) => cut);
  assert.deepEqual(cuts, [
    [42, 8.5],
    [18.5, 8.5],
    [6.5, 4.5],
  ]);
});

test('a quilt smaller than its bed asks for is told what it lacks', () => {
  // derived: queen with 12 in of drop and 10 in of tuck is 84 × 102
  const plan = finished([80, 104], { bed: { size: 'queen' } }, 42);
  assert.deepEqual(plan.finish.bed?.lacks, [4, 0]);
  assert.deepEqual(
    plan.notes.find(({ code }) => code === 'finishing/smaller-than-bed'),
    { code: 'finishing/smaller-than-bed', level: 'warning', path: '/finish/bed', wanted: [84, 102], lacks: [4, 0] },
  );
});
