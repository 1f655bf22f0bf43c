// What keeps a quilt from being sewn: told above the view, but for what the view tells itself.
import { useEffect, useMemo } from 'react';
import type { QuiltDocument } from '#craft/design';
import type { WorkroomProblem } from '#workroom/compute';
import { Problems, quiltAddress, type Stop, useQuilt, useRoom } from '#workroom/room';

type Block = QuiltDocument['blocks'][number];

export interface ToldProblems {
  readonly loud: readonly WorkroomProblem[];
  /** Blocks with a problem that is told beside them, at Draft, and lit in their drawing. */
  readonly quiet: readonly Block[];
}

/** The first problem is said once it is there. */
export const useToldProblems = (of: {
  readonly problems: readonly WorkroomProblem[];
  readonly stop: Stop;
  readonly document: QuiltDocument;
}): ToldProblems => {
  const { problems, stop, document } = of;
  const { say } = useRoom();
  const first = problems[0]?.what;
  useEffect(() => {
    if (first !== undefined) say(first);
  }, [first, say]);
  return useMemo(() => {
    if (stop !== 'draft') return { loud: problems, quiet: [] };
    const blockOf = ({ where }: WorkroomProblem) => blockAt(where, document);
    return {
      loud: problems.filter((problem) => blockOf(problem) === undefined),
      quiet: [...new Set(problems.flatMap((problem) => blockOf(problem) ?? []))],
    };
  }, [stop, problems, document]);
};

/** The block in which a problem lies, where it lies in one. */
const blockAt = (where: string, document: QuiltDocument): Block | undefined =>
  document.blocks[Number(/^\/blocks\/(\d+)/.exec(where)?.[1] ?? Number.NaN)];

export const LoudProblems = (of: {
  readonly problems: readonly WorkroomProblem[];
  /** So many there are besides. */
  readonly more: number;
  readonly stop: Stop;
}) => {
  const { id, document } = useQuilt();
  if (of.problems.length === 0) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys must be able to scroll it
    <section className="notice" aria-label="Problems" tabIndex={0}>
      <h2>This cannot be sewn as it stands</h2>
      <Problems problems={of.problems} more={of.more} document={document} from={{ id, stop: of.stop }} />
    </section>
  );
};

export const StillToMend = ({ blocks }: { readonly blocks: readonly Block[] }) => {
  const { id } = useQuilt();
  if (blocks.length === 0) return null;
  return (
    <>
      <span className="problem-mark" aria-hidden="true">
        ◆
      </span>
      Still to mend before the quilt can be sewn:{' '}
      {blocks.map((block) => (
        <a key={block.id} href={quiltAddress(id, 'draft', block.id)}>
          {block.title || block.id}
        </a>
      ))}
    </>
  );
};
