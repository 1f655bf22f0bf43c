// Laws of ways to make on random quilts of small units, each kind of unit made in a way of its own: whatever way is chosen, the quilt
// is the same quilt, every patch comes out of a piece that is cut, and every layout holds what is listed.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { QuiltPlan } from '#craft';
import { checkLayout, type Demand } from '#craft/cutting';
import { mayTrim, type UnitKind, waysOfKind } from '#craft/design';
import { type Chance, chanceFrom } from '#ground/chance';
import { near, planned, quilt, type Written } from '../documents/documents.ts';

const cloths = ['light', 'medium', 'dark'];

/** Units of the trade's kinds as wide and high as they are drawn, in cells of the block's grid. */
const shapes = [
  { unit: 'half-square', span: [1, 1], tones: 2 },
  { unit: 'half-square', span: [2, 2], tones: 2 },
  { unit: 'quarter-square', span: [2, 2], tones: 4 },
  { unit: 'flying-geese', span: [2, 1], tones: 2 },
  { unit: 'square-in-square', span: [2, 2], tones: 2 },
  { unit: 'four-patch', span: [2, 2], tones: 2 },
  { unit: 'rails', span: [2, 2], tones: 3 },
  { unit: 'square', span: [1, 1], tones: 1 },
] as const;

const pick = <T>(chance: Chance, list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;

/** Fills the grid from its first free cell on with units that still fit there. */
const unitsAtRandom = (chance: Chance, side: number): readonly Written[] => {
  const free = new Set(Array.from({ length: side * side }, (_, cell) => cell));
  const units: Written[] = [];
  for (const cell of free) {
    const at = [cell % side, Math.floor(cell / side)] as const;
    const cellsOf = ([across, down]: readonly [number, number]): readonly number[] =>
      Array.from({ length: across * down }, (_, i) => [at[0] + (i % across), at[1] + Math.floor(i / across)] as const)
        .filter(([x, y]) => x < side && y < side)
        .map(([x, y]) => y * side + x);
    const fits = shapes.filter(({ span }) => {
      const needs = cellsOf(span);
      return needs.length === span[0] * span[1] && needs.every((need) => free.has(need));
    });
    const { unit, span, tones } = pick(chance, fits);
    for (const taken of cellsOf(span)) free.delete(taken);
    // a turned goose lies in a span that is turned too: only half turns fit the one that was found free
    const turn = span[0] === span[1] ? pick(chance, [0, 90, 180, 270]) : pick(chance, [0, 180]);
    const of = Array.from({ length: tones }, () => pick(chance, cloths));
    units.push({ at, span, unit, turn, tones: of });
  }
  return units;
};

const documentFor = (seed: number): { readonly plain: Written; readonly made: Written } => {
  const chance = chanceFrom(seed);
  const blocks = ['one', 'two'].map((id) => {
    const side = pick(chance, [2, 4]);
    return {
      id,
      size: pick(chance, ['4', '6', '8']),
      recipe: { kind: 'units', grid: [side, side], units: unitsAtRandom(chance, side) },
    };
  });
  const [size] = blocks.map((block) => block.size);
  const rows = Array.from({ length: 1 + Math.floor(chance() * 3) }, () =>
    Array.from({ length: 1 + Math.floor(chance() * 4) }, () => ({
      block: pick(chance, ['one', 'two']),
      turn: pick(chance, [0, 90, 180, 270]),
      mirror: chance() < 0.2,
    })),
  );
  const across = Math.max(...rows.map((row) => row.length));
  const top = {
    rows: rows.map((row) => Array.from({ length: across }, (_, i) => row[i % row.length] as (typeof row)[number])),
  };
  const methods = (Object.keys(waysOfKind) as readonly UnitKind[]).flatMap((unit) => {
    const way = pick(chance, waysOfKind[unit]);
    const trimmed = mayTrim(unit, way) && chance() < 0.5;
    return chance() < 0.2 ? [] : [{ unit, way, ...(trimmed ? { trimmed } : {}) }];
  });
  const plain = quilt({ blocks: blocks.map((block) => ({ ...block, size })), top }) as unknown as Written;
  return { plain, made: { ...plain, methods } };
};

const holds = (law: (made: QuiltPlan, plain: QuiltPlan) => void, seed: number): void =>
  fc.assert(
    fc.property(fc.nat(1_000_000), (chance) => {
      const { plain, made } = documentFor(chance);
      law(planned(made), planned(plain));
    }),
    { seed, numRuns: 40 },
  );

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

const patchesOf = ({ blocks }: QuiltPlan) =>
  blocks.map(({ id, patches }) => [id, patches.map(({ points, fabric }) => [points, fabric])]);

test('whatever way its units are made, a quilt has the same patches, sizes and cloths', () => {
  holds((made, plain) => {
    assert.deepEqual(patchesOf(made), patchesOf(plain));
    made.blocks.forEach(({ unfinished, steps }, i) => {
      assert.deepEqual(unfinished, plain.blocks[i]?.unfinished);
      const last = steps.at(-1)?.unfinished ?? unfinished;
      near(last[0], unfinished[0]);
      near(last[1], unfinished[1]);
    });
    assert.deepEqual(
      made.fabrics.map(({ id }) => id),
      plain.fabrics.map(({ id }) => id),
    );
  }, 21);
});

test('whatever way its units are made, every patch of a quilt comes out of a piece that is cut for it', () => {
  let others = 0;
  holds((made) => {
    const asked = new Map<string, number>();
    for (const { block, colouring, mirror } of made.top.set.placed) {
      const entry = made.blocks.find(
        (each) => each.id === block && each.colouring === colouring && each.mirror === mirror,
      );
      for (const { fabric } of entry?.patches ?? []) asked.set(fabric, (asked.get(fabric) ?? 0) + 1);
    }
    for (const { id, pieces } of made.fabrics) {
      const inBlocks = pieces.filter((piece) => piece.for.some(({ role }) => role === 'block'));
      for (const piece of inBlocks) {
        const uses = sum(piece.for.map(({ count }) => count));
        assert.ok(piece.count * piece.gives >= uses, `${id}: ${piece.count} giving ${piece.gives} for ${uses}`);
      }
      assert.equal(sum(inBlocks.flatMap((piece) => piece.for.map(({ count }) => count))), asked.get(id) ?? 0, id);
    }
    others += made.blocks.filter(({ steps }) => steps.some(({ made: how }) => how !== undefined)).length;
  }, 22);
  assert.ok(others > 20, `${others} blocks with units made otherwise`);
});

test('whatever way its units are made, every layout holds exactly the pieces that are listed', () => {
  holds(({ fabrics }) => {
    for (const { id, pieces, laid } of fabrics) {
      const demands = pieces.map(
        (piece): Demand => ({ across: piece.cut[0], along: piece.cut[1], count: piece.count, mayTurn: piece.mayTurn }),
      );
      assert.deepEqual(checkLayout({ layout: laid.layout, width: laid.layout.width, demands }), [], id);
      assert.ok(laid.layout.length >= laid.bound - 1e-9, id);
    }
  }, 23);
});
