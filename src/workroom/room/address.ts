// Where one is: every view has an address, behind the # so that any server can give the page. Going back changes the view and
// never the quilt.
import { useSyncExternalStore } from 'react';

/** On the job line, in the order of the work. */
export const jobStops = ['draft', 'set', 'colour', 'cut', 'sew', 'finish'] as const;
/** Beside it: what leaves the workroom, and versions side by side. */
const besideStops = ['print', 'compare'] as const;
export const stops = [...jobStops, ...besideStops] as const;
export type Stop = (typeof stops)[number];

/** What of the view is in sight, from the whole to the part, as the view names it: a block, a step of it. */
export type Within = readonly string[];

export type Address =
  | { readonly at: 'home' }
  | { readonly at: 'quilt'; readonly id: string; readonly stop: Stop; readonly within: Within }
  /** Opens the demo of that file, begun where this browser has not got it yet. */
  | { readonly at: 'demo'; readonly file: string }
  | { readonly at: 'nowhere'; readonly text: string };

export const addressIn = (hash: string): Address => {
  const parts = hash
    .replace(/^#\/?/, '')
    .split('/')
    .map((part) => decoded(part));
  const [first = '', id = '', stop = '', ...within] = parts;
  if (first === '') return { at: 'home' };
  if (first === 'demo' && id !== '' && parts.length === 2) return { at: 'demo', file: id };
  const known = stops.find((one) => one === stop);
  if (first !== 'quilt' || id === '' || known === undefined) return { at: 'nowhere', text: hash };
  return { at: 'quilt', id, stop: known, within: within.filter((part) => part !== '') };
};

/** A broken escape is taken as it stands. */
const decoded = (part: string): string => {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
};

export const addressText = (address: Exclude<Address, { readonly at: 'nowhere' }>): string => {
  if (address.at === 'home') return '#/';
  if (address.at === 'demo') return `#/demo/${encodeURIComponent(address.file)}`;
  const parts = ['quilt', address.id, address.stop, ...address.within];
  return `#/${parts.map(encodeURIComponent).join('/')}`;
};

export const quiltAddress = (id: string, stop: Stop, ...within: Within): string =>
  addressText({ at: 'quilt', id, stop, within });

/** One is there at once: a second key that follows quickly goes on from there, while the browser tells of a move only later. */
export const go = (to: string): void => {
  location.hash = to;
  for (const see of seeing) see();
};

/** As `go`, in place of the address that one is at: going back passes it by. */
export const goInPlace = (to: string): void => {
  location.replace(to);
  for (const see of seeing) see();
};

export const useAddress = (): Address => addressIn(useSyncExternalStore(onMove, () => location.hash));

const seeing = new Set<() => void>();

const onMove = (see: () => void): (() => void) => {
  seeing.add(see);
  window.addEventListener('hashchange', see);
  return () => {
    seeing.delete(see);
    window.removeEventListener('hashchange', see);
  };
};
