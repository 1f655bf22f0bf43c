// Do light and dark read apart? In a log cabin its two halves, in other blocks the tones that are meant apart; a warning
// names the pair that comes nearest. Pictures in grey show the same.
import type { BlockDesign, Colouring, Quilt } from '#craft/design';
import { type DraftedBlock, fabricsOf, type Patch } from '#craft/drafting';
import { readsApart } from '#craft/fabric';
import { cornerTolerance } from '#craft/limits';
import type { BlockPlan, Note, ReadingAlike } from '#craft/plan';
import { touchingPairs } from '#craft/setting';
import { outlineArea } from '#ground/arc';
import { sewnAs } from './scrap-plan.ts';

export type ValueNote = Extract<Note, { readonly code: 'fabric/values-near' }>;

/** Lighter (or so named) first. */
type Pair = readonly [ReadingAlike, ReadingAlike];

/**
 * One warning at most for each block and colouring that the top uses.
 *
 * @param lightness CIE L* of a cloth, or the mean of scrappy ones as sewn
 * @source docs/formulas.md#value
 */
export const valueNotes = (of: {
  readonly quilt: Quilt;
  readonly blocks: readonly BlockPlan[];
  readonly drafted: ReadonlyMap<string, DraftedBlock>;
  readonly lightness: (fabric: string) => number;
}): readonly ValueNote[] => {
  const seen = new Set<string>();
  return of.blocks.flatMap(({ id, colouring }): readonly ValueNote[] => {
    const key = JSON.stringify([id, colouring]);
    if (seen.has(key)) return [];
    seen.add(key);
    const design = of.quilt.blocks.find((block) => block.id === id) as BlockDesign;
    const block = of.drafted.get(id) as DraftedBlock;
    const groupOf = grouping({ colouring: design.colourings[colouring] as Colouring, lightness: of.lightness });
    const pair = pairsIn(block, groupOf).toSorted((a, b) => apart(a) - apart(b))[0];
    if (pair === undefined || apart(pair) >= readsApart) return [];
    const [light, dark] = pair;
    return [{ code: 'fabric/values-near', level: 'warning', path: design.path, block: id, colouring, light, dark }];
  });
};

const apart = ([light, dark]: Pair): number => light.lightness - dark.lightness;

type GroupOf = (patches: readonly Patch[]) => ReadingAlike;

const grouping =
  (of: { readonly colouring: Colouring; readonly lightness: (fabric: string) => number }): GroupOf =>
  (patches) => {
    let area = 0;
    let weighted = 0;
    for (const patch of patches) {
      const size = outlineArea({ points: patch.points, arcs: patch.arcs ?? [] });
      area += size;
      weighted += size * of.lightness(sewnAs(fabricsOf(patch, of.colouring)));
    }
    return {
      tones: [...new Set(patches.map(({ tone }) => tone))],
      fabrics: [...new Set(patches.flatMap((patch) => fabricsOf(patch, of.colouring)))],
      lightness: area === 0 ? 0 : weighted / area,
    };
  };

const pairsIn = (block: DraftedBlock, groupOf: GroupOf): readonly Pair[] => {
  const logs = logsOf(block);
  if (logs.length > 0) return halves(logs, groupOf);
  // a frame's cloth is named by itself and stands for no tone
  const patches = block.patches.filter(({ fabric }) => fabric === undefined);
  const groups = new Map(
    [...new Set(patches.map(({ tone }) => tone))].map((tone) => [
      tone,
      groupOf(patches.filter((p) => p.tone === tone)),
    ]),
  );
  const named = namedPairs(groups);
  // with more tones than two, neighbours may well be near on purpose
  return named.length > 0 || groups.size !== 2 ? named : touchingTones(block, groups);
};

const twoHalves = [
  [
    ['left', 'top'],
    ['right', 'bottom'],
  ],
  [
    ['top', 'right'],
    ['bottom', 'left'],
  ],
  [
    ['left', 'right'],
    ['top', 'bottom'],
  ],
] as const;

interface Log {
  readonly side: string;
  readonly patch: Patch;
}

/** Patches that were added side by side, but for frames. */
const logsOf = (block: DraftedBlock): readonly Log[] => {
  const sides = block.added ?? [];
  const first = block.patches.length - sides.length;
  return sides
    .map((side, i) => ({ side, patch: block.patches[first + i] as Patch }))
    .filter(({ patch }) => patch.fabric === undefined);
};

/** The two corners of a log cabin, or its two pairs of opposite sides, that differ most. None where both have the same cloths. */
const halves = (logs: readonly Log[], groupOf: GroupOf): readonly Pair[] => {
  const pairs = twoHalves.flatMap((both): readonly Pair[] => {
    const [a, b] = both.map((half) => logs.filter(({ side }) => (half as readonly string[]).includes(side)));
    if (!a?.length || !b?.length) return [];
    return [lighterFirst(groupOf(a.map(({ patch }) => patch)), groupOf(b.map(({ patch }) => patch)))];
  });
  const meant = pairs.toSorted((a, b) => apart(b) - apart(a)).slice(0, 1);
  return meant.filter(([a, b]) => sewnAs(a.fabrics) !== sewnAs(b.fabrics));
};

const lighterFirst = (a: ReadingAlike, b: ReadingAlike): Pair => (b.lightness > a.lightness ? [b, a] : [a, b]);

/** Every tone whose name begins with "light" against every one whose name begins with "dark". */
const namedPairs = (groups: ReadonlyMap<string, ReadingAlike>): readonly Pair[] => {
  const named = (start: string): readonly ReadingAlike[] =>
    [...groups].flatMap(([tone, group]) => (tone.toLowerCase().startsWith(start) ? [group] : []));
  return named('light').flatMap((light) => named('dark').map((dark): Pair => [light, dark]));
};

/** Tones of different cloths that share an edge: in a block of two, its figure and its ground. */
const touchingTones = (block: DraftedBlock, groups: ReadonlyMap<string, ReadingAlike>): readonly Pair[] => {
  const outlines = block.patches.map(({ points }) => points);
  const pairs = new Map<string, Pair>();
  for (const [i, j] of touchingPairs(outlines, cornerTolerance * Math.max(...block.size))) {
    const [a, b] = [block.patches[i] as Patch, block.patches[j] as Patch];
    if (a.tone === b.tone || a.fabric !== undefined || b.fabric !== undefined) continue;
    const [first, second] = [groups.get(a.tone) as ReadingAlike, groups.get(b.tone) as ReadingAlike];
    if (sewnAs(first.fabrics) === sewnAs(second.fabrics)) continue;
    pairs.set([a.tone, b.tone].toSorted().join('|'), lighterFirst(first, second));
  }
  return [...pairs.values()];
};
