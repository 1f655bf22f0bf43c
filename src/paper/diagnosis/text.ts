// A diagnosis in plain text of 80 columns.
import type { Diagnosis, MeasuredSize, SeamTestFound } from '#craft/diagnosis';
import type { Length, Unit } from '#craft/measure';
import { columns, heading, wrapped } from '#paper/summary';
import { lengthText, nearText } from '#paper/words';
import { blockPartNames, type PartNames } from './part-names.ts';
import { adviceOn, explanationText, rescueTexts, seamTestAdvice } from './sentences.ts';

export const diagnosisText = (title: string, diagnosis: Diagnosis, names: PartNames = blockPartNames): string => {
  const { what, mend } = adviceOn(diagnosis, names);
  const saved = rescueTexts(diagnosis, names);
  const likely = likelyRows(diagnosis, names);
  return [
    ...wrapped(title, ''),
    '',
    ...wrapped(`${what} ${mend}`, '  '),
    '',
    heading('Measured'),
    ...columns(measuredRows(diagnosis)),
    ...wrapped(
      `Read to ${lengthText(diagnosis.fineness, diagnosis.unit)}; the turn of the cloth at a pressed seam counts as part of the seam.`,
      '  ',
    ),
    ...(saved.length === 0 ? [] : ['', heading('What can be saved'), ...saved.flatMap((line) => wrapped(line, '  '))]),
    ...(likely.length === 0 ? [] : ['', heading('How likely'), ...columns(likely)]),
    '',
  ].join('\n');
};

const wayWords = { across: 'wide', down: 'high' } as const;

/** "after step 4", "4⅜ in wide", "should be 4½ in", "⅛ in too small". */
const measuredRows = ({ sizes, unit }: Diagnosis): readonly (readonly string[])[] =>
  sizes.map((size) => [
    `after step ${size.step + 1}`,
    `${lengthText(size.size, unit)} ${wayWords[size.way]}`,
    `should be ${nearText(size.drawn, unit)}`,
    offText(size, unit),
  ]);

const offText = ({ off }: MeasuredSize, unit: Unit): string => {
  if (Math.abs(off) < 1e-9) return 'right';
  return `${nearText(Math.abs(off), unit)} too ${off > 0 ? 'large' : 'small'}`;
};

/** "87 %", "C cut ⅛ in too large": the likeliest first, what reads alike in one; none where the sizes do not tell. */
export const likelyRows = (diagnosis: Diagnosis, names: PartNames = blockPartNames): readonly (readonly string[])[] => {
  const { verdict, ranked } = diagnosis;
  if (verdict.kind === 'too-few' || verdict.kind === 'far-off') return [];
  const shares = new Map<string, number>();
  for (const weighed of ranked) {
    const text = explanationText(weighed, diagnosis, names);
    shares.set(text, (shares.get(text) ?? 0) + weighed.share);
  }
  return [...shares].toSorted(([, a], [, b]) => b - a).map(([text, share]) => [`${Math.round(100 * share)} %`, text]);
};

export const seamTestText = (found: SeamTestFound, seam: Length, unit: Unit): string => {
  const { what, mend } = seamTestAdvice(found, seam, unit);
  const { test, read } = found;
  return [
    'Seam test',
    '',
    ...wrapped(`${what} ${mend}`, '  '),
    '',
    heading('Measured'),
    ...columns(
      read.map(({ part, size }) => [
        part === 'middle' ? 'middle strip, seam to seam' : 'all three, edge to edge',
        lengthText(size, unit),
        `should be ${lengthText(test[part], unit)}`,
      ]),
    ),
    ...wrapped(
      `Three strips cut ${lengthText(test.cut[0], unit)} wide, sewn side by side and pressed; read to ${lengthText(found.fineness, unit)}.`,
      '  ',
    ),
    '',
  ].join('\n');
};
