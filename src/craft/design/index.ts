export type * from './quilt.ts';
