// Two versions side by side, line by line: what each comes to, and in words by how much the second is other than the first.
import { convert, type Unit } from '#craft/measure';
import { rational, toNumber } from '#ground/exact';
import { withTrueFractions } from '#paper/lengths';
import { amountMoreText, moneyMoreText, moneyText } from '#paper/pages';
import { amountText, inWords } from '#paper/words';
import type { VersionCloth, VersionSeen } from '#workroom/compute';
import { buyWords, countWords, type LengthWords } from '#workroom/room';

export interface Line {
  readonly name: string;
  /** Of a cloth: its colour. */
  readonly colour: string | null;
  readonly first: string;
  readonly second: string;
  /** Of the second against the first. */
  readonly difference: string;
  readonly isSame: boolean;
}

export interface Both {
  readonly first: VersionSeen;
  readonly second: VersionSeen;
  readonly words: { readonly first: LengthWords; readonly second: LengthWords };
  /** Cloths of one quilt are known by their ids; those of two by their names as well. */
  readonly are: 'one-quilt' | 'two-quilts';
}

const same = 'the same';
const noPrices = 'no prices in either';

export const linesOf = (both: Both): readonly Line[] => [
  ...inAll(both),
  ...clothsIn(both).map((pair) => clothLine(pair, both)),
];

const inAll = (both: Both): readonly Line[] => {
  const { first, second, words } = both;
  const line = (name: string, [a, b]: readonly [string, string], difference: string): Line => ({
    name,
    colour: null,
    first: a,
    second: b,
    difference,
    isSame: difference === same || difference === noPrices,
  });
  const count = (name: string, of: (version: VersionSeen) => number): Line =>
    line(name, [String(of(first)), String(of(second))], countMore(of(second) - of(first)));
  return [
    line('Size', [words.first.nearSize(first.size), words.second.nearSize(second.size)], sizeMore(both)),
    line('Blocks', [blockWords(first), blockWords(second)], countMore(second.blocks - first.blocks)),
    count('Pieces', ({ pieces }) => pieces),
    count('Seams', ({ seams }) => seams),
    ...timed.map(([name, of]) =>
      line(name, [hoursWords(first[of]), hoursWords(second[of])], timeMore(second[of] - first[of])),
    ),
    line('Cloth to buy', [buyWords(first.buy), buyWords(second.buy)], buyMore(first.buy, second.buy)),
    line('Left over', [shareWords(first.leftOver), shareWords(second.leftOver)], shareMore(both)),
    line('Cost', [costWords(first), costWords(second)], costMore(first, second)),
    line('Backing', [sizeOr(first, words.first), sizeOr(second, words.second)], backingMore(both)),
    line('Binding', [lengthOr(first, words.first), lengthOr(second, words.second)], bindingMore(both)),
  ];
};

/** In all, and what it is made of. */
const timed = [
  ['Time', 'minutes'],
  ['of it to cut', 'cutting'],
  ['of it to sew', 'sewing'],
  ['of it to finish', 'finishing'],
] as const;

const blockWords = ({ blocks, kinds }: VersionSeen): string =>
  `${blocks}${kinds > 1 ? ` of ${countWords(kinds, 'kind', 'kinds')}` : ''}`;

const countMore = (by: number): string => (by === 0 ? same : `${Math.abs(by)} ${by > 0 ? 'more' : 'fewer'}`);

/**
 * By how much the second's length is more, in the first one's unit: where the units differ to an eighth of an inch or a millimetre, as no
 * ruler tells more.
 */
const lengthMore = ({ first, second }: Both, [a, b]: readonly [number, number]): number => {
  const { unit } = first;
  if (unit === second.unit) return b - a;
  const by = b * toNumber(convert(rational(1), { from: second.unit, to: unit })) - a;
  return Math.round(by * finest[unit]) / finest[unit];
};

const finest: Readonly<Record<Unit, number>> = { in: 8, cm: 10 };

/** "3 in", "about 2¼ in": what is in two units is near at best, and less than half a mark is told as it is. */
const byWords = ({ first, second, words }: Both, by: number): string => {
  const long = Math.abs(by);
  if (first.unit !== second.unit) return `about\u00a0${words.first.length(long)}`;
  return long * finest[first.unit] < 0.5 ? words.first.length(long) : words.first.near(long);
};

type Size = VersionSeen['size'];

const sizeMore = (both: Both): string => sidesMore(both, both.first.size, both.second.size);

const sidesMore = (both: Both, first: Size, second: Size): string => {
  const [width, height] = second.map((side, i) => lengthMore(both, [first[i] as number, side]));
  const told = [
    { by: width ?? 0, more: 'wider', less: 'narrower' },
    { by: height ?? 0, more: 'longer', less: 'shorter' },
  ].flatMap(({ by, more, less }) => (isNone(by) ? [] : [`${byWords(both, by)} ${by > 0 ? more : less}`]));
  return told.length === 0 ? same : inWords(told);
};

const isNone = (by: number): boolean => Math.abs(by) < 1e-6;

/** "11 h 55 min": to the five minutes that are an estimate's finest. */
const hoursWords = (minutes: number): string => {
  const whole = Math.round(minutes / 5) * 5;
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return [...(hours === 0 ? [] : [`${hours}\u00a0h`]), ...(rest === 0 && hours > 0 ? [] : [`${rest}\u00a0min`])].join(
    ' ',
  );
};

const timeMore = (by: number): string => {
  if (by === 0) return same;
  return Math.abs(by) < 2.5 ? 'about the same' : `about ${hoursWords(Math.abs(by))} ${by > 0 ? 'longer' : 'less'}`;
};

type Buy = VersionSeen['buy'];

/** By the yard and by the metre are one length, told as the first has it; sheets are counted by themselves. */
const buyMore = (first: Buy, second: Buy): string => {
  const length =
    first.find(({ unit }) => unit !== 'sheets')?.unit ?? second.find(({ unit }) => unit !== 'sheets')?.unit;
  const isMixed = second.some(({ unit }) => unit !== 'sheets' && unit !== length);
  const units = [...(length === undefined ? [] : [length]), 'sheets' as const];
  const told = units.flatMap((unit) => {
    const by = amountIn(second, unit) - amountIn(first, unit);
    const shown = isMixed && unit !== 'sheets' ? Math.round(by * steps[unit]) / steps[unit] : by;
    return isNone(shown) ? [] : [`${isMixed && unit !== 'sheets' ? 'about ' : ''}${amountMoreText(shown, unit)}`];
  });
  return told.length === 0 ? same : inWords(told);
};

/** What shops commonly cut: an eighth of a yard, a tenth of a metre. */
const steps = { yd: 8, m: 10 } as const;
const metresInYard = 0.9144;

const amountIn = (buy: Buy, unit: Buy[number]['unit']): number =>
  buy.reduce((all, one) => all + (isLengths(one.unit, unit) ? one.amount * inOther(one.unit, unit) : 0), 0);

const isLengths = (one: Buy[number]['unit'], other: Buy[number]['unit']): boolean =>
  one === other || (one !== 'sheets' && other !== 'sheets');

const inOther = (from: Buy[number]['unit'], to: Buy[number]['unit']): number => {
  if (from === to) return 1;
  return to === 'm' ? metresInYard : 1 / metresInYard;
};

const shareWords = (share: number): string => `${Math.round(share * 100)}\u00a0%`;

/** In points, as it is the share of another whole. */
const shareMore = ({ first, second }: Both): string => {
  const by = Math.round(second.leftOver * 100) - Math.round(first.leftOver * 100);
  return by === 0
    ? same
    : `${countWords(Math.abs(by), 'percentage point', 'percentage points')} ${by > 0 ? 'more' : 'less'}`;
};

const costWords = ({ cost, currency, unpriced }: VersionSeen): string => {
  if (cost === null) return 'no prices';
  const without =
    unpriced === 0
      ? ''
      : `, without ${countWords(unpriced, 'cloth', 'cloths')} that ${unpriced === 1 ? 'has' : 'have'} no price`;
  return `${moneyText(cost, currency)}${without}`;
};

const costMore = (first: VersionSeen, second: VersionSeen): string => {
  if (first.cost === null && second.cost === null) return noPrices;
  if (first.cost === null || second.cost === null) return 'one of them has no prices';
  if (first.currency !== second.currency) return 'in another currency';
  return moneyMore(second.cost - first.cost, first.currency);
};

const moneyMore = (by: number, currency: string): string => moneyMoreText(by, currency) || same;

const sizeOr = ({ backing }: VersionSeen, words: LengthWords): string =>
  backing === null ? 'none' : words.nearSize(backing);

const backingMore = (both: Both): string => {
  const [a, b] = [both.first.backing, both.second.backing];
  if (a === null || b === null) return a === b ? same : onlyIn(b === null ? 'first' : 'second');
  return sidesMore(both, a, b);
};

const lengthOr = ({ binding }: VersionSeen, words: LengthWords): string =>
  binding === null ? 'none' : words.near(binding);

const bindingMore = (both: Both): string => {
  const [a, b] = [both.first.binding, both.second.binding];
  if (a === null || b === null) return a === b ? same : onlyIn(b === null ? 'first' : 'second');
  const by = lengthMore(both, [a, b]);
  return isNone(by) ? same : `${byWords(both, by)} ${by > 0 ? 'longer' : 'shorter'}`;
};

const onlyIn = (which: 'first' | 'second'): string => `only in the ${which}`;

interface ClothPair {
  readonly first: VersionCloth | null;
  readonly second: VersionCloth | null;
}

/** Cloths of the first in their order, then those that the second alone has. */
const clothsIn = ({ first, second, are }: Both): readonly ClothPair[] => {
  const isOne = (a: VersionCloth, b: VersionCloth): boolean =>
    a.id === b.id && (are === 'one-quilt' || a.name === b.name);
  const pairs = first.cloths.map((cloth) => ({
    first: cloth,
    second: second.cloths.find((other) => isOne(cloth, other)) ?? null,
  }));
  const paired = new Set(pairs.flatMap((pair) => pair.second ?? []));
  const alone = second.cloths.filter((cloth) => !paired.has(cloth));
  return [...pairs, ...alone.map((cloth) => ({ first: null, second: cloth }))];
};

const clothLine = ({ first, second }: ClothPair, both: Both): Line => {
  const name = first?.name ?? second?.name ?? '';
  const renamed =
    first !== null && second !== null && first.name !== second.name ? `${name}, then ${second.name}` : name;
  const told = (cloth: VersionCloth | null, currency: string): string => {
    if (cloth === null) return 'not used';
    const amount = withTrueFractions(amountText(cloth.amount, cloth.unit));
    return cloth.cost === null ? amount : `${amount}, ${moneyText(cloth.cost, currency)}`;
  };
  const difference = clothMore({ first, second }, both);
  return {
    name: renamed,
    colour: first?.colour ?? second?.colour ?? null,
    first: told(first, both.first.currency),
    second: told(second, both.second.currency),
    difference,
    isSame: difference === same,
  };
};

const clothMore = ({ first, second }: ClothPair, both: Both): string => {
  if (first === null) return onlyIn('second');
  if (second === null) return onlyIn('first');
  if (!isLengths(first.unit, second.unit)) return 'bought in another way';
  const money =
    first.cost === null || second.cost === null || both.first.currency !== both.second.currency
      ? same
      : moneyMore(second.cost - first.cost, both.first.currency);
  const cloth = buyMore([first], [second]);
  const told = [cloth, money].filter((one) => one !== same);
  return told.length === 0 ? same : told.join(', ');
};
