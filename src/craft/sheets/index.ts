export type { Holding, Sheet, SheetJob, SheetSearch, SheetsFound, SheetUse } from './job.ts';
export { isTooShort } from './one-sheet.ts';
export { searchSheets } from './search.ts';
