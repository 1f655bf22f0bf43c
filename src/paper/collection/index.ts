export { type CollectionLine, collectionLines } from './lines.ts';
export { type SizesFacts, sizesText } from './sizes.ts';
