// Keys in a drawing: to the neighbour, closer, further, into a thing and out again.
import type { Way } from './scene.ts';

interface PressedInDrawing {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

export const zoomStep = 1.25;

export type Act =
  | { readonly kind: 'go' | 'extend'; readonly way: Way }
  | { readonly kind: 'pan'; readonly by: readonly [number, number] }
  | { readonly kind: 'zoom'; readonly by: number }
  | { readonly kind: 'fit' | 'first' | 'last' | 'in' | 'out' | 'toggle' };

const arrows: Readonly<Record<string, Way>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};
const panPx = 60;
const pans: Readonly<Record<Way, readonly [number, number]>> = {
  left: [panPx, 0],
  right: [-panPx, 0],
  up: [0, panPx],
  down: [0, -panPx],
};
const plainActs: Readonly<Record<string, Act>> = {
  '+': { kind: 'zoom', by: zoomStep },
  '=': { kind: 'zoom', by: zoomStep },
  '-': { kind: 'zoom', by: 1 / zoomStep },
  '0': { kind: 'fit' },
  Home: { kind: 'first' },
  End: { kind: 'last' },
  Enter: { kind: 'in' },
  Escape: { kind: 'out' },
  ' ': { kind: 'toggle' },
};

/**
 * What keys do in a drawing; null where they are for others.
 *
 * @param choosing whether Shift with an arrow takes the neighbour as well, or moves the drawing, as the command key always does
 */
export const actionFor = (
  { key, shiftKey, altKey, ctrlKey, metaKey }: PressedInDrawing,
  choosing: 'one' | 'several',
): Act | null => {
  const isHeld = ctrlKey || metaKey;
  const way = arrows[key];
  if (altKey || (isHeld && way === undefined)) return null;
  if (way === undefined) return plainActs[key] ?? null;
  if (isHeld || (shiftKey && choosing === 'one')) return { kind: 'pan', by: pans[way] };
  return { kind: shiftKey ? 'extend' : 'go', way };
};
