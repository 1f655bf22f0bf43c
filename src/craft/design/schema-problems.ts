// What the schema found wrong, as our own facts. Where a value could have had several shapes, the one it
// comes nearest to is told.
import type { z } from 'zod';
import { type Counted, limits } from '#craft/limits';
import type { Expected } from './expected.ts';
import { foundText } from './found.ts';
import { pointer } from './pointer.ts';
import type { DesignProblem } from './problems.ts';

type Issue = z.core.$ZodIssue;
type Path = readonly PropertyKey[];

export interface SchemaFindings {
  readonly problems: readonly DesignProblem[];
  /** Places of values that have the wrong form; names and lengths elsewhere can be read too. */
  readonly broken: readonly string[];
}

export const schemaProblems = (issues: readonly Issue[], document: unknown): SchemaFindings => {
  const problems = issues.flatMap((issue) => problemsOf(issue, { document, above: [] }));
  return { problems, broken: problems.filter(({ code }) => !harmless.has(code)).map(({ path }) => path) };
};

/** Faults that leave every value of the shape that the readers trust. */
const harmless: ReadonlySet<string> = new Set([
  'design/unknown-key',
  'design/too-few',
  'design/too-many',
  'design/text-too-long',
  'design/bad-name',
  'design/not-a-colour',
  'design/not-a-picture',
  'design/out-of-range',
]);

interface Where {
  readonly document: unknown;
  /** The place of the union that an inner issue counts its path from. */
  readonly above: Path;
}

const problemsOf = (issue: Issue, where: Where): readonly DesignProblem[] => {
  const segments = [...where.above, ...issue.path];
  const path = pointer(segments);
  const value = valueAt(where.document, segments);
  const found = foundText(value);
  switch (issue.code) {
    case 'unrecognized_keys': {
      const known = JSON.parse(issue.message) as string[];
      return issue.keys.map((key) => ({ code: 'design/unknown-key', path: pointer([...segments, key]), key, known }));
    }
    case 'invalid_union':
      return unionProblems(issue, { ...where, above: segments });
    case 'invalid_value':
      if (value === undefined) return [missing(segments)];
      return [{ code: 'design/not-one-of', path, found, options: issue.values.map((option) => foundText(option)) }];
    case 'invalid_key':
      return [{ code: 'design/bad-name', path, found: foundText(issue.path.at(-1)) }];
    case 'invalid_format':
      return [{ code: formatFaults[String(segments.at(-1))] ?? 'design/bad-name', path, found }];
    case 'too_small':
    case 'too_big':
      return [sizeProblem(issue, { path, segments, value })];
    default:
      if (value === undefined) return [missing(segments)];
      return [{ code: 'design/wrong-type', path, found, expected: expectedOf(issue) }];
  }
};

/** By the key whose text does not have its form. */
const formatFaults: Readonly<Record<string, 'design/not-a-colour' | 'design/not-a-picture'>> = {
  colour: 'design/not-a-colour',
  image: 'design/not-a-picture',
};

const missing = (segments: Path): DesignProblem => ({
  code: 'design/missing-key',
  path: pointer(segments),
  key: String(segments.at(-1) ?? ''),
});

const sizeProblem = (
  issue: Issue & { readonly code: 'too_small' | 'too_big' },
  at: { readonly path: string; readonly segments: Path; readonly value: unknown },
): DesignProblem => {
  const { path, segments, value } = at;
  if (issue.message.startsWith('expects ')) {
    return { code: 'design/wrong-type', path, found: foundText(value), expected: expectedOf(issue) };
  }
  if (typeof value === 'string') {
    return {
      code: 'design/text-too-long',
      path,
      found: value.length,
      most: Number((issue as { maximum?: number }).maximum),
    };
  }
  if (typeof value === 'number') {
    const [least, most] = rangeAt(segments);
    return { code: 'design/out-of-range', path, found: foundText(value), least, most };
  }
  const found = Array.isArray(value) ? value.length : 0;
  const what = countedAt(segments);
  return issue.code === 'too_small'
    ? { code: 'design/too-few', path, what, found, least: Number(issue.minimum) }
    : { code: 'design/too-many', path, what, found, most: limits[what] };
};

const rangeAt = (segments: Path): readonly [number, number] => {
  if (segments[0] === 'minutes') return [0, limits.minutes];
  switch (segments.at(-1)) {
    case 'shrinkage':
      return [0, 1];
    case 'count':
      return [1, limits.sheetsAtHand];
    case 'draw':
      return [1, limits.draws];
    case 'rows':
      return [1, limits.rows];
    case 'columns':
      return [1, limits.columns];
    default:
      return [0, 1_000_000];
  }
};

const countedAt = (segments: Path): Counted => {
  const last = String(segments.findLast((segment) => typeof segment === 'string'));
  const names: Readonly<Record<string, Counted>> = {
    fabrics: 'fabrics',
    blocks: 'blocks',
    rounds: 'rounds',
    order: 'logs',
    tones: 'logs',
    width: 'logs',
    list: 'patches',
    points: 'corners',
    units: 'patches',
    seams: 'seams',
    tonesAt: 'patches',
    sheets: 'sheetKinds',
    lengths: 'sheetKinds',
    ends: 'sheetKinds',
    motifs: 'tones',
    methods: 'methods',
  };
  return names[last] ?? 'entries';
};

const unionProblems = (issue: Issue & { readonly code: 'invalid_union' }, where: Where): readonly DesignProblem[] => {
  const value = valueAt(where.document, where.above);
  const path = pointer(where.above);
  if (value === undefined) return [missing(where.above)];
  const branches = issue.errors.filter((branch) => branch.every((inner) => !isOfAnotherType(inner, value)));
  const nearest = branches.toSorted((a, b) => distance(a) - distance(b))[0];
  if (nearest === undefined || (issue.message.startsWith('expects ') && isOfOtherKeys(nearest))) {
    if (issue.errors.length > 0)
      return [{ code: 'design/wrong-type', path, found: foundText(value), expected: expectedOf(issue) }];
    return [{ code: 'design/not-one-of', path, found: foundText(value), options: ['"log-cabin"', '"units"'] }];
  }
  return nearest.flatMap((inner) => problemsOf(inner, where));
};

/** The value itself, not something inside it, has a type or a number of parts that the branch cannot take. */
const isOfAnotherType = (issue: Issue, value: unknown): boolean => {
  if (issue.path.length > 0) return false;
  if (issue.code === 'invalid_union')
    return issue.errors.every((branch) => branch.some((inner) => isOfAnotherType(inner, value)));
  return (
    issue.code === 'invalid_type' ||
    (issue.code === 'invalid_value' && typeof value === 'object') ||
    ((issue.code === 'too_small' || issue.code === 'too_big') && issue.origin === 'array')
  );
};

/** An object that lacks the key which the branch is known by, and has another. */
const isOfOtherKeys = (branch: readonly Issue[]): boolean =>
  branch.some(({ code }) => code === 'unrecognized_keys') &&
  branch.some(({ code, path }) => code === 'invalid_type' && path.length === 1);

const distance = (branch: readonly Issue[]): number =>
  branch.reduce((sum, issue) => {
    if (issue.code === 'unrecognized_keys') return sum + 2 * issue.keys.length;
    return sum + (issue.code === 'invalid_type' ? 3 : 1);
  }, 0);

const expectedOf = (issue: Issue): Expected => {
  if (issue.message.startsWith('expects ')) return issue.message.slice('expects '.length) as Expected;
  switch ((issue as { expected?: string }).expected) {
    case 'array':
    case 'tuple':
      return 'list';
    case 'string':
      return 'text';
    case 'number':
      return 'number';
    case 'int':
      return 'whole-number';
    case 'boolean':
      return 'true-or-false';
    default:
      return 'object';
  }
};

const valueAt = (document: unknown, path: Path): unknown => {
  let value = document;
  for (const segment of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, segment)) return undefined;
    value = (value as Readonly<Record<PropertyKey, unknown>>)[segment];
  }
  return value;
};
