// A drawing that one looks at closely, chooses in and hears: by pointer, by keys, by touch, by screen reader.
import {
  type KeyboardEvent,
  memo,
  type PointerEvent,
  type ReactNode,
  useCallback,
  useEffect,
  useId,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { type ClothPictures, useClothPictures } from './cloth-pictures.tsx';
import { actionFor, zoomStep } from './drawing-keys.ts';
import { outline, type Prepared, paint, prepared } from './paint.ts';
import { pointIn } from './pointer.ts';
import { boxOf, neighbourOf, type Scene, type Thing, thingAt } from './scene.ts';
import { inReadingOrder, patchOfKey } from './scenes.ts';
import { type Extent, fitted, fittedAcross, inSight, moved, onDrawing, type View, zoomed } from './view.ts';

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

export interface Over {
  readonly paint: (to: CanvasRenderingContext2D, at: { readonly view: View; readonly density: number }) => void;
}

export interface HandOf {
  /** What it does, and where it is: read out when the drawing is come to, and when it moves. */
  readonly label: string;
  /** @param scale CSS pixels for one unit of the drawing */
  readonly onTap: (point: readonly [number, number], scale: number) => void;
  /** The pointer is over this point, or has left the drawing. */
  readonly onOver: (point: readonly [number, number] | null, scale: number) => void;
  /** @returns whether the key was for the hand */
  readonly onKey: (key: string) => boolean;
  /** A pointer that is down at a point is drawn on. @returns whether it draws what the hand holds, until it is lifted; else the whole drawing */
  readonly onGrab?: (point: readonly [number, number], scale: number) => boolean;
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

/** The drawing as it was last painted, without what is chosen. */
interface Ground {
  readonly picture: HTMLCanvasElement;
  at: View;
  ready: Prepared | null;
  pictures: ClothPictures | null;
  screen: Extent;
  density: number;
}

const isGroundOf = (whole: Ground, now: Omit<Ground, 'picture'>): boolean =>
  whole.ready === now.ready &&
  whole.pictures === now.pictures &&
  whole.at === now.at &&
  whole.screen === now.screen &&
  whole.density === now.density;

const noKeys: readonly string[] = [];
/** A drawing of more shapes is moved as a picture of itself while a gesture lasts; with photographs each takes far longer. */
const shapesDrawnLive = 3000;
const photosDrawnLive = 400;
/** Of more things than this only those about the chosen one stand on the page for screen readers, each with its place among all. */
const mostTold = 1000;
const toldBeside = 60;
/** A pointer that moved no further has tapped. */
const tapPx = 5;

export const DrawingView = ({
  scene,
  label,
  chosen,
  onChoose,
  onPatch,
  lit = noKeys,
  several,
  over,
  hand,
  onPoint,
  acrossMost,
  closerKeys = 'shown',
  foot,
}: DrawingViewOf) => {
  const canvas = useRef<HTMLCanvasElement>(null);
  const frame = useRef<HTMLDivElement>(null);
  const [screen, setScreen] = useState<Extent>({ width: 0, height: 0 });
  const [inside, setInside] = useState<string | null>(null);
  const [patch, setPatch] = useState<string | null>(null);
  const ready = useMemo(() => prepared(scene), [scene]);
  const pictures = useClothPictures();
  const fit = useMemo(() => fitted(scene, screen), [scene, screen]);
  const start = useMemo(
    () => (acrossMost === undefined ? fit : fittedAcross(scene, screen, acrossMost)),
    [acrossMost, fit, scene, screen],
  );
  const view = useRef<{ at: View; fits: 'start' | 'whole' | null }>({ at: start, fits: 'start' });
  const ground = useRef<Ground>({
    picture: document.createElement('canvas'),
    at: fit,
    ready: null,
    pictures: null,
    screen,
    density: 0,
  });
  /** While a gesture moves a large drawing, its picture is moved instead. */
  const isHeld = useRef(false);
  const asked = useRef(0);

  const thingOf = useMemo(() => new Map(scene.things.map((thing) => [thing.key, thing])), [scene]);
  const entered = inside === null ? undefined : scene.things.find(({ key }) => key === inside);
  const within = useMemo(() => entered?.inside?.() ?? null, [entered]);
  const things = useMemo(() => within ?? inReadingOrder(scene.things, scene.height), [within, scene]);
  const current = within === null ? chosen : patch;
  const among = several?.keys.size ? several.keys : undefined;

  const paintNow = useCallback(() => {
    const to = canvas.current?.getContext('2d');
    if (!to || screen.width === 0) return;
    const density = window.devicePixelRatio || 1;
    const at = view.current.at;
    const whole = ground.current;
    // what is chosen lies over the drawing: choosing another thing paints nothing else anew
    if (!isHeld.current && !isGroundOf(whole, { ready, pictures, at, screen, density })) {
      whole.picture.width = Math.round(screen.width * density);
      whole.picture.height = Math.round(screen.height * density);
      const under = whole.picture.getContext('2d');
      if (under) paint(under, { prepared: ready, pictures, view: at, screen, density });
      Object.assign(whole, { ready, pictures, at, screen, density });
    }
    const k = at.scale / whole.at.scale;
    to.setTransform(1, 0, 0, 1, 0, 0);
    to.clearRect(0, 0, screen.width * density, screen.height * density);
    to.setTransform(k, 0, 0, k, density * (at.x - whole.at.x * k), density * (at.y - whole.at.y * k));
    to.drawImage(whole.picture, 0, 0);
    over?.paint(to, { view: at, density });
    if (hand !== undefined) return;
    for (const key of lit) {
      const thing = thingOf.get(key);
      if (thing) outline(to, { points: thing.outline, view: at, density, kind: 'problem' });
    }
    const chosenToo = within === null ? among : undefined;
    for (const { key, outline: points } of things) {
      if (chosenToo?.has(key)) outline(to, { points, view: at, density, kind: 'among' });
    }
    const mark = things.find(({ key }) => key === current);
    const isLeftOut = mark !== undefined && chosenToo?.has(mark.key) === false;
    if (mark) outline(to, { points: mark.outline, view: at, density, kind: isLeftOut ? 'here' : 'chosen' });
  }, [ready, pictures, screen, lit, thingOf, things, current, within, among, over, hand]);

  const repaint = useCallback(() => {
    cancelAnimationFrame(asked.current);
    asked.current = requestAnimationFrame(paintNow);
  }, [paintNow]);

  useLayoutEffect(() => {
    const box = frame.current;
    if (box === null) return;
    const measure = () => setScreen({ width: box.clientWidth, height: box.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(box);
    return () => observer.disconnect();
  }, []);

  useLayoutEffect(() => {
    const { fits } = view.current;
    if (fits !== null) view.current = { at: fits === 'start' ? start : fit, fits };
    paintNow();
  }, [fit, start, paintNow]);

  const look = useCallback(
    (next: View) => {
      view.current = { at: next, fits: null };
      repaint();
    },
    [repaint],
  );
  const middle = (): readonly [number, number] => [screen.width / 2, screen.height / 2];
  const zoom = (by: number) => look(zoomed(view.current.at, { by, at: middle(), fit }));
  const fitAgain = (fits: 'start' | 'whole' = 'whole') => {
    view.current = { at: fits === 'start' ? start : fit, fits };
    repaint();
  };
  /** What keys come to is brought into sight. */
  const showThing = (key: string | null) => {
    const thing = things.find((one) => one.key === key);
    if (thing === undefined) return;
    const next = inSight(view.current.at, { box: boxOf(thing.outline), screen });
    if (next.x !== view.current.at.x || next.y !== view.current.at.y) look(next);
  };

  const holdStill = () => {
    if (scene.shapes > (pictures.size > 0 ? photosDrawnLive : shapesDrawnLive)) isHeld.current = true;
  };
  const letGo = useCallback(() => {
    if (!isHeld.current) return;
    isHeld.current = false;
    repaint();
  }, [repaint]);

  const resting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const onWheel = useRef<(event: WheelEvent) => void>(() => undefined);
  onWheel.current = (event) => {
    event.preventDefault();
    holdStill();
    clearTimeout(resting.current);
    resting.current = setTimeout(letGo, 160);
    if (canvas.current === null) return;
    const at = pointIn(canvas.current, event);
    if (event.ctrlKey || event.metaKey) look(zoomed(view.current.at, { by: Math.exp(-event.deltaY / 220), at, fit }));
    else look(moved(view.current.at, event.shiftKey ? [-event.deltaY, 0] : [-event.deltaX, -event.deltaY]));
  };
  useEffect(() => {
    const box = canvas.current;
    const turn = (event: WheelEvent) => onWheel.current(event);
    // React's own wheel listener cannot keep the page from scrolling
    box?.addEventListener('wheel', turn, { passive: false });
    return () => box?.removeEventListener('wheel', turn);
  }, []);

  const fingers = useRef(new Map<number, readonly [number, number]>());
  const tapped = useRef(false);
  const grabbed = useRef(false);
  const placeOf = (event: PointerEvent): readonly [number, number] => pointIn(event.currentTarget as Element, event);
  const onPointerDown = (event: PointerEvent) => {
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    fingers.current.set(event.pointerId, placeOf(event));
    tapped.current = fingers.current.size === 1;
  };
  const onPointerMove = (event: PointerEvent) => {
    const before = fingers.current.get(event.pointerId);
    const now = placeOf(event);
    if (before === undefined) {
      hand?.onOver(onDrawing(view.current.at, now), view.current.at.scale);
      if (onPoint !== undefined && event.pointerType === 'mouse')
        onPoint(thingAt(scene.things, onDrawing(view.current.at, now))?.key ?? null);
      return;
    }
    const [dx, dy] = [now[0] - before[0], now[1] - before[1]];
    if (tapped.current && Math.hypot(dx, dy) < tapPx) return;
    if (tapped.current)
      grabbed.current = hand?.onGrab?.(onDrawing(view.current.at, before), view.current.at.scale) ?? false;
    tapped.current = false;
    if (grabbed.current) {
      hand?.onOver(onDrawing(view.current.at, now), view.current.at.scale);
      return;
    }
    holdStill();
    const others = [...fingers.current].filter(([id]) => id !== event.pointerId).map(([, at]) => at);
    fingers.current.set(event.pointerId, now);
    const other = others[0];
    if (other === undefined) {
      look(moved(view.current.at, [dx, dy]));
      return;
    }
    const wide = (a: readonly [number, number]) => Math.max(1, Math.hypot(a[0] - other[0], a[1] - other[1]));
    const at = [(now[0] + other[0]) / 2, (now[1] + other[1]) / 2] as const;
    look(zoomed(moved(view.current.at, [dx / 2, dy / 2]), { by: wide(now) / wide(before), at, fit }));
  };
  const onPointerUp = (event: PointerEvent) => {
    fingers.current.delete(event.pointerId);
    if (fingers.current.size === 0) letGo();
    if (grabbed.current) {
      grabbed.current = false;
      if (event.type === 'pointerup') hand?.onTap(onDrawing(view.current.at, placeOf(event)), view.current.at.scale);
      return;
    }
    if (!tapped.current) return;
    tapped.current = false;
    const point = onDrawing(view.current.at, placeOf(event));
    frame.current?.querySelector<HTMLElement>('.drawing-list')?.focus({ preventScroll: true });
    if (hand !== undefined) {
      hand.onTap(point, view.current.at.scale);
      return;
    }
    const found = thingAt(scene.things, point);
    setInside(null);
    const isOneMore = event.shiftKey || event.ctrlKey || event.metaKey || several?.taps === 'add';
    if (several !== undefined && found !== null && isOneMore) {
      several.onToggle(found.key);
      return;
    }
    onChoose(found?.key ?? null);
    const own = found === null ? null : thingAt(found.inside?.() ?? [], point);
    if (found !== null && own !== null) onPatch?.(found.key, patchOfKey(own.key));
  };

  const choose = (thing: Thing | null) => {
    if (thing === null) return;
    showThing(thing.key);
    if (within === null) onChoose(thing.key);
    else {
      setPatch(thing.key);
      if (inside !== null) onPatch?.(inside, patchOfKey(thing.key));
    }
  };
  const goIn = () => {
    const thing = scene.things.find(({ key }) => key === chosen);
    const first = thing?.inside?.()[0];
    if (thing === undefined || first === undefined) return;
    setInside(thing.key);
    setPatch(first.key);
    onPatch?.(thing.key, patchOfKey(first.key));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const isPlain = !(event.altKey || event.ctrlKey || event.metaKey);
    if (isPlain && hand?.onKey(event.key)) {
      event.preventDefault();
      event.stopPropagation();
      return;
    }
    const act = actionFor(event, several === undefined || within !== null ? 'one' : 'several');
    if (act === null || (hand !== undefined && !['pan', 'zoom', 'fit'].includes(act.kind))) return;
    const from = things.find(({ key }) => key === current);
    switch (act.kind) {
      case 'extend': {
        const next = from === undefined ? (things[0] ?? null) : neighbourOf(things, from, act.way);
        if (next !== null) several?.onExtend(next.key);
        break;
      }
      case 'toggle':
        if (within === null && from !== undefined) several?.onToggle(from.key);
        break;
      case 'go':
        choose(from === undefined ? (things[0] ?? null) : neighbourOf(things, from, act.way));
        break;
      case 'pan':
        look(moved(view.current.at, act.by));
        break;
      case 'zoom':
        zoom(act.by);
        break;
      case 'fit':
        fitAgain();
        break;
      case 'first':
        choose(things[0] ?? null);
        break;
      case 'last':
        choose(things.at(-1) ?? null);
        break;
      case 'in':
        goIn();
        break;
      case 'out':
        if (within === null) onChoose(null);
        setInside(null);
        break;
    }
    event.preventDefault();
    event.stopPropagation();
  };

  const firstInReach =
    things.length <= mostTold ? 0 : Math.max(0, things.findIndex(({ key }) => key === current) - toldBeside);
  const inReach = things.length <= mostTold ? things : things.slice(firstInReach, firstInReach + 2 * toldBeside);
  const list = useId();
  const optionId = (key: string) => `${list}-${key.replaceAll(' ', '-')}`;
  return (
    <div className="drawing">
      <div className="drawing-ground" ref={frame}>
        <canvas
          ref={canvas}
          className="drawing-canvas"
          width={Math.round(screen.width * (globalThis.devicePixelRatio || 1))}
          height={Math.round(screen.height * (globalThis.devicePixelRatio || 1))}
          onPointerDown={onPointerDown}
          onPointerMove={onPointerMove}
          onPointerUp={onPointerUp}
          onPointerCancel={onPointerUp}
          onPointerLeave={() => {
            hand?.onOver(null, view.current.at.scale);
            onPoint?.(null);
          }}
        />
        {hand !== undefined ? (
          <div
            className="drawing-list"
            role="application"
            // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys move the hand
            tabIndex={0}
            aria-label={hand.label}
            onKeyDown={onKeyDown}
          />
        ) : (
          <div
            className="drawing-list"
            role="listbox"
            aria-multiselectable={several === undefined || within !== null ? undefined : true}
            tabIndex={0}
            aria-label={entered === undefined ? label : `Pieces of ${entered.name}`}
            aria-activedescendant={things.some(({ key }) => key === current) ? optionId(current ?? '') : undefined}
            onKeyDown={onKeyDown}
          >
            {inReach.map(({ key, name }, index) => (
              <Option
                key={key}
                id={optionId(key)}
                name={name}
                at={firstInReach + index + 1}
                of={things.length}
                isChosen={within === null && among !== undefined ? among.has(key) : key === current}
              />
            ))}
          </div>
        )}
      </div>
      {(closerKeys === 'shown' || foot !== undefined) && (
        <div className="drawing-foot">
          {foot}
          {closerKeys === 'shown' && (
            <fieldset className="drawing-keys" aria-label="Look closer">
              <button type="button" onClick={() => zoom(1 / zoomStep)} aria-label="Smaller">
                −
              </button>
              <button type="button" onClick={() => fitAgain()}>
                Whole
              </button>
              {acrossMost !== undefined && (
                <button type="button" onClick={() => fitAgain('start')}>
                  Across
                </button>
              )}
              <button type="button" onClick={() => zoom(zoomStep)} aria-label="Larger">
                +
              </button>
            </fieldset>
          )}
        </div>
      )}
    </div>
  );
};

interface OptionOf {
  readonly id: string;
  readonly name: string;
  readonly at: number;
  readonly of: number;
  readonly isChosen: boolean;
}

/** Of thousands only the two that change are made anew. */
const Option = memo(({ id, name, at, of, isChosen }: OptionOf) => (
  <div id={id} role="option" aria-selected={isChosen} aria-posinset={at} aria-setsize={of} tabIndex={-1}>
    {`${name}, ${at} of ${of}`}
  </div>
));
