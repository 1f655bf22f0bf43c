// How large a drawing's place on the screen is, and how the drawing lies there before one looks closer.
import { type RefObject, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { type Extent, fitted, fittedAcross, type View } from './view.ts';

/** Which of the two views the drawing keeps when its place grows; null once one has looked elsewhere. */
export type Fits = 'start' | 'whole' | null;

export interface FittedView {
  /** The place that is measured. */
  readonly frame: RefObject<HTMLDivElement | null>;
  readonly screen: Extent;
  /** The whole of it. */
  readonly fit: View;
  /** Where it begins. */
  readonly start: View;
  /** As it lies now. It changes with every move of a finger, and nothing is made anew for that but what is painted. */
  readonly view: RefObject<{ readonly at: View; readonly fits: Fits }>;
}

/** @param acrossMost what is long begins as wide as the screen, no larger than so many pixels for one unit; whole when missing */
export const useFittedView = (drawing: Extent, acrossMost: number | undefined): FittedView => {
  const frame = useRef<HTMLDivElement>(null);
  const [screen, setScreen] = useState<Extent>({ width: 0, height: 0 });
  const fit = useMemo(() => fitted(drawing, screen), [drawing, screen]);
  const start = useMemo(
    () => (acrossMost === undefined ? fit : fittedAcross(drawing, screen, acrossMost)),
    [acrossMost, fit, drawing, screen],
  );
  const view = useRef<{ at: View; fits: Fits }>({ at: start, fits: 'start' });
  useLayoutEffect(() => {
    const box = frame.current;
    if (box === null) return;
    const measure = () => setScreen({ width: box.clientWidth, height: box.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(box);
    return () => observer.disconnect();
  }, []);
  return useMemo(() => ({ frame, screen, fit, start, view }), [screen, fit, start]);
};
