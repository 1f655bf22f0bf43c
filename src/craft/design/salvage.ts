// Where some parts of a document have the wrong form, the others can still be read, so that all problems
// are told at once. Broken parts are stood in for; what is then found inside them is not told.
import type { QuiltDocument } from './document.ts';
import { pointer } from './pointer.ts';
import type { DesignProblem } from './problems.ts';

export interface Salvaged {
  /** Sound in form. Null where too little is left to read: no unit, no list of fabrics or blocks. */
  readonly document: QuiltDocument | null;
  readonly isSound: (problem: DesignProblem) => boolean;
}

/** @param broken places of the values that have the wrong form */
export const salvaged = (document: Readonly<Record<string, unknown>>, broken: readonly string[]): Salvaged => {
  const parts = new Set(broken.map(partOf));
  const isSound = ({ path }: DesignProblem): boolean => !parts.has(partOf(path));
  const { fabrics, blocks } = document;
  const needed = ['', '/unit', '/fabrics', '/blocks'];
  if (needed.some((part) => parts.has(part)) || !Array.isArray(fabrics) || !Array.isArray(blocks)) {
    return { document: null, isSound };
  }
  const rest = Object.entries(document).filter(([key]) => !parts.has(pointer([key])));
  const standing = {
    ...Object.fromEntries(rest),
    fabrics: fabrics.map((fabric, i) =>
      parts.has(`/fabrics/${i}`) ? { id: idOf(fabric), colour: '#000000' } : fabric,
    ),
    blocks: blocks.map((block, i) => (parts.has(`/blocks/${i}`) ? { id: idOf(block), ...colouringsOf(block) } : block)),
    ...(parts.has('/top') ? { top: {} } : {}),
  };
  return { document: standing as unknown as QuiltDocument, isSound };
};

/** What is stood in for as a whole: one fabric, one block, or all under a key of the document. */
const partOf = (path: string): string => /^\/(?:(?:fabrics|blocks)\/\d+|[^/]*)/.exec(path)?.[0] ?? '';

interface Part {
  readonly id?: unknown;
  readonly colourings?: unknown;
}

const isObject = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const idOf = (written: unknown): string => {
  const { id }: Part = isObject(written) ? written : {};
  return typeof id === 'string' ? id : '';
};

/** The names alone: cells may still ask for them. */
const colouringsOf = (written: unknown): { readonly colourings?: Readonly<Record<string, object>> } => {
  const { colourings }: Part = isObject(written) ? written : {};
  return isObject(colourings)
    ? { colourings: Object.fromEntries(Object.keys(colourings).map((name) => [name, {}])) }
    : {};
};
