export { exactText } from './exact-text.ts';
export { type Length, length, tidy, type Unit } from './length.ts';
export { inSteps, type Marked, toNearestMark, upToMark } from './marks.ts';
export { type Mixed, mixedFrom } from './mixed.ts';
export { type LengthProblem, type LengthWish, parseLength, type Sign } from './parse-length.ts';
export { type Measure, type MeasureProblem, parseMeasure, parseNumber } from './parse-measure.ts';
export { convert, inchIn, type MeasureUnit, measureUnits } from './units.ts';
export { usualSewing } from './usual-sewing.ts';
