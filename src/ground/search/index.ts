export { type LinearProgram, type LpStatus, linearProgramFor } from './lp.ts';
