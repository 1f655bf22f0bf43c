// A cloth laid out for cutting, to scale: each kind of strip once with its number, the pieces in it with
// their marks, what is left over pale. A long cloth goes on over several pictures of one scale.

import type { FabricPlan } from '#craft';
import type { LaidPiece, StripPart } from '#craft/cutting';
import type { Unit } from '#craft/measure';
import type { Box } from '#ground/plane';
import { boxOf } from '#ground/plane';
import type { ClothSign } from '#paper/cloth';
import type { StripKind } from '#paper/cutting';
import { cutMark, stripKindsOf } from '#paper/cutting';
import { lengthOnPaper } from '#paper/lengths';
import { dimension } from './arrow.ts';
import { cutEdgePt, hairlinePt, hush, inkOn, lettering, softInk } from './ink.ts';
import { drawLabels, fitsInside } from './label.ts';
import { rectOutline } from './placed.ts';
import type { Drawing } from './svg.ts';
import { element, picture } from './svg.ts';

export interface ClothPicture {
  readonly fabric: FabricPlan;
  readonly sign: ClothSign;
  readonly unit: Unit;
  readonly fitPt: readonly [width: number, height: number];
  readonly alt: (part: number, parts: number) => string;
}

const notesPt = 104;
const headPt = 16;
const betweenPt = 5;
const leastRowPt = 10;
/** A long cloth is drawn smaller, so that it does not fill page after page; but never narrower than this. */
const wishedHeightPt = 340;
const leastWidthPt = 130;
/** Never larger than this many points an inch of cloth, or a small cloth would fill its page. */
const mostScale = { in: 9, cm: 9 / 2.54 } as const;

export const drawCloth = (of: ClothPicture): readonly Drawing[] => {
  const { layout } = of.fabric.laid;
  const kinds = stripKindsOf(layout);
  const tallest = Math.max(...kinds.map(({ strip }) => strip.height));
  const all = kinds.reduce((sum, { strip }) => sum + strip.height, 0);
  const scale = Math.min(
    (of.fitPt[0] - notesPt - 2) / layout.width,
    (of.fitPt[1] - headPt - betweenPt) / tallest,
    Math.max(wishedHeightPt / all, leastWidthPt / layout.width),
    mostScale[of.unit],
  );
  const pages = inPages(kinds, scale, of.fitPt[1] - headPt);
  return pages.map((page, index) => drawPage(of, { kinds: page, scale, alt: of.alt(index + 1, pages.length) }));
};

const rowPt = (kind: StripKind, scale: number): number => Math.max(kind.strip.height * scale, leastRowPt) + betweenPt;

const inPages = (kinds: readonly StripKind[], scale: number, room: number): readonly (readonly StripKind[])[] => {
  const pages: StripKind[][] = [];
  let left = 0;
  for (const kind of kinds) {
    const takes = rowPt(kind, scale);
    if (pages.length === 0 || takes > left + 1e-9) {
      pages.push([]);
      left = room;
    }
    pages.at(-1)?.push(kind);
    left -= takes;
  }
  return pages;
};

const drawPage = (
  of: ClothPicture,
  page: { readonly kinds: readonly StripKind[]; readonly scale: number; readonly alt: string },
): Drawing => {
  const { scale } = page;
  const widthPt = of.fabric.laid.layout.width * scale;
  const parts: string[] = [
    dimension({
      from: { x: 1, y: 3.5 },
      to: { x: 1 + widthPt, y: 3.5 },
      text: `${lengthOnPaper(of.fabric.laid.layout.width, of.unit)} usable width`,
      sizePt: 7,
    }),
  ];
  let y = headPt;
  for (const kind of page.kinds) {
    parts.push(...drawStrip(of, { kind, scale, y }));
    y += rowPt(kind, scale);
  }
  return picture({ widthPt: widthPt + 2 + notesPt, heightPt: y, alt: page.alt, parts });
};

const drawStrip = (
  of: ClothPicture,
  row: { readonly kind: StripKind; readonly scale: number; readonly y: number },
): readonly string[] => {
  const { kind, scale, y } = row;
  const { sign } = of;
  const widthPt = of.fabric.laid.layout.width * scale;
  const heightPt = kind.strip.height * scale;
  const pieces = kind.strip.parts.flatMap((part) =>
    part.pieces.map((piece) => ({ piece, rect: pieceRect({ part, piece, scale, y }) })),
  );
  const note = `${kind.count} ${kind.count === 1 ? 'strip' : 'strips'} ${lengthOnPaper(kind.strip.height, of.unit)}`;
  return [
    element('rect', {
      x: 1,
      y,
      width: widthPt,
      height: heightPt,
      fill: hush,
      stroke: softInk,
      'stroke-width': hairlinePt,
      'stroke-dasharray': '2 1',
    }),
    ...pieces.map(({ rect }) =>
      element('rect', { ...rect, fill: sign.colour, stroke: inkOn(sign.colour), 'stroke-width': cutEdgePt }),
    ),
    ...markedPieces(of, row),
    lettering({ text: note, x: widthPt + 9, y: y + heightPt / 2, sizePt: 8, anchor: 'start', weight: 600 }),
  ];
};

const pieceRect = (of: {
  readonly part: StripPart;
  readonly piece: LaidPiece;
  readonly scale: number;
  readonly y: number;
}): Box => ({
  x: 1 + of.part.at * of.scale,
  y: of.y + of.piece.at * of.scale,
  width: of.piece.cut[0] * of.scale,
  height: of.piece.cut[1] * of.scale,
});

/** A mark on every piece; where pieces are too small for it, one mark with their number over equal neighbours. */
const markedPieces = (
  of: ClothPicture,
  row: { readonly kind: StripKind; readonly scale: number; readonly y: number },
): readonly string[] => {
  const fill = inkOn(of.sign.colour);
  const labelled = (runs: readonly (readonly Placed[])[]) =>
    runs.map((run) => {
      const mark = cutMark(of.sign.letter, run[0]?.piece.of ?? 0);
      return {
        text: run.length === 1 ? mark : `${run.length}×${mark}`,
        outline: rectOutline(
          boxOf(run.flatMap((one) => rectOutline(pieceRect({ ...one, scale: row.scale, y: row.y })))),
        ),
        fill,
      };
    });
  const all = row.kind.strip.parts.flatMap((part) => part.pieces.map((piece) => ({ part, piece })));
  const alone = labelled(all.map((one) => [one]));
  const tooSmall = all.filter((_, i) => {
    const label = alone[i];
    return label !== undefined && !fitsInside(label);
  });
  return drawLabels({
    labels: [...alone.filter(fitsInside), ...labelled(neighbours(tooSmall))],
    bounds: { x: 0, y: 0, width: 0, height: 0 },
    tooSmall: 'leave-out',
  });
};

interface Placed {
  readonly part: StripPart;
  readonly piece: LaidPiece;
}

/** Runs of one size as it lies: down one part, or along parts that hold one such piece each. */
const neighbours = (all: readonly Placed[]): readonly (readonly Placed[])[] => {
  const runs: Placed[][] = [];
  for (const one of all) {
    const before = runs.at(-1)?.at(-1);
    const isSame = before !== undefined && before.piece.of === one.piece.of && before.piece.turned === one.piece.turned;
    const isNext =
      before !== undefined &&
      (before.part === one.part ||
        (before.part.pieces.length === 1 && one.part.pieces.length === 1 && before.piece.at === one.piece.at));
    if (isSame && isNext) runs.at(-1)?.push(one);
    else runs.push([one]);
  }
  return runs;
};
