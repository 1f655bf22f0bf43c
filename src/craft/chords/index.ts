// Chords: where a drawing can be divided by one straight seam.
export {
  bestFirst,
  type Chord,
  chordAlong,
  chordsOf,
  type Drawing,
  drawingOf,
  type SeamLine,
  type Split,
  seamLine,
  splitsOf,
} from './chords.ts';
