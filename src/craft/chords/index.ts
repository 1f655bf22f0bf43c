// Chords: where a drawing can be divided by one straight seam.
export { type Chord, chordsOf, type Drawing, drawingOf, type SeamLine, seamLine } from './chords.ts';
