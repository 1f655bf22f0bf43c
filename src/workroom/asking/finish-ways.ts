// What a part of the finish takes of the cloths, and what another way of making it would take: told before the maker chooses. Both
// are laid out with the same care, so that the difference is of the way and not of the search.
import { type FabricPlan, type QuiltPlan, refinish } from '#craft';
import { type FinishDesign, readQuilt } from '#craft/design';
import { fromDecimal, sub, toNumber } from '#ground/exact';
import { isSame, type Json, type JsonObject } from '#workroom/editing';
import type { Reply } from './answer.ts';
import { planFirst } from './asking.ts';
import { refusedIn } from './refused.ts';

/** The document finished in another way. */
export interface FinishWay {
  readonly key: string;
  readonly finish: JsonObject;
  /** Its borders are left out of the reckoning; the quilt is as large. */
  readonly borders?: 'left-out';
}

export interface WayPrice {
  readonly key: string;
  /** What is bought more or less than as it stands, cloths that stay the same left out; null: it cannot be cut from its cloth. */
  readonly cloths: readonly ClothMore[] | null;
  /** In money, the batting with it, where every one of these cloths has a price. */
  readonly cost: number | null;
}

export interface ClothMore {
  readonly id: string;
  /** Below zero: less. */
  readonly amount: number;
  readonly unit: FabricPlan['buy']['unit'];
}

export interface FinishPrices {
  readonly ways: readonly WayPrice[];
  /** As the document names it; "" where it names none. */
  readonly currency: string;
}

export const askFinishWays = (document: JsonObject, ways: readonly FinishWay[]): Reply<FinishPrices> => {
  const planned = planFirst(document);
  if (!planned.ok) return refusedIn(planned, document);
  const plan = planned.value;
  const known: Around = { plan, document, own: objectOr(document.finish) };
  return { ok: true, value: { ways: ways.map((way) => priceOf(way, known)), currency: plan.cost.currency } };
};

interface Around {
  readonly plan: QuiltPlan;
  readonly document: JsonObject;
  readonly own: JsonObject;
}

const search = { steps: 0, solver: null } as const;
const borderRoles = new Set(['border', 'spacer', 'border-corner'] as const);

const priceOf = (way: FinishWay, { plan, document, own }: Around): WayPrice => {
  const { key } = way;
  const finish = designOf({ ...document, finish: way.finish });
  if (finish === null) return { key, cloths: null, cost: null };
  const isWithoutBorders = way.borders === 'left-out';
  const fabrics = new Set([
    ...clothsTouched(own, way.finish),
    ...(isWithoutBorders ? plan.top.pieces.filter(isOfBorder).map(({ fabric }) => fabric) : []),
  ]);
  const laid = refinish({ plan, finish, fabrics, search, ...(isWithoutBorders ? { without: borderRoles } : {}) });
  if (laid === null) return { key, cloths: null, cost: null };
  const is = new Map(laid.map((fabric) => [fabric.id, fabric]));
  const was = new Map(plan.fabrics.map((fabric) => [fabric.id, fabric]));
  const cloths = [...fabrics].flatMap((id) => moreOf(id, { was: was.get(id), is: is.get(id) }));
  const costs = cloths.map(({ id }) => costMore({ was: was.get(id), is: is.get(id) }));
  const batting = minus(battingOf(finish), battingOf(plan.quilt.finish));
  const cost = costs.some((one) => one === null) ? null : costs.reduce<number>((all, one) => all + (one ?? 0), batting);
  return { key, cloths, cost };
};

/** Without a price it costs nothing that is known. */
const battingOf = ({ batting }: FinishDesign): number => (batting?.price ? toNumber(batting.price) : 0);

const isOfBorder = ({ role }: QuiltPlan['top']['pieces'][number]): boolean =>
  (borderRoles as ReadonlySet<string>).has(role);

interface Both {
  /** Undefined: nothing is cut from the cloth. */
  readonly was: FabricPlan | undefined;
  readonly is: FabricPlan | undefined;
}

const moreOf = (id: string, { was, is }: Both): readonly ClothMore[] => {
  const unit = (is ?? was)?.buy.unit;
  const amount = minus(is?.buy.amount ?? 0, was?.buy.amount ?? 0);
  return unit === undefined || amount === 0 ? [] : [{ id, amount, unit }];
};

const costMore = ({ was, is }: Both): number | null => {
  const [before, after] = [was === undefined ? 0 : was.cost, is === undefined ? 0 : is.cost];
  return before === null || after === null ? null : minus(after, before);
};

/** Amounts and prices are decimals and eighths: their difference has no rest. */
const minus = (a: number, b: number): number => toNumber(sub(fromDecimal(a), fromDecimal(b)));

/** Null where the document cannot be read so. */
const designOf = (document: JsonObject): FinishDesign | null => {
  const read = readQuilt(document);
  return read.ok ? read.value.finish : null;
};

/** Cloths of the parts that differ. */
const clothsTouched = (own: JsonObject, other: JsonObject): readonly string[] => {
  const parts = [...new Set([...Object.keys(own), ...Object.keys(other)])];
  return parts.flatMap((part) => {
    const [a, b] = [own[part] ?? null, other[part] ?? null];
    return isSame(a, b) ? [] : [a, b].flatMap((one) => clothOf(one));
  });
};

const clothOf = (part: Json): readonly string[] => {
  const { fabric } = objectOr(part);
  return typeof fabric === 'string' ? [fabric] : [];
};

const objectOr = (value: Json | undefined): JsonObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as JsonObject) : {};
