// Why a document was not printed, or a request not taken: each with what to do.

export interface Refusal {
  readonly problems: readonly WiredProblem[];
  /** Problems beyond those listed. */
  readonly more: number;
}

interface WiredProblem {
  readonly where: string;
  readonly what: string;
  readonly mend: string;
}

export const refusalOf = (...problems: readonly WiredProblem[]): Refusal => ({ problems, more: 0 });

export const isRefusal = (value: unknown): value is Refusal =>
  typeof value === 'object' && value !== null && 'problems' in value && Array.isArray(value.problems);
