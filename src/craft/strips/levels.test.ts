import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Job } from './job.ts';
import { type LevelRule, levelsFor, ownStripsFor } from './levels.ts';
import { countsOf, lengthOf } from './pattern.ts';

const piece = (width: number, height: number, count: number) => ({ width, height, count, mayTurn: false });

/** The textbook heuristic, piece by piece. */
const plainly = (job: Job, rule: LevelRule): number => {
  const pieces = job.kinds
    .flatMap((k) => Array.from({ length: k.count }, () => k))
    .sort((a, b) => b.height - a.height || b.width - a.width);
  const levels: { room: number; height: number }[] = [];
  for (const p of pieces) {
    const open = levels.filter((l, i) => l.room >= p.width && (rule !== 'next-fit' || i === levels.length - 1));
    const best = rule === 'best-fit' ? [...open].sort((a, b) => a.room - b.room)[0] : open[0];
    if (best !== undefined) best.room -= p.width;
    else levels.push({ room: job.width - p.width, height: p.height });
  }
  return levels.reduce((all, l) => all + l.height, 0);
};

test('next fit, first fit and best fit on a case worked by hand', () => {
  // derived by hand, width 10: 6 | 7 | 3 | 4. Next fit: [6] [7 3] [4]; first fit: [6 3] [7] [4]: 4 opens a third;
  // best fit: [6] [7 3], then 4 beside 6
  const job = { width: 10, kinds: [piece(6, 9, 1), piece(7, 8, 1), piece(3, 7, 1), piece(4, 6, 1)] };
  const lengths = (['next-fit', 'first-fit', 'best-fit'] as const).map((rule) =>
    lengthOf(levelsFor(job, { rule, lie: 'across', piling: 'single' })),
  );
  assert.deepEqual(lengths, [9 + 8 + 6, 9 + 8 + 6, 9 + 8]);
});

test('by counts the level heuristics come to the lengths of the textbook, piece by piece', () => {
  const kind = fc.record({
    width: fc.integer({ min: 1, max: 20 }),
    height: fc.integer({ min: 1, max: 20 }),
    count: fc.integer({ min: 1, max: 20 }),
    mayTurn: fc.constant(false),
  });
  fc.assert(
    fc.property(
      fc.integer({ min: 20, max: 70 }),
      fc.array(kind, { minLength: 1, maxLength: 8 }),
      fc.constantFrom<LevelRule>('next-fit', 'first-fit', 'best-fit'),
      (width, listed, rule) => {
        const sizes = new Set<string>();
        const kinds = listed.filter((k) => {
          const key = `${k.width} ${k.height}`;
          if (sizes.has(key)) return false;
          sizes.add(key);
          return true;
        });
        const job = { width, kinds };
        const strips = levelsFor(job, { rule, lie: 'across', piling: 'single' });
        assert.equal(lengthOf(strips), plainly(job, rule));
        const counts = kinds.map((_, i) =>
          strips.reduce((n, s) => n + s.times * (countsOf(s.pattern, kinds.length)[i] ?? 0), 0),
        );
        assert.deepEqual(
          counts,
          kinds.map((k) => k.count),
        );
      },
    ),
    { seed: 61, numRuns: 500 },
  );
});

test('each kind on strips of its own takes whole strips', () => {
  // derived by hand: 3 to a strip of 10, 7 pieces: 3 strips of 4; 2 strips of 6 for three pieces of width 5
  assert.equal(lengthOf(ownStripsFor({ width: 10, kinds: [piece(5, 6, 3), piece(3, 4, 7)] })), 3 * 4 + 2 * 6);
});
