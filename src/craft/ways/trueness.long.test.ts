import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { sizeModels, unknownHabit, usualCare } from '#craft/accuracy';
import type { CutRule } from '#craft/cutting';
import type { WayName } from '#craft/design';
import { length } from '#craft/measure';
import { planned, quilt } from '#documents';
import { chanceFrom } from '#ground/chance';
import { rational } from '#ground/exact';
import { boxOf } from '#ground/plane';
import { joinsOf, stageFor, truenessOf, type Unit, unitsIn, type Way, wayFor } from './index.ts';

const rule: CutRule = { seam: length(0.25), ruler: rational(1, 8) };
const care = usualCare('in');
const habit = unknownHabit('in');

/** A block of one unit, 4 in wide, as a document draws it. */
const blockOf = (unit: string, tones: readonly string[], wide = false) =>
  planned(
    quilt({
      blocks: [
        {
          id: 'one',
          size: wide ? ['4', '2'] : '4',
          recipe: { kind: 'units', grid: wide ? [2, 1] : [1, 1], units: [{ at: [0, 0], unit, tones }] },
        },
      ],
      top: { rows: [[{ block: 'one' }]] },
    }),
  ).blocks[0] as ReturnType<typeof planned>['blocks'][number];

const drawn = {
  'half-square': blockOf('half-square', ['light', 'dark']),
  'quarter-square': blockOf('quarter-square', ['light', 'dark', 'light', 'dark']),
  'flying-geese': blockOf('flying-geese', ['dark', 'light'], true),
  'square-in-square': blockOf('square-in-square', ['dark', 'light']),
  'four-patch': blockOf('four-patch', ['dark', 'light']),
  rails: blockOf('rails', ['dark', 'light', 'medium']),
} as const;

type Kind = keyof typeof drawn;

const unitOf = (kind: Kind): Unit => {
  const [unit, ...more] = unitsIn(drawn[kind].patches, 1e-6);
  assert.ok(unit && more.length === 0);
  return unit;
};

const wayOf = (unit: Unit, name: WayName): Way => {
  const way = wayFor({
    unit,
    name,
    trimmed: false,
    rule,
    room: { units: 8, widths: unit.patches.map(() => length(40)) },
  });
  assert.notEqual(typeof way, 'string');
  return way as Way;
};

/** How wide the last stage of a way is when it is pressed, with every cut and allowance off by so much. */
const pressedWide = (
  unit: Unit,
  way: Way,
  off: { readonly cuts: readonly number[]; readonly seam: number },
): number => {
  const cuts = way.cuts.map((cut, place) => {
    const by = off.cuts[place] ?? 0;
    return cut && { ...cut, size: [length(cut.size[0] + by), length(cut.size[1] + by)] as const };
  });
  const parts = joinsOf(unit, way).at(-1);
  assert.ok(parts);
  const stage = stageFor({ unit, way: { ...way, cuts }, seam: length(rule.seam + off.seam), parts });
  return boxOf((stage?.pressed[0] ?? []).flatMap(({ outline }) => outline)).width;
};

/** Sums of what the size model of the block says of the wider side. */
const modelled = (kind: Kind): { readonly cuts: number; readonly allowance: number } => {
  const block = drawn[kind];
  const model = sizeModels(block, rule.seam).find(
    ({ step, way }) => step === block.steps.length - 1 && way === 'across',
  );
  assert.ok(model);
  return {
    cuts: model.cuts.reduce((all, { grows }) => all + grows, 0),
    allowance: 2 * model.seams.reduce((all, { shrinks }) => all + shrinks, 0),
  };
};

const isNear = (a: number, b: number, within = 1e-6): void => assert.ok(Math.abs(a - b) < within, `${a}, not ${b}`);

describe('how true a unit comes out', () => {
  // sewn, cut and pressed as polygons, 20,000 times; the error of a deviation from n draws of a near-normal sum is 1/√(2n) of it
  test('half-squares two and eight at a time deviate in simulated stages as the formula says', () => {
    const unit = unitOf('half-square');
    for (const [name, halved] of [
      ['two-at-a-time', false],
      ['eight-at-a-time', true],
    ] as const) {
      const way = wayOf(unit, name);
      const chance = chanceFrom(17);
      const draw = (limit: number): number => (2 * chance() - 1) * limit;
      const draws = 20_000;
      const right = pressedWide(unit, way, { cuts: [0, 0], seam: 0 });
      let squares = 0;
      for (let i = 0; i < draws; i++) {
        // the cut through the middle leaves both layers of a quarter too large alike
        const middle = halved ? 2 * draw(care.cut) : 0;
        const cuts = [draw(care.cut) + middle, draw(care.cut) + middle];
        squares += (pressedWide(unit, way, { cuts, seam: draw(care.seam) + draw(habit) }) - right) ** 2;
      }
      const simulated = Math.sqrt(squares / draws);
      const formula = truenessOf(unit, { care, habit, rule })(way);
      isNear(simulated, formula, (4 * formula) / Math.sqrt(2 * draws));
    }
  });

  test('what is made of triangles takes of every cut and allowance in its stages what the size model says', () => {
    for (const [kind, name] of [
      ['half-square', 'two-at-a-time'],
      ['quarter-square', 'from-half-squares'],
    ] as const) {
      const unit = unitOf(kind);
      const way = wayOf(unit, name);
      const none = pressedWide(unit, way, { cuts: [], seam: 0 });
      const by = 1 / 64;
      const larger = pressedWide(unit, way, { cuts: unit.patches.map(() => by), seam: 0 });
      const wider = pressedWide(unit, way, { cuts: [], seam: by });
      const { cuts, allowance } = modelled(kind);
      isNear((larger - none) / by, cuts);
      isNear((none - wider) / by, allowance);
    }
  });

  test('of the sums of squares, and the square of what all allowances do alike: by hand from what each edge does', () => {
    const shares = (kind: Kind, name: WayName) => {
      const unit = unitOf(kind);
      const none = { cut: length(0), seam: length(0), habit: length(0) };
      const at = (only: 'cut' | 'seam' | 'habit') => {
        const { habit, ...care } = { ...none, [only]: length(1) };
        return 3 * truenessOf(unit, { care, habit, rule })({ name, trimmed: false }) ** 2;
      };
      return [at('cut'), at('seam'), at('habit')] as const;
    };
    const near = (kind: Kind, name: WayName, cuts: number, seams: number, alike: number): void => {
      const [ownCuts, ownSeams, ownAlike] = shares(kind, name);
      isNear(ownCuts, cuts, 1e-3);
      isNear(ownSeams, seams, 1e-3);
      isNear(ownAlike, alike, 1e-3);
    };
    // left and right edge move out half of what each square grew; both layers lose 1/√2 of the allowance
    near('half-square', 'singly', 0.5, 2, 2);
    // cut apart on one line both layers have the size of one square
    near('half-square', 'two-at-a-time', 1, 2, 2);
    near('half-square', 'eight-at-a-time', 1.25, 2, 2);
    // two slanted seams; of the middle triangle 1/(2 + √2), of the outer two 1/(2√2) each
    near('quarter-square', 'singly', (2 + Math.SQRT2) ** -2 + 2 / 8, 4, 8);
    near('quarter-square', 'from-half-squares', 1, 4, 8);
    near('flying-geese', 'four-at-a-time', (2 + Math.SQRT2) ** -2 + 2 / 4, 4, 8);
    near('square-in-square', 'singly', 1, 4, 8);
    near('square-in-square', 'sew-and-flip', 1, 0, 0);
    // across strips every cut, and both allowances of every seam
    near('rails', 'strip-sets', 3, 8, 16);
    near('four-patch', 'strip-sets', 2, 4, 4);
  });

  test('what is trimmed has the error of the ruler alone', () => {
    for (const kind of ['half-square', 'flying-geese', 'quarter-square'] as const)
      isNear(
        truenessOf(unitOf(kind), { care, habit, rule })({ name: 'singly', trimmed: true }),
        care.cut / Math.sqrt(3),
      );
  });
});
