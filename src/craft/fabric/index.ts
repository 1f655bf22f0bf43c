export { lightnessOf, parseColour } from './colour.ts';
export {
  type Likeness,
  likenessOf,
  type Print,
  type PrintedCloth,
  type PrintRuns,
  strictestOf,
} from './print.ts';
export { drawScraps, type ScrapDraw, type ScrapTask } from './scraps.ts';
export { type LightMatrix, lightnessSeen, meanColour, type Sight, seenAs, seePixels, sightMatrices } from './sight.ts';
export { usualWidth } from './usual-width.ts';
export { isReversed, readsApart, type Value, valuesOf } from './value.ts';
