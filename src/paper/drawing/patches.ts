// Patches of a block drawn in place: cloth, edge, and the hatch where it is asked for.

import type { PlannedPatch } from '#craft';
import type { Polygon } from '#ground/plane';
import type { ClothSigns } from '#paper/cloth';
import { signOf } from '#paper/cloth';
import { hatchId } from './hatching.ts';
import { ink, inkOn, patchEdgePt } from './ink.ts';
import type { Labelled } from './label.ts';
import { pathOf } from './shape.ts';
import { element } from './svg.ts';

/** A patch with its outline in the picture's points. */
export interface LaidPatch {
  readonly patch: PlannedPatch;
  readonly outline: Polygon;
}

export const drawPatches = (of: {
  readonly laid: readonly LaidPatch[];
  readonly signs: ClothSigns;
  readonly fill: 'colour' | 'hatched';
}): readonly string[] =>
  of.laid.map(({ patch, outline }) => {
    const sign = signOf(of.signs, patch.fabric);
    const d = pathOf([outline]);
    const cloth = element('path', {
      d,
      fill: sign.colour,
      stroke: ink,
      'stroke-width': patchEdgePt,
      'stroke-linejoin': 'round',
    });
    return of.fill === 'hatched' ? cloth + element('path', { d, fill: `url(#${hatchId(sign)})` }) : cloth;
  });

export const patchLabels = (laid: readonly LaidPatch[], signs: ClothSigns): readonly Labelled[] =>
  laid.map(({ patch, outline }) => ({
    text: patch.piece,
    outline,
    fill: inkOn(signOf(signs, patch.fabric).colour),
  }));
