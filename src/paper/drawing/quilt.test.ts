import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clothSignsFor } from '#paper/cloth';
import { documentOf, faultInIds, faultInXml, planOf, specimenDocument } from '#paper/specimen';
import { drawQuilt } from './quilt.ts';

const plan = planOf(specimenDocument);
const drawn = (fill: 'colour' | 'hatched', of = plan) =>
  drawQuilt({ plan: of, signs: clothSignsFor(of), fitPt: [302, 402], fill, alt: 'A quilt' });

test('the quilt is well-formed, fits its room and holds no lettering', () => {
  for (const fill of ['colour', 'hatched'] as const) {
    const { svg, widthPt, heightPt } = drawn(fill);
    assert.equal(faultInXml(svg), null);
    assert.equal(faultInIds(svg), null);
    assert.ok(!svg.includes('<text'));
    // the specimen is square: the narrower side of the room decides
    assert.equal(widthPt, 302);
    assert.equal(heightPt, 302);
  }
});

test('every block is drawn once and set by reference', () => {
  const { svg } = drawn('colour');
  // two blocks, four places (the specimen)
  assert.equal(svg.match(/<g id="block-/g)?.length, 2);
  assert.equal(svg.match(/<use /g)?.length, 4);
});

test('a top of 400 blocks grows by its places, not by its patches', () => {
  const rows = Array.from({ length: 20 }, () => Array.from({ length: 20 }, () => ({ block: 'fly', turn: 90 })));
  const { svg } = drawn('colour', planOf(documentOf({ top: { set: 'straight', rows } })));
  assert.equal(svg.match(/<use /g)?.length, 400);
  assert.ok(svg.length < 400 * 100, `${svg.length} characters`);
});

test('hatched, each cloth has its own pattern, laid in the page’s directions', () => {
  const { svg } = drawn('hatched');
  assert.equal(svg.match(/<pattern /g)?.length, 3);
  assert.ok(!svg.includes('<use'));
});

test('a block turned a quarter is drawn where turning it by hand puts it', () => {
  // by hand: the fly in row 2, column 1 lies at 2, 6 with size 3; scale is 300 / 11; turned 90° its origin goes to the right end
  const { svg } = drawn('colour');
  const scale = 300 / 11;
  const [x, y] = [5 * scale, 6 * scale].map((value) => Math.round(value * 1000) / 1000);
  assert.ok(svg.includes(`translate(${x} ${y}) rotate(90)`));
});

test('the same plan gives the same bytes', () => {
  assert.equal(drawn('hatched').svg, drawn('hatched', planOf(specimenDocument)).svg);
});

test('edges are no wider than an eighth of the side of the smallest square', () => {
  const squares = (count: number) => ({
    id: 'many',
    size: '3',
    patches: {
      grid: [count, count],
      list: Array.from({ length: count * count }, (_, i) => {
        const [x, y] = [i % count, Math.floor(i / count)];
        const points = [
          [x, y],
          [x + 1, y],
          [x + 1, y + 1],
          [x, y + 1],
        ];
        return { points, tone: 'oat' };
      }),
    },
  });
  const widthOf = (count: number): number => {
    const of = planOf(
      documentOf({
        blocks: [squares(count)],
        top: { set: 'straight', rows: [[{ block: 'many' }]] },
        finish: undefined,
      }),
    );
    const { svg } = drawQuilt({
      plan: of,
      signs: clothSignsFor(of),
      fitPt: [62, 62],
      fill: 'colour',
      edgePt: 0.8,
      alt: 'A quilt',
    });
    return Number(/stroke-width="([\d.]+)"/.exec(svg)?.[1]);
  };
  assert.equal(widthOf(2), 0.8);
  // by hand: a block of 60 pt in 20 rows of squares of 3 pt
  assert.equal(widthOf(20), 0.375);
});
