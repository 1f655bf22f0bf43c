// Lines to add to a block so that straight seams alone join it: shown on the drafting table, and taken as one edit.
import { useCallback, useMemo } from 'react';
import { cutAlong, slackOf } from '#craft/redrawing';
import { at, type Point } from '#ground/plane';
import { type Command, useCommands } from '#workroom/commands';
import type { BlockAnswer } from '#workroom/compute';
import { countWords } from '#workroom/room';
import type { TableState } from './use-table.ts';

export interface Advised {
  /** On the block's grid. */
  readonly runs: readonly (readonly Point[])[];
  /** What the lines change. */
  readonly words: string;
  readonly take: () => void;
}

/**
 * @param answer what follows from the block as it stands
 * @param size   finished, without a frame
 */
export const useAdvice = (of: {
  readonly table: TableState;
  readonly answer: BlockAnswer | null;
  readonly size: readonly [number, number] | null;
}): Advised | null => {
  const { answer, size } = of;
  const { drawn, put, done } = of.table;
  const advice = answer?.advice ?? null;
  const runs = useMemo(() => {
    if (advice === null || drawn === null || size === null) return [];
    const onGrid = (x: number, y: number): Point => at((x * drawn.grid[0]) / size[0], (y * drawn.grid[1]) / size[1]);
    return advice.seams.map(([x, y, u, v]) => [onGrid(x, y), onGrid(u, v)]);
  }, [advice, drawn, size]);
  const take = useCallback(() => {
    if (drawn === null || runs.length === 0) return;
    const slack = slackOf(drawn.grid);
    const patches = runs.reduce((cut, run) => cutAlong(cut, run, slack).patches, drawn.patches);
    const what = countWords(runs.length, 'line is', 'lines are');
    if (put('Add the lines', { patches, seams: { ruled: runs } }))
      done(`${what} added; ${joinsWords[advice?.joins ?? 'straight']} join it now.`);
  }, [drawn, runs, put, done, advice]);
  const isOff = runs.length === 0;
  useCommands(
    useMemo(
      (): readonly Command[] =>
        isOff
          ? []
          : [
              {
                id: 'take advice',
                part: 'Draft',
                words: 'Add the lines that let it be sewn in whole seams',
                keys: ['I'],
                run: take,
              },
            ],
      [isOff, take],
    ),
  );
  return useMemo(
    () => (advice === null || runs.length === 0 ? null : { runs, words: changeWords(advice), take }),
    [advice, runs, take],
  );
};

const joinsWords: Readonly<Record<NonNullable<BlockAnswer['advice']>['joins'], string>> = {
  straight: 'straight seams alone',
  curved: 'straight seams, and curves each in one run,',
};

const changeWords = ({ seams, more, corners, partial, joins }: NonNullable<BlockAnswer['advice']>): string => {
  const gone = [
    ...(corners > 0 ? [countWords(corners, 'corner to set in', 'corners to set in')] : []),
    ...(partial > 0 ? [countWords(partial, 'seam sewn part-way', 'seams sewn part-way')] : []),
  ];
  const lines = seams.length === 1 ? 'The dashed line would let' : 'The dashed lines would let';
  const less = gone.length === 0 ? 'no curve turns more than half round' : `${gone.join(' and ')} less`;
  return `${lines} ${joinsWords[joins]} join it: ${countWords(more, 'piece', 'pieces')} more, ${less}.`;
};
