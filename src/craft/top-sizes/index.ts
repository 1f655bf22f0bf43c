// How true a top comes out: its check sizes come of its own seams and plain pieces, and of all that its blocks are made of.
export { topAsBlock } from './top-as-block.ts';
export { topSizes } from './top-sizes.ts';
