// What can go wrong as a value: a result with its notes, or every problem at once.
// Throws are kept for what only we can mend.

/** A value, or the problems that stood in its way; `more` counts problems beyond those listed. */
export type Outcome<T, P> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly P[]; readonly more: number };

export const done = <T>(value: T): { readonly ok: true; readonly value: T } => ({ ok: true, value });

export const refused = <P>(
  problems: readonly P[],
  more = 0,
): { readonly ok: false; readonly problems: readonly P[]; readonly more: number } => ({
  ok: false,
  problems,
  more,
});

/** For the default branch of a switch that must name every case: the compiler refuses a forgotten one. */
export const never = (value: never): never => {
  throw new Error(`a case was forgotten: ${JSON.stringify(value)}`);
};
