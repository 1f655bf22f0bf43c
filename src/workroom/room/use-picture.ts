// The quilt to draw: the last that could be planned; where none could yet, as when a file with faults is opened, as much of it as can be
// drawn, with something plain in the place of what is at fault.
import { useEffect, useState } from 'react';
import type { QuiltPicture } from '#workroom/compute';
import { useQuilt, useRoom } from './room.tsx';

export const usePicture = (): QuiltPicture | null => {
  const { planner } = useRoom();
  const { answer, problems, editing } = useQuilt();
  const [stood, setStood] = useState<QuiltPicture | null>(null);
  const { document } = editing;
  const isFaulty = answer === null && problems.length > 0;
  useEffect(() => {
    if (!isFaulty) return;
    let isOvertaken = false;
    void planner.standIn(document).then((found) => {
      if (!isOvertaken) setStood(found);
    });
    return () => {
      isOvertaken = true;
    };
  }, [planner, document, isFaulty]);
  return answer === null ? stood : answer.picture;
};
