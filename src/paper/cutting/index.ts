export { stripText } from './angled.ts';
export { cuttingCsv } from './csv.ts';
export { forHand, type Hand, type HandedCloth } from './handed.ts';
export { cutMark } from './mark.ts';
export { entryTitle, rolesText, usesText } from './uses.ts';
