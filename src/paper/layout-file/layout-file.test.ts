// The layout of an instance as other programs read it: every item as often as it is wanted, lying as it is said to lie.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { fewPieces, fewPiecesOnSheets } from '#craft/few-pieces';
import { jobFor, parseInstance, problemFor } from '#craft/layout-instance';
import { type CutNode, type LayoutReport, layoutSummary, toLayoutFile } from './index.ts';

const written = {
  name: 'small',
  W: 10,
  items: [
    [4, 3, 2],
    [3, 4, 1],
    [9, 2, 1],
  ],
  sheets: [{ id: 'q', w: 9, h: 8, cost: 5 }],
  bestKnown: [{ problem: 'on-side', kind: 'sheets', stages: 2, firstCut: 'along', rotation: false }],
};

/** Searched for exactly; figures of time are made up. */
const reportOf = (id: string, of: object = written): LayoutReport => {
  const instance = parseInstance(JSON.stringify(of));
  assert.ok(instance.ok);
  const problem = problemFor(instance.value, id);
  assert.ok(problem.ok);
  const cut = jobFor(instance.value, problem.value);
  assert.ok(cut.ok);
  const common = { instance: instance.value, problem: problem.value, cut: cut.value, boundKind: 'integer' } as const;
  const times = { firstMs: 1.23, bestMs: 4.56, seconds: 0.0123 };
  const { cutting, kind } = problem.value;
  if (kind === 'strip') {
    const found = fewPieces({ job: cut.value.job, cutting });
    assert.ok(found !== null);
    return { ...common, ...times, laid: { on: 'cloth', strips: found.strips }, bound: found.length };
  }
  const found = fewPiecesOnSheets({ kinds: cut.value.job.kinds, cutting, sheets: cut.value.sheets });
  assert.ok(found?.status === 'least');
  return { ...common, ...times, laid: { on: 'sheets', sheets: found.sheets }, bound: found.cost };
};

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface Placed extends Place {
  readonly piece: number;
}

/** Walks the nested cuts; each piece lies at the upper left of its place. */
const placed = (node: CutNode, at: Place): readonly Placed[] => {
  if ('piece' in node) {
    const [w = 0, h = 0] = written.items[node.piece] ?? [];
    const [width, height] = node.rot ? [h, w] : [w, h];
    assert.ok(width <= at.width && height <= at.height, 'a piece fits its place');
    return [{ x: at.x, y: at.y, width, height, piece: node.piece }];
  }
  let [x, y] = [at.x, at.y];
  const all: Placed[] = [];
  for (const { size, times = 1, node: inner } of node.parts)
    for (let i = 0; i < times; i++) {
      const isAcross = node.cut === 'across';
      all.push(...placed(inner, { x, y, width: isAcross ? at.width : size, height: isAcross ? size : at.height }));
      if (isAcross) y += size;
      else x += size;
    }
  assert.ok(x <= at.x + at.width && y <= at.y + at.height, 'parts stay inside');
  return all;
};

const holdsAll = (all: readonly Placed[]): void => {
  for (const [i, a] of all.entries())
    for (const b of all.slice(i + 1))
      assert.ok(
        a.x >= b.x + b.width || b.x >= a.x + a.width || a.y >= b.y + b.height || b.y >= a.y + a.height,
        'pieces lie apart',
      );
  assert.deepEqual(
    written.items.map((_, item) => all.filter(({ piece }) => piece === item).length),
    written.items.map(([, , count]) => count),
  );
};

for (const id of ['strip2-o', 'strip2-r', 'strip3-o', 'strip3-r', 'strip3r-r']) {
  test(`a layout of ${id} holds every item as often as wanted, apart and inside the cloth`, () => {
    const { stock, length = 0, proven } = toLayoutFile(reportOf(id));
    assert.equal(stock.length, 1);
    assert.equal(stock[0]?.length, length);
    assert.equal(proven, true);
    holdsAll(placed(stock[0]?.node as CutNode, { x: 0, y: 0, width: 10, height: length }));
  });
}

test('sheets cut along first are cut along first, and counted by name', () => {
  const { stock, sheets, cost } = toLayoutFile(reportOf('on-side'));
  const pieces = stock.map(({ times = 1, node }) => ({ times, node }));
  assert.deepEqual(sheets, { q: pieces.reduce((sum, { times }) => sum + times, 0) });
  assert.equal(cost, 5 * (sheets?.q ?? 0));
  assert.ok(stock.every(({ node }) => 'cut' in node && node.cut === 'along'));
  const all = pieces.flatMap(({ times, node }, sheet) =>
    Array.from({ length: times }, (_, i) => placed(node, { x: 100 * sheet, y: 1000 * i, width: 9, height: 8 })).flat(),
  );
  holdsAll(all);
});

test('the summary says what the layout comes to and that it is proven', () => {
  const text = layoutSummary(reportOf('strip2-o'));
  // derived by hand: 9 × 2 leaves room for nothing beside it; 4 + 4 + 3 is wider than 10, so the others need a strip of 4 and one of 3
  assert.match(text, /^small, problem strip2-o: 4 pieces of 3 kinds\n {2}Length 9 on cloth 10 wide\n {2}No layout/);
});

test('one piece of one kind is told as one', () => {
  const instance = { name: 'lone', W: 10, items: [[9, 2, 1]] };
  const report = reportOf('strip2-o', instance);
  assert.match(layoutSummary(report), /^lone, problem strip2-o: 1 piece of 1 kind\n/);
});
