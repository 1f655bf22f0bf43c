// Blocks drawn and set, and cloths chosen: all of a quilt that stands before it is asked how its units are made.
import type { CuttingProblem } from '#craft/cutting';
import type { Fabric, Quilt } from '#craft/design';
import { blockDrafter, type DraftedBlock, type DraftingProblem } from '#craft/drafting';
import { type Likeness, likenessOf, strictestOf } from '#craft/fabric';
import { planFoundations, type Sections } from '#craft/foundation';
import { type SetTop, type SettingProblem, setTop } from '#craft/setting';
import { clothsSewnAs, lightnessBy, planScraps } from '#craft/tones';
import { done, type Outcome, refused } from '#ground/outcome';
import type { Recall } from '#ground/recall';

export interface DraftedQuilt {
  readonly quilt: Quilt;
  readonly drafted: ReadonlyMap<string, DraftedBlock>;
  readonly foundations: ReadonlyMap<string, Sections>;
  readonly set: SetTop;
  readonly scraps: ReturnType<typeof planScraps>;
}

export const draftQuilt = (
  quilt: Quilt,
  options: { readonly memory?: Recall },
): Outcome<DraftedQuilt, DraftingProblem | SettingProblem | CuttingProblem> => {
  const drafted = draftAll(quilt);
  if (!drafted.ok) return drafted;
  const sheets = planFoundations({
    quilt,
    drafted: drafted.value,
    ...(options.memory ? { memory: options.memory } : {}),
  });
  if (!sheets.ok) return sheets;
  const laid = setTop({ quilt, blocks: drafted.value, lightness: lightnessBy(quilt) });
  if (!laid.ok) return laid;
  const set = laid.value;
  const scraps = planScraps({ quilt, drafted: drafted.value, set });
  return done({ quilt, drafted: drafted.value, foundations: sheets.value, set, scraps });
};

const draftAll = (quilt: Quilt): Outcome<ReadonlyMap<string, DraftedBlock>, DraftingProblem> => {
  const drafted = new Map<string, DraftedBlock>();
  const problems: DraftingProblem[] = [];
  let more = 0;
  const draft = blockDrafter();
  for (const design of quilt.blocks) {
    const block = draft(design);
    if (block.ok) {
      drafted.set(design.id, block.value);
      continue;
    }
    const listed = block.problems.slice(0, mostProblems - problems.length);
    problems.push(...listed);
    more += block.more + block.problems.length - listed.length;
  }
  return problems.length > 0 ? refused(problems, more) : done(drafted);
};

const mostProblems = 200;

export const likenessBy = (quilt: Quilt): ((fabric: string) => Likeness) => {
  const known = new Map(quilt.fabrics.map((f) => [f.id, f]));
  return (name) => likenessOf(strictestOf(clothsSewnAs(name).map((id) => known.get(id) as Fabric)));
};
