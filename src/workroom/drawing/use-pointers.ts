// Fingers, mouse and wheel on a drawing: a tap chooses, one finger moves it, two look closer, and a hand draws what it holds.
import { type PointerEvent, useEffect, useRef } from 'react';
import type { HandOf } from './hand.ts';
import { pointIn } from './pointer.ts';
import type { Looking } from './use-looking.ts';
import type { Painted } from './use-painted.ts';
import { moved } from './view.ts';

type OnScreen = readonly [number, number];

export interface Tap {
  /** In the drawing's own units. */
  readonly point: readonly [number, number];
  /** With a key held that takes one more. */
  readonly isOneMore: boolean;
}

/** A pointer that moved no further has tapped. */
const tapPx = 5;
/** A wheel that has stood still for so long has ended its gesture. */
const restMs = 160;

export interface PointersOf {
  readonly painted: Painted;
  readonly looking: Looking;
  readonly hand: HandOf | undefined;
  readonly onTap: (tap: Tap) => void;
  /** A mouse is over this point of the drawing, or has left it. */
  readonly onPoint: (point: readonly [number, number] | null) => void;
}

export const usePointers = (of: PointersOf) => {
  const { painted, looking, hand, onTap, onPoint } = of;
  useWheel(painted, looking);
  const fingers = useRef(new Map<number, OnScreen>());
  const tapped = useRef(false);
  const grabbed = useRef(false);
  const placeOf = (event: PointerEvent): OnScreen => pointIn(event.currentTarget as Element, event);
  const overAt = (at: OnScreen): void => hand?.onOver(looking.pointAt(at), looking.now().scale);

  /** Two fingers: the drawing goes with their middle, and grows as they part. */
  const pinch = (from: { readonly before: OnScreen; readonly now: OnScreen; readonly other: OnScreen }): void => {
    const { before, now, other } = from;
    const wide = (a: OnScreen): number => Math.max(1, Math.hypot(a[0] - other[0], a[1] - other[1]));
    looking.look(moved(looking.now(), [(now[0] - before[0]) / 2, (now[1] - before[1]) / 2]));
    looking.zoom(wide(now) / wide(before), [(now[0] + other[0]) / 2, (now[1] + other[1]) / 2]);
  };

  return {
    onPointerDown: (event: PointerEvent): void => {
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
      fingers.current.set(event.pointerId, placeOf(event));
      tapped.current = fingers.current.size === 1;
    },
    onPointerMove: (event: PointerEvent): void => {
      const before = fingers.current.get(event.pointerId);
      const now = placeOf(event);
      if (before === undefined) {
        overAt(now);
        if (event.pointerType === 'mouse') onPoint(looking.pointAt(now));
        return;
      }
      const by = [now[0] - before[0], now[1] - before[1]] as const;
      if (tapped.current && Math.hypot(...by) < tapPx) return;
      if (tapped.current) grabbed.current = hand?.onGrab?.(looking.pointAt(before), looking.now().scale) ?? false;
      tapped.current = false;
      if (grabbed.current) {
        overAt(now);
        return;
      }
      painted.holdStill();
      const other = [...fingers.current].find(([id]) => id !== event.pointerId)?.[1];
      fingers.current.set(event.pointerId, now);
      if (other === undefined) looking.look(moved(looking.now(), by));
      else pinch({ before, now, other });
    },
    onPointerUp: (event: PointerEvent): void => {
      fingers.current.delete(event.pointerId);
      if (fingers.current.size === 0) painted.letGo();
      const point = looking.pointAt(placeOf(event));
      if (grabbed.current) {
        grabbed.current = false;
        if (event.type === 'pointerup') hand?.onTap(point, looking.now().scale);
        return;
      }
      if (!tapped.current) return;
      tapped.current = false;
      onTap({ point, isOneMore: event.shiftKey || event.ctrlKey || event.metaKey });
    },
    onPointerLeave: (): void => {
      hand?.onOver(null, looking.now().scale);
      onPoint(null);
    },
  };
};

const useWheel = ({ canvas, holdStill, letGo }: Painted, looking: Looking): void => {
  const resting = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const onWheel = useRef<(event: WheelEvent) => void>(() => undefined);
  onWheel.current = (event) => {
    event.preventDefault();
    holdStill();
    clearTimeout(resting.current);
    resting.current = setTimeout(letGo, restMs);
    if (canvas.current === null) return;
    if (event.ctrlKey || event.metaKey) looking.zoom(Math.exp(-event.deltaY / 220), pointIn(canvas.current, event));
    else looking.look(moved(looking.now(), event.shiftKey ? [-event.deltaY, 0] : [-event.deltaX, -event.deltaY]));
  };
  useEffect(() => {
    const box = canvas.current;
    const turn = (event: WheelEvent) => onWheel.current(event);
    // React's own wheel listener cannot keep the page from scrolling
    box?.addEventListener('wheel', turn, { passive: false });
    return () => box?.removeEventListener('wheel', turn);
  }, [canvas]);
};
