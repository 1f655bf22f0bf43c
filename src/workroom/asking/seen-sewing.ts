// What is sewn, in order: the blocks as they are made, then the top; and of one of them its steps, in the words and pictures of the
// printed pattern.
import {
  type BlockPlan,
  blockStepMinutes,
  type PlannedStep,
  type QuiltPlan,
  type TopStep,
  topStepMinutes,
} from '#craft';
import { toNumber } from '#ground/exact';
import { clothSignsFor } from '#paper/cloth';
import type { Hand } from '#paper/cutting';
import {
  awayFrom,
  type Drawing,
  drawBlock,
  drawBoard,
  drawLaidBlock,
  drawLaidTop,
  drawMachine,
  drawStep,
  drawTopMachine,
  drawTopStep,
  stepsTaking,
  topAway,
  topStepsTaking,
} from '#paper/drawing';
import {
  type BlockHead,
  blockHead,
  boardAlt,
  readingText,
  type StepWords,
  stepWords,
  type TopPart,
  titleOf,
  topIntro,
  topPages,
  topPicture,
  topPieceLine,
  topStepName,
  topStepWords,
} from '#paper/pages';
import { blockOfEntry, keyOfEntry, topEntry } from './entries.ts';
import { isTold, isTopTold } from './seen-sizes.ts';

export interface EntryLine {
  readonly key: string;
  readonly kind: 'block' | 'top';
  readonly title: string;
  /** Of blocks; the top is one. */
  readonly count: number;
  readonly seams: number;
  /** Whether sizes measured on the way tell of its seams. */
  readonly isTold: boolean;
  readonly steps: readonly StepLine[];
}

export interface StepLine {
  readonly number: number;
  readonly heading: string;
  /** The row, section or border of the top; empty in a block. */
  readonly place: string;
  /** Times that it is sewn in the quilt. */
  readonly total: number;
  /** For all of them, an estimate. */
  readonly minutes: number;
  /** What is counted of it: it is another step when it joins other parts. */
  readonly key: string;
}

/** Every entry with its steps' headings, in the order of sewing. */
export const seeSewing = (plan: QuiltPlan, _all: Readonly<Record<never, never>>): readonly EntryLine[] => [
  ...plan.blocks.map((block): EntryLine => {
    const key = keyOfEntry(block);
    return {
      key,
      kind: 'block',
      title: titleOf(plan, block),
      count: block.count,
      seams: seamsOf(block.steps),
      isTold: isTold(block),
      steps: block.steps.map((step) => ({
        number: step.number,
        heading: stepWords(plan, { block, step, counts: [block.count] }).heading,
        place: '',
        total: step.total,
        minutes: blockStepMinutes(plan, block, step),
        key: countKey(key, step),
      })),
    };
  }),
  {
    key: topEntry,
    kind: 'top',
    title: 'The top',
    count: 1,
    seams: seamsOf(plan.top.steps),
    isTold: isTopTold(plan),
    steps: plan.top.steps.map((step) => {
      const { heading, place } = topStepName(plan, step);
      const minutes = topStepMinutes(plan, step);
      return { number: step.number, heading, place, total: step.total, minutes, key: countKey(topEntry, step) };
    }),
  },
];

const seamsOf = (steps: readonly { readonly total: number }[]): number =>
  steps.reduce((all, { total }) => all + total, 0);

/** What is counted of a step. */
export const countKey = (entry: string, { number, join }: Pick<PlannedStep, 'number' | 'join'>): string =>
  `${entry} ${number} ${join.join('+')}`;

export interface EntryLook {
  readonly entry: string;
}

/** What to know of an entry before its first seam. */
export interface EntrySeen {
  readonly entry: string;
  /** Of a block; null for the top. */
  readonly head: BlockHead | null;
  readonly reading: readonly string[];
  readonly board: Drawing;
  /** Of the top: its rows or sections, its plain pieces, its borders, as their page has them. */
  readonly parts: readonly EntryPart[];
}

export type EntryPart = Pick<TopPart, 'heading' | 'lead' | 'table' | 'list'>;

export const seeEntry = (plan: QuiltPlan, { entry }: EntryLook): EntrySeen | 'nowhere' => {
  const signs = clothSignsFor(plan);
  if (entry === topEntry) {
    const parts = topPages({ plan, signs, album: new Map() }).parts.map(
      ({ heading, lead, table, list }): EntryPart => ({ heading, lead, table, list }),
    );
    return { entry, head: null, reading: topIntro(plan), board: topPicture({ plan, signs }), parts };
  }
  const block = blockOfEntry(plan, entry);
  if (block === null) return 'nowhere';
  const head = blockHead({ plan, sizes: [], signs }, { block, counts: [block.count] });
  const alt = boardAlt({ plan, signs }, block);
  return {
    entry,
    head,
    reading: block.steps.length === 0 ? [] : [readingText],
    board:
      block.patches.length === 0
        ? drawBlock({ block, signs, fitPt: boardFit, alt: head.title })
        : drawBoard({ block, signs, fitPt: boardFit, alt }),
    parts: [],
  };
};

export interface StepLook {
  readonly entry: string;
  readonly step: number;
  /** Large where the pictures are small on the screen, or looked at from afar. */
  readonly letters: 'usual' | 'large';
  /** Which cuts. */
  readonly hand: Hand;
}

/** What a step shows whichever way one came to it. */
export interface StepShown {
  readonly words: StepWords;
  /** What the pages say of all seams of its sort, in the top. */
  readonly notes: readonly string[];
  /** Of each single piece that it joins: where it lies and how it was cut, as the table of the pieces has it. */
  readonly take: readonly string[];
  readonly board: Drawing;
  readonly machine: Drawing;
  /** Unit vector along which the next part comes on the board. */
  readonly away: readonly [x: number, y: number];
  /** Clockwise, in degrees, from how the first part came to the machine; less than half a turn either way. */
  readonly turn: number;
}

export interface StepSeen extends StepShown {
  readonly entry: string;
  readonly step: number;
  /** All pieces laid out, as far as they are sewn; each shape names its place in `taking`. */
  readonly laid: Drawing;
  /** By piece the step that takes it. */
  readonly taking: readonly number[];
}

/** Shares of board and machine are those of the printed step; the smaller the room, the larger its letters on the screen. */
export const fits = {
  usual: { step: [300, 200], machine: [176, 200], laid: [300, 300] },
  large: { step: [195, 130], machine: [114, 130], laid: [240, 240] },
} as const;
const boardFit = [300, 300] as const;

export const seeStep = (plan: QuiltPlan, look: StepLook): StepSeen | 'nowhere' => {
  if (look.entry === topEntry) {
    const step = plan.top.steps[look.step - 1];
    return step === undefined ? 'nowhere' : topStepSeen(plan, step, fits[look.letters]);
  }
  const block = blockOfEntry(plan, look.entry);
  const step = block?.steps[look.step - 1];
  return block === null || step === undefined
    ? 'nowhere'
    : blockStepSeen(plan, {
        block,
        step,
        entry: look.entry,
        fit: fits[look.letters],
        hand: look.hand,
      });
};

const blockStepSeen = (
  plan: QuiltPlan,
  of: BlockStep & { readonly entry: string; readonly fit: (typeof fits)[StepLook['letters']] },
): StepSeen => {
  const { block, step, entry, fit } = of;
  const signs = clothSignsFor(plan);
  return {
    entry,
    step: step.number,
    ...blockStepShown(plan, { ...of, words: stepWords(plan, { block, step, counts: [block.count] }) }),
    laid: drawLaidBlock({ block, signs, fitPt: fit.laid, at: step.number, alt: laidAlt(titleOf(plan, block), step) }),
    taking: stepsTaking(block),
  };
};

interface BlockStep {
  readonly block: BlockPlan;
  readonly step: PlannedStep;
  readonly hand: Hand;
}

export const blockStepShown = (
  plan: QuiltPlan,
  of: BlockStep & { readonly words: StepWords; readonly fit: (typeof fits)[StepLook['letters']] },
): StepShown => {
  const { block, step, words, fit } = of;
  const drawn = { block, step, signs: clothSignsFor(plan), ruler: plan.quilt };
  const away = awayFrom(block, step);
  return {
    words,
    notes: [],
    take: takenLines(plan, block, step),
    board: drawStep({ ...drawn, fitPt: fit.step, alt: words.boardAlt }),
    machine: drawMachine({
      ...drawn,
      fitPt: fit.machine,
      seam: toNumber(plan.quilt.seam),
      alt: words.machineAlt,
      hand: of.hand,
    }),
    away: [away.x, away.y],
    turn: halfTurn(step.machineTurn),
  };
};

/** "F: C2 · Straw, 5½ × 1½ in" */
const takenLines = (plan: QuiltPlan, block: BlockPlan, step: PlannedStep): readonly string[] => {
  const { pieces } = blockHead({ plan, sizes: [], signs: clothSignsFor(plan) }, { block, counts: [block.count] });
  return pieces
    .filter(({ label }) => step.join.includes(label))
    .map(({ label, cloth, cut }) => `${label}: ${cloth}, ${cut}`);
};

/** "sash B: cloth C, 2 × 9½ in (C4)"; a strip that goes onto the quilt has its line among the notes. */
const takenTopLines = (plan: QuiltPlan, step: TopStep): readonly string[] => {
  if (step.stage === 'mitre' || (step.stage === 'border' && step.measure !== null)) return [];
  const single = step.things.flatMap((things) => (things.length === 1 ? things : []));
  const strips = single.flatMap((thing) => ('strip' in thing ? [thing.strip] : []));
  return plan.top.pieces
    .filter((piece) => strips.some((strip) => piece.strips.includes(strip)))
    .map((piece) => {
      const [label, what, , cut] = topPieceLine({ plan, signs: clothSignsFor(plan) }, piece);
      const [noun = '', cloth] = what.split(', ');
      return `${noun.toLowerCase()} ${label}: ${cloth}, ${cut}`;
    });
};

const topStepSeen = (plan: QuiltPlan, step: TopStep, fit: (typeof fits)['usual' | 'large']): StepSeen => {
  const signs = clothSignsFor(plan);
  const { notes, place: _place, ...words } = topStepWords({ plan, signs }, step);
  const drawn = { plan, step, signs };
  const away = topAway(step);
  return {
    entry: topEntry,
    step: step.number,
    words,
    notes,
    take: takenTopLines(plan, step),
    board: drawTopStep({ ...drawn, fitPt: fit.step, alt: words.boardAlt }),
    machine: drawTopMachine({ ...drawn, fitPt: fit.machine, alt: words.machineAlt }),
    laid: drawLaidTop({ plan, signs, fitPt: fit.laid, at: step.number, alt: laidAlt('the top', step) }),
    taking: topStepsTaking(plan),
    away: step.stage === 'mitre' ? [0, 0] : [away.x, away.y],
    turn: halfTurn(step.machineTurn),
  };
};

const laidAlt = (title: string, step: Pick<PlannedStep, 'number'>): string =>
  `All pieces of ${title} at step ${step.number}: those sewn lie close, the next are ringed, later ones are pale and dashed.`;

/** Hands turn the shorter way. */
const halfTurn = (turn: number): number => (turn > 180 ? turn - 360 : turn);
