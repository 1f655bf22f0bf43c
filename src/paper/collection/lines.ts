// The collection as a list to choose from: what each block is called, and what it takes to make it.

export interface CollectionLine {
  readonly id: string;
  readonly name: string;
  readonly otherNames: readonly string[];
  readonly patches: number;
  readonly joining: 'straight' | 'curved' | 'partial' | 'set-in';
  readonly history: string;
  readonly source: string;
}

const joinings: Readonly<Record<CollectionLine['joining'], string>> = {
  straight: 'straight seams',
  curved: 'curved seams',
  partial: 'partial seams',
  'set-in': 'seams set in',
};

export const collectionLines = (blocks: readonly CollectionLine[]): string => {
  const ids = Math.max(...blocks.map(({ id }) => id.length));
  const names = Math.max(...blocks.map((block) => namesOf(block).length));
  return blocks
    .map((block) => {
      const made = `${block.patches} patches, ${joinings[block.joining]}`;
      return `${block.id.padEnd(ids)}  ${namesOf(block).padEnd(names)}  ${made}\n${' '.repeat(ids + 2)}${block.history} (${block.source})`;
    })
    .join('\n');
};

const namesOf = ({ name, otherNames }: CollectionLine): string =>
  otherNames.length === 0 ? name : `${name}, also ${otherNames.join(', ')}`;
