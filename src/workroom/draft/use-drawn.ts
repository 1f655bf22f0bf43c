// A block as patches on its grid: read from the document where it has them, else told by the worker.
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Drawn } from '#craft/redrawing';
import type { DrawnAnswer, Reply } from '#workroom/compute';
import type { JsonObject } from '#workroom/editing';
import { useQuilt, useRoom } from '#workroom/room';
import type { Block } from './block-edits.ts';
import { drawnFrom, drawnIn } from './drawing-edits.ts';

export interface DrawnState {
  /** Null before the first answer, and where nothing of it can be drawn. */
  readonly drawn: Drawn | null;
  /** The last answer for this block, were it of an earlier state of it. */
  readonly answer: DrawnAnswer | null;
  /** What is drawn is the block as it stands. */
  readonly isFresh: boolean;
}

/** @param asked the document that blocks are asked of by themselves */
export const useDrawn = (block: Block | undefined, asked: JsonObject): DrawnState => {
  const { planner } = useRoom();
  const { document } = useQuilt();
  const [told, setTold] = useState<{ readonly of: Block; readonly reply: Reply<DrawnAnswer> } | null>(null);
  const last = useRef<{ readonly id: string; readonly answer: DrawnAnswer } | null>(null);
  useEffect(() => {
    if (block === undefined || block.made !== undefined) return;
    let isOvertaken = false;
    planner.drawn(asked, block.id).then(
      (reply) => {
        if (!isOvertaken) setTold({ of: block, reply });
      },
      () => undefined, // the page is closing
    );
    return () => {
      isOvertaken = true;
    };
  }, [planner, block, asked]);
  if (told?.reply.ok === true) last.current = { id: told.of.id, answer: told.reply.value };
  const known = block !== undefined && last.current?.id === block.id ? last.current.answer : null;
  const own = useMemo(() => (block === undefined ? null : drawnIn(block)), [block]);
  const from = useMemo(() => (known === null ? null : drawnFrom(known)), [known]);
  // a document that gives patches is the drawing; of other forms the worker knows what they come to
  const isTold = told !== null && told.of === block && told.reply.ok && document.blocks.includes(told.of);
  return { drawn: own ?? from, answer: known, isFresh: own !== null || isTold };
};
