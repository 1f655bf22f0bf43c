// Colour: the cloths of a quilt, and their values.
export { ColourView } from './colour-view.tsx';
