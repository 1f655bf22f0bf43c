// Drawing: a quilt or a block on the screen, and everything in it that can be chosen.
export { DrawingView } from './drawing-view.tsx';
export type { Scene, Thing } from './scene.ts';
export { placeOfKey, type SizeWords, sceneOfQuilt } from './scenes.ts';
export { SmallPicture } from './small-picture.tsx';
