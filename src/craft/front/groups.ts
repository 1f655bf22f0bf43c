// The units of a planned quilt that can be made in more than one way, alike ones together wherever they stand; the ways that are
// open to each, with what each takes, and why others are not.
import { type BlockPlan, entryName, type NotMade, naturesOf, type QuiltPlan, toldCloths, wayOf } from '#craft';
import { unknownHabit, usualCare } from '#craft/accuracy';
import { type Cut, type CutRule, cutFor } from '#craft/cutting';
import { mayTrim, type UnitKind, type WayName, waysOfKind } from '#craft/design';
import { cornerTolerance } from '#craft/limits';
import { inchIn, type Length, length, type Unit as Measure } from '#craft/measure';
import { allWork, type MinutesTable, minutesOf, minutesWith, type Work } from '#craft/minutes';
import {
  joinsOf,
  madeWork,
  outlinesOf,
  type Trueness,
  truenessOf,
  type Unit,
  unitKey,
  unitsIn,
  type Way,
  wayFor,
} from '#craft/ways';
import { toNumber } from '#ground/exact';
import { perimeter } from '#ground/plane';

/** Units that one choice of the document names: of one kind, size and cloths. */
export interface UnitGroup {
  readonly unit: UnitKind;
  /** Finished, the longer side first. */
  readonly size: readonly [Length, Length];
  /** As a choice names them. */
  readonly fabrics: readonly string[];
  /** In the whole quilt. */
  readonly count: number;
  /** Ids, in the order of first use. */
  readonly blocks: readonly string[];
  /** Names of the entries of those blocks. */
  readonly entries: readonly string[];
  /** The first is to cut and sew singly. */
  readonly options: readonly WayOption[];
  readonly closed: readonly { readonly way: WayName; readonly why: NotMade }[];
}

export interface WayOption {
  readonly way: WayName;
  readonly trimmed: boolean;
  /** Of all units of the group, without what else the quilt takes: our own estimate. */
  readonly minutes: number;
  /** Of all cloth pieces, before they are laid out. */
  readonly area: number;
  /** One standard deviation of a unit's side. */
  readonly deviation: Length;
}

/** In the order of first use; those with one way only are not among them. */
export const unitGroups = (plan: QuiltPlan): readonly UnitGroup[] => {
  const found = new Map<string, Found>();
  const natures = naturesOf(plan.quilt);
  const rule: CutRule = { seam: length(toNumber(plan.quilt.seam)), ruler: plan.quilt.ruler };
  for (const block of plan.blocks) {
    // on paper a block has one way
    if (block.foundations !== null) continue;
    const place = { ...placeOf(plan, block), natures, rule };
    for (const unit of unitsOfPlanned(block)) {
      const fabrics = toldCloths(unit.kind, unit.fabrics);
      const size = [length(Math.max(...unit.size)), length(Math.min(...unit.size))] as const;
      const key = JSON.stringify([unit.kind, size.map((side) => side.toFixed(6)), fabrics]);
      const known = found.get(key) ?? { unit, size, fabrics, makers: [] };
      found.set(key, known);
      const maker = known.makers.find((one) => one.block === block && one.look === unit.fabrics.join('|'));
      if (maker) maker.units += block.count;
      else known.makers.push({ block, unit, place, look: unit.fabrics.join('|'), units: block.count });
    }
  }
  const making = { care: usualCare(plan.quilt.unit), habit: unknownHabit(plan.quilt.unit), rule };
  return [...found.values()]
    .map((one) => {
      const trueness = truenessOf(one.unit, making);
      return groupOf(one, { trueness, rule, measure: plan.quilt.unit, table: minutesWith(plan.quilt.minutes) });
    })
    .filter(({ options, closed }) => options.length > 1 || closed.length > 0);
};

type Place = Parameters<typeof wayOf>[0];

interface Found {
  readonly unit: Unit;
  readonly size: readonly [Length, Length];
  readonly fabrics: readonly string[];
  /** Entries of blocks that have such units. */
  readonly makers: {
    readonly block: BlockPlan;
    readonly unit: Unit;
    readonly place: Place;
    readonly look: string;
    units: number;
  }[];
}

interface Measuring {
  readonly trueness: Trueness;
  readonly rule: CutRule;
  readonly measure: Measure;
  readonly table: MinutesTable;
}

const placeOf = ({ quilt }: QuiltPlan, block: BlockPlan): Pick<Place, 'lists' | 'tones' | 'motifs'> => {
  const pieces = new Map(block.pieces.map((piece) => [piece.label, piece]));
  return {
    lists: block.patches.map(({ piece }) => (pieces.get(piece)?.fabrics ?? []).map(({ fabric }) => fabric)),
    tones: block.patches.map(({ piece }) => pieces.get(piece)?.tone ?? ''),
    motifs: quilt.blocks.find(({ id }) => id === block.id)?.motifs ?? [],
  };
};

export const entryOf = ({ id, colouring, mirror }: Pick<BlockPlan, 'id' | 'colouring' | 'mirror'>): string =>
  entryName({ block: id, colouring, mirror });

/** Logs and frames are sewn on one by one: no unit goes over their seams. */
const unitsOfPlanned = ({ patches, core, finished }: BlockPlan): readonly Unit[] =>
  unitsIn(patches.slice(0, core), cornerTolerance * Math.max(...finished));

const groupOf = (found: Found, of: Measuring): UnitGroup => {
  const { unit, size, fabrics, makers } = found;
  const shared = sharing(makers);
  const closed: { way: WayName; why: NotMade }[] = [];
  const options = waysOfKind[unit.kind].flatMap((way) =>
    (mayTrim(unit.kind, way) ? [false, true] : [false]).flatMap((trimmed): readonly WayOption[] => {
      if (way === 'singly' && !trimmed) return [singlyTaken(found, of)];
      const why = makers
        .map((maker) => wayOf(maker.place, { unit: maker.unit, name: way, trimmed, units: maker.units }))
        .find((one) => typeof one === 'string');
      if (why === undefined) {
        const ways = shared.map((maker) =>
          wayOf(maker.place, { unit: maker.unit, name: way, trimmed, units: maker.units }),
        );
        return [optionOf({ ...found, makers: shared }, ways as readonly Way[], of)];
      }
      if (!trimmed) closed.push({ way, why });
      return [];
    }),
  );
  return {
    unit: unit.kind,
    size,
    fabrics,
    count: makers.reduce((all, maker) => all + maker.units, 0),
    blocks: [...new Set(makers.map(({ block }) => block.id))],
    entries: [...new Set(makers.map(({ block }) => entryOf(block)))],
    options,
    closed,
  };
};

/** Blocks that have the very same unit share their sets. */
const sharing = (makers: Found['makers']): Found['makers'] => {
  const merged = new Map<string, Found['makers'][number]>();
  for (const maker of makers) {
    const key = unitKey(maker.unit);
    const known = merged.get(key);
    merged.set(key, known ? { ...known, units: known.units + maker.units } : maker);
  }
  return [...merged.values()];
};

const singlyTaken = ({ unit, makers }: Found, { trueness, rule, measure, table }: Measuring): WayOption => {
  const way = wayFor({ unit, name: 'singly', trimmed: false, rule, room: { units: 1, widths: [] } });
  if (typeof way === 'string') throw new Error('every unit can be cut singly');
  const cuts = outlinesOf(unit).map((outline) => cutFor(outline, rule));
  const units = makers.reduce((all, maker) => all + maker.units, 0);
  return {
    way: 'singly',
    trimmed: false,
    minutes: minutesOf(allWork([seamsWork(unit, units, measure), pieceWork(cuts, units)]), table),
    area: units * areaOf(cuts),
    deviation: length(trueness(way)),
  };
};

const optionOf = ({ makers }: Found, ways: readonly Way[], of: Measuring): WayOption => {
  const [first] = ways as readonly [Way, ...(readonly Way[])];
  const works: Work[] = [];
  let area = 0;
  makers.forEach((maker, i) => {
    const way = ways[i] as Way;
    const plain = outlinesOf(maker.unit).map((outline) => cutFor(outline, of.rule));
    const joins = joinsOf(maker.unit, way);
    joins.forEach((parts, at) => {
      const isLast = at === joins.length - 1;
      const { seam } = of.rule;
      works.push(madeWork({ unit: maker.unit, way, parts, units: maker.units, isLast, seam, measure: of.measure }));
    });
    if (way.name === 'singly') works.push(seamsWork(maker.unit, maker.units, of.measure));
    if (way.name === 'strip-sets') works.push(rowsWork(maker.unit, maker.units, of.measure));
    const seen = new Set<number>();
    way.cuts.forEach((cut, place) => {
      const role = way.roles[place] as number;
      if (cut === null || cut.perSet === undefined) {
        const own = cut ?? (plain[place] as Cut);
        works.push(pieceWork([own], maker.units));
        area += maker.units * areaOf([own]);
      } else if (!seen.has(role)) {
        seen.add(role);
        const patches = maker.units * way.roles.filter((one) => one === role).length;
        const pieces = cut.perSet * Math.ceil(patches / (cut.perSet * cut.gives));
        works.push({ cut: pieces });
        area += pieces * cut.size[0] * cut.size[1];
      }
    });
  });
  return {
    way: first.name,
    trimmed: first.trimmed,
    minutes: minutesOf(allWork(works), of.table),
    area,
    deviation: length(of.trueness(first)),
  };
};

const pieceWork = (cuts: readonly Cut[], units: number): Work => ({
  cut: cuts.reduce((all, { gives }) => all + units / gives, 0),
});

/** Of plain seams, each a chain over all units; their matches not counted: they are alike whichever way is taken. */
const plainSeams = (seams: number, units: number, inches: number): Work => ({
  chain: seams,
  lay: seams * units,
  seam: seams * units,
  press: seams * units,
  inch: inches * units,
});

const areaOf = (cuts: readonly Cut[]): number =>
  cuts.reduce((all, { size, gives }) => all + (size[0] * size[1]) / gives, 0);

const seamsWork = (unit: Unit, units: number, measure: Measure): Work =>
  plainSeams(unit.patches.length - 1, units, lengthsOf(unit) / inchIn[measure]);

/** Rows of a grid are joined one by one. */
const rowsWork = ({ size, strips, patches }: Unit, units: number, measure: Measure): Work => {
  const rows = patches.length / (strips?.widths.length ?? patches.length);
  return plainSeams(rows - 1, units, ((rows - 1) * size[0]) / inchIn[measure]);
};

/** Of all its inner seams together: half of what its patches go round, less its own edge. */
const lengthsOf = (unit: Unit): number => {
  const around = outlinesOf(unit).reduce((all, outline) => all + perimeter(outline), 0);
  return (around - 2 * (unit.size[0] + unit.size[1])) / 2;
};
