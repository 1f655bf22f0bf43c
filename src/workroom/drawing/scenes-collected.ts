// A block of the collection as a scene, in the four cloths that it is shown in.
import type { CollectedBlock } from '#workroom/compute';
import type { Scene } from './scene.ts';

/** Our own four cloths, told apart in grey as well. */
const cloths: readonly (readonly [string, string])[] = [
  ['light', '#f1e9d6'],
  ['medium', '#c79a63'],
  ['dark', '#4f5d2f'],
  ['accent', '#9c3f2c'],
];

export const sceneOfCollected = ({ patches }: CollectedBlock): Scene => ({
  width: 1,
  height: 1,
  sprites: [{ size: [1, 1], shapes: patches.map(({ points, tone }) => ({ points, fabric: tone })) }],
  placed: [{ sprite: 0, matrix: [1, 0, 0, 1, 0, 0], box: [0, 0, 1, 1], fabrics: null }],
  loose: [],
  colours: new Map(cloths),
  things: [],
  shapes: patches.length,
});
