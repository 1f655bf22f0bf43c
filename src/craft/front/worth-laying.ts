// Which ways of a part may be those that take least cloth? A way whose pieces all have room in the pieces of another takes no more cloth
// than that one, whatever else is cut: the other need not be laid out.
import type { CountedParts } from './counted-parts.ts';
import { type CutCount, type CutCounts, type CutLine, piecesIn } from './lines.ts';

/**
 * By part: the options that no other makes needless, of those alike the first.
 *
 * @source docs/formulas.md#least-cloth
 */
export const worthLaying = (counted: CountedParts): readonly (readonly number[])[] =>
  counted.options.map((options, part) => {
    const isOwn = ownLines(counted, part);
    const isWithin = (a: number, b: number): boolean => {
      const [one, other] = [options[a] as CutCounts, options[b] as CutCounts];
      return fitsIn(
        moreOf({ counted, isOwn, one, other, way: 'most' }),
        moreOf({ counted, isOwn, one: other, other: one, way: 'least' }),
      );
    };
    return [...options.keys()].filter(
      (b) => !options.some((_, a) => a !== b && isWithin(a, b) && (a < b || !isWithin(b, a))),
    );
  });

/** Lines in which no other part has pieces, nor a share of a piece is cut anyway: of those it is known how many pieces there are. */
const ownLines = ({ lines, options, fixed }: CountedParts, part: number): ((key: string) => boolean) => {
  const others = new Set(
    options.flatMap((list, i) => (i === part ? [] : list.flatMap((counts) => [...counts.keys()]))),
  );
  return (key) =>
    !others.has(key) &&
    fixed.every((counts) => (counts.get(key)?.patches ?? 0) % (lines.get(key) as CutLine).gives === 0);
};

/** Pieces alike. */
interface Lot {
  readonly line: CutLine;
  readonly count: number;
}

const none: CutCount = { patches: 0, pieces: 0 };

/** What the one has cut that the other has not: with the other parts' patches of a line it may be a piece more or less. */
const moreOf = (of: {
  readonly counted: CountedParts;
  readonly isOwn: (key: string) => boolean;
  readonly one: CutCounts;
  readonly other: CutCounts;
  readonly way: 'most' | 'least';
}): readonly Lot[] =>
  [...of.one].flatMap(([key, count]): readonly Lot[] => {
    const line = of.counted.lines.get(key) as CutLine;
    const by = of.other.get(key) ?? none;
    const own = piecesIn(count, line) - piecesIn(by, line);
    const patches = Math.max(0, count.patches - by.patches) / line.gives;
    const shared =
      Math.max(0, count.pieces - by.pieces) +
      (of.way === 'most' ? Math.ceil(patches - hair) : Math.floor(patches + hair));
    const more = of.isOwn(key) ? Math.max(0, own) : shared;
    return more === 0 ? [] : [{ line, count: more }];
  });

const hair = 1e-9;

/** Room that is left in pieces alike: as high as they still are, as they lie. */
interface Room extends Lot {
  readonly left: number;
}

/** Whether every piece has a place in one of those pieces, one below the other: as parts of strips are cut. */
const fitsIn = (lots: readonly Lot[], into: readonly Lot[]): boolean => {
  if (areaOf(lots) > areaOf(into) + hair) return false;
  let rooms: readonly Room[] = into.map((lot) => ({ ...lot, left: lot.line.size[1] }));
  for (const lot of lots.toSorted((a, b) => b.line.area - a.line.area)) {
    const after = placed(lot, rooms);
    if (after === null) return false;
    rooms = after;
  }
  return true;
};

const areaOf = (lots: readonly Lot[]): number => lots.reduce((all, { line, count }) => all + count * line.area, 0);

/** The narrowest rooms first. */
const placed = ({ line, count }: Lot, rooms: readonly Room[]): readonly Room[] | null => {
  let open = count;
  const after = rooms
    .toSorted((a, b) => a.line.size[0] * a.left - b.line.size[0] * b.left)
    .flatMap((room): readonly Room[] => {
      const { each, takes } = fitFor(line, room);
      if (open === 0 || each === 0) return [room];
      const full = Math.min(room.count, Math.floor(open / each));
      const rest = full < room.count ? Math.min(each, open - full * each) : 0;
      open -= full * each + rest;
      return [
        { ...room, count: full, left: room.left - each * takes },
        { ...room, count: rest > 0 ? 1 : 0, left: room.left - rest * takes },
        { ...room, count: room.count - full - (rest > 0 ? 1 : 0) },
      ].filter((one) => one.count > 0);
    });
  return open === 0 ? after : null;
};

/** How many have room in one, and how much of its height each takes. */
const fitFor = (line: CutLine, { line: host, left }: Room): { readonly each: number; readonly takes: number } => {
  const [across, along] = line.size;
  const [wide, high] = host.size;
  const no = { each: 0, takes: 0 };
  if (line.fabric !== host.fabric || line.nests || host.nests) return no;
  if (!host.mayTurn || wide === high) {
    const lying = line.mayTurn ? [Math.min(across, along), Math.max(across, along)] : [across, along];
    const lies = line.mayTurn ? [lying, lying.toReversed()] : [lying];
    const fits = lies.filter(([w, h]) => (w as number) <= wide + hair && (h as number) <= left + hair);
    const takes = Math.min(...fits.map(([, h]) => h as number));
    return fits.length === 0 ? no : { each: Math.floor(left / takes + hair), takes };
  }
  // it may lie either way, and then takes one that fits both ways, or turns with it
  const isWhole = left === high;
  const turns = line.mayTurn
    ? Math.min(across, along) <= Math.min(wide, high) + hair && Math.max(across, along) <= Math.max(wide, high) + hair
    : Math.max(across, along) <= Math.min(wide, high) + hair;
  return isWhole && turns ? { each: 1, takes: left } : no;
};
