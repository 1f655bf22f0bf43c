// What one view shows of the plan, asked anew when there is another plan or something else is in sight. Until it is answered the
// last answer stands.
import { useEffect, useState } from 'react';
import type { Look, LookName, Planner, QuiltAnswer, Seen } from '#workroom/compute';
import { useQuilt, useRoom } from './room.tsx';

/** @param look the same value while the same is in sight */
export const useLook = <Name extends LookName>(name: Name, look: Look<Name>): Seen<Name> | null => {
  const { planner } = useRoom();
  const { answer } = useQuilt();
  return useLookAt({ planner, answer }, name, look);
};

/** The same of another planner's plan, where more than one stands on the desk; null for none yet. */
export const useLookAt = <Name extends LookName>(
  { planner, answer }: { readonly planner: Planner | null; readonly answer: QuiltAnswer | null },
  name: Name,
  look: Look<Name>,
): Seen<Name> | null => {
  const [seen, setSeen] = useState<{ readonly by: Planner; readonly found: Seen<Name> } | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another answer is another plan
  useEffect(() => {
    if (planner === null) return;
    let isOvertaken = false;
    void planner.look(name, look).then((found) => {
      if (!isOvertaken && found !== null) setSeen({ by: planner, found });
    });
    return () => {
      isOvertaken = true;
    };
  }, [planner, name, look, answer]);
  return seen !== null && seen.by === planner ? seen.found : null;
};
