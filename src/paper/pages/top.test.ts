import assert from 'node:assert/strict';
import { test } from 'node:test';
import { documentOf, planOf, specimenDocument } from '#paper/specimen';
import type { PatternFacts } from './facts.ts';
import { patternPages } from './pattern.ts';

const [cabin, fly] = specimenDocument.blocks;
const topOf = (changes: Readonly<Record<string, unknown>>) => {
  const { top } = patternPages(planOf(documentOf(changes))).facts;
  assert.ok(top);
  return top;
};
const partOf = (top: ReturnType<typeof topOf>, heading: string) => {
  const part = top.parts.find((one) => one.heading === heading);
  if (part === undefined) throw new Error(`no part ${heading} among ${top.parts.map((one) => one.heading).join(', ')}`);
  return part;
};

test('on point the rows are told by their ends, the corners after them, and what is trimmed to which size', () => {
  const top = topOf({
    blocks: [{ ...fly, size: '6' }],
    top: {
      set: 'on-point',
      rows: [
        [{ block: 'fly' }, { block: 'fly' }],
        [{ block: 'fly' }, { block: 'fly' }],
      ],
      between: [[{ plain: 'bark' }]],
      settingFabric: 'oat',
      float: '1/2',
    },
  });
  // by hand: 2 × 2 main cells and one between: rows of 1, 3 and 1 cells; side triangles at both ends of the short rows,
  // none on the long one, whose ends are the corners; the triangles of the first and the last row lie unlike
  assert.deepEqual(
    partOf(top, 'Rows').table?.rows.map(([row, holds, , measures]) => [row, holds, measures]),
    [
      ['1', '2 side triangles, 1 block', '6½\u00a0in wide'],
      ['2', '2 blocks, 1 plain piece', '6½\u00a0in wide'],
      ['3', '2 side triangles, 1 block', '6½\u00a0in wide'],
    ],
  );
  const corners = partOf(top, 'Corners').list;
  for (const corner of ['upper left', 'lower right', 'lower left', 'upper right']) {
    assert.ok(
      corners.some((line) => line.includes(corner)),
      corner,
    );
  }
  // 2 · 6√2 + ½ = 17.47, nearest to 17½
  assert.ok(
    corners.some((line) => line.includes('about\u00a017½\u00a0×\u00a017½\u00a0in')),
    corners.join('\n'),
  );
});

test('rows that are joined alike are told once, with what the top measures with each of them', () => {
  const row = [{ block: 'cabin' }, { block: 'cabin' }];
  const top = topOf({ top: { rows: [row, row, row] } });
  const { head, rows } = partOf(top, 'Rows').table ?? { head: [], rows: [] };
  assert.equal(head.at(-1), 'With the rows above');
  // by hand: blocks of 3, two across: 6 and its allowances by 3, 6 and 9 with theirs
  assert.deepEqual(
    rows.map((cells) => cells.at(-1)),
    ['', '6½\u00a0×\u00a06½\u00a0in', '6½\u00a0×\u00a09½\u00a0in'],
  );
  const { lead, list } = partOf(top, 'Joining the rows');
  assert.deepEqual(list, []);
  assert.ok(lead.some((line) => line.includes('The top measures 6½\u00a0×\u00a09½\u00a0in.')));
});

test('sections are told from the innermost out, a place kept for a block made elsewhere with its size', () => {
  const top = topOf({
    blocks: [cabin, fly, { id: 'panel', title: 'Painted panel', made: 'elsewhere', size: ['7', '3'] }],
    top: {
      set: 'sections',
      sections: {
        down: [{ across: [{ block: 'cabin' }, { strip: 'oat', width: '1' }, { block: 'fly' }] }, { block: 'panel' }],
      },
    },
  });
  const rows = partOf(top, 'Sections').table?.rows ?? [];
  assert.deepEqual(
    rows.map(([section, join]) => [section, join]),
    [
      ['1', 'from left to right: Log cabin; strip A; Shoo fly'],
      ['Middle', 'from the top down: section 1; Painted panel'],
    ],
  );
  assert.ok(top.intro.some((line) => line.includes('Painted panel') && line.includes('7½\u00a0×\u00a03½\u00a0in')));
});

test('each kind of border has its advice, and a pieced one its blocks counted', () => {
  const top = topOf({
    blocks: [cabin, { ...fly, size: '1' }],
    top: {
      rows: [[{ block: 'cabin' }]],
      borders: [
        { width: '1', fabric: 'oat', corners: 'squares', cornerFabric: 'brick' },
        { pieced: { block: 'fly', spacer: 'oat' } },
        { width: '2', fabric: 'bark', corners: 'mitred' },
      ],
    },
  });
  const { list, table } = partOf(top, 'Borders');
  // by hand: four strips a ring, in the order of sewing
  for (const words of [
    'The border of 1 to 4 has a square in each corner',
    'The border of 5 to 8 is made of blocks',
    'The border of 9 to 12 is mitred',
  ]) {
    assert.ok(
      list.some((line) => line.startsWith(words)),
      words,
    );
  }
  // by hand: the cabin of 3 and a border of 1 make 5, five blocks of 1 a side, seven with the corners
  const where = table?.rows.map(([, place]) => place) ?? [];
  assert.ok(where.includes('Left, 5 × Shoo fly'), where.join('\n'));
  assert.ok(where.includes('Top, 7 × Shoo fly'), where.join('\n'));
  // by hand: of the first border the sides are of its own cloth, the strips at top and bottom have corners of another
  assert.ok(
    where.some((place) => /^Left, cloth [A-Z]$/.test(place ?? '')),
    where.join('\n'),
  );
  assert.ok(
    where.some((place) => /^Top, cloths [A-Z] and [A-Z]$/.test(place ?? '')),
    where.join('\n'),
  );
});

test('a scrappy piece is listed with the number cut from each of its cloths, which add up', () => {
  const { facts } = patternPages(
    planOf(
      documentOf({ blocks: [cabin, { ...fly, colourings: { default: { sky: ['oat', 'bark'], wing: 'brick' } } }] }),
    ),
  );
  const block = facts.blocks.find(({ title }) => title === 'Shoo fly');
  const scrappy = block?.pieces.filter(({ cloth }) => cloth.includes(',')) ?? [];
  // by hand: the sky's triangles (four a block) and squares (four a block), two blocks
  assert.deepEqual(
    scrappy.map(({ cloth }) => cloth.match(/\d+(?=\u00a0of)/g)?.reduce((sum, count) => sum + Number(count), 0)),
    [8, 8],
  );
  assert.ok(block?.remarks.some((line) => line.includes('scrappy')));
});

test('what a cloth comes in is called what it is, with what tells one kind from another', () => {
  const leadsOf = (
    bought: unknown,
    more: object = {},
  ): { readonly leads: readonly string[]; readonly pages: PatternFacts } => {
    const fabrics = specimenDocument.fabrics.map(({ id, name, colour }) =>
      id === 'brick' ? { id, name, colour, ...(bought === null ? {} : { bought }), ...more } : { id, name, colour },
    );
    const { facts } = patternPages(planOf(documentOf({ fabrics })));
    const cutting = facts.cutting.find(({ name }) => name === 'Brick');
    return { leads: (cutting?.directions.cuts ?? []).map(({ lead }) => lead), pages: facts };
  };
  const lengths = leadsOf({ lengths: ['1/4 yd', { length: '1 yd', price: 9 }] });
  assert.match(lengths.leads[0] ?? '', /^Length 1 \(¼\u00a0yd\): cut /);
  // by hand: a length is squared up at both ends
  const row = lengths.pages.amounts?.rows.find(([letter]) => letter === 'A');
  assert.deepEqual(row?.slice(1, 4), ['1 length', '2\u00a0in', '–']);
  const remnants = { sheets: [{ size: ['20', '20'], count: 1, name: 'curtain' }, { size: ['9', '9'] }] };
  assert.match(leadsOf(remnants).leads[0] ?? '', /^Sheet 1 \(curtain, 20\u00a0×\u00a020\u00a0in\): cut /);
  assert.match(leadsOf({ sheets: [{ size: ['20', '20'] }] }).leads[0] ?? '', /^Sheet 1: cut /);
  const ends = leadsOf(null, { ends: [{ size: ['40', '30'], name: 'left over' }] });
  assert.match(ends.leads[0] ?? '', /^End at hand 1 \(left over, 40\u00a0×\u00a030\u00a0in\): cut /);
  assert.ok(ends.pages.before.some((line) => line.startsWith('The amounts allow')));
  // where all is in sheets there are no ends to square up
  const quarters = specimenDocument.fabrics.map(({ id, name, colour }) => ({
    id,
    name,
    colour,
    bought: 'fat-quarter',
  }));
  const { before, cutting } = patternPages(planOf(documentOf({ fabrics: quarters, finish: {} }))).facts;
  assert.ok(cutting.every(({ inSheets }) => inSheets));
  assert.ok(ends.pages.cutting.every(({ inSheets }) => !inSheets));
  assert.deepEqual(
    before.filter((line) => /amounts|Sheets/.test(line)).map((line) => line.slice(0, 15)),
    ['Sheets of cloth'],
  );
});

test('cloth bought in sheets is asked for by their name, and each sheet told once', () => {
  const fabrics = specimenDocument.fabrics.map(({ id, name, colour }) =>
    id === 'brick' ? { id, name, colour, bought: 'fat-quarter', price: 3 } : { id, name, colour },
  );
  const { facts } = patternPages(planOf(documentOf({ fabrics, currency: 'EUR' })));
  const brick = facts.cloths.find(({ name }) => name === 'Brick');
  assert.equal(brick?.buy, '1 fat quarter');
  assert.equal(brick?.price, '3.00\u00a0EUR');
  const cutting = facts.cutting.find(({ name }) => name === 'Brick');
  assert.match(cutting?.directions.cuts[0]?.lead ?? '', /^Sheet 1: cut \d+ strips? /);
});

test('sections that are made alike have the same seams, presses and sizes', () => {
  // a log cabin looks otherwise when it is turned: none of these is turned so that its seams nest
  const pair = { across: [{ block: 'cabin' }, { block: 'cabin', turn: 90 }] };
  const longer = { across: [{ block: 'cabin' }, { block: 'cabin', turn: 90 }, { block: 'cabin', turn: 180 }] };
  const fill = (section: typeof pair) => ({ across: [section, { fill: 'oat' }] });
  const top = topOf({ top: { set: 'sections', sections: { down: [longer, fill(pair), fill(pair)] } } });
  const rows = partOf(top, 'Sections').table?.rows ?? [];
  const pairs = rows.filter(([, join]) => join === 'from left to right: Log cabin; Log cabin');
  assert.equal(pairs.length, 2);
  assert.deepEqual(pairs[0]?.slice(1), pairs[1]?.slice(1));
  // by hand: two blocks of 3 and their allowances
  assert.equal(pairs[0]?.[3], '6½\u00a0×\u00a03½\u00a0in');
});
