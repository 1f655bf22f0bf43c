// A drawing on its canvas. What is chosen lies over it, so that choosing another thing paints nothing else anew; and while a gesture moves
// a large drawing, its picture is moved instead.
import { type RefObject, useCallback, useLayoutEffect, useMemo, useRef } from 'react';
import { type ClothPictures, useClothPictures } from './cloth-pictures.tsx';
import { outline, type Prepared, paint, prepared } from './paint.ts';
import type { Scene } from './scene.ts';
import type { ChosenThings } from './use-chosen-things.ts';
import type { FittedView } from './use-fitted-view.ts';
import type { Extent, View } from './view.ts';

/** Painted over the drawing, under what is chosen. */
export interface Over {
  readonly paint: (to: CanvasRenderingContext2D, at: { readonly view: View; readonly density: number }) => void;
}

export interface Painted {
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  /** With the next picture of the screen. */
  readonly repaint: () => void;
  /** A gesture begins. */
  readonly holdStill: () => void;
  /** It has ended. */
  readonly letGo: () => void;
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

/** A drawing of more shapes is moved as a picture of itself while a gesture lasts; with photographs each takes far longer. */
const shapesDrawnLive = 3000;
const photosDrawnLive = 400;

export const usePainted = (of: {
  readonly scene: Scene;
  readonly fitted: FittedView;
  readonly chosen: ChosenThings;
  /** Beside or with the one that the keys stand at. */
  readonly among: ReadonlySet<string> | undefined;
  readonly lit: readonly string[];
  readonly over: Over | undefined;
  readonly marks: 'shown' | 'none';
}): Painted => {
  const { scene, among, lit, over, marks } = of;
  const { screen, fit, start, view } = of.fitted;
  const { things, current, isInside } = of.chosen;
  const canvas = useRef<HTMLCanvasElement>(null);
  const ready = useMemo(() => prepared(scene), [scene]);
  const pictures = useClothPictures();
  const ground = useRef<Ground>({
    picture: document.createElement('canvas'),
    at: fit,
    ready: null,
    pictures: null,
    screen,
    density: 0,
  });
  const isHeld = useRef(false);
  const asked = useRef(0);

  const thingOf = useMemo(() => new Map(scene.things.map((thing) => [thing.key, thing])), [scene]);
  const paintMarks = useCallback(
    (to: CanvasRenderingContext2D, at: { readonly view: View; readonly density: number }) => {
      for (const key of lit) {
        const thing = thingOf.get(key);
        if (thing) outline(to, { ...at, points: thing.outline, kind: 'problem' });
      }
      const chosenToo = isInside ? undefined : among;
      for (const { key, outline: points } of things) {
        if (chosenToo?.has(key)) outline(to, { ...at, points, kind: 'among' });
      }
      const mark = things.find(({ key }) => key === current);
      const isLeftOut = mark !== undefined && chosenToo?.has(mark.key) === false;
      if (mark) outline(to, { ...at, points: mark.outline, kind: isLeftOut ? 'here' : 'chosen' });
    },
    [thingOf, lit, among, things, current, isInside],
  );

  const paintNow = useCallback(() => {
    const to = canvas.current?.getContext('2d');
    if (!to || screen.width === 0) return;
    const density = window.devicePixelRatio || 1;
    const { at } = view.current;
    const whole = ground.current;
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
    if (marks === 'shown') paintMarks(to, { view: at, density });
  }, [ready, pictures, screen, view, over, marks, paintMarks]);

  useLayoutEffect(() => {
    const { fits } = view.current;
    if (fits !== null) view.current = { at: fits === 'start' ? start : fit, fits };
    paintNow();
  }, [view, fit, start, paintNow]);

  const repaint = useCallback(() => {
    cancelAnimationFrame(asked.current);
    asked.current = requestAnimationFrame(paintNow);
  }, [paintNow]);
  const holdStill = useCallback(() => {
    if (scene.shapes > (pictures.size > 0 ? photosDrawnLive : shapesDrawnLive)) isHeld.current = true;
  }, [scene, pictures]);
  const letGo = useCallback(() => {
    if (!isHeld.current) return;
    isHeld.current = false;
    repaint();
  }, [repaint]);
  return { canvas, repaint, holdStill, letGo };
};
