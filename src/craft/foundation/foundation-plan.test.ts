import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { planQuilt, type QuiltPlan } from '#craft';
import { length } from '#craft/measure';
import { rational } from '#ground/exact';
import { boxOf } from '#ground/plane';
import { roughCut } from './rough-cut.ts';

const written = (): Record<string, unknown> & { fabrics: readonly { readonly id: string }[] } =>
  JSON.parse(readFileSync('examples/kettle-bank.quilt.json', 'utf8'));

const planned = (document: unknown): QuiltPlan => {
  const plan = planQuilt(document, { budget: { steps: 0 } });
  assert.ok(plan.ok, plan.ok ? '' : JSON.stringify(plan.problems.map(({ code, path }) => [code, path])));
  return plan.value;
};

test('every patch goes on its sheet once, from the middle outward, and is pressed open over its seam', () => {
  const [block] = planned(written()).blocks;
  assert.ok(block);
  assert.equal(block.foundations?.sections.length, 1);
  const order = block.foundations.sections[0]?.map(({ patch }) => patch) ?? [];
  assert.deepEqual(
    order.toSorted((a, b) => a - b),
    block.patches.map((_, patch) => patch),
  );
  assert.deepEqual(
    block.steps.map(({ kind, pressTo, perBlock, onPaper }) => [kind, pressTo, perBlock, onPaper?.laid]),
    order.slice(1).map((_, place) => ['foundation', 1, 1, place + 2]),
  );
  // by the drawing: the square of 3 in lies in the middle, four triangles round it, then four logs at the corners
  const labels = order.map((patch) => block.patches[patch]?.piece);
  assert.deepEqual(labels.slice(0, 9), ['A', 'B', 'B', 'B', 'B', 'C', 'C', 'C', 'C']);
});

test('a piece covers its patch and twice the allowance on every side, however it lies to its seam', () => {
  const plan = planned(written());
  const [block] = plan.blocks;
  assert.ok(block?.foundations);
  for (const { patch, line } of block.foundations.sections.flat()) {
    const { points = [], piece } = block.patches[patch] ?? {};
    const cut = block.pieces.find(({ label }) => label === piece)?.cut;
    const least = roughCut({ patch: points, line, seam: length(0.25), ruler: rational(1, 8) });
    assert.ok(
      cut && Math.max(...cut.size) >= Math.max(...least) - 1e-9 && Math.min(...cut.size) >= Math.min(...least) - 1e-9,
    );
  }
  // by hand: the middle is 3 in square, and 4 · ¼ in more
  assert.deepEqual(block.pieces[0]?.cut.size, [4, 4]);
  const counted = plan.fabrics
    .flatMap(({ pieces }) => pieces)
    .filter((piece) => piece.for.some(({ role }) => role === 'block'));
  assert.equal(
    counted.reduce((all, { count }) => all + count, 0),
    4 * block.patches.length,
  );
});

test('pieces of a print that stands upright are cut square to the block', () => {
  const document = written();
  const fabrics = document.fabrics.map((fabric) => (fabric.id === 'iron' ? { ...fabric, print: 'one-way' } : fabric));
  const [block] = planned({ ...document, fabrics }).blocks;
  assert.ok(block);
  for (const { piece, fabric, points } of block.patches) {
    if (fabric !== 'iron') continue;
    const { size } = block.pieces.find(({ label }) => label === piece)?.cut ?? {};
    const box = boxOf(points);
    assert.ok(size && size[0] >= box.width + 1 - 1e-9 && size[1] >= box.height + 1 - 1e-9);
  }
});

test('the mirrored block has the sheets of its mirror image, with the same pieces', () => {
  const document = written();
  const rows = [[{ block: 'snail' }, { block: 'snail', mirror: true }]];
  const blocks = [
    {
      id: 'snail',
      from: 'snails-trail',
      size: '12',
      piecing: 'foundation',
      colourings: { default: { light: 'linen', dark: 'iron' } },
    },
  ];
  const [plain, mirrored] = planned({ ...document, blocks, top: { set: 'straight', rows } }).blocks;
  assert.ok(plain && mirrored?.foundations);
  assert.deepEqual(
    mirrored.pieces.map(({ label, cut }) => [label, cut.size]),
    plain.pieces.map(({ label, cut }) => [label, cut.size]),
  );
  for (const { patch, line } of mirrored.foundations.sections.flat()) {
    const before: typeof line | undefined = plain.foundations?.sections.flat().find((one) => one.patch === patch)?.line;
    assert.equal(line === null, before === null || before === undefined);
    if (line && before)
      assert.deepEqual(
        [line.from.x, line.to.x].toSorted((a, b) => a - b),
        [12 - before.from.x, 12 - before.to.x].toSorted((a, b) => a - b),
      );
  }
});

test('parts that look alike are sewn in one order, and made together', () => {
  const document = written();
  const blocks = [
    {
      id: 'star',
      from: 'sawtooth-star',
      size: '12',
      piecing: 'foundation',
      colourings: { default: { light: 'linen', dark: 'iron', medium: 'copper', accent: 'copper' } },
    },
  ];
  const rows = [[{ block: 'star' }, { block: 'star' }]];
  const [block] = planned({ ...document, blocks, top: { set: 'straight', rows } }).blocks;
  assert.ok(block?.foundations);
  const { sections, joins } = block.foundations;
  const sewn = block.steps.filter(({ kind }) => kind === 'foundation').reduce((all, { perBlock }) => all + perBlock, 0);
  assert.equal(
    sewn,
    sections.reduce((all, order) => all + order.length - 1, 0),
  );
  assert.equal(
    block.steps.filter(({ kind }) => kind === 'straight').reduce((all, { perBlock }) => all + perBlock, 0),
    joins.length,
  );
  const kinds = (order: (typeof sections)[number]) => order.map(({ patch }) => block.patches[patch]?.piece).join();
  const rows2 = sections.filter((order) => order.length === 5).map(kinds);
  assert.ok(new Set(rows2).size <= 1, rows2.join(' '));
});
