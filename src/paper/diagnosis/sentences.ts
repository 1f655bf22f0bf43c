// A diagnosis in two sentences: what is so, and what to do. With what can be saved, one sentence each.
import type {
  Diagnosis,
  Interval,
  MeasuredSize,
  NextMeasure,
  Rescue,
  SeamTestFound,
  Verdict,
  Weighed,
} from '#craft/diagnosis';
import { type Length, length, toNearestMark, type Unit, upToMark } from '#craft/measure';
import { type Rational, rational } from '#ground/exact';
import { never } from '#ground/outcome';
import { capital, counted, inWords, lengthText, nearSizeText, nearText, sizeText } from '#paper/words';
import { blockPartNames, type PartNames } from './part-names.ts';

export interface Advice {
  readonly what: string;
  readonly mend: string;
}

/** Finest that is said of seams and cuts: no one guides cloth nearer. */
const finest: Readonly<Record<Unit, Rational>> = { in: rational(1, 64), cm: rational(1, 20) };

/** Nearest to what can be guided; "0" stays 0. */
const near = (value: number, unit: Unit): number => {
  const size = toNearestMark(length(Math.abs(value)), finest[unit]).size;
  return value < 0 ? -size : size;
};

const finestText = (unit: Unit): string => lengthText(Number(finest[unit].n) / Number(finest[unit].d), unit);

const said = (value: number, unit: Unit): string => lengthText(Math.abs(near(value, unit)), unit);

/** "9/32 in", and "less than 1/64 in" for what is nearly nothing. */
const saidOff = (value: number, unit: Unit): string =>
  near(value, unit) === 0 ? `less than ${finestText(unit)}` : said(value, unit);

export const adviceOn = (diagnosis: Diagnosis, names: PartNames = blockPartNames): Advice => {
  const { verdict } = diagnosis;
  switch (verdict.kind) {
    case 'too-few':
      return tooFew(diagnosis, names);
    case 'true':
      return {
        what: `Your seams are true${ifCutRight(diagnosis, names)}: they take ${seamRange(diagnosis)}, and the sizes are as near as ${sizesRead(diagnosis)} can tell.`,
        mend: 'Sew on as you are, and measure again now and then.',
      };
    case 'wide':
    case 'narrow':
      return habit(diagnosis, verdict.kind, names);
    case 'cut':
      return wrongCut(diagnosis, verdict, names);
    case 'cut-both':
      return wrongBothWays(diagnosis, verdict, names);
    case 'trim':
      return wrongTrim(diagnosis, verdict, names);
    case 'swap':
      return {
        what: `Pieces ${inWords([...verdict.pieces])} have changed places: each lies where the other should.`,
        mend:
          rescueText(diagnosis, diagnosis.rescues.find(({ kind }) => kind === 'replace') ?? null, names) ?? lookAgain,
      };
    case 'unclear':
      return unclear(diagnosis, names);
    case 'several':
      return {
        what: 'No single slip makes these sizes: more than one piece or seam is off.',
        mend: `Begin with step ${firstOff(diagnosis)}: measure each of its ${partsWords[diagnosis.of]} from seam to seam, and compare it with its finished size.`,
      };
    case 'far-off':
      return farOff(diagnosis, verdict);
    default:
      return never(verdict);
  }
};

const partsWords = { block: 'pieces', top: 'blocks and pieces' } as const;

const lookAgain = 'Lay the unit beside the board and look at each piece.';

/** "9/32 in (in 95 cases of 100 between 17/64 in and 19/64 in)". */
const seamRange = ({ seam, allowance, unit }: Diagnosis): string =>
  `${said(seam + allowance.value, unit)} ${limits(seam, allowance, unit)}`;

const limits = (seam: Length, { low, high }: Interval, unit: Unit): string =>
  said(seam + low, unit) === said(seam + high, unit)
    ? `(to the nearest ${finestText(unit)})`
    : `(in 95 cases of 100 between ${said(seam + low, unit)} and ${said(seam + high, unit)})`;

const sizesRead = ({ fineness, unit }: Diagnosis): string => `a ruler read to ${lengthText(fineness, unit)}`;

const rangeText = (low: number, high: number, unit: Unit): string =>
  said(low, unit) === said(high, unit)
    ? `about ${said(low, unit)}`
    : `between ${said(low, unit)} and ${said(high, unit)}`;

const tooFew = (diagnosis: Diagnosis, names: PartNames): Advice => {
  const { next, allowance, seam, unit, sizes, of } = diagnosis;
  const range = Number.isFinite(allowance.low)
    ? `so far each seam seems to take ${rangeText(seam + allowance.low, seam + allowance.high, unit)} from a piece${ifCutRight(diagnosis, names)}`
    : 'no seam has been measured over yet';
  return {
    what: `${capital(counted(sizes.length, 'size'))} cannot tell a habit of the seam from one slip: ${range}.`,
    mend:
      next === null
        ? `Every size is measured: make the seam test with three strips${of === 'top' ? ', and measure three of the blocks from raw edge to raw edge' : ''}.`
        : `Next measure ${nextText(next)}${isPast(diagnosis, next) ? ', in the next block if this one is sewn further' : ''}: it tells most.`,
  };
};

/** A step of a block before others that were measured; of a top there is no other. */
const isPast = ({ of, sizes }: Diagnosis, next: NextMeasure): boolean =>
  of === 'block' && sizes.some(({ step }) => step > next.step);

/** Where the unit is not sewn so far yet, what comes first on the way there. */
const nextText = ({ way, step, sooner }: NextMeasure): string =>
  sooner === null
    ? `the ${wayWords[way]} after step ${step + 1}`
    : `the ${wayWords[way]} after step ${step + 1}, or the ${wayWords[sooner.way]} after step ${sooner.step + 1} if you have not come so far`;

const farOff = ({ sizes, unit, of }: Diagnosis, { step, way }: Extract<Verdict, { kind: 'far-off' }>): Advice => {
  const { size, drawn, off } = sizes.find((one) => one.step === step && one.way === way) as MeasuredSize;
  return {
    what: `A ${wayWords[way]} of ${lengthText(size, unit)} after step ${step + 1} is ${nearText(Math.abs(off), unit)} too ${off > 0 ? 'large' : 'small'} (it should be ${nearText(drawn, unit)}): more than seams and a slip of the ruler explain.`,
    mend: `Look whether it is ${of === 'block' ? 'this block and ' : ''}that step; if it is, measure each of its ${partsWords[of]} from seam to seam, and compare it with its finished size.`,
  };
};

const wayWords = { across: 'width', down: 'height' } as const;

const habit = (diagnosis: Diagnosis, kind: 'wide' | 'narrow', names: PartNames): Advice => {
  const { unit, seam, allowance, whole } = diagnosis;
  const off = whole === null ? null : [...whole.before].sort((a, b) => Math.abs(b) - Math.abs(a))[0];
  const block =
    off === undefined || off === null
      ? ''
      : `, so that the ${diagnosis.of} would come out ${saidOff(off, unit)} too ${off < 0 ? 'small' : 'large'}`;
  const guide = kind === 'wide' ? 'nearer to the needle' : 'further from the needle';
  return {
    what: `Each seam takes ${seamRange(diagnosis)} from a piece instead of ${lengthText(seam, unit)}${ifCutRight(diagnosis, names)}${block}.`,
    mend: `Move the guide ${saidOff(allowance.value, unit)} ${guide}, and make sure of it with the seam test.`,
  };
};

const wrongCut = (
  diagnosis: Diagnosis,
  { piece, by, orSeam, at }: Extract<Verdict, { kind: 'cut' }>,
  names: PartNames,
): Advice => {
  const { unit } = diagnosis;
  const { called, verb, made } = names(piece, at ?? null);
  const wrong = by > 0 ? 'large' : 'small';
  const seam =
    orSeam === null
      ? ''
      : `, or the seam of step ${orSeam + 1} took ${saidOff(by / 2, unit)} too ${by > 0 ? 'little' : 'much'}`;
  const best =
    diagnosis.rescues.find(
      ({ kind }) => kind === 'resew' || kind === 'replace' || kind === 'trim-blocks' || kind === 'trim-one',
    ) ?? null;
  return {
    what: `${capital(called)} ${verb} ${made === 'cut' ? 'cut ' : ''}about ${saidOff(by, unit)} too ${wrong}${seam}; the other seams take ${seamRange(diagnosis)}.`,
    mend: `Measure ${at === undefined ? called : 'it'} ${diagnosis.of === 'block' ? 'of the next block before it is sewn, and in this one' : 'from raw edge to raw edge before sewing on, and'} ${lowered(rescueText(diagnosis, best, names) ?? 'cut it anew.')}`,
  };
};

const wrongBothWays = (
  diagnosis: Diagnosis,
  { piece, by }: Extract<Verdict, { kind: 'cut-both' }>,
  names: PartNames,
): Advice => {
  const { unit } = diagnosis;
  const { called, verb } = names(piece, null);
  const ways = by.map((one) => tooLarge(one, unit)) as [string, string];
  const best = diagnosis.rescues.find(({ kind }) => kind === 'replace') ?? null;
  return {
    what: `${capital(called)} ${verb} cut wrong both ways, about ${ways[0]} one way and ${ways[1]} the other; the seams take ${seamRange(diagnosis)}.`,
    mend: `Measure ${called} of the next block both ways before it is sewn, and in this one ${lowered(rescueText(diagnosis, best, names) ?? 'cut it anew.')}`,
  };
};

/** "1/8 in too large". */
const tooLarge = (by: number, unit: Unit): string => `${saidOff(by, unit)} too ${by > 0 ? 'large' : 'small'}`;

const wrongTrim = (
  diagnosis: Diagnosis,
  { step, by }: Extract<Verdict, { kind: 'trim' }>,
  names: PartNames,
): Advice => {
  const { unit } = diagnosis;
  const retrim = diagnosis.rescues.find(({ kind }) => kind === 'retrim') ?? null;
  return {
    what: `What step ${step + 1} made is trimmed ${trimmedTo(diagnosis, step, by) ?? tooLarge(by, unit)}; the seams take ${seamRange(diagnosis)}.`,
    mend: `Measure such a unit before it is sewn, and ${lowered(rescueText(diagnosis, retrim, names) ?? 'trim it again.')}`,
  };
};

/** "to 3 1/4 in instead of 3 1/2 in"; null where the step is not known by a rescue. */
const trimmedTo = ({ rescues, unit }: Diagnosis, step: number, by: number): string | null => {
  const retrim = rescues.find((one) => one.kind === 'retrim' && one.step === step);
  if (retrim?.kind !== 'retrim') return null;
  const [across, down] = retrim.to;
  const isSquare = Math.abs(across - down) < 1e-9;
  const text = (size: number): string => lengthText(near(size, unit), unit);
  return isSquare
    ? `to ${text(across + by)} instead of ${text(across)}`
    : `to ${text(across + by)} × ${text(down + by)} instead of ${text(across)} × ${text(down)}`;
};

/** Of how many pieces the names are told. */
const fewPieces = 3;

/** " (if A and B are cut right, which these sizes do not tell)": where a wrong cut of them would look like wrong seams. */
const ifCutRight = ({ untold, of }: Diagnosis, names: PartNames): string => {
  if (untold.length === 0) return '';
  const named =
    untold.length > fewPieces
      ? `the ${partsWords[of]} are`
      : `${inWords(untold.map((piece) => names(piece, null).short))} ${untold.length === 1 ? names(untold[0] as string, null).verb : 'are'}`;
  return ` (if ${named} ${of === 'block' ? 'cut ' : ''}right, which these sizes do not tell)`;
};

const lowered = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const unclear = (diagnosis: Diagnosis, names: PartNames): Advice => {
  const { ranked, next, unit, fineness } = diagnosis;
  const [first, second] = ranked as [Weighed, Weighed];
  const what = `Two things would explain these sizes: ${explanationText(first, diagnosis, names)}, or ${explanationText(second, diagnosis, names)}.`;
  if (next === null)
    return { what, mend: 'No further size tells them apart: measure the pieces themselves, from seam to seam.' };
  const marks = halfMarks(fineness, unit);
  const [one, other] = next.comesTo.map((size) => lengthText(toNearestMark(size, marks).size, unit)) as [
    string,
    string,
  ];
  return {
    what,
    mend: `Measure the ${wayWords[next.way]} after step ${next.step + 1}: about ${one} speaks for the first, ${other} for the second.`,
  };
};

/** Finer than she reads by half: two sizes that tell explanations apart are at least so far apart, and stay two. */
const halfMarks = (fineness: Length, unit: Unit): Rational =>
  rational(1, Math.min(2 * Math.round(1 / fineness), Number(finest[unit].d)));

/** "seams of 9/32 in", "C cut ⅛ in too wide", "B and D exchanged". */
export const explanationText = (
  { candidate, allowance, cut, other }: Weighed,
  { seam, unit }: Diagnosis,
  names: PartNames,
): string => {
  const seams = `seams of ${said(seam + allowance.value, unit)}`;
  const { explanation } = candidate;
  switch (explanation.kind) {
    case 'habit':
      return `${seams} throughout`;
    case 'cut':
    case 'one': {
      const { short, made } = names(explanation.piece, explanation.kind === 'one' ? explanation.at : null);
      return `${short}${made === 'cut' ? ' cut' : ''} ${tooLarge(cut?.value ?? 0, unit)}`;
    }
    case 'cut-both':
      return `${explanation.piece} cut wrong both ways, ${tooLarge(cut?.value ?? 0, unit)} and ${tooLarge(other?.value ?? 0, unit)}`;
    case 'trim':
      return `what step ${explanation.step + 1} made trimmed ${tooLarge(cut?.value ?? 0, unit)}`;
    case 'swap':
      return `${inWords([...explanation.pieces])} exchanged`;
    default:
      return never(explanation);
  }
};

const firstOff = ({ sizes, fineness }: Diagnosis): number => {
  const off = sizes.filter((size) => Math.abs(size.off) >= fineness * (1 - 1e-9)).map(({ step }) => step);
  return Math.min(...(off.length > 0 ? off : sizes.map(({ step }) => step))) + 1;
};

/** All that may be done, one sentence each. */
export const rescueTexts = (diagnosis: Diagnosis, names: PartNames = blockPartNames): readonly string[] =>
  diagnosis.rescues.flatMap((rescue) => rescueText(diagnosis, rescue, names) ?? []);

const rescueText = (diagnosis: Diagnosis, rescue: Rescue | null, names: PartNames): string | null => {
  if (rescue === null) return null;
  const { unit, seam, whole } = diagnosis;
  switch (rescue.kind) {
    case 'trim': {
      const [across, down] = rescue.by;
      const from = [
        ...(across > 0 ? [`${saidOff(across, unit)} of its width`] : []),
        ...(down > 0 ? [`${saidOff(down, unit)} of its height`] : []),
      ];
      return `Trim what step ${rescue.step + 1} made to ${nearSizeText(rescue.to, unit)}: that takes off ${inWords(from)}${rescue.at === null ? '' : `, at the edge of ${rescue.at}`}.`;
    }
    case 'make-up':
      return `Sew what is still to come, from step ${rescue.from + 1} on, with ${said(rescue.allowance, unit)} instead of ${lengthText(seam, unit)}: the ${diagnosis.of} comes right in the end.`;
    case 'resew':
      return `Unpick ${stepsText(rescue.steps)} and sew ${rescue.steps.length === 1 ? 'it' : 'them'} again with ${said(rescue.allowance, unit)}.`;
    case 'replace':
      return rescue.pieces.length === 1
        ? `Unpick ${stepsText(rescue.steps)} and put in ${rescue.steps.length === 1 ? `a newly cut ${rescue.pieces[0]}` : `newly cut pieces ${rescue.pieces[0]}`}.`
        : `Unpick from step ${(rescue.steps[0] as number) + 1} on and put ${inWords([...rescue.pieces])} each where the board shows it.`;
    case 'retrim': {
      const to = nearSizeText(rescue.to, unit);
      return rescue.anew
        ? `Make the units of step ${rescue.step + 1} anew and trim each to ${to}.`
        : `Unpick the units of step ${rescue.step + 1} and trim each to ${to}.`;
    }
    case 'strips': {
      const marks = unit === 'in' ? rational(1, 8) : rational(1, 10);
      const cut = rescue.cut.map((width) => lengthText(upToMark(width, marks).size, unit));
      const widths =
        cut[0] === cut[1]
          ? `strips cut ${cut[0]} wide`
          : `strips cut ${cut[0]} wide at its sides, ${cut[1]} at top and bottom`;
      const all = isDrawn(rescue.to, whole?.drawn ?? null) ? '' : ', and every other block of the quilt with it';
      return `When the block is done, sew ${widths} round it and trim it to ${sizeText(rescue.to, unit)}${all}.`;
    }
    case 'trim-blocks': {
      const { called } = names(rescue.piece, null);
      return rescue.to === null
        ? 'Trim all blocks to the size of the smallest before sewing on: the quilt comes out so much smaller.'
        : `Trim ${called} to ${sizeText(rescue.to, unit)} before they are sewn, the same at all four sides.`;
    }
    case 'trim-one':
      return rescue.to === null
        ? 'Take it out and put in a block of the right size, or ease its neighbours to it where that is little.'
        : `Take it out, trim it to ${sizeText(rescue.to, unit)}, as much at all four sides, and sew it in again.`;
    case 'ease':
      return `Pin it to its neighbour at both ends, in the middle and at every seam, and ease in the ${saidOff(rescue.by, unit)} with the longer side below, toward the feed.`;
    case 'fit-borders':
      return 'Measure the quilt through its middle and near both edges before each border, and cut that to the mean of the three, not to the plan.';
    case 'widen-border': {
      const [sides, ends] = rescue.by;
      const text = (by: number): string =>
        lengthText(upToMark(length(by), unit === 'in' ? rational(1, 8) : rational(1, 10)).size, unit);
      const words =
        text(sides) === text(ends)
          ? `${text(sides)} wider all round`
          : inWords([
              ...(sides > 0 ? [`${text(sides)} wider at the sides`] : []),
              ...(ends > 0 ? [`${text(ends)} wider at top and bottom`] : []),
            ]);
      return `To keep the size of the quilt, cut the last border ${words}.`;
    }
    default:
      return never(rescue);
  }
};

const isDrawn = (to: readonly [number, number], drawn: readonly [number, number] | null): boolean =>
  drawn !== null && to.every((size, i) => Math.abs(size - (drawn[i] as number)) < 1e-6);

/** "step 2", "steps 1 to 4", "steps 2 and 5". */
const stepsText = (steps: readonly number[]): string => {
  const names = steps.map((step) => `${step + 1}`);
  if (names.length === 1) return `step ${names[0]}`;
  const isRun = steps.every((step, i) => i === 0 || step === (steps[i - 1] as number) + 1);
  return isRun && names.length > 2 ? `steps ${names[0]} to ${names.at(-1)}` : `steps ${inWords(names)}`;
};

export const seamTestAdvice = (found: SeamTestFound, seam: Length, unit: Unit): Advice => {
  const { allowance, verdict, doubtful } = found;
  const range = `${said(seam + allowance.value, unit)} ${limits(seam, allowance, unit)}`;
  if (doubtful)
    return {
      what: 'The middle strip and the whole do not agree: no one seam makes both.',
      mend: 'Measure again, and if they stay so, cut three strips anew: one was not cut to the same width.',
    };
  if (verdict === 'true')
    return { what: `Your seam is true: it takes ${range}.`, mend: 'Leave the guide where it is and sew on.' };
  const guide = verdict === 'wide' ? 'nearer to the needle' : 'further from the needle';
  return {
    what: `Your seam takes ${range} instead of ${lengthText(seam, unit)}: it is too ${verdict}.`,
    mend: `Move the guide ${saidOff(allowance.value, unit)} ${guide} and make the test again.`,
  };
};
