// The order that a recipe says itself: the centre, then log after log (or frame after frame), pressed away from the centre.
import type { Side } from '#craft/design';
import { length } from '#craft/measure';
import { at, boxOf, type Polygon } from '#ground/plane';
import { checkSize } from './check-size.ts';
import { headingOf, type Lying, machineTurn } from './machine.ts';
import type { SewingStep } from './pieced.ts';
import { outward } from './pressing.ts';
import type { SewnBlock } from './sewn.ts';

/**
 * Steps that add one patch after another to a core.
 *
 * @param core  steps that make the core; empty when it is patch 0 alone
 * @param added the sides on which the last patches go, in order; the patches before them are the core
 */
export const logSteps = (of: {
  readonly block: SewnBlock;
  readonly core: readonly SewingStep[];
  readonly added: readonly Side[];
}): readonly SewingStep[] => {
  const { block, core, added } = of;
  const corePatches = block.outlines.length - added.length;
  return added.map((side, i): SewingStep => {
    const log = corePatches + i;
    const unit = block.kindOf.slice(0, log).map((_, patch) => patch);
    const lying = lyingBefore(of, i);
    const line = innerEdge(block.outlines[log] as Polygon, side);
    const [from, to] = line as [Polygon[number], Polygon[number]];
    const made = core.length + i;
    return {
      number: made + 1,
      join: [
        made === 0 ? { piece: block.kindOf[0] as number } : { unit: made - 1 },
        { piece: block.kindOf[log] as number },
      ],
      kind: 'straight',
      corners: 0,
      side,
      heading: headingOf[side],
      machineTurn: machineTurn(headingOf[side], lying),
      lying,
      seam: length(Math.abs(to.x - from.x) + Math.abs(to.y - from.y)),
      wish: outward,
      patches: [unit, [log]],
      line,
      stopsAt: [],
      unfinished: checkSize({
        outline: boxCorners([...unit, log].map((p) => block.outlines[p] as Polygon)),
        seam: block.seam,
        slack: block.slack,
      }),
      perBlock: 1,
    };
  });
};

/** The core as it was made, or as it lies on the board; then each unit as its last log was sewn. */
const lyingBefore = (
  of: { readonly block: SewnBlock; readonly core: readonly SewingStep[]; readonly added: readonly Side[] },
  i: number,
): Lying => {
  const last = of.core.at(-1);
  if (i > 0) return { heading: headingOf[of.added[i - 1] as Side], turn: 0 };
  if (last) return { heading: last.heading, turn: 0 };
  const { width, height } = boxOf(of.block.outlines[0] as Polygon);
  const isAlike = Math.abs(width - height) < of.block.slack && of.block.looksAlikeTurned(0);
  return isAlike ? 'square' : 'as on the board';
};

const innerEdge = (log: Polygon, side: Side): Polygon => {
  const box = boxOf(log);
  const right = box.x + box.width;
  const bottom = box.y + box.height;
  switch (side) {
    case 'left':
      return [at(right, box.y), at(right, bottom)];
    case 'right':
      return [at(box.x, box.y), at(box.x, bottom)];
    case 'top':
      return [at(box.x, bottom), at(right, bottom)];
    case 'bottom':
      return [at(box.x, box.y), at(right, box.y)];
  }
};

const boxCorners = (outlines: readonly Polygon[]): Polygon => {
  const box = boxOf(outlines.flat());
  return [
    at(box.x, box.y),
    at(box.x + box.width, box.y),
    at(box.x + box.width, box.y + box.height),
    at(box.x, box.y + box.height),
  ];
};
