// Foundation: a block, or parts of it, pieced on printed sheets, each patch sewn along one line.

export { mirroredSections, type OnPaper, onPaper, paperCut, paperMarks, planFoundations } from './foundation-plan.ts';
export { type FoundationsOf, foundationsOf, mostFoundationPatches } from './foundations.ts';
export type { FoundationOrder } from './order.ts';
export { roughCut } from './rough-cut.ts';
export type { SectionJoin, Sections } from './sections.ts';
export { type UnitOnOne, unitsOnOne } from './units.ts';
