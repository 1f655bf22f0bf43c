// Pieces cut round the motifs of a print: rows and lengths counted by hand.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { planQuilt, type QuiltPlan } from '#craft';
import { type Demand, planLayout, planOnMotifs } from '#craft/cutting';
import { length } from '#craft/measure';
import { type Cupboard, clothFits, purchaseChanges } from '#craft/shopping';
import { noteText, problemText } from '#paper/words';
import { only, plainBlock, planned, quilt, setOf, type Written } from '../documents/documents.ts';

/** So many squares cut 3 in, each round a motif of this repeat, on cloth 20 in wide. */
const squares = (count: number, repeat: Written, more: Written = {}): Written =>
  quilt({
    fabrics: [{ id: 'dark', colour: '#4a3023', usableWidth: 20, repeat }],
    blocks: [{ ...plainBlock('square', 2.5, 2.5), motifs: ['dark'] }],
    top: setOf('square', { across: count }),
    ...more,
  });

const middlesOf = (plan: QuiltPlan): readonly (readonly [number, number])[] =>
  only(plan.fabrics).laid.layout.strips.flatMap((strip) =>
    strip.parts.flatMap((part) =>
      part.pieces.map(({ at, cut }) => [part.at + cut[0] / 2, strip.at + at + cut[1] / 2] as const),
    ),
  );

test('every piece lies with its middle on a motif, row after row of them', () => {
  // by hand: motifs at 2, 6, 10, 14, 18 in across and 3, 9 in along: five squares of 3 in a row (18 + 1 1/2 is within 20), seven
  // are two rows; the second ends at 9 + 1 1/2
  const plan = planned(squares(7, { along: '6', across: '4', motif: ['2', '3'] }));
  assert.deepEqual(middlesOf(plan), [
    [2, 3],
    [6, 3],
    [10, 3],
    [14, 3],
    [18, 3],
    [2, 9],
    [6, 9],
  ]);
  const { laid, buy, motifs, directions } = only(plan.fabrics);
  // what falls off between them is in no place that could be named
  assert.deepEqual(
    directions.remnants.filter(({ from }) => from !== 'cloth-end'),
    [],
  );
  assert.deepEqual([laid.layout.length, laid.bound], [10.5, 10.5]);
  // by hand: 10 1/2 + 6 of the repeat + 2 of squaring are 18 1/2 in, five steps of 4 1/2
  assert.equal(buy.amount, 0.625);
  // by hand: anywhere, six squares lie in a row of 3 in
  assert.deepEqual(motifs, { pieces: 7, centred: 10.5, anywhere: 6 });
  const note = plan.notes.find(({ code }) => code === 'cutting/on-motifs');
  assert.ok(note);
  assert.match(noteText(note, 'in'), /^7 pieces of “dark” lie with their middle on a motif, and that takes 4½ in more/);
});

test('what is asked of the cloth otherwise, and what is at hand, counts one repeat as the purchase does', () => {
  const plan = planned(squares(7, { along: '6', across: '4', motif: ['2', '3'] }));
  const changes = purchaseChanges({ plan, search: { steps: 2, solver: null } });
  const told = changes.map(({ code, difference }) => [code, difference]);
  // by hand: 10 1/2 + 6 + 2 = 18 1/2 in, 5/8 yd (22 1/2); 5 % more are 19.425, the same; without squaring 16 1/2, 1/2 yd; what
  // lies on a fat quarter's motifs is not known; rows of ten from 22 in on would take 4 1/2 + 6 + 2, 3/8 yd (13 1/2)
  assert.deepEqual(told, [
    ['shopping/usable-width', -0.25],
    ['shopping/usable-width', -0.25],
    ['shopping/straight-ends', -0.125],
  ]);
  const hand = new Map([['dark', { kind: 'length', length: length(18), others: [] }]]) as Cupboard;
  // by hand: 18 in lack half an inch of 18 1/2
  assert.deepEqual(
    clothFits(plan, hand).map(({ needs, lacks }) => [needs, lacks]),
    [[18.5, 0.5]],
  );
});

test('motifs that run across leave pieces side by side', () => {
  // by hand: six squares of 3 in fill a row of 20; seven are two rows at 3 and 9
  const plan = planned(squares(7, { along: '6', motif: ['0', '3'] }));
  assert.deepEqual(
    middlesOf(plan).map(([, y]) => y),
    [3, 3, 3, 3, 3, 3, 9],
  );
});

test('a motif closer to the next than the piece is wide is passed over', () => {
  // by hand: motifs every 2 in from 2: squares of 3 in at 2, 6, 10, 14, 18
  const plan = planned(squares(5, { along: '2', across: '2', motif: ['2', '1'] }));
  assert.deepEqual(middlesOf(plan), [
    [2, 3],
    [6, 3],
    [10, 3],
    [14, 3],
    [18, 3],
  ]);
});

test('other pieces of the cloth lie beside and between the motifs', () => {
  // by hand: two squares of 3 in lie round motifs at 5 and 15 in across, 10 in along, from 8 1/2 to 11 1/2; a strip of 20 × 5 1/2 and
  // one of 15 × 3, too wide for the gaps beside them, fill the 8 1/2 in above
  const document = quilt({
    fabrics: [
      { id: 'dark', colour: '#4a3023', usableWidth: 20, repeat: { along: '12', across: '10', motif: ['5', '10'] } },
    ],
    blocks: [
      { ...plainBlock('square', 2.5, 2.5, 'eye'), motifs: ['eye'], colourings: { default: { eye: 'dark' } } },
      plainBlock('bar', 19.5, 5),
    ],
    top: {
      set: 'sections',
      sections: {
        down: [
          { across: [{ block: 'square' }, { block: 'square' }, { strip: 'dark', width: 14.5 }] },
          { block: 'bar' },
        ],
      },
    },
  });
  const { laid } = only(planned(document).fabrics);
  assert.equal(laid.layout.length, 11.5);
  const counts = laid.layout.strips.flatMap(({ parts }) => parts.flatMap(({ pieces }) => pieces)).length;
  assert.equal(counts, 4);
});

test('a triangle out of a square is refused, and a piece round which no motif has cloth', () => {
  const halves: Written = {
    id: 'square',
    size: 4,
    motifs: ['dark'],
    patches: {
      grid: [1, 1],
      list: [
        {
          points: [
            [0, 0],
            [1, 0],
            [0, 1],
          ],
          tone: 'dark',
        },
        {
          points: [
            [1, 0],
            [1, 1],
            [0, 1],
          ],
          tone: 'light',
        },
      ],
    },
  };
  const repeat = { along: '6', across: '4', motif: ['2', '3'] };
  const triangles = planQuilt(
    quilt({
      fabrics: [
        { id: 'dark', colour: '#4a3023', repeat },
        { id: 'light', colour: '#fff' },
      ],
      blocks: [halves],
      top: setOf('square'),
    }),
  );
  assert.ok(!triangles.ok);
  assert.equal(only(triangles.problems).code, 'cutting/motif-in-triangle');
  const wide = planQuilt(squares(1, { along: '6', across: '20', motif: ['1', '3'] }));
  assert.ok(!wide.ok);
  const problem = only(wide.problems);
  assert.equal(problem.code, 'cutting/motif-out-of-reach');
  assert.match(problemText(problem).what, /is cut 3 in across, and no motif within 20 in of width/);
});

test('a tone that the block lacks, and one whose cloths have no repeat, are refused at their place', () => {
  const problemsOf = (document: Written): readonly string[] => {
    const outcome = planQuilt(document);
    return outcome.ok ? [] : outcome.problems.map(({ code, path }) => `${code} ${path}`);
  };
  const repeat = { along: '6', motif: ['0', '3'] };
  const block = (motifs: readonly string[]) => ({ blocks: [{ ...plainBlock('square', 2.5, 2.5), motifs }] });
  assert.deepEqual(problemsOf(squares(1, repeat, block(['eye']))), ['design/unknown-motif-tone /blocks/0/motifs/0']);
  const plain = { fabrics: [{ id: 'dark', colour: '#4a3023' }] };
  assert.deepEqual(problemsOf(squares(1, repeat, plain)), ['design/motif-without-repeat /blocks/0/motifs/0']);
  assert.deepEqual(problemsOf(squares(1, { along: '6', motif: ['0', '7'] })), [
    'design/motif-beyond-repeat /fabrics/0/repeat/motif/1',
    'design/motif-without-repeat /blocks/0/motifs/0',
  ]);
});

test('every motif piece has its middle on a motif, nothing overlaps or is lost, and no bound is passed', () => {
  const side = fc.integer({ min: 2, max: 12 }).map((n) => n / 2);
  const list = fc.array(fc.tuple(side, side, fc.integer({ min: 1, max: 8 }), fc.boolean()), {
    minLength: 1,
    maxLength: 5,
  });
  const repeat = fc.record({
    along: fc.integer({ min: 4, max: 20 }).map((n) => n / 2),
    across: fc.option(
      fc.integer({ min: 4, max: 20 }).map((n) => n / 2),
      { nil: null },
    ),
    motif: fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 4 })),
  });
  fc.assert(
    fc.property(list, repeat, (kinds, { along, across, motif: [mx, my] }) => {
      const width = length(30);
      const demands = kinds.map(
        ([a, b, count, motif]): Demand => ({
          across: length(a),
          along: length(b),
          count,
          mayTurn: !motif,
          ...(motif ? { motif } : {}),
        }),
      );
      const at = {
        along: length(along),
        across: across === null ? null : length(across),
        motif: [length(mx), length(my)] as const,
      };
      const laid = planOnMotifs({
        width,
        demands,
        repeat: at,
        lay: (rest) => planLayout({ width, demands: rest, budget: { steps: 0 } }),
      });
      const placed = laid.layout.strips.flatMap((strip) =>
        strip.parts.flatMap((part) =>
          part.pieces.map((piece) => ({
            of: piece.of,
            x: part.at,
            y: strip.at + piece.at,
            w: piece.cut[0],
            h: piece.cut[1],
          })),
        ),
      );
      demands.forEach(({ count, across: a, along: b, motif }, of) => {
        const mine = placed.filter((one) => one.of === of);
        assert.equal(mine.length, count);
        for (const { x, y, w, h } of mine) {
          assert.deepEqual([w, h].toSorted(), [a, b].toSorted());
          if (!motif) continue;
          assert.deepEqual([w, h], [a, b]);
          const steps = [(y + h / 2 - my) / along, across === null ? 0 : (x + w / 2 - mx) / across];
          for (const step of steps) assert.ok(Math.abs(step - Math.round(step)) < 1e-9, `${step}`);
        }
      });
      placed.forEach((a, i) => {
        assert.ok(a.x >= -1e-9 && a.y >= -1e-9 && a.x + a.w <= width + 1e-9 && a.y + a.h <= laid.layout.length + 1e-9);
        for (const b of placed.slice(0, i))
          assert.ok(
            a.x + a.w <= b.x + 1e-9 || b.x + b.w <= a.x + 1e-9 || a.y + a.h <= b.y + 1e-9 || b.y + b.h <= a.y + 1e-9,
          );
      });
      assert.ok(laid.bound <= laid.layout.length + 1e-9);
    }),
    { seed: 97, numRuns: 80 },
  );
});
