// The seams of a ring round a centre, as they are sewn one after another.

import { type Branch, patchesOf, type RingJoin } from './join.ts';
import { headingToward, seamEnds } from './seam-ends.ts';
import type { Hands, SeamOnBoard } from './sewn.ts';

/** The first arm part-way onto the centre, the others along their whole seams, then the first closed. */
export const ringSeams = (hands: Hands, ring: RingJoin): readonly SeamOnBoard[] => {
  const { block, next } = hands;
  const [centre, ...arms] = ring.branches;
  const sofar = [...patchesOf(centre)];
  const headings = arms.map((arm, i) =>
    headingToward({ ...block, line: (ring.seams[i] as RingJoin['seams'][number]).line, patches: patchesOf(arm) }),
  );
  const seams = arms.map((arm, i): SeamOnBoard => {
    const { line, onCentre, onNeighbour } = ring.seams[i] as RingJoin['seams'][number];
    const base = [...sofar];
    sofar.push(...patchesOf(arm));
    const whole = seamEnds({ ...block, line, patches: patchesOf(arm) });
    return {
      kind: i === 0 ? 'partial-begin' : 'straight',
      corners: 0,
      parts: [i === 0 ? hands.partOf(centre) : { unit: next + i - 1 }, hands.partOf(arm)],
      patches: [base, patchesOf(arm)],
      heading: headings[i] as number,
      lying: i === 0 ? hands.lyingOf(centre) : { heading: headings[i - 1] as number, turn: 0 },
      path: i === 0 ? seamEnds({ ...block, line, patches: patchesOf(centre) }) : whole,
      seam: i === 0 ? onCentre : onCentre + onNeighbour,
    };
  });
  const [begun, last] = [arms[0], arms.at(-1)] as [Branch, Branch];
  const { line, onNeighbour } = ring.seams[0] as RingJoin['seams'][number];
  const close: SeamOnBoard = {
    kind: 'partial-close',
    corners: 0,
    parts: [{ unit: next + arms.length - 1 }, hands.partOf(begun)],
    patches: [sofar.filter((patch) => !patchesOf(begun).includes(patch)), patchesOf(begun)],
    heading: (seams[0] as SeamOnBoard).heading,
    lying: { heading: (seams.at(-1) as SeamOnBoard).heading, turn: 0 },
    path: seamEnds({ ...block, line, patches: patchesOf(last) }),
    seam: onNeighbour,
  };
  return [...seams, close];
};
