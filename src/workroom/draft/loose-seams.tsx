// Seams of a drawing that end inside a patch, as a file may bring them: each can be taken out.
import type { WorkroomProblem } from '#workroom/compute';
import type { Block } from './block-edits.ts';
import { dropSeam } from './drawing-edits.ts';
import { useBlockEdit } from './use-block-edit.ts';

export const LooseSeams = ({
  block,
  problems,
}: {
  readonly block: Block;
  readonly problems: readonly WorkroomProblem[];
}) => {
  const edit = useBlockEdit(block.id);
  const numbers = [...new Set(problems.flatMap(({ where }) => seamAt(where) ?? []))];
  if (block.drawing === undefined || numbers.length === 0) return null;
  return (
    <div className="row">
      {numbers.map((number) => (
        <button
          key={number}
          type="button"
          onClick={() =>
            edit('Take out a seam', ({ drawing }) => {
              if (drawing !== undefined) dropSeam(drawing, number);
            })
          }
        >
          Take out {numbers.length === 1 ? 'that seam' : `seam ${number + 1}`}
        </button>
      ))}
    </div>
  );
};

const seamAt = (where: string): number | null => {
  const found = /\/drawing\/seams\/(\d+)/.exec(where);
  return found === null ? null : Number(found[1]);
};
