// What one version of a quilt comes to, in the figures by which it is weighed against another.
import type { FabricPlan, QuiltPlan } from '#craft';
import { exactText, type Unit } from '#craft/measure';
import { figuresOf } from './pictured.ts';

/** Lengths in the document's unit. */
export interface VersionSeen {
  readonly unit: Unit;
  /** Its finest mark. */
  readonly ruler: string;
  readonly size: readonly [width: number, height: number];
  /** Laid in the top, those of pieced borders with them. */
  readonly blocks: number;
  readonly kinds: number;
  /** Of the top: patches of blocks, and strips. */
  readonly pieces: number;
  readonly seams: number;
  /** In all, and of them by the kind of work. */
  readonly minutes: number;
  readonly cutting: number;
  readonly sewing: number;
  readonly finishing: number;
  readonly cloths: readonly VersionCloth[];
  readonly buy: readonly { readonly amount: number; readonly unit: FabricPlan['buy']['unit'] }[];
  readonly leftOver: number;
  /** Of the cloths and the batting that have a price; null where none has one. */
  readonly cost: number | null;
  readonly unpriced: number;
  readonly currency: string;
  readonly backing: readonly [width: number, height: number] | null;
  readonly binding: number | null;
}

export interface VersionCloth {
  readonly id: string;
  readonly name: string;
  readonly colour: string;
  readonly amount: number;
  readonly unit: FabricPlan['buy']['unit'];
  readonly cost: number | null;
}

export const seeVersion = (plan: QuiltPlan, _all: Readonly<Record<never, never>>): VersionSeen => {
  const { quilt, top, blocks, fabrics, cost } = plan;
  const { buy, leftOver, seams, minutes, cutting, sewing, finishing, binding, backing } = figuresOf(plan);
  return {
    unit: quilt.unit,
    ruler: exactText(quilt.ruler),
    size: [top.set.width, top.set.height],
    blocks: top.set.placed.length,
    kinds: new Set(blocks.map(({ id }) => id)).size,
    pieces:
      top.set.strips.length +
      blocks.reduce((all, { count, pieces }) => all + count * pieces.reduce((n, { perBlock }) => n + perBlock, 0), 0),
    seams,
    minutes,
    cutting,
    sewing,
    finishing,
    cloths: fabrics.map((fabric) => {
      const { name = fabric.id, colour = '' } = quilt.fabrics.find(({ id }) => id === fabric.id) ?? {};
      return {
        id: fabric.id,
        name: name || fabric.id,
        colour,
        amount: fabric.buy.amount,
        unit: fabric.buy.unit,
        cost: fabric.cost,
      };
    }),
    buy,
    leftOver,
    cost: costOf(plan),
    unpriced: cost.unpriced.length,
    currency: cost.currency,
    backing,
    binding,
  };
};

const costOf = ({ cost, finish }: QuiltPlan): number | null => {
  const batting = finish.batting?.cost;
  return cost.total === null && batting === undefined ? null : (cost.total ?? 0) + (batting ?? 0);
};
