// The finish of a plan: binding, backing, batting, sleeve and label for the finished top, and the bed that it is for.
import { type ClothNature, type CutRule, joinedAnyWay, joinedOnCloth, joiningRun, rectangleCut } from '#craft/cutting';
import type { Quilt } from '#craft/design';
import {
  backingFor,
  battingPackageFor,
  biasBindingFor,
  bindingFor,
  bindingTail,
  evenLines,
  joinAllowance,
  mattressOf,
  quiltForBed,
  sleeveFor,
} from '#craft/finishing';
import { type Length, length, tidy, toNearestMark, type Unit, upToMark } from '#craft/measure';
import type { FinishPlan, Note } from '#craft/plan';
import type { SetTop } from '#craft/setting';
import { type Rational, toNumber } from '#ground/exact';

type Natures = ReadonlyMap<string, ClothNature>;

export const planFinish = (of: {
  readonly quilt: Quilt;
  readonly set: SetTop;
  readonly natures: Natures;
  readonly rule: CutRule;
}): FinishPlan => {
  const { quilt, set, natures, rule } = of;
  const { unit } = quilt;
  const { binding, backing, batting, sleeve, label, bed } = quilt.finish;
  return {
    binding: binding && bindingPlan({ ...of, binding }),
    backing: backing && backingPlan({ quilt, set, backing, natures }),
    batting:
      batting &&
      battingPlan({
        size: around(set, { overage: batting.overage, ruler: rule.ruler }),
        unit,
        set,
        spacing: length(toNumber(batting.spacing)),
        price: batting.price,
      }),
    sleeve: sleeve && sleevePlan({ ...of, fabric: sleeve.fabric }),
    label: label && labelPlan(label, rule),
    bed: bed && bedPlan({ bed, set, unit }),
  };
};

const bindingPlan = (of: {
  readonly quilt: Quilt;
  readonly set: SetTop;
  readonly natures: Natures;
  readonly rule: CutRule;
  readonly binding: NonNullable<Quilt['finish']['binding']>;
}): FinishPlan['binding'] => {
  const { unit } = of.quilt;
  const { fabric, grain } = of.binding;
  const nature = of.natures.get(fabric) as ClothNature;
  const cut = length(toNumber(of.binding.cut));
  const round = length(2 * (of.set.width + of.set.height));
  const tail = bindingTail(unit);
  if (grain === 'straight')
    return { fabric, cut, grain, ...bindingFor({ round, width: joiningRun(nature, cut).long, cut, tail }), bias: null };
  const needed = length(round + tail);
  const room = length(Math.min(nature.width, nature.length ?? nature.width));
  const { side, squares, joins, gives } = biasBindingFor({
    length: needed,
    width: cut,
    seam: of.rule.seam,
    room,
    unit,
  });
  return { fabric, cut, grain, length: needed, strips: 0, joins, gives, bias: { side, squares } };
};

const battingPlan = (of: {
  readonly size: readonly [Length, Length];
  readonly unit: Unit;
  readonly set: SetTop;
  readonly spacing: Length;
  readonly price: Rational | null;
}): FinishPlan['batting'] => ({
  ...sizeOf(of.size),
  package: battingPackageFor(of.size, of.unit),
  lines: { upright: evenLines(of.set.width, of.spacing), level: evenLines(of.set.height, of.spacing) },
  ...(of.price === null ? {} : { cost: toNumber(of.price) }),
});

const sleevePlan = (of: {
  readonly quilt: Quilt;
  readonly set: SetTop;
  readonly natures: Natures;
  readonly rule: CutRule;
  readonly fabric: string;
}): FinishPlan['sleeve'] => {
  const sleeve = sleeveFor(of.set.width, of.quilt.unit);
  const nature = of.natures.get(of.fabric) as ClothNature;
  const { seam } = of.rule;
  const cut = [toNearestMark(sleeve.cut[0], of.rule.ruler).size, sleeve.cut[1]] as const;
  const cuts =
    nature.print === 'none' ? joinedAnyWay({ size: cut, nature, seam }) : joinedOnCloth({ size: cut, nature, seam });
  return { fabric: of.fabric, finished: sleeve.finished, cut, cuts };
};

const labelPlan = ({ fabric, size }: NonNullable<Quilt['finish']['label']>, rule: CutRule): FinishPlan['label'] => {
  const finished = [length(toNumber(size[0])), length(toNumber(size[1]))] as const;
  return { fabric, finished, cut: rectangleCut(finished, rule).size };
};

const bedPlan = (of: {
  readonly bed: NonNullable<Quilt['finish']['bed']>;
  readonly set: SetTop;
  readonly unit: Unit;
}): FinishPlan['bed'] => {
  const { size } = of.bed;
  const drop = length(toNumber(of.bed.drop));
  const tuck = length(toNumber(of.bed.tuck));
  const wanted = quiltForBed({ bed: size, drop, tuck, unit: of.unit });
  const lacks = [tidy(Math.max(0, wanted[0] - of.set.width)), tidy(Math.max(0, wanted[1] - of.set.height))] as const;
  return { size, mattress: mattressOf(size, of.unit), wanted, lacks };
};

/** Where the quilt is smaller than its bed asks for. */
export const bedNotes = ({ bed }: FinishPlan): readonly Note[] =>
  bed === null || Math.max(...bed.lacks) < 1e-9
    ? []
    : [
        {
          code: 'finishing/smaller-than-bed',
          level: 'warning',
          path: '/finish/bed',
          wanted: bed.wanted,
          lacks: bed.lacks,
        },
      ];

const backingPlan = (of: {
  readonly quilt: Quilt;
  readonly set: SetTop;
  readonly backing: NonNullable<Quilt['finish']['backing']>;
  readonly natures: ReadonlyMap<string, ClothNature>;
}): FinishPlan['backing'] => {
  const size = around(of.set, { overage: of.backing.overage, ruler: of.quilt.ruler });
  const nature = of.natures.get(of.backing.fabric) as ClothNature;
  const { run, panels, cuts } = backingFor({
    size,
    width: nature.width,
    join: joinAllowance(of.quilt.unit),
    run: uprightRun(nature) ?? of.backing.run ?? 'least',
  });
  // panels are trimmed with the quilt, so the last one goes up to a mark; whole widths stay as wide as the cloth
  const onMarks = cuts.map(
    ([across, along]) =>
      [
        length(Math.min(nature.width, upToMark(across, of.quilt.ruler).size)),
        upToMark(along, of.quilt.ruler).size,
      ] as const,
  );
  return { fabric: of.backing.fabric, ...sizeOf(size), panels, run, cuts: onMarks };
};

/** A print that stands upright decides how the panels run, whatever the document asks for; null where there is none. */
const uprightRun = ({ print, printRuns }: ClothNature): 'upright' | 'level' | null => {
  if (print === 'none') return null;
  return printRuns === 'lengthwise' ? 'upright' : 'level';
};

/** The top with an overage on every side, up to the next mark: what is cut off later may be a little too large. */
const around = (
  set: SetTop,
  of: { readonly overage: Rational; readonly ruler: Rational },
): readonly [Length, Length] => {
  const both = 2 * toNumber(of.overage);
  return [upToMark(length(set.width + both), of.ruler).size, upToMark(length(set.height + both), of.ruler).size];
};

const sizeOf = ([width, height]: readonly [Length, Length]) => ({ width, height });
