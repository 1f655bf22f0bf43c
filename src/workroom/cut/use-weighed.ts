// Choices with what each comes to: weighed when nothing else is searched for, one after another, and anew with every plan.
import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import type { QuiltDocument } from '#craft/design';
import { type Variant, type Weighed, withoutPhotos } from '#workroom/compute';
import type { JsonObject } from '#workroom/editing';
import { useQuilt, useRoom } from '#workroom/room';
import { type Choice, clothChoices, quiltChoices } from './choices.ts';

export interface WeighedChoices {
  readonly ofQuilt: readonly Choice[];
  readonly ofCloth: readonly Choice[];
  /** By id of a choice. */
  readonly known: ReadonlyMap<string, Weighed>;
  /** Changes of the cloth's purchase. */
  readonly changes: readonly Extract<Weighed, { readonly kind: 'cloth' }>[];
  /** Waiting for a search to end, weighing, or all weighed. */
  readonly state: 'waiting' | 'weighing' | 'done';
}

/** How long one rests at a cloth before its choices are weighed. */
const restMs = 350;

export const useWeighed = (cloth: string): WeighedChoices => {
  const { planner } = useRoom();
  const { document, answer } = useQuilt();
  const { working, reply } = useSyncExternalStore(planner.subscribe, planner.state);
  const isIdle = working === null && reply?.ok === true;
  const ofQuilt = useMemo(() => quiltChoices(document), [document]);
  const ofCloth = useMemo(() => clothChoices(document, cloth), [document, cloth]);
  const [found, setFound] = useState<{
    /** The plan it was weighed against. */
    readonly answer: unknown;
    readonly weighed: readonly Weighed[];
    readonly isDone: boolean;
  }>({ answer: null, weighed: [], isDone: false });
  // biome-ignore lint/correctness/useExhaustiveDependencies: another answer is another plan
  useEffect(() => {
    if (!isIdle) return;
    // choices stay weighed while another cloth is looked at; changes of a purchase are that cloth's own
    const known = found.answer === answer ? found.weighed.filter((one) => one.kind !== 'cloth') : [];
    setFound({ answer, weighed: known, isDone: false });
    let isLeft = false;
    let end = (): void => undefined;
    const tell = (weighed: Weighed): void => {
      if (!isLeft) setFound((now) => ({ ...now, weighed: [...now.weighed, weighed] }));
    };
    const wanted = [...ofCloth, ...ofQuilt].filter(({ id }) => known.every((one) => one.id !== id));
    const rest = setTimeout(() => {
      end = planner.weigh(
        {
          quick: wanted.filter(({ isQuick }) => isQuick).map((choice) => variantOf(choice, document)),
          cloth,
          variants: wanted.filter(({ isQuick }) => !isQuick).map((choice) => variantOf(choice, document)),
        },
        {
          tell,
          done: () => {
            if (!isLeft) setFound((now) => ({ ...now, isDone: true }));
          },
        },
      );
    }, restMs);
    return () => {
      isLeft = true;
      clearTimeout(rest);
      end();
    };
  }, [planner, isIdle, answer, cloth, ofCloth, ofQuilt]);
  // of a plan that stands no more nothing is known
  const isOfThis = isIdle && found.answer === answer;
  const weighed = isOfThis ? found.weighed : [];
  return {
    ofQuilt,
    ofCloth,
    known: new Map(weighed.flatMap((one) => (one.kind === 'cloth' ? [] : [[one.id, one] as const]))),
    changes: weighed.flatMap((one) => (one.kind === 'cloth' ? [one] : [])),
    state: isIdle ? (isOfThis && found.isDone ? 'done' : 'weighing') : 'waiting',
  };
};

const variantOf = ({ id, apply }: Choice, document: QuiltDocument): Variant => {
  const draft = structuredClone(withoutPhotos(document as unknown as JsonObject)) as unknown as QuiltDocument;
  apply(draft);
  return { id, document: draft as unknown as JsonObject };
};
