// Cutting directions, remnants and easier layouts in words: facts of a cloth's directions in, sentences out.
import type { ClothPiece, LadderRung } from '#craft';
import type { CutEffort, CutPart, HeightCut, PartRun, PatternCut, Remnant, StripCut } from '#craft/directions';
import { inWords } from './in-words.ts';
import { capital, counted } from './named.ts';

/** And how the cloth's pieces are called. */
export interface Writing extends Figures {
  /** "B2" by place in the cloth's list. */
  readonly mark: (piece: number) => string;
  readonly pieces: readonly ClothPiece[];
  /** Folded in two layers, or opened after that; missing for what is never folded. */
  readonly of?: 'folded' | 'opened';
  /** A left-handed cutter begins at the right. */
  readonly hand: 'right' | 'left';
  /** What a part is cut from, by its kind, where that is not cloth by the length. */
  readonly sheet: (kind: number) => SheetName;
}

/** Of sheets, of lengths as they are bought, of ends at hand. */
export interface SheetName {
  readonly noun: 'sheet' | 'length' | 'end at hand';
  /** What tells its kind from others: a size, a name or both; "" where all are alike. */
  readonly kind: string;
}

/** How lengths and amounts of cloth are written. */
export interface Figures {
  readonly length: (value: number) => string;
  /** Across, then along. */
  readonly size: (size: readonly [number, number]) => string;
  readonly amount: (amount: number, unit: 'yd' | 'm') => string;
}

/** What to cut first, and then from each kind of strip. */
export interface DirectionText {
  readonly lead: string;
  readonly strips: readonly StripText[];
}

export interface StripText {
  readonly number: string;
  readonly text: string;
  /** Where one cut is not all there is: each cut, numbered as in the drawing. */
  readonly cuts: readonly { readonly number: string; readonly text: string }[];
}

export const directionTexts = (parts: readonly CutPart[], writing: Writing): readonly DirectionText[] => {
  return parts.flatMap((part, i) =>
    part.heights.map((height, first) => ({
      lead: leadText({ part, place: i + 1, height, isFirst: first === 0 }, writing),
      strips: height.patterns.map((pattern) => patternText(pattern, height, writing)),
    })),
  );
};

const leadText = (
  of: {
    readonly part: CutPart;
    readonly place: number;
    readonly height: HeightCut;
    readonly isFirst: boolean;
  },
  writing: Writing,
): string => {
  const { part, height } = of;
  const strips = `${counted(height.count, 'strip')} ${writing.length(height.height)}`;
  if (part.sheet === null) return clothLead(strips, { isFirst: of.isFirst, of: writing.of });
  if (!of.isFirst) return `Then cut ${strips} across it.`;
  const { noun, kind } = writing.sheet(part.sheet);
  const sheet = `${capital(noun)} ${of.place}${kind === '' ? '' : ` (${kind})`}`;
  return part.count === 1
    ? `${sheet}: cut ${strips} across it.`
    : `${sheet}, ${part.count} alike: from each cut ${strips} across it.`;
};

const clothLead = (
  strips: string,
  { isFirst, of }: { readonly isFirst: boolean; readonly of: Writing['of'] },
): string => {
  if (of === 'folded')
    return isFirst
      ? `Fold the cloth selvage to selvage. Cut ${strips} across it, and cut on through both layers from the selvages: each cut gives two.`
      : `Then cut ${strips} across both layers.`;
  const cut = `ut ${strips} by the width of the cloth.`;
  return of === 'opened' && isFirst ? `Open the cloth, and c${cut}` : `C${cut}`;
};

const patternText = (pattern: PatternCut, height: HeightCut, writing: Writing): StripText => {
  const number = String(pattern.number);
  const whole = wholeText(pattern, writing);
  const whose =
    height.patterns.length === 1
      ? pattern.count === 1
        ? 'From it'
        : 'From each'
      : pattern.count === 1
        ? 'From one'
        : `From each of ${pattern.count}`;
  if (whole !== null) {
    const all = pattern.count === height.count ? 'all' : String(pattern.count);
    const text =
      pattern.count > 1
        ? `Leave ${all} whole, each ${whole}.`
        : `Leave ${height.count === 1 ? 'it' : 'one'} whole: ${whole}.`;
    return { number, text, cuts: [] };
  }
  if (pattern.cuts.length === 1)
    return { number, text: `${whose} ${cutText(pattern.cuts[0] as StripCut, writing)}.`, cuts: [] };
  return {
    number,
    text: `${whose}, from ${writing.hand === 'left' ? 'right to left' : 'left to right'}:`,
    cuts: pattern.cuts.map((cut, i) => ({ number: `${number}.${i + 1}`, text: `${cutText(cut, writing)}.` })),
  };
};

/** A strip that is one piece as it is; else null. */
const wholeText = ({ cuts }: PatternCut, writing: Writing): string | null => {
  const [only] = cuts;
  if (cuts.length !== 1 || only?.cut !== 'parts' || only.count !== 1 || only.strokes > 0) return null;
  const [run] = only.runs;
  return only.runs.length === 1 && run?.count === 1 && run.below === 0 && !run.trimmed
    ? piecesText(run, 1, writing)
    : null;
};

const cutText = (cut: StripCut, writing: Writing): string => {
  if (cut.cut === 'narrow') return `cut the rest of the strip down to ${writing.length(cut.to)}`;
  const [run] = cut.runs;
  const isPlain = cut.runs.length === 1 && run?.count === 1 && run.below === 0;
  if (isPlain) return `sub-cut ${piecesText(run as PartRun, cut.count, writing)}`;
  const parts = `sub-cut ${counted(cut.count, 'part')} ${writing.length(cut.width)} wide`;
  const each = cut.count === 1 ? 'from it' : 'from each';
  return `${parts} and ${each} cut ${inWords(cut.runs.map((run, i) => runText(run, trimmedBy(cut.runs, i), writing)))}`;
};

const runText = (run: PartRun, trimmed: readonly PartRun[], writing: Writing): string => {
  const pieces = piecesText(run, run.count, writing);
  if (trimmed.length === 0) return pieces;
  const which = trimmed.length === 1 ? '' : `${inWords(trimmed.map(({ of }) => writing.mark(of)))} `;
  return `${pieces}, ${which}trimmed to ${writing.length(run.cut[0])} wide`;
};

/** The runs that one stroke along them trims, where this is the last of them; else none. */
const trimmedBy = (runs: readonly PartRun[], last: number): readonly PartRun[] => {
  const isAsWide = (run: PartRun | undefined) => run?.cut[0] === runs[last]?.cut[0];
  const next = runs[last + 1];
  const first = runs.findLastIndex((run, i) => i <= last && run.trimmed);
  if (first < 0 || !isAsWide(runs[first]) || (isAsWide(next) && !next?.trimmed)) return [];
  return runs.slice(first, last + 1);
};

/** "16 squares 2½ in (B2)": the size as the pieces lie, across and along; one that is turned has it the other way in the list. */
const piecesText = ({ of, turned }: PartRun, count: number, writing: Writing): string => {
  const piece = writing.pieces[of];
  if (piece === undefined) throw new Error(`the directions name a piece that the list lacks: ${of}`);
  const [across, along] = piece.cut;
  const isSquare = across === along;
  const size = isSquare ? writing.length(across) : writing.size(turned ? [along, across] : [across, along]);
  const noun = piece.way ? 'strip' : isSquare ? 'square' : 'rectangle';
  return `${counted(count, noun)} ${size} (${writing.mark(of)})`;
};

const fromWords: Readonly<Record<Remnant['from'], readonly [one: string, many: string]>> = {
  end: ['the end of a strip', 'ends of strips'],
  narrowing: ['from the side of a strip', 'from the sides of strips'],
  below: ['from a strip, under what was cut', 'from strips, under what was cut'],
  beside: ['from a strip, beside what was cut', 'from strips, beside what was cut'],
  'cloth-end': ['the end of the cloth', 'ends of the cloth'],
  'sheet-end': ['the end of a sheet', 'ends of sheets'],
};

/** Of what is no sheet: cloth in lengths, ends at hand. */
const otherEnds: Readonly<Record<SheetName['noun'], readonly [one: string, many: string]>> = {
  sheet: fromWords['sheet-end'],
  length: ['the end of a length', 'ends of lengths'],
  'end at hand': ['of an end at hand', 'of ends at hand'],
};

const mostRemnants = 6;

/** "R1, 40 × 7 in, the end of the cloth; R2, 3 of 4 × 2½ in, ends of strips"; "" where nothing is worth keeping. */
export const remnantsText = (
  remnants: readonly Remnant[],
  writing: Pick<Writing, 'size'> & { readonly noun?: SheetName['noun'] },
): string => {
  const said = remnants.slice(0, mostRemnants).map(({ name, from, size, count }) => {
    const many = count === 1 ? '' : `${count} of `;
    const words = from === 'sheet-end' ? otherEnds[writing.noun ?? 'sheet'] : fromWords[from];
    return `${name}, ${many}${writing.size(size)}, ${words[count === 1 ? 0 : 1]}`;
  });
  const more = remnants.slice(mostRemnants).reduce((all, { count }) => all + count, 0);
  return [...said, ...(more > 0 ? [counted(more, 'smaller one')] : [])].join('; ');
};

/** "8 strips 2½ in, 4 strips 3½ in": of cloth or of all sheets together, in the order of cutting. */
export const stripsText = (parts: readonly CutPart[], writing: Pick<Figures, 'length'>): string => {
  const counts = new Map<number, number>();
  for (const { count: sheets, heights } of parts)
    for (const { height, count } of heights) counts.set(height, (counts.get(height) ?? 0) + sheets * count);
  return [...counts].map(([height, count]) => `${counted(count, 'strip')} ${writing.length(height)}`).join(', ');
};

/** "3 strip heights, 7 ruler settings, 58 strokes". */
export const effortText = (effort: CutEffort): string =>
  [
    counted(effort.heights, 'strip height'),
    counted(effort.settings, 'ruler setting'),
    counted(effort.strokes, 'stroke'),
  ].join(', ');

/** What each easier layout would cost in cloth, and what it saves; none where the one that is cut is the easiest. */
export const easierTexts = (
  ladder: readonly LadderRung[],
  writing: Pick<Figures, 'length' | 'amount'>,
): readonly string[] => {
  const chosen = ladder.findIndex((rung) => rung.chosen);
  const now = ladder[chosen];
  if (now === undefined) return [];
  return ladder
    .slice(chosen + 1)
    .filter((rung) => isWorthTelling(now, rung))
    .map((rung) => {
      const more = rung.buy.amount - now.buy.amount;
      const price =
        more > 1e-9
          ? `${writing.amount(more, rung.buy.unit)} more (${writing.amount(rung.buy.amount, rung.buy.unit)})`
          : 'no more cloth than is bought';
      const own = rung.own ? ', each size on strips of its own' : '';
      return `${capital(price)}, laid out on ${writing.length(rung.length)}${own}: ${comparedText(now, rung)}.`;
    });
};

/** A few strokes alone are no reason to buy or use more cloth: from a tenth of them on, our own choice. */
const isWorthTelling = (now: CutEffort, then: CutEffort): boolean =>
  then.heights < now.heights ||
  then.settings < now.settings ||
  then.patterns < now.patterns ||
  then.strokes <= 0.9 * now.strokes;

/** Only figures that change are told. */
const comparedText = (now: CutEffort, then: CutEffort): string => {
  const figures = [
    ['strip heights', now.heights, then.heights],
    ['ruler settings', now.settings, then.settings],
    ['ways to fill a strip', now.patterns, then.patterns],
    ['strokes', now.strokes, then.strokes],
  ] as const;
  return inWords(
    figures
      .filter(([, a, b]) => a !== b)
      .map(([what, a, b]) => `${b} ${b === 1 ? singular[what] : what} instead of ${a}`),
  );
};

const singular = {
  'strip heights': 'strip height',
  'ruler settings': 'ruler setting',
  'ways to fill a strip': 'way to fill a strip',
  strokes: 'stroke',
} as const;
