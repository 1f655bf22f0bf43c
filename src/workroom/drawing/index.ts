// Drawing: a quilt or a block on the screen, and everything in it that can be chosen.

export { ClothPhotos, type PicturedCloth } from './cloth-pictures.tsx';
export { DrawingView, type SeveralOf } from './drawing-view.tsx';
export type { Scene, Thing } from './scene.ts';
export {
  patchOfKey,
  placeKey,
  placeOfKey,
  type SizeWords,
  sceneOfBlock,
  sceneOfQuilt,
  stripKey,
  stripOfKey,
} from './scenes.ts';
export { sceneOfCollected } from './scenes-collected.ts';
export { SmallPicture } from './small-picture.tsx';
