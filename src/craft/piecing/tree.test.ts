import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { chordsOf, type Drawing, drawingOf } from '#craft/chords';
import { length } from '#craft/measure';
import { box, type CutBlock, randomBlock } from '#documents';
import { at, centroid, type Polygon } from '#ground/plane';
import { formSorter, type UnitForm } from './congruence.ts';
import { graphOf } from './graph.ts';
import { kindsOf } from './kinds.ts';
import { planJoins } from './tree.ts';

const prepare = ({ outlines, fabrics }: CutBlock) => {
  const kindOf = kindsOf(
    outlines.map((points, i) => ({ points, fabric: fabrics[i] as string })),
    length(12),
  );
  const drawing = drawingOf(outlines, 12e-6);
  const graph = () => graphOf(outlines, 12e-6);
  return {
    drawing,
    graph,
    isConvex: () => true,
    kindOf,
    formOf: formSorter({ patches: outlines, kindOf, size: 12 }),
    isCurved: false,
    centres: outlines.map(centroid),
  };
};

/**
 * The slow twin: every binary tree of chords of every unit, unit by unit, with no merging of equal units and no
 * bound; costs are counted at the end.
 */
const exhaustive = (drawn: CutBlock): { readonly units: number; readonly depth: number } | null => {
  const { drawing, formOf } = prepare(drawn);
  const trees = allTrees(
    drawing,
    drawn.outlines.map((_, i) => i),
  );
  let best: { units: number; depth: number } | null = null;
  for (const tree of trees) {
    const cost = { units: new Set(tree.units.map((u) => formOf(u).form)).size, depth: tree.depth };
    if (!best || cost.units < best.units || (cost.units === best.units && cost.depth < best.depth)) best = cost;
  }
  return best;
};

interface Tree {
  readonly units: readonly (readonly number[])[];
  readonly depth: number;
}

const allTrees = (drawing: Drawing, unit: readonly number[]): readonly Tree[] => {
  if (unit.length === 1) return [{ units: [], depth: 0 }];
  return chordsOf(drawing, unit).flatMap((chord) =>
    allTrees(drawing, chord.first).flatMap((a) =>
      allTrees(drawing, chord.second).map((b) => ({
        units: [unit, ...a.units, ...b.units],
        depth: 1 + Math.max(a.depth, b.depth),
      })),
    ),
  );
};

const clever = (drawn: CutBlock): { readonly units: number; readonly depth: number; readonly proven: boolean } => {
  const prepared = prepare(drawn);
  const tree = planJoins(
    prepared,
    drawn.outlines.map((_, i) => i),
  );
  const depthOf = (form: number): number => {
    const join = tree.joins.get(form);
    assert.ok(join);
    const parts = join.branches.map((b) => ('form' in b ? depthOf(b.form) : 0));
    return 1 + Math.max(...parts);
  };
  return { units: tree.joins.size, depth: depthOf(tree.root), proven: tree.leastUnits === 'proven' };
};

test('the planned order has the least different units, then the least depth, as the search of all trees finds them', () => {
  fc.assert(
    fc.property(randomBlock, (drawn) => {
      fc.pre(drawn.outlines.length > 1);
      const found = clever(drawn);
      assert.deepEqual({ units: found.units, depth: found.depth }, exhaustive(drawn));
      assert.ok(found.proven);
    }),
    { seed: 11, numRuns: 400 },
  );
});

test('a checkerboard of four by three in two fabrics takes four different units, which is proven', () => {
  // by hand: ab; ab + ab = a row; a row + a row turned half round = two rows; two rows + a row = all
  const outlines = [0, 1, 2].flatMap((y) => [0, 1, 2, 3].map((x) => box(3 * x, 4 * y, 3, 4)));
  const fabrics = outlines.map((_, i) => ((i + Math.floor(i / 4)) % 2 === 0 ? 'a' : 'b'));
  const found = clever({ outlines, fabrics });
  assert.ok(found.proven);
  // 12 patches of two kinds by joining: at least log2(12) rounded up = 4 units
  assert.equal(found.units, 4);
});

test('units of one form are found whichever way they lie, and a mirror image is another form', () => {
  // an L of a square and a long patch, four times turned; and one mirrored
  const l = (turn: number, flip: 1 | -1, dx: number): readonly Polygon[] =>
    [box(0, 0, 1, 1), box(1, 0, 2, 1)].map((p, i) => {
      const bent = i === 0 ? p : box(0, 1, 2, 1);
      const turnedPoints = bent.map(({ x, y }) => {
        const fx = flip * x;
        return turn === 0 ? at(fx + dx, y) : turn === 1 ? at(-y + dx, fx) : at(-fx + dx, -y);
      });
      return flip === 1 ? turnedPoints : turnedPoints.toReversed();
    });
  const outlines = [...l(0, 1, 0), ...l(1, 1, 20), ...l(2, 1, 40), ...l(0, -1, 60)];
  const kindOf = kindsOf(
    outlines.map((points) => ({ points, fabric: 'a' })),
    length(12),
  );
  const formOf = formSorter({ patches: outlines, kindOf, size: 12 });
  const forms: readonly UnitForm[] = [formOf([0, 1]), formOf([2, 3]), formOf([4, 5]), formOf([6, 7])];
  assert.deepEqual(
    forms.map((f) => f.form),
    [0, 0, 0, 1],
  );
  assert.ok(Math.abs((forms[1] as UnitForm).turn - Math.PI / 2) < 1e-6);
  assert.ok(Math.abs((forms[2] as UnitForm).turn - Math.PI) < 1e-6);
});
