// How much skill does a quilt ask for? A guess from its shapes alone, said with its reason. The steps of
// the ladder are ours; that squares and rectangles come first is common teaching practice, no source.
import type { QuiltPlan } from '#craft';

export interface Skill {
  readonly level: 'Beginner' | 'Confident beginner' | 'Intermediate' | 'Advanced';
  readonly because: string;
}

export const skillOf = (plan: QuiltPlan): Skill => {
  const shapes = new Set(plan.blocks.flatMap(({ pieces }) => pieces.map(({ cut }) => cut.shape)));
  if (plan.blocks.some(({ joining }) => joining !== 'straight')) {
    return { level: 'Advanced', because: 'some seams are set in, or sewn in part first' };
  }
  if (shapes.has('template')) return { level: 'Intermediate', because: 'pieces cut from templates' };
  if (shapes.has('half-square') || shapes.has('quarter-square')) {
    return { level: 'Confident beginner', because: 'triangles with edges on the bias' };
  }
  return { level: 'Beginner', because: 'squares and rectangles, straight seams' };
};
