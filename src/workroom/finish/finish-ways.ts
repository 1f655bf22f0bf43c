// The ways of finishing that lie open from where the quilt stands: each part without it or with it, panels the other way, the binding on
// the other grain. What each takes is worked out before she chooses.
import type { QuiltDocument } from '#craft/design';
import type { FinishWay } from '#workroom/compute';
import type { JsonObject } from '#workroom/editing';
import { addPart, cutBinding, type FinishKey, lackingParts, runBacking, takeOutPart } from './finish-edits.ts';

/** Parts that take cloth. */
const ofCloth = ['backing', 'binding', 'sleeve', 'label'] as const satisfies readonly FinishKey[];

export const waysFrom = (document: QuiltDocument): readonly FinishWay[] => {
  const { finish, top } = document;
  const after = (change: (draft: QuiltDocument) => void): JsonObject => {
    // the finish alone is changed, and no larger than a few lines
    const draft = { ...document, ...(finish === undefined ? {} : { finish: structuredClone(finish) }) };
    change(draft);
    return (draft.finish ?? {}) as JsonObject;
  };
  const own = after(() => undefined);
  const runs = [null, 'upright', 'level'] as const;
  return [
    ...ofCloth.map(
      (part): FinishWay =>
        finish?.[part] === undefined
          ? { key: withKey(part), finish: after((draft) => addPart(draft, part)) }
          : { key: withoutKey(part), finish: after((draft) => takeOutPart(draft, part)) },
    ),
    ...(finish?.backing === undefined
      ? []
      : runs.map((run): FinishWay => ({ key: runKey(run), finish: after((draft) => runBacking(draft, run)) }))),
    ...(finish?.binding === undefined
      ? []
      : grains.map((grain): FinishWay => ({ key: grain, finish: after((draft) => cutBinding(draft, grain)) }))),
    ...(lackingParts(document).length === 0
      ? []
      : [{ key: 'with all', finish: after((draft) => lackingParts(draft).map((part) => addPart(draft, part))) }]),
    ...(top.borders === undefined || top.borders.length === 0
      ? []
      : [{ key: 'without borders', finish: own, borders: 'left-out' as const }]),
    { key: 'without finish', finish: {} },
  ];
};

export const grains = ['straight', 'bias'] as const;
export const withKey = (part: FinishKey): string => `with ${part}`;
export const withoutKey = (part: FinishKey): string => `without ${part}`;
export const runKey = (run: 'upright' | 'level' | null): string => run ?? 'least';
