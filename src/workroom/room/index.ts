// The room that views stand in: what they are given, where they are, and how lengths are said.
export {
  type Address,
  go,
  goInPlace,
  jobStops,
  quiltAddress,
  type Stop,
  stops,
  useAddress,
  type Within,
} from './address.ts';
export { documentFile, fileName, saveFile } from './files.ts';
export { focusSoon } from './focus-soon.ts';
export { forgetBeside, type KeptValue, keptBeside, keptValue, parsed, useKeptValue } from './kept-value.ts';
export { pickFile, pickFiles } from './pick-file.ts';
export { borderWords, spotWords } from './place-words.ts';
export { openPreferences, type Preferences, usePreferences } from './preferences.ts';
export { Problems } from './problems.tsx';
export { QuiltProvider, type QuiltRoom, type Room, RoomProvider, useQuilt, useRoom } from './room.tsx';
export { Sheet } from './sheet.tsx';
export { openShelf, type Shelf, useShelf } from './shelf.ts';
export { useBlockName } from './use-block-name.ts';
export { useGesture } from './use-gesture.ts';
export { useHereInSight } from './use-here-in-sight.ts';
export { useLook, useLookAt } from './use-look.ts';
export { useMedia } from './use-media.ts';
export { usePicture } from './use-picture.ts';
export {
  buyWords,
  clockWords,
  countWords,
  type LengthWords,
  lengthWordsFor,
  pointFaultWords,
  seamWords,
  timeWords,
} from './words.ts';
