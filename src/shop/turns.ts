// One after another: what takes the machine for itself waits for what was asked before it, and is left out where nobody waits any more.

/** @param isWanted judged when its turn comes; what is not is answered by null */
export type Turns = <T>(isWanted: () => boolean, work: () => Promise<T>) => Promise<T | null>;

/** Of the event loop, until a connection that was closed is known as such: two were seen. */
const listeningTurns = 4;

export const turns = (): Turns => {
  let last: Promise<unknown> = Promise.resolve();
  return (isWanted, work) => {
    const mine = last.then(async () => {
      // that the other side has left is heard only between two pieces of work
      for (let turn = 0; turn < listeningTurns; turn++) await new Promise((resolve) => setImmediate(resolve));
      return isWanted() ? work() : null;
    });
    last = mine.catch(() => undefined);
    return mine;
  };
};
