// From a join tree to the steps a sewer follows: what goes onto what, on which side, how often.
import { length } from '#craft/measure';
import type { Arc, Outline } from '#ground/arc';
import { distance, offLine, type Point, type Polygon } from '#ground/plane';
import { checkSize } from './check-size.ts';
import { hollowHand } from './hollow-hand.ts';
import { seamsInPlace } from './in-place.ts';
import { type Branch, type Join, type JoinTree, patchesOf, type SeamJoin } from './join.ts';
import { type Lying, machineTurn, sideOf } from './machine.ts';
import { buildsOutward, nearerMiddle } from './outward.ts';
import type { Part, PiecedBlock, SewingStep } from './pieced.ts';
import { darkerSide, hollow as hollowWish, outward as outwardWish } from './pressing.ts';
import { ringSeams } from './ring-seams.ts';
import { headingOffLine, headingToward, seamEnds } from './seam-ends.ts';
import type { Hands, SeamOnBoard, SewnBlock } from './sewn.ts';

/** Steps in sewing order, what a unit is made of before it; and every seam that they sew, in its place. */
export const stepsOf = (block: SewnBlock, tree: JoinTree): Pick<PiecedBlock, 'steps' | 'seams'> => {
  const outward = buildsOutward(block, tree);
  const order = makingOrder(block, tree, outward);
  const times = timesEach(order, tree);
  const setIn = order.some((form) => isSetIn(tree.joins.get(form) as Join));
  const steps: SewingStep[] = [];
  const madeBy = new Map<number, number>();
  const stepsOfForm = new Map<number, readonly [number, number]>();
  const partOf = (branch: Branch): Part =>
    'patch' in branch ? { piece: block.kindOf[branch.patch] as number } : { unit: madeBy.get(branch.form) as number };
  const lyingOf = (branch: Branch): Lying => {
    if ('patch' in branch) {
      const isAlike = isSquare(block.outlines[branch.patch] as Polygon) && block.looksAlikeTurned(branch.patch);
      return isAlike ? 'square' : 'as on the board';
    }
    const made = steps[madeBy.get(branch.form) as number] as SewingStep;
    return { heading: made.heading, turn: (branch.turn * 180) / Math.PI };
  };
  for (const form of order) {
    const join = tree.joins.get(form) as Join;
    const hands: Hands = { block, partOf, lyingOf, next: steps.length };
    const from = steps.length;
    const seams = join.kind === 'ring' ? ringSeams(hands, join) : [plainSeam(hands, join, outward)];
    for (const seam of seams) {
      steps.push(
        stepOf({ block, seam, number: steps.length + 1, outward, setIn, perBlock: times.get(form) as number }),
      );
    }
    madeBy.set(form, steps.length - 1);
    stepsOfForm.set(form, [from, steps.length]);
  }
  return { steps, seams: seamsInPlace({ outlines: block.outlines, tree, steps, stepsOfForm }) };
};

const stepOf = (of: {
  readonly block: SewnBlock;
  readonly seam: SeamOnBoard;
  readonly number: number;
  readonly outward: boolean;
  /** Whether anything in the block is set in. */
  readonly setIn: boolean;
  readonly perBlock: number;
}): SewingStep => {
  const { block, seam } = of;
  const unit = [...new Set([...seam.patches[0], ...seam.patches[1]])].sort((a, b) => a - b);
  const { points: outline, arcs } = unitOutline(block, unit);
  return {
    number: of.number,
    join: seam.parts,
    kind: seam.kind,
    corners: seam.corners,
    side: sideOf(seam.heading),
    heading: seam.heading,
    machineTurn: machineTurn(seam.heading, seam.lying),
    lying: seam.lying,
    seam: length(seam.seam),
    // on paper the new piece is opened over its seam
    wish:
      of.outward || seam.kind === 'foundation'
        ? outwardWish
        : (seam.wish ?? darkerSide({ ...block, path: seam.path, parts: seam.patches })),
    patches: seam.patches,
    line: seam.path,
    ...(seam.arcs === undefined ? {} : { arcs: seam.arcs }),
    stopsAt: of.setIn ? stopsOn(seam.path, outline, block.slack) : [],
    unfinished: checkSize({ outline, arcs, seam: block.seam, slack: block.slack }),
    perBlock: of.perBlock,
  };
};

const isSetIn = (join: Join): boolean => join.kind === 'seam' && join.bends > 0;

/** Ends of a seam at inside corners of the unit it makes: what fills such a corner is set in. */
const stopsOn = (path: Polygon, outline: Polygon, slack: number): readonly Point[] => {
  const ends = [path[0], path.at(-1)] as readonly Point[];
  return ends.filter((end) =>
    outline.some((corner, i) => {
      const before = outline[(i + outline.length - 1) % outline.length] as Point;
      const after = outline[(i + 1) % outline.length] as Point;
      return distance(corner, end) < 3 * slack && offLine(before, after, corner) > slack;
    }),
  );
};

const unitOutline = (block: SewnBlock, unit: readonly number[]): Outline => {
  const isCurved = unit.some((patch) => (block.arcs[patch] as readonly Arc[]).length > 0);
  const points = isCurved ? null : block.convexOutline(unit);
  return points === null ? block.outlineOf(unit) : { points, arcs: [] };
};

const plainSeam = (hands: Hands, join: SeamJoin, outward: boolean): SeamOnBoard => {
  const [first, second] = ordered(hands.block, join, outward);
  const patches = [patchesOf(first), patchesOf(second)] as const;
  const path = join.path
    ? fromLine(join.path, join, hands.block.slack)
    : seamEnds({ ...hands.block, line: join.line, patches: patches[1] });
  const isCurved = join.bends === 0 && join.arcs.length > 0;
  const hollow = isCurved ? hollowHand(join.arcs) : null;
  return {
    kind: join.onPaper ? 'foundation' : join.bends > 0 ? 'set-in' : isCurved ? 'curved' : 'straight',
    corners: join.bends,
    parts: [hands.partOf(first), hands.partOf(second)],
    patches,
    heading: isCurved
      ? headingOffLine(join.line, second === join.branches[1] ? 'right' : 'left')
      : headingToward({ ...hands.block, line: join.line, patches: patches[1] }),
    lying: hands.lyingOf(first),
    path,
    ...(join.arcs.length === 0 ? {} : { arcs: join.arcs }),
    // to its hollow side, which lies on top
    ...(hollow === null ? {} : { wish: hollowWish }),
    seam: join.length ?? pathLength(path),
  };
};

const isSquare = (outline: Polygon): boolean => {
  const sides = outline.map((a, i) => distance(a, outline[(i + 1) % outline.length] as Point));
  const [first, second] = [
    distance(outline[0] as Point, outline[2] as Point),
    distance(outline[1] as Point, (outline[3] ?? outline[1]) as Point),
  ];
  const near = 1e-6 * first;
  return (
    outline.length === 4 &&
    sides.every((side) => Math.abs(side - (sides[0] as number)) < near) &&
    Math.abs(first - second) < near
  );
};

/** Of a seam that goes round corners the stretch on its line is sewn first, wherever it is an end of the seam. */
const fromLine = (path: Polygon, { line, bends }: SeamJoin, slack: number): Polygon => {
  const isOn = (leg: readonly (Point | undefined)[]): boolean =>
    leg.every((p) => p !== undefined && Math.abs(offLine(line.from, line.to, p)) < 3 * slack);
  return bends > 0 && !isOn(path.slice(0, 2)) && isOn(path.slice(-2)) ? path.toReversed() : path;
};

const pathLength = (path: Polygon): number =>
  path.slice(1).reduce((all, p, i) => all + distance(path[i] as Point, p), 0);

/**
 * The unit first and the piece that goes onto it second; two of a sort in reading order. Of a curved seam the hollow side lies on
 * top, where its edge can be seen and eased: common practice, no source.
 */
const ordered = (block: SewnBlock, join: SeamJoin, outward: boolean): readonly [Branch, Branch] => {
  if (join.onPaper) return join.branches;
  const [first, second] = join.branches;
  const hollow = join.bends === 0 ? hollowHand(join.arcs) : null;
  if (hollow !== null) return hollow === 'right' ? [first, second] : [second, first];
  const swap = 'patch' in first && ('form' in second || (outward && nearerMiddle(block, second.patch, first.patch)));
  return swap ? [second, first] : [first, second];
};

/** Forms in the order of making. */
const makingOrder = (block: SewnBlock, tree: JoinTree, outward: boolean): readonly number[] => {
  const order = new Set<number>();
  const visit = (form: number): void => {
    if (order.has(form)) return;
    const join = tree.joins.get(form) as Join;
    const branches = join.kind === 'ring' ? join.branches : ordered(block, join, outward);
    for (const branch of branches) if ('form' in branch) visit(branch.form);
    order.add(form);
  };
  visit(tree.root);
  return [...order];
};

const timesEach = (order: readonly number[], tree: JoinTree): ReadonlyMap<number, number> => {
  const times = new Map<number, number>([[tree.root, 1]]);
  for (const form of order.toReversed()) {
    for (const b of (tree.joins.get(form) as Join).branches) {
      if ('form' in b) times.set(b.form, (times.get(b.form) ?? 0) + (times.get(form) as number));
    }
  }
  return times;
};
