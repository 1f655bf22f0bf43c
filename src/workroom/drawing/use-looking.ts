// Looking closer at a drawing, and elsewhere in it.
import { useCallback } from 'react';
import { boxOf, type Thing } from './scene.ts';
import type { Fits, FittedView } from './use-fitted-view.ts';
import { inSight, onDrawing, type View, zoomed } from './view.ts';

export interface Looking {
  readonly now: () => View;
  readonly look: (next: View) => void;
  /** Larger or smaller by a factor: about a point of the screen, else about its middle. */
  readonly zoom: (by: number, at?: readonly [number, number]) => void;
  readonly fitAgain: (fits: NonNullable<Fits>) => void;
  /** What keys come to is brought into sight. */
  readonly showThing: (thing: Thing) => void;
  /** A point of the screen in the drawing's own units. */
  readonly pointAt: (onScreen: readonly [number, number]) => readonly [number, number];
}

export const useLooking = ({ view, fit, start, screen }: FittedView, repaint: () => void): Looking => {
  const now = useCallback(() => view.current.at, [view]);
  const look = useCallback(
    (next: View) => {
      view.current = { at: next, fits: null };
      repaint();
    },
    [view, repaint],
  );
  return {
    now,
    look,
    zoom: (by, at = [screen.width / 2, screen.height / 2]) => look(zoomed(now(), { by, at, fit })),
    fitAgain: (fits) => {
      view.current = { at: fits === 'start' ? start : fit, fits };
      repaint();
    },
    showThing: (thing) => {
      const next = inSight(now(), { box: boxOf(thing.outline), screen });
      if (next.x !== now().x || next.y !== now().y) look(next);
    },
    pointAt: (onScreen) => onDrawing(now(), onScreen),
  };
};
