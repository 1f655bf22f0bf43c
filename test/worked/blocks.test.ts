// Twenty-nine traditional drawings: they tile, and they have a straight order of sewing or they say that they have none.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { planQuilt } from '#craft';
import { only, planned, quilt, rails, rectangle, setOf } from '../documents/documents.ts';
import { drawnBlock, drawnBlocks } from '../documents/drawn.ts';

const planOf = (id: string) => planned(quilt({ ruler: '1/64', blocks: [drawnBlock(id, 12)], top: setOf(id) }));

/** Patches and whether straight seams suffice: chord test on the drawing by hand, apart from this program. */
const structures = {
  sawtooth_star: [17, 'straight'],
  log_cabin: [13, 'straight'],
  attic_window: [3, 'set-in'],
  lemoyne_star: [16, 'set-in'],
  pineapple: [41, 'straight'],
  flying_geese: [6, 'straight'],
  churn_dash: [17, 'straight'],
  spool: [5, 'set-in'],
  economy_patch: [9, 'straight'],
  bears_paw: [45, 'straight'],
  snails_trail: [20, 'straight'],
} as const;

for (const [id, [patches, joining]] of Object.entries(structures)) {
  test(`${id} has ${patches} patches and ${joining === 'straight' ? 'a' : 'no'} straight order`, () => {
    const block = only(planOf(id).blocks);
    assert.equal(block.patches.length, patches);
    assert.equal(block.joining, joining);
  });
}

test('every drawing tiles and joins in the kind its fixture names, in patches less one seams; set-in ones say so', () => {
  // piecing as it stands in the fixture, derived by the chord test apart from this program
  for (const { id, piecing, patches } of drawnBlocks) {
    const plan = planOf(id);
    const block = only(plan.blocks);
    assert.equal(block.joining, piecing, id);
    const seams = block.steps.reduce((all, step) => all + step.perBlock, 0);
    assert.equal(seams, patches.length - 1, id);
    const told = plan.notes.some((note) => note.code === 'piecing/not-straight');
    assert.equal(told, piecing === 'set-in', id);
  }
});

test('a log cabin that is drawn and not a recipe is found to be one: from its middle, log by log', () => {
  // the drawing of thirteen patches is the same as the recipe of three rounds (by hand)
  const block = only(planOf('log_cabin').blocks);
  assert.ok(
    block.steps.every((step, i) => step.join[0] === (i === 0 ? 'A' : `#${i}`) && !step.join[1].startsWith('#')),
  );
  assert.deepEqual(block.patches.find(({ piece }) => piece === 'A')?.points.length, 4);
});

test('three rails are three patches and two seams', () => {
  const block = only(
    planned(quilt({ blocks: [rails('b', { count: 3, width: 3, height: 1 })], top: setOf('b') })).blocks,
  );
  assert.deepEqual([block.patches.length, block.joining, block.steps.length], [3, 'straight', 2]);
});

test('three squares and a half leave a hole, and the drawing is refused with its place', () => {
  const list = [rectangle(0, 0, 1, 1), rectangle(1, 0, 1, 1), rectangle(0, 1, 1, 1), rectangle(1, 1, 1, 0.5)];
  const block = { id: 'b', size: 2, patches: { grid: [2, 2], list: list.map((points) => ({ points, tone: 'dark' })) } };
  const outcome = planQuilt(quilt({ blocks: [block], top: setOf('b') }));
  assert.ok(!outcome.ok);
  const problem = only(outcome.problems);
  assert.ok(problem.code === 'drafting/gap');
  assert.equal(problem.path, '/blocks/0');
});
