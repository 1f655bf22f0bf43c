// How blocks are joined, and what light and dark halves make of a set: counted off the plan.

import assert from 'node:assert/strict';
import { type BlockPlan, planQuilt, type QuiltPlan } from '#craft';
import { foundationsOf } from '#craft/foundation';
import { pointInTop } from '#craft/setting';
import type { Point, Polygon } from '#ground/plane';
import { only, planned, quilt, setOf, type Written } from '../../documents/documents.ts';
import { drawnBlock } from '../../documents/drawn.ts';
import { agrees, type Checks, checkOf } from './case.ts';

/** A light half upper left and a dark one lower right. */
const halves: Written = {
  id: 'halves',
  size: 2,
  recipe: { kind: 'units', grid: [1, 1], units: [{ at: [0, 0], unit: 'half-square', tones: ['light', 'dark'] }] },
};

interface Half {
  readonly fabric: string;
  readonly block: number;
  readonly sides: readonly string[];
}

const nameOf = (p: Point): string => `${Math.round(p.x * 1000)},${Math.round(p.y * 1000)}`;

const sidesOf = (outline: Polygon): readonly string[] =>
  outline.map((p, i) => [p, outline[(i + 1) % outline.length] as Point].map(nameOf).toSorted().join(' '));

/** Every half as it lies in the top. */
const halvesIn = (plan: QuiltPlan): readonly Half[] => {
  const block = only(plan.blocks);
  return plan.top.set.placed.flatMap((placed, index) =>
    block.patches.map(({ fabric, points }) => ({
      fabric,
      block: index,
      sides: sidesOf(points.map((p) => pointInTop(placed, block.finished, p))),
    })),
  );
};

const touch = (a: Half, b: Half): boolean => a.sides.some((side) => b.sides.includes(side));

/** Pieces of one cloth that hang together: filled one after another. */
const regionsOf = (fabric: string, all: readonly Half[]): number => {
  const left = new Set(all.filter((half) => half.fabric === fabric));
  let regions = 0;
  for (const start of left) {
    regions += 1;
    left.delete(start);
    const open = [start];
    for (let half = open.pop(); half; half = open.pop()) {
      for (const next of left) {
        if (!touch(half, next)) continue;
        left.delete(next);
        open.push(next);
      }
    }
  }
  return regions;
};

const structureOf = (top: Written) => {
  const all = halvesIn(planned(quilt({ blocks: [halves], top })));
  const shared = all.flatMap((a) => all.filter((b) => a.block < b.block && touch(a, b)).map((b) => [a, b] as const));
  return {
    edges: shared.length,
    edges_agree: shared.filter(([a, b]) => a.fabric === b.fabric).length,
    dark_regions: regionsOf('dark', all),
    light_regions: regionsOf('light', all),
  };
};

/** One patch after the other, each along one straight line. */
const isOneByOne = (block: BlockPlan): boolean => foundationsOf(block)?.sections.length === 1;

const joined = (block: BlockPlan) => ({
  patches: block.patches.length,
  tiles: true, // a drawing that does not tile is refused
  seams: block.joining,
  straight: block.joining === 'straight',
});

export const structures: Checks = {
  set_structure: checkOf<{ set: string }, object>((of) => {
    const kind = of.inputs.set.replaceAll('_', '-');
    agrees(structureOf({ arrangement: { kind, block: 'halves', rows: 8, columns: 8 } }), of);
  }),

  inline_set: checkOf<{ turns: readonly (readonly number[])[] }, object>((of) => {
    const rows = of.inputs.turns.map((row) => row.map((quarters) => ({ block: 'halves', turn: 90 * quarters })));
    agrees(structureOf({ rows }), of);
  }),

  block_structure: checkOf<{ block: string }, object>((of) => {
    const { block: id } = of.inputs;
    const block = only(planned(quilt({ ruler: '1/64', blocks: [drawnBlock(id, 12)], top: setOf(id) })).blocks);
    agrees({ ...joined(block), one_by_one: isOneByOne(block) }, of);
  }),

  inline_structure: checkOf<{ grid: number; patches: readonly Polygon[] }, { tiles: boolean }>((of) => {
    const { grid, patches } = of.inputs;
    const list = patches.map((points, i) => ({ points, tone: i % 2 === 0 ? 'light' : 'dark' }));
    const drawn = { id: 'b', size: grid, patches: { grid: [grid, grid], list } };
    const outcome = planQuilt(quilt({ blocks: [drawn], top: setOf('b') }));
    assert.equal(outcome.ok, of.expected.tiles);
    if (!outcome.ok) {
      assert.equal(only(outcome.problems).code, 'drafting/gap');
      agrees({ patches: list.length, tiles: false, straight: false, one_by_one: false }, of);
      return;
    }
    const block = only(outcome.value.blocks);
    agrees({ ...joined(block), one_by_one: isOneByOne(block) }, of);
  }),
};
