// The units of a quilt that can be made in more than one way, and the choices that are worth it, as they are found: figures to plot and
// compare, and what the document writes for each.
import type { QuiltPlan } from '#craft';
import { toDocument } from '#craft/design';
import { type Front, type FrontPoint, methodsFor, searchFront, type UnitGroup, usualFront } from '#craft/front';
import { recalling } from '#ground/recall';
import { moneyText } from '#paper/pages';
import { closedTexts, differenceTexts, groupText, hoursText, listedPoints, optionText, wholeText } from '#paper/ways';
import type { Json } from '#workroom/editing';

export interface WaysSeen {
  readonly groups: readonly WaysGroup[];
  /** From the least cloth on. */
  readonly points: readonly WaysPoint[];
  readonly now: WaysPoint;
  /** Points that lie between those told. */
  readonly between: number;
  /** How many choices were planned, and of how many. */
  readonly told: string;
}

export interface WaysGroup {
  /** "48 flying geese, 4 × 2 in, of Mist and Slate". */
  readonly name: string;
  /** Titles of the blocks that have them. */
  readonly blocks: readonly string[];
  readonly ways: readonly string[];
  /** By way: what the document writes where this group alone is made otherwise. */
  readonly methodsFor: readonly Json[];
  /** Why others are not open. */
  readonly closed: readonly string[];
}

export interface WaysPoint {
  /** Its ways, by group, as an address has them. */
  readonly key: string;
  /** By group: which of its ways. */
  readonly ways: readonly number[];
  /** Over all cloths, in the document's unit. */
  readonly cloth: number;
  readonly minutes: number;
  /** One standard deviation of a unit's side, in the document's unit. */
  readonly deviation: number;
  readonly time: string;
  /** "" without prices. */
  readonly cost: string;
  /** Against the quilt as it is; empty where all is the same. */
  readonly differences: readonly string[];
  /** As the document writes it. */
  readonly methods: Json;
}

/** Plans that are like each other in most: our own figure. */
const memoryFor = 5_000;

/** One after another, each better than the one before; the last one is whole. */
export function* seeWays(plan: QuiltPlan): Generator<WaysSeen, WaysSeen, void> {
  const search = searchFront({ plan, ...usualFront, memory: recalling(memoryFor) });
  let told: Front | null = null;
  for (let at = search.next(); ; at = search.next()) {
    if (at.done === true) return waysSeen(plan, at.value);
    // while blocks are cut in their ways and cloths are laid, mostly nothing is new
    if (at.value !== told) yield waysSeen(plan, at.value);
    told = at.value;
  }
}

const waysSeen = (plan: QuiltPlan, front: Front): WaysSeen => {
  const listed = listedPoints(front);
  return {
    groups: front.groups.map((group, at) => groupSeen({ plan, front, group, at })),
    points: listed.map((point) => pointSeen(plan, front, point)),
    now: pointSeen(plan, front, front.now),
    between: front.points.length - listed.length,
    told: wholeText(plan, front),
  };
};

const groupSeen = (of: {
  readonly plan: QuiltPlan;
  readonly front: Front;
  readonly group: UnitGroup;
  readonly at: number;
}): WaysGroup => {
  const { plan, front, group, at } = of;
  return {
    name: groupText(plan, group),
    blocks: group.blocks.map((id) => plan.blocks.find((block) => block.id === id)?.title ?? id),
    ways: group.options.map(optionText),
    methodsFor: group.options.map((_, option) =>
      writtenFor(
        plan,
        front,
        front.now.choice.map((own, i) => (i === at ? option : own)),
      ),
    ),
    closed: closedTexts(group),
  };
};

const pointSeen = (plan: QuiltPlan, front: Front, point: FrontPoint): WaysPoint => ({
  key: point.choice.join('.'),
  ways: point.choice,
  cloth: point.cloth,
  minutes: point.minutes,
  deviation: point.deviation,
  time: hoursText(point.minutes),
  cost: point.cost === null ? '' : moneyText(point.cost, plan.cost.currency),
  differences: differenceTexts({ plan, now: front.now, point }),
  methods: writtenFor(plan, front, point.choice),
});

/** The same words as the document of the whole quilt. */
const writtenFor = ({ quilt }: QuiltPlan, { groups }: Front, choice: FrontPoint['choice']): Json =>
  (toDocument({ ...quilt, methods: methodsFor(groups, choice) }).methods ?? []) as unknown as Json;
