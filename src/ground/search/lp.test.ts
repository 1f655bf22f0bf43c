import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import loadHighs from 'highs';
import { type LinearProgram, type LpStatus, linearProgramFor } from './lp.ts';

const highs = await loadHighs();

interface Plain {
  readonly needs: readonly number[];
  readonly columns: readonly { readonly cost: number; readonly factors: readonly number[] }[];
}

/** The same program by a solver of its own; null when nothing meets every row. */
const plainLeast = ({ needs, columns }: Plain): number | null => {
  const filled = needs.map((_, row) => columns.flatMap((c, j) => ((c.factors[row] ?? 0) === 0 ? [] : [j])));
  const model = highs.createModel({
    numCols: columns.length,
    numRows: needs.length,
    sense: highs.constants.objectiveSense.minimize,
    colCost: columns.map((c) => c.cost),
    colLower: columns.map(() => 0),
    colUpper: columns.map(() => highs.infinity),
    rowLower: [...needs],
    rowUpper: needs.map(() => highs.infinity),
    matrix: {
      format: 'csr',
      numRows: needs.length,
      numCols: columns.length,
      starts: [0, ...needs.map((_, row) => filled.slice(0, row + 1).flat().length)],
      indices: filled.flat(),
      values: filled.flatMap((row, i) => row.map((j) => columns[j]?.factors[i] ?? 0)),
    },
  });
  try {
    model.options.set({ output_flag: false });
    model.run();
    if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return null;
    return Number(model.info.get('objective_function_value'));
  } finally {
    model.dispose();
  }
};

const put = (lp: LinearProgram, cost: number, factors: readonly number[]): void => {
  const rows = [...factors.keys()].filter((row) => factors[row] !== 0);
  lp.addColumn(
    cost,
    rows,
    rows.map((row) => factors[row] as number),
  );
};

/** As the plain solver has it: the value, every row met, and prices that make the same value and leave no column cheap. */
const assertSame = (lp: LinearProgram, plain: Plain): LpStatus => {
  const least = plainLeast(plain);
  const status = lp.solve();
  if (least === null) {
    assert.equal(status, 'infeasible');
    return status;
  }
  assert.equal(status, 'optimal');
  const close = 1e-6 * (1 + Math.abs(least));
  assert.ok(Math.abs(lp.objective() - least) <= close, `${lp.objective()} for ${least}`);
  plain.needs.forEach((need, row) => {
    const met = plain.columns.reduce((sum, c, j) => sum + (c.factors[row] ?? 0) * lp.value(j), 0);
    assert.ok(met >= need - 1e-6 * (1 + Math.abs(need)));
  });
  const duals = lp.duals();
  const worth = plain.needs.reduce((sum, need, row) => sum + need * (duals[row] ?? 0), 0);
  assert.ok(Math.abs(worth - least) <= close);
  for (const dual of duals) assert.ok(dual >= -1e-7);
  return status;
};

const column = (rows: number) =>
  fc.record({
    cost: fc.integer({ min: 0, max: 20 }),
    factors: fc.array(fc.integer({ min: -1, max: 4 }), { minLength: rows, maxLength: rows }),
  });

const grown = fc.integer({ min: 1, max: 6 }).chain((rows) =>
  fc.record({
    needs: fc.array(fc.integer({ min: -3, max: 15 }), { minLength: rows, maxLength: rows }),
    first: fc.array(column(rows), { minLength: 1, maxLength: 8 }),
    later: fc.array(column(rows + 1), { minLength: 1, maxLength: 6 }),
    row: fc.record({
      least: fc.integer({ min: -6, max: 9 }),
      factors: fc.array(fc.integer({ min: -1, max: 3 }), { minLength: 8, maxLength: 8 }),
    }),
    changed: fc.array(fc.integer({ min: -2, max: 20 }), { minLength: rows, maxLength: rows }),
    barred: fc.array(fc.boolean(), { minLength: 8, maxLength: 8 }),
  }),
);

test('values are those of another solver while columns and rows come, needs change and columns are barred', () => {
  fc.assert(
    fc.property(grown, ({ needs, first, later, row, changed, barred }) => {
      const lp = linearProgramFor(needs);
      for (const c of first) put(lp, c.cost, c.factors);
      assertSame(lp, { needs, columns: first });
      lp.addRow(row.least, (c) => row.factors[c] as number);
      const wider = first.map((c, j) => ({ ...c, factors: [...c.factors, row.factors[j] as number] }));
      assertSame(lp, { needs: [...needs, row.least], columns: wider });
      for (const c of later) put(lp, c.cost, c.factors);
      assertSame(lp, { needs: [...needs, row.least], columns: [...wider, ...later] });
      const apart = lp.copy();
      changed.forEach((need, r) => {
        lp.setLeast(r, need);
      });
      assertSame(lp, { needs: [...changed, row.least], columns: [...wider, ...later] });
      first.forEach((_, j) => {
        lp.setBarred(j, barred[j] === true ? 'barred' : 'free');
      });
      const left = wider.map((c, j) => (barred[j] === true ? { ...c, factors: c.factors.map(() => 0) } : c));
      const status = assertSame(lp, { needs: [...changed, row.least], columns: [...left, ...later] });
      if (status === 'optimal') for (const [c] of lp.support()) assert.ok(barred[c] !== true || c >= first.length);
      // what happened to the one leaves the copy as it was
      assertSame(apart, { needs: [...needs, row.least], columns: [...wider, ...later] });
    }),
    { seed: 5, numRuns: 150 },
  );
});

test('a program of one row takes the column that is cheapest by what it gives', () => {
  // derived by hand: 12 pieces, 5 at a cost of 10 or 2 at a cost of 3: sixes of the second cost 18, the first 24
  const lp = linearProgramFor([12]);
  lp.addColumn(10, [0], [5]);
  lp.addColumn(3, [0], [2]);
  assert.equal(lp.solve(), 'optimal');
  assert.equal(lp.objective(), 18);
  assert.deepEqual(lp.support(), [[1, 6]]);
  assert.deepEqual([...lp.duals()], [1.5]);
});
