// The files of a quilt: what each is called, and what it is made of.
export { type PictureOf, pictureOfBlock, picturesOf } from './pictures.ts';
export {
  type DrawnFile,
  type FilesWished,
  type PrintedFile,
  pictureFiles,
  type QuiltFile,
  quiltFiles,
} from './quilt-files.ts';
export { type PlannedSize, type SizesAsked, sizesPlanned } from './sizes.ts';
