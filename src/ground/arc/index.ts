// Arcs of circles, and outlines that have some among their sides. Plane geometry; nothing about cloth.
export {
  type Arc,
  arcDirection,
  arcExtremes,
  arcLength,
  arcThrough,
  bowArea,
  chordPoints,
  isOnArc,
  pointOnArc,
  radiusOf,
  reversedArc,
  sweepOf,
} from './arc.ts';
export {
  type Edge,
  edgeDirection,
  edgeLength,
  edgesOf,
  landmarksOf,
  type Outline,
  outlineArea,
  outlineBox,
  pointsBetweenSides,
  reversedEdge,
  wholeSides,
} from './outline.ts';
