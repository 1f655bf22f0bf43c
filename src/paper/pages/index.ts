export { boughtText } from './bought.ts';
export { type Chapter, chapters } from './chapters.ts';
export { quiltAlt } from './cover.ts';
export type { PatternFacts } from './facts.ts';
export { totalLines } from './money.ts';
export type { PatternPages, PatternWishes } from './pattern.ts';
export { patternPages } from './pattern.ts';
export { skillOf } from './skill.ts';
export { topShape } from './top-shape.ts';
