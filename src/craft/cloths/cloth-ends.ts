// What do the ends of a cloth that are at hand save of what is bought?
import {
  amountToBuy,
  asTaken,
  type ClothNature,
  type Demand,
  type LaidOut,
  type LaidSheets,
  planWithEnds,
} from '#craft/cutting';
import type { Fabric, Quilt } from '#craft/design';
import { directionsFor } from '#craft/directions';
import { length, tidy } from '#craft/measure';
import type { EndsPlan, FabricPlan, Note } from '#craft/plan';
import { toNumber } from '#ground/exact';
import { costOfCloth } from './cloth-ease.ts';

export interface EndsTask {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly nature: ClothNature;
  readonly demands: readonly Demand[];
  /** All pieces laid on cloth by the length. */
  readonly laid: LaidOut;
  readonly lay: (demands: readonly Demand[]) => LaidOut;
  readonly steps: number;
}

/** Null for a cloth without ends at hand. */
export const layWithEnds = (task: EndsTask): { readonly laid: LaidOut; readonly ends: EndsPlan } | null => {
  const { fabric, quilt, laid, nature, demands } = task;
  if (fabric.ends.length === 0) return null;
  const { buying, unit } = quilt;
  const purchase = (long: LaidOut['layout']['length']): number =>
    amountToBuy({ length: asTaken(long, laid), buying, unit }).amount;
  const found = planWithEnds({
    width: nature.width,
    demands,
    ends: fabric.ends.map(({ size, count }) => ({
      size: [length(toNumber(size[0])), length(toNumber(size[1]))],
      cost: 1,
      stock: count,
    })),
    without: laid,
    lay: task.lay,
    purchase,
    budget: { steps: task.steps },
  });
  const after = found?.laid ?? laid;
  const [amountBefore, amount] = [purchase(laid.layout.length), purchase(after.layout.length)];
  const saved = amountBefore - amount;
  return {
    laid: after,
    ends: {
      used: found === null ? [] : usedOf(fabric, found.onEnds),
      directions: found && directionsFor({ laid: found.onEnds, allowances: null, unit }),
      saves: {
        length: tidy(laid.layout.length - after.layout.length),
        amount: tidy(saved),
        cost: costOfCloth(fabric, saved),
      },
    },
  };
};

const usedOf = (fabric: Fabric, { sheets }: LaidSheets): EndsPlan['used'] =>
  sheets.map(({ kind, ...layout }) => ({ kind, name: fabric.ends[kind]?.name ?? null, layout }));

/** One for each cloth with ends: what they save, or that they save nothing. */
export const endsNotes = (quilt: Quilt, fabrics: readonly FabricPlan[]): readonly Note[] =>
  fabrics.flatMap(({ id, ends, buy }): readonly Note[] =>
    ends === null || buy.unit === 'sheets'
      ? []
      : [
          {
            code: 'cutting/ends-save',
            level: 'note',
            path: `/fabrics/${quilt.fabrics.findIndex((fabric) => fabric.id === id)}/ends`,
            fabric: id,
            used: ends.used.length,
            saved: ends.saves.amount,
            unit: buy.unit,
          },
        ],
  );
