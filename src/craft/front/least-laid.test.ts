// A slow twin: every choice laid out, each cloth's pieces exactly.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import fc from 'fast-check';
import type { ClothNature } from '#craft/cutting';
import { fewPieces } from '#craft/few-pieces';
import { length } from '#craft/measure';
import { type LaidTask, type LeastLaid, leastLaid } from './least-laid.ts';
import { everyChoice } from './likely.ts';
import { type CutCounts, type CutLine, piecesIn } from './lines.ts';
import { worthLaying } from './worth-laying.ts';

const width = 12;

/** Two cloths; squares that give one, two or four, and rectangles that may turn or not. */
const lines: fc.Arbitrary<ReadonlyMap<string, CutLine>> = fc
  .array(
    fc.record({
      fabric: fc.constantFrom('red', 'blue'),
      across: fc.integer({ min: 2, max: 9 }),
      along: fc.integer({ min: 2, max: 9 }),
      mayTurn: fc.boolean(),
      gives: fc.constantFrom(1, 1, 2, 4),
    }),
    { minLength: 2, maxLength: 5 },
  )
  .map(
    (list) =>
      new Map(
        list.map(({ across, along, ...line }, i) => {
          const high = line.gives > 1 ? across : along;
          return [
            `${i}`,
            { ...line, size: [length(across), length(high)], nests: false, area: across * high },
          ] as const;
        }),
      ),
  );

const countsOf = (keys: readonly string[]): fc.Arbitrary<CutCounts> =>
  fc
    .array(fc.tuple(fc.constantFrom(...keys), fc.nat(3), fc.nat(1)), { maxLength: 2 })
    .map((list) => new Map(list.map(([key, patches, pieces]) => [key, { patches, pieces }])));

type Counts = LaidTask['counts'];

const counted: fc.Arbitrary<Counts> = lines.chain((lines) => {
  const own = countsOf([...lines.keys()]);
  return fc.record({
    lines: fc.constant(lines),
    options: fc.array(fc.array(own, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 3 }),
    fixed: fc.array(own, { minLength: 1, maxLength: 2 }),
  });
});

const choicesOf = ({ options }: Counts) => everyChoice(options.map((list) => [...list.keys()]));

/** Of one choice, with what is cut anyway: all pieces of each cloth laid exactly; null where they are too many for that. */
const exactly = ({ lines, options, fixed }: Counts, choice: readonly number[], lies: number): number | null => {
  const all = [fixed[lies] as CutCounts, ...choice.map((option, part) => options[part]?.[option] as CutCounts)];
  const lengths = ['red', 'blue'].map((fabric) => {
    const kinds = [...lines].flatMap(([key, line]) => {
      const sum = (of: 'patches' | 'pieces'): number => all.reduce((n, counts) => n + (counts.get(key)?.[of] ?? 0), 0);
      const count = line.fabric === fabric ? piecesIn({ patches: sum('patches'), pieces: sum('pieces') }, line) : 0;
      const [a, b] = line.size;
      const [across, along] = line.mayTurn && a > b ? [b, a] : [a, b];
      return count === 0 ? [] : [{ width: across, height: along, count, mayTurn: line.mayTurn && a !== b }];
    });
    if (kinds.length === 0) return 0;
    return fewPieces({ job: { width, kinds }, cutting: { stages: 3, stripHeights: 'any' } })?.length ?? null;
  });
  return lengths.some((one) => one === null) ? null : lengths.reduce<number>((sum, one) => sum + (one ?? 0), 0);
};

/** By choice the least over all ways in which the borders may lie; null where some is too large to tell. */
const everyLength = (counts: Counts): ReadonlyMap<string, number> | null => {
  const found = new Map<string, number>();
  for (const choice of choicesOf(counts)) {
    const lengths = counts.fixed.map((_, lies) => exactly(counts, choice, lies));
    if (lengths.some((one) => one === null)) return null;
    found.set(choice.join(), Math.min(...(lengths as readonly number[])));
  }
  return found;
};

const nature = { width, print: 'none', length: null } as unknown as ClothNature;
const natures = new Map([
  ['red', nature],
  ['blue', nature],
]);

/** Ways listed later are sewn in less time. */
const taskOf = (counts: Counts): LaidTask => ({
  plan: { quilt: { fabrics: [] } } as unknown as LaidTask['plan'],
  natures,
  counts,
  parts: {
    parts: counts.options.map((list, part) => ({
      groups: [part],
      options: list.map((_, option) => ({ choice: [option], minutes: -option, pieces: [] })),
    })),
    minutes: 0,
    pieces: [],
  },
});

const laidOn = (counts: Counts): { readonly bounds: readonly number[]; readonly last: LeastLaid } => {
  const bounds: number[] = [];
  const search = leastLaid(taskOf(counts));
  for (let at = search.next(); ; at = search.next()) {
    bounds.push(at.value.bound);
    if (at.done) return { bounds, last: at.value };
  }
};

const seeded = { seed: 11, numRuns: 250 };

describe('the choices that are worth laying out', () => {
  test('one of them takes as little cloth as any choice does, of every choice laid out exactly', () => {
    let fewer = 0;
    fc.assert(
      fc.property(counted, (counts) => {
        const all = everyLength(counts);
        if (all === null) return;
        const worth = worthLaying(counts);
        const kept = [...all].filter(([choice]) =>
          choice.split(',').every((option, part) => worth[part]?.includes(Number(option))),
        );
        fewer += all.size - kept.length;
        assert.equal(Math.min(...kept.map(([, long]) => long)), Math.min(...all.values()));
      }),
      seeded,
    );
    assert.ok(fewer > 500, `${fewer} choices were left out in all`);
  });

  const square = (side: number, gives: number) =>
    [
      `${side}`,
      { fabric: 'red', size: [length(side), length(side)], mayTurn: false, gives, nests: false, area: side * side },
    ] as const;
  const only = (line: string, patches: number, pieces = 0): CutCounts => new Map([[line, { patches, pieces }]]);

  // by hand: 4 7/8 twice is 9 3/4, but a stack has no second piece beside the first
  test('two small squares have room in one large one, one below the other; three have not', () => {
    const counts = (patches: number): Counts => ({
      lines: new Map([square(4.875, 2), square(9.75, 8)]),
      options: [[only('9.75', 0, 1), only('4.875', patches)]],
      fixed: [new Map()],
    });
    assert.deepEqual(worthLaying(counts(4)), [[1]]);
    assert.deepEqual(worthLaying(counts(6)), [[0, 1]]);
  });

  test('room is taken once: squares of 4 and of 3 have none in one of 6, though either alone has', () => {
    const counts = (both: CutCounts): Counts => ({
      lines: new Map([square(6, 1), square(4, 1), square(3, 1)]),
      options: [[only('6', 1), both]],
      fixed: [new Map()],
    });
    assert.deepEqual(worthLaying(counts(new Map([...only('4', 1), ...only('3', 1)]))), [[0, 1]]);
    assert.deepEqual(worthLaying(counts(only('3', 2))), [[1]]);
  });

  // by hand, two triangles of a square: with two small and one large of the other part the large way takes 1 + 1 squares, the small one 2 + 1
  test('where another part may share a square, what is smaller is not taken for less', () => {
    const lines = new Map([square(4, 2), square(5, 2)]);
    const own = [only('4', 1), only('5', 1)];
    const others = [new Map([...only('4', 2), ...only('5', 1)])];
    assert.deepEqual(worthLaying({ lines, options: [own, others], fixed: [new Map()] }), [[0, 1], [0]]);
    assert.deepEqual(worthLaying({ lines, options: [own, [new Map()]], fixed: [new Map()] }), [[0], [0]]);
  });

  test('no bound on the way is above what some choice takes, none sinks, and the last is the least where all is laid exactly', () => {
    fc.assert(
      fc.property(counted, (counts) => {
        const all = everyLength(counts);
        if (all === null) return;
        const least = Math.min(...all.values());
        const { bounds, last } = laidOn(counts);
        bounds.forEach((bound, i) => {
          assert.ok(bound <= least + 1e-9 && bound >= (bounds[i - 1] ?? 0) - 1e-9, `${bound}, ${least} the least`);
        });
        assert.ok(Math.abs(last.bound - least) < 1e-9, `${last.bound} at the end, ${least} the least`);
        const [choice] = last.least(1);
        assert.ok(choice !== undefined && Math.abs((all.get(choice.join()) ?? 0) - least) < 1e-9);
      }),
      seeded,
    );
  });

  test('of choices that ask for the same cloth the one that is sewn in the least time is told', () => {
    const same: CutCounts = new Map([['0', { patches: 2, pieces: 0 }]]);
    const more: CutCounts = new Map([['0', { patches: 9, pieces: 0 }]]);
    const line = {
      fabric: 'red',
      size: [length(5), length(5)] as const,
      mayTurn: false,
      gives: 1,
      nests: false,
      area: 25,
    };
    const { last } = laidOn({ lines: new Map([['0', line]]), options: [[same, same, more]], fixed: [new Map()] });
    assert.deepEqual(last.least(3), [[1]]);
  });
});
