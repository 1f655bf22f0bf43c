// How halves that read alike are parted: another cloth of the quilt for one tone, the one that changes least.
import type { QuiltDocument } from '#craft/design';
import { readsApart } from '#craft/fabric';
import type { ValuesNear } from '#workroom/compute';
import { lightnessFor, type SeenCloth } from './seen-cloths.ts';

export interface ValueMend {
  readonly tone: string;
  readonly cloth: string;
  readonly way: 'lighter' | 'darker';
}

/** Offered at most: one lighter, one darker. */
export const mendsFor = (of: {
  readonly near: ValuesNear;
  readonly document: QuiltDocument;
  readonly cloths: readonly SeenCloth[];
}): readonly ValueMend[] => {
  const { near, document, cloths } = of;
  const colouring = document.blocks.find(({ id }) => id === near.block)?.colourings?.[near.colouring] ?? {};
  const light = new Map(cloths.map((cloth) => [cloth.id, lightnessFor(cloth, near.sight)]));
  const lightOfTone = (tone: string): number => {
    const cloth = colouring[tone] ?? tone;
    const all = (typeof cloth === 'string' ? [cloth] : cloth).map((id) => light.get(id) ?? 50);
    return all.reduce((sum, one) => sum + one, 0) / Math.max(1, all.length);
  };
  const mend = (way: ValueMend['way']): readonly ValueMend[] => {
    const [own, other] = way === 'lighter' ? [near.light, near.dark] : [near.dark, near.light];
    const sign = way === 'lighter' ? 1 : -1;
    // the tone that lies nearest to the other half
    const tone = own.tones.toSorted((a, b) => sign * (lightOfTone(a) - lightOfTone(b)))[0];
    const wanted = other.lightness + sign * readsApart;
    const cloth = cloths
      .map(({ id }) => ({ id, over: sign * ((light.get(id) ?? 50) - wanted) }))
      .filter(({ id, over }) => over >= 0 && !own.fabrics.includes(id))
      .toSorted((a, b) => a.over - b.over || (a.id < b.id ? -1 : 1))[0];
    return tone === undefined || cloth === undefined ? [] : [{ tone, cloth: cloth.id, way }];
  };
  return [...mend('lighter'), ...mend('darker')];
};
