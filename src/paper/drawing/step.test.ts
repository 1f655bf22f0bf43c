import assert from 'node:assert/strict';
import { test } from 'node:test';
import type { BlockPlan, PlannedStep } from '#craft';
import { rational } from '#ground/exact';
import { clothSignsFor } from '#paper/cloth';
import { documentOf, faultInIds, faultInXml, planOf, specimenDocument } from '#paper/specimen';
import { drawBoard } from './board.ts';
import { drawMachine } from './machine.ts';
import { awayFrom } from './seam.ts';
import { drawStep } from './step.ts';
import { mostStepScale } from './step-scale.ts';

const plan = planOf(specimenDocument);
const signs = clothSignsFor(plan);
const [cabin, fly] = plan.blocks as [BlockPlan, BlockPlan];
const stepOf = (block: BlockPlan, number: number) => block.steps[number - 1] as PlannedStep;
const common = { signs, ruler: { unit: 'in', ruler: rational(1, 8) }, alt: 'A step' } as const;

test('the next part stands off square to its seam, away from the unit', () => {
  // the specimen's cabin turns left, top, right, bottom
  const ways = cabin.steps.map((step) => awayFrom(cabin, step)).map(({ x, y }) => [Math.round(x), Math.round(y)]);
  assert.deepEqual(
    ways.map(([x, y]) => [x || 0, y || 0]),
    [
      [-1, 0],
      [0, -1],
      [1, 0],
      [0, 1],
    ],
  );
});

test('a seam on the slant has its part off on the slant', () => {
  const { x, y } = awayFrom(fly, stepOf(fly, 1));
  assert.ok(Math.abs(Math.abs(x) - Math.SQRT1_2) < 1e-12 && Math.abs(Math.abs(y) - Math.SQRT1_2) < 1e-12);
});

test('every step has its pictures, well-formed and with its check size', () => {
  for (const block of plan.blocks) {
    for (const step of block.steps) {
      const board = drawStep({ ...common, block, step, fitPt: [142, 92] }).svg;
      const machine = drawMachine({ ...common, block, step, fitPt: [80, 92], seam: 0.25, hand: 'right' }).svg;
      for (const svg of [board, machine]) {
        assert.equal(faultInXml(svg), null);
        assert.equal(faultInIds(svg), null);
      }
      assert.ok(board.includes('\u00a0in</text>'));
    }
  }
});

test('no press arrow covers a letter where small pieces lie along the seam', () => {
  const ladder = {
    id: 'ladder',
    from: 'jacobs-ladder',
    size: '12',
    colourings: { default: { light: 'oat', medium: 'brick', dark: 'bark' } },
  };
  const top = { set: 'straight', rows: [[{ block: 'ladder' }]] };
  const [block] = planOf(documentOf({ blocks: [ladder], top })).blocks;
  assert.ok(block && block.steps.length > 5);
  for (const step of block.steps) {
    const { svg } = drawStep({ ...common, block, step, fitPt: [142, 92] });
    // a shaft, then the head from its tip
    const shaft = /d="M([\d.]+) ([\d.]+)L[\d.]+ [\d.]+M([\d.]+) ([\d.]+)L/.exec(svg);
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = (shaft ?? []).slice(1).map(Number);
    const letters = [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]* font-size="(\d+)"[^>]*>([A-D])</g)];
    assert.ok(shaft && letters.length > 1);
    for (const [, x, base, size, letter] of letters) {
      // capitals stand 0.66 of their size above the base line; none is wider than that
      const middle = Number(base) - 0.33 * Number(size);
      for (let share = 0; share <= 1; share += 0.1) {
        const away = Math.hypot(x1 + (x2 - x1) * share - Number(x), y1 + (y2 - y1) * share - middle);
        assert.ok(away > 0.33 * Number(size) + 1, `step ${step.number}: the arrow lies on ${letter}`);
      }
    }
  }
});

test('at the machine the seam lies right of everything but its allowance', () => {
  const { svg } = drawMachine({
    ...common,
    block: cabin,
    step: stepOf(cabin, 3),
    fitPt: [80, 92],
    seam: 0.25,
    hand: 'right',
  });
  const seam = Number(/d="M([\d.]+) [\d.]+V[\d.]+"[^>]*stroke-dasharray/.exec(svg)?.[1]);
  const corners = [...svg.matchAll(/[ML]([\d.]+) [\d.]+(?=[LZ])/g)].map(([, x]) => Number(x)).filter((x) => x > 20);
  assert.ok(seam > 0 && corners.length > 8);
  // the turn mark above is drawn in the middle
  assert.ok(
    corners.every((x) => x <= seam + 0.002),
    `${Math.max(...corners)} is right of ${seam}`,
  );
});

test('at the machine a log that lies partly under the next one has its label beside it', () => {
  const step = stepOf(cabin, 3);
  const { svg } = drawMachine({ ...common, block: cabin, step, fitPt: [80, 92], seam: 0.25, hand: 'right' });
  const labels = [...svg.matchAll(/<text[^>]*>([A-Z]+)<\/text>/g)].map(([, label]) => label);
  // by hand: B and C are partly under D; the middle, as wide as a log, wholly
  assert.deepEqual(labels.toSorted(), ['B', 'C', 'D']);
});

test('a board shows every patch once, with its label', () => {
  const { svg } = drawBoard({ block: fly, signs, fitPt: [230, 216], alt: 'A board' });
  assert.equal(faultInXml(svg), null);
  const labels = [...svg.matchAll(/<text[^>]*>([A-Z]+)<\/text>/g)].map(([, label]) => label).toSorted();
  // the specimen's fly by hand: four of each triangle, four squares, one middle
  assert.deepEqual(labels, [...'AAAABBBBCCCCD']);
});

test('a pair of pieces that would be too small to be told apart is drawn larger than the block would be', () => {
  const step = stepOf(cabin, 1);
  const whole = 1;
  assert.ok(mostStepScale({ block: cabin, step }, 20) >= 44);
  // by hand: the thinnest piece of the pair is 1 in square, half its side 0.5 in: 8 pt for that are 16 pt an inch
  assert.equal(mostStepScale({ block: cabin, step }, whole), 16);
});
