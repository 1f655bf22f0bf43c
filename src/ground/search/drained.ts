// What does a search that goes by steps come to, when nobody waits between them?

/** All steps in one go; what is said on the way is dropped. */
export const drained = <T>(steps: Generator<unknown, T, void>): T => {
  for (;;) {
    const next = steps.next();
    if (next.done === true) return next.value;
  }
};
