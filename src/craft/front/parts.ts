// What each part of a quilt takes by the ways of its own units. Blocks that have a unit in common are one part; two parts meet only
// where pieces of one size are cut from one cloth. Nothing is laid out here.
import { blockCutter, blockMinutes, type MadeCut, sewnMinutes, type WantedPiece } from '#craft';
import type { Recall } from '#ground/recall';
import { entryOf, type UnitGroup } from './groups.ts';
import { type Choice, everyChoice } from './likely.ts';
import { methodsFor } from './methods-for.ts';
import type { Taken } from './weighing.ts';

/** Blocks whose units no other blocks have. */
export interface QuiltPart {
  /** Indexes of the groups that are chosen for. */
  readonly groups: readonly number[];
  /** One for every choice of ways for these groups. */
  readonly options: readonly PartOption[];
}

export interface PartOption {
  /** By group of the part. */
  readonly choice: Choice;
  /** To sew the part's blocks. */
  readonly minutes: number;
  /** By entry of the plan: of the part's blocks. */
  readonly pieces: readonly (readonly WantedPiece[])[];
}

export interface QuiltParts {
  readonly parts: readonly QuiltPart[];
  /** What is sewn and finished whichever ways are gone. */
  readonly minutes: number;
  /** What is cut whichever ways are gone; one list for each way in which the borders may lie. */
  readonly pieces: readonly (readonly WantedPiece[])[];
}

/** Choices for one part at most: our own figure, for time's sake. */
const mostOptions = 150;

/**
 * One `next()` cuts the blocks of every part that has a way left to try.
 *
 * @param of.now the quilt as some choice has it
 * @returns null where a part has too many choices, or one that has no plan
 */
export function* partsOf(of: {
  readonly now: MadeCut;
  readonly groups: readonly UnitGroup[];
  readonly memory?: Recall;
}): Generator<void, QuiltParts | null, void> {
  const { now, groups } = of;
  const own = partedGroups(groups);
  const choices = own.map((part) => everyChoice(part.map((group) => [...(groups[group] as UnitGroup).options.keys()])));
  const most = Math.max(0, ...choices.map((list) => list.length));
  if (most > mostOptions) return null;
  const cutFor = blockCutter(now.quilt, of.memory ? { memory: of.memory } : {});
  const names = own.map((part) => new Set(part.flatMap((group) => groups[group]?.entries ?? [])));
  const order = now.blocks.map(entryOf);
  const options: PartOption[][] = own.map(() => []);
  for (let at = 0; at < most; at++) {
    const open = [...own.keys()].filter((part) => at < (choices[part] as readonly Choice[]).length);
    const taken = choices.map((list) => list[Math.min(at, list.length - 1)] as Choice);
    const cut = cutFor(
      methodsFor(groups, inWhole({ parts: own, taken, groups: groups.length })),
      new Set(open.flatMap((part) => [...(names[part] as ReadonlySet<string>)])),
    );
    if (cut === null) return null;
    for (const part of open)
      options[part]?.push({
        choice: taken[part] as Choice,
        minutes: minutesOf(cut, names[part] as ReadonlySet<string>),
        pieces: order.map((name) => (names[part]?.has(name) ? piecesIn(cut.pieces, name) : [])),
      });
    yield;
  }
  const inParts = new Set(names.flatMap((list) => [...list]));
  return {
    parts: own.map((part, i) => ({ groups: part, options: options[i] as PartOption[] })),
    minutes: sewnMinutes(now) - minutesOf(now, inParts),
    pieces: now.pieces.map((list) => list.filter((piece) => !inParts.has(entryOfPiece(piece)))),
  };
}

/** The choice for all groups, where each part's is known; of others the first. */
export const inWhole = (of: {
  readonly parts: readonly (readonly number[])[];
  readonly taken: readonly Choice[];
  readonly groups: number;
}): Choice => {
  const choice = Array.from({ length: of.groups }, () => 0);
  of.parts.forEach((part, i) => {
    part.forEach((group, k) => {
      choice[group] = of.taken[i]?.[k] ?? 0;
    });
  });
  return choice;
};

/** The same, of options by part. */
export const inGroups = ({ parts }: QuiltParts, taken: Choice, groups: number): Choice =>
  inWhole({
    parts: parts.map((part) => part.groups),
    taken: parts.map(({ options }, part) => options[taken[part] as number]?.choice ?? []),
    groups,
  });

/** All that a choice takes. */
export const takenIn = ({ parts, minutes, pieces }: QuiltParts, choice: Choice): Taken => {
  const options = parts.map(({ groups, options }) => {
    const own = groups.map((group) => choice[group]).join();
    return options.find((option) => option.choice.join() === own) as PartOption;
  });
  const entries = options[0]?.pieces.map((_, entry) => options.flatMap((option) => option.pieces[entry] ?? [])) ?? [];
  return {
    minutes: options.reduce((all, option) => all + option.minutes, minutes),
    pieces: pieces.map((fixed) => [...entries.flat(), ...fixed]),
  };
};

/** Groups with more than one way, those together that some block has both of, over any number of blocks. */
const partedGroups = (groups: readonly UnitGroup[]): readonly (readonly number[])[] => {
  const partOf = new Map<string, number[]>();
  groups.forEach(({ entries, options }, group) => {
    if (options.length < 2) return;
    const met = new Set(entries.flatMap((name) => partOf.get(name) ?? []));
    const part = [...met, group];
    const names = new Set([...entries, ...part.flatMap((one) => groups[one]?.entries ?? [])]);
    for (const name of names) partOf.set(name, part);
  });
  return [...new Set(partOf.values())].map((part) => part.toSorted((a, b) => a - b));
};

const minutesOf = (cut: Pick<MadeCut, 'quilt' | 'blocks'>, names: ReadonlySet<string>): number =>
  cut.blocks.reduce((all, block) => all + (names.has(entryOf(block)) ? blockMinutes(cut, block) : 0), 0);

const piecesIn = (pieces: readonly WantedPiece[], name: string): readonly WantedPiece[] =>
  pieces.filter((piece) => entryOfPiece(piece) === name);

/** "" of pieces that belong to no block. */
const entryOfPiece = ({ use: { block, colouring, mirror } }: WantedPiece): string =>
  block === null || colouring === null ? '' : entryOf({ id: block, colouring, mirror });
