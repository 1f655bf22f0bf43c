// From a document to the quilt in normal form, or everything that is wrong with it: size and nesting,
// JSON, version, form, what is not built yet, then what names and lengths mean.

import { limits, widest } from '#craft/limits';
import { usualSewing } from '#craft/measure';
import type { MinutesTable } from '#craft/minutes';
import { done, type Outcome, refused } from '#ground/outcome';
import { boundProblems } from './bounds.ts';
import { type QuiltDocument, quiltDocument } from './document.ts';
import { foundText } from './found.ts';
import { atNewestVersion, type RawDocument } from './migrations.ts';
import type { DesignProblem } from './problems.ts';
import type { Quilt } from './quilt.ts';
import { readBlocks } from './read-blocks.ts';
import { readBuying } from './read-buying.ts';
import { readFabrics } from './read-fabrics.ts';
import { readFinish } from './read-finish.ts';
import { readMethods } from './read-methods.ts';
import { motifProblems } from './read-motifs.ts';
import { readTop } from './read-top.ts';
import { readColourways, readSizes } from './read-variants.ts';
import { readingFor } from './reading.ts';
import { salvaged } from './salvage.ts';
import { scanText } from './scan-text.ts';
import { schemaProblems } from './schema-problems.ts';
import { textProblems } from './text-problems.ts';
import { unbuiltProblems } from './unbuilt.ts';

/** From the text of a document. A byte-order mark at its start is passed over. */
export const parseQuilt = (text: string): Outcome<Quilt, DesignProblem> => {
  if (text.length > limits.characters) {
    return refused([{ code: 'design/too-long', path: '', found: text.length, most: limits.characters }]);
  }
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  const problems = scanText(json, limits);
  return problems.length > 0 ? refused(problems) : readQuilt(JSON.parse(json));
};

/** From a document that has been parsed. */
export const readQuilt = (value: unknown): Outcome<Quilt, DesignProblem> => {
  const bounds = boundProblems(value);
  if (bounds.length > 0) return listed(bounds);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return refused([{ code: 'design/wrong-type', path: '', found: foundText(value), expected: 'object' }]);
  }
  const today = atNewestVersion(value as RawDocument);
  if (!today.ok) return today;
  const parsed = quiltDocument.safeParse(today.value);
  const form = parsed.success ? { problems: [], broken: [] } : schemaProblems(parsed.error.issues, today.value);
  const before = [...form.problems, ...textProblems(today.value)];
  const { document, isSound } = salvaged(today.value, form.broken);
  if (document === null) return listed(before);
  const meaning = readMeaning(document);
  const problems = [...before, ...[...unbuiltProblems(document), ...meaning.problems].filter(isSound)];
  if (problems.length > 0) return listed(problems);
  if (meaning.quilt === null) throw new Error('a document without problems gave no quilt');
  return done(meaning.quilt);
};

/**
 * Whether each part of a document has the form of one, whatever its names and lengths mean: such a document can be shown and mended
 * part by part, one without can only be refused.
 */
export const hasForm = (value: unknown): boolean => {
  if (boundProblems(value).length > 0 || typeof value !== 'object' || value === null || Array.isArray(value))
    return false;
  const today = atNewestVersion(value as RawDocument);
  if (!today.ok) return false;
  const parsed = quiltDocument.safeParse(today.value);
  return parsed.success || schemaProblems(parsed.error.issues, today.value).broken.length === 0;
};

const listed = (problems: readonly DesignProblem[]): Outcome<Quilt, DesignProblem> =>
  refused(problems.slice(0, limits.problems), Math.max(0, problems.length - limits.problems));

interface Meaning {
  readonly quilt: Quilt | null;
  readonly problems: readonly DesignProblem[];
}

const readMeaning = (document: QuiltDocument): Meaning => {
  const problems: DesignProblem[] = [];
  const { unit } = document;
  const reading = readingFor(unit, (problem) => problems.push(problem));
  const most = widest[unit];
  const seam = reading.length({ written: document.seam, path: '/seam', most, missing: usualSewing[unit].seam });
  const ruler = reading.length({ written: document.ruler, path: '/ruler', most, missing: usualSewing[unit].ruler });
  const buying = readBuying(document.cutting, reading);
  const ids = [...new Set(document.fabrics.map((fabric) => fabric.id))].filter((id) => id !== '');
  const fabrics = { ids, has: new Set(ids) };
  const cloths = readFabrics(document.fabrics, { reading, buying });
  const blocks = readBlocks(document.blocks, { reading, fabrics });
  for (const problem of motifProblems({ blocks, cloths })) reading.report(problem);
  const top = readTop(document.top, { reading, fabrics, written: document.blocks, blocks });
  const finish = readFinish(document.finish, { reading, fabrics, cloths, seam });
  const colourways = readColourways(document.colourways, { reading, fabrics });
  const sizes = readSizes(document.sizes, { reading, fabrics, cloths, seam, written: document.blocks, blocks, finish });
  const methods = readMethods(document.methods, { path: '/methods', reading, fabrics });
  if (seam === null || ruler === null || buying === null || top === null) return { quilt: null, problems };
  const { title = 'Untitled quilt', designer = '', notes = '', currency = '' } = document;
  const { edition = '', date = '', corrections = [] } = document;
  const quilt = {
    title,
    designer,
    notes,
    edition,
    date,
    corrections,
    currency,
    unit,
    seam,
    ruler,
    buying,
    layout: document.cutting?.layout ?? ('least' as const),
    onFold: document.cutting?.fold ?? false,
    draw: document.draw ?? 1,
    fabrics: cloths,
    blocks,
    top,
    finish,
    colourways,
    sizes,
    ...methods,
    ...(document.minutes === undefined ? {} : { minutes: minutesWritten(document.minutes) }),
  };
  return { quilt, problems };
};

/** What is written alone: an undefined figure is none. */
const minutesWritten = (written: NonNullable<QuiltDocument['minutes']>): Partial<MinutesTable> =>
  Object.fromEntries(Object.entries(written).filter(([, value]) => value !== undefined));
