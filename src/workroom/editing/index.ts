// Editing: one document, steps that can be taken back and done again, and two tabs that meet. Pure.
export { patchesBetween } from './between.ts';
export { isSame, type Json, type JsonObject } from './json.ts';
export { merged } from './merge.ts';
export type { Patch } from './patch.ts';
export { beginEditing, canRedo, canUndo, type Edit, type Editing, edited, redone, type Step, undone } from './steps.ts';
