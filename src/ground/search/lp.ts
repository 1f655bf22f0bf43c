// What is the least cost of columns taken in any fractions, every row met? A linear program that columns and rows are
// added to while it is solved, each time from where the last one stopped. Knows nothing of whole numbers.

/**
 * Minimise cost · x over x >= 0 with every row's sum of factor · x at least its need. Costs must not be below zero, so
 * that the empty start is dual feasible and no first phase is needed.
 *
 * Revised simplex with a dense inverse: dual where rows are short, primal where columns are cheap. Made for tens of rows
 * and thousands of sparse columns.
 */
export interface LinearProgram {
  readonly rows: () => number;
  readonly columns: () => number;
  /** @returns its number; the column may enter at the next `solve` */
  readonly addColumn: (cost: number, rows: ArrayLike<number>, factors: ArrayLike<number>) => number;
  /** @param factorOf of each column so far @returns its number */
  readonly addRow: (least: number, factorOf: (column: number) => number) => number;
  readonly setLeast: (row: number, least: number) => void;
  /** A barred column keeps the value 0 (it leaves at the next `solve`); columns are not barred at first. */
  readonly setBarred: (column: number, barred: 'barred' | 'free') => void;
  /**
   * @param pivots at most so many steps of the simplex
   * @returns 'infeasible' when no x meets every row, 'stopped' when the pivots ran out
   */
  readonly solve: (pivots?: number) => LpStatus;
  /** Of the last `solve`. */
  readonly objective: () => number;
  /** Worth of one more unit of each row's need. At least 0 at an optimum. */
  readonly duals: () => Float64Array;
  readonly value: (column: number) => number;
  /** Columns above zero, with their values, in no order that means anything but always the same. */
  readonly support: () => readonly (readonly [column: number, value: number])[];
  /** Pivots so far. */
  readonly pivots: () => number;
  /** Stands apart from this one from here on; both start from the same place. */
  readonly copy: () => LinearProgram;
}

export type LpStatus = 'optimal' | 'infeasible' | 'stopped';

interface State {
  m: number;
  /** Row-major, `stride` wide. */
  inverse: Float64Array;
  stride: number;
  need: Float64Array;
  /** What stands in each row: a column, or ~row for that row's surplus. */
  basis: Int32Array;
  x: Float64Array;
  n: number;
  cost: Float64Array;
  /** Row in whose place a column stands, or -1. */
  place: Int32Array;
  barred: Uint8Array;
  start: Int32Array;
  rowOf: Int32Array;
  factor: Float64Array;
  surplusPlace: Int32Array;
  pivots: number;
  sinceFresh: number;
  /** Duals, kept up with each pivot while `isPriced`. */
  y: Float64Array;
  isPriced: boolean;
}

const tiny = 1e-9;
/** Entries of the pivot's row or column below this are taken for rounding. */
const pivotTiny = 1e-7;
/** A basis column with less than this left after elimination depends on the others. */
const singularTiny = 1e-10;
/** Pivots after which the inverse is made anew. */
const freshEvery = 80;

export const linearProgramFor = (needs: ArrayLike<number>): LinearProgram => programOn(emptyState(needs));

const emptyState = (needs: ArrayLike<number>): State => {
  const m = needs.length;
  const stride = Math.max(8, m);
  const s: State = {
    m,
    stride,
    inverse: new Float64Array(stride * stride),
    need: new Float64Array(stride),
    basis: new Int32Array(stride),
    x: new Float64Array(stride),
    n: 0,
    cost: new Float64Array(64),
    place: new Int32Array(64),
    barred: new Uint8Array(64),
    start: new Int32Array(65),
    rowOf: new Int32Array(512),
    factor: new Float64Array(512),
    surplusPlace: new Int32Array(stride),
    pivots: 0,
    sinceFresh: 0,
    y: new Float64Array(stride),
    isPriced: false,
  };
  for (let i = 0; i < m; i++) {
    s.need[i] = needs[i] as number;
    s.basis[i] = ~i;
    s.surplusPlace[i] = i;
    s.inverse[i * stride + i] = -1;
    s.x[i] = -(needs[i] as number);
  }
  return s;
};

const programOn = (s: State): LinearProgram => ({
  rows: () => s.m,
  columns: () => s.n,
  addColumn: (cost, rows, factors) => addColumn(s, { cost, rows, factors }),
  addRow: (least, factorOf) => addRow(s, least, factorOf),
  setLeast: (row, least) => {
    const by = least - (s.need[row] as number);
    if (by === 0) return;
    s.need[row] = least;
    for (let i = 0; i < s.m; i++) s.x[i] = (s.x[i] as number) + by * (s.inverse[i * s.stride + row] as number);
  },
  setBarred: (column, barred) => {
    s.barred[column] = barred === 'barred' ? 1 : 0;
  },
  solve: (pivots = 20_000) => solve(s, pivots),
  objective: () => {
    let sum = 0;
    for (let i = 0; i < s.m; i++) sum += costOf(s, s.basis[i] as number) * (s.x[i] as number);
    return sum;
  },
  duals: () => dualsOf(s).slice(0, s.m),
  value: (column) => {
    const at = s.place[column] as number;
    return at < 0 ? 0 : (s.x[at] as number);
  },
  support: () => {
    const out: (readonly [number, number])[] = [];
    for (let i = 0; i < s.m; i++) {
      const b = s.basis[i] as number;
      if (b >= 0 && (s.x[i] as number) > tiny) out.push([b, s.x[i] as number]);
    }
    return out;
  },
  pivots: () => s.pivots,
  copy: () => programOn(copyOf(s)),
});

const copyOf = (s: State): State => ({
  ...s,
  inverse: s.inverse.slice(),
  need: s.need.slice(),
  basis: s.basis.slice(),
  x: s.x.slice(),
  cost: s.cost.slice(),
  place: s.place.slice(),
  barred: s.barred.slice(),
  start: s.start.slice(),
  rowOf: s.rowOf.slice(),
  factor: s.factor.slice(),
  surplusPlace: s.surplusPlace.slice(),
  y: s.y.slice(),
});

const costOf = (s: State, b: number): number => (b < 0 ? 0 : (s.cost[b] as number));

const addColumn = (
  s: State,
  of: { readonly cost: number; readonly rows: ArrayLike<number>; readonly factors: ArrayLike<number> },
): number => {
  const j = s.n;
  const at = s.start[j] as number;
  const end = at + of.rows.length;
  if (j + 1 >= s.cost.length) {
    s.cost = grown(s.cost);
    s.place = grown(s.place);
    s.barred = grown(s.barred);
    s.start = grown(s.start);
  }
  while (end > s.rowOf.length) {
    s.rowOf = grown(s.rowOf);
    s.factor = grown(s.factor);
  }
  for (let k = 0; k < of.rows.length; k++) {
    s.rowOf[at + k] = of.rows[k] as number;
    s.factor[at + k] = of.factors[k] as number;
  }
  s.cost[j] = of.cost;
  s.place[j] = -1;
  s.barred[j] = 0;
  s.start[j + 1] = end;
  s.n = j + 1;
  return j;
};

const grown = <A extends Float64Array | Int32Array | Uint8Array>(old: A): A => {
  const wide = new (old.constructor as new (n: number) => A)(old.length * 2 + 2);
  wide.set(old);
  return wide;
};

/** The new row starts with its own surplus in its place, so a basis that was optimal stays dual feasible. */
const addRow = (s: State, least: number, factorOf: (column: number) => number): number => {
  const i = s.m;
  if (i === s.stride) widen(s);
  const { stride } = s;
  // every column gets its factor: the sparse lists are written anew
  const old = { start: s.start.slice(), rowOf: s.rowOf.slice(), factor: s.factor.slice() };
  const factors = new Float64Array(s.n);
  let entries = old.start[s.n] as number;
  for (let j = 0; j < s.n; j++) {
    factors[j] = factorOf(j);
    if (factors[j] !== 0) entries++;
  }
  while (entries > s.rowOf.length) {
    s.rowOf = grown(s.rowOf);
    s.factor = grown(s.factor);
  }
  let at = 0;
  for (let j = 0; j < s.n; j++) {
    const from = old.start[j] as number;
    const to = old.start[j + 1] as number;
    s.start[j] = at;
    for (let k = from; k < to; k++) {
      s.rowOf[at] = old.rowOf[k] as number;
      s.factor[at++] = old.factor[k] as number;
    }
    if (factors[j] !== 0) {
      s.rowOf[at] = i;
      s.factor[at++] = factors[j] as number;
    }
  }
  s.start[s.n] = at;
  s.m = i + 1;
  s.need[i] = least;
  s.basis[i] = ~i;
  s.surplusPlace[i] = i;
  // inverse of [[B, 0], [r, -1]] is [[B⁻¹, 0], [r·B⁻¹, -1]]
  let reached = 0;
  for (let c = 0; c < i; c++) {
    let sum = 0;
    for (let k = 0; k < i; k++) {
      const b = s.basis[k] as number;
      const f = b < 0 ? 0 : (factors[b] as number);
      if (f !== 0) sum += f * (s.inverse[k * stride + c] as number);
    }
    s.inverse[i * stride + c] = sum;
    s.inverse[c * stride + i] = 0;
  }
  s.inverse[i * stride + i] = -1;
  for (let k = 0; k < i; k++) {
    const b = s.basis[k] as number;
    if (b >= 0) reached += (factors[b] as number) * (s.x[k] as number);
  }
  s.x[i] = reached - least;
  s.y[i] = 0;
  return i;
};

const widen = (s: State): void => {
  const stride = s.stride * 2;
  const inverse = new Float64Array(stride * stride);
  for (let i = 0; i < s.m; i++) inverse.set(s.inverse.subarray(i * s.stride, i * s.stride + s.m), i * stride);
  s.inverse = inverse;
  s.stride = stride;
  s.need = padded(s.need, stride);
  s.basis = padded(s.basis, stride);
  s.x = padded(s.x, stride);
  s.y = padded(s.y, stride);
  s.surplusPlace = padded(s.surplusPlace, stride);
};

const padded = <A extends Float64Array | Int32Array>(old: A, size: number): A => {
  const wide = new (old.constructor as new (n: number) => A)(size);
  wide.set(old);
  return wide;
};

const dualsOf = (s: State): Float64Array => {
  const { m, stride, inverse, y } = s;
  if (s.isPriced) return y;
  s.isPriced = true;
  y.fill(0);
  for (let i = 0; i < m; i++) {
    const c = costOf(s, s.basis[i] as number);
    if (c === 0) continue;
    const row = i * stride;
    for (let k = 0; k < m; k++) y[k] = (y[k] as number) + c * (inverse[row + k] as number);
  }
  return y;
};

const reducedCost = (s: State, j: number, y: Float64Array): number => {
  let rc = s.cost[j] as number;
  const end = s.start[j + 1] as number;
  for (let k = s.start[j] as number; k < end; k++) rc -= (y[s.rowOf[k] as number] as number) * (s.factor[k] as number);
  return rc;
};

const solve = (s: State, limit: number): LpStatus => {
  const until = s.pivots + limit;
  for (let round = 0; round < 50; round++) {
    if (!expelBarred(s)) return 'infeasible';
    const reached = dualPivots(s, until);
    if (reached !== 'optimal') return reached;
    const cheap = primalPivots(s, until);
    if (cheap === 'stopped') return 'stopped';
    if (isFeasible(s)) return 'optimal';
  }
  return 'stopped';
};

const isFeasible = (s: State): boolean => {
  for (let i = 0; i < s.m; i++) {
    const x = s.x[i] as number;
    const b = s.basis[i] as number;
    if (x < -1e-7 * (1 + Math.abs(s.need[i] as number)) || (b >= 0 && s.barred[b] === 1 && x > 1e-7)) return false;
  }
  return true;
};

/** A barred column that stands in the basis leaves it by a dual pivot. False when a row cannot be met without it. */
const expelBarred = (s: State): boolean => {
  for (let i = 0; i < s.m; i++) {
    const b = s.basis[i] as number;
    if (b < 0 || s.barred[b] === 0) continue;
    const j = dualEntering(s, i, (s.x[i] as number) >= 0 ? 'lower' : 'raise');
    if (j !== null) pivot(s, i, j);
    else if ((s.x[i] as number) > 1e-7) return false;
  }
  return true;
};

/**
 * The variable to take the place of row r at least rise of the dual objective; null when none can.
 * 'raise' brings a value below zero up, 'lower' brings one down.
 */
const dualEntering = (s: State, r: number, way: 'raise' | 'lower'): number | null => {
  const { m, stride, inverse } = s;
  const y = dualsOf(s);
  const row = r * stride;
  const sign = way === 'raise' ? 1 : -1;
  let best: number | null = null;
  let least = Number.POSITIVE_INFINITY;
  let strength = 0;
  const { start, rowOf, factor } = s;
  for (let at = -m; at < s.n; at++) {
    // surpluses first, then columns
    let alpha = 0;
    let rc = 0;
    if (at < 0) {
      const i = at + m;
      if (s.surplusPlace[i] !== -1) continue;
      alpha = -sign * (inverse[row + i] as number);
      rc = y[i] as number;
    } else {
      if (s.place[at] !== -1 || s.barred[at] === 1) continue;
      const end = start[at + 1] as number;
      for (let k = start[at] as number; k < end; k++)
        alpha += (factor[k] as number) * (inverse[row + (rowOf[k] as number)] as number);
      alpha *= sign;
      // the entering variable must move this row's value up: alpha below zero
      if (alpha > -pivotTiny) continue;
      rc = reducedCost(s, at, y);
    }
    if (alpha > -pivotTiny) continue;
    const ratio = Math.max(0, rc) / -alpha;
    if (ratio < least - 1e-10 || (ratio < least + 1e-10 && -alpha > strength)) {
      least = Math.min(least, ratio);
      strength = -alpha;
      best = at < 0 ? ~(at + m) : at;
    }
  }
  return best;
};

const dualPivots = (s: State, until: number): LpStatus => {
  for (;;) {
    let r = -1;
    let worst = -1e-8;
    for (let i = 0; i < s.m; i++) {
      const short = (s.x[i] as number) / (1 + Math.abs(s.need[i] as number));
      if (short < worst) {
        worst = short;
        r = i;
      }
    }
    if (r < 0) return 'optimal';
    if (s.pivots >= until) return 'stopped';
    const j = dualEntering(s, r, 'raise');
    if (j === null) {
      if (s.sinceFresh === 0) return 'infeasible';
      refresh(s);
      continue;
    }
    pivot(s, r, j);
  }
};

const primalPivots = (s: State, until: number): LpStatus => {
  let stalled = 0;
  const likely: Likely = { columns: [], enough: 0 };
  for (;;) {
    const y = dualsOf(s);
    const entering = stalled > 200 ? firstCheap(s, y) : (cheapOf(s, y, likely) ?? cheapest(s, y, likely));
    if (entering === null) return 'optimal';
    if (s.pivots >= until) return 'stopped';
    const u = throughInverse(s, entering);
    let r = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < s.m; i++) {
      const b = s.basis[i] as number;
      // a barred column at 0 must not rise: it leaves before that
      const a = b >= 0 && s.barred[b] === 1 ? Math.abs(u[i] as number) : (u[i] as number);
      if (a <= pivotTiny) continue;
      const ratio = Math.max(0, s.x[i] as number) / a;
      if (ratio < least - 1e-11 || (ratio < least + 1e-11 && a > Math.abs(u[r] as number))) {
        least = Math.min(least, ratio);
        r = i;
      }
    }
    // costs are not below zero, so no ray can be cheap: only rounding brings us here
    if (r < 0) {
      refresh(s);
      return 'optimal';
    }
    stalled = least < 1e-10 ? stalled + 1 : 0;
    pivot(s, r, entering, u);
  }
};

const cheapEnough = -1e-8;

/** Columns that were cheap when all were looked at last. */
interface Likely {
  columns: number[];
  /** A column is taken from among them as long as its cost, reduced and by its share, is no more than this. */
  enough: number;
}

/** Of the least reduced cost by its share when all columns were looked at: down to this much of it, all are not looked at again. */
const stillCheap = 0.5;

/** The cheapest of the likely ones; null when none is cheap enough, and all must be looked at. */
const cheapOf = (s: State, y: Float64Array, { columns, enough }: Likely): number | null => {
  let best: number | null = null;
  let least = enough;
  for (const j of columns) {
    if (s.place[j] !== -1) continue;
    const rc = reducedCost(s, j, y);
    const share = rc / (1 + (s.cost[j] as number));
    if (rc >= cheapEnough || share >= least) continue;
    least = share;
    best = j;
  }
  return best;
};

/** Of all columns and surpluses; the cheap ones among the columns are the likely ones from now on. */
const cheapest = (s: State, y: Float64Array, likely: Likely): number | null => {
  let best: number | null = null;
  let least = cheapEnough;
  const columns: number[] = [];
  for (let i = 0; i < s.m; i++) {
    const rc = y[i] as number;
    if (s.surplusPlace[i] === -1 && rc < least) {
      least = rc;
      best = ~i;
    }
  }
  for (let j = 0; j < s.n; j++) {
    if (s.place[j] !== -1 || s.barred[j] === 1) continue;
    const rc = reducedCost(s, j, y);
    if (rc >= cheapEnough) continue;
    columns.push(j);
    const share = rc / (1 + (s.cost[j] as number));
    if (share >= least) continue;
    least = share;
    best = j;
  }
  likely.columns = columns;
  likely.enough = stillCheap * least;
  return best;
};

/** Bland's choice: never cycles. */
const firstCheap = (s: State, y: Float64Array): number | null => {
  for (let i = 0; i < s.m; i++) if (s.surplusPlace[i] === -1 && (y[i] as number) < cheapEnough) return ~i;
  for (let j = 0; j < s.n; j++)
    if (s.place[j] === -1 && s.barred[j] === 0 && reducedCost(s, j, y) < cheapEnough) return j;
  return null;
};

const throughInverse = (s: State, j: number): Float64Array => {
  const { m, stride, inverse } = s;
  const u = new Float64Array(m);
  if (j < 0) {
    for (let i = 0; i < m; i++) u[i] = -(inverse[i * stride + ~j] as number);
    return u;
  }
  const from = s.start[j] as number;
  const to = s.start[j + 1] as number;
  for (let i = 0; i < m; i++) {
    let sum = 0;
    const row = i * stride;
    for (let k = from; k < to; k++) sum += (s.factor[k] as number) * (inverse[row + (s.rowOf[k] as number)] as number);
    u[i] = sum;
  }
  return u;
};

const pivot = (s: State, r: number, j: number, u: Float64Array = throughInverse(s, j)): void => {
  const { m, stride, inverse } = s;
  const by = 1 / (u[r] as number);
  const row = r * stride;
  const gain = s.isPriced ? (j < 0 ? (s.y[~j] as number) : reducedCost(s, j, s.y)) : 0;
  for (let k = 0; k < m; k++) inverse[row + k] = (inverse[row + k] as number) * by;
  s.x[r] = (s.x[r] as number) * by;
  if (gain !== 0) for (let k = 0; k < m; k++) s.y[k] = (s.y[k] as number) + gain * (inverse[row + k] as number);
  for (let i = 0; i < m; i++) {
    const g = u[i] as number;
    if (i === r || g === 0) continue;
    const other = i * stride;
    for (let k = 0; k < m; k++) inverse[other + k] = (inverse[other + k] as number) - g * (inverse[row + k] as number);
    s.x[i] = (s.x[i] as number) - g * (s.x[r] as number);
  }
  const leaves = s.basis[r] as number;
  if (leaves < 0) s.surplusPlace[~leaves] = -1;
  else s.place[leaves] = -1;
  s.basis[r] = j;
  if (j < 0) s.surplusPlace[~j] = r;
  else s.place[j] = r;
  s.pivots++;
  if (++s.sinceFresh >= freshEvery) refresh(s);
};

/**
 * A basis column that depends on those before it makes way for a row's surplus, which does not.
 *
 * @param work after elimination of the columns before c: the basis, and beside it what was done to the rows
 * @returns the row to pivot on
 */
const putSurplus = (s: State, work: Float64Array, c: number): number => {
  const { m } = s;
  const wide = 2 * m;
  let row = -1;
  let own = -1;
  let most = 0;
  for (let k = 0; k < m; k++) {
    if (s.surplusPlace[k] !== -1) continue;
    for (let i = c; i < m; i++) {
      const size = Math.abs(work[i * wide + m + k] as number);
      if (size <= most) continue;
      most = size;
      row = i;
      own = k;
    }
  }
  if (row < 0) throw new Error('the basis of a linear program is singular');
  s.place[s.basis[c] as number] = -1;
  s.basis[c] = ~own;
  s.surplusPlace[own] = c;
  for (let i = 0; i < m; i++) work[i * wide + c] = -(work[i * wide + m + own] as number);
  return row;
};

/** The inverse anew from the basis, by elimination with the largest pivots; values follow. */
const refresh = (s: State): void => {
  const { m, stride } = s;
  const wide = 2 * m;
  const work = new Float64Array(m * wide);
  for (let c = 0; c < m; c++) {
    const b = s.basis[c] as number;
    if (b < 0) work[~b * wide + c] = -1;
    else
      for (let k = s.start[b] as number; k < (s.start[b + 1] as number); k++)
        work[(s.rowOf[k] as number) * wide + c] = s.factor[k] as number;
    work[c * wide + m + c] = 1;
  }
  for (let c = 0; c < m; c++) {
    let p = c;
    for (let i = c + 1; i < m; i++)
      if (Math.abs(work[i * wide + c] as number) > Math.abs(work[p * wide + c] as number)) p = i;
    if (Math.abs(work[p * wide + c] as number) < singularTiny) p = putSurplus(s, work, c);
    if (p !== c)
      for (let k = 0; k < wide; k++) {
        const a = work[c * wide + k] as number;
        work[c * wide + k] = work[p * wide + k] as number;
        work[p * wide + k] = a;
      }
    const f = 1 / (work[c * wide + c] as number);
    for (let k = c; k < wide; k++) work[c * wide + k] = (work[c * wide + k] as number) * f;
    for (let i = 0; i < m; i++) {
      const g = work[i * wide + c] as number;
      if (i === c || g === 0) continue;
      for (let k = c; k < wide; k++)
        work[i * wide + k] = (work[i * wide + k] as number) - g * (work[c * wide + k] as number);
    }
  }
  for (let i = 0; i < m; i++) {
    s.inverse.set(work.subarray(i * wide + m, i * wide + wide), i * stride);
    let sum = 0;
    for (let k = 0; k < m; k++) sum += (s.inverse[i * stride + k] as number) * (s.need[k] as number);
    s.x[i] = sum;
  }
  s.sinceFresh = 0;
  s.isPriced = false;
};
