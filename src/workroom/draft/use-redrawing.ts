// A block's drawing under work: every gesture goes through here, as one edit of the document, and says what it came to.
import { useCallback, useEffect, useMemo, useState } from 'react';
import { type Drawn, type DrawnPatch, laidOn, slackOf } from '#craft/redrawing';
import type { JsonObject } from '#workroom/editing';
import { useQuilt, useRoom } from '#workroom/room';
import type { Block } from './block-edits.ts';
import { canTakeOut, pointsOf, putPatches, putSeams, type Reseamed, regridded, regridSeams } from './drawing-edits.ts';
import { type ToneChoice, toneChoices, usualTone } from './tones.ts';
import { useBlockEdit } from './use-block-edit.ts';
import { type DrawnState, useDrawn } from './use-drawn.ts';

const curvesStay =
  'A curve would end inside another patch. Rule its seams first, patch by patch, or make it straight; then do it again.';

export interface Redrawing extends DrawnState {
  /** The block's; undefined where none is drawn on. */
  readonly id: string | undefined;
  /** What can be laid, and what is. */
  readonly tones: readonly ToneChoice[];
  readonly tone: string;
  readonly takeTone: (tone: string) => void;
  /** Why the last gesture came to nothing; empty where it came to something. */
  readonly word: string;
  readonly tell: (why: string) => void;
  readonly done: (what: string) => void;
  /** @returns whether the patches are these now; a block drawn by its seams stays one where seams say it all */
  readonly put: (
    what: string,
    to: {
      /** Null where an arc would be cut short. */
      readonly patches: readonly DrawnPatch[] | null;
      readonly seams?: Partial<Reseamed>;
    },
  ) => boolean;
  readonly regrid: (grid: Drawn['grid']) => void;
  readonly fill: () => void;
  readonly trim: () => void;
}

/** @param asked the document that blocks are asked of by themselves */
export const useRedrawing = (block: Block | undefined, asked: JsonObject): Redrawing => {
  const state = useDrawn(block, asked);
  const { drawn, answer, isFresh } = state;
  const { document } = useQuilt();
  const { say } = useRoom();
  const [wished, takeTone] = useState('');
  const [word, setWord] = useState('');
  const id = block?.id;
  const edit = useBlockEdit(id);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was wished and said belongs to the block that was left
  useEffect(() => {
    takeTone('');
    setWord('');
  }, [id]);

  const tones = useMemo(
    () => (block === undefined || drawn === null ? [] : toneChoices(block, drawn, document.fabrics)),
    [block, drawn, document.fabrics],
  );
  const isKnown = tones.some(({ tone: known }) => known === wished);
  const tone = isKnown || drawn === null ? wished : usualTone(tones, drawn);

  const tell = useCallback(
    (why: string) => {
      setWord(why);
      say(why);
    },
    [say],
  );
  const done = useCallback(
    (what: string) => {
      setWord('');
      if (what !== '') say(what);
    },
    [say],
  );
  const put = useCallback<Redrawing['put']>(
    (what, { patches, seams }) => {
      if (drawn === null || id === undefined) return false;
      if (!isFresh) {
        tell('One moment: the drawing is still being worked out. Then do it again.');
        return false;
      }
      const isCutShort =
        patches === null || (block?.drawing !== undefined && !canTakeOut(block.drawing, seams?.out ?? []));
      if (isCutShort) {
        tell(curvesStay);
        return false;
      }
      if (patches.length === 0) {
        tell('A block has one patch at least: lay another before this one is taken out.');
        return false;
      }
      edit(what, (own) => {
        if (own.drawing !== undefined && seams !== undefined)
          putSeams(own.drawing, { grid: drawn.grid, patches, ...seams });
        else putPatches(own, { before: drawn, patches, colourings: answer?.colourings ?? {} });
      });
      return true;
    },
    [block, drawn, answer, isFresh, id, edit, tell],
  );

  const regrid = (grid: Drawn['grid']): void => {
    if (drawn === null || id === undefined || !isFresh) return;
    const isEven = Math.abs(grid[0] * drawn.grid[1] - grid[1] * drawn.grid[0]) < 1e-9;
    if (!isEven && drawn.patches.some(({ arcs }) => arcs !== undefined)) {
      const [across, down] = drawn.grid;
      tell(`With curves a square stays as wide as high: ${across} by ${down} squares, or as many times more of both.`);
      return;
    }
    edit('Divide the block otherwise', (own) => {
      const colourings = answer?.colourings ?? {};
      if (own.drawing !== undefined) regridSeams(own.drawing, grid);
      else putPatches(own, { before: drawn, patches: regridded(drawn, grid), grid, colourings });
    });
  };
  const fill = (): void => {
    if (drawn === null || answer === null) return;
    const laid = answer.bare.map((points) => ({ points: pointsOf(points), tone }));
    if (put('Fill the gaps', { patches: [...drawn.patches, ...laid] })) done('The gaps are filled.');
  };
  const trim = (): void => {
    if (drawn === null) return;
    const slack = slackOf(drawn.grid);
    const patches = drawn.patches.reduce<readonly DrawnPatch[] | null>(
      (all, patch) => all && laidOn(all, patch, slack),
      [],
    );
    if (put('Cut away overlaps', { patches })) done('Where patches lay over each other, the lower ones end now.');
  };
  return { ...state, id, tones, tone, takeTone, word, tell, done, put, regrid, fill, trim };
};
