export { documentOf, planOf, specimenDocument } from './specimen.ts';
export { faultInIds, faultInXml } from './well-formed.ts';
