// From a join tree to the steps a sewer follows: what goes onto what, on which side, how often.

import type { Side } from '#craft/design';
import { type Length, length } from '#craft/measure';
import { centroid, distance, offLine, type Point, type Polygon } from '#ground/plane';
import { checkSize } from './check-size.ts';
import type { SeamLine } from './chords.ts';
import { machineTurn } from './machine.ts';
import type { Part, SewingStep } from './pieced.ts';
import { darkerSide, lengthAlong } from './pressing.ts';
import type { Branch, Join, JoinTree } from './tree.ts';

/** What the steps are made from; outlines without corners on straight sides. */
export interface SewnBlock {
  readonly outlines: readonly Polygon[];
  readonly kindOf: readonly number[];
  readonly size: readonly [Length, Length];
  readonly seam: Length;
  readonly slack: number;
  readonly lightnessOf: (patch: number) => number;
}

/** Steps in sewing order: what a unit is made of comes before it. */
export const stepsOf = (block: SewnBlock, tree: JoinTree): readonly SewingStep[] => {
  const order: number[] = [];
  const numbered = new Map<number, number>();
  const outward = buildsOutward(block, tree);
  const visit = (form: number): void => {
    if (numbered.has(form)) return;
    const join = tree.joins.get(form) as Join;
    for (const branch of ordered(block, join, outward).branches) if ('form' in branch) visit(branch.form);
    numbered.set(form, order.length);
    order.push(form);
  };
  visit(tree.root);
  const perBlock = timesEach(order, tree);
  const steps: SewingStep[] = [];
  for (const form of order) {
    const { branches, side } = ordered(block, tree.joins.get(form) as Join, outward);
    const [first, second] = branches;
    const patches = [patchesOf(first), patchesOf(second)] as const;
    const { line } = tree.joins.get(form) as Join;
    steps.push({
      number: steps.length + 1,
      join: [partOf(first, block, numbered), partOf(second, block, numbered)],
      side,
      machineTurn: machineTurn({
        next: side,
        before: 'form' in first ? (steps[numbered.get(first.form) as number] as SewingStep).side : null,
        turn: 'form' in first ? first.turn : 0,
      }),
      firstTurn: 'form' in first ? first.turn : 0,
      seam: seamLength(block, line, patches),
      press: outward ? 1 : darkerSide({ ...block, line, parts: patches }),
      patches,
      line: seamEnds(block, line, patches),
      unfinished: checkSize({
        points: [...patches[0], ...patches[1]].flatMap((i) => block.outlines[i] as Polygon),
        seam: block.seam,
        slack: block.slack,
      }),
      perBlock: perBlock.get(form) as number,
    });
  }
  return steps;
};

export const seamLength = (
  block: SewnBlock,
  line: SeamLine,
  patches: readonly [readonly number[], readonly number[]],
): Length =>
  length(patches[1].reduce((all, i) => all + lengthAlong(block.outlines[i] as Polygon, line, block.slack), 0));

/** The ends of the seam on the line, from the corners of the second part that lie on it. */
export const seamEnds = (
  block: SewnBlock,
  line: SeamLine,
  patches: readonly [readonly number[], readonly number[]],
): Polygon => {
  const on = patches[1]
    .flatMap((i) => block.outlines[i] as Polygon)
    .filter((p) => Math.abs(offLine(line.from, line.to, p)) < 3 * block.slack);
  const along = (p: Point) =>
    (p.x - line.from.x) * (line.to.x - line.from.x) + (p.y - line.from.y) * (line.to.y - line.from.y);
  const sorted = on.toSorted((a, b) => along(a) - along(b));
  return [sorted[0] as Point, sorted.at(-1) as Point];
};

const patchesOf = (branch: Branch): readonly number[] => ('patch' in branch ? [branch.patch] : branch.patches);

const partOf = (branch: Branch, block: SewnBlock, numbered: ReadonlyMap<number, number>): Part =>
  'patch' in branch ? { piece: block.kindOf[branch.patch] as number } : { unit: numbered.get(branch.form) as number };

/** The unit first and the piece that goes onto it second; two of a sort in reading order. */
const ordered = (
  block: SewnBlock,
  join: Join,
  outward: boolean,
): { readonly branches: readonly [Branch, Branch]; readonly side: Side } => {
  const { first, second } = join;
  const swap = 'patch' in first && ('form' in second || (outward && nearerMiddle(block, second.patch, first.patch)));
  return swap
    ? { branches: [second, first], side: join.line.lie === 0 ? 'top' : slantSide(join.line, 'left') }
    : { branches: [first, second], side: join.line.lie === 0 ? 'bottom' : slantSide(join.line, 'right') };
};

/** A slanted seam counts as upright up to 45 degrees from it, else as level. */
const slantSide = (line: SeamLine, side: 'left' | 'right'): Side => {
  const dx = line.to.x - line.from.x;
  const dy = line.to.y - line.from.y;
  if (Math.abs(dx) <= Math.abs(dy) * (1 + 1e-6)) return side;
  // the line runs up and to the right or left: what lies right of it lies below or above
  const below = dx > 0;
  return (side === 'right') === below ? 'bottom' : 'top';
};

const nearerMiddle = (block: SewnBlock, a: number, b: number): boolean => {
  const middle = { x: block.size[0] / 2, y: block.size[1] / 2 };
  const far = (i: number) => distance(centroid(block.outlines[i] as Polygon), middle);
  return far(a) < far(b) - block.slack;
};

/**
 * Whether the block grows piece by piece round a patch in its middle, as a log cabin does: then the
 * middle comes first and every seam is pressed away from it.
 */
const buildsOutward = (block: SewnBlock, tree: JoinTree): boolean => {
  let form = tree.root;
  for (;;) {
    const { first, second } = tree.joins.get(form) as Join;
    if ('form' in first && 'form' in second) return false;
    if ('form' in first) form = first.form;
    else if ('form' in second) form = second.form;
    else return inside(block, first.patch) || inside(block, second.patch);
  }
};

const inside = (block: SewnBlock, patch: number): boolean =>
  (block.outlines[patch] as Polygon).every(
    (p) =>
      p.x > block.slack && p.y > block.slack && p.x < block.size[0] - block.slack && p.y < block.size[1] - block.slack,
  );

const timesEach = (order: readonly number[], tree: JoinTree): ReadonlyMap<number, number> => {
  const times = new Map<number, number>([[tree.root, 1]]);
  for (const form of order.toReversed()) {
    const { first, second } = tree.joins.get(form) as Join;
    for (const b of [first, second]) {
      if ('form' in b) times.set(b.form, (times.get(b.form) ?? 0) + (times.get(form) as number));
    }
  }
  return times;
};
