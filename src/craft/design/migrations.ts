// How an older document becomes one of today's version. One entry a version, applied in turn; an entry
// never changes once it is released.
import { done, type Outcome, refused } from '#ground/outcome';
import { foundText } from './found.ts';
import type { FormProblem } from './problems.ts';

export const format = 'seamstead-quilt';

export type RawDocument = Readonly<Record<string, unknown>> & { readonly format?: unknown; readonly version?: unknown };

/** From version `from` to the next; the road writes the version itself. */
export interface Migration {
  readonly from: number;
  readonly migrate: (document: RawDocument) => RawDocument;
}

/** Empty while there is one version. */
export const migrations: readonly Migration[] = [];

export const newestVersion = 1 + migrations.length;

/** The document in the newest version; a newer, missing or impossible version is refused. */
export const atNewestVersion = (
  document: RawDocument,
  table: { readonly migrations: readonly Migration[]; readonly newest: number } = { migrations, newest: newestVersion },
): Outcome<RawDocument, FormProblem> => {
  const { newest } = table;
  const problems: FormProblem[] = [];
  const { format: named, version } = document;
  if (named !== format) {
    problems.push({ code: 'design/format', path: '/format', found: foundText(named), expected: format });
  }
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    problems.push({ code: 'design/version', path: '/version', found: foundText(version), newest });
    return refused(problems);
  }
  if (version > newest) problems.push({ code: 'design/newer-version', path: '/version', found: version, newest });
  if (problems.length > 0) return refused(problems);
  let today = document;
  for (let from = version; from < newest; from++) {
    const step = table.migrations.find((migration) => migration.from === from);
    if (step === undefined) throw new Error(`no migration from version ${from}`);
    today = { ...step.migrate(today), version: from + 1 };
  }
  return done(today);
};
