// A drawing of patches, changed: seams ruled, bent and taken out, patches laid, moved, mirrored, turned and repeated; and where it then
// lies bare or double. Whether the patches tile the block to the last corner is drafting's question.
export {
  type Curve,
  type CurveFault,
  type CurveOutcome,
  edgesBetween,
  edgeThrough,
  laidCurve,
  quarterRise,
  riseAlong,
} from './bend.ts';
export { chordedFor, cornersIn, dividedAlike, drawnAs, edgesIn, type ListedPatch } from './curves.ts';
export { type Cut, cutAlong, cutOutline } from './cut.ts';
export { joined, seamsBetween } from './join.ts';
export { type Faults, faultsOf, laidOn } from './lay.ts';
export {
  chosenBox,
  mirroredIn,
  movedBy,
  type Repeating,
  repeatedBy,
  repeatedRound,
  turnedIn,
} from './move.ts';
export { type Drawn, type DrawnPatch, mostSquares, slackOf } from './patch.ts';
