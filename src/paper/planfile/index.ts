export { planFileText, toPlanFile } from './planfile.ts';
