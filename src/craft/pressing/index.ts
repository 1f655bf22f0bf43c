// Pressing: every seam of the blocks and of the top gets its way, so that as many as can nest where they meet.
import type { QuarterTurn } from '#craft/design';
import { type TopSeam, topSeams } from '#craft/piecing';
import type { SetTop } from '#craft/setting';
import type { Point } from '#ground/plane';
import { type SewnSeams, type StudiedBlock, slackOf, studyBlock } from './block.ts';
import { type Laid, layWell, meetingsOf, type TopPress, topPress } from './laying.ts';
import type { Pressed, PressTask, TopMeeting, TopWhose, Variants } from './model.ts';
import { doNest, type Press, type SidePress, wayAt } from './press.ts';
import type { Meeting, SeamEnd } from './spots.ts';
import { type InTop, spotsInTop } from './spots-in-top.ts';
import { turnedRim } from './turned-rim.ts';

export { spotsInBlock } from './block.ts';
export { meetingPlacesIn, meetingPlacesOf } from './places.ts';
export { isSpun, type Press, pressInMirror, type SidePress } from './press.ts';

/** Blocks of one entry: of one design and colouring, mirrored or not. */
export interface EntryToPress {
  readonly pieced: SewnSeams;
  readonly size: readonly [number, number];
  /** Indexes into the top's placed blocks. */
  readonly places: readonly number[];
  /** By place: the quarter turns, clockwise, that leave its look in the top as it is; where missing, none is turned. */
  readonly turns?: readonly (readonly QuarterTurn[])[];
}

export interface Pressing {
  /** By entry. */
  readonly blocks: readonly BlockPressing[];
  readonly top: TopPressing;
}

export interface BlockPressing extends Share {
  /** By step. */
  readonly presses: readonly Press[];
  /** How those blocks are pressed that take the other way; null where all are pressed alike. */
  readonly other: { readonly presses: readonly Press[]; readonly count: number } | null;
  /** Blocks of it that are turned so that their seams nest. */
  readonly turned: number;
  /** Meetings inside one block that do not nest, in its own frame, not mirrored. */
  readonly loose: readonly LooseInBlock[];
}

/** Meetings, and how many of them nest. */
export interface Share {
  readonly meetings: number;
  readonly nested: number;
}

export interface LooseInBlock extends Loose {
  /** Indexes of the two steps whose seams meet, and of the step whose seam runs over them. */
  readonly steps: readonly [number, number];
  readonly over: number;
}

export interface Loose {
  readonly at: Point;
  readonly why: WhyLoose;
}

/**
 * Both are copies of one seam, which lies the same way in both; one is pressed open; their ways are kept for another
 * reason (outward on a log cabin, a border); or to nest it would cost another meeting.
 */
export type WhyLoose = 'one-seam' | 'open' | 'kept' | 'another';

export interface TopPressing {
  /** By seam of the top, in the order of joining, mitres left out. */
  readonly presses: readonly SidePress[];
  /** By placed block: 1 where it is pressed its entry's other way. */
  readonly variants: Variants;
  /**
   * By placed block: how much further than the document has it, clockwise, it is turned so that its seams nest; it looks the
   * same so.
   */
  readonly turns: readonly QuarterTurn[];
  /** Between blocks, rows, sashes and borders. */
  readonly between: Share & { readonly loose: readonly Loose[] };
  /** Of the whole quilt, inside its blocks too. */
  readonly all: Share;
  /** Whether no other choice of sides and turns nests more. */
  readonly proven: boolean;
}

export const planPressing = (of: { readonly entries: readonly EntryToPress[]; readonly set: SetTop }): Pressing => {
  const { entries, set } = of;
  const blocks = entries.map(({ pieced, size }) => studyBlock(pieced, size));
  const entryOf = set.placed.map(() => 0);
  entries.forEach(({ places }, entry) => {
    for (const placed of places) entryOf[placed] = entry;
  });
  const seams = topSeams(set);
  const runs = runsOf(seams);
  const rims = entries.map(({ size }, entry) => ({ size, rim: (blocks[entry] as StudiedBlock).rim }));
  const spots = spotsInTop({ set, rims, seams, entryOf });
  const met = spots.flatMap(({ at, meetings }) =>
    meetings.map((meeting) => ({ at, ...betweenOf(meeting, seams, runs) })),
  );
  const turned = entries.map((entry, i) => turnedRims(entry, { block: blocks[i] as StudiedBlock, set }));
  const task = {
    blocks,
    rims: turned,
    entryOf,
    turnsOf: turnsByPlace(entries, turned, entryOf),
    runs: runs.variables,
    between: met,
  };
  return result({ entries, task, met, seams, runs, laid: layWell(task) });
};

/** By quarters clockwise in the top: a mirrored block is turned the other way in its own frame. */
const turnedRims = (
  { size, places, turns = [] }: EntryToPress,
  { block, set }: { readonly block: StudiedBlock; readonly set: SetTop },
): PressTask['rims'][number] => {
  const isMirrored = places.some((place) => set.placed[place]?.mirror);
  const slack = slackOf(size);
  return [0, 90, 180, 270].map((turn) =>
    turn === 0 || turns.some((own) => own.some((one) => one === turn))
      ? turnedRim({ rim: block.rim, size, quarters: (isMirrored ? -turn : turn) / 90, slack })
      : null,
  );
};

const turnsByPlace = (
  entries: readonly EntryToPress[],
  rims: PressTask['rims'],
  entryOf: readonly number[],
): PressTask['turnsOf'] => {
  const all = entryOf.map((): readonly QuarterTurn[] => [0]);
  entries.forEach(({ places, turns = [] }, entry) => {
    places.forEach((place, i) => {
      const own = turns[i] ?? [];
      all[place] = [0, ...own.filter((turn) => turn !== 0 && rims[entry]?.[turn / 90])];
    });
  });
  return all;
};

type Task = Omit<PressTask, 'leastLoose'>;

interface Runs {
  readonly variables: PressTask['runs'];
  /** By seam. */
  readonly of: readonly number[];
}

/** Against the wishes of the top, in the unit of those of a block: away from cloth that lies flat, and against a custom. */
const cost = { kept: 0, flat: 200, some: 2 } as const;

const runsOf = (seams: readonly TopSeam[]): Runs => {
  const known = new Map<string, number>();
  const variables: PressTask['runs'][number][] = [];
  const of = seams.map(({ wish }, seam) => {
    const key = wish.weight === 'kept' ? `${seam}` : wish.run;
    const before = known.get(key);
    if (before !== undefined) return before;
    known.set(key, variables.length);
    const price = cost[wish.weight];
    variables.push(
      wish.weight === 'kept'
        ? { presses: [1], costs: [0] }
        : { presses: [0, 1], costs: wish.wished ? [price, 0] : [0, price] },
    );
    return variables.length - 1;
  });
  return { variables, of };
};

/** A run that is pressed its way presses a seam toward its first part where that lies there: then alike is unlike. */
const betweenOf = ({ ends, nests }: Meeting<InTop>, seams: readonly TopSeam[], runs: Runs): TopMeeting => {
  const turned = ends.filter(({ of }) => 'seam' in of && seams[of.seam]?.wish.along === 0).length % 2 === 1;
  const whoseOf = ({ of }: SeamEnd<InTop>): TopWhose => ('seam' in of ? { run: runs.of[of.seam] as number } : of);
  return {
    whose: [whoseOf(ends[0]), whoseOf(ends[1])],
    nests: turned ? (nests === 'alike' ? 'unlike' : 'alike') : nests,
  };
};

const result = (of: {
  readonly entries: readonly EntryToPress[];
  readonly task: Task;
  readonly met: readonly (TopMeeting & { readonly at: Point })[];
  readonly seams: readonly TopSeam[];
  readonly runs: Runs;
  readonly laid: Laid;
}): Pressing => {
  const { entries, task, met, seams, runs } = of;
  const { pressed, proven } = of.laid;
  const { variants, turns } = pressed;
  const blocks = entries.map(({ pieced, places }, entry): BlockPressing => {
    const [presses, other] = pressed.steps[entry] as (typeof pressed.steps)[number];
    const study = task.blocks[entry] as StudiedBlock;
    const count = places.filter((placed) => variants[placed] === 1).length;
    return {
      presses,
      turned: places.filter((placed) => turns[placed] !== 0).length,
      other: count === 0 ? null : { presses: other, count },
      ...looseIn(study, pieced, presses),
    };
  });
  const loose = met.flatMap((meeting): readonly Loose[] => {
    const why = whyBetween(task, pressed, meeting);
    return why === null ? [] : [{ at: meeting.at, why }];
  });
  const meetings = meetingsOf(task);
  return {
    blocks,
    top: {
      presses: seams.map(({ wish }, seam) => pressIn(pressed.runs[runs.of[seam] as number] as SidePress, wish.along)),
      variants,
      turns,
      between: { meetings: met.length, nested: met.length - loose.length, loose },
      all: { meetings, nested: pressed.nested },
      proven: proven || pressed.nested === meetings,
    },
  };
};

const pressIn = (run: SidePress, along: 0 | 1): SidePress =>
  run === 'open' ? 'open' : run === 1 ? along : along === 1 ? 0 : 1;

const looseIn = (
  { spots, steps }: StudiedBlock,
  { seams }: SewnSeams,
  presses: readonly Press[],
): Pick<BlockPressing, 'meetings' | 'nested' | 'loose'> => {
  const met = spots.flatMap(({ at, over, meetings }) => meetings.map(({ ends, nests }) => ({ at, over, ends, nests })));
  const loose = met.flatMap(({ at, over, ends: [a, b], nests }): readonly LooseInBlock[] => {
    const own = [a.of.step, b.of.step] as const;
    const [p, q] = [presses[own[0]] as Press, presses[own[1]] as Press];
    if (doNest(nests, wayAt(p, a.of.clockwise), wayAt(q, b.of.clockwise))) return [];
    const isKept = own.every((step) => steps[step]?.presses.length === 1);
    const why = whyLoose({ presses: [p, q], isOneSeam: own[0] === own[1], nests, isKept });
    return [{ at, steps: own, over: seams[over]?.step as number, why }];
  });
  return { meetings: met.length, nested: met.length - loose.length, loose };
};

const whyBetween = (task: Task, pressed: Pressed, { whose, nests }: TopMeeting): WhyLoose | null => {
  const [a, b] = whose.map((one) => topPress(task, pressed, one)) as [TopPress, TopPress];
  if (doNest(nests, a.way, b.way)) return null;
  return whyLoose({
    presses: [a.press, b.press],
    // where it lies the same way in both, it does so however it is pressed
    isOneSeam: a.name === b.name,
    nests: a.facing === b.facing ? nests : nests === 'alike' ? 'unlike' : 'alike',
    isKept: a.ways === 1 && b.ways === 1,
  });
};

const whyLoose = (of: {
  readonly presses: readonly [Press, Press];
  readonly isOneSeam: boolean;
  readonly nests: Meeting<unknown>['nests'];
  readonly isKept: boolean;
}): WhyLoose => {
  if (of.presses.includes('open')) return 'open';
  if (of.isKept) return 'kept';
  return of.isOneSeam && of.nests === 'unlike' ? 'one-seam' : 'another';
};
