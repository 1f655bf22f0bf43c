// How many pieces a cloth gives, and how much of it is bought.

import assert from 'node:assert/strict';
import type { FabricPlan } from '#craft';
import { planLayout } from '#craft/cutting';
import { length } from '#craft/measure';
import { cloths, near, only, plainBlock, planned, quilt, setOf, type Written } from '../../documents/documents.ts';
import { agrees, type Checks, checkOf } from './case.ts';

interface Strips {
  readonly count: number;
  readonly along: number;
  readonly across: number;
  readonly wof: number;
  /** Share for shrinkage. */
  readonly allow?: number;
}

/** The cloth of a quilt of nothing but these rectangles; a print that stands upright keeps them from turning. */
const clothOf = (
  of: Strips & { readonly print: string; readonly step: string; readonly steps: number },
): FabricPlan => {
  const down = of.count % 10 === 0 ? 10 : 1;
  const fabrics = cloths(of.wof).map((cloth): Written => ({ ...cloth, print: of.print }));
  const blocks = [plainBlock('b', of.along - 0.5, of.across - 0.5)];
  const top = setOf('b', { across: of.count / down, down });
  const cutting = { squaring: 0, shrinkage: of.allow ?? 0, step: of.step };
  return only(planned(quilt({ fabrics, cutting, blocks, top }), of.steps).fabrics);
};

/** By the shop's eighths, and by eighths of an inch for what is needed. */
const bought = (of: Strips & { readonly print: string; readonly steps: number }) => {
  const cloth = clothOf({ ...of, step: '1/8 yd' });
  const { layout } = cloth.laid;
  return {
    per: Math.max(...layout.strips.map(({ parts }) => parts.length)),
    strips: layout.length / of.across,
    inches: clothOf({ ...of, step: '1/288 yd' }).buy.amount * 36,
    yards: cloth.buy.amount,
  };
};

export const cloth: Checks = {
  pieces_in: checkOf<{ w: number; h: number; piece: number }, { n: number }>(({ inputs, expected }) => {
    const { w, h } = inputs;
    const piece = length(inputs.piece);
    const laid = (count: number) =>
      planLayout({
        width: length(w),
        demands: [{ across: piece, along: piece, count, mayTurn: false }],
        budget: { steps: 0 },
      });
    assert.ok(laid(expected.n).layout.length <= h, 'as many fit');
    assert.ok(laid(expected.n + 1).bound > h, 'one more does not, by the bound');
  }),

  // print lays all pieces flat, as cloth whose print stands upright must; plain cloth never takes more
  strips_yardage: checkOf<Strips, object>((of) => {
    const flat = { ...of.inputs, print: 'one-way', steps: 0 };
    agrees(bought(flat), of);
    const plain = clothOf({ ...of.inputs, print: 'none', step: '1/8 yd', steps: 12 });
    const most = clothOf({ ...flat, step: '1/8 yd' }).laid.layout.length;
    if (of.id !== 'yd-sashing-31') return near(plain.laid.layout.length, most);
    // twelve sashes set on end lie side by side in 12 1/2 in; in 21 in three stacks of six flat ones stand beside one on end:
    // 31 in 12 1/2 + 21 = 33 1/2 in by hand, 5 in less than print
    near(plain.laid.layout.length, 33.5);
  }),
};
