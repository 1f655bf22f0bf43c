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
  | { readonly kind: 'go'; readonly way: Way }
  | { readonly kind: 'pan'; readonly by: readonly [number, number] }
  | { readonly kind: 'zoom'; readonly by: number }
  | { readonly kind: 'fit' | 'first' | 'last' | 'in' | 'out' };

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
};

/** What keys do in a drawing; null where they are for others. */
export const actionFor = ({ key, shiftKey, altKey, ctrlKey, metaKey }: PressedInDrawing): Act | null => {
  if (altKey || ctrlKey || metaKey) return null;
  const way = arrows[key];
  if (way !== undefined) return shiftKey ? { kind: 'pan', by: pans[way] } : { kind: 'go', way };
  return plainActs[key] ?? null;
};
