import assert from 'node:assert/strict';
import { test } from 'node:test';
import { clothSignsFor } from '#paper/cloth';
import { documentOf, faultInIds, faultInXml, planOf, specimenDocument } from '#paper/specimen';
import { drawBorders } from './borders.ts';
import { rowStepsOf, sameRowBefore } from './row-steps.ts';
import { drawRows, rowPressOf } from './rows.ts';
import { drawSections } from './sections.ts';

const four = planOf(
  documentOf({
    top: {
      set: 'straight',
      rows: Array.from({ length: 4 }, () => [{ block: 'fly' }, { block: 'cabin' }, { block: 'fly' }]),
    },
  }),
);

test('a row that is made like an earlier one still has all its seams', () => {
  for (let row = 0; row < 4; row++) {
    // three blocks, two seams
    assert.equal(rowStepsOf(four, row).length, 2, `row ${row + 1}`);
  }
  // rows nest by turns: the third is the first again, the fourth the second
  assert.deepEqual(
    [0, 1, 2, 3].map((row) => sameRowBefore(four, row)),
    [null, null, 0, 1],
  );
});

test('rows of blocks are pressed by turns to the right and to the left', () => {
  assert.deepEqual(
    [0, 1, 2, 3].map((row) => rowPressOf(four, row)),
    ['right', 'left', 'right', 'left'],
  );
  // toward the sashes: no one way
  assert.equal(rowPressOf(planOf(specimenDocument), 0), null);
});

test('rows and borders are drawn well-formed, each numbered', () => {
  const plan = planOf(specimenDocument);
  const signs = clothSignsFor(plan);
  const rows = drawRows({ plan, signs, fitPt: [480, 340], alt: 'Rows' }).svg;
  const borders = drawBorders({ plan, signs, fitPt: [300, 250], alt: 'Borders' }).svg;
  for (const svg of [rows, borders]) {
    assert.equal(faultInXml(svg), null);
    assert.equal(faultInIds(svg), null);
  }
  const numbers = (svg: string) => [...svg.matchAll(/>(\d+)<\/text>/g)].map(([, number]) => number);
  assert.deepEqual(numbers(rows), ['1', '2', '3']);
  assert.deepEqual(numbers(borders), ['1', '2', '3', '4']);
});

/** A block of 6 in on point, two by two with one between. */
const point = planOf(
  documentOf({
    blocks: [{ ...specimenDocument.blocks[1], size: '6' }],
    top: {
      set: 'on-point',
      rows: [
        [{ block: 'fly' }, { block: 'fly' }],
        [{ block: 'fly' }, { block: 'fly', turn: 90 }],
      ],
      between: [[{ plain: 'bark' }]],
      settingFabric: 'oat',
      borders: [{ width: '2', fabric: 'bark', corners: 'mitred' }],
    },
  }),
);

test('on point the rows slant, numbered, and the four corners stand off', () => {
  const drawing = drawRows({ plan: point, signs: clothSignsFor(point), fitPt: [480, 400], alt: 'Rows' });
  assert.equal(faultInXml(drawing.svg), null);
  assert.equal(faultInIds(drawing.svg), null);
  assert.ok(drawing.widthPt <= 480 && drawing.heightPt <= 400);
  // by hand: two by two main cells lie in three slanted rows
  assert.deepEqual(
    [...drawing.svg.matchAll(/font-weight="600"[^>]*>(\d+)</g)].map(([, n]) => n),
    ['1', '2', '3'],
  );
  // a group for each row and each corner
  assert.equal(drawing.svg.match(/<g transform="translate\([^)]*\)"/g)?.length, 3 + 4);
});

test('nothing of slanted rows lies outside the picture', () => {
  const drawing = drawRows({ plan: point, signs: clothSignsFor(point), fitPt: [480, 400], alt: 'Rows' });
  for (const [, moveX, moveY, inner] of drawing.svg.matchAll(
    /<g transform="translate\(([\d.-]+) ([\d.-]+)\)">(.*?)<\/g><\/?/g,
  )) {
    for (const [, path] of (inner as string).matchAll(/ d="M([^"]*)Z" fill="#/g)) {
      for (const corner of (path as string).split('L')) {
        const [x, y] = corner.split(' ').map(Number) as [number, number];
        if (!Number.isFinite(x + y)) continue;
        const [px, py] = [x + Number(moveX), y + Number(moveY)];
        assert.ok(px >= -1 && px <= drawing.widthPt + 1 && py >= -1 && py <= drawing.heightPt + 1, `${px}, ${py}`);
      }
    }
  }
});

test('mitred borders are drawn with slanted ends, each moved to its own side', () => {
  const { svg } = drawBorders({
    plan: point,
    signs: clothSignsFor(point),
    fitPt: [300, 250],
    alt: 'Borders',
  });
  assert.equal(faultInXml(svg), null);
  const outlines = [...svg.matchAll(/<path d="M([^"]*)Z"/g)].map(([, path]) => (path as string).split('L'));
  assert.equal(outlines.length, 4);
  for (const corners of outlines) {
    // two of four edges are level or upright
    const edges = corners.map((corner, i) => {
      const [x, y] = corner.split(' ').map(Number) as [number, number];
      const [nx, ny] = (corners[(i + 1) % 4] as string).split(' ').map(Number) as [number, number];
      return Math.abs(nx - x) < 0.01 || Math.abs(ny - y) < 0.01;
    });
    assert.equal(edges.filter(Boolean).length, 2);
  }
});

test('sections are pulled apart, framed and numbered; what is not a block has its cloth', () => {
  const plan = planOf(
    documentOf({
      top: {
        set: 'sections',
        sections: {
          down: [
            { across: [{ block: 'cabin' }, { strip: 'oat', width: '1' }, { block: 'fly' }] },
            { across: [{ block: 'fly' }, { fill: 'bark' }] },
          ],
        },
      },
    }),
  );
  const drawing = drawSections({ plan, signs: clothSignsFor(plan), fitPt: [480, 380], alt: 'Sections' });
  assert.equal(faultInXml(drawing.svg), null);
  assert.equal(faultInIds(drawing.svg), null);
  assert.ok(drawing.widthPt <= 480.01 && drawing.heightPt <= 380.01);
  assert.deepEqual(
    [...drawing.svg.matchAll(/font-weight="600"[^>]*>(\d+)</g)].map(([, n]) => n),
    ['1', '2'],
  );
});
