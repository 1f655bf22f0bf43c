// From coming into a field until leaving it is one gesture: one undo takes it back.
import { useMemo, useRef } from 'react';

export interface GestureOf {
  /** When the field is come into. */
  readonly begin: () => void;
  /** Names it: another field, or the same at another time, is another gesture. */
  readonly named: (what: string) => string;
}

export const useGesture = (): GestureOf => {
  const begunMs = useRef(0);
  return useMemo(
    () => ({
      begin: () => {
        begunMs.current = Date.now();
      },
      named: (what) => `${what} ${begunMs.current}`,
    }),
    [],
  );
};
