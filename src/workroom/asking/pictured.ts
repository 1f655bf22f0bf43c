// A plan as shapes to draw: every block once, and where it lies.
import type { BlockPlan, QuiltPlan } from '#craft';
import { isReversed } from '#craft/fabric';
import { signedArea } from '#ground/plane';
import type { BlockPicture, JobFigures, PlacedPicture, QuiltPicture, StripPicture } from './answer.ts';
import { flat } from './flat.ts';

export const pictureOf = ({ quilt, top, blocks }: QuiltPlan): QuiltPicture => {
  const { set, drawn } = top;
  const pieceOf = new Map(top.pieces.flatMap((piece) => piece.strips.map((strip) => [strip, piece] as const)));
  const entryOf = new Map(blocks.map((entry, index) => [keyOf({ ...entry, block: entry.id }), index]));
  return {
    width: set.width,
    height: set.height,
    entries: blocks.map(blockPicture),
    placed: set.placed.map((placed, place): PlacedPicture => {
      const { at, size, turn, path } = placed;
      const entry = entryOf.get(keyOf(placed));
      if (entry === undefined) throw new Error(`the plan lists no entry for the block ${placed.block}`);
      return { entry, at, size, turn, fabrics: drawn[place] ?? null, path };
    }),
    strips: set.strips.map(({ points, fabric, role, path }, strip): StripPicture => {
      const piece = pieceOf.get(strip);
      if (piece === undefined) throw new Error(`the plan lists no piece for the strip ${path}`);
      return { points: flat(points), fabric, role, path, label: piece.label, cut: piece.cut.size };
    }),
    cloths: clothsOf(quilt),
  };
};

export const clothsOf = ({ fabrics }: QuiltPlan['quilt']): QuiltPicture['cloths'] =>
  fabrics.map(({ id, name, colour }) => ({ id, name: name || id, colour }));

const keyOf = ({
  block,
  colouring,
  mirror,
}: {
  readonly block: string;
  readonly colouring: string;
  readonly mirror: boolean;
}) => JSON.stringify([block, colouring, mirror]);

export const blockPicture = (block: BlockPlan): BlockPicture => {
  const pieces = new Map(block.pieces.map((piece) => [piece.label, piece]));
  return {
    id: block.id,
    title: block.title || block.id,
    colouring: block.colouring,
    mirror: block.mirror,
    size: block.finished,
    patches: block.patches.map(({ piece, fabric, points }) => ({
      points: flat(points),
      fabric,
      tone: pieces.get(piece)?.tone ?? '',
      label: piece,
      cut: pieces.get(piece)?.cut.size ?? [0, 0],
    })),
  };
};

export const figuresOf = (plan: QuiltPlan): JobFigures => {
  const { quilt, top, fabrics, finish, time, notes } = plan;
  const buy = new Map<'yd' | 'm' | 'sheets', number>();
  for (const { buy: bought } of fabrics) buy.set(bought.unit, (buy.get(bought.unit) ?? 0) + bought.amount);
  return {
    blocks: quilt.blocks.length,
    top: [top.set.width, top.set.height],
    cloths: fabrics.length,
    values: notes.some((note) => note.code === 'fabric/values-near' && !isReversed(note)) ? 'near' : 'apart',
    buy: [...buy].map(([unit, amount]) => ({ unit, amount })),
    leftOver: leftOverOf(plan),
    seams: time.seams,
    minutes: time.minutes,
    cutting: time.cutting,
    sewing: time.sewing,
    finishing: time.finishing,
    binding: finish.binding?.length ?? null,
    backing: finish.backing === null ? null : [finish.backing.width, finish.backing.height],
  };
};

const leftOverOf = ({ fabrics }: QuiltPlan): number => {
  let laid = 0;
  let used = 0;
  for (const { laid: on, pieces } of fabrics) {
    const lengths = 'sheets' in on ? on.sheets : [on.layout];
    for (const { width, length } of lengths) laid += width * length;
    for (const { cut, count, outlines } of pieces) {
      const nested = outlines.reduce((all, outline) => all + Math.abs(signedArea(outline)), 0);
      used += count * (nested > 0 ? nested : cut[0] * cut[1]);
    }
  }
  return laid > 0 ? Math.max(0, 1 - used / laid) : 0;
};
