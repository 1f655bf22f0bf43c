// The document that says what a quilt in normal form is: reading it again gives the same quilt.
import { exactText } from '#craft/measure';
import type {
  QuiltDocument,
  WrittenBlock,
  WrittenDrawing,
  WrittenLogCabin,
  WrittenMethod,
  WrittenRun,
  WrittenUnits,
} from './document.ts';
import type { Method } from './methods.ts';
import type {
  BlockDesign,
  BlockShape,
  Colouring,
  DrawingDesign,
  GridRun,
  LogCabinDesign,
  PatchesDesign,
  Quilt,
  UnitsDesign,
} from './quilt.ts';
import { pairText, toFabric, toPhoto } from './to-written-fabric.ts';
import { toTop } from './to-written-top.ts';

/** Every default is written out. */
export const toDocument = (quilt: Quilt): QuiltDocument => {
  const { title, designer, notes, edition, date, corrections, currency, unit, buying, layout, top } = quilt;
  return {
    format: 'seamstead-quilt',
    version: 1,
    title,
    designer,
    notes,
    edition,
    date,
    corrections: [...corrections],
    unit,
    seam: exactText(quilt.seam),
    ruler: exactText(quilt.ruler),
    cutting: {
      squaring: exactText(buying.squaring),
      shrinkage: buying.shrinkage.valueOf(),
      step: `${exactText(buying.step.amount)} ${buying.step.unit}`,
      ...(layout === 'least' ? {} : { layout }),
      ...(quilt.onFold ? { fold: true } : {}),
    },
    currency,
    ...(quilt.minutes === undefined ? {} : { minutes: { ...quilt.minutes } }),
    ...(quilt.draw === 1 ? {} : { draw: quilt.draw }),
    fabrics: quilt.fabrics.map(toFabric),
    blocks: quilt.blocks.map(toBlock),
    top: toTop(top),
    finish: toFinish(quilt.finish),
    ...toMethods(quilt.methods),
    ...(quilt.colourways.length === 0 ? {} : { colourways: quilt.colourways.map(toColourway) }),
    ...(quilt.sizes.length === 0
      ? {}
      : {
          sizes: quilt.sizes.map((size) => ({
            id: size.id,
            title: size.title,
            top: toTop(size.top),
            finish: toFinish(size.finish),
          })),
        }),
  };
};

const toColourway = ({ id, title, fabrics }: Quilt['colourways'][number]) => ({
  id,
  title,
  fabrics: Object.fromEntries(
    fabrics.map((cloth) => [
      cloth.id,
      {
        ...(cloth.name === null ? {} : { name: cloth.name }),
        ...(cloth.colour === null ? {} : { colour: cloth.colour }),
        ...(cloth.photo === null ? {} : { photo: toPhoto(cloth.photo) }),
        ...(cloth.price === null ? {} : { price: cloth.price.valueOf() }),
      },
    ]),
  ),
});

const toMethods = (methods: readonly Method[] | undefined): { methods?: WrittenMethod[] } =>
  methods === undefined
    ? {}
    : {
        methods: methods.map(({ unit, size, fabrics, way, trimmed }) => ({
          unit,
          ...(size === null ? {} : { size: pairText(size) }),
          ...(fabrics === null ? {} : { fabrics: [...fabrics] }),
          way,
          trimmed,
        })),
      };

const toBlock = ({ id, title, shape, colourings, piecing, motifs, methods }: BlockDesign): WrittenBlock => ({
  id,
  title,
  ...toShape(shape),
  colourings: Object.fromEntries(Object.entries(colourings).map(([name, tones]) => [name, toTones(tones)])),
  ...(piecing === undefined ? {} : { piecing }),
  ...(motifs === undefined ? {} : { motifs: [...motifs] }),
  ...toMethods(methods),
});

const toTones = (tones: Colouring): Record<string, string | string[]> =>
  Object.fromEntries(
    Object.entries(tones).map(([tone, fabric]) => [tone, typeof fabric === 'string' ? fabric : [...fabric]]),
  );

const toShape = (shape: BlockShape): Partial<WrittenBlock> => {
  switch (shape.kind) {
    case 'log-cabin':
      return { recipe: toRecipe(shape) };
    case 'patches':
      return toPatches(shape);
    case 'units':
      return { size: pairText(shape.size), recipe: toUnits(shape) };
    case 'drawing':
      return { size: pairText(shape.size), drawing: toDrawing(shape) };
    case 'collection':
      return { size: pairText(shape.size), from: shape.from };
    case 'elsewhere':
      return { size: pairText(shape.size), made: 'elsewhere' };
    case 'framed':
      return {
        ...toShape(shape.inner),
        frame: shape.frames.map(({ width, fabric }) => ({ width: exactText(width), fabric })),
      };
  }
};

const toUnits = ({ grid, units }: UnitsDesign): WrittenUnits => ({
  kind: 'units',
  grid: pairText(grid),
  units: units.map(({ unit, at, span, turn, tones }) => ({
    unit,
    at: pairText(at),
    span: pairText(span),
    turn,
    tones: [...tones],
  })),
});

const toDrawing = ({ grid, seams, tonesAt }: DrawingDesign): WrittenDrawing => ({
  grid: pairText(grid),
  seams: seams.map(toRun),
  tonesAt: tonesAt.map(({ at, tone }) => ({ at: pairText(at), tone })),
});

const toRecipe = (shape: LogCabinDesign): WrittenLogCabin => {
  const count = 1 + Math.max(...shape.logs.map((log) => log.round));
  const rounds = Array.from({ length: count }, (_, round) => shape.logs.filter((log) => log.round === round));
  const longest = rounds.reduce((a, b) => (b.length > a.length ? b : a), rounds[0] ?? []);
  return {
    kind: 'log-cabin',
    centre: shape.centreBlock === null ? pairText(shape.centre) : { block: shape.centreBlock.block },
    ...(shape.centreTone === '' ? {} : { centreTone: shape.centreTone }),
    order: longest.map((log) => log.side),
    rounds: rounds.map((logs) => ({
      width: logs.map((log) => exactText(log.width)),
      tones: logs.map((log) => log.tone),
    })),
  };
};

const toPatches = ({ size, grid, patches }: PatchesDesign): Pick<WrittenBlock, 'size' | 'patches'> => ({
  size: pairText(size),
  patches: {
    grid: pairText(grid),
    list: patches.map(({ tone, ...outline }) => ({ points: toRun(outline), tone })),
  },
});

/** An arc stands in place of the point that it leads to. */
const toRun = ({ corners, arcs = [] }: GridRun): WrittenRun =>
  corners.map((corner, i) => {
    const arc = arcs.find(({ edge }) => (edge + 1) % corners.length === i);
    if (arc === undefined) return pairText(corner);
    return {
      to: pairText(corner),
      centre: pairText(arc.centre),
      sweep: arc.clockwise ? 'clockwise' : 'counterclockwise',
    };
  });

const toFinish = ({
  binding,
  backing,
  batting,
  sleeve,
  label,
  bed,
}: Quilt['finish']): NonNullable<QuiltDocument['finish']> => ({
  ...(binding === null ? {} : { binding: { ...binding, cut: exactText(binding.cut) } }),
  ...(backing === null ? {} : { backing: toBacking(backing) }),
  ...(batting === null ? {} : { batting: toBatting(batting) }),
  ...(sleeve === null ? {} : { sleeve }),
  ...(label === null ? {} : { label: { ...label, size: pairText(label.size) } }),
  ...(bed === null ? {} : { bed: { size: bed.size, drop: exactText(bed.drop), tuck: exactText(bed.tuck) } }),
});

const toBatting = ({ overage, spacing, price }: NonNullable<Quilt['finish']['batting']>) => ({
  overage: exactText(overage),
  spacing: exactText(spacing),
  ...(price === null ? {} : { price: price.valueOf() }),
});

const toBacking = ({ fabric, overage, run }: NonNullable<Quilt['finish']['backing']>) => ({
  fabric,
  overage: exactText(overage),
  ...(run === null ? {} : { run }),
});
