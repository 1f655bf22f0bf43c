// What one view shows of the plan, asked anew when there is another plan or something else is in sight. Until it is answered the
// last answer stands.
import { useEffect, useState } from 'react';
import type { Look, LookName, Seen } from '#workroom/compute';
import { useQuilt, useRoom } from './room.tsx';

/** @param look the same value while the same is in sight */
export const useLook = <Name extends LookName>(name: Name, look: Look<Name>): Seen<Name> | null => {
  const { planner } = useRoom();
  const { answer } = useQuilt();
  const [seen, setSeen] = useState<Seen<Name> | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another answer is another plan
  useEffect(() => {
    let isOvertaken = false;
    void planner.look(name, look).then((found) => {
      if (!isOvertaken && found !== null) setSeen(() => found);
    });
    return () => {
      isOvertaken = true;
    };
  }, [planner, name, look, answer]);
  return seen;
};
