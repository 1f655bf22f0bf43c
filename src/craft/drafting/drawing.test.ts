import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Clipper, FillRule, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import type { DrawingDesign } from '#craft/design';
import { add, compare, fromDecimal, mul, type Rational, rational, sub, sum, zero } from '#ground/exact';
import { drawingDraft } from './drawing.ts';
import type { ExactCorner } from './exact-draft.ts';
import { areaOfRing, facesOf } from './net-faces.ts';
import { type NetCorner, type SeamNet, seamNet } from './seam-net.ts';

type Pair = readonly [number, number];

const corner = ([x, y]: Pair): ExactCorner => [fromDecimal(x), fromDecimal(y)];

const drawn = (of: {
  readonly grid: Pair;
  readonly seams: readonly (readonly Pair[])[];
  readonly tones: readonly Pair[];
  readonly size?: Pair;
}) => {
  const shape: DrawingDesign = {
    kind: 'drawing',
    size: corner(of.size ?? of.grid),
    grid: corner(of.grid),
    seams: of.seams.map((seam) => ({ corners: seam.map(corner) })),
    tonesAt: of.tones.map((at, i) => ({ at: corner(at), tone: `t${i}` })),
  };
  return drawingDraft({ shape, block: 'b', path: '/blocks/0' });
};

const twice = (corners: readonly ExactCorner[]): Rational =>
  sum(
    corners.map(([x, y], i) => {
      const [x2, y2] = corners[(i + 1) % corners.length] as ExactCorner;
      return sub(mul(x, y2), mul(x2, y));
    }),
  );

/** Exact areas by tone. */
const areasOf = (draft: ReturnType<typeof drawn>): Readonly<Record<string, string>> => {
  assert.ok(draft.ok, draft.ok ? '' : JSON.stringify(draft.problems));
  return Object.fromEntries(
    draft.value.patches.map(({ tone, corners }) => [tone, mul(twice(corners), rational(1, 2)).toFraction()]),
  );
};

const codes = (draft: ReturnType<typeof drawn>): readonly string[] => {
  assert.ok(!draft.ok);
  return draft.problems.map(({ code, path }) => `${code} ${path}`);
};

test('seams that cross and end on each other make patches of exact area', () => {
  // by hand: a rail of 8 × 2 above, and below it an upright at 2 with a level seam to its right at 5
  const rails = drawn({
    grid: [8, 8],
    seams: [
      [
        [0, 2],
        [8, 2],
      ],
      [
        [2, 2],
        [2, 8],
      ],
      [
        [2, 5],
        [8, 5],
      ],
    ],
    tones: [
      [1, 1],
      [1, 5],
      [4, 4],
      [4, 7],
    ],
  });
  assert.deepEqual(areasOf(rails), { t0: '16', t1: '12', t2: '18', t3: '18' });
});

test('a crossing that no double holds is exact', () => {
  // by hand: from (0,0) to (3,2) and from (0,1) to (3,0) cross at (1, 2/3)
  const crossed = drawn({
    grid: [3, 3],
    seams: [
      [
        [0, 0],
        [3, 2],
      ],
      [
        [0, 1],
        [3, 0],
      ],
    ],
    tones: [
      [1.5, 0.25],
      [0.2, 0.5],
      [2.5, 0.9],
      [1.5, 2.5],
    ],
  });
  // by hand: (0,0), (3,0), (1,2/3) has half of 3 · 2/3; (0,0), (1,2/3), (0,1) half of 1 · 1; (3,0), (3,2), (1,2/3) half
  // of 2 · 2; what is left of 9 is 5 1/2
  assert.deepEqual(areasOf(crossed), { t0: '1', t1: '1/2', t2: '2', t3: '11/2' });
});

test('a bent seam stays bent, and a seam along the edge of the block or twice along one line changes nothing', () => {
  const bent = drawn({
    grid: [4, 4],
    seams: [
      [
        [0, 2],
        [2, 2],
        [2, 4],
      ],
      [
        [0, 0],
        [4, 0],
      ],
      [
        [0, 2],
        [1, 2],
      ],
    ],
    tones: [
      [1, 1],
      [1, 3],
    ],
  });
  assert.deepEqual(areasOf(bent), { t0: '12', t1: '4' });
});

test('seams that miss by a ten-millionth of the block are mended: they end on the seam that was meant', () => {
  const miss = 8e-7;
  const mended = drawn({
    grid: [8, 8],
    seams: [
      [
        [0, 2],
        [8 - miss, 2 + miss],
      ],
      [
        [4, 2 + miss],
        [4 - miss, 8],
      ],
      [
        [4, 2 - miss],
        [4, miss],
      ],
    ],
    tones: [
      [1, 1],
      [5, 1],
      [1, 5],
      [5, 5],
    ],
  });
  assert.ok(mended.ok);
  for (const [i, area] of [8, 8, 24, 24].entries()) {
    const patch = mended.value.patches.find(({ tone }) => tone === `t${i}`);
    assert.ok(patch && Math.abs(twice(patch.corners).valueOf() / 2 - area) < 1e-4);
  }
});

test('a seam that misses by a hundred-thousandth of the block is a loose end', () => {
  const miss = 8e-5;
  const loose = drawn({
    grid: [8, 8],
    seams: [
      [
        [0, 2],
        [8, 2],
      ],
      [
        [4, 2 + miss],
        [4, 8],
      ],
    ],
    tones: [[1, 1]],
  });
  assert.deepEqual(codes(loose), ['drafting/seam-ends-inside /blocks/0/drawing/seams/1/0']);
});

test('a loose end is told at the point that the document names', () => {
  const loose = drawn({
    grid: [8, 8],
    seams: [
      [
        [1, 1],
        [4, 4],
        [6, 4],
      ],
    ],
    tones: [[7, 7]],
  });
  assert.deepEqual(codes(loose), [
    'drafting/seam-ends-inside /blocks/0/drawing/seams/0/0',
    'drafting/seam-ends-inside /blocks/0/drawing/seams/0/2',
  ]);
});

const pond: readonly Pair[] = [
  [3, 3],
  [5, 3],
  [5, 5],
  [3, 5],
  [3, 3],
];

test('a patch in a patch is refused, floating, on one seam, or hung on a corner', () => {
  const tones: readonly Pair[] = [
    [4, 4],
    [1, 1],
  ];
  const hung: readonly Pair[] = [
    [0, 0],
    [3, 1],
    [1, 3],
    [0, 0],
  ];
  const bridge: readonly Pair[] = [
    [0, 3],
    [3, 3],
  ];
  for (const seams of [[pond], [pond, bridge], [hung]]) {
    assert.match(
      codes(drawn({ grid: [8, 8], seams, tones }))[0] ?? '',
      /^drafting\/patch-round-patch \/blocks\/0\/drawing\/seams\/[01]$/,
    );
  }
  const second: readonly Pair[] = [
    [5, 5],
    [8, 5],
  ];
  assert.deepEqual(areasOf(drawn({ grid: [8, 8], seams: [pond, bridge, second], tones: [...tones, [7, 7]] })), {
    t0: '4',
    // by hand: 3 rows of 8 above, and 2 rows of 3 at the right of the pond
    t1: '30',
    t2: '30',
  });
});

test('a place on a seam, two places in one patch and a patch without a place are told together', () => {
  const halves = drawn({
    grid: [8, 8],
    seams: [
      [
        [0, 2],
        [8, 2],
      ],
    ],
    tones: [
      [1, 1],
      [2, 1],
      [3, 2],
      [0, 1],
    ],
  });
  assert.deepEqual(codes(halves), [
    'drafting/two-tones /blocks/0/drawing/tonesAt/1/at',
    'drafting/tone-on-seam /blocks/0/drawing/tonesAt/2/at',
    'drafting/tone-on-seam /blocks/0/drawing/tonesAt/3/at',
    'drafting/patch-without-tone /blocks/0/drawing/tonesAt',
  ]);
});

test('a drawing of very many crossings is refused before they are all looked at', () => {
  const seams: readonly (readonly Pair[])[] = Array.from({ length: 100 }, (_, i) => [
    [
      [0, i + 1],
      [101, i + 1],
    ] as const,
    [
      [i + 1, 0],
      [i + 1, 101],
    ] as const,
  ]).flat();
  assert.deepEqual(codes(drawn({ grid: [101, 101], seams, tones: [[0.5, 0.5]] })), [
    'drafting/too-many-patches /blocks/0/drawing/seams',
  ]);
});

const side = 24;

/** A whole place on the block's edge, counted round it. */
const onEdge = (n: number): Pair => {
  const along = n % side;
  return (
    [
      [along, 0],
      [side, along],
      [side - along, side],
      [0, side - along],
    ] as const
  )[Math.floor(n / side)] as Pair;
};

const chord = fc
  .tuple(fc.nat(4 * side - 1), fc.nat(4 * side - 1))
  .map(([a, b]) => [onEdge(a), onEdge(b)] as const)
  .filter(([a, b]) => a[0] !== b[0] && a[1] !== b[1]);

const netOf = (seams: readonly (readonly Pair[])[], slack: number): SeamNet => {
  const runs = seams.map((points, i) => ({ points: points.map(corner), path: `${i}` }));
  const net = seamNet({ size: corner([side, side]), runs, slack, most: 2000 });
  assert.ok(net);
  return net;
};

/** Both halves of every polygon, by a general-purpose library. */
const cutBy = (polygons: PathsD, [a, b]: readonly [Pair, Pair]): PathsD => {
  const far = 10 * side;
  const [dx, dy] = [(b[0] - a[0]) * far, (b[1] - a[1]) * far];
  return [1, -1].flatMap((hand) => {
    const half = [
      { x: a[0] - dx, y: a[1] - dy },
      { x: a[0] + dx, y: a[1] + dy },
      { x: a[0] + dx - hand * dy, y: a[1] + dy + hand * dx },
      { x: a[0] - dx - hand * dy, y: a[1] - dy + hand * dx },
    ];
    return polygons.flatMap((polygon) => Clipper.intersectD([polygon], [half], FillRule.NonZero, 8));
  });
};

test('on 2,000 random drawings the patches are those that a general-purpose library cuts, and their areas add up exactly', () => {
  fc.assert(
    fc.property(fc.array(chord, { minLength: 1, maxLength: 6 }), (chords) => {
      const net = netOf(chords, side * 1e-6);
      const { faces, looseEnds, closedIn } = facesOf(net);
      assert.deepEqual([looseEnds, closedIn], [[], []]);
      const exact = faces.map((ring) => twice(ring.corners.map((index) => (net.corners[index] as NetCorner).exact)));
      assert.equal(compare(sum(exact), rational(2 * side * side)), 0);
      const whole: PathsD = [
        [
          { x: 0, y: 0 },
          { x: side, y: 0 },
          { x: side, y: side },
          { x: 0, y: side },
        ],
      ];
      const expected = chords
        .reduce(cutBy, whole)
        .map((polygon) => Math.abs(Clipper.areaD(polygon)))
        // slivers below the library's own rounding
        .filter((area) => area > 1e-5)
        .sort((a, b) => a - b);
      const found = faces.map((ring) => areaOfRing(ring, net.corners)).sort((a, b) => a - b);
      assert.equal(found.length, expected.length);
      found.forEach((area, i) => {
        assert.ok(Math.abs(area - (expected[i] as number)) < 1e-4, `${area} and ${expected[i]}`);
      });
    }),
    { seed: 301, numRuns: 2000 },
  );
});

interface Split {
  readonly patch: number;
  readonly edges: Pair;
  readonly shares: Pair;
}

const split: fc.Arbitrary<Split> = fc.record({
  patch: fc.nat(),
  edges: fc.tuple(fc.nat(), fc.nat()),
  shares: fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 })),
});

const between = (a: ExactCorner, b: ExactCorner, sevenths: number): ExactCorner =>
  [0, 1].map((i) => {
    const [from, to] = [a[i] as Rational, b[i] as Rational];
    return add(from, mul(sub(to, from), rational(sevenths, 7)));
  }) as unknown as ExactCorner;

test('a block divided patch by patch, each by one seam from edge to edge, gives those patches, and any order of listing the same', () => {
  fc.assert(
    fc.property(fc.array(split, { minLength: 1, maxLength: 7 }), fc.boolean(), (splits, backwards) => {
      const full = rational(side);
      let patches: (readonly ExactCorner[])[] = [
        [
          [zero, zero],
          [full, zero],
          [full, full],
          [zero, full],
        ],
      ];
      const seams = splits.map(({ patch, edges, shares }) => {
        const at = patch % patches.length;
        const outline = patches[at] as readonly ExactCorner[];
        const n = outline.length;
        const i = edges[0] % n;
        const j = (i + 1 + (edges[1] % (n - 1))) % n;
        const [low, high] = i < j ? [i, j] : [j, i];
        const p = between(outline[low] as ExactCorner, outline[(low + 1) % n] as ExactCorner, shares[0]);
        const q = between(outline[high] as ExactCorner, outline[(high + 1) % n] as ExactCorner, shares[1]);
        const one = [p, ...outline.slice(low + 1, high + 1), q];
        const other = [q, ...outline.slice(high + 1), ...outline.slice(0, low + 1), p];
        patches = [...patches.slice(0, at), one, other, ...patches.slice(at + 1)];
        return [p, q];
      });
      // corners that the tolerance would make one are no fair question
      const smallest = Math.min(...patches.map((outline) => twice(outline).valueOf()));
      fc.pre(smallest > 1e-2);
      const middles = patches.map((outline): ExactCorner => {
        const count = rational(outline.length);
        return [0, 1].map((i) => sum(outline.map((c) => c[i] as Rational)).div(count)) as unknown as ExactCorner;
      });
      const shape: DrawingDesign = {
        kind: 'drawing',
        size: [full, full],
        grid: [full, full],
        seams: (backwards ? seams.toReversed() : seams).map((corners) => ({ corners })),
        tonesAt: middles.map((at, i) => ({ at, tone: `t${i}` })),
      };
      const draft = drawingDraft({ shape, block: 'b', path: '/blocks/0' });
      const areas = patches.map((outline, i) => [`t${i}`, mul(twice(outline), rational(1, 2)).toFraction()]);
      assert.deepEqual(areasOf(draft), Object.fromEntries(areas));
    }),
    { seed: 302, numRuns: 300 },
  );
});
