// The top of a plan: its own pieces (sashes, setting triangles, fills, borders) and the order of joining.

import { entryName } from '#craft/blocks';
import { type ClothNature, type CutRule, joinedAnyWay, joinedOnCloth, joinedStrip } from '#craft/cutting';
import type { Length } from '#craft/measure';
import { joinTop, labelAt, type TopJoin } from '#craft/piecing';
import type { TopPiece, TopPlan, TopStep } from '#craft/plan';
import type { TopPressing } from '#craft/pressing';
import type { PlacedBlock, PlacedStrip, SetTop } from '#craft/setting';
import type { DrawnCloths } from '#craft/tones';
import { centroid, distance, type Point } from '#ground/plane';
import { topCut } from './top-cut.ts';

/** How each border ring is to lie on its cloth: in pieces across it, in one piece along it, or in pieces as they need fewest joins. */
export type BorderLie = 'crosswise' | 'lengthwise' | 'joined';

/**
 * @param natures by fabric
 * @param float   how much larger the squares for setting triangles are cut
 * @returns the plan for each way that the borders may lie, from the inside outward: the joins are the same for all
 */
export const topPlanner = (of: {
  readonly set: SetTop;
  readonly drawn: DrawnCloths;
  readonly pressing: TopPressing;
  readonly rule: CutRule;
  readonly natures: ReadonlyMap<string, ClothNature>;
  readonly float: Length;
}): ((borderLie: readonly BorderLie[]) => TopPlan) => {
  const { set } = of;
  const natureOf = (fabric: string): ClothNature => of.natures.get(fabric) as ClothNature;
  const isPrinted = (fabric: string): boolean => natureOf(fabric).print !== 'none';
  const kindOfStrip = stripKinds(set.strips, isPrinted);
  const joins = joinTop({ set, kindOfStrip, isPrinted, seam: of.rule.seam, ...of.pressing });
  const order = sewingOrder(joins, kindOfStrip, set.strips.length);
  const label = (strip: number): string => labelAt(order.indexOf(kindOfStrip[strip] as number));
  const steps = joins.map((join, i) => topStep({ set, join, number: i + 1, label }));
  const piece = ({ kind, place, borderLie }: PieceWanted): TopPiece => {
    const strips = set.strips.flatMap((_, i) => (kindOfStrip[i] === kind ? [i] : []));
    const strip = set.strips[strips[0] as number] as PlacedStrip;
    const printed = isPrinted(strip.fabric) ? 'as-it-lies' : 'any-way';
    const cut = topCut({ strip, rule: of.rule, float: of.float, printed });
    const lie = strip.border === null ? null : (borderLie[strip.border] as BorderLie);
    return {
      label: labelAt(place),
      role: strip.role,
      fabric: strip.fabric,
      count: strips.length,
      finished: cut.finished,
      cut,
      joinedFrom: clothPieces({ cut, lie, nature: natureOf(strip.fabric), seam: of.rule.seam }),
      strips,
    };
  };
  return (borderLie) => ({
    set,
    drawn: of.drawn,
    pressing: of.pressing,
    pieces: order.map((kind, place) => piece({ kind, place, borderLie })),
    steps,
  });
};

interface PieceWanted {
  readonly kind: number;
  readonly place: number;
  readonly borderLie: readonly BorderLie[];
}

/**
 * One strip in pieces of cloth: whole where the cloth is wide or it lies lengthwise, else joined end to end across the
 * cloth, or along the longer side of sheets where the document leaves its grain open. A print that stands upright decides alone.
 */
const clothPieces = (strip: {
  readonly cut: TopPiece['cut'];
  readonly lie: BorderLie | null;
  readonly nature: ClothNature;
  readonly seam: Length;
}): TopPiece['joinedFrom'] => {
  const { nature, seam } = strip;
  const [long, short] = strip.cut.size;
  // a square for triangles is never joined
  if (strip.cut.gives > 1) return [[long, short]];
  if (nature.print !== 'none') return joinedOnCloth({ size: strip.cut.size, nature, seam });
  if (strip.lie === 'lengthwise') return [[short, long]];
  if (strip.lie === null && long <= Math.max(nature.width, nature.joining?.[1] ?? 0)) return [[long, short]];
  if (strip.lie === 'crosswise') return joinedStrip({ long, width: nature.width, seam }).map((piece) => [piece, short]);
  return joinedAnyWay({ size: [long, short], nature, seam });
};

/** Pieces of one role, cloth and shape are one kind, whichever way they lie; where a print stands upright, only if they lie alike. */
const stripKinds = (strips: readonly PlacedStrip[], isPrinted: (fabric: string) => boolean): readonly number[] => {
  const known = new Map<string, number>();
  return strips.map((strip) => {
    const { role, fabric, border } = strip;
    const key = JSON.stringify([role, fabric, border, sidesOf(strip), isPrinted(fabric) ? lieOf(strip) : null]);
    const kind = known.get(key) ?? known.size;
    known.set(key, kind);
    return kind;
  });
};

const sidesOf = ({ points }: PlacedStrip): readonly string[] =>
  points.map((p, i) => distance(p, points[(i + 1) % points.length] as Point).toFixed(6)).sort();

/** The box, and where the middle lies in it: a turned triangle's lies elsewhere. */
const lieOf = ({ points, rect }: PlacedStrip): readonly string[] => {
  const middle = centroid(points);
  return [rect.width, rect.height, middle.x - rect.x, middle.y - rect.y].map((value) => value.toFixed(6));
};

/** Kinds of strip in the order in which they are first sewn. */
const sewingOrder = (joins: readonly TopJoin[], kindOfStrip: readonly number[], strips: number): readonly number[] => {
  const order = new Set<number>();
  for (const join of joins) {
    for (const things of join.things) {
      for (const thing of things) if ('strip' in thing) order.add(kindOfStrip[thing.strip] as number);
    }
  }
  for (let strip = 0; strip < strips; strip++) order.add(kindOfStrip[strip] as number);
  return [...order];
};

const topStep = (of: {
  readonly set: SetTop;
  readonly join: TopJoin;
  readonly number: number;
  readonly label: (strip: number) => string;
}): TopStep => {
  const { number, set } = of;
  const { join, press, ...kept } = of.join;
  const nameOf = (part: TopJoin['join'][number]): string => {
    if ('unit' in part) return `#${part.unit + 1}`;
    return 'strip' in part ? of.label(part.strip) : entryName(set.placed[part.block] as PlacedBlock);
  };
  const names = [nameOf(join[0]), nameOf(join[1])] as const;
  return {
    ...kept,
    id: `top-${number}`,
    number,
    join: names,
    makes: `#${number}`,
    press: press === 'open' ? 'open' : names[press],
    pressTo: press,
    total: kept.perBlock,
  };
};
