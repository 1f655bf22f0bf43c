// A drawing that one looks at closely, chooses in and hears: by pointer, by keys, by touch, by screen reader.
import type { KeyboardEvent, ReactNode } from 'react';
import { CloserKeys } from './closer-keys.tsx';
import { type Act, actionFor } from './drawing-keys.ts';
import type { HandOf } from './hand.ts';
import { neighbourOf, type Scene, type Thing, thingAt } from './scene.ts';
import { patchOfKey } from './scenes.ts';
import { ToldHand, ToldThings } from './told-things.tsx';
import { useChosenThings } from './use-chosen-things.ts';
import { useFittedView } from './use-fitted-view.ts';
import { useLooking } from './use-looking.ts';
import { type Over, usePainted } from './use-painted.ts';
import { type Tap, usePointers } from './use-pointers.ts';
import { moved } from './view.ts';

export interface DrawingViewOf {
  readonly scene: Scene;
  /** What the whole is. */
  readonly label: string;
  readonly chosen: string | null;
  readonly onChoose: (key: string | null) => void;
  /** A patch was pointed at, or come to by keys: the thing that it lies in, and its number there. */
  readonly onPatch?: (key: string, patch: number) => void;
  /** Keys of things where a problem lies. */
  readonly lit?: readonly string[];
  /** Where several can be chosen at once. */
  readonly several?: SeveralOf;
  /** Painted over the drawing, under what is chosen. */
  readonly over?: Over;
  /** Where one points at places rather than things: taps and keys are for the hand, not for choosing. */
  readonly hand?: HandOf;
  /** The thing under the pointer, or none: before one chooses. */
  readonly onPoint?: (key: string | null) => void;
  /** What is long begins as wide as the screen, no larger than so many pixels for one unit; without it, it begins whole. */
  readonly acrossMost?: number;
  /** Of a small drawing beside others: no keys to look closer. */
  readonly closerKeys?: 'shown' | 'none';
  /** Keys of the view's own, at hand below the drawing. */
  readonly foot?: ReactNode;
}

export interface SeveralOf {
  /** Beside or with the one that the keys stand at; none where that one alone counts. */
  readonly keys: ReadonlySet<string>;
  /** Whether a plain tap takes one more, as on a screen without a keyboard. */
  readonly taps: 'choose' | 'add';
  /** One more, or one less if it was among them. */
  readonly onToggle: (key: string) => void;
  /** One more, come to from the one before. */
  readonly onExtend: (key: string) => void;
}

const noKeys: readonly string[] = [];
/** What the keys still do in a drawing where a hand points at places. */
const besideHand: ReadonlySet<Act['kind']> = new Set(['pan', 'zoom', 'fit']);

export const DrawingView = (of: DrawingViewOf) => {
  const { scene, label, several, over, hand, onPoint, acrossMost, closerKeys = 'shown', foot } = of;
  const chosen = useChosenThings(scene, of.chosen);
  const fitted = useFittedView(scene, acrossMost);
  const among = several?.keys.size ? several.keys : undefined;
  const painted = usePainted({
    scene,
    fitted,
    chosen,
    among,
    lit: of.lit ?? noKeys,
    over,
    marks: hand === undefined ? 'shown' : 'none',
  });
  const looking = useLooking(fitted, painted.repaint);
  const acting = { ...of, things: chosen, looking };
  const pointers = usePointers({
    painted,
    looking,
    hand,
    onTap: (tap) => {
      fitted.frame.current?.querySelector<HTMLElement>('.drawing-list')?.focus({ preventScroll: true });
      if (hand === undefined) chooseAt(acting, tap);
      else hand.onTap(tap.point, looking.now().scale);
    },
    onPoint: (point) => onPoint?.(point === null ? null : (thingAt(scene.things, point)?.key ?? null)),
  });
  const choosing = several === undefined || chosen.isInside ? 'one' : 'several';
  const onKeyDown = (event: KeyboardEvent): void => {
    const isPlain = !(event.altKey || event.ctrlKey || event.metaKey);
    if (!(isPlain && hand?.onKey(event.key))) {
      const act = actionFor(event, choosing);
      if (act === null || (hand !== undefined && !besideHand.has(act.kind))) return;
      perform(acting, act);
    }
    event.preventDefault();
    event.stopPropagation();
  };

  const { screen } = fitted;
  const density = globalThis.devicePixelRatio || 1;
  return (
    <div className="drawing">
      <div className="drawing-ground" ref={fitted.frame}>
        <canvas
          ref={painted.canvas}
          className="drawing-canvas"
          width={Math.round(screen.width * density)}
          height={Math.round(screen.height * density)}
          {...pointers}
          onPointerCancel={pointers.onPointerUp}
        />
        {hand === undefined ? (
          <ToldThings {...{ label, chosen, choosing, among, onKeyDown }} />
        ) : (
          <ToldHand {...{ hand, onKeyDown }} />
        )}
      </div>
      <CloserKeys {...{ looking, foot }} keys={closerKeys} isLong={acrossMost !== undefined} />
    </div>
  );
};

type Acting = Pick<DrawingViewOf, 'scene' | 'chosen' | 'onChoose' | 'onPatch' | 'several'> & {
  readonly things: ReturnType<typeof useChosenThings>;
  readonly looking: ReturnType<typeof useLooking>;
};

const chooseAt = ({ scene, onChoose, onPatch, several, things }: Acting, { point, isOneMore }: Tap): void => {
  const found = thingAt(scene.things, point);
  things.leave();
  if (several !== undefined && found !== null && (isOneMore || several.taps === 'add')) {
    several.onToggle(found.key);
    return;
  }
  onChoose(found?.key ?? null);
  const own = found === null ? null : thingAt(found.inside?.() ?? [], point);
  if (found !== null && own !== null) onPatch?.(found.key, patchOfKey(own.key));
};

/** Stands at a thing by keys: one of the whole is chosen, of one inside its patch is told. */
const standAt = ({ onChoose, onPatch, things, looking }: Acting, thing: Thing | null): void => {
  if (thing === null) return;
  looking.showThing(thing);
  if (!things.isInside) onChoose(thing.key);
  else {
    things.standAt(thing);
    if (things.entered !== undefined) onPatch?.(things.entered.key, patchOfKey(thing.key));
  }
};

const goIn = ({ scene, chosen, onPatch, things }: Acting): void => {
  const thing = scene.things.find(({ key }) => key === chosen);
  const first = thing?.inside?.()[0];
  if (thing === undefined || first === undefined) return;
  things.enter(thing, first);
  onPatch?.(thing.key, patchOfKey(first.key));
};

const perform = (of: Acting, act: Act): void => {
  const { several, looking } = of;
  const { things, current, isInside, leave } = of.things;
  const from = things.find(({ key }) => key === current);
  const first = things[0] ?? null;
  switch (act.kind) {
    case 'extend': {
      const next = from === undefined ? first : neighbourOf(things, from, act.way);
      if (next !== null) several?.onExtend(next.key);
      break;
    }
    case 'toggle':
      if (!isInside && from !== undefined) several?.onToggle(from.key);
      break;
    case 'go':
      standAt(of, from === undefined ? first : neighbourOf(things, from, act.way));
      break;
    case 'pan':
      looking.look(moved(looking.now(), act.by));
      break;
    case 'zoom':
      looking.zoom(act.by);
      break;
    case 'fit':
      looking.fitAgain('whole');
      break;
    case 'first':
      standAt(of, first);
      break;
    case 'last':
      standAt(of, things.at(-1) ?? null);
      break;
    case 'in':
      goIn(of);
      break;
    case 'out':
      if (!isInside) of.onChoose(null);
      leave();
      break;
  }
};
