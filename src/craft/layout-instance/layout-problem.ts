// Which layout does a problem of an instance ask for? Listed problems say it in their own fields, others by their name.
import type { Cutting } from '#craft/strips';
import { done, type Outcome, refused } from '#ground/outcome';
import type { FirstCut, Instance, ListedProblem } from './instance.ts';
import type { InstanceProblem } from './problems.ts';

export interface LayoutProblem {
  readonly id: string;
  readonly kind: 'strip' | 'sheets';
  readonly cutting: Cutting;
  readonly firstCut: FirstCut;
  readonly rotation: boolean;
  /** 'any': every packing counts, also one that no knife can cut; strips in three stages are one, and only area bounds them. */
  readonly packing: 'staged' | 'any';
  readonly best: number | null;
}

/** Names of problems that need not be listed; -o: pieces lie as written, -r: they may turn. */
const named: Readonly<Record<string, Pick<ListedProblem, 'kind' | 'stages' | 'stripHeights'>>> = {
  strip2: { kind: 'strip', stages: 2, stripHeights: 'any' },
  strip3r: { kind: 'strip', stages: 3, stripHeights: 'piece' },
  strip3: { kind: 'strip', stages: 3, stripHeights: 'any' },
  'strip-any': { kind: 'strip', stages: null, stripHeights: 'any' },
  sheets2: { kind: 'sheets', stages: 2, stripHeights: 'any' },
  sheets3: { kind: 'sheets', stages: 3, stripHeights: 'any' },
  bins2: { kind: 'sheets', stages: 2, stripHeights: 'any' },
  bins3: { kind: 'sheets', stages: 3, stripHeights: 'any' },
};

const namedIds = Object.keys(named).flatMap((name) => [`${name}-o`, `${name}-r`]);

/** @param id null: the first that the instance lists, else strips in two stages with the instance's own turning */
export const problemFor = (instance: Instance, id: string | null): Outcome<LayoutProblem, InstanceProblem> => {
  const wanted = id ?? instance.problems[0]?.id ?? `strip2-${instance.rotation ? 'r' : 'o'}`;
  const place = instance.problems.findIndex((listed) => listed.id === wanted);
  const listed = instance.problems[place] ?? byName(wanted);
  if (listed === null) {
    const known = [...new Set([...instance.problems.map((problem) => problem.id), ...namedIds])];
    return refused([{ code: 'instance/unknown-problem', path: '', found: wanted, known }]);
  }
  const faults = faultsOf(instance, listed, place < 0 ? '' : `/bestKnown/${place}`);
  if (faults.length > 0) return refused(faults);
  const { kind, stages, firstCut, rotation, stripHeights, best } = listed;
  const cutting: Cutting = stages === 2 ? { stages: 2 } : { stages: 3, stripHeights };
  return done({ id: wanted, kind, cutting, firstCut, rotation, packing: stages === null ? 'any' : 'staged', best });
};

const byName = (id: string): ListedProblem | null => {
  if (!namedIds.includes(id)) return null;
  const form = named[id.slice(0, -2)];
  if (form === undefined) return null;
  const rotation = id.endsWith('-r');
  return { id, ...form, firstCut: 'across', trim: true, rotation, best: null, lower: null };
};

const faultsOf = (instance: Instance, listed: ListedProblem, path: string): readonly InstanceProblem[] => {
  const { id: problem, kind, stages, firstCut, trim } = listed;
  const faults: InstanceProblem[] = [];
  if (!trim) faults.push({ code: 'instance/untrimmed', path: `${path}/trim`, problem });
  if (stages !== null && stages !== 2 && stages !== 3)
    faults.push({ code: 'instance/stages', path: `${path}/stages`, problem, found: stages });
  if (kind === 'strip' && firstCut === 'along')
    faults.push({ code: 'instance/cut-along-first', path: `${path}/firstCut`, problem });
  if (kind === 'strip' && instance.width === null) faults.push({ code: 'instance/no-cloth', path: '/W', problem });
  if (kind === 'sheets' && instance.sheets.length === 0)
    faults.push({ code: 'instance/no-sheets', path: '/sheets', problem });
  return faults;
};
