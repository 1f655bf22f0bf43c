// A top as one pieced thing: its blocks and plain pieces by one number, how each is made or cut, and which step sews two of them
// together.
import { type CutTerm, type SeamTerm, type SewnIn, type SizeModel, sizeModels, type Way } from '#craft/accuracy';
import type { Length } from '#craft/measure';
import { topSeams } from '#craft/piecing';
import type { BlockPlan, TopPiece, TopPlan } from '#craft/plan';
import { type PlacedBlock, type PlacedStrip, placeOfThing, type TopThing } from '#craft/setting';
import { signedArea } from '#ground/plane';

export interface SewnTop {
  readonly top: TopPlan;
  readonly placeOf: (thing: TopThing) => number;
  readonly isBlock: (place: number) => boolean;
  readonly isTriangle: (place: number) => boolean;
  /** It stands on its corner, or fills in beside what does. */
  readonly isOnPoint: (place: number) => boolean;
  readonly blockAt: (place: number) => SetBlock | null;
  readonly pieceAt: (place: number) => SetPiece | null;
  /** What its cuts and seams bring where so much of its width and of its height counts; the same for all that count alike. */
  readonly sewnIn: (block: SetBlock, by: Readonly<Record<Way, number>>) => SewnIn;
  /** Index of the step that sews two together, of all that it sews; null where a mitre does. */
  readonly stepBetween: (a: number, b: number) => number | null;
}

export interface SetBlock {
  readonly entry: BlockPlan;
  /** Clockwise, as it lies. */
  readonly turn: number;
  /** Of the whole block as it is drafted; null of one that is cut in one piece, made elsewhere, or kept true by a sheet. */
  readonly sizes: Readonly<Record<Way, SizeModel>> | null;
}

export interface SetPiece {
  readonly strip: PlacedStrip;
  readonly piece: TopPiece;
}

export const sewnTop = (of: {
  readonly top: TopPlan;
  readonly blocks: readonly BlockPlan[];
  readonly seam: Length;
}): SewnTop => {
  const { top } = of;
  const { placed, strips } = top.set;
  const placeOf = (thing: TopThing): number => placeOfThing(top.set, thing);
  const entries = new Map(
    of.blocks.map((entry) => [nameOf(entry.id, entry), { entry, sizes: wholeSizes(entry, of.seam) }]),
  );
  const pieces = new Map(top.pieces.flatMap((piece) => piece.strips.map((strip) => [strip, piece] as const)));
  const stripAt = (place: number): PlacedStrip | undefined => strips[place - placed.length];
  return {
    top,
    placeOf,
    isBlock: (place) => place < placed.length,
    isTriangle: (place) => stripAt(place)?.points.length === 3,
    isOnPoint: (place) => {
      const strip = stripAt(place);
      if (strip === undefined) return (placed[place]?.turn ?? 0) % 90 !== 0;
      return strip.border === null && signedArea(strip.points) < (1 - 1e-9) * strip.rect.width * strip.rect.height;
    },
    blockAt: (place) => {
      const one = placed[place];
      const known = one === undefined ? undefined : entries.get(nameOf(one.block, one));
      if (one === undefined || known === undefined) return null;
      return { ...known, turn: one.turn + (top.pressing.turns[place] ?? 0) };
    },
    pieceAt: (place) => {
      const strip = stripAt(place);
      const piece = pieces.get(place - placed.length);
      return strip === undefined || piece === undefined ? null : { strip, piece };
    },
    sewnIn: sewnInFinder(),
    stepBetween: stepFinder(top, placeOf),
  };
};

const nameOf = (block: string, { colouring, mirror }: Pick<PlacedBlock, 'colouring' | 'mirror'>): string =>
  JSON.stringify([block, colouring, mirror]);

const wholeSizes = (entry: BlockPlan, seam: Length): SetBlock['sizes'] => {
  const last = entry.steps.length - 1;
  const models = last < 0 ? [] : sizeModels(entry, seam);
  const whole = (way: Way) => models.find((model) => model.step === last && model.way === way);
  const [across, down] = [whole('across'), whole('down')];
  return across === undefined || down === undefined ? null : { across, down };
};

/** On point a size goes over both ways of a block, and over pieces and seams that both have. */
const sewnInFinder = (): SewnTop['sewnIn'] => {
  const known = new Map<string, SewnIn>();
  return ({ entry, sizes }, by) => {
    const key = JSON.stringify([entry.id, entry.colouring, entry.mirror, by.across, by.down]);
    const found = known.get(key) ?? weighed(sizes as NonNullable<SetBlock['sizes']>, by);
    known.set(key, found);
    return found;
  };
};

const weighed = (sizes: NonNullable<SetBlock['sizes']>, by: Readonly<Record<Way, number>>): SewnIn => {
  const cuts = new Map<string, CutTerm>();
  const seams = new Map<string, SeamTerm>();
  for (const way of ['across', 'down'] as const) {
    if (by[way] === 0) continue;
    for (const term of sizes[way].cuts) {
      const name = `${term.patch} ${term.side}`;
      cuts.set(name, { ...term, grows: (cuts.get(name)?.grows ?? 0) + by[way] * term.grows });
    }
    for (const term of sizes[way].seams) {
      const name = [...term.between].sort((a, b) => a - b).join();
      seams.set(name, { ...term, shrinks: (seams.get(name)?.shrinks ?? 0) + by[way] * term.shrinks });
    }
  }
  return { cuts: [...cuts.values()], seams: [...seams.values()] };
};

/** By thing the seams that it comes to, in the order of sewing: the first that has another at its other side joins the two. */
const stepFinder = (top: TopPlan, placeOf: SewnTop['placeOf']): SewnTop['stepBetween'] => {
  const stepOf = new Map(top.steps.flatMap(({ seams }, step) => seams.map((seam) => [seam, step] as const)));
  const seamsOf = new Map<number, Map<number, 0 | 1>>();
  topSeams(top.set).forEach(({ things }, seam) => {
    things.forEach((side, part) => {
      for (const thing of side) {
        const place = placeOf(thing);
        const own = seamsOf.get(place) ?? new Map<number, 0 | 1>();
        seamsOf.set(place, own.set(seam, part as 0 | 1));
      }
    });
  });
  return (a, b) => {
    const its = seamsOf.get(b);
    for (const [seam, part] of seamsOf.get(a) ?? []) {
      if (its?.get(seam) === 1 - part) return stepOf.get(seam) ?? null;
    }
    return null;
  };
};
