// The cloths of a plan: everything cut from each, its layout with a bound, and what to buy.
import {
  allowancesFor,
  type ClothLine,
  type ClothNature,
  type Cut,
  type CuttingProblem,
  type Demand,
  demandsOf,
  type Easing,
  joiningRun,
  type LaidOut,
  type LaidSheets,
  ledgerOf,
  type MotifRepeat,
  onSmallerSheets,
  planLayout,
  planOnMotifs,
  planSheets,
  purchaseFor,
  shopStepFor,
  type Wanted,
} from '#craft/cutting';
import { type Fabric, joiningSheet, type PrintRepeat, type QuarterTurn, type Quilt } from '#craft/design';
import { directionsFor } from '#craft/directions';
import { lightnessOf, type Value, valuesOf } from '#craft/fabric';
import { type Length, length } from '#craft/measure';
import type { PlacedBlock } from '#craft/setting';
import type { IntegerSolver, ShopStep } from '#craft/strips';
import { fromDecimal, sum, toNumber } from '#ground/exact';
import { stockBought, stockOf } from './bought-as.ts';
import { noLongerThanApart } from './cloth-apart.ts';
import { costOfCloth, easingFor, ladderOf } from './cloth-ease.ts';
import { layWithEnds } from './cloth-ends.ts';
import { laidAs, layOnFold } from './cloth-fold.ts';
import type { BlockPlan, CostPlan, FabricPlan, FinishPlan, PieceUse, TopPiece, TopPlan } from './plan.ts';
import type { DrawnCloths } from './scrap-plan.ts';

export type WantedPiece = Wanted<Omit<PieceUse, 'count'>>;

export interface ClothSearch {
  /** Steps of layout search a cloth; 0: level heuristics only. */
  readonly steps: number;
  readonly solver: IntegerSolver | null;
  /** Where only what has to be bought is of interest, and not how it is cut. */
  readonly until?: 'purchase';
}

export type Natures = ReadonlyMap<string, ClothNature>;

export const naturesOf = (quilt: Quilt): Natures =>
  new Map(
    quilt.fabrics.map((fabric) => {
      const { id, usableWidth, bought, print, printRuns, reversible } = fabric;
      const stock = stockOf(fabric, quilt);
      const sheet = joiningSheet(bought);
      return [
        id,
        {
          width: length(toNumber(usableWidth)),
          length: bought.kind === 'sheets' ? length(toNumber(bought.size[1])) : null,
          ...(stock === undefined ? {} : { stock }),
          ...(sheet === null ? {} : { joining: [length(toNumber(sheet[0])), length(toNumber(sheet[1]))] }),
          ...(fabric.repeat === null ? {} : { repeat: repeatOf(fabric.repeat) }),
          print,
          printRuns,
          reversible,
        },
      ];
    }),
  );

const repeatOf = ({ along, across, motif }: PrintRepeat): MotifRepeat => ({
  along: length(toNumber(along)),
  across: across && length(toNumber(across)),
  motif: [length(toNumber(motif[0])), length(toNumber(motif[1]))],
});

/** Pieces of the blocks, as drawn; in a cloth whose print stands upright those of turned blocks stand apart. */
export const blockPieces = (of: {
  readonly blocks: readonly BlockPlan[];
  readonly placed: readonly PlacedBlock[];
  readonly drawn: DrawnCloths;
  readonly natures: Natures;
  readonly pathOf: (block: string) => string;
  /** Tones of a block whose pieces are cut round a motif. */
  readonly motifsOf: (block: string) => readonly string[];
}): readonly WantedPiece[] =>
  of.blocks.flatMap((block) => {
    const cloths = clothsOf(block, of);
    const motifs = of.motifsOf(block.id);
    return block.pieces.flatMap((piece) =>
      (cloths.get(piece.label) ?? []).map(
        ({ fabric, turn, count }): WantedPiece => ({
          fabric,
          ...(motifs.includes(piece.tone) && of.natures.get(fabric)?.repeat !== undefined
            ? { cut: { ...templateOf(piece.cut), ways: [], pair: null }, motif: true }
            : { cut: templateOf(piece.cut) }),
          lie: 'free',
          turn,
          count,
          path: of.pathOf(block.id),
          use: {
            role: 'block',
            block: block.id,
            colouring: block.colouring,
            mirror: block.mirror,
            turn,
            label: piece.label,
          },
        }),
      ),
    );
  });

/** Whether it comes from strips is chosen for the cloths at hand, which need not be those that it was planned on. */
const templateOf = (cut: Cut): Cut => cut.alone ?? cut;

interface ClothUse {
  readonly fabric: string;
  /** Null where it does not matter. */
  readonly turn: QuarterTurn | null;
  count: number;
}

/** By label of an entry's pieces: the cloths that they are cut from, and in which turns, in the order of first use. */
const clothsOf = (
  entry: BlockPlan,
  of: { readonly placed: readonly PlacedBlock[]; readonly drawn: DrawnCloths; readonly natures: Natures },
): ReadonlyMap<string, readonly ClothUse[]> => {
  const uses = new Map<string, ClothUse[]>();
  of.placed.forEach(({ block, colouring, mirror, turn: inTop }, place) => {
    if (block !== entry.id || colouring !== entry.colouring || mirror !== entry.mirror) return;
    // on point the print follows the block, an eighth of a turn off upright
    const turn = (inTop - (inTop % 90)) as QuarterTurn;
    const drawn = of.drawn[place];
    entry.patches.forEach((patch, i) => {
      const fabric = drawn?.[i] ?? patch.fabric;
      const lies = of.natures.get(fabric)?.print === 'none' ? null : turn;
      const list = uses.get(patch.piece) ?? [];
      uses.set(patch.piece, list);
      const known = list.find((use) => use.fabric === fabric && use.turn === lies);
      if (known) known.count++;
      else list.push({ fabric, turn: lies, count: 1 });
    });
  });
  return uses;
};

/**
 * Pieces of the top: strips in one piece may lie either way, joined ones and borders keep their grain. What a print that
 * stands upright allows is in their cuts already.
 */
export const topPieces = (top: TopPlan, natures: Natures): readonly WantedPiece[] =>
  top.pieces.flatMap((piece) =>
    piece.joinedFrom.map((cloth): WantedPiece => {
      const isGrained = piece.role === 'border' || piece.role === 'spacer';
      const isPrinted = natures.get(piece.fabric)?.print !== 'none';
      const free = piece.joinedFrom.length === 1 && !isGrained && !isPrinted;
      const use = {
        role: piece.role,
        block: null,
        colouring: null,
        mirror: false,
        turn: null,
        label: piece.label,
      } as const;
      return {
        fabric: piece.fabric,
        cut: { ...piece.cut, size: cloth, shape: piece.cut.gives === 1 ? shapeOf(cloth) : piece.cut.shape },
        lie: free ? 'free' : 'across',
        // triangles tell by themselves how they lie in the quilt
        turn: piece.cut.gives > 1 ? 0 : null,
        count: piece.count,
        path: pathOf(top, piece),
        use,
      };
    }),
  );

type FinishRole = 'binding' | 'backing' | 'sleeve' | 'label';

/** Strips or squares of the binding, panels of the backing, sleeve and label; their cuts are [across the cloth, along it] and stay so. */
export const finishPieces = (finish: FinishPlan, natures: Natures): readonly WantedPiece[] => {
  const { binding, backing, sleeve, label } = finish;
  const cut =
    (role: FinishRole, fabric: string) =>
    (size: readonly [Length, Length], count: number): WantedPiece => ({
      fabric,
      cut: flat(size),
      lie: 'across',
      // a label is read: its print stands upright; the others are cut as they lie on their cloth already
      turn: role === 'label' ? 0 : null,
      count,
      path: `/finish/${role}`,
      use: { role, block: null, colouring: null, mirror: false, turn: null, label: role },
    });
  const one = (role: FinishRole, fabric: string, sizes: readonly (readonly [Length, Length])[]) =>
    sizes.map((size) => cut(role, fabric)(size, 1));
  const { bias } = binding ?? { bias: null };
  return [
    ...(binding && !bias ? [cut('binding', binding.fabric)(bindingStrip(binding, natures), binding.strips)] : []),
    ...(binding && bias ? [cut('binding', binding.fabric)([bias.side, bias.side], bias.squares)] : []),
    ...(backing ? one('backing', backing.fabric, backing.cuts) : []),
    ...(sleeve ? one('sleeve', sleeve.fabric, sleeve.cuts) : []),
    ...(label ? one('label', label.fabric, [label.cut]) : []),
  ];
};

/** Across the cloth, or along the longer side of a sheet. */
const bindingStrip = (
  { fabric, cut }: NonNullable<FinishPlan['binding']>,
  natures: Natures,
): readonly [Length, Length] => {
  const { long, runs } = joiningRun(natures.get(fabric) as ClothNature, cut);
  return runs === 'across' ? [long, cut] : [cut, long];
};

/** One entry per used cloth in the document's order, or every piece that does not fit its cloth. */
export const planCloths = (of: {
  readonly quilt: Quilt;
  readonly pieces: readonly WantedPiece[];
  readonly natures: Natures;
  readonly search: ClothSearch;
  /** None: every piece lies as it is listed. */
  readonly turning?: 'as-they-may' | 'none';
}): { readonly fabrics: readonly FabricPlan[]; readonly problems: readonly CuttingProblem[] } => {
  const { lines, problems } = ledgerOf(of.pieces, of.natures);
  if (problems.length > 0) return { fabrics: [], problems };
  const lightness = new Map(
    of.quilt.fabrics.flatMap(({ id, colour }) => (lines.has(id) ? [[id, lightnessOf(colour)] as const] : [])),
  );
  const values = valuesOf(lightness);
  const short: CuttingProblem[] = [];
  const fabrics = of.quilt.fabrics.flatMap((fabric): readonly FabricPlan[] => {
    const own = lines.get(fabric.id);
    if (!own) return [];
    const mine = of.turning === 'none' ? own.map((line) => ({ ...line, mayTurn: false })) : own;
    const nature = of.natures.get(fabric.id) as ClothNature;
    const lay = (demands: readonly Demand[]) =>
      layDemands({ nature, demands, search: of.search, easing: easingFor(of.quilt), shop: shopStepFor(of.quilt) });
    const together = lay(demandsOf(mine));
    // an easy layout may be longer, and says so
    const whole =
      of.quilt.layout === 'easy'
        ? together
        : noLongerThanApart({
            laid: together,
            lines: mine,
            lay: (demands) => layDemands({ nature, demands, search: of.search }),
          });
    if ('sheets' in whole && whole.left.length > 0) {
      short.push(stockShort({ quilt: of.quilt, fabric, lines: mine, left: whole.left }));
      return [];
    }
    const { laid: unfolded, ends } = withEnds({
      quilt: of.quilt,
      fabric,
      nature,
      whole,
      lay,
      lines: mine,
      steps: of.search.steps,
    });
    const { laid, fold } = onFold({ quilt: of.quilt, fabric, lines: mine, laid: unfolded, search: of.search, nature });
    const bought = boughtFor({ quilt: of.quilt, fabric, laid });
    return [
      {
        id: fabric.id,
        lightness: lightness.get(fabric.id) as number,
        value: values.get(fabric.id) as Value,
        pieces: mine.map(clothPiece),
        laid,
        ends,
        fold,
        motifs: motifsIn(whole, () => lay(demandsOf(mine).map((demand) => ({ ...demand, motif: false })))),
        ...bought,
        ladder: ladderOf(of.quilt, fabric, laid),
        directions: directionsFor({
          laid: fold?.chosen ? laidAs(fold.chosen.open) : laid,
          allowances: bought.allowances,
          unit: of.quilt.unit,
        }),
      },
    ];
  });
  return { fabrics, problems: short };
};

const withEnds = (of: {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly nature: ClothNature;
  readonly whole: FabricPlan['laid'];
  readonly lay: (demands: readonly Demand[]) => FabricPlan['laid'];
  readonly lines: readonly ClothLine<object>[];
  readonly steps: number;
}): Pick<FabricPlan, 'laid' | 'ends'> => {
  const { whole, lay } = of;
  if ('sheets' in whole) return { laid: whole, ends: null };
  const byLength = (demands: readonly Demand[]): LaidOut => {
    const laid = lay(demands);
    return 'sheets' in laid ? whole : laid;
  };
  return (
    layWithEnds({ ...of, laid: whole, demands: demandsOf(of.lines), lay: byLength }) ?? { laid: whole, ends: null }
  );
};

/** Whether or not it is asked for, what it costs and saves is told; searched hard only where it is. */
const onFold = (of: {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly nature: ClothNature;
  readonly lines: readonly ClothLine<object>[];
  readonly laid: FabricPlan['laid'];
  readonly search: ClothSearch;
}): Pick<FabricPlan, 'laid' | 'fold'> => {
  const { laid, quilt } = of;
  // a motif is looked for with the cloth opened
  if ('sheets' in laid || laid.motifs !== undefined) return { laid, fold: null };
  if (of.search.until === 'purchase' && !quilt.onFold) return { laid, fold: null };
  const search = quilt.onFold ? of.search : { steps: Math.min(2, of.search.steps), solver: null };
  return layOnFold({
    ...of,
    laid,
    lay: (width, demands) => layDemands({ nature: { ...of.nature, width }, demands, search }).layout,
  });
};

const boughtFor = (of: {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly laid: FabricPlan['laid'];
}): Pick<FabricPlan, 'buy' | 'parts' | 'allowances' | 'cost'> => {
  const { laid, fabric } = of;
  const { buying, unit } = of.quilt;
  if ('sheets' in laid && stockOf(fabric, of.quilt) !== undefined)
    return { ...stockBought(laid, { fabric, buying, unit }), allowances: null };
  const buy = purchaseFor({ laid, buying, unit });
  return {
    buy,
    parts: null,
    allowances: allowancesFor({ laid, buying, unit }),
    cost: costOfCloth(fabric, buy.amount),
  };
};

const motifsIn = (laid: FabricPlan['laid'], anywhere: () => FabricPlan['laid']): FabricPlan['motifs'] =>
  'sheets' in laid || laid.motifs === undefined
    ? null
    : { pieces: laid.motifs.pieces, centred: laid.layout.length, anywhere: anywhere().layout.length };

const stockShort = (of: {
  readonly quilt: Quilt;
  readonly fabric: Fabric;
  readonly lines: readonly ClothLine<object>[];
  readonly left: LaidSheets['left'];
}): CuttingProblem => ({
  code: 'cutting/stock-short',
  path: `/fabrics/${of.quilt.fabrics.indexOf(of.fabric)}/bought`,
  fabric: of.fabric.id,
  left: of.left.map(({ of: line, count }) => ({ cut: (of.lines[line] as ClothLine<object>).cut, count })),
});

interface Laying {
  readonly nature: ClothNature;
  readonly demands: readonly Demand[];
  readonly search: ClothSearch;
  /** On cloth by the length. */
  readonly easing?: Easing;
  readonly shop?: ShopStep;
}

/** As bought: on cloth by the length, on sheets, or on what it comes in, which may leave pieces over. */
export const laidFor = (
  of: Omit<Laying, 'demands'> & { readonly lines: readonly ClothLine<object>[] },
): FabricPlan['laid'] => layDemands({ ...of, demands: demandsOf(of.lines) });

export const layDemands = ({ nature, search, demands, easing, shop }: Laying): FabricPlan['laid'] => {
  const { solver, ...budget } = search;
  const how = { demands, budget, ...(solver ? { solver } : {}) };
  if (nature.stock !== undefined) return onSmallerSheets(planSheets({ sheets: nature.stock, ...how }), nature.stock);
  const { repeat } = nature;
  if (repeat !== undefined && demands.some(({ motif, count }) => motif && count > 0)) {
    const lay = (rest: readonly Demand[]): LaidOut => planLayout({ width: nature.width, ...how, demands: rest });
    return planOnMotifs({ width: nature.width, demands, repeat, lay });
  }
  return nature.length === null
    ? planLayout({ width: nature.width, ...how, ...(easing ? { easing } : {}), ...(shop ? { shop } : {}) })
    : planSheets({ sheets: [{ size: [nature.width, nature.length], cost: 1, stock: null }], ...how });
};

export const planCost = (quilt: Quilt, fabrics: readonly FabricPlan[]): CostPlan => {
  const priced = fabrics.flatMap(({ cost }) => (cost === null ? [] : [fromDecimal(cost)]));
  return {
    total: priced.length === 0 ? null : toNumber(sum(priced)),
    currency: quilt.currency,
    unpriced: fabrics.filter(({ cost }) => cost === null).map(({ id }) => id),
  };
};

const clothPiece = (line: ClothLine<Omit<PieceUse, 'count'>>): FabricPlan['pieces'][number] => ({
  cut: line.cut,
  shape: line.shape,
  count: line.count,
  mayTurn: line.mayTurn,
  gives: line.gives,
  diagonal: line.diagonal,
  way: line.way,
  outlines: line.outlines,
  ...(line.motif ? { motif: true } : {}),
  for: line.uses,
});

const flat = (size: readonly [Length, Length]) => ({ shape: shapeOf(size), size, gives: 1, template: null }) as const;

const shapeOf = (size: readonly [Length, Length]): 'square' | 'rectangle' =>
  Math.abs(size[0] - size[1]) < 1e-9 ? 'square' : 'rectangle';

const pathOf = (top: TopPlan, piece: TopPiece): string => top.set.strips[piece.strips[0] as number]?.path ?? '/top';
