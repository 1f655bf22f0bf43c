// Reading instances: what is right is kept, everything that is wrong is told with its place.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';
import { type Instance, jobFor, parseInstance, problemFor } from './index.ts';

const small = {
  name: 'small',
  W: 10,
  items: [
    [4, 3, 2],
    [3, 4, 1],
    [12, 2, 1],
  ],
  sheets: [{ id: 'q', w: 10, h: 8, count: 2 }],
  bestKnown: [
    { problem: 'strip2-r', kind: 'strip', stages: 2, rotation: true, trim: true, best: 9 },
    { problem: 'exact', kind: 'strip', stages: 2, trim: false },
    { problem: 'deep', kind: 'strip', stages: 4 },
    { problem: 'upright', kind: 'strip', stages: 3, firstCut: 'along' },
    { problem: 'on-side', kind: 'sheets', stages: 2, firstCut: 'along' },
  ],
};

const read = (written: unknown): Instance => {
  const outcome = parseInstance(JSON.stringify(written));
  assert.ok(outcome.ok);
  return outcome.value;
};

const codesOf = (written: unknown): readonly string[] => {
  const outcome = parseInstance(typeof written === 'string' ? written : JSON.stringify(written));
  assert.ok(!outcome.ok);
  return outcome.problems.map(({ path, code }) => `${path} ${code.slice('instance/'.length)}`);
};

test('every reference problem is read, with each of its problems', () => {
  const files = readdirSync('bench/instances').filter((file) => file.endsWith('.json'));
  assert.equal(files.length, 27); // counted by hand when they were carried over
  for (const file of files) {
    const outcome = parseInstance(readFileSync(`bench/instances/${file}`, 'utf8'));
    assert.ok(outcome.ok, file);
    for (const { id } of outcome.value.problems) {
      const problem = problemFor(outcome.value, id);
      assert.ok(problem.ok, `${file} ${id}`);
      const cut = jobFor(outcome.value, problem.value);
      assert.ok(cut.ok, `${file} ${id}`);
      const pieces: number = outcome.value.items.reduce((sum, { count }) => sum + count, 0);
      assert.equal(
        cut.value.job.kinds.reduce((sum, { count }) => sum + count, 0),
        pieces,
      );
    }
  }
});

test('every fault is told with its place', () => {
  assert.deepEqual(codesOf('{"name": "x", '), ['/name not-json']);
  assert.deepEqual(codesOf([]), [' wrong-type']);
  assert.deepEqual(codesOf({}), ['/items missing-key', '/W missing-key', '/name missing-key']);
  assert.deepEqual(codesOf({ ...small, W: '10' }), ['/W wrong-type']);
  assert.deepEqual(codesOf({ ...small, items: [] }), ['/items no-items']);
  assert.deepEqual(codesOf({ ...small, rotation: 'yes', items: [[4, 3], [0, 3, 1], [4, 3.5, 1], 7] }), [
    '/rotation wrong-type',
    '/items/0 wrong-type',
    '/items/1/0 out-of-range',
    '/items/2/1 wrong-type',
    '/items/3 wrong-type',
  ]);
  assert.deepEqual(
    codesOf({
      ...small,
      sheets: [
        { id: 'q', w: 10, h: 8, cost: -1 },
        { id: 'q', w: 1, h: 1 },
      ],
    }),
    ['/sheets/0/cost out-of-range', '/sheets/1/id id-twice'],
  );
  assert.deepEqual(codesOf({ ...small, bestKnown: [{ kind: 'roll', stages: 'two' }] }), [
    '/bestKnown/0/problem missing-key',
    '/bestKnown/0/stages wrong-type',
    '/bestKnown/0/kind not-one-of',
  ]);
  assert.deepEqual(codesOf('{"name": "x", "name": "y"}'), ['/name key-twice']);
  assert.deepEqual(codesOf('['.repeat(30)), ['/0/0/0/0/0/0/0/0 too-deep']);
});

test('a problem is the first listed unless named; its own fields rule, else its name', () => {
  const instance = read(small);
  const idOf = (id: string | null) => {
    const outcome = problemFor(instance, id);
    return outcome.ok ? outcome.value : outcome.problems.map(({ code }) => code);
  };
  const listed = idOf(null);
  assert.ok(!Array.isArray(listed));
  assert.deepEqual(listed, {
    id: 'strip2-r',
    kind: 'strip',
    cutting: { stages: 2 },
    firstCut: 'across',
    rotation: true,
    packing: 'staged',
    best: 9,
  });
  assert.deepEqual((idOf('strip3r-o') as { cutting: unknown }).cutting, { stages: 3, stripHeights: 'piece' });
  assert.equal((idOf('strip-any-o') as { packing: unknown }).packing, 'any');
  assert.deepEqual(idOf('exact'), ['instance/untrimmed']);
  assert.deepEqual(idOf('deep'), ['instance/stages']);
  assert.deepEqual(idOf('upright'), ['instance/cut-along-first']);
  assert.deepEqual(idOf('strip2'), ['instance/unknown-problem']);
  const bare = read({ name: 'bare', W: 10, items: [[4, 3, 2]], rotation: true });
  const usual = problemFor(bare, null);
  assert.ok(usual.ok);
  assert.equal(usual.value.id, 'strip2-r');
  assert.ok(!problemFor(bare, 'sheets2-o').ok);
});

test('equal pieces are one kind when they may turn, and a piece too wide to lie as written lies turned', () => {
  const instance = read(small);
  const problem = problemFor(instance, 'strip2-r');
  assert.ok(problem.ok);
  const cut = jobFor(instance, problem.value);
  assert.ok(cut.ok);
  // derived by hand: 4 × 3 and 3 × 4 are one kind standing on its short side; 12 × 2 fits cloth of 10 only turned
  assert.deepEqual(cut.value.job.kinds, [
    { width: 3, height: 4, count: 3, mayTurn: true },
    { width: 2, height: 12, count: 1, mayTurn: false },
  ]);
  assert.deepEqual(cut.value.shares[0], [
    { item: 0, count: 2, turned: true },
    { item: 1, count: 1, turned: false },
  ]);
  const fixed = problemFor(instance, 'strip2-o');
  assert.ok(fixed.ok);
  const refusal = jobFor(instance, fixed.value);
  assert.ok(!refusal.ok);
  assert.deepEqual(refusal.problems, [
    { code: 'instance/too-large', path: '/items/2', size: [12, 2], mayTurn: false, cloth: 10 },
  ]);
});
