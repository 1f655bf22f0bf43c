// The order of a recipe that says it: the centre, then log after log, pressed away from the centre.
import type { Side } from '#craft/design';
import { length } from '#craft/measure';
import { at, boxOf, type Polygon } from '#ground/plane';
import { checkSize } from './check-size.ts';
import { machineTurn } from './machine.ts';
import type { SewingStep } from './pieced.ts';
import type { SewnBlock } from './steps.ts';

/** @param added the sides on which patches 1, 2, 3, … go, patch 0 being the centre */
export const logSteps = (block: SewnBlock, added: readonly Side[]): readonly SewingStep[] =>
  added.map((side, i): SewingStep => {
    const log = i + 1;
    const unit = block.kindOf.slice(0, log).map((_, patch) => patch);
    const line = innerEdge(block.outlines[log] as Polygon, side);
    const [from, to] = line as [Polygon[number], Polygon[number]];
    return {
      number: log,
      join: [i === 0 ? { piece: block.kindOf[0] as number } : { unit: i - 1 }, { piece: block.kindOf[log] as number }],
      side,
      machineTurn: machineTurn({ next: side, before: i === 0 ? null : (added[i - 1] as Side), turn: 0 }),
      firstTurn: 0,
      seam: length(Math.abs(to.x - from.x) + Math.abs(to.y - from.y)),
      press: 1,
      patches: [unit, [log]],
      line,
      unfinished: checkSize({
        points: boxCorners([...unit, log].map((p) => block.outlines[p] as Polygon)),
        seam: block.seam,
        slack: block.slack,
      }),
      perBlock: 1,
    };
  });

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
