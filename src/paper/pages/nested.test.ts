import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cuttingCsv } from '#paper/cutting';
import { documentOf, faultInXml, planOf } from '#paper/specimen';
import { patternPages } from './pattern.ts';

const halfway = Math.sqrt(3) * 3;
/** Half hexagons of 3 in with their long sides on the block's edges, and odd corners that no strip gives. */
const slanted = {
  id: 'slanted',
  title: 'Slanted',
  size: ['12', String(halfway)],
  patches: {
    grid: [12, halfway],
    list: [
      {
        points: [
          [0, 0],
          [6, 0],
          [4.5, halfway / 2],
          [1.5, halfway / 2],
        ],
        tone: 'brick',
      },
      {
        points: [
          [6, 0],
          [12, 0],
          [12, halfway],
          [6, halfway],
          [6, 3],
          [4.5, halfway / 2],
        ],
        tone: 'oat',
      },
      {
        points: [
          [0, 0],
          [1.5, halfway / 2],
          [4.5, halfway / 2],
          [6, 3],
          [6, halfway],
          [0, halfway],
        ],
        tone: 'bark',
      },
    ],
  },
};

const star = {
  id: 'star',
  title: 'Star',
  from: 'lemoyne-star',
  size: '12',
  colourings: { default: { light: 'oat', medium: 'brick', dark: 'bark' } },
};
const plan = planOf(
  documentOf({
    blocks: [star, slanted],
    top: {
      set: 'sections',
      sections: {
        down: [{ across: Array(4).fill({ block: 'star' }) }, { across: Array(4).fill({ block: 'slanted' }) }],
      },
    },
    finish: {},
  }),
);
const { facts, pictures: album } = patternPages(plan);
/** Without the spaces that keep a figure and its unit together. */
const plain = (text: string): string =>
  text.replaceAll('\u00a0', ' ').replaceAll('\u2060', '').replaceAll('\u200b', '');
const [brick] = facts.cutting;

test('strips at an angle are told in the table, the directions and the block’s list', () => {
  const shapes = facts.cutting.flatMap(({ pieces }) => pieces.map(({ shape }) => plain(shape)));
  // by hand: 16 diamonds a cloth, eight in 40 in, so two full strips, 8·3√2 + 3 = 36.94, up to 37
  assert.ok(shapes.includes('strip, cut every 3 in at 45°: 16 pieces'), shapes.join('\n'));
  const directions = facts.cutting.flatMap((cloth) => cloth.directions.apart.map(plain));
  assert.ok(
    directions.some((line) => /^Trim the end of each strip .* cut every 3 in at 45°, measured square/.test(line)),
  );
  assert.ok(facts.blocks[0]?.pieces.some(({ cut }) => plain(cut) === 'strip 3 in, cut every 3 in at 45°'));
});

test('half hexagons are cut by turns at 60 degrees, along their longer edge', () => {
  // by hand: strip 3·√3/2 + 1/2 = 3.098, long side 6 + √3/2 = 6.866, both less than 1/32 off a mark
  const half = plan.fabrics.flatMap(({ pieces }) => pieces).find(({ way }) => way?.cuts === 'alternate');
  assert.deepEqual([half?.way?.cutBy, half?.way?.size, half?.gives], ['ruler', [3.125, 6.875], 4]);
  const line = 'cut by turns at 60°, 6⅞ in along the longer edge, every second one turned by a half turn: 4 pieces.';
  assert.ok(
    brick?.directions.apart.some((text) => plain(text).endsWith(line)),
    brick?.directions.apart.join('\n'),
  );
});

test('a picture shows every piece in its strip and both templates in their box, and says so', () => {
  const nested = facts.cutting.flatMap(({ layouts }) => layouts).filter(({ name }) => name.startsWith('nested-'));
  const lines = plan.fabrics.flatMap(({ pieces }) => pieces).filter(({ outlines }) => outlines.length > 0);
  assert.ok(lines.some(({ shape }) => shape === 'template') && lines.some(({ shape }) => shape === 'angled'));
  assert.equal(nested.length, lines.length);
  nested.forEach(({ name, alt, widthPt, heightPt }) => {
    const svg = album.get(name) as string;
    assert.equal(faultInXml(svg), null);
    assert.ok(widthPt <= 480 + 1e-6 && heightPt <= 130 + 1e-6);
    const index = Number(name.slice('nested-'.length + 1)) - 1;
    const letter = name.slice('nested-'.length, 'nested-'.length + 1);
    const piece = plan.fabrics['ABC'.indexOf(letter)]?.pieces[index];
    // one closed outline for each
    assert.equal((svg.match(/Z/g) ?? []).length, piece?.gives);
    assert.match(alt, /side by side|turned by a half turn/);
  });
});

test('the cut list counts strips, and what they give', () => {
  const rows = cuttingCsv(plan).split('\r\n');
  assert.ok(
    rows.some((row) => row.includes(',37,3,"strip, cut every 3 in at 45°",2,16,')),
    rows.join('\n'),
  );
  assert.ok(
    rows.some((row) => row.includes(',"box round two templates, one turned by a half turn",2,4,')),
    rows.join('\n'),
  );
});
