import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type Cutting, countsOf, type Job, lengthOf } from '#craft/strips';
import { chanceFrom } from '#ground/chance';
import { openLayoutSearch } from './open.ts';

/** Sizes as a quilter has them, in eighths of an inch on 42 in of cloth. */
const jobOf = (seed: number, kinds: number): Job => {
  const chance = chanceFrom(seed);
  const size = () => 12 + 4 * Math.floor(chance() * 16);
  return {
    width: 336,
    kinds: Array.from({ length: kinds }, () => ({
      width: size(),
      height: size(),
      count: 1 + Math.floor(chance() * 20),
      mayTurn: false,
    })),
  };
};

const flat: Cutting = { stages: 2 };
const stacked: Cutting = { stages: 3, stripHeights: 'any' };
const opened = (job: Job, cutting: Cutting) => openLayoutSearch({ job, cutting, shop: null, solver: null });

test('a search holds a whole layout from the beginning, and never a longer one or a lower bound afterwards', () => {
  for (let seed = 1; seed <= 6; seed++) {
    for (const cutting of [flat, stacked]) {
      const job = jobOf(seed, 8);
      const search = opened(job, cutting);
      let before = search.found();
      for (let n = 0; n < 12 && !search.isDone(); n++) {
        search.advance(1);
        const { strips, length, bound } = search.found();
        assert.equal(lengthOf(strips), length);
        const made = job.kinds.map((_, i) =>
          strips.reduce((sum, s) => sum + s.times * (countsOf(s.pattern, job.kinds.length)[i] ?? 0), 0),
        );
        assert.ok(job.kinds.every(({ count }, i) => (made[i] ?? 0) >= count));
        assert.ok(length <= before.length && bound >= before.bound && bound <= length);
        before = search.found();
      }
    }
  }
});

test('three stages never take more cloth than two, step for step', () => {
  for (let seed = 11; seed <= 16; seed++) {
    const job = jobOf(seed, 10);
    const [two, three] = [opened(job, flat), opened(job, stacked)];
    two.advance(8);
    // one step in six of the search for three stages is one of that for two
    three.advance(48);
    assert.ok(three.found().length <= two.found().length);
  }
});

test('the same job and the same number of steps give the same strips', () => {
  const run = () => {
    const search = opened(jobOf(21, 12), stacked);
    search.advance(10);
    return search.found();
  };
  assert.deepEqual(run(), run());
});

test('two pieces that fit side by side are proven to take one strip', () => {
  // by hand: 5 + 5 on 10, the higher is 4
  const kinds = [
    { width: 5, height: 4, count: 1, mayTurn: false },
    { width: 5, height: 3, count: 1, mayTurn: false },
  ];
  const search = opened({ width: 10, kinds }, flat);
  search.advance(3);
  assert.deepEqual([search.found().length, search.found().bound, search.isDone()], [4, 4, true]);
});
