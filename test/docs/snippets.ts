// Fenced blocks in our prose: whole documents are planned, commands are run, excerpts are looked for in real output.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './prose.ts';

export interface Snippet {
  /** Where it begins: file:line. */
  readonly at: string;
  readonly language: string;
  readonly text: string;
}

export const snippetsOf = (file: string): readonly Snippet[] => {
  const snippets: Snippet[] = [];
  let open: { readonly line: number; readonly language: string; readonly lines: string[] } | null = null;
  for (const [index, text] of readFileSync(join(root, file), 'utf8').split('\n').entries()) {
    const fence = /^\s*```(\w*)/.exec(text);
    if (fence === null) open?.lines.push(text);
    else if (open === null) open = { line: index + 1, language: fence[1] ?? '', lines: [] };
    else {
      snippets.push({ at: `${file}:${open.line}`, language: open.language, text: open.lines.join('\n') });
      open = null;
    }
  }
  return snippets;
};

/** A comment runs from two slashes after a space, or at the start of the line, to its end: no string of ours holds that. */
export const withoutComments = (jsonc: string): string => jsonc.replace(/(^|\s)\/\/.*$/gm, '$1');

/** Whether each line of an excerpt stands in the text, in order; "…" stands for what is left out. */
export const isExcerpt = (excerpt: string, text: string): boolean => {
  const lines = text.split('\n');
  let from = 0;
  let mayLeap = true;
  for (const line of excerpt.split('\n')) {
    if (line.trim() === '…') {
      mayLeap = true;
      continue;
    }
    const found = lines.indexOf(line, from);
    if (found < 0 || (!mayLeap && found !== from)) return false;
    from = found + 1;
    mayLeap = false;
  }
  return true;
};
