// How does a piece lie on its cloth? Where no print forbids it, as its grain allows; where a print stands upright in the
// quilt, in the one way that brings it upright there.
import type { QuarterTurn } from '#craft/design';
import { type Length, tidy } from '#craft/measure';
import { at, boxOf, type Polygon, quarterTurned } from '#ground/plane';
import type { ClothNature, Cut } from './cloth.ts';

export interface PieceToLay {
  readonly cut: Pick<Cut, 'shape' | 'size' | 'template' | 'stand'>;
  /** Free: may lie either way. Across or along: its first side lies that way (grain). */
  readonly lie: 'free' | 'across' | 'along';
  /**
   * Clockwise turn from the way that `cut` is described to the way the piece lies in the finished quilt. Null where
   * `lie` alone decides, as for binding and backing.
   */
  readonly turn: QuarterTurn | null;
}

export interface Lying {
  readonly cut: readonly [across: Length, along: Length];
  readonly mayTurn: boolean;
  /** Quarter turns clockwise on the cloth from the way that the cut is described; 0 or 1 where a piece is free. */
  readonly quarters: number;
  /** Triangles: quarter turns clockwise on the cloth from the way they lie at 0. */
  readonly standing: 0 | 1 | 2 | 3;
  /** Which diagonal a half-square's square is cut along, as it lies; null where either will do. */
  readonly diagonal: 'rising' | 'falling' | null;
  /** Templates that share it are one. */
  readonly outline: string;
  /**
   * Where the cloth is folded selvage to selvage: a piece serves as this one where its `own` is the other's `mirrored`, as the
   * lower layer gives it; null where the lower layer's print lies the wrong way.
   */
  readonly onFold: { readonly own: string; readonly mirrored: string } | null;
}

/**
 * A print that runs crosswise brings the quilt's upright to the right on the cloth, one that runs lengthwise leaves it up.
 */
export const lyingOf = (piece: PieceToLay, nature: ClothNature): Lying =>
  nature.print === 'none' || piece.turn === null ? freely(piece, nature) : upright(piece, piece.turn, nature);

const freely = (piece: PieceToLay, nature: ClothNature): Lying => {
  // turned by a half turn its grain lies as before, and so does its box
  const faces = piece.cut.template ? facesOf(piece.cut.template.points, [0, 2], nature) : [];
  const cut = laid(piece, nature);
  return {
    cut,
    quarters: cut[0] === piece.cut.size[0] ? 0 : 1,
    mayTurn: piece.lie === 'free',
    standing: 0,
    diagonal: null,
    outline: leastOf(faces),
    onFold: onFoldOf(piece.cut.template?.points ?? [], [0, 2], nature),
  };
};

const upright = ({ cut }: PieceToLay, turn: QuarterTurn, nature: ClothNature): Lying => {
  const quarters = turn / 90 + (nature.printRuns === 'crosswise' ? 1 : 0);
  const [across, along] = cut.size;
  const standing = (((cut.stand ?? 0) / 90 + quarters) % 4) as Lying['standing'];
  const inQuilt = turn / 90;
  const ways = nature.print === 'two-way' ? [inQuilt, inQuilt + 2] : [inQuilt];
  return {
    cut: quarters % 2 === 0 ? [across, along] : [along, across],
    quarters,
    mayTurn: false,
    standing,
    // a right angle at the upper left or lower right has its long side rising to the right
    diagonal: cut.shape === 'half-square' ? (standing % 2 === 0 ? 'rising' : 'falling') : null,
    outline: leastOf(cut.template ? facesOf(cut.template.points, ways, nature) : []),
    onFold: onFoldOf(cut.template?.points ?? [], ways, nature),
  };
};

/** A print that runs from selvage to selvage runs back again in the lower layer. */
const onFoldOf = (points: Polygon, ways: readonly number[], nature: ClothNature): Lying['onFold'] => {
  if (nature.print === 'one-way' && nature.printRuns === 'crosswise') return null;
  const mirrored = points.map((p) => at(-p.x, p.y)).toReversed();
  const least = (outline: Polygon): string => (outline.length === 0 ? '' : leastOf(facesOf(outline, ways, nature)));
  return { own: least(points), mirrored: least(mirrored) };
};

/**
 * A free piece lies with its long side across, a template as it is drawn, unless the cloth is too narrow for it or the
 * sheet too short.
 */
const laid = ({ cut, lie }: PieceToLay, nature: ClothNature): readonly [Length, Length] => {
  const [a, b] = cut.size;
  if (lie === 'across') return [a, b];
  if (lie === 'along') return [b, a];
  const [long, short] = a >= b || cut.template ? [a, b] : [b, a];
  const fits = long <= nature.width + 1e-9 && short <= (nature.length ?? Number.POSITIVE_INFINITY) + 1e-9;
  return fits ? [long, short] : [short, long];
};

/** Every outline that may stand for this one, as text, as it lies in the quilt after so many quarter turns. */
const facesOf = (points: Polygon, ways: readonly number[], nature: ClothNature): readonly string[] =>
  ways.flatMap((quarters) => {
    const turned = points.map((p) => quarterTurned(p, quarters));
    // left and right exchanged, a print stands as upright as before
    const mirrored = turned.map((p) => at(-p.x, p.y)).toReversed();
    return [turned, ...(nature.reversible ? [mirrored] : [])].map(outlineText);
  });

/** Corners in walking order from the least one, so that it does not matter where a list begins. */
const outlineText = (points: Polygon): string => {
  const box = boxOf(points);
  const corners = points.map((p) => `${tidy(p.x - box.x).toFixed(6)},${tidy(p.y - box.y).toFixed(6)}`);
  const first = corners.indexOf(leastOf(corners));
  return [...corners.slice(first), ...corners.slice(0, first)].join(' ');
};

const leastOf = (texts: readonly string[]): string => texts.toSorted()[0] ?? '';
