export { isColour, lightnessOf, parseColour } from './colour.ts';
