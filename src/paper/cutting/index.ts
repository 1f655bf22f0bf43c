export { angleText, stripText } from './angled.ts';
export { cuttingCsv } from './csv.ts';
export type { SheetKind } from './sheets.ts';
export { sheetKindsOf } from './sheets.ts';
export type { StripKind } from './strips.ts';
export { cutMark, stripKindsOf, yieldOf } from './strips.ts';
export { entryTitle, rolesText, usesText } from './uses.ts';
