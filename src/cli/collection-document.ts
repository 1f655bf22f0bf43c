// A document that holds one block of the collection and nothing else: for its picture and for how it is joined.
import type { Unit } from '#craft/measure';

/** Our own four cloths, told apart in grey as well. */
const cloths = [
  { id: 'light', name: 'Light', colour: '#f1e9d6' },
  { id: 'medium', name: 'Medium', colour: '#c79a63' },
  { id: 'dark', name: 'Dark', colour: '#4f5d2f' },
  { id: 'accent', name: 'Accent', colour: '#9c3f2c' },
] as const;

/** @param of.size finished side */
export const collectionDocument = (of: {
  readonly id: string;
  readonly size: string;
  readonly unit: Unit;
}): object => ({
  format: 'seamstead-quilt',
  version: 1,
  unit: of.unit,
  fabrics: cloths,
  blocks: [{ id: of.id, from: of.id, size: of.size }],
  top: { rows: [[{ block: of.id }]] },
});
