// Sizes of the blocks and of what the borders go round, asked anew when something that they depend on has changed.
import { useEffect, useMemo, useState } from 'react';
import type { Measured } from '#workroom/compute';
import type { JsonObject } from '#workroom/editing';
import { useQuilt, useRoom } from '#workroom/room';

const none: Measured = { blocks: [], rings: [] };

export const useMeasures = (): Measured => {
  const { document } = useQuilt();
  const { planner } = useRoom();
  const [measured, setMeasured] = useState(none);
  const { blocks, top, fabrics, unit, seam } = document;
  const asked = useMemo(
    () =>
      ({
        format: 'seamstead-quilt',
        version: 1,
        unit,
        fabrics,
        blocks,
        top,
        ...(seam === undefined ? {} : { seam }),
      }) as unknown as JsonObject,
    [blocks, top, fabrics, unit, seam],
  );
  useEffect(() => {
    let isOvertaken = false;
    // typing goes before: what is asked in one go is asked once
    const rest = setTimeout(async () => {
      const found = await planner.measures(asked);
      if (!isOvertaken) setMeasured(found);
    }, 50);
    return () => {
      isOvertaken = true;
      clearTimeout(rest);
    };
  }, [asked, planner]);
  return measured;
};
