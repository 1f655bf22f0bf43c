import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { naturesOf, planMade, planQuilt, type QuiltPlan } from '#craft';
import { toDocument } from '#craft/design';
import { length } from '#craft/measure';
import { example, planned, quilt, type Written } from '#documents';
import { type Chance, chanceFrom } from '#ground/chance';
import { toNumber } from '#ground/exact';
import { recalling } from '#ground/recall';
import { boundsOf } from './bounds.ts';
import { countedParts } from './counted-parts.ts';
import {
  type Front,
  type FrontPoint,
  type FrontTask,
  figuresOf,
  methodsFor,
  searchFront,
  toldPoints,
} from './index.ts';
import { partsOf, type QuiltParts, takenIn } from './parts.ts';
import { type Weighing, weighingFor } from './weighing.ts';

/** Quilts with two to four kinds of units, with and without borders. */
const testSeeds = [2, 5, 13, 34];

const planOf = (name: string): QuiltPlan => {
  const planned = planQuilt(example(name), { budget: { steps: 0 } });
  assert.ok(planned.ok);
  return planned.value;
};

const laying = { first: 60, after: 200, search: 6 };

const whole = (
  plan: QuiltPlan,
  steps: number,
  more: Pick<FrontTask, 'laying' | 'search'> = {},
): { readonly fronts: readonly Front[]; readonly last: Front } => {
  const fronts: Front[] = [];
  const search = searchFront({ plan, steps, ...more, memory: recalling(5000) });
  for (let at = search.next(); ; at = search.next()) {
    fronts.push(at.value);
    if (at.done) return { fronts, last: at.value };
  }
};

const threeOf = ({ cloth, minutes, deviation }: FrontPoint) => [cloth, minutes, deviation] as const;

const isBeaten = (point: FrontPoint, by: FrontPoint): boolean => {
  const pairs = threeOf(point).map((value, i) => value - (threeOf(by)[i] as number));
  return pairs.every((worse) => worse > -1e-9) && pairs.some((worse) => worse > 1e-9);
};

/** Every choice there is, planned whole one by one. */
const everyPoint = (
  plan: QuiltPlan,
  { groups }: Front,
  steps = 0,
): readonly (FrontPoint & Pick<QuiltPlan, 'fabrics'>)[] => {
  const choices = groups.reduce<readonly (readonly number[])[]>(
    (before, { options }) => before.flatMap((choice) => options.map((_, i) => [...choice, i])),
    [[]],
  );
  const units = groups.reduce((sum, { count }) => sum + count, 0);
  return choices.map((choice) => {
    const made = planMade({
      quilt: plan.quilt,
      methods: methodsFor(groups, choice),
      options: { budget: { steps }, fold: 'where-asked' },
    });
    assert.ok(made.ok);
    const squares = groups.reduce(
      (sum, { count, options }, i) => sum + count * (options[choice[i] as number]?.deviation ?? 0) ** 2,
      0,
    );
    const bound = made.value.fabrics.reduce((sum, { laid }) => sum + laid.bound, 0);
    return {
      choice,
      ...figuresOf(made.value),
      clothBound: length(bound),
      fabrics: made.value.fabrics,
      deviation: length(Math.sqrt(squares / units)),
    };
  });
};

/** By choice: the area of all pieces over their cloth's width; of a cloth that every choice cuts alike what its layout is bounded by. */
const lengthsByArea = ({ quilt }: QuiltPlan, all: ReturnType<typeof everyPoint>): readonly number[] => {
  const piecesOf = ({ fabrics }: Pick<QuiltPlan, 'fabrics'>, of: string) =>
    fabrics.find(({ id }) => id === of)?.pieces.map(({ cut, count }) => ({ cut, count })) ?? [];
  const alike = (id: string): boolean => new Set(all.map((point) => JSON.stringify(piecesOf(point, id)))).size === 1;
  return all.map((point) =>
    quilt.fabrics.reduce((sum, { id, usableWidth }) => {
      if (alike(id)) return sum + (point.fabrics.find((cloth) => cloth.id === id)?.laid.bound ?? 0);
      const area = piecesOf(point, id).reduce((whole, { cut, count }) => whole + cut[0] * cut[1] * count, 0);
      return sum + area / toNumber(usableWidth);
    }, 0),
  );
};

const assertBest = (plan: QuiltPlan, front: Front): void => {
  assert.ok(front.isWhole);
  assert.deepEqual(front.proven, ['cloth', 'minutes', 'trueness']);
  const all = everyPoint(plan, front);
  assert.equal(all.length, front.choices);
  const best = all.filter((point) => !all.some((other) => isBeaten(point, other)));
  const look = (points: readonly FrontPoint[]) =>
    [
      ...new Set(
        points.map((point) =>
          threeOf(point)
            .map((value) => value.toFixed(6))
            .join(' '),
        ),
      ),
    ].sort();
  assert.deepEqual(look(front.points), look(best));
  for (const i of [0, 1, 2] as const) {
    const least = (points: readonly FrontPoint[]) => Math.min(...points.map((point) => threeOf(point)[i]));
    assert.equal(least(front.points).toFixed(6), least(all).toFixed(6));
  }
};

/** Two blocks of units on a grid, in cloths as they fall; few enough choices to plan all. */
const unitsAtRandom = (chance: Chance): Written => {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;
  const [light, dark] = pick([
    ['light', 'dark'],
    ['medium', 'dark'],
    ['light', 'medium'],
  ] as const);
  const geese = {
    id: 'geese',
    size: ['4', '4'],
    recipe: {
      kind: 'units',
      grid: [2, 2],
      units: [0, 1].map((y) => ({ at: [0, y], unit: 'flying-geese', tones: [dark, light] })),
    },
  };
  const four = {
    id: 'four',
    size: '4',
    recipe: { kind: 'units', grid: [1, 1], units: [{ at: [0, 0], unit: 'four-patch', tones: [light, dark] }] },
  };
  const strips = {
    id: 'strips',
    size: '4',
    recipe: { kind: 'units', grid: [1, 1], units: [{ at: [0, 0], unit: 'rails', tones: [dark, light, 'medium'] }] },
  };
  const halves = {
    id: 'halves',
    size: '4',
    recipe: {
      kind: 'units',
      grid: [2, 2],
      units: [0, 1, 2, 3].map((i) => ({
        at: [i % 2, Math.floor(i / 2)],
        unit: 'half-square',
        turn: pick([0, 90, 180, 270]),
        tones: [light, dark],
      })),
    },
  };
  const blocks = pick([
    [geese, four],
    [halves, strips],
    [four, strips, halves],
  ]);
  const rows = Array.from({ length: 2 + Math.floor(chance() * 2) }, () =>
    Array.from({ length: 3 }, (_, i) => ({ block: (blocks[i % blocks.length] as { id: string }).id })),
  );
  const borders = chance() < 0.5 ? [] : [{ width: pick(['1', '2 1/2']), fabric: pick(['light', 'medium', 'dark']) }];
  return quilt({ blocks, top: { rows, borders } }) as unknown as Written;
};

const partsIn = (plan: QuiltPlan): { readonly parts: QuiltParts } & Pick<Weighing, 'groups' | 'weigh'> => {
  const { groups, cutIn, weigh } = weighingFor(plan);
  const now = cutIn(groups.map(() => 0));
  assert.ok(now);
  const cutting = partsOf({ now, groups });
  let at = cutting.next();
  while (!at.done) at = cutting.next();
  assert.ok(at.value);
  return { parts: at.value, groups, weigh };
};

/** Before any is weighed: the quickest of all to the minute that plans round to, and no layout shorter than areas ask for. */
const assertNearest = (plan: QuiltPlan, all: ReturnType<typeof everyPoint>): void => {
  const { parts, groups } = partsIn(plan);
  const natures = naturesOf(plan.quilt);
  const bounds = boundsOf({ plan, parts, natures, counts: countedParts(parts, natures), groups: groups.length });
  const { choice, bound } = bounds.quickest({ below: Number.POSITIVE_INFINITY, isKnown: () => false });
  const least = Math.min(...all.map(({ minutes }) => minutes));
  assert.ok(Math.abs(bound - least) <= 0.5 + 1e-9, `${bound} min bounded, ${least} the least of all`);
  assert.equal(all.find((point) => point.choice.join() === choice?.join())?.minutes, least);
  const shortest = Math.min(...lengthsByArea(plan, all));
  const { bound: cloth } = bounds.leastCloth();
  // near enough is a hundredth
  assert.ok(cloth <= shortest + 1e-9 && cloth >= shortest - 0.01, `${cloth} bounded, ${shortest} by the areas of all`);
};

/** Of a few choices weighed, against all choices planned. */
const assertBounded = (plan: QuiltPlan, front: Front): void => {
  const all = everyPoint(plan, front);
  assertNearest(plan, all);
  const { minutes, cloth } = front.least;
  assert.ok(minutes !== null && cloth !== null);
  const least = Math.min(...all.map((point) => point.minutes));
  assert.ok(minutes <= least, `${minutes} min are promised to be least, and there are ${least}`);
  if (front.proven.includes('minutes')) assert.equal(Math.min(...front.points.map((point) => point.minutes)), least);
  assert.ok(cloth <= Math.min(...all.map((point) => point.cloth)) + 1e-9);
  if (front.proven.includes('cloth')) assert.ok(front.points.some((point) => point.cloth <= cloth + 1e-9));
  // no layout at all is shorter, and what a layout is proven not to be shorter than may be more than this
  for (const { choice } of all.toSorted((a, b) => a.clothBound - b.clothBound).slice(0, 3)) {
    const searched = planMade({
      quilt: plan.quilt,
      methods: methodsFor(front.groups, choice),
      options: { budget: { steps: 4 }, fold: 'where-asked' },
    });
    assert.ok(searched.ok && cloth <= figuresOf(searched.value).cloth + 1e-9);
  }
};

describe('the front of ways to make', () => {
  const lane = planOf('lantern-lane');
  const { last: front } = whole(lane, 100);

  test('of few choices all are planned, and the points are just those that none beats', () => {
    assert.equal(front.choices, 30);
    assertBest(lane, front);
  });

  test('of random quilts with two or three kinds of units it has the best in each of the three, and every point', () => {
    for (const seed of [3, 11, 19]) {
      const plan = planned(unitsAtRandom(chanceFrom(seed)));
      const { last } = whole(plan, 40);
      assert.ok(last.groups.length >= 2, `seed ${seed}`);
      assertBest(plan, last);
    }
  });

  test('of few choices weighed, what is promised of the others holds for each of them', () => {
    for (const seed of testSeeds) {
      const plan = planned(unitsAtRandom(chanceFrom(seed)));
      const { last } = whole(plan, 4);
      assert.ok(last.choices > 4 && !last.isWhole);
      assertBounded(plan, last);
      assert.ok(last.proven.includes('minutes'), `seed ${seed}`);
    }
  });

  test('laid out on, of few choices weighed the least cloth is found, and its bound holds for every choice searched', () => {
    for (const seed of testSeeds) {
      const plan = planned(unitsAtRandom(chanceFrom(seed)));
      const { last } = whole(plan, 6, { laying });
      assert.ok(last.choices > 6 && !last.isWhole);
      assertBounded(plan, last);
      const searched = everyPoint(plan, last, laying.search).map(({ cloth }) => cloth);
      const least = Math.min(...last.points.map(({ cloth }) => cloth));
      assert.ok(least <= Math.min(...searched) + 1e-9, `seed ${seed}: ${least}, and ${Math.min(...searched)} there is`);
      assert.ok((last.least.cloth ?? 0) <= Math.min(...searched) + 1e-9);
    }
  });

  test('of many choices the least cloth is found among all, and little less could any take', () => {
    const plan = planOf('ferry-landing');
    const { fronts, last } = whole(plan, 12, { laying });
    const least = Math.min(...last.points.map(({ cloth }) => cloth));
    // found by going down one way at a time from 40 beginnings, 36 steps each: 79; by area none takes less than 74.51
    assert.ok(least <= 79.5, `${least} in`);
    const bound = last.least.cloth ?? 0;
    assert.ok(bound >= 76.5 && bound <= 79, `${bound} in`);
    fronts.forEach((front, i) => {
      assert.ok((front.least.cloth ?? 0) >= (fronts[i - 1]?.least.cloth ?? 0));
    });
  });

  test('a choice that is put together from its parts weighs what its plan comes to', () => {
    for (const name of ['ferry-landing', 'twelve-fields']) {
      const plan = planOf(name);
      const { parts, groups, weigh } = partsIn(plan);
      const chance = chanceFrom(7);
      for (let i = 0; i < 4; i++) {
        const choice = groups.map(({ options }) => Math.floor(chance() * options.length));
        const made = planMade({
          quilt: plan.quilt,
          methods: methodsFor(groups, choice),
          options: { budget: { steps: 0 }, fold: 'where-asked' },
        });
        const { cloth, minutes, cost } = weigh(choice, takenIn(parts, choice)) as FrontPoint;
        assert.ok(made.ok);
        assert.deepEqual({ cloth, minutes, cost }, figuresOf(made.value));
      }
    }
  });

  test('told points are searched a little once the front stands, and show no more cloth in Cut when they are taken', () => {
    const search = searchFront({ plan: lane, steps: 100, search: 1, memory: recalling(5000) });
    let at = search.next();
    while (!at.done) at = search.next();
    const { points, now } = at.value;
    const leastOf = (of: readonly FrontPoint[]): number => Math.min(...of.map(({ cloth }) => cloth));
    assert.ok(leastOf(points) < leastOf(front.points) && now.cloth <= front.now.cloth);
    for (const point of points) assert.ok(!points.some((other) => isBeaten(point, other)));
    for (const point of toldPoints(points, 2)) {
      const searched = planMade({
        quilt: lane.quilt,
        methods: methodsFor(front.groups, point.choice),
        options: { budget: { steps: 4 }, fold: 'where-asked' },
      });
      assert.ok(searched.ok);
      assert.ok(figuresOf(searched.value).cloth <= point.cloth + 1e-9);
    }
  });

  test('each point is the plan of a whole document with the same figures', () => {
    for (const point of front.points) {
      const document = toDocument({ ...lane.quilt, methods: methodsFor(front.groups, point.choice) });
      const planned = planQuilt(document, { budget: { steps: 0 }, fold: 'where-asked' });
      assert.ok(planned.ok);
      assert.deepEqual(
        planned.value.notes.filter(({ code }) => code.startsWith('ways/')),
        [],
      );
      const { cloth, minutes, cost } = point;
      assert.deepEqual(figuresOf(planned.value), { cloth, minutes, cost });
    }
  });

  test('of a point that the document takes, the front knows where it stands', () => {
    const point = front.points[0] as FrontPoint;
    const taken = planMade({ quilt: lane.quilt, methods: methodsFor(front.groups, point.choice) });
    assert.ok(taken.ok);
    assert.deepEqual(whole(taken.value, 1).last.now.choice, point.choice);
  });

  test('it is told at any time: of many choices every front on the way has no beaten point, and loses none for nothing', () => {
    const sampler = planOf('twelve-fields');
    const { fronts, last } = whole(sampler, 14);
    assert.ok(last.choices > 1e6 && !last.isWhole);
    assert.deepEqual(last.proven, ['minutes', 'trueness']);
    assert.equal(fronts[0]?.tried, 1);
    fronts.forEach(({ points }, i) => {
      for (const point of points) assert.ok(!points.some((other) => isBeaten(point, other)));
      for (const before of fronts[i - 1]?.points ?? [])
        assert.ok(
          points.some(
            (point) =>
              !isBeaten(point, before) &&
              (isBeaten(before, point) ||
                threeOf(before).every((value, k) => Math.abs(value - (threeOf(point)[k] as number)) < 1e-9)),
          ),
        );
    });
    // minutes and trueness add up over the kinds: their ends are known before anything is planned
    const least = (of: 'minutes' | 'deviation') =>
      last.groups.map(({ options }) =>
        options.reduce((best, option, i) => (option[of] < (options[best]?.[of] ?? 0) ? i : best), 0),
      );
    const quick = planMade({
      quilt: sampler.quilt,
      methods: methodsFor(last.groups, least('minutes')),
      options: { budget: { steps: 0 } },
    });
    assert.ok(quick.ok);
    assert.ok(Math.min(...last.points.map(({ minutes }) => minutes)) <= quick.value.time.minutes);
    const truest = least('deviation').map((option, i) => last.groups[i]?.options[option]?.deviation ?? 0);
    assert.ok(Math.min(...last.points.map(({ deviation }) => deviation)) <= Math.max(...truest) + 1e-12);
  });

  test('where the likely choices end, others are planned, as many as it may', () => {
    const { last } = whole(planOf('orchard-pair'), 30);
    assert.equal(last.choices, 100);
    assert.equal(last.tried, 30);
  });

  test('a few told points have the ends among them', () => {
    const told = toldPoints(front.points, 3);
    assert.ok(told.length <= 3);
    for (const i of [0, 1, 2] as const) {
      const least = (points: readonly FrontPoint[]) => Math.min(...points.map((point) => threeOf(point)[i]));
      assert.equal(least(told), least(front.points));
    }
  });
});
