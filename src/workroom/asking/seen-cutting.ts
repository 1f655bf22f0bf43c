// The cloths of a plan as they are cut: what is bought of each, and one of them unrolled to scale with every piece where it lies.
import type { FabricPlan, PieceUse, QuiltPlan } from '#craft';
import type { Layout } from '#craft/cutting';
import { type ClothDirections, type CutPart, patternsBy } from '#craft/directions';
import { type ClothSign, clothSignsFor, signOf } from '#paper/cloth';
import { forHand, type Hand, type HandedCloth } from '#paper/cutting';
import { inkOn, printWay } from '#paper/drawing';
import { lengthOnPaper, sizeOnPaper } from '#paper/lengths';
import {
  amountLines,
  boughtText,
  boundText,
  clothDirections,
  cutBefore,
  endNamesOf,
  foldedAcross,
  moneyText,
  ownDirections,
  type PieceText,
  pieceTexts,
  sheetNamesOf,
  totalLines,
} from '#paper/pages';
import { capital } from '#paper/words';

export interface CuttingSeen {
  readonly cloths: readonly ClothLine[];
  /** What all of it costs; none where nothing has a price. */
  readonly total: readonly string[];
  /** Null where nothing is cut from the cloth that was asked for. */
  readonly shown: ClothUnrolled | null;
}

/** One cloth in the list. */
export interface ClothLine {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly colour: string;
  /** "1⅜ yd", "5 fat quarters". */
  readonly buy: string;
  /** "" without a price. */
  readonly cost: string;
}

export interface ClothUnrolled {
  readonly id: string;
  readonly letter: string;
  readonly name: string;
  readonly colour: string;
  /** For what is written on it. */
  readonly ink: string;
  readonly panels: readonly Panel[];
  /** By place in the cloth's list. */
  readonly pieces: readonly PieceSeen[];
  /** Which way the upright of the print runs; null where it has none. */
  readonly print: ReturnType<typeof printWay>;
  readonly words: ClothWords;
}

export interface ClothWords {
  readonly bound: string;
  /** What the layout takes, and where the rest of the bought length goes. */
  readonly amounts: readonly (readonly [what: string, amount: string])[];
  /** "" where nothing is worth keeping. */
  readonly kept: string;
  readonly effort: string;
}

export interface PieceSeen extends PieceText {
  readonly uses: readonly PieceUse[];
}

/** Cloth that lies flat in one piece: a length, a sheet, an end at hand, a length folded selvage to selvage. */
export interface Panel {
  /** "" where one panel is all there is. */
  readonly caption: string;
  /** "40 in usable width", as paper has it; "" where the caption says its size. */
  readonly across: string;
  /** So many are cut alike. */
  readonly count: number;
  readonly edges: readonly [left: PanelEdge, right: PanelEdge];
  readonly width: number;
  readonly length: number;
  readonly strips: readonly { readonly at: number; readonly height: number; readonly number: number }[];
  readonly pieces: readonly PanelPiece[];
  /** Worth keeping, by name. */
  readonly remnants: readonly { readonly name: string; readonly box: Box }[];
  /** What is lost to squaring up. */
  readonly squaring: readonly Box[];
}

/** Both selvages lie on each other where cloth is folded. */
export type PanelEdge = 'selvage' | 'selvages' | 'fold' | 'cut';

export interface PanelPiece {
  readonly box: Box;
  /** Place in the cloth's list. */
  readonly of: number;
  /** It lies the other way round than its list has it. */
  readonly turned: boolean;
  /** Place in the panel's strips. */
  readonly strip: number;
}

/** x, y, width, height in the document's unit, from the panel's upper left corner. */
export type Box = readonly [x: number, y: number, width: number, height: number];

export interface CuttingLook {
  /** Null for the first. */
  readonly cloth: string | null;
  readonly hand: Hand;
}

export const seeCutting = (plan: QuiltPlan, { cloth, hand }: CuttingLook): CuttingSeen => {
  const signs = clothSignsFor(plan);
  const fabric = cloth === null ? plan.fabrics[0] : plan.fabrics.find(({ id }) => id === cloth);
  return {
    cloths: plan.fabrics.map((one) => {
      const { letter, name, colour } = signOf(signs, one.id);
      const cost = one.cost === null ? '' : moneyText(one.cost, plan.cost.currency);
      return { id: one.id, letter, name, colour, buy: boughtText(plan, one), cost };
    }),
    total: totalLines(plan, signs),
    shown: fabric === undefined ? null : unrolled({ plan, ...forHand(fabric, hand), sign: signOf(signs, fabric.id) }),
  };
};

interface ClothOf extends HandedCloth {
  readonly plan: QuiltPlan;
  readonly sign: ClothSign;
}

const unrolled = (of: ClothOf): ClothUnrolled => {
  const { plan, fabric, sign } = of;
  return {
    id: fabric.id,
    letter: sign.letter,
    name: sign.name,
    colour: sign.colour,
    ink: inkOn(sign.colour),
    panels: panelsOf(of),
    pieces: pieceTexts(of).map((text, i) => ({ ...text, uses: fabric.pieces[i]?.for ?? [] })),
    print: printWay(plan, fabric),
    words: wordsOf(of),
  };
};

const wordsOf = (of: ClothOf): ClothWords => {
  const { kept, effort } = clothDirections(of);
  return { bound: boundText(of.plan, of.fabric), amounts: amountLines(of.plan, of.fabric), kept, effort };
};

const panelsOf = ({ plan, fabric, hand }: ClothOf): readonly Panel[] => {
  const { laid } = fabric;
  const long = (value: number): string => lengthOnPaper(value, plan.quilt.unit);
  const size = (both: readonly [number, number]): string => sizeOnPaper(both, plan.quilt.unit);
  const usable = (layout: Layout): string => `${long(layout.width)} usable width`;
  return [
    ...cutBefore(fabric).flatMap(({ directions, folded }) =>
      folded === null
        ? sheetPanels({ directions, names: endNamesOf(plan, fabric), size })
        : panelsOn(directions, (part) => ({
            ...flat(part),
            caption: 'Folded selvage to selvage',
            across: `${long(folded.width)} ${foldedAcross(hand)}`,
            edges: hand === 'left' ? ['fold', 'selvages'] : ['selvages', 'fold'],
          })),
    ),
    ...('sheets' in laid
      ? sheetPanels({ directions: ownDirections(fabric), names: sheetNamesOf(plan, fabric), size })
      : panelsOn(ownDirections(fabric), (part) => ({
          ...squared(flat(part), fabric.allowances, laid.motifs !== undefined ? 'motifs' : 'edge'),
          caption: fabric.fold?.chosen ? 'Opened' : cutBefore(fabric).length > 0 ? 'Of what is bought' : '',
          across: usable(part.layout),
          edges: ['selvage', 'selvage'],
        }))),
  ];
};

const panelsOn = (directions: ClothDirections, panel: (part: CutPart) => Panel): readonly Panel[] =>
  directions.parts.map(panel);

const sheetPanels = (of: {
  readonly directions: ClothDirections;
  readonly names: ReturnType<typeof sheetNamesOf>;
  readonly size: (size: readonly [number, number]) => string;
}): readonly Panel[] =>
  of.directions.parts.map((part, i) => {
    const { noun, kind } = of.names(part.sheet ?? 0);
    const many = part.count === 1 ? '' : `, ${part.count} alike`;
    return {
      ...flat(part),
      caption: `${capital(noun)} ${i + 1}${many}${kind === '' ? '' : ` (${kind})`}`,
      // what tells its kind from others may be its size
      across: kind === '' ? of.size([part.layout.width, part.layout.length]) : '',
      edges: ['cut', 'cut'],
    };
  });

/** As it is laid out, from its own upper left corner. */
const flat = (part: CutPart): Omit<Panel, 'caption' | 'across' | 'edges'> => {
  const { layout, count, end } = part;
  const patternOf = patternsBy(part);
  const strips = layout.strips.map((strip) => ({ strip, pattern: patternOf(strip) }));
  const used = layout.strips.reduce((low, { at, height }) => Math.max(low, at + height), 0);
  const isSheet = part.sheet !== null;
  const length = isSheet ? layout.length : used + (end?.size[1] ?? 0);
  return {
    count,
    width: layout.width,
    length,
    strips: strips.map(({ strip: { at, height }, pattern: { number } }) => ({ at, height, number })),
    pieces: layout.strips.flatMap((strip, index) =>
      strip.parts.flatMap((own) =>
        own.pieces.map(
          ({ at, cut, of, turned }): PanelPiece => ({
            box: [own.at, strip.at + at, cut[0], cut[1]],
            of,
            turned: turned && cut[0] !== cut[1],
            strip: index,
          }),
        ),
      ),
    ),
    remnants: [
      ...strips.flatMap(({ strip, pattern }) =>
        pattern.offcuts.flatMap(({ remnant, at, size }) =>
          remnant === null ? [] : [{ name: remnant, box: [at[0], strip.at + at[1], size[0], size[1]] as const }],
        ),
      ),
      ...(end === null || end.remnant === null
        ? []
        : [{ name: end.remnant, box: [0, length - end.size[1], end.size[0], end.size[1]] as const }]),
    ],
    squaring: [],
  };
};

/** With what is squared up at both ends. Where pieces lie on motifs, up to one repeat goes before the corner that they count from. */
const squared = (
  panel: ReturnType<typeof flat>,
  allowances: FabricPlan['allowances'],
  begins: 'edge' | 'motifs',
): ReturnType<typeof flat> => {
  const each = (allowances?.squaring ?? 0) / 2;
  if (each <= 0 || begins === 'motifs') return panel;
  const down = ([x, y, width, height]: Box): Box => [x, y + each, width, height];
  const length = panel.length + 2 * each;
  return {
    ...panel,
    length,
    strips: panel.strips.map((strip) => ({ ...strip, at: strip.at + each })),
    pieces: panel.pieces.map((piece) => ({ ...piece, box: down(piece.box) })),
    remnants: panel.remnants.map((remnant) => ({ ...remnant, box: down(remnant.box) })),
    squaring: [
      [0, 0, panel.width, each],
      [0, length - each, panel.width, each],
    ],
  };
};
