// A log cabin as patches: the centre, then log after log, each as long as the unit it is sewn to.

import type { LogCabinDesign, LogDesign } from '#craft/design';
import { length } from '#craft/measure';
import { add, type Rational, sub, toNumber, zero } from '#ground/exact';
import { at } from '#ground/plane';
import type { DraftedBlock, Patch } from './block.ts';

interface ExactBox {
  readonly left: Rational;
  readonly top: Rational;
  readonly right: Rational;
  readonly bottom: Rational;
}

/**
 * Patches in sewing order, patch 0 the centre; the size follows from the recipe.
 *
 * @source docs/formulas.md#log-cabin
 */
export const draftLogCabin = (block: {
  readonly id: string;
  readonly title: string;
  readonly path: string;
  readonly shape: LogCabinDesign;
}): DraftedBlock => {
  const { shape } = block;
  let whole: ExactBox = { left: zero, top: zero, right: shape.centre[0], bottom: shape.centre[1] };
  const boxes: { readonly box: ExactBox; readonly tone: string; readonly path: string }[] = [
    { box: whole, tone: shape.centreTone, path: `${block.path}/recipe/centre` },
  ];
  for (const log of shape.logs) {
    const box = beside(whole, log);
    whole = around(whole, box);
    boxes.push({ box, tone: log.tone, path: `${block.path}/recipe/rounds/${log.round}` });
  }
  const corner = whole;
  const exactSize = [sub(whole.right, whole.left), sub(whole.bottom, whole.top)] as const;
  return {
    id: block.id,
    title: block.title,
    path: block.path,
    exactSize,
    size: [length(toNumber(exactSize[0])), length(toNumber(exactSize[1]))],
    patches: boxes.map(({ box, tone, path }) => ({ tone, path, points: pointsOf(box, corner) })),
    added: shape.logs.map((log) => log.side),
  };
};

const beside = (unit: ExactBox, log: LogDesign): ExactBox => {
  switch (log.side) {
    case 'left':
      return { ...unit, left: sub(unit.left, log.width), right: unit.left };
    case 'right':
      return { ...unit, left: unit.right, right: add(unit.right, log.width) };
    case 'top':
      return { ...unit, top: sub(unit.top, log.width), bottom: unit.top };
    case 'bottom':
      return { ...unit, top: unit.bottom, bottom: add(unit.bottom, log.width) };
  }
};

const around = (a: ExactBox, b: ExactBox): ExactBox => ({
  left: a.left.compare(b.left) < 0 ? a.left : b.left,
  top: a.top.compare(b.top) < 0 ? a.top : b.top,
  right: a.right.compare(b.right) > 0 ? a.right : b.right,
  bottom: a.bottom.compare(b.bottom) > 0 ? a.bottom : b.bottom,
});

const pointsOf = (box: ExactBox, corner: ExactBox): Patch['points'] => {
  const left = toNumber(sub(box.left, corner.left));
  const right = toNumber(sub(box.right, corner.left));
  const top = toNumber(sub(box.top, corner.top));
  const bottom = toNumber(sub(box.bottom, corner.top));
  return [at(left, top), at(right, top), at(right, bottom), at(left, bottom)];
};
