// One block by itself: its spots, what reaches its edge, and what each way to press a step would cost in bulk and show-through.
import { cornerTolerance } from '#craft/limits';
import type { PressWish, SeamInPlace } from '#craft/piecing';
import { at, dot, type Point } from '#ground/plane';
import { type Centre, centresIn } from './centres.ts';
import type { Press } from './press.ts';
import { endsOf, type SeamEnd, type Spot, type StepEnd, spotsOn } from './spots.ts';

/** What pressing asks of a block that is pieced. */
export interface SewnSeams {
  readonly steps: readonly { readonly wish: PressWish; readonly perBlock: number }[];
  readonly seams: readonly SeamInPlace[];
}

export interface StudiedBlock {
  readonly steps: readonly StudiedStep[];
  readonly spots: readonly Spot<StepEnd>[];
  /** Seams that may be spun. */
  readonly centres: readonly Centre[];
  /** Seams that end on the block's outer edge. */
  readonly rim: readonly SeamEnd<StepEnd>[];
}

/** What a step may be pressed to, and what each of that costs one block: only told apart where as much nests. */
export interface StudiedStep {
  readonly presses: readonly Press[];
  readonly costs: readonly number[];
}

/**
 * Against the wishes, by seam: for every unit of L* that the other side is darker; for every seam that ends on this one from
 * the side that it is pressed onto; for every point that it folds an allowance into; and for what breaks a tie.
 *
 * @source docs/formulas.md#pressing
 */
const cost = { lightness: 4, bulk: 40, point: 240, tie: 1 } as const;

/** Seams and halves of seams that run into one point, from which on the last of them is better pressed open. */
const manySeams = 8;
const costOfMany = 400;

export const studyBlock = (block: SewnSeams, size: readonly [number, number]): StudiedBlock => {
  const slack = slackOf(size);
  const { spots, ends, rim } = spotsInBlock(block, size);
  const [across, down] = size;
  // what the edges of the next blocks will run over
  const edges = [
    [at(0, 0), at(across, 0)],
    [at(across, 0), at(across, down)],
    [at(across, down), at(0, down)],
    [at(0, down), at(0, 0)],
  ].map((path) => ({ path }));
  const onEdges = spotsOn(edges, ends, slack);
  const steps = studiedSteps({ ...block, spots, points: pointsOf(sidesOf([...spots, ...onEdges])) });
  return {
    steps,
    spots,
    centres: centresIn({
      spots,
      overOf: block.seams.map(({ step }) => step),
      pressesOf: steps.map(({ presses }) => presses),
    }),
    rim,
  };
};

/** Points of a block nearer than this are one. */
export const slackOf = (size: readonly [number, number]): number => 3 * cornerTolerance * Math.max(...size);

/** Where its seams come together, and the ends that reach its edge; of a block as it faces in the quilt if its seams are so. */
export const spotsInBlock = (
  { seams }: Pick<SewnSeams, 'seams'>,
  size: readonly [number, number],
): Pick<StudiedBlock, 'spots' | 'rim'> & { readonly ends: readonly SeamEnd<StepEnd>[] } => {
  const slack = slackOf(size);
  const [across, down] = size;
  const ends = seams.flatMap((seam) => endsOf(seam, (clockwise): StepEnd => ({ step: seam.step, clockwise })));
  const isOnRim = ({ x, y }: Point): boolean => x < slack || y < slack || x > across - slack || y > down - slack;
  return { spots: spotsOn(seams, ends, slack), ends, rim: ends.filter((end) => isOnRim(end.at)) };
};

const studiedSteps = (of: {
  readonly steps: SewnSeams['steps'];
  readonly seams: readonly SeamInPlace[];
  readonly spots: readonly Spot<StepEnd>[];
  readonly points: readonly PointAt[];
}): readonly StudiedStep[] => {
  const { steps, seams, spots, points } = of;
  const onto = steps.map((): [number, number] => [0, 0]);
  const many = new Set<number>();
  const addTo = (step: number, part: 0 | 1, more: number): void => {
    const costs = onto[step] as [number, number];
    costs[part] += more;
  };
  for (const spot of spots) {
    const { step } = seams[spot.over] as SeamInPlace;
    const second = sideOfSecond(seams[spot.over] as SeamInPlace);
    spot.ends.forEach((side, i) => {
      addTo(step, i === second ? 1 : 0, cost.bulk * side.length);
    });
    if (spot.ends[0].length + spot.ends[1].length + 2 >= manySeams) many.add(step);
  }
  for (const { step, part } of points) addTo(step, part, cost.point);
  for (const { step } of seams) {
    const { wish } = steps[step] as SewnSeams['steps'][number];
    addTo(step, wish.toward === 0 ? 1 : 0, cost.lightness * Math.round(wish.darker) + cost.tie);
  }
  return steps.map(({ wish, perBlock }, step): StudiedStep => {
    if (wish.why === 'outward' || wish.why === 'hollow') return { presses: [1], costs: [0] };
    const [first, second] = onto[step] as [number, number];
    // open, so many allowances lie flatter than to any side
    return many.has(step)
      ? { presses: [0, 1, 'open'], costs: [first + costOfMany * perBlock, second + costOfMany * perBlock, 0] }
      : { presses: [0, 1], costs: [first, second] };
  });
};

/** Of a spot's two sides the one that the second part lies on. */
const sideOfSecond = (seam: SeamInPlace): 0 | 1 => {
  const [{ into, toward }] = endsOf(seam, () => null) as readonly [SeamEnd<null>];
  return into.x * toward.y - into.y * toward.x > 0 ? 1 : 0;
};

/** A step that would fold an allowance into a point, pressed onto that part. */
interface PointAt {
  readonly step: number;
  readonly part: 0 | 1;
}

/**
 * Where two seams come to one point of a line from its one side, leaning alike with nothing between them, as at the tip of a
 * goose: each is better pressed away from the other.
 *
 * @param sides of spots, and of points of the rim, with the line that they come to
 */
const pointsOf = (sides: readonly Side[]): readonly PointAt[] =>
  sides.flatMap(({ ends, along }) => {
    const [a, b] = ends;
    if (ends.length !== 2 || a === undefined || b === undefined) return [];
    const [lean, other] = [a, b].map(({ into }) => dot(into, along)) as [number, number];
    if (Math.abs(lean + other) > 1e-3 || Math.abs(lean) < 1e-3) return [];
    return [
      { step: a.of.step, part: partBeside(a, b) },
      { step: b.of.step, part: partBeside(b, a) },
    ];
  });

interface Side {
  readonly ends: readonly SeamEnd<StepEnd>[];
  readonly along: Point;
}

const sidesOf = (spots: readonly Spot<StepEnd>[]): readonly Side[] =>
  spots.flatMap(({ ends, along }) => ends.map((side) => ({ ends: side, along })));

/** The part of a seam that another, which begins where it does, runs along. */
const partBeside = (seam: SeamEnd<StepEnd>, other: SeamEnd<StepEnd>): 0 | 1 =>
  dot(seam.toward, other.into) > 0 ? 1 : 0;
