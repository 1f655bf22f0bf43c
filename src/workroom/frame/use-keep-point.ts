// A restore point of the quilt as it stands, by one key, under a name that says what was done last; and where it could not be kept, why.
import { useCallback, useEffect, useMemo, useState } from 'react';
import { type Command, useCommands } from '#workroom/commands';
import { pointFaultWords } from '#workroom/room';
import type { Desk, PointBook } from '#workroom/store';
import { pointName } from './point-name.ts';

export interface KeptPoint {
  readonly keep: () => Promise<void>;
  /** What became of the last one, for as long as it is read; null else. */
  readonly told: string | null;
}

/** So long it stands where it is told whether the quilt is kept. */
const toldMs = 6000;

export const useKeepPoint = (desk: Desk, points: PointBook): KeptPoint => {
  const [told, tell] = useState<string | null>(null);
  useEffect(() => {
    if (told === null) return;
    const rest = setTimeout(() => tell(null), toldMs);
    return () => clearTimeout(rest);
  }, [told]);
  const keep = useCallback(async () => {
    const { editing } = desk.state();
    const kept = await points.keep({ name: pointName(editing), document: editing.document });
    tell(kept === null ? pointFaultWords(points.state().fault) : `Restore point kept: ${kept.name}`);
  }, [desk, points]);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'keep point', part: 'Quilt', words: 'Keep a restore point', keys: ['K'], run: () => void keep() },
      ],
      [keep],
    ),
  );
  return useMemo(() => ({ keep, told }), [keep, told]);
};
