export { lightnessOf, parseColour } from './colour.ts';
