export type { PressFault } from './failure.ts';
export { PressFailure } from './failure.ts';
export { fileDrawn, fileMade, type MadeFile } from './made.ts';
export type { PagePictures } from './page-pictures.ts';
export { pngOf } from './png.ts';
export type { Paper, Press, Printed } from './press.ts';
export { openPress } from './press.ts';
