export { fewPieces, fewPiecesWithin } from './few-pieces.ts';
export { type FewSheets, fewPiecesOnSheets, type Sheet, type SheetsTask, type SheetUse } from './sheets.ts';
