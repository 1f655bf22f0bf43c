// What does one thing of a top bring into a size that goes over it? A plain piece its cut, a setting triangle nothing, for it is
// trimmed, a border along the quilt the size it was cut to, and a block all that it is made of.
import { type CutTerm, type SeamTerm, type SizeModel, sideAlong } from '#craft/accuracy';
import { entryName } from '#craft/blocks';
import { type Length, tidy } from '#craft/measure';
import { dot, type Point, turned } from '#ground/plane';
import type { SetBlock, SetPiece, SewnTop } from './sewn-top.ts';

export interface Edge {
  /** Outward, where the way comes in or goes out. */
  readonly normal: Point;
  /** How far the size's end moves for each unit that the edge moves out. */
  readonly weight: number;
}

export interface ThingTerms {
  readonly cuts: readonly CutTerm[];
  readonly seams: readonly SeamTerm[];
  /** What it adds to the size as it is cut on its marks. */
  readonly off: number;
}

interface Thing {
  readonly thing: number;
  readonly edges: readonly Edge[];
  /** Models of the sizes so far. */
  readonly before: readonly SizeModel[];
}

const nothing: ThingTerms = { cuts: [], seams: [], off: 0 };

export const termsOf = (sewn: SewnTop, of: Thing): ThingTerms => {
  const block = sewn.blockAt(of.thing);
  if (block !== null) return blockTerms(sewn, block, of);
  const piece = sewn.pieceAt(of.thing);
  if (piece === null || sewn.isTriangle(of.thing)) return nothing;
  return measuredTerms(sewn, piece, of) ?? pieceTerms(piece, of);
};

/** A piece grows by half at either edge. */
const pieceTerms = ({ strip, piece }: SetPiece, { thing, edges }: Thing): ThingTerms => {
  const { label, cut } = piece;
  const cuts = ([0, 1] as const).flatMap((side): readonly CutTerm[] => {
    const own = edges.filter(({ normal }) => sideAlong(cut, strip.points, normal) === side);
    const grows = tidy(own.reduce((all, { weight }) => all + weight / 2, 0));
    return Math.abs(grows) < 1e-9 ? [] : [{ patch: thing, piece: label, side, grows }];
  });
  const off = cuts.reduce((all, { side, grows }) => all + grows * (cut.size[side] - cut.exact[side]), 0);
  return { cuts, seams: [], off };
};

/** Of a strip that goes round the quilt, along it: it is cut to what the quilt measured before. */
const measuredTerms = (sewn: SewnTop, { strip, piece }: SetPiece, of: Thing): ThingTerms | null => {
  const normal = (of.edges[0] as Edge).normal;
  const places = strip.points.map((p) => dot(p, normal));
  const long = Math.max(...places) - Math.min(...places);
  if (strip.border === null || long < Math.max(strip.rect.width, strip.rect.height) - 1e-9) return null;
  const way = strip.rect.width > strip.rect.height ? 'across' : 'down';
  const side = piece.cut.exact[0] >= piece.cut.exact[1] ? 0 : 1;
  const core = coreOf(sewn, of.before, { way, size: piece.cut.exact[side] });
  if (core === null) return null;
  const { cuts, seams, expected, drawn } = core;
  return { cuts: [...cuts, { patch: of.thing, piece: piece.label, side, grows: 1 }], seams, off: expected - drawn };
};

/** The unit of that size that holds most; null where the quilt was a single thing. */
const coreOf = (
  { top }: SewnTop,
  models: readonly SizeModel[],
  { way, size }: { readonly way: SizeModel['way']; readonly size: Length },
): SizeModel | null => {
  const thingsIn = ({ step }: SizeModel): number => top.steps[step]?.things.flat().length ?? 0;
  const fit = models.filter((model) => model.way === way && Math.abs(model.drawn - size) < 1e-6);
  return fit.reduce<SizeModel | null>(
    (best, one) => (best === null || thingsIn(one) > thingsIn(best) ? one : best),
    null,
  );
};

/** By edge: which of the block's own sizes it is an end of. */
const wayOf = (turn: number, normal: Point): SizeModel['way'] => {
  const own = turned(normal, (-turn * Math.PI) / 180);
  return Math.abs(own.x) > Math.abs(own.y) ? 'across' : 'down';
};

/** A square block is of one size, as a square piece is. */
const blockTerms = (sewn: SewnTop, block: SetBlock, { thing, edges }: Thing): ThingTerms => {
  const weightOf = (way: SizeModel['way']): number =>
    edges.reduce((all, { normal, weight }) => (wayOf(block.turn, normal) === way ? all + weight / 2 : all), 0);
  const by = { across: tidy(weightOf('across')), down: tidy(weightOf('down')) };
  const [width, height] = block.entry.finished;
  const side = Math.abs(width - height) < 1e-9 || by.across > 1e-9 ? 0 : 1;
  const whole = {
    patch: thing,
    piece: entryName({ ...block.entry, block: block.entry.id }),
    side,
    grows: tidy(by.across + by.down),
  } as const;
  if (block.sizes === null) {
    const off = offMarks(block);
    return { cuts: [whole], seams: [], off: by.across * off.across + by.down * off.down };
  }
  const { across, down } = block.sizes;
  return {
    cuts: [{ ...whole, sewn: sewn.sewnIn(block, by) }],
    seams: [],
    off: by.across * (across.expected - across.drawn) + by.down * (down.expected - down.drawn),
  };
};

/** Of a block that is one rectangle. */
const offMarks = ({ entry: { pieces, patches, finished } }: SetBlock): Readonly<Record<SizeModel['way'], number>> => {
  const cut = patches.length === 1 ? pieces[0]?.cut : undefined;
  if (cut === undefined || (cut.shape !== 'square' && cut.shape !== 'rectangle')) return { across: 0, down: 0 };
  const [first, second] = cut.size.map((size, side) => size - (cut.exact[side] as number)) as [number, number];
  const isTurned = Math.abs(cut.finished[0] - finished[0]) > 1e-9;
  return isTurned ? { across: second, down: first } : { across: first, down: second };
};
