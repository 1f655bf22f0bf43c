// Sizes of tops, counts of what lies between the blocks, and borders.

import type { QuiltPlan, TopPlan } from '#craft';
import { cloths, only, plainBlock, planned, quilt, setOf, type Written } from '../../documents/documents.ts';
import { agrees, type Checks, checkOf } from './case.ts';

const planOf = (block: Written, top: Written, more: Written = {}): QuiltPlan =>
  planned(quilt({ fabrics: cloths(110), ...more, blocks: [block], top }));

const count = ({ set }: TopPlan, role: string): number => set.strips.filter((strip) => strip.role === role).length;

const bordersOf = (top: TopPlan) => top.pieces.filter(({ role }) => role === 'border');

interface Sashed {
  readonly across: number;
  readonly down: number;
  readonly outer: boolean;
}

const sashed = (
  { across, down, outer }: Sashed,
  { block, sash }: { readonly block: number; readonly sash: number },
) => {
  const sashing = { width: sash, fabric: 'light', cornerstones: 'medium', outer };
  return planOf(plainBlock('b', block, block), setOf('b', { across, down, ...(sash > 0 ? { sashing } : {}) })).top;
};

const squares = (plan: QuiltPlan, shape: string): number =>
  plan.fabrics
    .flatMap(({ pieces }) => pieces)
    .filter((piece) => piece.shape === shape)
    .reduce((all, piece) => all + piece.count, 0);

export const setting: Checks = {
  straight_set: checkOf<Sashed & { block: number; sash: number }, object>((of) => {
    const { set } = sashed(of.inputs, of.inputs);
    agrees({ w: set.width, h: set.height }, of);
  }),

  sashing_counts: checkOf<Sashed, object>((of) => {
    const top = sashed(of.inputs, { block: 12, sash: 3 });
    agrees({ sashes: count(top, 'sash'), cornerstones: count(top, 'cornerstone') }, of);
  }),

  on_point_set: checkOf<{ across: number; down: number; block: number }, object>((of) => {
    const { across, down, block } = of.inputs;
    const { rows } = setOf('b', { across, down });
    const between = setOf('b', { across: across - 1, down: down - 1 }).rows;
    const top = { set: 'on-point', rows, between, settingFabric: 'light' };
    const plan = planOf(plainBlock('b', block, block), top);
    agrees(
      {
        w: plan.top.set.width,
        h: plan.top.set.height,
        blocks: plan.top.set.placed.length,
        sides: count(plan.top, 'side-triangle'),
        corners: count(plan.top, 'corner-triangle'),
        side_squares: squares(plan, 'quarter-square'),
        corner_squares: squares(plan, 'half-square'),
      },
      of,
    );
  }),

  border_total: checkOf<{ w: number; h: number; border: number }, object>((of) => {
    const { w, h, border } = of.inputs;
    const { top } = planOf(plainBlock('b', w, h), setOf('b', { borders: [{ width: border, fabric: 'light' }] }));
    agrees({ length: bordersOf(top).reduce((all, piece) => all + piece.count * piece.finished[0], 0) }, of);
  }),

  // the lesson measures unsewn edges: the top is its size less a seam all round, and so is the strip
  butted_border: checkOf<{ w: number; h: number; strip: number; seam: number }, object>((of) => {
    const { w, h, strip, seam } = of.inputs;
    const borders = [{ width: strip - 2 * seam, fabric: 'light', grain: 'lengthwise' }];
    const { top } = planOf(plainBlock('b', w - 2 * seam, h - 2 * seam), setOf('b', { borders }));
    const [sides, ends] = bordersOf(top).map(({ cut }) => cut.size[0]);
    const [newWidth, newHeight] = top.steps.at(-1)?.unfinished ?? [];
    agrees({ sides, ends, new_w: newWidth, new_h: newHeight }, of);
  }),

  mitred_border: checkOf<{ side: number; border: number; seam: number }, object>((of) => {
    const { side, border, seam } = of.inputs;
    const borders = [{ width: border, fabric: 'light', corners: 'mitred' }];
    const { top } = planOf(plainBlock('b', side, side), setOf('b', { borders }), { seam });
    const { cut } = only(bordersOf(top));
    agrees({ long_edge_cut: cut.exact[0], strip: cut.size[1] }, of);
  }),

  // the strip that brings the middle to the size that the blocks of a pieced border divide: a ninth of it here
  coping_strip: checkOf<{ have: number; want: number; seam: number }, object>((of) => {
    const { have, want, seam } = of.inputs;
    const key = plainBlock('key', want / 9, want / 9);
    const top = setOf('b', { borders: [{ pieced: { block: 'key', spacer: 'light' } }] });
    const blocks = [plainBlock('b', have, have), key];
    const spacers = planned(quilt({ seam, fabrics: cloths(110), blocks, top })).top.pieces.filter(
      ({ role }) => role === 'spacer',
    );
    const widths = spacers.map(({ finished, cut }) => ({ finished: finished[1], cut: cut.exact[1] }));
    for (const width of widths) agrees(width, of);
    agrees(widths[0] ?? {}, of);
  }),
};
