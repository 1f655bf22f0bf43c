// Drawing: a quilt or a block on the screen, and everything in it that can be chosen.

export { ClothPhotos, type PicturedCloth } from './cloth-pictures.tsx';
export { DrawingView, type SeveralOf } from './drawing-view.tsx';
export type { HandOf } from './hand.ts';
export { litKeys } from './lit-keys.ts';
export { addTo } from './paint.ts';
export { PaperDrawing } from './paper-drawing.tsx';
export { faultLines, ink, type Line, stroke, thread, white } from './pens.ts';
export { pointIn } from './pointer.ts';
export type { Matrix, Scene, Shape, Thing } from './scene.ts';
export {
  patchKey,
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
export type { Over } from './use-painted.ts';
export type { View } from './view.ts';
