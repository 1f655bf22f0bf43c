// Laws of cloth on random quilts: nothing is lost, nothing is cut twice, and no layout beats its bound.

import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { ClothPiece, FabricPlan, QuiltPlan } from '#craft';
import { checkLayout, type Demand } from '#craft/cutting';
import { signedArea } from '#ground/plane';
import { near, planned } from '../documents/documents.ts';
import { randomQuilt } from './random-quilts.ts';

const holds = (law: (plan: QuiltPlan) => void, seed: number): void =>
  fc.assert(
    fc.property(randomQuilt(), fc.constantFrom(0, 3), (document, steps) => law(planned({ ...document }, steps))),
    { seed, numRuns: 100 },
  );

const sum = (numbers: readonly number[]): number => numbers.reduce((a, b) => a + b, 0);

/** What is left over, walked over the cloth: beside the last part of a strip, and beside and below the pieces of a part. */
const leftOver = ({ laid: { layout } }: FabricPlan): number =>
  sum(
    layout.strips.map((strip) => {
      const parts = strip.parts.map(
        (part) => part.width * strip.height - sum(part.pieces.map(({ cut }) => cut[0] * cut[1])),
      );
      const end = Math.max(...strip.parts.map((part) => part.at + part.width));
      return (layout.width - end) * strip.height + sum(parts);
    }),
  );

test('cloth cut and cloth left over are the cloth laid out, to the last thread', () => {
  holds(({ fabrics }) => {
    for (const fabric of fabrics) {
      const { width, length } = fabric.laid.layout;
      const cut = sum(fabric.pieces.map(({ cut: size, count }) => size[0] * size[1] * count));
      near(cut + leftOver(fabric), width * length, 1e-6 * width * length);
    }
  }, 11);
});

test('every layout holds exactly the pieces listed, inside the cloth and apart from each other, turned only where they may', () => {
  holds((plan) => {
    for (const { id, pieces, laid } of plan.fabrics) {
      const demands = pieces.map(
        (piece): Demand => ({
          across: piece.cut[0],
          along: piece.cut[1],
          count: piece.count,
          mayTurn: mayTurn(plan, piece),
        }),
      );
      assert.deepEqual(checkLayout({ layout: laid.layout, width: laid.layout.width, demands }), [], id);
    }
  }, 12);
});

/** Borders, binding, backing and joined strips keep their grain. */
const mayTurn = ({ top }: QuiltPlan, piece: ClothPiece): boolean =>
  piece.for.every(({ role, label }) => {
    if (role === 'block') return true;
    const strip = top.pieces.find((each) => each.label === label && each.role === role);
    return strip !== undefined && role !== 'border' && strip.joinedFrom.length === 1;
  });

test('no layout is shorter than its bound, and the bound is at least the area over the width', () => {
  holds(({ fabrics }) => {
    for (const { pieces, laid } of fabrics) {
      assert.ok(laid.layout.length >= laid.bound - 1e-9, `${laid.layout.length} beats ${laid.bound}`);
      const area = sum(pieces.map(({ cut, count }) => cut[0] * cut[1] * count));
      assert.ok(laid.bound >= area / laid.layout.width - 1e-6, `bound ${laid.bound} of area ${area}`);
    }
  }, 13);
});

test('what is bought holds the layout and both squared ends, and one step less would not', () => {
  holds(({ fabrics, quilt }) => {
    const { squaring, step } = quilt.buying;
    const amount = step.amount.valueOf();
    const units = { yd: quilt.unit === 'in' ? 36 : 91.44, m: quilt.unit === 'in' ? 100 / 2.54 : 100 }[step.unit];
    for (const { laid, buy } of fabrics) {
      const needs = laid.layout.length + 2 * squaring.valueOf();
      assert.ok(buy.amount * units >= needs - 1e-6);
      assert.ok((buy.amount - amount) * units < needs);
    }
  }, 14);
});

test('every patch, strip, binding and panel of a quilt is cut once, and squares of two or four triangles with none to spare', () => {
  holds((plan) => {
    const asked = new Map<string, number>();
    const ask = (fabric: string, count: number): unknown => asked.set(fabric, (asked.get(fabric) ?? 0) + count);
    for (const { block, colouring, mirror } of plan.top.set.placed) {
      const entry = plan.blocks.find(
        (each) => each.id === block && each.colouring === colouring && each.mirror === mirror,
      );
      for (const patch of entry?.patches ?? []) ask(patch.fabric, 1);
    }
    for (const piece of plan.top.pieces) ask(piece.fabric, piece.count * piece.joinedFrom.length);
    const { binding, backing } = plan.finish;
    if (binding) ask(binding.fabric, binding.strips);
    if (backing) ask(backing.fabric, backing.panels);
    for (const { id, pieces } of plan.fabrics) {
      for (const { count, gives, for: uses } of pieces)
        assert.equal(count, Math.ceil(sum(uses.map((use) => use.count)) / gives));
      assert.equal(sum(pieces.flatMap((piece) => piece.for.map((use) => use.count))), asked.get(id), id);
    }
    assert.equal(asked.size, plan.fabrics.length);
  }, 15);
});

test('the patches of every block fill it, and blocks and strips fill the top', () => {
  holds(({ blocks, top }) => {
    for (const { patches, finished } of blocks)
      near(sum(patches.map(({ points }) => signedArea(points))), finished[0] * finished[1]);
    const { placed, strips, width, height } = top.set;
    const areas = [
      ...placed.map(({ size }) => size[0] * size[1]),
      ...strips.map(({ rect }) => rect.width * rect.height),
    ];
    near(sum(areas), width * height, 1e-6 * width * height);
  }, 16);
});
