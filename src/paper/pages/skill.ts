// How much skill does a quilt ask for? A guess from its shapes alone, said with its reason. The steps of
// the ladder are ours; that squares and rectangles come first is common teaching practice, no source.
import type { QuiltPlan } from '#craft';

export interface Skill {
  readonly level: 'Beginner' | 'Confident beginner' | 'Intermediate' | 'Advanced';
  readonly because: string;
}

export const skillOf = (plan: QuiltPlan): Skill => {
  const shapes = new Set(plan.blocks.flatMap(({ pieces }) => pieces.map(({ cut }) => cut.shape)));
  if (plan.blocks.some(({ joining }) => joining === 'set-in')) {
    return { level: 'Advanced', because: 'seams set into inside corners' };
  }
  if (plan.blocks.some(({ joining }) => joining === 'partial')) {
    return { level: 'Intermediate', because: 'seams begun, left open and closed later' };
  }
  if (plan.blocks.some(({ joining }) => joining === 'curved')) {
    return { level: 'Intermediate', because: 'curved seams' };
  }
  if (shapes.has('angled')) return { level: 'Intermediate', because: 'pieces cut from strips at an angle' };
  if (shapes.has('template')) return { level: 'Intermediate', because: 'pieces cut from templates' };
  if (shapes.has('half-square') || shapes.has('quarter-square')) {
    return { level: 'Confident beginner', because: 'triangles with edges on the bias' };
  }
  return { level: 'Beginner', because: 'squares and rectangles, straight seams' };
};
