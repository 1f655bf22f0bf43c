// Which parts of a block can be pieced on a foundation each, as few of them as there can be, and by which straight seams are they joined?
import { chordsOf, type Drawing, type SeamLine } from '#craft/chords';
import { type FoundationOrder, foundationOrder } from './order.ts';

export interface Sections {
  /** One where the whole unit can be pieced on one foundation. */
  readonly sections: readonly FoundationOrder[];
  /** Seams that join sections, in the order of sewing. */
  readonly joins: readonly SectionJoin[];
  /** Whether there is proven to be no way with fewer, or it is the best of a search. */
  readonly least: 'proven' | 'searched';
}

export interface SectionJoin {
  readonly line: SeamLine;
  /** Sections on either hand of the line. */
  readonly first: readonly number[];
  readonly second: readonly number[];
}

/** Units that are looked at before the search goes on with the best chord of each alone. Our own measure: about 0.1 s. */
const mostUnits = 3000;

interface Standing {
  readonly drawing: Drawing;
  readonly rank: (patch: number) => number;
  readonly known: Map<string, Divided | null>;
  isProven: boolean;
}

/** A unit on one foundation, or divided by a seam into two units that are. */
type Divided =
  | { readonly count: 1; readonly order: FoundationOrder }
  | { readonly count: number; readonly line: SeamLine; readonly first: Divided; readonly second: Divided };

/** @returns null where the unit cannot be sewn by straight seams from edge to edge */
export const leastSections = (of: {
  readonly drawing: Drawing;
  readonly unit: readonly number[];
  readonly rank: (patch: number) => number;
}): Sections | null => {
  const standing: Standing = { drawing: of.drawing, rank: of.rank, known: new Map(), isProven: true };
  const divided = dividedBy(standing, of.unit);
  if (divided === null) return null;
  const sections: FoundationOrder[] = [];
  const joins: SectionJoin[] = [];
  gather(divided, sections, joins);
  return { sections, joins, least: divided.count <= 2 || standing.isProven ? 'proven' : 'searched' };
};

const dividedBy = (standing: Standing, unit: readonly number[]): Divided | null => {
  const key = unit.join();
  const before = standing.known.get(key);
  if (before !== undefined) return before;
  const order = foundationOrder(standing.drawing, unit, standing.rank);
  const divided: Divided | null = order === null ? bestDivision(standing, unit) : { count: 1, order };
  standing.known.set(key, divided);
  return divided;
};

/** Two sections are the fewest of a unit that does not go on one: no further chord is tried then. */
const bestDivision = (standing: Standing, unit: readonly number[]): Divided | null => {
  let best: Divided | null = null;
  for (const { line, first, second } of chordsOf(standing.drawing, unit)) {
    if (best !== null && standing.known.size > mostUnits) {
      standing.isProven = false;
      break;
    }
    const one = dividedBy(standing, first);
    // any chord of a unit that can be sewn so leaves two that can
    if (one === null) return null;
    if (best !== null && one.count + 1 >= best.count) continue;
    const other = dividedBy(standing, second);
    if (other === null) return null;
    const count = one.count + other.count;
    if (best === null || count < best.count) best = { count, line, first: one, second: other };
    if (best.count === 2) break;
  }
  return best;
};

/** Sections in reading order of their seams, and the seams from the innermost out. */
const gather = (divided: Divided, sections: FoundationOrder[], joins: SectionJoin[]): readonly number[] => {
  if ('order' in divided) {
    sections.push(divided.order);
    return [sections.length - 1];
  }
  const first = gather(divided.first, sections, joins);
  const second = gather(divided.second, sections, joins);
  joins.push({ line: divided.line, first, second });
  return [...first, ...second];
};
