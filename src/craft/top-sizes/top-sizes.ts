// How do the check sizes of a top come about? As those of a block, of which its blocks are the pieces: each adds its own size as
// it comes out, and the seams between them and the plain pieces count as they lie. One maker sews both with one habit.
import { type Crossed, type SeamTerm, type SizeModel, sizePath, type Way } from '#craft/accuracy';
import { cornerTolerance } from '#craft/limits';
import { type Length, tidy } from '#craft/measure';
import type { BlockPlan, TopPlan, TopStep } from '#craft/plan';
import { outlineOfPlaced, type PlacedStrip, type TopThing, turnedBy } from '#craft/setting';
import { at, boxOf, dot, hullOf, type Point, type Polygon, signedArea } from '#ground/plane';
import { chainFor, type Neighbours, neighboursIn } from './on-point-chain.ts';
import { type SewnTop, sewnTop } from './sewn-top.ts';
import { type ThingTerms, termsOf } from './thing-terms.ts';

/**
 * Models of the check sizes of a top, across and down in the frame of each step, in the order of its steps. Missing are those that end
 * in setting triangles, which are trimmed later, and those that no straight way goes through.
 *
 * @param blocks one entry per block, colouring and mirror
 * @source docs/formulas.md#accuracy
 */
export const topSizes = (of: {
  readonly top: TopPlan;
  readonly blocks: readonly BlockPlan[];
  readonly seam: Length;
}): readonly SizeModel[] => {
  const { steps, set } = of.top;
  const sewn = sewnTop(of);
  const outlines = [...set.placed.map(outlineOfPlaced), ...set.strips.map(({ points }) => points)];
  const slack = cornerTolerance * Math.max(set.width, set.height);
  const neighbours = neighboursIn(outlines, slack);
  const models: SizeModel[] = [];
  steps.forEach((step, index) => {
    const things = step.things.flat();
    const unit = things.map(sewn.placeOf);
    const outline = outlineOf(of.top, step, { things, outlines: unit.map((one) => outlines[one] as Polygon), slack });
    for (const way of ['across', 'down'] as const) {
      const along = directionOf(step, way);
      const task = { outlines, unit, outline, seam: of.seam, slack, way: { along, across: at(-along.y, along.x) } };
      const model = modelOf({ sewn, neighbours, task, step, index, way, before: models });
      if (model !== null) models.push(model);
    }
  });
  return models;
};

/** With its corners on, a set on point is measured upright. */
const frameOf = ({ stage, angle }: TopStep): number => (stage === 'corner' ? 0 : angle);

const directionOf = (step: TopStep, way: Way): Point => turnedBy(at(1, 0), frameOf(step) + (way === 'across' ? 0 : 90));

const isSlanted = (step: TopStep): boolean => frameOf(step) % 90 !== 0;

/** Finished. What of a border to be mitred hangs beyond the quilt does not belong to it. */
const outlineOf = (
  { set }: TopPlan,
  step: TopStep,
  of: { readonly things: readonly TopThing[]; readonly outlines: readonly Polygon[]; readonly slack: number },
): Polygon => {
  if (isSlanted(step)) return hullOf(of.outlines.flat(), of.slack);
  const boxes = of.outlines.map((outline, i) => {
    const thing = of.things[i] as TopThing;
    const { x, y, width, height } = boxOf(outline);
    const hangs = 'strip' in thing && isMitred(set.strips[thing.strip] as PlacedStrip);
    return { xs: hangs && width > height ? [] : [x, x + width], ys: hangs && height > width ? [] : [y, y + height] };
  });
  const [xs, ys] = [boxes.flatMap((box) => box.xs), boxes.flatMap((box) => box.ys)];
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return [at(left, top), at(right, top), at(right, bottom), at(left, bottom)];
};

/** It does not fill its box. */
const isMitred = ({ role, rect, points }: PlacedStrip): boolean =>
  role === 'border' && signedArea(points) < (1 - 1e-9) * rect.width * rect.height;

interface Wanted {
  readonly sewn: SewnTop;
  readonly neighbours: Neighbours;
  readonly task: Parameters<typeof sizePath>[0];
  readonly step: TopStep;
  readonly index: number;
  readonly way: Way;
  /** Of earlier steps. */
  readonly before: readonly SizeModel[];
}

const modelOf = ({ sewn, neighbours, task, step, index, way, before }: Wanted): SizeModel | null => {
  const path = alongBlocks(sewn, task);
  if (path === null) return null;
  const { along, across } = task.way;
  const { crossed, ends, from, to } = path;
  const isUpright = !isSlanted(step);
  if (!isUpright && [crossed[0], crossed.at(-1)].some((end) => end && sewn.isTriangle(end.patch))) return null;
  const chain = isUpright
    ? chainFor({ ...task, sewn, neighbours, middle: (dot(from, across) + dot(to, across)) / 2 })
    : null;
  const isCounted = ({ patch }: Crossed): boolean => chain === null || !sewn.isOnPoint(patch);
  const terms = crossed.flatMap((one, i): readonly ThingTerms[] =>
    isCounted(one)
      ? [
          termsOf(sewn, {
            thing: one.patch,
            edges: [
              { normal: one.enters, weight: i === 0 ? ends[0] : -dot(one.enters, along) },
              { normal: one.leaves, weight: i === crossed.length - 1 ? ends[1] : dot(one.leaves, along) },
            ],
            before,
          }),
        ]
      : [],
  );
  const seams = crossed.slice(1).flatMap((after, i): readonly SeamTerm[] => {
    const first = crossed[i] as Crossed;
    if (!isCounted(first) && !isCounted(after)) return [];
    const shrinks = tidy(dot(first.leaves, along));
    return [{ step: sewn.stepBetween(first.patch, after.patch), between: [first.patch, after.patch], shrinks }];
  });
  const all = chain === null ? terms : [...terms, chain];
  const drawn = step.unfinished[way === 'across' ? 0 : 1];
  const moved = (p: Point): Point => {
    const by = chain === null ? 0 : chain.level - dot(p, across);
    return at(p.x + by * across.x, p.y + by * across.y);
  };
  return {
    step: index,
    way,
    drawn,
    expected: tidy(drawn + all.reduce((sum, { off }) => sum + off, 0)),
    cuts: all.flatMap(({ cuts }) => cuts),
    seams: [...seams, ...all.flatMap((one) => one.seams)],
    line: [moved(from), moved(to)],
  };
};

/** Where only sashes lie in the middle, through the blocks beside them: these hold more seams. */
const alongBlocks = (sewn: SewnTop, task: Wanted['task']): ReturnType<typeof sizePath> => {
  const path = sizePath(task);
  if (path === null || path.crossed.some(({ patch }) => sewn.isBlock(patch)) || !task.unit.some(sewn.isBlock))
    return path;
  const { across } = task.way;
  const middle = dot(path.from, across);
  const reach = (outline: Polygon): number => Math.max(...outline.map((p) => Math.abs(dot(p, across) - middle)));
  const beside = Math.min(...path.crossed.map(({ patch }) => reach(task.outlines[patch] as Polygon)));
  return sizePath({ ...task, beside }) ?? path;
};
