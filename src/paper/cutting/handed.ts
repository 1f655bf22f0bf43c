// Cloth as a left-handed cutter lays it out: what lies along a strip is counted from the right. Places change, and no piece is
// turned over: the cloth lies right side up for either hand. What is bought, cut and kept, and in which order, is the same.
import type { ClothPiece, FabricPlan } from '#craft';
import type { LaidOut, LaidPiece, LaidSheets, Layout, Strip, StripPart } from '#craft/cutting';
import type { ClothDirections, PatternCut } from '#craft/directions';
import { at as point } from '#ground/plane';

export type Hand = 'right' | 'left';

/** A cloth laid out for a hand: by its directions that hand cuts. */
export interface HandedCloth {
  readonly fabric: FabricPlan;
  readonly hand: Hand;
}

/** @returns for the right hand where pieces lie round a motif: the cloth says then where they lie, whoever cuts */
export const forHand = (fabric: FabricPlan, hand: Hand): HandedCloth =>
  hand === 'right' || fabric.motifs !== null
    ? { fabric, hand: 'right' }
    : { fabric: mirroredCloth(fabric), hand: 'left' };

const mirroredCloth = (fabric: FabricPlan): FabricPlan => {
  const { laid, directions, ends, fold } = fabric;
  const { width } = laid.layout;
  return {
    ...fabric,
    pieces: fabric.pieces.map(turnedStrip),
    laid: mirroredLaid(laid),
    directions: mirroredDirections(directions),
    ends: ends && {
      ...ends,
      used: ends.used.map((end) => ({ ...end, layout: mirrored(end.layout) })),
      directions: ends.directions && mirroredDirections(ends.directions),
    },
    fold: fold && {
      ...fold,
      chosen: fold.chosen && {
        folded: mirrored(fold.chosen.folded),
        open: mirrored({ ...fold.chosen.open, width }),
        directions: mirroredDirections(fold.chosen.directions),
      },
    },
  };
};

/** A strip that pieces nest in is cut from its other end: the whole of it lies turned by a half turn, and so gives the same pieces. */
const turnedStrip = (piece: ClothPiece): ClothPiece => {
  const [width, height] = piece.cut;
  if (piece.way === null) return piece;
  return {
    ...piece,
    outlines: piece.outlines.map((outline) => outline.map(({ x, y }) => point(width - x, height - y))),
  };
};

const mirroredLaid = (laid: LaidOut | LaidSheets): LaidOut | LaidSheets =>
  'sheets' in laid
    ? { ...laid, layout: mirrored(laid.layout), sheets: laid.sheets.map((sheet) => ({ ...sheet, ...mirrored(sheet) })) }
    : { ...laid, layout: mirrored(laid.layout) };

const mirrored = (layout: Layout): Layout => ({
  ...layout,
  strips: layout.strips.map((strip) => mirroredStrip(strip, layout.width)),
});

const from = <L extends number>(width: L, taken: number): L => (width - taken) as L;

const mirroredStrip = (strip: Strip, width: Layout['width']): Strip => ({
  ...strip,
  parts: strip.parts.flatMap((part) => mirroredPart(part, width)),
});

/** Pieces of a part begin at one edge: where they are of different widths, those of one width after another. */
const mirroredPart = ({ at, pieces }: StripPart, width: Layout['width']): readonly StripPart[] => {
  const runs: { readonly width: StripPart['width']; readonly pieces: LaidPiece[] }[] = [];
  for (const piece of pieces) {
    const run = runs.at(-1);
    if (run?.width === piece.cut[0]) run.pieces.push(piece);
    else runs.push({ width: piece.cut[0], pieces: [piece] });
  }
  return runs.map((run) => ({ ...run, at: from(width, at + run.width) }));
};

const mirroredDirections = (directions: ClothDirections): ClothDirections => ({
  ...directions,
  parts: directions.parts.map((part) => ({
    ...part,
    layout: mirrored(part.layout),
    heights: part.heights.map((height) => ({
      ...height,
      patterns: height.patterns.map((pattern) => mirroredPattern(pattern, part.layout.width)),
    })),
  })),
});

const mirroredPattern = (pattern: PatternCut, width: Layout['width']): PatternCut => ({
  ...pattern,
  strip: mirroredStrip(pattern.strip, width),
  cuts: pattern.cuts.map((cut) => ({ ...cut, at: from(width, cut.at) })),
  offcuts: pattern.offcuts.map((offcut) => ({
    ...offcut,
    at: [from(width, offcut.at[0] + offcut.size[0]), offcut.at[1]],
  })),
});
