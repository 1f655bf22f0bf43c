// What could have made the sizes what they are? A habit of the seam alone; or a habit, and one kind of piece cut wrong, one way or
// both; or a habit, and units trimmed to a wrong mark; or a habit, and two pieces that changed places. Each says by how much it would
// move every size.
import type { CutTerm, SewnBlock, SizeModel } from '#craft/accuracy';

export type Explanation =
  | { readonly kind: 'habit' }
  /** All pieces of one label are cut too large, or too small; of a rectangle one side. */
  | { readonly kind: 'cut'; readonly piece: string; readonly side: 0 | 1 }
  /** The same, both ways, by as much or not: of a rectangle its sides, of other pieces across and down the block. */
  | { readonly kind: 'cut-both'; readonly piece: string }
  /** What a step made is trimmed to another size than its own, both ways by as much. */
  | { readonly kind: 'trim'; readonly step: number }
  /** Of several of one label in a top a single one, or one of those that the sizes measured do not tell apart: by their places. */
  | { readonly kind: 'one'; readonly piece: string; readonly side: 0 | 1; readonly at: readonly number[] }
  /** Each lies where the other should: by their labels. */
  | { readonly kind: 'swap'; readonly pieces: readonly [string, string] };

export interface Candidate {
  readonly explanation: Explanation;
  /** What a size grows by: for each unit that the piece is too large, or by the swap as it is. 0 where it does not tell. */
  readonly moves: (model: SizeModel) => number;
  /** Whether how much it moves them is still to be found. */
  readonly isFree: boolean;
  /** What a size grows by for each unit of a second slip, that is found besides. */
  readonly also?: (model: SizeModel) => number;
}

/** What each slip whose amount is still to be found does to a size. */
export const slipsOf = ({ moves, isFree, also }: Candidate): readonly Candidate['moves'][] =>
  isFree ? [moves, ...(also === undefined ? [] : [also])] : [];

export const habitAlone: Candidate = { explanation: { kind: 'habit' }, moves: () => 0, isFree: false };

/** Pieces of the sizes measured, and pairs of them; in the order of the pieces' labels. */
export const candidatesFor = (block: SewnBlock, models: readonly SizeModel[]): readonly Candidate[] => {
  const terms = termsByPiece(models);
  const single = [...terms.values()].map(
    ({ piece, side }): Candidate => ({
      explanation: { kind: 'cut', piece, side },
      moves: (model) => grows(model, piece, side),
      isFree: true,
    }),
  );
  const sides = [...terms.values()];
  return [habitAlone, ...single, ...wrongBothWays(models, sides), ...trims(models), ...swaps(block, sides)];
};

/**
 * Single things of a top that lie there several times. Where the sizes go over all of a kind alike, that stands for them; those that
 * the sizes go over alike are one explanation.
 */
export const singlesFor = (models: readonly SizeModel[]): readonly Candidate[] => {
  const kinds = new Map(
    [...termsByPiece(models)].map(([name, { piece, side }]) => [
      name,
      shapeOf(models.map((model) => grows(model, piece, side))),
    ]),
  );
  const singles = new Map<string, { readonly term: CutTerm; readonly at: number[] }>();
  const seen = new Set<string>();
  for (const term of models.flatMap(({ cuts }) => cuts)) {
    const name = `${term.patch} ${term.side}`;
    if (seen.has(name)) continue;
    seen.add(name);
    const kind = `${term.piece} ${term.side}`;
    const shape = shapeOf(models.map((model) => growsAt(model, term.patch, term.side)));
    if (shape === kinds.get(kind)) continue;
    const known = singles.get(`${kind} ${shape}`);
    if (known) known.at.push(term.patch);
    else singles.set(`${kind} ${shape}`, { term, at: [term.patch] });
  }
  return [...singles.values()].map(
    ({ term: { patch, piece, side }, at }): Candidate => ({
      explanation: { kind: 'one', piece, side, at },
      moves: (model) => growsAt(model, patch, side),
      isFree: true,
    }),
  );
};

/** The same for what moves all sizes in one proportion. */
const shapeOf = (moves: readonly number[]): string => {
  const first = moves.find((by) => Math.abs(by) > 1e-9) ?? 1;
  return moves.map((by) => (by / first).toFixed(6)).join();
};

const growsAt = ({ cuts }: SizeModel, patch: number, side: 0 | 1): number =>
  cuts.reduce((all, term) => (term.patch === patch && term.side === side ? all + term.grows : all), 0);

const wrongBothWays = (models: readonly SizeModel[], sides: readonly PieceSide[]): readonly Candidate[] =>
  [...new Set(sides.map(({ piece }) => piece))].flatMap((piece): readonly Candidate[] => {
    const own = sides.filter((one) => one.piece === piece).map(({ side }) => side);
    const [first, second] =
      own.length === 2
        ? ([0, 1] as const).map((side) => (model: SizeModel) => grows(model, piece, side))
        : (['across', 'down'] as const).map(
            (way) => (model: SizeModel) => (model.way === way ? grows(model, piece, own[0] as 0 | 1) : 0),
          );
    const tells = (moves: Candidate['moves'] | undefined): moves is Candidate['moves'] =>
      moves !== undefined && models.some((model) => Math.abs(moves(model)) > 1e-9);
    if (!tells(first) || !tells(second)) return [];
    return [{ explanation: { kind: 'cut-both', piece }, moves: first, also: second, isFree: true }];
  });

const trims = (models: readonly SizeModel[]): readonly Candidate[] =>
  [...new Set(models.flatMap(({ trims: terms }) => (terms ?? []).map(({ step }) => step)))]
    .sort((a, b) => a - b)
    .map((step) => ({
      explanation: { kind: 'trim', step },
      moves: ({ trims: terms }) =>
        (terms ?? []).reduce((all, term) => (term.step === step ? all + term.grows : all), 0),
      isFree: true,
    }));

type PieceSide = Pick<CutTerm, 'piece' | 'side'>;

const termsByPiece = (models: readonly SizeModel[]): ReadonlyMap<string, PieceSide> =>
  new Map(models.flatMap(({ cuts }) => cuts.map(({ piece, side }) => [`${piece} ${side}`, { piece, side }] as const)));

const grows = ({ cuts }: SizeModel, piece: string, side: 0 | 1): number =>
  cuts.reduce((all, term) => (term.piece === piece && term.side === side ? all + term.grows : all), 0);

/** Rectangles that occur once each and are of different widths: the side that a size goes over is the width of either. */
const swaps = (block: SewnBlock, sides: readonly PieceSide[]): readonly Candidate[] => {
  const single = sides.flatMap(({ piece, side }) => {
    const isAlone = block.patches.filter((patch) => patch.piece === piece).length === 1;
    const cut = block.pieces.find(({ label }) => label === piece)?.cut;
    const width = cut?.size[side];
    return isAlone && cut?.shape === 'rectangle' && width !== undefined && width === Math.min(...cut.size)
      ? [{ piece, side, width }]
      : [];
  });
  return single.flatMap((a, i) =>
    single.slice(i + 1).flatMap((b): readonly Candidate[] => {
      const wider = b.width - a.width;
      if (Math.abs(wider) < 1e-9) return [];
      return [
        {
          explanation: { kind: 'swap', pieces: [a.piece, b.piece] },
          moves: (model) => wider * (grows(model, a.piece, a.side) - grows(model, b.piece, b.side)),
          isFree: false,
        },
      ];
    }),
  );
};
