// The import law as a table: what each layer of src/ may rest on. Arrows go down only, and an import of
// types alone obeys as well, for a type that points upward ties two rooms together just as firmly.

export interface Layer {
  readonly name: string;
  /** Layers below that it may import, besides itself. */
  readonly restsOn: readonly string[];
  /** Packages from outside. A new one needs a decision record. */
  readonly packages: readonly string[];
  /** A pure layer touches nothing: no files, processes, clock, locale, page, and no Node modules. */
  readonly pure: boolean;
}

export const layers: readonly Layer[] = [
  { name: 'ground', restsOn: [], packages: ['fraction.js'], pure: true },
  { name: 'craft', restsOn: ['ground'], packages: ['zod', 'culori'], pure: true },
  { name: 'paper', restsOn: ['ground', 'craft'], packages: ['csv-stringify'], pure: true },
  {
    name: 'print',
    restsOn: ['ground', 'craft', 'paper'],
    packages: ['@myriaddreamin/typst-ts-node-compiler', 'sharp'],
    pure: false,
  },
  { name: 'solver', restsOn: ['ground', 'craft'], packages: ['highs'], pure: false },
  { name: 'wire', restsOn: ['ground', 'craft'], packages: [], pure: true },
  {
    name: 'shop',
    restsOn: ['ground', 'craft', 'paper', 'print', 'wire', 'solver'],
    packages: ['fastify', '@fastify/static'],
    pure: false,
  },
  // rooms of the workroom that run without a page; they stand before their layer, which would let them do more
  { name: 'workroom/editing', restsOn: ['ground', 'craft'], packages: ['immer'], pure: true },
  { name: 'workroom/asking', restsOn: ['ground', 'craft', 'paper', 'workroom'], packages: [], pure: true },
  {
    name: 'workroom',
    restsOn: ['ground', 'craft', 'paper', 'wire', 'solver'],
    packages: ['react', 'react-dom', 'react-aria-components', 'comlink', 'highs'],
    pure: false,
  },
  {
    name: 'cli',
    restsOn: ['ground', 'craft', 'paper', 'print', 'shop', 'solver'],
    packages: ['commander'],
    pure: false,
  },
];

/** Words that name a drawer for odds and ends, not an idea. */
export const notNames: readonly string[] = ['util', 'helper', 'common', 'misc', 'manager', 'data', 'info', 'process'];
