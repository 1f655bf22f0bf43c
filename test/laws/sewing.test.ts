// Laws of sewing on random quilts: a block taken apart is its patches again, and seams are where patches meet.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { BlockPlan, QuiltPlan } from '#craft';
import { boxOf, perimeter, signedArea } from '#ground/plane';
import { near, planned } from '../documents/documents.ts';
import { randomQuilt } from './random-quilts.ts';

const holds = (law: (plan: QuiltPlan) => void, seed: number): void =>
  fc.assert(
    fc.property(randomQuilt(), (document) => law(planned({ ...document }))),
    { seed, numRuns: 120 },
  );

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

const counted = (labels: readonly string[]): Readonly<Record<string, number>> => {
  const counts: Record<string, number> = {};
  for (const label of labels.toSorted()) counts[label] = (counts[label] ?? 0) + 1;
  return counts;
};

/** Labels of the pieces that a part comes apart into. */
const unsewn = (block: BlockPlan, part: string): readonly string[] => {
  if (!part.startsWith('#')) return [part];
  const step = block.steps.find(({ makes }) => makes === part);
  assert.ok(step, `${part} is made by no step`);
  return step.join.flatMap((inner) => unsewn(block, inner));
};

const labelsOf = (block: BlockPlan, patches: readonly number[]): readonly string[] =>
  patches.map((patch) => block.patches[patch]?.piece ?? `no patch ${patch}`);

test('unsewing a block gives back its patches, each kind as often as the block has it', () => {
  holds(({ blocks }) => {
    for (const block of blocks) {
      const perBlock = Object.fromEntries(block.pieces.map((piece) => [piece.label, piece.perBlock]));
      assert.deepEqual(counted(block.patches.map(({ piece }) => piece)), { ...perBlock });
      const last = block.steps.at(-1);
      if (last) assert.deepEqual(counted(unsewn(block, last.makes)), perBlock);
      else assert.equal(block.patches.length, 1);
    }
  }, 1);
});

test('each step shows in the drawing the patches that it joins', () => {
  holds(({ blocks }) => {
    for (const block of blocks)
      for (const { join, patches, number } of block.steps) {
        assert.equal(new Set(patches.flat()).size, patches.flat().length, `step ${number} shows a patch twice`);
        for (const side of [0, 1] as const)
          assert.deepEqual(counted(labelsOf(block, patches[side])), counted(unsewn(block, join[side])));
      }
  }, 2);
});

test('steps use only what is made before them, and make as many as are used', () => {
  holds(({ blocks }) => {
    for (const block of blocks) {
      block.steps.forEach((step, i) => {
        for (const part of step.join)
          if (part.startsWith('#')) assert.ok(Number(part.slice(1)) <= i, `${step.makes} of ${part}`);
        const used = sum(
          block.steps.map((user) => user.perBlock * user.join.filter((part) => part === step.makes).length),
        );
        assert.equal(step.perBlock, i + 1 === block.steps.length ? 1 : used);
        assert.equal(step.total, step.perBlock * block.count);
      });
      for (const { label, perBlock } of block.pieces) {
        const used = sum(block.steps.map((user) => user.perBlock * user.join.filter((part) => part === label).length));
        if (block.steps.length > 0) assert.equal(used, perBlock);
      }
    }
  }, 3);
});

test('a block of straight seams takes patches less one seams, as long together as its patches’ inner edges', () => {
  holds(({ blocks }) => {
    for (const block of blocks) {
      assert.equal(block.joining, 'straight');
      assert.equal(sum(block.steps.map((step) => step.perBlock)), block.patches.length - 1);
      const edges = sum(block.patches.map(({ points }) => perimeter(points)));
      const outline = 2 * (block.finished[0] + block.finished[1]);
      near(sum(block.steps.map((step) => step.perBlock * step.seam)), (edges - outline) / 2, 1e-6 * outline);
    }
  }, 4);
});

test('a top takes its blocks and strips less one seams, as long together as their inner edges', () => {
  holds(({ top }) => {
    const { placed, strips, width, height } = top.set;
    const things = [...placed.map(({ size }) => size), ...strips.map(({ rect }) => [rect.width, rect.height] as const)];
    assert.equal(sum(top.steps.map((step) => step.perBlock)), things.length - 1);
    const edges = sum(things.map(([w, h]) => 2 * (w + h)));
    near(sum(top.steps.map((step) => step.perBlock * step.seam)), (edges - 2 * (width + height)) / 2, 1e-6 * edges);
  }, 5);
});

test('a rectangular unit measures its finished size and two allowances each way', () => {
  holds(({ blocks, quilt }) => {
    const seam = quilt.seam.valueOf();
    for (const block of blocks)
      for (const { patches, unfinished } of block.steps) {
        const outlines = patches.flat().map((patch) => block.patches[patch]?.points ?? []);
        const box = boxOf(outlines.flat());
        const isRectangle = Math.abs(sum(outlines.map(signedArea)) - box.width * box.height) < 1e-6;
        if (!isRectangle) continue;
        near(unfinished[0], box.width + 2 * seam);
        near(unfinished[1], box.height + 2 * seam);
      }
  }, 6);
});

test('the last check size of a block is its unfinished size, and of a top its size with two allowances', () => {
  holds(({ blocks, top, quilt }) => {
    const seam = quilt.seam.valueOf();
    const same = (found: readonly [number, number], expected: readonly [number, number]): void => {
      near(found[0], expected[0]);
      near(found[1], expected[1]);
    };
    const withSeams = (width: number, height: number) => [width + 2 * seam, height + 2 * seam] as const;
    for (const { finished, unfinished, steps } of blocks) {
      same(unfinished, withSeams(...finished));
      same(steps.at(-1)?.unfinished ?? unfinished, unfinished);
    }
    const whole = withSeams(top.set.width, top.set.height);
    same(top.steps.at(-1)?.unfinished ?? whole, whole);
  }, 7);
});

test('a log cabin takes its logs one after another, and each new seam is as long as the unit’s side', () => {
  holds(({ blocks }) => {
    for (const block of blocks.filter(({ id }) => id === 'cabin')) {
      block.steps.forEach((step, i) => {
        assert.equal(step.join[0].startsWith('#') ? step.join[0] : 'centre', i === 0 ? 'centre' : `#${i}`);
        const box = boxOf(step.patches[0].flatMap((patch) => block.patches[patch]?.points ?? []));
        near(step.seam, step.side === 'left' || step.side === 'right' ? box.height : box.width, 1e-9);
      });
    }
  }, 8);
});
