// A block as patches on its grid, whatever form the document gives it in: what one drafts on, with what lies bare or double.
import { type BlockDesign, type PatchesDesign, readQuilt, type ToneFabric } from '#craft/design';
import { type DraftedBlock, draftBlock, fabricsOf, type Patch } from '#craft/drafting';
import { type Drawn, drawnAs, faultsOf, mostSquares } from '#craft/redrawing';
import type { Arc } from '#ground/arc';
import { type Rational, toNumber } from '#ground/exact';
import { at, type Point } from '#ground/plane';
import type { JsonObject } from '#workroom/editing';
import { alone } from './alone.ts';
import type { DrawnAnswer, Reply } from './answer.ts';
import { flat } from './flat.ts';
import { refusedIn } from './refused.ts';

type Shape = Exclude<BlockDesign['shape'], { kind: 'framed' }>;

/** Without the block's frame, which is no part of its drawing. */
export const askDrawn = (document: JsonObject, id: string): Reply<DrawnAnswer> => {
  const read = readQuilt(alone(document, id));
  if (!read.ok) return refusedIn(read, document);
  const quilt = read.value;
  const design = quilt.blocks.find((block) => block.id === id);
  if (design === undefined) throw new Error(`the block ${id} was read and is not there`);
  const shape: Shape = design.shape.kind === 'framed' ? design.shape.inner : design.shape;
  // patches that do not tile are shown as they lie; of every other form nothing is known until it drafts
  if (shape.kind === 'patches')
    return { ok: true, value: answerOf(asListed(shape), { title: design.title, size: sizeIn(shape), colourings: {} }) };
  const drafted = draftBlock({ ...design, shape });
  if (!drafted.ok) {
    const problems = drafted.problems.map((problem) => ({ ...problem, unit: quilt.unit }));
    return refusedIn({ ...drafted, problems }, document);
  }
  return { ok: true, value: draftedAnswer(drafted.value, shape, design) };
};

const sizeIn = ({ size }: PatchesDesign): DrawnAnswer['size'] => [toNumber(size[0]), toNumber(size[1])];

const answerOf = (drawn: Drawn, of: Pick<DrawnAnswer, 'title' | 'size' | 'colourings'>): DrawnAnswer => {
  const { bare, double } = faultsOf(drawn);
  return {
    ...of,
    grid: drawn.grid,
    patches: drawn.patches.map((patch) => ({ ...patch, points: flat(patch.points) })),
    bare: bare.map(flat),
    double: double.map(({ points }) => flat(points)),
  };
};

const asListed = ({ grid, patches }: PatchesDesign): Drawn =>
  drawnAs(
    [toNumber(grid[0]), toNumber(grid[1])],
    patches.map(({ tone, corners, arcs = [] }) => ({
      tone,
      corners: corners.map(pointAt),
      arcs: arcs.map((arc) => ({ ...arc, centre: pointAt(arc.centre) })),
    })),
  );

const pointAt = ([x, y]: readonly [Rational, Rational]): Point => at(toNumber(x), toNumber(y));

const draftedAnswer = (block: DraftedBlock, shape: Shape, { title, colourings }: BlockDesign): DrawnAnswer => {
  const grid = gridFor(shape, block);
  const toneOf = toneNames(colourings);
  const onGrid = ({ x, y }: Point): Point => at((x * grid[0]) / block.size[0], (y * grid[1]) / block.size[1]);
  const patches = block.patches.map(({ arcs, points, ...patch }) => ({
    tone: toneOf({ ...patch, points }),
    points: points.map(onGrid),
    ...(arcs === undefined ? {} : { arcs: arcs.map((arc) => ({ ...arc, ...endsAndCentre(arc, onGrid) })) }),
  }));
  const full = Object.entries(colourings).map(([name, colouring]) => {
    const entries = block.patches.map((patch): readonly [string, ToneFabric] => {
      const fabrics = fabricsOf(patch, colouring);
      return [toneOf(patch), fabrics.length === 1 ? (fabrics[0] as string) : fabrics];
    });
    return [name, Object.fromEntries(entries)] as const;
  });
  return answerOf({ grid, patches }, { title, size: block.size, colourings: Object.fromEntries(full) });
};

const endsAndCentre = ({ from, to, centre }: Arc, place: (p: Point) => Point): Pick<Arc, 'from' | 'to' | 'centre'> => ({
  from: place(from),
  to: place(to),
  centre: place(centre),
});

/** Patches know tones alone: a letter that a colouring names becomes one, and so does the cloth of a frame in the centre. */
const toneNames = (colourings: BlockDesign['colourings']): ((patch: Patch) => string) => {
  const named = new Set(Object.values(colourings).flatMap((colouring) => Object.keys(colouring)));
  return ({ fabric, letter, tone }) => {
    if (fabric !== undefined) return named.has(fabric) ? `frame ${fabric}` : fabric;
    return letter !== undefined && named.has(letter) ? letter : tone;
  };
};

const gridFor = (shape: Shape, block: DraftedBlock): Drawn['grid'] => {
  const own = shape.kind === 'collection' ? shape.shape : shape;
  if ('grid' in own) return [toNumber(own.grid[0]), toNumber(own.grid[1])];
  // steps as long across as down, or no arc would be round
  if (block.patches.some(({ arcs }) => arcs !== undefined)) return block.size;
  const points = block.patches.flatMap((patch) => patch.points);
  return [
    squaresFor(
      points.map(({ x }) => x),
      block.size[0],
    ),
    squaresFor(
      points.map(({ y }) => y),
      block.size[1],
    ),
  ];
};

const usualSquares = 8;

/** The fewest equal squares on whose lines all corners lie; a usual number where too many would be needed. */
const squaresFor = (places: readonly number[], side: number): number => {
  for (let count = 1; count <= mostSquares; count++) {
    const isOn = (place: number): boolean => {
      const lines = (place * count) / side;
      return Math.abs(lines - Math.round(lines)) < 1e-6;
    };
    if (places.every(isOn)) return count;
  }
  return usualSquares;
};
