// The units that can be made in more than one way, the ways by name, and a way as a document chooses it.
import type { Rational } from '#ground/exact';

export const unitKinds = [
  'half-square',
  'quarter-square',
  'flying-geese',
  'square-in-square',
  'sewn-corners',
  'rails',
  'four-patch',
  'nine-patch',
] as const;

export type UnitKind = (typeof unitKinds)[number];

export const wayNames = [
  'singly',
  'two-at-a-time',
  'eight-at-a-time',
  'from-half-squares',
  'four-at-a-time',
  'sew-and-flip',
  'strip-sets',
] as const;

export type WayName = (typeof wayNames)[number];

/** Every way of a kind of unit, in the order in which they are told. */
export const waysOfKind: Readonly<Record<UnitKind, readonly WayName[]>> = {
  'half-square': ['singly', 'two-at-a-time', 'eight-at-a-time'],
  'quarter-square': ['singly', 'from-half-squares'],
  'flying-geese': ['singly', 'four-at-a-time', 'sew-and-flip'],
  'square-in-square': ['singly', 'sew-and-flip'],
  'sewn-corners': ['singly', 'sew-and-flip'],
  rails: ['singly', 'strip-sets'],
  'four-patch': ['singly', 'strip-sets'],
  'nine-patch': ['singly', 'strip-sets'],
};

/** Whether room can be left to trim: it is left on triangles, and what is flipped onto its own base has its size already. */
export const mayTrim = (unit: UnitKind, way: WayName): boolean =>
  way !== 'sew-and-flip' && way !== 'strip-sets' && !(way === 'singly' && withoutRoom.has(unit));

const withoutRoom: ReadonlySet<UnitKind> = new Set(['sewn-corners', 'rails', 'four-patch', 'nine-patch']);

/** A way chosen for all units that it names. */
export interface Method {
  readonly unit: UnitKind;
  /** Finished, either way round; null: of any size. */
  readonly size: readonly [Rational, Rational] | null;
  /** The unit's cloths, in the order of its places; null: of any cloths. */
  readonly fabrics: readonly string[] | null;
  readonly way: WayName;
  /** Cut with room, and brought to size with the ruler. */
  readonly trimmed: boolean;
  readonly path: string;
}
