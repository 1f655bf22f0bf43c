// Which blocks of the document lie in the centre of a shape, one inside another?
import type { BlockShape } from './quilt.ts';

/** Ids, the outermost first. */
export const centresOf = (shape: BlockShape): readonly string[] => {
  switch (shape.kind) {
    case 'log-cabin':
      return shape.centreBlock === null ? [] : [shape.centreBlock.block, ...centresOf(shape.centreBlock.shape)];
    case 'framed':
      return centresOf(shape.inner);
    default:
      return [];
  }
};
