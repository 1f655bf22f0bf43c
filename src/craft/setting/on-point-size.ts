// The one size of the blocks of a set on point: square, and the same everywhere.
import type { OnPointTop } from '#craft/design';
import type { DraftedBlock } from '#craft/drafting';
import type { Length } from '#craft/measure';
import { done, type Outcome, refused } from '#ground/outcome';
import type { SettingProblem } from './problems.ts';

/** Their side, finished; a problem at the first place of every block that is not square or of another size. */
export const squareSideOf = (
  { rows, between }: Pick<OnPointTop, 'rows' | 'between'>,
  blocks: ReadonlyMap<string, DraftedBlock>,
): Outcome<Length, SettingProblem> => {
  const problems: SettingProblem[] = [];
  const seen = new Set<string>();
  let first: DraftedBlock | null = null;
  for (const { cells, path } of [
    { cells: rows, path: '/top/rows' },
    { cells: between, path: '/top/between' },
  ]) {
    for (const [i, row] of cells.entries()) {
      for (const [j, cell] of row.entries()) {
        if (cell.kind === 'plain' || seen.has(cell.block)) continue;
        seen.add(cell.block);
        const block = blocks.get(cell.block) as DraftedBlock;
        first ??= block;
        problems.push(...sizeProblems(block, { first, path: `${path}/${i}/${j}` }));
      }
    }
  }
  if (first === null) return refused([{ code: 'setting/no-block', path: '/top/rows' }]);
  return problems.length > 0 ? refused(problems) : done(first.size[0]);
};

const sizeProblems = (
  block: DraftedBlock,
  { first, path }: { readonly first: DraftedBlock; readonly path: string },
): readonly SettingProblem[] => {
  const { id, size } = block;
  if (!isSquare(block)) return [{ code: 'setting/not-square', path, block: id, found: size }];
  const expected = first.size[0];
  if (!isSquare(first) || size[0] === expected) return [];
  return [{ code: 'setting/sizes-differ', path, block: id, found: size[0], other: first.id, expected }];
};

export const isSquare = ({ exactSize: [width, height] }: Pick<DraftedBlock, 'exactSize'>): boolean =>
  width.equals(height);
