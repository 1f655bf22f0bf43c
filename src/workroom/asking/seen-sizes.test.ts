import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { example } from '#documents';
import { lookAt } from './looks.ts';
import type { SizesTold, WrittenSize } from './seen-sizes.ts';

const planned = planQuilt(example('harvest-home-throw'), { budget: { steps: 0 } });
assert.ok(planned.ok);
const plan = planned.value;

const seenOf = (written: readonly WrittenSize[]) => {
  const seen = structuredClone(lookAt(plan, 'sizes', { entry: 'cabin', written }));
  assert.ok(seen !== 'nowhere');
  return seen;
};

test('before anything is written every step says what it should measure, and nothing is told', () => {
  const { steps, told, problems } = seenOf([]);
  assert.deepEqual([steps.length, told, problems], [12, null, []]);
  // by hand: a centre of 3 and a log of 1, and two allowances of 1/4
  assert.deepEqual([steps[0]?.across, steps[0]?.down], ['4½\u00a0in', '3½\u00a0in']);
});

test('what cannot be read is told at its step, whatever is written beside it', () => {
  const { problems, told } = seenOf([
    { step: 1, across: '4 1/2; 3: 4', down: '' },
    { step: 4, across: '', down: 'x' },
    { step: 5, across: '', down: '5 1/2' },
  ]);
  assert.deepEqual([problems.map(({ step }) => step), told], [[1, 4], null]);
});

test('a log that is too wide is ringed, with the line to trim to at its edge and its seam to sew again', () => {
  const { told } = seenOf([
    { step: 1, across: '4 1/2', down: '3 1/2' },
    { step: 2, across: '4 1/2', down: '4 3/4' },
    { step: 3, across: '5 1/2', down: '4 3/4' },
    { step: 4, across: '5 1/2', down: '5 3/4' },
  ]);
  assert.match(told?.what ?? '', /^Piece C is cut about ¼ in too large, or the seam of step 2 took ⅛ in too little;/);
  assert.match(
    told?.picture.alt ?? '',
    /^The unit after step 4, C ringed, the seams to sew again dashed: step 2, a dash/,
  );
  assert.match(told?.picture.svg ?? '', /5¾ in, should be 5½ in/);
});

test('of the top every step says what it should measure, and borders to come are among what can be saved', () => {
  const before = structuredClone(lookAt(plan, 'sizes', { entry: '~top', written: [] }));
  assert.ok(before !== 'nowhere');
  assert.deepEqual([before.title, before.steps.length, before.told], ['The top', plan.top.steps.length, null]);
  // by hand: two blocks of 9 in and two allowances of 1/4
  assert.deepEqual([before.steps[0]?.across, before.steps[0]?.down], ['18½\u00a0in', '9½\u00a0in']);
  // by hand: cabins that six seams cross, each 1/16 in too much: 13 seams in a row of two, 20 of three, 41 of all six
  const written = [
    { step: 1, across: '17 11/16', down: '9 1/8' },
    { step: 2, across: '26 1/4', down: '9 1/8' },
    { step: 5, across: '51 15/16', down: '9 1/8' },
  ];
  const { told } = structuredClone(lookAt(plan, 'sizes', { entry: '~top', written })) as typeof before;
  assert.match(told?.what ?? '', /^Each seam takes 9\/32 in .* so that the top would come out .* too small\.$/);
  assert.ok(told?.saved.some((line) => line.startsWith('Measure the quilt through its middle')));
  assert.match(told?.picture.alt ?? '', /^The unit after step 5/);
});

test('what reads alike is one thing in how likely it is, and the likeliest stands first', () => {
  // two slips of other sizes, both less than the finest mark
  const { told } = structuredClone(
    lookAt(plan, 'sizes', {
      entry: '~top',
      written: [
        { step: 1, across: '17 11/16', down: '9 1/8' },
        { step: 2, across: '26 1/4', down: '9 1/8' },
      ],
    }),
  ) as { readonly told: SizesTold };
  const words = told.likely.map(([, text]) => text);
  const shares = told.likely.map(([share]) => Number.parseInt(share ?? '', 10));
  assert.deepEqual(words, [...new Set(words)]);
  assert.deepEqual(
    shares,
    shares.toSorted((a, b) => b - a),
  );
});

const bramble = planQuilt(example('bramble-lane'), { budget: { steps: 0 } });
assert.ok(bramble.ok);

const toldOfBramble = (rows: readonly (readonly [step: number, across: string, down: string])[]) => {
  const written = rows.map(([step, across, down]) => ({ step, across, down }));
  const seen = lookAt(bramble.value, 'sizes', { entry: '~top', written });
  return seen === 'nowhere' ? null : seen.told;
};

test('strips of the top that are cut wrong are ringed where the unit has them', () => {
  // by hand: 30 1/2 in and two corner squares of 3 in, each 1/8 in too large
  const told = toldOfBramble([
    [4, '30 1/2', '6 1/2'],
    [8, '30 1/2', '6 1/2'],
    [13, '30 1/2', '36 1/2'],
    [15, '36 1/2', '36 1/2'],
    [16, '33 5/8', '3 1/2'],
    [17, '36 3/4', '3 1/2'],
  ]);
  assert.match(told?.what ?? '', /^The corner squares B are cut about ⅛ in too large/);
  assert.match(
    told?.picture.alt ?? '',
    /^The unit after step 17, dashed where it was measured, the corner squares B ringed$/,
  );
  // by hand: blocks of 6 in; the third of the first row is 1/4 in too wide, and the unit measured last is the second row
  const before = toldOfBramble([
    [1, '12 1/2', '6 1/2'],
    [2, '18 3/4', ''],
    [3, '24 3/4', ''],
    [4, '30 3/4', ''],
    [5, '12 1/2', ''],
    [6, '18 1/2', ''],
    [7, '24 1/2', ''],
    [8, '30 1/2', '6 1/2'],
  ]);
  assert.match(before?.what ?? '', /^One block .* that step 2 has joined is about ¼ in too large;/);
  assert.equal(before?.picture.alt, 'The unit after step 8, dashed where it was measured');
});

test('sizes that would tell two explanations apart are named in marks that a tape has', () => {
  // the row of the top is read to 1/8 in: half of that is seen between two marks, not 64 47/64
  const written = [18.5, 27.75, 36.75, 45.75, 54.75].map((width, i) => ({
    step: i + 1,
    across: `${width}`,
    down: '9 1/2',
  }));
  const seen = lookAt(plan, 'sizes', { entry: '~top', written });
  assert.ok(seen !== 'nowhere');
  assert.match(seen.told?.mend ?? '', /: about 64¾.in speaks for the first, 65.in for the second\.$/);
});

test('on point a row is measured one way alone: it ends in triangles that are trimmed later', () => {
  const pointed = planQuilt(example('lantern-lane'), { budget: { steps: 0 } });
  assert.ok(pointed.ok);
  const seen = lookAt(pointed.value, 'sizes', { entry: '~top', written: [] });
  assert.ok(seen !== 'nowhere');
  const first = seen.steps[0];
  assert.deepEqual([first?.across, first?.down === ''], ['', false]);
});

test('what the quilt does not have is not measured here', () => {
  assert.equal(lookAt(plan, 'sizes', { entry: 'none', written: [] }), 'nowhere');
});
