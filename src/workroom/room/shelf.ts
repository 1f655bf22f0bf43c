// What was copied, to be put down elsewhere: in this tab or another, now or tomorrow. The system's own clipboard is for secure pages alone.
import { type KeptValue, keptValue, parsed, useKeptValue } from './kept-value.ts';

/** As it was put there; null for nothing. Whoever takes it judges it. */
export type Shelf = KeptValue<unknown>;

export const openShelf = (): Shelf => keptValue({ key: 'seamstead/copied', read: parsed });

export const useShelf = (shelf: Shelf): unknown => useKeptValue(shelf);
