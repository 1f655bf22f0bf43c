// What does a choice of ways ask of one cloth? Its pieces by size, as far as they are the same for every layout of them.
import type { Demand } from '#craft/cutting';
import type { CountedParts } from './counted-parts.ts';
import type { Choice } from './likely.ts';
import { type CutCounts, type CutLine, piecesIn } from './lines.ts';

/** The pieces of one cloth. */
export interface ClothAsk {
  readonly fabric: string;
  /** Sizes alike together, in an order of their own; what nests is not among them. */
  readonly demands: readonly Demand[];
  /** Of all pieces, those that nest too. */
  readonly area: number;
  /** Alike for asks that are alike. */
  readonly key: string;
}

/**
 * @param taken option by part
 * @param lies  which list of what is cut anyway
 */
export const clothAsks = ({
  lines,
  options,
  fixed,
}: CountedParts): ((taken: Choice, lies: number) => readonly ClothAsk[]) => {
  const cloths = [...new Set([...lines.values()].map(({ fabric }) => fabric))];
  const linesOf = cloths.map((fabric) => [...lines].filter(([, line]) => line.fabric === fabric));
  return (taken, lies) => {
    const all = [fixed[lies] as CutCounts, ...taken.map((option, part) => options[part]?.[option] as CutCounts)];
    return cloths.map((fabric, i) => askOf(fabric, countedOver(linesOf[i] as LinesOfCloth, all)));
  };
};

type LinesOfCloth = readonly (readonly [key: string, line: CutLine])[];

interface Counted {
  readonly line: CutLine;
  readonly pieces: number;
}

const countedOver = (own: LinesOfCloth, all: readonly CutCounts[]): readonly Counted[] =>
  own.flatMap(([key, line]) => {
    let [patches, pieces] = [0, 0];
    for (const counts of all) {
      const count = counts.get(key);
      if (count === undefined) continue;
      patches += count.patches;
      pieces += count.pieces;
    }
    const whole = piecesIn({ patches, pieces }, line);
    return whole === 0 ? [] : [{ line, pieces: whole }];
  });

const askOf = (fabric: string, counted: readonly Counted[]): ClothAsk => {
  const sizes = new Map<string, Demand>();
  let area = 0;
  let nesting = 0;
  for (const { line, pieces } of counted) {
    area += pieces * line.area;
    if (line.nests) {
      nesting += pieces * line.area;
      continue;
    }
    const [a, b] = line.size;
    const [across, along] = line.mayTurn && a > b ? [b, a] : [a, b];
    const mayTurn = line.mayTurn && a !== b;
    const name = `${across} ${along}${mayTurn ? ' t' : ''}`;
    sizes.set(name, { across, along, mayTurn, count: pieces + (sizes.get(name)?.count ?? 0) });
  }
  const inOrder = [...sizes].sort(([a], [b]) => (a < b ? -1 : 1));
  const counts = inOrder.map(([name, { count }]) => `${count} ${name}`);
  return { fabric, area, demands: inOrder.map(([, demand]) => demand), key: [fabric, nesting, ...counts].join('|') };
};
