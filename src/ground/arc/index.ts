// Arcs of circles, and outlines that have some among their sides. Plane geometry; nothing about cloth.
export {
  type Arc,
  arcDirection,
  arcExtremes,
  arcLength,
  arcThrough,
  arcWithRise,
  bowArea,
  chordPoints,
  isOnArc,
  pointOnArc,
  radiusOf,
  reversedArc,
  riseOf,
  sweepOf,
} from './arc.ts';
export { arcCrossings, type CrossedEdge } from './crossings.ts';
export {
  type Edge,
  edgeDirection,
  edgeLength,
  edgesOf,
  landmarksOf,
  type Outline,
  outlineAlong,
  outlineArea,
  outlineBox,
  pointsBetweenSides,
  reversedEdge,
  wholeSides,
} from './outline.ts';
