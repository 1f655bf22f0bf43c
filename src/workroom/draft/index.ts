// Draft: the blocks of a quilt. Home takes of it what makes and carries blocks; the view comes when it is gone to.
import { lazy } from 'react';

export { blankBlock } from './block-edits.ts';
export { carriedFrom, quiltOf } from './carried.ts';
export const DraftView = lazy(async () => ({ default: (await import('./draft-view.tsx')).DraftView }));
