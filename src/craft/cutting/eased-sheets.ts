// Sheets chosen, how is each cut with the least work? The same pieces on the same sheet, on strips of other heights or in
// another order; nothing moves from one sheet to the next.
import { eased } from '#craft/ease';
import type { SheetUse } from '#craft/sheets';
import { countsOf, type IntegerSolver, type Job, type Kind, renamedIn } from '#craft/strips';

export interface SheetsToEase {
  readonly kinds: readonly Kind[];
  /** In units of the kinds. */
  readonly sheets: readonly { readonly width: number; readonly height: number }[];
  readonly uses: readonly SheetUse[];
  readonly solver: IntegerSolver | null;
}

export const easedSheets = ({ kinds, sheets, uses, solver }: SheetsToEase): readonly SheetUse[] =>
  uses.map((use) => {
    const { width, height } = sheets[use.sheet] as SheetsToEase['sheets'][number];
    const counts = kinds.map((_, i) =>
      use.strips.reduce((sum, { pattern, times }) => sum + times * (countsOf(pattern, kinds.length)[i] ?? 0), 0),
    );
    const held = counts.flatMap((count, i) => (count > 0 ? [i] : []));
    const job: Job = { width, kinds: held.map((i) => ({ ...(kinds[i] as Kind), count: counts[i] as number })) };
    const within = use.strips.map((strip) => ({
      ...strip,
      pattern: renamedIn(strip.pattern, (kind) => held.indexOf(kind)),
    }));
    const best = eased({ job, strips: within, solver, longest: height });
    return {
      ...use,
      strips: best.map((strip) => ({ ...strip, pattern: renamedIn(strip.pattern, (kind) => held[kind] as number) })),
    };
  });
