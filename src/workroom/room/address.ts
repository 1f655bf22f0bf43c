// Where one is: every view has an address, behind the # so that any server can give the page. Going back changes the view and
// never the quilt.
import { useSyncExternalStore } from 'react';

export type Stop = 'draft' | 'set' | 'colour';
export const stops: readonly Stop[] = ['draft', 'set', 'colour'];

export type Address =
  | { readonly at: 'home' }
  | { readonly at: 'quilt'; readonly id: string; readonly stop: Stop; readonly block: string | null }
  /** Opens the demo of that file, begun where this browser has not got it yet. */
  | { readonly at: 'demo'; readonly file: string }
  | { readonly at: 'nowhere'; readonly text: string };

export const addressIn = (hash: string): Address => {
  const parts = hash
    .replace(/^#\/?/, '')
    .split('/')
    .map((part) => decoded(part));
  const [first = '', id = '', stop = '', block = ''] = parts;
  if (first === '') return { at: 'home' };
  if (first === 'demo' && id !== '' && parts.length === 2) return { at: 'demo', file: id };
  const known = stops.find((one) => one === stop);
  if (first !== 'quilt' || id === '' || known === undefined) return { at: 'nowhere', text: hash };
  return { at: 'quilt', id, stop: known, block: block === '' ? null : block };
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
  const parts = ['quilt', address.id, address.stop, ...(address.block === null ? [] : [address.block])];
  return `#/${parts.map(encodeURIComponent).join('/')}`;
};

export const quiltAddress = (id: string, stop: Stop, block: string | null = null): string =>
  addressText({ at: 'quilt', id, stop, block });

export const go = (to: string): void => {
  location.hash = to;
};

/** As `go`, in place of the address that one is at: going back passes it by. */
export const goInPlace = (to: string): void => location.replace(to);

export const useAddress = (): Address => addressIn(useSyncExternalStore(onMove, () => location.hash));

const onMove = (see: () => void): (() => void) => {
  window.addEventListener('hashchange', see);
  return () => window.removeEventListener('hashchange', see);
};
