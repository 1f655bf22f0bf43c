// The patches that are chosen on the table, and what is done with them.
import { useCallback, useEffect, useMemo, useState } from 'react';
import {
  type Drawn,
  type DrawnPatch,
  joined,
  mirroredIn,
  type Repeating,
  repeatedBy,
  repeatedRound,
  seamsBetween,
  slackOf,
  turnedIn,
} from '#craft/redrawing';
import { countWords } from '#workroom/room';
import type { Redrawing } from './use-redrawing.ts';

export interface ChosenPatchesState {
  readonly chosen: readonly number[];
  /** The one that the keys stand at. */
  readonly mark: number | null;
  /** Whether more than that one was asked for. */
  readonly isSeveral: boolean;
  readonly taps: 'choose' | 'add';
  readonly tapTo: (taps: 'choose' | 'add') => void;
  readonly choose: (mark: number | null, more?: readonly number[]) => void;
  readonly toggle: (index: number) => void;
  readonly extend: (index: number) => void;
  readonly mirror: (way: 'left-right' | 'top-bottom') => void;
  readonly turn: () => void;
  readonly takeOut: () => void;
  readonly join: () => void;
  readonly colour: (tone: string) => void;
  readonly repeat: (repeating: Repeating | 'round') => void;
}

export const useChosenPatches = (redrawing: Redrawing): ChosenPatchesState => {
  const { id, drawn, put, tell, done } = redrawing;
  const [mark, setMark] = useState<number | null>(null);
  const [more, setMore] = useState<readonly number[]>([]);
  const [taps, tapTo] = useState<'choose' | 'add'>('choose');
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is chosen belongs to the block that was left
  useEffect(() => {
    setMark(null);
    setMore([]);
  }, [id]);

  const count = drawn?.patches.length ?? 0;
  const chosen = useMemo(() => {
    const all = more.length > 0 ? more : mark === null ? [] : [mark];
    return all.filter((index) => index < count);
  }, [more, mark, count]);
  const choose = useCallback(
    (to: number | null, many: readonly number[] = []) => {
      setMark(to);
      // where taps add, the keys walk without letting go; nothing chosen lets go of all
      if (many.length > 0 || taps === 'choose' || to === null) setMore(many);
      done('');
    },
    [taps, done],
  );
  const toggle = (index: number): void => {
    setMark(index);
    setMore(chosen.includes(index) && more.length > 0 ? without(chosen, index) : [...without(chosen, index), index]);
  };
  const extend = (index: number): void => {
    setMark(index);
    setMore([...without(chosen, index), index]);
  };

  const change = (what: string, said: string, to: (of: Drawn) => readonly DrawnPatch[] | null): void => {
    if (drawn === null || chosen.length === 0) return;
    const patches = to(drawn);
    if (!put(what, { patches }) || patches === null) return;
    // where others come or go, those that stay as they are stay chosen
    if (patches.length !== drawn.patches.length) {
      const own = new Set(chosen.map((index) => drawn.patches[index]));
      const still = patches.flatMap((patch, index) => (own.has(patch) ? [index] : []));
      setMark(still[0] ?? null);
      setMore(still.length > 1 ? still : []);
    }
    done(said);
  };
  const join = (): void => {
    if (drawn === null) return;
    const slack = slackOf(drawn.grid);
    const patches = joined(drawn.patches, chosen, slack);
    if (patches === null) {
      tell('These do not make one patch: choose patches that lie along each other, with no hole between them.');
      return;
    }
    const own = chosen.flatMap((index) => drawn.patches.slice(index, index + 1));
    if (!put('Take out a seam', { patches, seams: { out: seamsBetween(own, slack) } })) return;
    setMark(Math.min(...chosen));
    setMore([]);
    done(`They are one patch; there are ${countWords(patches.length, 'patch', 'patches')} now.`);
  };
  const colour = (tone: string): void => {
    if (drawn === null || chosen.length === 0) return;
    const patches = drawn.patches.map((patch, index) => (chosen.includes(index) ? { ...patch, tone } : patch));
    if (put('Colour patches', { patches, seams: {} })) done(`In the tone ${tone}.`);
  };
  return {
    chosen,
    mark: mark !== null && mark < count ? mark : null,
    isSeveral: more.length > 0,
    taps,
    tapTo,
    choose,
    toggle,
    extend,
    mirror: (way) => change('Mirror patches', 'Mirrored.', ({ patches }) => mirroredIn(patches, chosen, way)),
    turn: () => change('Turn patches', 'Turned a quarter clockwise.', (of) => turnedIn(of, chosen)),
    takeOut: () =>
      change('Take out patches', `${countWords(chosen.length, 'patch is', 'patches are')} taken out.`, ({ patches }) =>
        patches.filter((_, index) => !chosen.includes(index)),
      ),
    join,
    colour,
    repeat: (repeating) =>
      change('Repeat patches', 'Repeated.', (of) =>
        repeating === 'round' ? repeatedRound(of, chosen) : repeatedBy(of, chosen, repeating),
      ),
  };
};

const without = (all: readonly number[], one: number): readonly number[] => all.filter((index) => index !== one);
