// From a join tree to the steps a sewer follows: what goes onto what, on which side, how often.
import type { Side } from '#craft/design';
import { type Length, length } from '#craft/measure';
import { centroid, distance, hullOf, offLine, type Point, type Polygon } from '#ground/plane';
import { checkSize } from './check-size.ts';
import type { SeamLine } from './chords.ts';
import { besideSeam, headingAcross, type Lying, machineTurn } from './machine.ts';
import type { Part, SewingStep } from './pieced.ts';
import { darkerSide } from './pressing.ts';
import { sideOfSeam } from './seam-side.ts';
import type { Branch, Join, JoinTree, RingJoin, SeamJoin } from './tree.ts';

/** What the steps are made from; outlines without corners on straight sides. */
export interface SewnBlock {
  readonly outlines: readonly Polygon[];
  readonly kindOf: readonly number[];
  readonly size: readonly [Length, Length];
  readonly seam: Length;
  readonly slack: number;
  readonly lightnessOf: (patch: number) => number;
  /** Outline of a unit that is not convex. */
  readonly outlineOf: (unit: readonly number[]) => Polygon;
  readonly isConvex: (unit: readonly number[]) => boolean;
}

/** A step before it is numbered, as it lies on the board. */
interface SeamOnBoard {
  readonly kind: SewingStep['kind'];
  readonly corners: number;
  readonly parts: readonly [Part, Part];
  readonly patches: readonly [readonly number[], readonly number[]];
  readonly side: Side;
  readonly heading: number;
  readonly lying: Lying;
  readonly path: Polygon;
  readonly seam: number;
}

/** Steps in sewing order: what a unit is made of comes before it. */
export const stepsOf = (block: SewnBlock, tree: JoinTree): readonly SewingStep[] => {
  const outward = buildsOutward(block, tree);
  const order = makingOrder(block, tree, outward);
  const times = timesEach(order, tree);
  const setIn = order.some((form) => isSetIn(tree.joins.get(form) as Join));
  const steps: SewingStep[] = [];
  const madeBy = new Map<number, number>();
  const partOf = (branch: Branch): Part =>
    'patch' in branch ? { piece: block.kindOf[branch.patch] as number } : { unit: madeBy.get(branch.form) as number };
  const lyingOf = (branch: Branch): Lying => {
    if ('patch' in branch) return isSquare(block.outlines[branch.patch] as Polygon) ? 'square' : 'as on the board';
    const made = steps[madeBy.get(branch.form) as number] as SewingStep;
    return { heading: made.heading, turn: (branch.turn * 180) / Math.PI };
  };
  for (const form of order) {
    const join = tree.joins.get(form) as Join;
    const hands: Hands = { block, partOf, lyingOf, next: steps.length };
    const seams = join.kind === 'ring' ? ringSeams(hands, join) : [plainSeam(hands, join, outward)];
    for (const seam of seams) {
      steps.push(
        stepOf({ block, seam, number: steps.length + 1, outward, setIn, perBlock: times.get(form) as number }),
      );
    }
    madeBy.set(form, steps.length - 1);
  }
  return steps;
};

interface Hands {
  readonly block: SewnBlock;
  readonly partOf: (branch: Branch) => Part;
  readonly lyingOf: (branch: Branch) => Lying;
  /** Index of the next step. */
  readonly next: number;
}

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
  const outline = unitOutline(block, unit);
  return {
    number: of.number,
    join: seam.parts,
    kind: seam.kind,
    corners: seam.corners,
    side: seam.side,
    heading: seam.heading,
    machineTurn: machineTurn(seam.heading, seam.lying),
    lying: seam.lying,
    seam: length(seam.seam),
    press: of.outward ? 1 : darkerSide({ ...block, path: seam.path, parts: seam.patches }),
    patches: seam.patches,
    line: seam.path,
    stopsAt: of.setIn ? stopsOn(seam.path, outline, block.slack) : [],
    unfinished: checkSize({ outline, seam: block.seam, slack: block.slack }),
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

const unitOutline = (block: SewnBlock, unit: readonly number[]): Polygon =>
  block.isConvex(unit)
    ? hullOf(
        unit.flatMap((i) => block.outlines[i] as Polygon),
        block.slack,
      )
    : block.outlineOf(unit);

const plainSeam = (hands: Hands, join: SeamJoin, outward: boolean): SeamOnBoard => {
  const { branches, hand } = ordered(hands.block, join, outward);
  const [first, second] = branches;
  const patches = [patchesOf(first), patchesOf(second)] as const;
  const path = join.path ?? seamEnds({ ...hands.block, line: join.line, patches: patches[1] });
  return {
    kind: join.bends > 0 ? 'set-in' : 'straight',
    corners: join.bends,
    parts: [hands.partOf(first), hands.partOf(second)],
    patches,
    side: sideOfSeam(join.line, hand),
    heading: headingToward({ block: hands.block, line: join.line, patches: patches[1] }),
    lying: hands.lyingOf(first),
    path,
    seam: pathLength(path),
  };
};

/** The first arm part-way onto the centre, the others along their whole seams, then the first closed. */
const ringSeams = (hands: Hands, ring: RingJoin): readonly SeamOnBoard[] => {
  const { block, next } = hands;
  const [centre, ...arms] = ring.branches;
  const sofar = [...patchesOf(centre)];
  const headings = arms.map((arm, i) =>
    headingToward({ block, line: (ring.seams[i] as RingJoin['seams'][number]).line, patches: patchesOf(arm) }),
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
      side: sideToward({ block, line, patches: patchesOf(arm) }),
      heading: headings[i] as number,
      lying: i === 0 ? hands.lyingOf(centre) : { heading: headings[i - 1] as number, turn: 0 },
      path: i === 0 ? sharedPath({ block, line, patches: patchesOf(centre) }) : whole,
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
    side: (seams[0] as SeamOnBoard).side,
    heading: (seams[0] as SeamOnBoard).heading,
    lying: { heading: (seams.at(-1) as SeamOnBoard).heading, turn: 0 },
    path: sharedPath({ block, line, patches: patchesOf(last) }),
    seam: onNeighbour,
  };
  return [...seams, close];
};

/** The ends of the part of a line that patches lie on. */
const sharedPath = (of: {
  readonly block: SewnBlock;
  readonly line: SeamLine;
  readonly patches: readonly number[];
}): Polygon => seamEnds({ ...of.block, line: of.line, patches: of.patches });

const sideToward = (of: {
  readonly block: SewnBlock;
  readonly line: SeamLine;
  readonly patches: readonly number[];
}): Side => {
  const patch = of.patches[0] as number;
  const after = offLine(of.line.from, of.line.to, centroid(of.block.outlines[patch] as Polygon)) > 0;
  return sideOfSeam(of.line, after ? 'after' : 'before');
};

const headingToward = (of: {
  readonly block: SewnBlock;
  readonly line: SeamLine;
  readonly patches: readonly number[];
}): number => {
  const seam = [of.line.from, of.line.to] as const;
  const outlines = of.patches.map((patch) => of.block.outlines[patch] as Polygon);
  return headingAcross(seam, besideSeam(outlines, seam));
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

/** The ends of a seam on its line: the outermost corners of the patches that lie along it. */
const seamEnds = (of: {
  readonly outlines: readonly Polygon[];
  readonly slack: number;
  readonly line: SeamLine;
  readonly patches: readonly number[];
}): Polygon => {
  const { line } = of;
  const on = of.patches
    .flatMap((i) => of.outlines[i] as Polygon)
    .filter((p) => Math.abs(offLine(line.from, line.to, p)) < 3 * of.slack);
  const along = (p: Point) =>
    (p.x - line.from.x) * (line.to.x - line.from.x) + (p.y - line.from.y) * (line.to.y - line.from.y);
  const sorted = on.toSorted((a, b) => along(a) - along(b));
  return [sorted[0] as Point, sorted.at(-1) as Point];
};

const pathLength = (path: Polygon): number =>
  path.slice(1).reduce((all, p, i) => all + distance(path[i] as Point, p), 0);

const patchesOf = (branch: Branch): readonly number[] => ('patch' in branch ? [branch.patch] : branch.patches);

/** The unit first and the piece that goes onto it second; two of a sort in reading order. */
const ordered = (
  block: SewnBlock,
  join: SeamJoin,
  outward: boolean,
): { readonly branches: readonly [Branch, Branch]; readonly hand: 'before' | 'after' } => {
  const [first, second] = join.branches;
  const swap = 'patch' in first && ('form' in second || (outward && nearerMiddle(block, second.patch, first.patch)));
  return swap ? { branches: [second, first], hand: 'before' } : { branches: [first, second], hand: 'after' };
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
    const join = tree.joins.get(form) as Join;
    if (join.kind === 'ring' || join.bends > 0) return false;
    const [first, second] = join.branches;
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

/** Forms in the order of making. */
const makingOrder = (block: SewnBlock, tree: JoinTree, outward: boolean): readonly number[] => {
  const order = new Set<number>();
  const visit = (form: number): void => {
    if (order.has(form)) return;
    const join = tree.joins.get(form) as Join;
    const branches = join.kind === 'ring' ? join.branches : ordered(block, join, outward).branches;
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
