// A drawing as the drafting table shows it: its patches in their cloths, at the block's size.
import type { QuiltDocument } from '#craft/design';
import type { Drawn } from '#craft/redrawing';
import { innerPoint, isInside } from '#ground/plane';
import type { BlockAnswer } from '#workroom/compute';
import { patchKey, type Scene, type SizeWords, type Thing } from '#workroom/drawing';
import { type Block, clothOf } from './block-edits.ts';
import { placeText } from './place-text.ts';

export interface DrawnSceneOf {
  readonly drawn: Drawn;
  readonly block: Block;
  /** Finished, without a frame. */
  readonly size: readonly [width: number, height: number];
  readonly fabrics: QuiltDocument['fabrics'];
  /** What follows from the block as it stands: names pieces and their cuts. Null while it does not. */
  readonly answer: BlockAnswer | null;
  readonly sizeWords: SizeWords;
}

export const sceneOfDrawn = (of: DrawnSceneOf): Scene => {
  const { drawn, block, size, fabrics } = of;
  const scale = [size[0] / drawn.grid[0], size[1] / drawn.grid[1]] as const;
  const shapes = drawn.patches.map(({ points, tone }) => ({
    points: points.flatMap(({ x, y }) => [x * scale[0], y * scale[1]]),
    fabric: clothOf(block, tone),
  }));
  const pieces = piecesOf(of);
  const nameOf = (id: string): string => fabrics.find((one) => one.id === id)?.name || id;
  return {
    width: size[0],
    height: size[1],
    sprites: [{ size, shapes }],
    placed: [{ sprite: 0, matrix: [1, 0, 0, 1, 0, 0], box: [0, 0, size[0], size[1]], fabrics: null }],
    loose: [],
    colours: new Map(fabrics.map(({ id, colour }) => [id, colour])),
    things: shapes.map(({ points, fabric }, index): Thing => {
      const piece = pieces[index];
      const first = drawn.patches[index]?.points[0];
      const where = first === undefined ? '' : `, from ${placeText(first)}`;
      const cloth = nameOf(fabric);
      const name = piece == null ? `Patch, ${cloth}${where}` : `Piece ${piece.label}, ${cloth}, cut ${piece.cut}`;
      return { key: patchKey(index), name, outline: points, inside: null };
    }),
    shapes: shapes.length,
  };
};

interface NamedPiece {
  readonly label: string;
  readonly cut: string;
}

/** The piece that each patch becomes; none while the block is another than the one that was answered. */
const piecesOf = ({ drawn, size, answer, sizeWords }: DrawnSceneOf): readonly (NamedPiece | null)[] => {
  if (answer === null) return [];
  // a frame round the drawing is in the answer's picture
  const [dx, dy] = [(answer.picture.size[0] - size[0]) / 2, (answer.picture.size[1] - size[1]) / 2];
  const known = answer.picture.patches.map(({ points, label, cut }) => ({
    piece: { label, cut: sizeWords(cut) },
    outline: points.flatMap((x, i) => (i % 2 === 0 ? [{ x: x - dx, y: (points[i + 1] as number) - dy }] : [])),
  }));
  const [across, down] = [size[0] / drawn.grid[0], size[1] / drawn.grid[1]];
  return drawn.patches.map(({ points }) => {
    const inner = innerPoint(points);
    const place = { x: inner.x * across, y: inner.y * down };
    return known.find(({ outline }) => isInside(place, outline))?.piece ?? null;
  });
};
