// Is a layout what it says it is? Pieces are put at their coordinates and looked at there: nothing is taken over from the
// search but the strips themselves.

import type { Sheet, SheetUse } from '#craft/sheets';
import type { Cutting, Job, Kind, StripUse } from '#craft/strips';

export interface LaidPiece {
  readonly kind: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface StripLayout {
  readonly job: Job;
  readonly cutting: Cutting;
  readonly strips: readonly StripUse[];
}

/** Strips one below the other from the top, parts from the left, pieces of a part from its upper left. */
export const placedPieces = ({ job, strips }: Omit<StripLayout, 'cutting'>): readonly LaidPiece[] => {
  const placed: LaidPiece[] = [];
  let top = 0;
  for (const { pattern, times } of strips) {
    for (let i = 0; i < times; i++) {
      let x = 0;
      for (const part of pattern.parts)
        for (let j = 0; j < part.times; j++) {
          let y = top;
          for (const run of part.stack.runs) {
            const { width, height } = job.kinds[run.kind] as Kind;
            const [across, along] = run.turned ? [height, width] : [width, height];
            for (let k = 0; k < run.times; k++) {
              placed.push({ kind: run.kind, x, y, width: across, height: along });
              y += along;
            }
          }
          x += part.stack.width;
        }
      top += pattern.height;
    }
  }
  return placed;
};

/** What is wrong with a layout on open cloth of so much length, in words; nothing for a good one. */
export const layoutFaults = (layout: StripLayout & { readonly length: number }): readonly string[] => {
  const { job, length } = layout;
  const placed = placedPieces(layout);
  const made = countsIn(placed, job.kinds.length);
  return [
    ...job.kinds.flatMap(({ count }, k) => ((made[k] as number) < count ? [`kind ${k}: ${made[k]} of ${count}`] : [])),
    ...rectangleFaults({ placed, width: job.width, height: length, stages: layout.cutting.stages }),
    ...sizeFaults(placed, job.kinds),
    ...heightFaults(layout),
  ];
};

export const sheetFaults = (layout: {
  readonly kinds: readonly Kind[];
  readonly cutting: Cutting;
  readonly sheets: readonly Sheet[];
  readonly uses: readonly SheetUse[];
}): readonly string[] => {
  const { kinds, cutting, sheets, uses } = layout;
  const made = kinds.map(() => 0);
  const used = sheets.map(() => 0);
  const faults: string[] = [];
  for (const { sheet, times, strips } of uses) {
    const { width, height } = sheets[sheet] as Sheet;
    const job = { width, kinds };
    const placed = placedPieces({ job, strips });
    used[sheet] = (used[sheet] as number) + times;
    countsIn(placed, kinds.length).forEach((n, k) => {
      made[k] = (made[k] as number) + n * times;
    });
    faults.push(
      ...rectangleFaults({ placed, width, height, stages: cutting.stages }),
      ...sizeFaults(placed, kinds),
      ...heightFaults({ job, cutting, strips }),
    );
  }
  kinds.forEach(({ count }, k) => {
    if ((made[k] as number) < count) faults.push(`kind ${k}: ${made[k]} of ${count}`);
  });
  sheets.forEach(({ stock }, s) => {
    if (stock !== null && (used[s] as number) > stock) faults.push(`sheet ${s}: ${used[s]} of ${stock}`);
  });
  return faults;
};

const countsIn = (placed: readonly LaidPiece[], kinds: number): number[] => {
  const counts = new Array<number>(kinds).fill(0);
  for (const { kind } of placed) counts[kind] = (counts[kind] as number) + 1;
  return counts;
};

/** A piece has its kind's sides, turned only where it may. */
const sizeFaults = (placed: readonly LaidPiece[], kinds: readonly Kind[]): readonly string[] =>
  placed.flatMap(({ kind, width, height }) => {
    const known = kinds[kind];
    if (known === undefined) return [`unknown kind ${kind}`];
    if (width === known.width && height === known.height) return [];
    const isTurned = width === known.height && height === known.width;
    if (!isTurned) return [`kind ${kind}: ${width} by ${height}`];
    return known.mayTurn ? [] : [`kind ${kind} is turned`];
  });

/** Strips as high as a piece, where that is asked. */
const heightFaults = ({ job, cutting, strips }: StripLayout): readonly string[] => {
  if (cutting.stages === 2 || cutting.stripHeights === 'any') return [];
  const heights = new Set(
    job.kinds.flatMap((kind) => (kind.mayTurn && kind.height <= job.width ? [kind.height, kind.width] : [kind.height])),
  );
  return strips.flatMap(({ pattern, times }) =>
    times > 0 && !heights.has(pattern.height) ? [`a strip of ${pattern.height}, as high as no piece`] : [],
  );
};

const rectangleFaults = (of: {
  readonly placed: readonly LaidPiece[];
  readonly width: number;
  readonly height: number;
  readonly stages: number;
}): readonly string[] => {
  const { placed, width, height, stages } = of;
  const outside = placed.filter((p) => p.x < 0 || p.y < 0 || p.x + p.width > width || p.y + p.height > height);
  const needed = stagesOf(placed);
  return [
    ...outside.map((p) => `kind ${p.kind} at ${p.x}, ${p.y} reaches over ${width} by ${height}`),
    ...overlaps(placed),
    ...(needed === null ? ['no knife can cut this'] : needed > stages ? [`${needed} stages of ${stages}`] : []),
  ];
};

/** A sweep down the cloth over pieces that are open, kept from left to right. */
const overlaps = (placed: readonly LaidPiece[]): readonly string[] => {
  const order = [...placed].sort((a, b) => a.y - b.y || a.x - b.x);
  let open: LaidPiece[] = [];
  const faults: string[] = [];
  for (const piece of order) {
    open = open.filter((other) => other.y + other.height > piece.y);
    for (const other of open)
      if (other.x < piece.x + piece.width && piece.x < other.x + other.width)
        faults.push(`kinds ${other.kind} and ${piece.kind} meet at ${piece.x}, ${piece.y}`);
    open.push(piece);
  }
  return faults;
};

/**
 * Fewest stages that set all pieces apart, cutting first across and in each stage wherever a cut goes through no piece; what is trimmed
 * off single pieces is not counted. Null where no straight cuts do.
 */
const stagesOf = (placed: readonly LaidPiece[]): number | null => {
  if (placed.length === 0) return 0;
  const apart = (pieces: readonly LaidPiece[], isAcross: boolean, stage: number): number | null => {
    if (pieces.length === 1) return stage;
    const groups = groupsOf(pieces, isAcross);
    if (groups.length === 1) {
      const others = groupsOf(pieces, !isAcross);
      return others.length === 1 ? null : apart(pieces, !isAcross, stage + 1);
    }
    let most = stage + 1;
    for (const group of groups) {
      if (group.length === 1) continue;
      const needed = apart(group, !isAcross, stage + 1);
      if (needed === null) return null;
      most = Math.max(most, needed);
    }
    return most;
  };
  return apart(placed, true, 0);
};

/** Pieces between two neighbouring cuts. */
const groupsOf = (pieces: readonly LaidPiece[], isAcross: boolean): readonly (readonly LaidPiece[])[] => {
  const from = (p: LaidPiece): number => (isAcross ? p.y : p.x);
  const to = (p: LaidPiece): number => (isAcross ? p.y + p.height : p.x + p.width);
  const groups: LaidPiece[][] = [];
  let end = Number.NEGATIVE_INFINITY;
  for (const piece of [...pieces].sort((a, b) => from(a) - from(b))) {
    if (from(piece) >= end) groups.push([]);
    groups.at(-1)?.push(piece);
    end = Math.max(end, to(piece));
  }
  return groups;
};
