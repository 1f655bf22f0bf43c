// Each join beside what it costs by itself and what it takes, told once: the search for an order reads them many times over.

import { type Choice, curvesOf, formsIn, type Join, type JoinTask, type Ways } from './join.ts';

export interface WeighedJoin {
  readonly form: number;
  readonly join: Join;
  /** Inside corners, rings and curved seams of this join alone. */
  readonly corners: number;
  readonly rings: number;
  readonly curves: number;
  /** Forms of its parts, and kinds of the single pieces it takes: each as often as it takes them. */
  readonly forms: readonly number[];
  readonly kinds: readonly number[];
}

/** By form; forms that were met and are no part of the unit have none. */
export type WeighedWays = readonly (readonly WeighedJoin[] | undefined)[];

/** By form, as a choice that is being made has it. */
export type Picked = (WeighedJoin | undefined)[];

export const weighed = ({ kindOf }: Pick<JoinTask, 'kindOf'>, ways: Ways): WeighedWays => {
  // filled first: a list with few of its places filled is slow to read
  const all = new Array<readonly WeighedJoin[] | undefined>(1 + Math.max(...ways.joins.keys())).fill(undefined);
  for (const [form, joins] of ways.joins) all[form] = joins.map((join) => weighedJoin(kindOf, form, join));
  return all;
};

const weighedJoin = (kindOf: readonly number[], form: number, join: Join): WeighedJoin => {
  const forms = formsIn(join);
  const kinds = forms.length === join.branches.length ? none : kindsIn(join, kindOf);
  return {
    form,
    join,
    corners: join.kind === 'seam' ? join.bends : 0,
    rings: join.kind === 'ring' ? 1 : 0,
    curves: curvesOf(join),
    forms,
    kinds,
  };
};

const none: readonly number[] = [];

const kindsIn = ({ branches }: Join, kindOf: readonly number[]): readonly number[] => {
  const kinds: number[] = [];
  for (const branch of branches) if ('patch' in branch) kinds.push(kindOf[branch.patch] as number);
  return kinds;
};

export const chosenIn = (picked: Picked): Choice => {
  const choice = new Map<number, Join>();
  for (const one of picked) if (one !== undefined) choice.set(one.form, one.join);
  return choice;
};
