// Paper: what a plan looks like to people and to other programs. Pure text: no files, no DOM.

export type { Look } from '#paper/cloth';
export { clothSignsFor, signsAs } from '#paper/cloth';
export { cuttingCsv, type Hand } from '#paper/cutting';
export type { Drawing } from '#paper/drawing';
export { drawBlock, drawQuilt } from '#paper/drawing';
export type { Chapter, PatternFacts, PatternPages, PatternWishes, SizedPlan } from '#paper/pages';
export { handoutPages, lessonsOf, patternChapters, patternPages, usualChapters } from '#paper/pages';
export { planFileText, toPlanFile } from '#paper/planfile';
export { summaryText } from '#paper/summary';
