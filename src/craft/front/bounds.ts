// What can no choice of ways beat, planned or not? Minutes are known to the last strip without a layout; of cloth every layout is at least as
// long as its pieces weigh.
import { doBordersLieSo, leastLength, piecesInStrip, type QuiltPlan, quickLength, type WantedPiece } from '#craft';
import type { ClothNature } from '#craft/cutting';
import { minutesWith } from '#craft/minutes';
import type { Recall } from '#ground/recall';
import { clothPrices } from './cloth-prices.ts';
import type { CountedParts } from './counted-parts.ts';
import { type Least, type LeastTask, type LinePrice, leastOver } from './least.ts';
import type { Choice } from './likely.ts';
import type { CutCounts, CutLine } from './lines.ts';
import { inGroups, type QuiltParts, takenIn } from './parts.ts';

export interface Bounds {
  /** Of all choices but those that are known: the quickest, where it may take less than `below`, and what none of them takes less than. */
  readonly quickest: (of: Pick<LeastTask, 'below'> & { readonly isKnown: (choice: Choice) => boolean }) => Least;
  /** Of all choices: what no layout of any is shorter than, over all cloths, and the choice that comes nearest to it. */
  readonly leastCloth: () => Least;
}

export interface BoundsTask {
  readonly plan: Pick<QuiltPlan, 'quilt' | 'fabrics'>;
  readonly parts: QuiltParts;
  /** Of those parts. */
  readonly counts: CountedParts;
  readonly natures: ReadonlyMap<string, ClothNature>;
  readonly groups: number;
  readonly memory?: Recall;
}

export const boundsOf = (of: BoundsTask): Bounds => {
  const { plan, parts, natures, groups } = of;
  const { lines, fixed, options } = of.counts;
  const counted = parts.parts.map((part, i) =>
    part.options.map(({ minutes }, option) => ({ minutes, counts: options[i]?.[option] as CutCounts })),
  );
  const maybeSo = lieJudge(of);
  /** However the borders may lie. */
  const least = (
    task: Omit<LeastTask, 'lines' | 'fixed' | 'isKnown'> & {
      readonly fixed: number;
      readonly isKnown?: (taken: Choice, lies: number) => boolean;
    },
  ): Least => {
    const { isKnown = () => false } = task;
    return fixed.reduce<Least>(
      (best, counts, lies) => {
        const found = leastOver({
          ...task,
          lines,
          fixed: { own: task.fixed, counts },
          below: best.takes,
          isKnown: (taken) => isKnown(taken, lies),
        });
        const { choice, takes } = found.choice === null ? best : found;
        return { choice, takes, bound: Math.min(best.bound, found.bound) };
      },
      { choice: null, takes: task.below, bound: Number.POSITIVE_INFINITY },
    );
  };
  return {
    quickest: ({ below, isKnown }) => {
      const { choice, ...found } = least({
        priceOf: minutesPrices(plan.quilt, natures),
        parts: counted.map((options) => options.map(({ minutes, counts }) => ({ own: minutes, counts }))),
        fixed: parts.minutes,
        below,
        isKnown: (taken, lies) => isKnown(inGroups(parts, taken, groups)) || !maybeSo(taken, lies),
      });
      return { ...found, choice: choice && inGroups(parts, choice, groups) };
    },
    leastCloth: () => {
      const cloths = [...new Set([...lines.values()].map(({ fabric }) => fabric))];
      const { choice, ...found } = least({
        ...clothPrices({ plan, natures, cloths, touched: touchedBy(counted, lines) }),
        parts: counted.map((options) => options.map(({ counts }) => ({ own: 0, counts }))),
        below: Number.POSITIVE_INFINITY,
        within: nearEnough,
      });
      return { ...found, choice: choice && inGroups(parts, choice, groups) };
    },
  };
};

/** Of cloth: our own figure, in whichever unit. */
const nearEnough = 0.01;

/** Layouts made to ask how borders lie, at most: our own figure, for time's sake. After that they may lie in every way. */
const mostAsked = 300;

/** Whether with these options of its parts the quilt's borders may lie so. */
const lieJudge = (of: BoundsTask): ((taken: Choice, lies: number) => boolean) => {
  const { plan, parts, natures, groups, memory } = of;
  const lengths = new Map<string, number>();
  const kinds = new Map<string, number>();
  const named = new Map<string, number>();
  /** A number for what is cut from a cloth: alike for options that differ in other cloths only. */
  const nameAt = (place: string, fabric: string, pieces: () => readonly WantedPiece[]): number => {
    const known = kinds.get(place);
    if (known !== undefined) return known;
    const own = pieces().filter((piece) => piece.fabric === fabric);
    // what a piece is for is nothing to its cloth
    const text = JSON.stringify([fabric, own.map(({ use: _, path: __, ...piece }) => piece)]);
    const name = named.get(text) ?? named.size;
    named.set(text, name);
    kinds.set(place, name);
    return name;
  };
  const cutFrom = (fabric: string, part: number, option: number): number =>
    nameAt(`${fabric} ${part} ${option}`, fabric, () => parts.parts[part]?.options[option]?.pieces.flat() ?? []);
  const fixedFrom = (fabric: string, lies: number): number =>
    nameAt(`${fabric} ${lies}`, fabric, () => parts.pieces[lies] ?? []);
  const lengthOf = (taken: Choice, fabric: string, lies: number): number => {
    const key = [fixedFrom(fabric, lies), ...taken.map((option, part) => cutFrom(fabric, part, option))].join();
    const found =
      lengths.get(key) ??
      quickLength({
        fabric,
        natures,
        pieces: takenIn(parts, inGroups(parts, taken, groups)).pieces[lies] ?? [],
        ...(memory ? { memory } : {}),
      });
    lengths.set(key, found);
    return found;
  };
  return (taken, lies) =>
    parts.pieces.length === 1 ||
    lengths.size >= mostAsked ||
    doBordersLieSo({
      quilt: plan.quilt,
      at: lies,
      lengthOf: (fabric, others) => lengthOf(taken, fabric, others),
      leastOf: (fabric, others) => leastLength({ fabric, natures, pieces: parts.pieces[others] ?? [] }),
    });
};

/** As the plan counts them: every piece, and every strip that one size takes. Of what nests the strips are not known. */
const minutesPrices = (
  quilt: QuiltPlan['quilt'],
  natures: ReadonlyMap<string, ClothNature>,
): ((line: CutLine) => LinePrice) => {
  const table = minutesWith(quilt.minutes);
  return ({ fabric, size, nests }) => ({
    piece: table.cut,
    strip: nests ? 0 : table.fold,
    perStrip: piecesInStrip(size, natures.get(fabric)?.width ?? 0),
  });
};

/** Cloths of which a choice may take more or less. */
const touchedBy = (
  counted: readonly (readonly { readonly counts: CutCounts }[])[],
  lines: ReadonlyMap<string, CutLine>,
): ReadonlySet<string> =>
  new Set(
    counted.flatMap((options) =>
      options.flatMap(({ counts }) => [...counts.keys()].map((key) => lines.get(key)?.fabric ?? '')),
    ),
  );
