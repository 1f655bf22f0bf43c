// Reads out of our prose what it promises: paths, links, npm scripts, commands with their options, names of rooms.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Mention {
  /** Where it stands: file:line. */
  readonly at: string;
  readonly file: string;
  readonly text: string;
}

/** Every file of the project by its path from the root, but for what is installed, built or kept by git. */
export const allFiles: readonly string[] = filesUnder('');

function filesUnder(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (['node_modules', '.git', '.cache', '.types', 'dist', 'out'].includes(path)) return [];
    return entry.isDirectory() ? filesUnder(path) : [path];
  });
}

export const proseFiles = allFiles.filter(
  (file) => file.endsWith('.md') && (!file.includes('/') || file.startsWith('docs/')),
);
export const sourceFiles = allFiles.filter((file) => /^(src|test|scripts|bench)\/.*\.(m?ts|tsx)$/.test(file));

/** Each match of the pattern's first group in the files, with its place. */
export const mentions = (files: readonly string[], pattern: RegExp, within: 'line' | 'code' = 'line'): Mention[] =>
  files.flatMap((file) =>
    (within === 'code' ? codeOf(file) : linesOf(file)).flatMap(({ line, text }) =>
      [...text.matchAll(pattern)].map((match) => ({ at: `${file}:${line}`, file, text: match[1] ?? '' })),
    ),
  );

interface Line {
  readonly line: number;
  readonly text: string;
}

const linesOf = (file: string): Line[] =>
  readFileSync(join(root, file), 'utf8')
    .split('\n')
    .map((text, index) => ({ line: index + 1, text }));

/** Code in prose: what stands between backticks, and the lines of fenced and indented blocks. */
function codeOf(file: string): Line[] {
  const code: Line[] = [];
  let isFenced = false;
  for (const { line, text } of linesOf(file)) {
    if (/^\s*```/.test(text)) isFenced = !isFenced;
    else if (isFenced || /^ {4}[^ *+\d-]/.test(text)) code.push({ line, text });
    else for (const [, inline = ''] of text.matchAll(/`([^`]+)`/g)) code.push({ line, text: inline });
  }
  return code;
}

/** The anchors that a document offers: its headings as links write them, and anchors set by hand. */
export function anchorsOf(file: string): ReadonlySet<string> {
  const headings = mentions([file], /^#+\s+(.*)$/g).map(({ text }) => slug(text));
  const byHand = mentions([file], /<a (?:id|name)="([^"]+)"/g).map(({ text }) => text);
  return new Set([...headings, ...byHand]);
}

const slug = (heading: string): string =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, '')
    .replace(/\s/g, '-');
