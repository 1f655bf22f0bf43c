// Blocks turned, made in two ways and pressed: as many seams nest as the best of all such choices, tried one by one.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { BlockPlan, QuiltPlan } from '#craft';
import { topSeams } from '#craft/piecing';
import { pointInTop } from '#craft/setting';
import { type Cell, cell, meetingsFound, patchesOfCell, planned, quilt } from '#documents';
import { at, type Point } from '#ground/plane';
import { planPressing } from './index.ts';
import type { Press } from './press.ts';

type Turn = 0 | 90 | 180 | 270;

/** The upper left cell turned by quarters about the middle of the block, which is two units wide. */
const turnedCell = (one: Cell, quarters: number) =>
  patchesOfCell(one, at(0, 0)).map(({ points, tone }) => ({
    tone,
    points: points.map((p) => {
      let { x, y } = p;
      for (let i = 0; i < quarters; i++) [x, y] = [2 - y, x];
      return [x, y];
    }),
  }));

const blockOf = (list: readonly unknown[]) => ({ id: 'drawn', size: '8', patches: { grid: [2, 2], list } });

/** It looks the same after every quarter turn; after a half turn; after none, for the most part. */
const quartered = cell.map((one) => blockOf([0, 1, 2, 3].flatMap((quarters) => turnedCell(one, quarters))));
const halved = fc
  .tuple(cell, cell)
  .map(([one, other]) =>
    blockOf([turnedCell(one, 0), turnedCell(other, 1), turnedCell(one, 2), turnedCell(other, 3)].flat()),
  );
/** One piece along the upper edge, two cells below: it looks otherwise however it is turned. */
const uneven = fc.tuple(fc.constantFrom('light', 'medium', 'dark'), cell, cell).map(([tone, one, other]) => {
  const rail = [
    [0, 0],
    [2, 0],
    [2, 1],
    [0, 1],
  ];
  return blockOf([{ points: rail, tone }, ...turnedCell(one, 2), ...turnedCell(other, 3)]);
});

const topOf = (block: ReturnType<typeof blockOf>, across: number, down: number): QuiltPlan =>
  planned(
    quilt({
      blocks: [block],
      top: { rows: Array.from({ length: down }, () => Array.from({ length: across }, () => ({ block: 'drawn' }))) },
    }),
  );

/** What a seam end does for each value of its variable: 1 onward along the seam that runs over, -1 back, 0 both. */
interface End {
  /** A step, or a run after all steps. */
  readonly variable: number;
  /** Of a step: its block's place. */
  readonly place: number | null;
  readonly way: (press: Press) => number;
}

const values: readonly Press[] = [0, 1, 'open', 'clockwise', 'counterclockwise'];

const wayFor =
  (way: number, clockwise: number) =>
  (press: Press): number =>
    press === 'open'
      ? 0
      : press === 'clockwise'
        ? clockwise
        : press === 'counterclockwise'
          ? -clockwise
          : press === 1
            ? way
            : -way;

/** Every meeting of the top with its blocks turned so, found by holding each seam against each. */
const metWith = (plan: QuiltPlan, block: BlockPlan, turns: readonly Turn[]): readonly (readonly [End, End])[] => {
  const { set } = plan.top;
  const runs = runsOf(plan);
  const inBlocks = set.placed.flatMap((placed, place) => {
    const turn = ((placed.turn + (turns[place] as number)) % 360) as Turn;
    return block.seams.map(({ step, path, heading }) => ({
      path: path.map((p) => pointInTop({ ...placed, turn }, block.finished, p)),
      heading: (placed.mirror ? 180 - heading : heading) + turn,
      variable: step,
      place: place as number | null,
      along: 1,
    }));
  });
  const own = topSeams(set).map(({ path, heading, wish }) => ({
    path,
    heading,
    variable: block.steps.length + runs.indexOf(wish.run),
    place: null,
    // a run has one way, right or left, down or up: which part of the seam lies there
    along: wish.along === 1 ? 1 : -1,
  }));
  const seams = [...inBlocks, ...own];
  return meetingsFound(seams, Math.max(set.width, set.height)).map(({ seams: two, ways, clockwise }) => {
    const [a, b] = two.map((seam, i): End => {
      const { variable, place, along } = seams[seam] as (typeof seams)[number];
      return { variable, place, way: wayFor((ways[i] as number) * along, clockwise[i] as number) };
    });
    return [a as End, b as End];
  });
};

const runsOf = ({ top }: QuiltPlan): readonly string[] => [...new Set(topSeams(top.set).map(({ wish }) => wish.run))];

/** Every way to press the steps of a block in which what is spun has all that comes to its middle run round with it. */
const waysOf = (block: BlockPlan): readonly (readonly Press[])[] => {
  const centres = block.steps.map((_, step) => centreOf(block, step));
  let ways: readonly (readonly Press[])[] = [[]];
  block.steps.forEach(({ wish }, step) => {
    const isKept = wish.why === 'outward' || wish.why === 'hollow';
    const own = isKept
      ? ([1] as const)
      : centres[step]
        ? ([0, 1, 'clockwise', 'counterclockwise'] as const)
        : ([0, 1] as const);
    ways = ways.flatMap((way) => own.map((press): readonly Press[] => [...way, press]));
  });
  return ways.filter((way) =>
    way.every((press, step) => {
      if (press !== 'clockwise' && press !== 'counterclockwise') return true;
      const round = press === 'clockwise' ? 1 : -1;
      return centres[step]?.every(({ other, run }) => run(way[other] as Press) === round) === true;
    }),
  );
};

/** What ends on the seam of a step, where all of it ends at one point and from both sides; else null. */
const centreOf = (
  { seams }: BlockPlan,
  step: number,
): readonly { readonly other: number; readonly run: (press: Press) => number }[] | null => {
  const own = seams.filter((seam) => seam.step === step);
  const [first] = own;
  if (first === undefined) return null;
  const [a, b] = [first.path[0], first.path.at(-1)] as [Point, Point];
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const found = seams.flatMap(({ path, heading, step: other }) =>
    ([0, -1] as const).flatMap((end) => {
      const [p, q] = [path.at(end), path.at(end === 0 ? 1 : -2)] as [Point, Point];
      const along = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / long;
      const off = ((p.x - a.x) * (b.y - a.y) - (p.y - a.y) * (b.x - a.x)) / long;
      const side = (q.x - p.x) * (b.y - a.y) - (q.y - p.y) * (b.x - a.x);
      if (Math.abs(off) > 1e-6 || along < 1e-6 || along > long - 1e-6 || Math.abs(side) < 1e-6) return [];
      const radians = (heading * Math.PI) / 180;
      // clockwise, y down, of one who stands on the way out from p is a quarter turn on
      const clockwise = -(q.y - p.y) * Math.cos(radians) + (q.x - p.x) * Math.sin(radians) > 0 ? 1 : -1;
      // what is spun about its own middle runs the other way round at its ends
      return [{ other, along, side, run: wayFor(clockwise, -1) }];
    }),
  );
  const isOnePoint = found.every(({ along }) => Math.abs(along - (found[0]?.along as number)) < 1e-6);
  return isOnePoint && found.some(({ side }) => side > 0) && found.some(({ side }) => side < 0) ? found : null;
};

interface Best {
  readonly nested: number;
  readonly others: number;
}

const isAbove = (a: Best, b: Best): boolean =>
  a.nested - a.others > b.nested - b.others || (a.nested - a.others === b.nested - b.others && a.nested > b.nested);

/** Every combination of turns, of blocks pressed the other way, of sides; it ends where nothing is left to nest. */
const bestOf = (plan: QuiltPlan, of: { readonly turns: readonly Turn[]; readonly inTwo: 'no' | 'yes' }): Best => {
  const block = plan.blocks[0] as BlockPlan;
  const count = plan.top.set.placed.length;
  const ways = waysOf(block).map((way) => way.map((press) => values.indexOf(press)));
  const sides = combined([0, 1], runsOf(plan).length);
  const none = Array.from({ length: count }, () => 0);
  const inTwo = of.inTwo === 'no' ? [none] : combined([0, 1], count);
  let best: Best = { nested: -1, others: 0 };
  for (const turns of combined(of.turns, count)) {
    const met = metWith(plan, block, turns).map(([a, b]) => [tabled(a), tabled(b)] as const);
    for (const variants of inTwo) {
      const others = variants.filter((variant) => variant === 1).length;
      if (others * 2 > count) continue;
      for (const first of ways) {
        for (const other of others === 0 ? [first] : ways) {
          const ofPlace = variants.map((variant) => (variant === 0 ? first : other));
          for (const runs of sides) {
            const ofTop = [...first, ...runs];
            const wayAt = ({ place, variable, table }: Tabled): number =>
              table[(place === null ? ofTop : (ofPlace[place] as readonly number[]))[variable] as number] as number;
            let nested = 0;
            for (const [a, b] of met) if (wayAt(a) * wayAt(b) < 0) nested++;
            if (isAbove({ nested, others }, best)) best = { nested, others };
            if (best.nested === met.length && best.others === 0) return best;
          }
        }
      }
    }
  }
  return best;
};

type Tabled = ReturnType<typeof tabled>;

const tabled = ({ place, variable, way }: End) => ({ place, variable, table: values.map(way) });

const combined = <T>(own: readonly T[], count: number): readonly (readonly T[])[] => {
  let all: readonly (readonly T[])[] = [[]];
  for (let i = 0; i < count; i++) all = all.flatMap((one) => own.map((value) => [...one, value]));
  return all;
};

const isEqual = (
  plan: QuiltPlan,
  turns: readonly Turn[],
  inTwo: 'no' | 'yes',
): { turned: boolean; others: boolean } => {
  const { all, variants, turns: laid } = plan.top.pressing;
  const alike = bestOf(plan, { turns, inTwo: 'no' });
  const two = inTwo === 'yes' && alike.nested < all.meetings ? bestOf(plan, { turns, inTwo }) : alike;
  // fewer than a quarter of the blocks in another way are not worth the care
  const best = isAbove(two, alike) && two.others * 4 >= variants.length ? two : alike;
  assert.deepEqual({ nested: all.nested, others: variants.filter((variant) => variant === 1).length }, best);
  assert.ok(laid.every((turn) => turns.includes(turn)));
  return { turned: laid.some((turn) => turn !== 0), others: best.others > 0 };
};

const seed = 8;

test('of blocks that look the same after a quarter turn, two by two, as many seams nest as in any turns and sides', () => {
  let turned = 0;
  fc.assert(
    fc.property(quartered, (block) => {
      if (isEqual(topOf(block, 2, 2), [0, 90, 180, 270], 'no').turned) turned++;
    }),
    { seed, numRuns: 40 },
  );
  assert.ok(turned > 9, `${turned} with turned blocks`);
});

test('of blocks that look the same after a half turn, as many nest as in any turns, ways and sides', () => {
  let turned = 0;
  fc.assert(
    fc.property(halved, (block) => {
      if (isEqual(topOf(block, 2, 2), [0, 180], 'yes').turned) turned++;
      // for all pressed alike, which nothing in two ways can better where all nest
      const wide = topOf(block, 2, 3);
      const { all, variants } = wide.top.pressing;
      if (variants.every((variant) => variant === 0)) isEqual(wide, [0, 180], 'no');
      else assert.ok(all.nested > bestOf(wide, { turns: [0, 180], inTwo: 'no' }).nested);
    }),
    { seed, numRuns: 40 },
  );
  assert.ok(turned > 1, `${turned} with turned blocks`);
});

test('of blocks that look otherwise when turned, none is turned, and as many nest as in any ways and sides', () => {
  let others = 0;
  fc.assert(
    fc.property(uneven, fc.constantFrom([2, 2], [2, 3]), (block, [across = 2, down = 2]) => {
      if (isEqual(topOf(block, across, down), [0], 'yes').others) others++;
    }),
    { seed, numRuns: 40 },
  );
  assert.ok(others > 1, `${others} in two ways`);
});

/** How many nest, of the blocks in these ways and turns: counted anew. */
const nestedAnew = (
  plan: QuiltPlan,
  block: BlockPlan,
  of: Pick<QuiltPlan['top']['pressing'], 'turns'> & Pressed,
): number => {
  const { runs, ways, variants } = of;
  const wayAt = ({ place, variable, way }: End): number =>
    way((place === null ? runs[variable - block.steps.length] : ways[variants[place] as 0 | 1][variable]) as Press);
  return metWith(plan, block, of.turns).filter(([a, b]) => wayAt(a) * wayAt(b) < 0).length;
};

interface Pressed {
  readonly variants: readonly (0 | 1)[];
  /** By variant and step. */
  readonly ways: readonly [readonly Press[], readonly Press[]];
  readonly runs: readonly Press[];
}

test('turned by a quarter alone, mirrored or not, as many nest as in any such turns and sides, and as is told', () => {
  let turned = 0;
  fc.assert(
    fc.property(quartered, fc.boolean(), (drawn, mirror) => {
      const plan = topOf(drawn, 2, 1);
      const block = plan.blocks[0] as BlockPlan;
      const placed = plan.top.set.placed.map((one) => ({ ...one, mirror }));
      const set = { ...plan.top.set, placed };
      const entry = {
        pieced: block,
        size: block.finished,
        places: [0, 1],
        turns: placed.map(() => [90] as const),
      };
      const { blocks, top } = planPressing({ entries: [entry], set });
      const { presses = [], other = null } = blocks[0] ?? {};
      const seams = topSeams(set);
      const runs = runsOf(plan).map((run) => {
        const seam = seams.findIndex(({ wish }) => wish.run === run);
        const press = top.presses[seam] as Press;
        return seams[seam]?.wish.along === 1 ? press : ((1 - (press as number)) as 0 | 1);
      });
      const asSet = { ...plan, top: { ...plan.top, set } };
      const told = { turns: top.turns, variants: top.variants, ways: [presses, other?.presses ?? []] as const, runs };
      assert.equal(nestedAnew(asSet, block, told), top.all.nested, 'as told');
      const best = bestOf(asSet, { turns: [0, 90], inTwo: 'no' });
      if (other === null) assert.equal(top.all.nested, best.nested);
      else assert.ok(top.all.nested > best.nested);
      if (top.turns.includes(90)) turned++;
    }),
    { seed, numRuns: 40 },
  );
  assert.ok(turned > 1, `${turned} with turned blocks`);
});
