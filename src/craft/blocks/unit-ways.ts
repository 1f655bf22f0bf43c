// The units of a block that are made in a way that the document chooses: which patches they are, how those are cut, and at
// which steps the way is gone. All other patches are cut singly.

import type { Natures } from '#craft/cloths';
import type { Cut, CutRule } from '#craft/cutting';
import type { BlockDesign, Method, Quilt, UnitKind, WayName } from '#craft/design';
import { type DraftedBlock, outlineOf } from '#craft/drafting';
import { cornerTolerance } from '#craft/limits';
import { length } from '#craft/measure';
import type { SewingStep } from '#craft/piecing';
import type { Note, NotMade } from '#craft/plan';
import { type Unit, unitKey, unitsIn, type Way, wayFor } from '#craft/ways';
import { toNumber } from '#ground/exact';
import { noRecall, type Recall } from '#ground/recall';

/** A unit of a block, and the way in which it is made. */
export interface MadeUnit {
  readonly unit: Unit;
  readonly way: Way;
  /** Alike for units of one kind in a block. */
  readonly key: string;
  /** Alike for units that are made of the same sets, wherever in the quilt. */
  readonly set: string;
  /** Of the document's choice. */
  readonly path: string;
}

/** What its note says. */
export type NotTaken = Omit<Extract<Note, { readonly code: 'ways/not-taken' }>, 'code' | 'level'>;

export interface UnitsOfBlock {
  readonly quilt: Quilt;
  readonly design: BlockDesign;
  readonly block: DraftedBlock;
  /** The cloths that each patch may be cut from. */
  readonly lists: readonly (readonly string[])[];
  readonly natures: Natures;
  readonly rule: CutRule;
  /** Blocks that are made so. */
  readonly count: number;
  readonly memory?: Recall;
}

/** Of a block as drafted, or mirrored: its units with the ways that are chosen for them. */
export const madeUnits = (
  of: UnitsOfBlock,
): {
  readonly made: readonly MadeUnit[];
  readonly notTaken: readonly NotTaken[];
  /** Places of the choices that are meant for a unit of the block. */
  readonly met: readonly string[];
} => {
  const methods = [...(of.quilt.methods ?? []), ...(of.design.methods ?? [])];
  if (methods.length === 0) return { made: [], notTaken: [], met: [] };
  const place: UnitPlace = {
    ...of,
    tones: of.block.patches.map(({ tone }) => tone),
    motifs: of.design.motifs ?? [],
  };
  const notTaken = new Map<string, NotTaken>();
  const met = new Set<string>();
  const units = unitsOf(of);
  const keys = units.map(unitKey);
  const alike = new Map<string, number>();
  for (const key of keys) alike.set(key, (alike.get(key) ?? 0) + 1);
  const made = units.flatMap((unit, i): readonly MadeUnit[] => {
    const meant = methods.filter((one) => isMeant(one, unit));
    for (const { path } of meant) met.add(path);
    const method = meant.at(-1);
    if (method === undefined || (method.way === 'singly' && !method.trimmed)) return [];
    const key = keys[i] as string;
    const units = of.count * (alike.get(key) ?? 0);
    const asked = { unit, name: method.way, trimmed: method.trimmed, units };
    const way = wayOf(place, asked);
    if (typeof way !== 'string')
      return [{ unit, way, key, set: JSON.stringify([key, way.name, way.trimmed]), path: method.path }];
    notTaken.set(`${method.path} ${key}`, notTakenOf(unit, { path: method.path, way: method.way, why: way }));
    return [];
  });
  return { made, notTaken: [...notTaken.values()], met: [...met] };
};

/** Of a cloth that is drawn from a list each is named. */
const notTakenOf = ({ kind, size, fabrics }: Unit, of: Pick<NotTaken, 'path' | 'way' | 'why'>): NotTaken => ({
  ...of,
  unit: kind,
  size,
  fabrics: fabrics.flatMap((list) => list.split(drawnSign)),
});

/** Between the cloths that a patch is drawn from: no id holds it. */
const drawnSign = '|';

/** Every unit of a block that can be made in more than one way, where it stands. */
export const unitsOf = (of: Pick<UnitsOfBlock, 'block' | 'lists' | 'memory'>): readonly Unit[] => {
  const { block, lists, memory = noRecall } = of;
  const slack = cornerTolerance * Math.max(...block.size);
  const core = block.patches.slice(0, block.patches.length - (block.added?.length ?? 0));
  return memory.recall(JSON.stringify(['units', core, lists]), () =>
    unitsIn(
      core.map((patch, i) => ({
        points: outlineOf(patch, slack),
        fabric: (lists[i] as readonly string[]).join(drawnSign),
      })),
      slack,
    ),
  );
};

export interface UnitPlace {
  /** By patch of the block: the cloths that it may be cut from, and its tone. */
  readonly lists: readonly (readonly string[])[];
  readonly tones: readonly string[];
  readonly motifs: readonly string[];
  readonly natures: Natures;
  readonly rule: CutRule;
}

/** A way as it is open to a unit of this quilt, or why it is not. */
export const wayOf = (
  of: UnitPlace,
  asked: {
    readonly unit: Unit;
    readonly name: WayName;
    readonly trimmed: boolean;
    /** Made together. */
    readonly units: number;
  },
): Way | NotMade => {
  const { unit } = asked;
  if (unit.patches.some((patch) => (of.lists[patch] as readonly string[]).length > 1)) return 'drawn';
  if (unit.patches.some((patch) => of.motifs.includes(of.tones[patch] ?? ''))) return 'motif';
  const natures = unit.fabrics.map((fabric) => of.natures.get(fabric));
  const widths = natures.map((nature) => nature?.width ?? length(0));
  const way = wayFor({ ...asked, rule: of.rule, room: { units: asked.units, widths } });
  if (typeof way === 'string') return way;
  // what is flipped or sewn first and cut apart then comes to lie another way; a base that stays as it is cut does not
  const turns = (place: number): boolean => way.name !== 'singly' && !(way.name === 'sew-and-flip' && place === 0);
  if (natures.some((nature, place) => nature?.print !== 'none' && turns(place))) return 'print';
  const isTooLarge = way.cuts.some((cut, place) => {
    const { width = 0, length: long = null } = natures[place] ?? {};
    const [short, wide] = [Math.min(...(cut?.size ?? [0])), Math.max(...(cut?.size ?? [0]))];
    return short > width || wide > Math.max(width, long ?? Number.POSITIVE_INFINITY);
  });
  return isTooLarge ? 'too-large' : way;
};

const isMeant = ({ unit: kind, size, fabrics }: Method, unit: Unit): boolean => {
  if (kind !== unit.kind) return false;
  const sides = size?.map(toNumber).toSorted((a, b) => a - b);
  const own = unit.size.toSorted((a, b) => a - b);
  if (sides?.some((side, i) => Math.abs(side - (own[i] as number)) > 1e-6)) return false;
  if (fabrics === null) return true;
  return JSON.stringify(toldCloths(kind, fabrics)) === JSON.stringify(toldCloths(kind, unit.fabrics));
};

/** Cloths as a choice names them: each once, in any order where turning the unit changes it. */
export const toldCloths = (kind: UnitKind, fabrics: readonly string[]): readonly string[] => {
  const cloths = [...new Set(fabrics)];
  return kind === 'half-square' || kind === 'quarter-square' ? cloths.toSorted() : cloths;
};

/** Units of one set in one entry of the plan, and how many the entry has. */
export interface SetUse {
  readonly entry: number;
  readonly units: number;
}

/** By name of set: the entries that share it. */
export const setUses = (
  entries: readonly { readonly made: readonly MadeUnit[]; readonly count: number }[],
): ReadonlyMap<string, readonly SetUse[]> => {
  const uses = new Map<string, { readonly entry: number; units: number }[]>();
  entries.forEach(({ made, count }, entry) => {
    for (const { set } of made) {
      const own = uses.get(set) ?? [];
      uses.set(set, own);
      const known = own.find((use) => use.entry === entry);
      if (known) known.units += count;
      else own.push({ entry, units: count });
    }
  });
  return uses;
};

/** Strips are cut for all units of the quilt that are made of them. */
export const withSharedStrips = (
  made: readonly MadeUnit[],
  of: {
    readonly uses: ReadonlyMap<string, readonly SetUse[]>;
    readonly natures: Natures;
    readonly rule: CutRule;
  },
): readonly MadeUnit[] =>
  made.map((one) => {
    const { unit, way } = one;
    if (way.name !== 'strip-sets') return one;
    const units = (of.uses.get(one.set) ?? []).reduce((all, use) => all + use.units, 0);
    const widths = unit.fabrics.map((fabric) => of.natures.get(fabric)?.width ?? length(0));
    const { name, trimmed } = way;
    const shared = wayFor({ unit, name, trimmed, rule: of.rule, room: { units, widths } });
    return typeof shared === 'string' ? one : { ...one, way: shared };
  });

/** What tells the patches of made units from others of their cloth: no id holds its sign. */
export const wayMarks = (made: readonly MadeUnit[], patches: number): readonly string[] => {
  const keys = [...new Set(made.map(({ key }) => key))];
  const marks = Array.from({ length: patches }, () => '');
  for (const { unit, way, key } of made) {
    unit.patches.forEach((patch, place) => {
      marks[patch] = `~${keys.indexOf(key)}.${way.roles[place]}`;
    });
  }
  return marks;
};

/** Units that the steps do not make by themselves: the order of joining runs through them. */
export const unmade = (made: readonly MadeUnit[], steps: readonly SewingStep[]): ReadonlySet<string> => {
  const wanted = new Map<string, number>();
  const keyOf = new Map<string, string>();
  for (const { unit, key } of made) {
    wanted.set(key, (wanted.get(key) ?? 0) + 1);
    keyOf.set(inRising(unit.patches), key);
  }
  for (const { patches, perBlock } of steps) {
    const key = keyOf.get(inRising(patches.flat()));
    if (key !== undefined) wanted.set(key, (wanted.get(key) as number) - perBlock);
  }
  return new Set([...wanted].flatMap(([key, left]) => (left === 0 ? [] : [key])));
};

export const inRising = (patches: readonly number[]): string => patches.toSorted((a, b) => a - b).join();

/** Units of these keys are left out, and told. */
export const withoutUnits = (
  all: ReturnType<typeof madeUnits>,
  left: ReadonlySet<string>,
  why: NotMade,
): ReturnType<typeof madeUnits> => ({
  ...all,
  made: all.made.filter(({ key }) => !left.has(key)),
  notTaken: [
    ...all.notTaken,
    ...[...left].flatMap((key): readonly NotTaken[] => {
      const one = all.made.find((made) => made.key === key);
      return one === undefined ? [] : [notTakenOf(one.unit, { path: one.path, way: one.way.name, why })];
    }),
  ],
});

export const wayCutAt = (made: readonly MadeUnit[], patch: number): Cut | null => {
  for (const { unit, way, set } of made) {
    const place = unit.patches.indexOf(patch);
    const cut = place < 0 ? null : (way.cuts[place] ?? null);
    if (cut !== null) return cut.perSet === undefined ? cut : { ...cut, setOf: `${set} ${way.roles[place]}` };
  }
  return null;
};

export const notTakenNote = ({ path, ...taken }: NotTaken): Note => ({
  code: 'ways/not-taken',
  level: 'warning',
  path,
  ...taken,
});

/** Ways that are chosen for units of which the quilt has none. */
export const unmetNotes = (
  quilt: Quilt,
  pieced: readonly { readonly made: { readonly met: readonly string[] } }[],
): readonly Note[] => {
  const met = new Set(pieced.flatMap(({ made }) => made.met));
  return [...(quilt.methods ?? []), ...quilt.blocks.flatMap(({ methods = [] }) => methods)].flatMap(
    ({ path, unit, way }): readonly Note[] =>
      met.has(path) ? [] : [{ code: 'ways/no-such-unit', level: 'warning', path, unit, way }],
  );
};

/** The made unit that a step belongs to, and what the step joins by the unit's places. */
export interface UnitAt {
  readonly made: MadeUnit;
  readonly parts: readonly [readonly number[], readonly number[]];
}

/** Null where the step joins something else. */
export const unitAt = (made: readonly MadeUnit[], step: Pick<SewingStep, 'patches'>): UnitAt | null => {
  for (const one of made) {
    const placesOf = (patches: readonly number[]) => patches.map((patch) => one.unit.patches.indexOf(patch));
    const parts = [placesOf(step.patches[0]), placesOf(step.patches[1])] as const;
    if (parts.every((places) => places.every((place) => place >= 0))) return { made: one, parts };
  }
  return null;
};
