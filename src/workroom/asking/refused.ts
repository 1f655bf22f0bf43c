// Why a question has no answer: problems in the words of the pages, with the names that the maker gave.
import type { Problem } from '#craft';
import type { Outcome } from '#ground/outcome';
import { makersNames, problemText } from '#paper/words';
import type { JsonObject } from '#workroom/editing';
import type { Reply } from './answer.ts';

export const refusedIn = (
  refused: Extract<Outcome<unknown, Problem>, { readonly ok: false }>,
  document: JsonObject | null,
): Extract<Reply<never>, { ok: false }> => {
  const named = makersNames(document);
  return { ok: false, problems: refused.problems.map((problem) => problemText(named(problem))), more: refused.more };
};
