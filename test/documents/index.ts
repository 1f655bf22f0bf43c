// Documents for tests, and what they come to: one home, also for the tests that stand beside the code (#documents).
export { answerTo, example, examples, isAnswered, measuresOf, pictureOf } from './asked.ts';
export { type Cell, cell, patchesOfCell } from './cells.ts';
export { box, type CutBlock, randomBlock } from './cut-block.ts';
export { plainBlock, planned, quilt, setOf, star, type Written } from './documents.ts';
export { groupings } from './groupings.ts';
export { type Met, meetingsFound, nestedOf, roundsOn } from './meetings.ts';
export { mergedBlock, type Tiling, tilings } from './merged-block.ts';
export { measuredText, type Reading, readingsOf, type Student, students } from './students.ts';
export { assertHeld, type Measurer, namedIn, readBy, readingNoise, sixteenth, straying, trials } from './trials.ts';
