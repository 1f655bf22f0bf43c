import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { planMade, type QuiltPlan } from '#craft';
import { methodsFor, unitGroups } from '#craft/front';
import { length } from '#craft/measure';
import { type Line, stageFor } from '#craft/ways';
import { example } from '#documents';
import { boxOf } from '#ground/plane';
import { plainBlock, planned, quilt, rails, rectangle, setOf, type Written } from '../documents/documents.ts';

const unitsBlock = (units: readonly Written[], { grid = [2, 1], ...more }: Written = {}): Written => ({
  id: 'units',
  size: ['6', '3'],
  recipe: { kind: 'units', grid, units },
  ...more,
});

const halves = (more: Written = {}): Written =>
  unitsBlock(
    [
      { at: [0, 0], unit: 'half-square', tones: ['light', 'dark'] },
      { at: [1, 0], unit: 'half-square', turn: 90, tones: ['light', 'dark'] },
    ],
    more,
  );

const planOf = (
  methods: readonly Written[],
  block = halves(),
  top: Written = setOf('units', { across: 3 }),
): QuiltPlan => planned(quilt({ blocks: [block], top, methods }));

const cutsOf = (plan: QuiltPlan) =>
  plan.fabrics.map(({ id, pieces }) => [id, ...pieces.map(({ cut, count, gives }) => [cut[0], count, gives])]);

const notesOf = (plan: QuiltPlan) =>
  plan.notes.flatMap((note) =>
    note.code === 'ways/not-taken' ? [note.why] : note.code === 'ways/no-such-unit' ? [note.path] : [],
  );

const twoAtATime = { unit: 'half-square', way: 'two-at-a-time' };

/** By cloth and size: patches that are made of sets, as the blocks want them, against the pieces that are cut for them. */
const assertInSets = (plan: QuiltPlan): void => {
  const wanted = new Map<string, { patches: number; perSet: number; gives: number; line: string }>();
  for (const { cut, fabrics } of plan.blocks.flatMap(({ pieces }) => pieces)) {
    if (cut.perSet === undefined) continue;
    for (const { fabric, count } of fabrics) {
      const name = `${fabric} ${cut.setOf}`;
      const line = `${fabric} ${cut.size.toSorted()} ${cut.gives}`;
      const known = wanted.get(name) ?? { patches: 0, perSet: cut.perSet, gives: cut.gives, line };
      wanted.set(name, { ...known, patches: known.patches + count });
    }
  }
  const lines = new Map<string, { patches: number; pieces: number }>();
  for (const { patches, perSet, gives, line } of wanted.values()) {
    const sets = Math.ceil(patches / (perSet * gives));
    assert.ok(sets * perSet * gives - patches < perSet * gives);
    const known = lines.get(line) ?? { patches: 0, pieces: 0 };
    lines.set(line, { patches: known.patches + patches, pieces: known.pieces + sets * perSet });
  }
  assert.ok(lines.size > 0);
  for (const [line, { patches, pieces }] of lines) {
    const cut = plan.fabrics
      .flatMap(({ id, pieces: own }) => own.map((piece) => ({ id, ...piece })))
      .filter(({ id, cut: size, gives }) => `${id} ${size.toSorted()} ${gives}` === line)
      .filter(({ count }) => count === pieces);
    assert.ok(cut.length > 0, `${line}: ${pieces} pieces`);
    assert.ok(
      cut.some(({ for: uses }) => uses.reduce((all, { count }) => all + count, 0) === patches),
      `${line}: ${patches} patches`,
    );
  }
};

describe('units made in a chosen way', () => {
  // 6 half-squares of 3 in: 3 7/8 in squares (f + 7/8), each pair gives two
  test('six half-squares two at a time come from three squares of each cloth, and steps and check sizes stay', () => {
    const plan = planOf([twoAtATime]);
    assert.deepEqual(cutsOf(plan), [
      ['light', [3.875, 3, 2]],
      ['dark', [3.875, 3, 2]],
    ]);
    const [made] = plan.blocks[0]?.steps ?? [];
    assert.equal(made?.made?.units, 6);
    assert.equal(made?.made?.sets, 3);
    assert.deepEqual(made?.unfinished, [3.5, 3.5]);
    assert.equal(plan.time.seams, planOf([]).time.seams);
  });

  test('an odd number takes a whole set more', () => {
    const single = unitsBlock([
      { at: [0, 0], unit: 'half-square', tones: ['light', 'dark'] },
      { at: [1, 0], unit: 'square', tones: ['medium'] },
    ]);
    assert.deepEqual(cutsOf(planOf([twoAtATime], single))[0], ['light', [3.875, 2, 2]]);
    // eight at a time: 2·3 + 1 3/4
    assert.deepEqual(cutsOf(planOf([{ unit: 'half-square', way: 'eight-at-a-time' }], single))[0], [
      'light',
      [7.75, 1, 8],
    ]);
  });

  test('patches of the same shape and cloth outside a unit are cut as before', () => {
    const withGoose = unitsBlock([
      { at: [0, 0], unit: 'half-square', tones: ['light', 'dark'] },
      { at: [1, 0], unit: 'square-in-square', tones: ['dark', 'light'] },
    ]);
    const plan = planOf([twoAtATime], withGoose);
    const labels = plan.blocks[0]?.pieces.map(({ fabric, cut }) => [fabric, cut.shape, cut.gives]);
    assert.deepEqual(
      labels?.filter(([fabric]) => fabric === 'light'),
      [
        ['light', 'square', 2],
        ['light', 'half-square', 2],
      ],
    );
  });

  test('the last choice that names a unit holds, and that of its block before that of the quilt', () => {
    const eight = { unit: 'half-square', way: 'eight-at-a-time' };
    assert.equal(planOf([eight, twoAtATime]).blocks[0]?.pieces[0]?.cut.gives, 2);
    assert.equal(planOf([eight, { ...twoAtATime, size: '2' }]).blocks[0]?.pieces[0]?.cut.gives, 8);
    assert.equal(planOf([eight], halves({ methods: [twoAtATime] })).blocks[0]?.pieces[0]?.cut.gives, 2);
    assert.equal(planOf([{ ...twoAtATime, fabrics: ['dark', 'light'] }]).blocks[0]?.pieces[0]?.cut.gives, 2);
    assert.equal(
      planOf([twoAtATime, { unit: 'half-square', way: 'singly' }]).blocks[0]?.pieces[0]?.cut.shape,
      'half-square',
    );
  });

  test('trimmed, single triangles come from squares with half an allowance of room', () => {
    // 3 + 0.8536 + 0.125 up to the eighth
    assert.equal(planOf([{ unit: 'half-square', way: 'singly', trimmed: true }]).blocks[0]?.pieces[0]?.cut.size[0], 4);
    assert.equal(planOf([{ ...twoAtATime, trimmed: true }]).blocks[0]?.pieces[0]?.cut.size[0], 4);
  });

  // by hand: the square on point in 3 in is 3/√2 + 1/2 = 2.621, between two eighths
  test('a piece between two marks is told, but not where its unit is trimmed after sewing', () => {
    const block = unitsBlock([
      { at: [0, 0], unit: 'square-in-square', tones: ['light', 'dark'] },
      { at: [1, 0], unit: 'square', tones: ['light'] },
    ]);
    const offMarks = (methods: readonly Written[]) =>
      planOf(methods, block).notes.flatMap((note) => (note.code === 'cutting/off-marks' ? [note.size] : []));
    assert.deepEqual(offMarks([]), [2.625]);
    assert.deepEqual(offMarks([{ unit: 'square-in-square', way: 'singly', trimmed: true }]), []);
  });

  // by hand: three blocks of two half-squares and two of one are eight units
  test('blocks that have the same unit share its sets: eight half-squares of two blocks are one set of eight', () => {
    const single = {
      ...unitsBlock([
        { at: [0, 0], unit: 'half-square', tones: ['dark', 'light'] },
        { at: [1, 0], unit: 'square', tones: ['dark'] },
      ]),
      id: 'single',
    };
    const rows = [[...['units', 'units', 'units', 'single', 'single'].map((block) => ({ block }))]];
    const eight = { unit: 'half-square', way: 'eight-at-a-time' };
    const shared = planned(quilt({ blocks: [halves(), single], top: { rows }, methods: [eight] }));
    assert.deepEqual(cutsOf(shared)[0], ['light', [7.75, 1, 8]]);
    const made = shared.blocks.map(({ steps }) => steps.find((step) => step.made)?.made);
    assert.deepEqual(
      made.map((one) => [one?.units, one?.sets, one?.among.map(({ id, units }) => `${id} ${units}`)]),
      [
        [6, 1, ['units 6', 'single 2']],
        [2, 1, ['units 6', 'single 2']],
      ],
    );
    // a block that chooses another way has sets of its own
    const apart = { ...single, methods: [twoAtATime] };
    const own = planned(quilt({ blocks: [halves(), apart], top: { rows }, methods: [eight] }));
    assert.deepEqual(cutsOf(own)[0], ['light', [7.75, 1, 8], [3.875, 1, 2]]);
  });

  test('of every choice of ways pieces are cut for all patches, and fewer are left over than one set gives', () => {
    for (const name of ['ferry-landing', 'lantern-lane', 'twelve-fields']) {
      const base = planned(example(name));
      const groups = unitGroups(base);
      for (const pick of [1, 2, 3]) {
        const choice = groups.map(({ options }, i) => (pick + i) % options.length);
        const made = planMade({
          quilt: base.quilt,
          methods: methodsFor(groups, choice),
          options: { budget: { steps: 0 }, fold: 'where-asked' },
        });
        assert.ok(made.ok);
        assertInSets(made.value);
      }
    }
  });

  test('a mirrored block has the same pieces made the same way', () => {
    const top = { rows: [[{ block: 'units' }, { block: 'units', mirror: true }]] };
    const plan = planOf([twoAtATime], halves(), top);
    const [one, other] = plan.blocks;
    assert.deepEqual(
      one?.pieces.map(({ cut }) => cut),
      other?.pieces.map(({ cut }) => cut),
    );
    assert.deepEqual(
      one?.steps.map(({ made }) => made?.sets),
      other?.steps.map(({ made }) => made?.sets),
    );
  });

  test('where a way is not open the plan says why and cuts singly', () => {
    const drawn = halves({ colourings: { default: { light: ['light', 'medium'], dark: 'dark' } } });
    const drawnPlan = planOf([twoAtATime], drawn);
    assert.deepEqual(notesOf(drawnPlan), ['drawn']);
    assert.deepEqual(
      drawnPlan.notes.flatMap((note) => (note.code === 'ways/not-taken' ? note.fabrics : [])),
      ['dark', 'light', 'medium'],
    );
    assert.deepEqual(notesOf(planOf([twoAtATime], halves({ piecing: 'foundation' }))), ['on-paper']);
    assert.deepEqual(notesOf(planOf([{ unit: 'flying-geese', way: 'sew-and-flip' }])), ['/methods/0']);
    const printed = planned(
      quilt({
        blocks: [halves()],
        top: setOf('units'),
        methods: [twoAtATime],
        fabrics: [
          { id: 'light', colour: '#f0e8d8', print: 'one-way' },
          { id: 'dark', colour: '#4a3023' },
        ],
      }),
    );
    assert.deepEqual(notesOf(printed), ['print']);
    assert.equal(printed.blocks[0]?.pieces[0]?.cut.shape, 'half-square');
    const narrow = planned(
      quilt({
        blocks: [halves()],
        top: setOf('units'),
        methods: [{ unit: 'half-square', way: 'eight-at-a-time' }],
        fabrics: [
          { id: 'light', colour: '#f0e8d8', usableWidth: '7' },
          { id: 'dark', colour: '#4a3023' },
        ],
      }),
    );
    assert.deepEqual(notesOf(narrow), ['too-large']);
  });

  // by hand: two blocks of two geese, each with two corners to draw, lay, sew, cut off and press
  test('where a print stands upright, geese that lie otherwise have steps of their own, and each is counted once', () => {
    const geese = unitsBlock(
      [
        { at: [0, 0], span: [2, 1], unit: 'flying-geese', tones: ['light', 'dark'] },
        { at: [0, 1], span: [2, 1], unit: 'flying-geese', turn: 180, tones: ['light', 'dark'] },
      ],
      { size: ['6', '6'], grid: [2, 2] },
    );
    const of = (minutes: Written): QuiltPlan =>
      planned(
        quilt({
          blocks: [geese],
          top: setOf('units', { across: 2 }),
          methods: [{ unit: 'flying-geese', way: 'sew-and-flip' }],
          fabrics: [
            { id: 'light', colour: '#f0e8d8', print: 'one-way' },
            { id: 'dark', colour: '#4a3023' },
          ],
          minutes: {
            cut: 0,
            fold: 0,
            lay: 0,
            chain: 0,
            seam: 0,
            inch: 0,
            press: 0,
            match: 0,
            draw: 0,
            part: 0,
            ...minutes,
          },
        }),
      );
    const made = of({}).blocks[0]?.steps.flatMap((step) => step.made ?? []) ?? [];
    assert.deepEqual(
      made.map(({ units, isLast }) => [units, isLast]),
      [
        [2, false],
        [2, true],
        [2, false],
        [2, true],
      ],
    );
    assert.equal(of({ draw: 1 }).time.sewing, 8);
    assert.equal(of({ part: 1 }).time.sewing, 8);
    // two seams more join the geese, and one the blocks
    assert.equal(of({ press: 1 }).time.sewing, 11);
  });

  // a log has its place in the order of the recipe, and a strip of a frame in that of the frame: no set can be cut for them
  test('logs and the strips of frames make no units with what they are sewn to', () => {
    const cabin: Written = {
      id: 'units',
      recipe: {
        kind: 'log-cabin',
        centre: '2',
        centreTone: 'medium',
        rounds: [{ width: '1', tones: ['light', 'light', 'dark', 'dark'] }],
      },
    };
    assert.deepEqual(unitGroups(planOf([], cabin)), []);
    const framed = { ...plainBlock('units', 3, 3), frame: [{ width: '1', fabric: 'light' }] };
    assert.deepEqual(unitGroups(planOf([], framed)), []);
    const kinds = unitGroups(planOf([], halves({ frame: [{ width: '1', fabric: 'medium' }] })));
    assert.deepEqual(
      kinds.map(({ unit, count }) => [unit, count]),
      [['half-square', 6]],
    );
  });

  // a seam may run through the pairs of a pinwheel from corner to corner: they are made as units all the same
  test('units stay whole where another order of joining would run through them', () => {
    const diamonds = unitsBlock(
      [
        { at: [0, 0], unit: 'half-square', turn: 0, tones: ['light', 'dark'] },
        { at: [1, 0], unit: 'half-square', turn: 90, tones: ['light', 'dark'] },
        { at: [1, 1], unit: 'half-square', turn: 180, tones: ['light', 'dark'] },
        { at: [0, 1], unit: 'half-square', turn: 270, tones: ['light', 'dark'] },
      ],
      { size: '6', grid: [2, 2] },
    );
    const plan = planOf([twoAtATime], diamonds);
    assert.deepEqual(notesOf(plan), []);
    const made = plan.blocks[0]?.steps.filter((step) => step.made) ?? [];
    assert.deepEqual(
      made.map(({ perBlock }) => perBlock),
      [4],
    );
  });

  test('geese, quarter-squares and squares in a square are planned in each of their ways', () => {
    const all = unitsBlock(
      [
        { at: [0, 0], unit: 'quarter-square', tones: ['light', 'dark', 'light', 'dark'] },
        { at: [1, 0], span: [1, '1/2'], unit: 'flying-geese', tones: ['dark', 'light'] },
        { at: [1, '1/2'], span: [1, '1/2'], unit: 'flying-geese', turn: 180, tones: ['dark', 'light'] },
        { at: [2, 0], unit: 'square-in-square', tones: ['dark', 'light'] },
      ],
      { size: ['12', '4'], grid: [3, 1] },
    );
    const plan = planOf(
      [
        { unit: 'quarter-square', way: 'from-half-squares' },
        { unit: 'flying-geese', way: 'four-at-a-time' },
        { unit: 'square-in-square', way: 'sew-and-flip' },
      ],
      all,
      setOf('units', { across: 2, down: 2 }),
    );
    assert.deepEqual(notesOf(plan), []);
    // four quarter-squares of 4 in: two squares of 5 1/4 of each cloth; eight geese: two of 5 1/4, eight of 2 7/8;
    // four squares in a square: 4 1/2 in squares and sixteen of 2 1/2
    assert.deepEqual(cutsOf(plan), [
      ['light', [5.25, 2, 4], [2.875, 8, 2], [2.5, 16, 1]],
      ['dark', [5.25, 4, 4], [4.5, 4, 1]],
    ]);
    const flips = planOf([{ unit: 'flying-geese', way: 'sew-and-flip' }], all);
    assert.deepEqual(notesOf(flips), []);
  });

  // Common practice, no source; worked by hand. A square of side c lies on the raw corner (0, 0) and is sewn from corner to corner, on
  // x + y = c. Finished, that corner lies at (1/4, 1/4), so the leg of its triangle is c - 1/2, and two such legs are a side: c is half of
  // it and 1/2. The seam meets the finished edge y = 1/4 at x = c - 1/4, the middle of the side.
  test('a square in a square of 6 in, sewn and flipped: a square of 6 1/2 and four of 3 1/2, seams that meet in the middles', () => {
    const six = unitsBlock([{ at: [0, 0], unit: 'square-in-square', tones: ['dark', 'light'] }], {
      size: '6',
      grid: [1, 1],
    });
    const plan = planOf([{ unit: 'square-in-square', way: 'sew-and-flip' }], six, setOf('units', { across: 3 }));
    assert.deepEqual(cutsOf(plan), [
      ['light', [3.5, 12, 1]],
      ['dark', [6.5, 3, 1]],
    ]);
    const corners = (plan.blocks[0]?.steps ?? []).flatMap(({ made }) => {
      const stage = made && stageFor({ ...made, seam: length(0.25) });
      return stage
        ? [{ sewn: stage.sewn[0] as Line, leaves: boxOf(stage.pressed.flat().flatMap((part) => part.outline)) }]
        : [];
    });
    assert.equal(corners.length, 4);
    const meetsEdge = ([from, to]: Line): readonly string[] =>
      [0.25, 6.25].flatMap((edge) => {
        const share = (edge - from.y) / (to.y - from.y);
        return share < 0 || share > 1 ? [] : [(from.x + share * (to.x - from.x)).toFixed(6)];
      });
    // by hand: 1/4 + 3
    for (const { sewn, leaves } of corners) {
      assert.deepEqual(meetsEdge(sewn), ['3.250000']);
      assert.deepEqual([leaves.width, leaves.height], [6.5, 6.5]);
    }
  });

  // nine-patches of 3 in, 12 of them: rows dark-light-dark twice (24 slices) and light-dark-light once (12), strips of 1 1/2 in
  test('nine-patches by strip sets: strips as long as their slices, rows and check sizes as before', () => {
    const nine: Written = {
      id: 'units',
      size: '3',
      patches: {
        grid: [3, 3],
        list: Array.from({ length: 9 }, (_, i) => ({
          points: rectangle(i % 3, Math.floor(i / 3), 1, 1),
          tone: i % 2 === 0 ? 'dark' : 'light',
        })),
      },
    };
    const top = setOf('units', { across: 4, down: 3 });
    const plan = planOf([{ unit: 'nine-patch', way: 'strip-sets' }], nine, top);
    assert.deepEqual(notesOf(plan), []);
    // 24 slices of 1 1/2 in: 36 in; 12: 18 in
    assert.deepEqual(cutsOf(plan), [
      ['light', [36, 1, 24], [18, 2, 12]],
      ['dark', [36, 2, 24], [18, 1, 12]],
    ]);
    const steps = plan.blocks[0]?.steps ?? [];
    assert.deepEqual(steps.map(({ made }) => made?.sets ?? 0).toSorted(), [0, 0, 1, 1, 1, 1]);
    assert.equal(
      steps.reduce((all, { perBlock }) => all + perBlock, 0),
      8,
    );
    assert.ok(plan.time.minutes < planOf([], nine, top).time.minutes);
  });

  test('rows of rails by strip sets, whatever way they run in the block', () => {
    const block = rails('units', { count: 3, width: 6, height: 2 });
    const plan = planOf([{ unit: 'rails', way: 'strip-sets' }], block, setOf('units', { across: 3, down: 2 }));
    assert.deepEqual(notesOf(plan), []);
    // six slices of 6 1/2 in: 39 in
    assert.deepEqual(
      cutsOf(plan).map(([, ...cuts]) => cuts),
      [[[39, 2, 6]], [[39, 1, 6]]],
    );
  });
});
