// A small picture, to choose by or to recognise: nothing in it can be chosen.
import { useLayoutEffect, useMemo, useRef } from 'react';
import { useClothPictures } from './cloth-pictures.tsx';
import { paint, prepared } from './paint.ts';
import type { Scene } from './scene.ts';

export interface SmallPictureOf {
  readonly scene: Scene;
  /** Of the longer side, in CSS pixels. */
  readonly sidePx: number;
  /** What it shows; empty where words beside it say so. */
  readonly alt: string;
}

export const SmallPicture = ({ scene, sidePx, alt }: SmallPictureOf) => {
  const canvas = useRef<HTMLCanvasElement>(null);
  const ready = useMemo(() => prepared(scene), [scene]);
  const pictures = useClothPictures();
  const scale = sidePx / Math.max(scene.width, scene.height);
  const [width, height] = [scene.width * scale, scene.height * scale];
  useLayoutEffect(() => {
    const to = canvas.current?.getContext('2d');
    const density = window.devicePixelRatio || 1;
    if (to) paint(to, { prepared: ready, pictures, view: { scale, x: 0, y: 0 }, screen: { width, height }, density });
  }, [ready, pictures, scale, width, height]);
  const density = globalThis.devicePixelRatio || 1;
  return (
    <canvas
      ref={canvas}
      className="small-picture"
      width={Math.round(width * density)}
      height={Math.round(height * density)}
      style={{ width, height }}
      {...(alt === '' ? { 'aria-hidden': true } : { role: 'img', 'aria-label': alt })}
    />
  );
};
