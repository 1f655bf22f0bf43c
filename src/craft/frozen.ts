// A plan is facts: nobody who is handed one can change it for the next reader.

/** The same value, frozen to its depths; shared parts are visited once. */
export const frozen = <T>(value: T): T => {
  const waiting: object[] = typeof value === 'object' && value !== null ? [value] : [];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    if (Object.isFrozen(next)) continue;
    Object.freeze(next);
    for (const inner of Object.values(next)) if (typeof inner === 'object' && inner !== null) waiting.push(inner);
  }
  return value;
};
