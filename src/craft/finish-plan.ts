// The finish of a plan: binding, backing and batting for the finished top.
import type { ClothNature } from '#craft/cutting';
import type { Quilt } from '#craft/design';
import { backingFor, bindingFor, bindingTail, joinAllowance } from '#craft/finishing';
import { type Length, length } from '#craft/measure';
import type { SetTop } from '#craft/setting';
import { toNumber } from '#ground/exact';
import type { FinishPlan } from './plan.ts';

export const planFinish = (quilt: Quilt, set: SetTop, natures: ReadonlyMap<string, ClothNature>): FinishPlan => {
  const { binding, backing, batting } = quilt.finish;
  return {
    binding: binding && {
      fabric: binding.fabric,
      cut: length(toNumber(binding.cut)),
      ...bindingFor({
        round: length(2 * (set.width + set.height)),
        width: natures.get(binding.fabric)?.width as Length,
        cut: length(toNumber(binding.cut)),
        tail: bindingTail(quilt.unit),
      }),
    },
    backing: backing && backingPlan({ quilt, set, backing, natures }),
    batting: batting && sizeOf(around(set, toNumber(batting.overage))),
  };
};

const backingPlan = (of: {
  readonly quilt: Quilt;
  readonly set: SetTop;
  readonly backing: NonNullable<Quilt['finish']['backing']>;
  readonly natures: ReadonlyMap<string, ClothNature>;
}): FinishPlan['backing'] => {
  const size = around(of.set, toNumber(of.backing.overage));
  const nature = of.natures.get(of.backing.fabric) as ClothNature;
  const { run, panels, cuts } = backingFor({
    size,
    width: nature.width,
    join: joinAllowance(of.quilt.unit),
    run: uprightRun(nature),
  });
  return { fabric: of.backing.fabric, ...sizeOf(size), panels, run, cuts };
};

/** A print that stands upright decides how the panels run; else the way that takes less cloth. */
const uprightRun = ({ print, printRuns }: ClothNature): 'upright' | 'level' | 'least' => {
  if (print === 'none') return 'least';
  return printRuns === 'lengthwise' ? 'upright' : 'level';
};

/** The top with an overage on every side. */
const around = (set: SetTop, overage: number): readonly [Length, Length] => [
  length(set.width + 2 * overage),
  length(set.height + 2 * overage),
];

const sizeOf = ([width, height]: readonly [Length, Length]) => ({ width, height });
