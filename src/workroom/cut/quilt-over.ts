// Where a piece goes, lit: all else of the quilt or block pales, and the patches that are cut from it keep their cloth.
import type { QuiltPicture } from '#workroom/compute';
import { addTo, ink, type Matrix, type Over, type Scene, type View } from '#workroom/drawing';
import type { PiecePlaces } from './piece-places.ts';

interface Lit {
  readonly points: readonly number[];
  readonly matrix: Matrix;
}

const asItLies: Matrix = [1, 0, 0, 1, 0, 0];

export const litInQuilt = (scene: Scene, places: PiecePlaces, picture: QuiltPicture): readonly Lit[] => [
  ...places.strips.flatMap((strip) => {
    const points = picture.strips[strip]?.points;
    return points === undefined ? [] : [{ points, matrix: asItLies }];
  }),
  ...places.patches.flatMap(({ placed, patch }) => {
    const sprite = scene.placed[placed];
    const points = scene.sprites[sprite?.sprite ?? -1]?.shapes[patch]?.points;
    return sprite === undefined || points === undefined ? [] : [{ points, matrix: sprite.matrix }];
  }),
];

export const litInBlock = (scene: Scene, patches: readonly number[]): readonly Lit[] =>
  patches.flatMap((patch) => {
    const points = scene.sprites[0]?.shapes[patch]?.points;
    return points === undefined ? [] : [{ points, matrix: asItLies }];
  });

export const litOver = (of: {
  readonly lit: readonly Lit[];
  readonly scene: Scene;
  readonly colour: string;
  /** Laid over all that is not lit. */
  readonly pale: string;
}): Over => ({
  paint: (to, { view, density }) => {
    const { lit, scene, colour, pale } = of;
    if (lit.length === 0) return;
    to.setTransform(density, 0, 0, density, 0, 0);
    to.globalAlpha = 0.74;
    to.fillStyle = pale;
    to.fillRect(view.x - 1, view.y - 1, scene.width * view.scale + 2, scene.height * view.scale + 2);
    to.globalAlpha = 1;
    to.beginPath();
    for (const one of lit) addTo(to, onScreen(one, view));
    to.fillStyle = colour;
    to.fill();
    to.lineWidth = 1.5;
    to.strokeStyle = ink;
    to.stroke();
  },
});

const onScreen = ({ points, matrix }: Lit, view: View): readonly number[] => {
  const [a, b, c, d, e, f] = matrix;
  const at = (i: number): readonly [number, number] => {
    const [x, y] = [points[i] as number, points[i + 1] as number];
    return [view.x + (a * x + c * y + e) * view.scale, view.y + (b * x + d * y + f) * view.scale];
  };
  return points.flatMap((_, i) => (i % 2 === 0 ? at(i) : []));
};
