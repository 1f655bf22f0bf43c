// Which parts side by side are worth most within a width? Each part may be had a few times only.

export interface Across {
  /** Begins a new list of parts for this room. */
  readonly open: (room: number) => void;
  /** Parts come from the narrowest to the widest. A part that a narrower one replaces at no loss is passed over. */
  readonly offer: (of: {
    readonly id: number;
    readonly wide: number;
    readonly worth: number;
    readonly most: number;
  }) => void;
  /** Most worth of the parts offered. */
  readonly best: () => number;
  /** The same within less room. */
  readonly bestIn: (room: number) => number;
  /** Adds to a list the parts of the best choice: id and how often, one after the other. */
  readonly read: (into: number[]) => void;
  readonly work: () => number;
}

export const acrossFor = (): Across => {
  let stride = 0;
  let best = new Float64Array(0);
  let took = new Uint8Array(0);
  let n = 0;
  let cells = 0;
  /** Most worth among the parts that may be had as often as fit. */
  let plenty = 0;
  const ids: number[] = [];
  const wides: number[] = [];
  /** Parts in one bundle; 0 stands for any number, one by one. */
  const bundles: number[] = [];

  const pass = (id: number, wide: number, bundle: number, worth: number): void => {
    const span = wide * Math.max(1, bundle);
    const value = worth * Math.max(1, bundle);
    if (took.length < (n + 1) * stride) {
      const more = new Uint8Array(Math.max((n + 1) * stride, 2 * took.length));
      more.set(took);
      took = more;
    }
    const from = n * stride;
    took.fill(0, from, from + stride);
    if (bundle === 0) {
      for (let x = span; x < stride; x++) {
        const having = value + (best[x - span] as number);
        if (having > (best[x] as number)) {
          best[x] = having;
          took[from + x] = 1;
        }
      }
    } else
      for (let x = stride - 1; x >= span; x--) {
        const having = value + (best[x - span] as number);
        if (having > (best[x] as number)) {
          best[x] = having;
          took[from + x] = 1;
        }
      }
    ids[n] = id;
    wides[n] = wide;
    bundles[n] = bundle;
    n++;
    cells += stride;
  };

  return {
    open: (room) => {
      stride = room + 1;
      if (best.length < stride) best = new Float64Array(stride);
      best.fill(0, 0, stride);
      n = 0;
      plenty = 0;
    },
    offer: ({ id, wide, worth, most }) => {
      if (worth <= plenty || wide >= stride) return;
      const fit = Math.floor((stride - 1) / wide);
      if (most >= fit) {
        plenty = worth;
        pass(id, wide, fit === 1 ? 1 : 0, worth);
        return;
      }
      let left = most;
      for (let bundle = 1; left > 0; bundle *= 2) {
        const now = Math.min(bundle, left);
        left -= now;
        pass(id, wide, now, worth);
      }
    },
    best: () => best[stride - 1] as number,
    bestIn: (room) => best[room] as number,
    read: (into) => {
      let x = stride - 1;
      for (let i = n - 1; i >= 0; i--) {
        let times = 0;
        const bundle = bundles[i] as number;
        const span = (wides[i] as number) * Math.max(1, bundle);
        while (x >= span && took[i * stride + x] === 1) {
          times += Math.max(1, bundle);
          x -= span;
          if (bundle !== 0) break;
        }
        if (times === 0) continue;
        if (into.length > 0 && into[into.length - 2] === ids[i])
          into[into.length - 1] = (into.at(-1) as number) + times;
        else into.push(ids[i] as number, times);
      }
    },
    work: () => cells,
  };
};
