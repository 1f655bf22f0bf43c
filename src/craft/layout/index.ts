export { type LayoutSearch, openLayoutSearch } from './open.ts';
export { type LayoutSearchTask, searchLayout } from './search.ts';
