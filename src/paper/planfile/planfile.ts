// The plan as the file that other programs read ("seamstead-plan", version 1): field names and meanings
// are a contract, numbers are plain doubles in the document's unit, never rounded for looks.

import {
  type BlockPlan,
  blockMinutes,
  blockStepMinutes,
  type FabricPlan,
  type PlannedPiece,
  type PlannedStep,
  type QuiltPlan,
  type StepWay,
  type TopPiece,
  type TopStep,
  topMinutes,
  topStepMinutes,
} from '#craft';
import { sampleCloths, samplesFor } from '#craft/chains';
import type { Cut, StripWay } from '#craft/cutting';
import type { TopPressing } from '#craft/pressing';
import type { PlacedStrip } from '#craft/setting';
import { toNumber } from '#ground/exact';
import { signedArea } from '#ground/plane';
import { noteText } from '#paper/words';
import { accuracyEntries, topAccuracyEntries } from './accuracy.ts';
import { directionsEntry } from './directions.ts';
import { lineEntries, outlineEntries, pair } from './runs.ts';

/** The plan as plain JSON values, keys in reading order. */
export const toPlanFile = (plan: QuiltPlan): unknown => ({
  format: 'seamstead-plan',
  version: 1,
  title: plan.quilt.title,
  designer: plan.quilt.designer,
  edition: plan.quilt.edition,
  unit: plan.quilt.unit,
  seam: toNumber(plan.quilt.seam),
  top: {
    width: plan.top.set.width,
    height: plan.top.set.height,
    placed: plan.top.set.placed.map(({ block, colouring, at, turn, mirror }, place) => ({
      block,
      colouring,
      at,
      turn,
      mirror,
      ...(plan.top.pressing.variants[place] === 1 ? { pressed: 'other-way' } : {}),
      ...(plan.top.pressing.turns[place] ? { turnToNest: plan.top.pressing.turns[place] } : {}),
      // what scrappy tones were drawn: the cloth of each patch, in the order of the block's patches
      ...(plan.top.drawn[place] ? { fabrics: plan.top.drawn[place] } : {}),
    })),
    strips: plan.top.set.strips.map(topStrip),
    pieces: plan.top.pieces.map(topPiece),
    pressing: topPressing(plan.top.pressing),
    minutes: tenths(topMinutes(plan)),
    steps: topSteps(plan),
  },
  blocks: plan.blocks.map((block) => blockEntry(plan, block)),
  fabrics: plan.fabrics.map((fabric) => fabricEntry(plan, fabric)),
  finish: plan.finish,
  cost: plan.cost,
  time: plan.time,
  thread: plan.thread,
  notes: plan.notes.map((note) => ({
    level: note.level,
    code: note.code,
    path: note.path,
    message: noteText(note, plan.quilt.unit),
  })),
});

/** The same plan gives the same bytes. */
export const planFileText = (plan: QuiltPlan): string => `${JSON.stringify(toPlanFile(plan), null, 2)}\n`;

const blockEntry = (plan: QuiltPlan, block: BlockPlan): unknown => {
  const accuracy = accuracyEntries(plan, block);
  return {
    id: block.id,
    title: block.title,
    colouring: block.colouring,
    mirror: block.mirror,
    count: block.count,
    finished: block.finished,
    unfinished: block.unfinished,
    joining: block.joining,
    leastUnits: block.leastUnits,
    ...(block.foundations ? { foundations: foundationsEntry(block.foundations) } : {}),
    patches: block.patches.map(({ piece, fabric, points, arcs = [] }) => ({
      piece,
      fabric,
      points: outlineEntries({ points, arcs }),
    })),
    pieces: block.pieces.map(piece),
    pressing: blockPressing(block.pressing),
    trimming: accuracy.trimming,
    demonstration: demonstrationEntry(plan, block),
    minutes: tenths(blockMinutes(plan, block)),
    steps: block.steps.map((one, i) => ({
      ...step(one),
      accuracy: accuracy.steps[i],
      minutes: tenths(blockStepMinutes(plan, block, one)),
    })),
  };
};

const blockPressing = ({ turned, loose, ...share }: BlockPlan['pressing']): unknown => ({
  ...share,
  ...(turned === 0 ? {} : { turned }),
  loose: loose.map((one) => ({ ...one, at: pair(one.at) })),
});

/** What is sewn before a demonstration, and the cloth that it takes besides the quilt's; null where nothing is. */
const demonstrationEntry = (plan: QuiltPlan, block: BlockPlan): unknown => {
  const samples = samplesFor(block);
  if (samples.length === 0) return null;
  return {
    samples: samples.map(({ step, count }) => ({ unit: block.steps[step]?.makes, count })),
    cloths: sampleCloths(plan, block).map(({ fabric, pieces, laid }) => ({
      fabric,
      pieces,
      ...('sheets' in laid ? { sheets: laid.sheets.length, left: laid.left.length } : { length: laid.layout.length }),
    })),
  };
};

/** An estimate has no more places. */
const tenths = (minutes: number): number => Math.round(10 * minutes) / 10;

const piece = ({ label, fabric, fabrics, tone, perBlock, cut }: PlannedPiece): unknown => ({
  label,
  fabric,
  fabrics,
  tone,
  perBlock,
  finished: cut.finished,
  cut: cutEntry(cut),
});

const cutEntry = ({ shape, size, exact, gives, perSet, template, way }: Cut): unknown => ({
  shape,
  size,
  exact,
  gives,
  ...(perSet === undefined ? {} : { perSet }),
  ...(way ? stripEntry(way) : {}),
  ...(template === null
    ? {}
    : {
        points: outlineEntries({ points: template.points, arcs: template.arcs ?? [] }),
        seamLine: outlineEntries({ points: template.seamLine, arcs: template.arcs ?? [] }),
        // matching marks of curved sides, from the seam line out to the cut edge
        ...(template.marks === undefined ? {} : { marks: template.marks.map(({ on, out }) => [pair(on), pair(out)]) }),
        // the direction of the lengthwise grain in the template's own frame
        grain: [0, 1],
      }),
});

/** `edges` lie along the strip's lower and upper edge; the upper begins `lean` to the right of the lower. */
const stripEntry = ({ size, angles, cuts, cutBy, row, edge }: StripWay) => ({
  strip: size[0],
  angle: Math.min(angles[0], 180 - angles[0]),
  angles,
  cuts,
  cutBy,
  edges: [row.bottom, row.top],
  lean: row.lean,
  edge,
});

/** Patches of each sheet in the order of sewing, and the sheets that each seam joins then. */
const foundationsEntry = ({ sections, joins, least }: NonNullable<BlockPlan['foundations']>): unknown => ({
  sheets: sections.map((order) => order.map(({ patch }) => patch)),
  joins: joins.map(({ first, second }) => [first, second]),
  least,
});

const step = (of: PlannedStep): object => ({
  id: of.id,
  number: of.number,
  join: of.join,
  makes: of.makes,
  side: of.side,
  machineTurn: of.machineTurn,
  kind: of.kind,
  seam: of.seam,
  press: of.press,
  pressTo: of.pressTo,
  ...(of.otherWay === null ? {} : { otherWay: of.otherWay }),
  unfinished: of.unfinished,
  perBlock: of.perBlock,
  total: of.total,
  patches: of.patches,
  ...(of.stopsAt.length > 0 ? { stopsAt: of.stopsAt.map(pair) } : {}),
  line: lineEntries(of.line, of.arcs ?? []),
  ...(of.made ? { made: madeEntry(of.made) } : {}),
  ...(of.onPaper ? { onPaper: of.onPaper } : {}),
});

/** How units are made together; `patches` of one unit, by its places, and which of these the step joins. */
const madeEntry = ({ unit, way, parts, units, among, sets, isLast }: StepWay): unknown => ({
  unit: unit.kind,
  finished: unit.size,
  way: way.name,
  trimmed: way.trimmed,
  gives: way.gives,
  sets,
  units,
  // made at once, of the same sets
  ...(among.length > 1 ? { among } : {}),
  patches: unit.patches,
  parts,
  last: isLast,
});

const topPiece = (of: TopPiece): unknown => ({
  label: of.label,
  role: of.role,
  fabric: of.fabric,
  // the top is one of its kind
  perBlock: of.count,
  count: of.count,
  finished: of.finished,
  cut: cutEntry(of.cut),
  joinedFrom: of.joinedFrom,
  strips: of.strips,
});

/** Its outline too, where that is not the box: triangles, slanted strips, mitred ends. */
const topStrip = ({ role, fabric, rect, points }: PlacedStrip): unknown => ({
  role,
  fabric,
  at: [rect.x, rect.y],
  size: [rect.width, rect.height],
  ...(signedArea(points) < rect.width * rect.height * (1 - 1e-9) ? { points: points.map(pair) } : {}),
});

/** Meetings that do not nest are counted by their reason. */
const topPressing = ({ all, between, proven }: TopPressing): unknown => {
  const reasons = [...new Set(between.loose.map(({ why }) => why))].sort();
  return {
    ...all,
    proven,
    between: {
      meetings: between.meetings,
      nested: between.nested,
      loose: reasons.map((why) => ({ why, count: between.loose.filter((one) => one.why === why).length })),
    },
  };
};

const topSteps = (plan: QuiltPlan): readonly unknown[] => {
  const accuracy = topAccuracyEntries(plan);
  return plan.top.steps.map((one, i) => ({
    ...topStep(one),
    accuracy: accuracy[i],
    minutes: tenths(topStepMinutes(plan, one)),
  }));
};

const topStep = (of: TopStep): object => ({
  id: of.id,
  number: of.number,
  join: of.join,
  makes: of.makes,
  side: of.side,
  ...(of.angle === 0 ? {} : { angle: of.angle }),
  machineTurn: of.machineTurn,
  kind: of.kind,
  seam: of.seam,
  press: of.press,
  pressTo: of.pressTo,
  unfinished: of.unfinished,
  perBlock: of.perBlock,
  total: of.total,
  stage: of.stage,
  of: of.of,
  ...(of.measure === null ? {} : { measure: of.measure }),
});

const fabricEntry = (plan: QuiltPlan, of: FabricPlan): unknown => {
  const fabric = plan.quilt.fabrics.find(({ id }) => id === of.id);
  return {
    id: of.id,
    name: fabric?.name,
    colour: fabric?.colour,
    lightness: of.lightness,
    value: of.value,
    pieces: of.pieces.map((cloth) => ({
      cut: cloth.cut,
      shape: cloth.shape,
      count: cloth.count,
      gives: cloth.gives,
      diagonal: cloth.diagonal,
      ...(cloth.way ? stripEntry(cloth.way) : {}),
      ...(cloth.outlines.length > 0 ? { outlines: cloth.outlines.map((outline) => outline.map(pair)) } : {}),
      ...(cloth.motif ? { motif: true } : {}),
      for: cloth.for,
    })),
    layout: 'sheets' in of.laid ? { sheets: of.laid.sheets } : of.laid.layout,
    length: 'sheets' in of.laid ? of.laid.sheets.length : of.laid.layout.length,
    bound: of.laid.bound,
    boundKind: of.laid.boundKind,
    ...(of.parts !== null && 'sheets' in of.laid
      ? { stock: { of: of.laid.kept, cost: of.laid.cost, costBound: of.laid.costBound } }
      : {}),
    buy: of.buy,
    ...(of.parts === null ? {} : { parts: of.parts }),
    ...(of.ends === null ? {} : { ends: of.ends }),
    ...(of.fold === null ? {} : { fold: of.fold }),
    ...(of.motifs === null ? {} : { motifs: of.motifs }),
    allowances: of.allowances,
    cost: of.cost,
    ladder: of.ladder,
    directions: directionsEntry(of.directions),
  };
};
