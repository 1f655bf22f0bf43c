export type { Holding, Sheet, SheetJob, SheetSearch, SheetsFound, SheetUse } from './job.ts';
export { searchSheets } from './search.ts';
