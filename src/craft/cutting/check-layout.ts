// Is this layout what it says it is? Looked at afresh from coordinates and counts, sharing nothing with the search.
import type { Length } from '#craft/measure';
import type { Demand, Layout } from './cloth.ts';

export type LayoutFault =
  | { readonly code: 'outside-cloth'; readonly strip: number; readonly part: number; readonly piece: number }
  | { readonly code: 'outside-part'; readonly strip: number; readonly part: number; readonly piece: number }
  | { readonly code: 'outside-strip'; readonly strip: number; readonly part: number }
  | { readonly code: 'strip-height'; readonly strip: number }
  | { readonly code: 'strips-meet'; readonly strip: number }
  | { readonly code: 'parts-meet'; readonly strip: number; readonly part: number }
  | { readonly code: 'overlap'; readonly a: number; readonly b: number }
  | { readonly code: 'wrong-size'; readonly of: number }
  | { readonly code: 'may-not-turn'; readonly of: number }
  | { readonly code: 'wrong-count'; readonly of: number; readonly found: number; readonly wanted: number }
  | { readonly code: 'wrong-width' }
  | { readonly code: 'wrong-length' };

export interface CheckTask {
  readonly layout: Layout;
  readonly width: Length;
  readonly demands: readonly Demand[];
}

/** What rounding of sums may leave, in the document's unit. */
const near = 1e-9;

const over = (a: number, b: number): boolean => a > b + near;
const differ = (a: number, b: number): boolean => Math.abs(a - b) > near;

/** All faults of a layout; none for a good one. */
export const checkLayout = (task: CheckTask): readonly LayoutFault[] => [
  ...nestingFaults(task),
  ...demandFaults(task),
  ...overlapFaults(task.layout),
];

const nestingFaults = ({ layout, width }: CheckTask): readonly LayoutFault[] => {
  const faults: LayoutFault[] = [];
  if (differ(layout.width, width)) faults.push({ code: 'wrong-width' });
  let end = 0;
  layout.strips.forEach((strip, s) => {
    if (over(end, strip.at)) faults.push({ code: 'strips-meet', strip: s });
    end = strip.at + strip.height;
    let across = 0;
    let tallest = 0;
    strip.parts.forEach((part, p) => {
      if (over(across, part.at)) faults.push({ code: 'parts-meet', strip: s, part: p });
      across = part.at + part.width;
      if (over(across, width)) faults.push({ code: 'outside-strip', strip: s, part: p });
      part.pieces.forEach((piece, k) => {
        const bottom = piece.at + piece.cut[1];
        tallest = Math.max(tallest, bottom);
        if (over(piece.cut[0], part.width) || over(bottom, strip.height) || over(0, piece.at))
          faults.push({ code: 'outside-part', strip: s, part: p, piece: k });
      });
    });
    if (differ(tallest, strip.height)) faults.push({ code: 'strip-height', strip: s });
  });
  if (differ(layout.length, end)) faults.push({ code: 'wrong-length' });
  return faults;
};

const demandFaults = ({ layout, demands }: CheckTask): readonly LayoutFault[] => {
  const faults: LayoutFault[] = [];
  const found = demands.map(() => 0);
  for (const strip of layout.strips)
    for (const part of strip.parts)
      for (const { cut, turned, of } of part.pieces) {
        const demand = demands[of];
        found[of] = (found[of] ?? 0) + 1;
        const size = turned ? [demand?.along, demand?.across] : [demand?.across, demand?.along];
        if (size[0] !== cut[0] || size[1] !== cut[1]) faults.push({ code: 'wrong-size', of });
        if (turned && demand?.mayTurn !== true) faults.push({ code: 'may-not-turn', of });
      }
  found.forEach((n, of) => {
    const wanted = demands[of]?.count ?? 0;
    if (n !== wanted) faults.push({ code: 'wrong-count', of, found: n, wanted });
  });
  return faults;
};

interface Placed {
  readonly x: number;
  readonly y: number;
  readonly right: number;
  readonly bottom: number;
}

/** Sweeps down the cloth over pieces in their absolute places; also sees pieces outside the cloth. */
const overlapFaults = (layout: Layout): readonly LayoutFault[] => {
  const faults: LayoutFault[] = [];
  const placed: Placed[] = [];
  layout.strips.forEach((strip, s) => {
    strip.parts.forEach((part, p) => {
      part.pieces.forEach((piece, k) => {
        const x = part.at;
        const y = strip.at + piece.at;
        const right = x + piece.cut[0];
        const bottom = y + piece.cut[1];
        placed.push({ x, y, right, bottom });
        if (over(0, x) || over(0, y) || over(right, layout.width) || over(bottom, layout.length))
          faults.push({ code: 'outside-cloth', strip: s, part: p, piece: k });
      });
    });
  });
  const order = placed.map((_, i) => i).sort((a, b) => (placed[a]?.y ?? 0) - (placed[b]?.y ?? 0));
  let open: number[] = [];
  for (const i of order) {
    const a = placed[i] as Placed;
    open = open.filter((j) => over((placed[j] as Placed).bottom, a.y));
    for (const j of open) {
      const b = placed[j] as Placed;
      if (over(b.right, a.x) && over(a.right, b.x)) faults.push({ code: 'overlap', a: j, b: i });
    }
    open.push(i);
  }
  return faults;
};
