// Our prose is run: the paths, links, scripts, commands and rooms that it names must be there.

import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, it } from 'node:test';
import { allFiles, anchorsOf, type Mention, mentions, proseFiles, root, sourceFiles } from './prose.ts';

const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
  scripts: Record<string, string>;
  imports: Record<string, string>;
};

/** A file, a folder, or a pattern with stars that fits one. */
function exists(path: string): boolean {
  const bare = path.replace(/\/$/, '');
  const pattern = bare
    .replace(/[.+?^${}()|[\]\\]/g, '\\$&')
    .replace(/\*+/g, (stars) => (stars === '*' ? '[^/]*' : '.*'));
  const fits = new RegExp(`^${pattern}(/|$)`);
  return allFiles.some((file) => fits.test(file));
}

const holdsFor = (found: readonly Mention[], holds: (mention: Mention) => boolean): void =>
  assert.deepEqual(
    found.filter((mention) => !holds(mention)).map(({ at, text }) => `${at} ${text}`),
    [],
  );

/** `file.md#anchor`, from the folder that it stands in. */
function leadsSomewhere(target: string, from: string): boolean {
  const [path = '', anchor] = target.split('#');
  const file = path === '' ? from : posix.join(posix.dirname(from), path);
  return exists(file) && (anchor === undefined || anchorsOf(file).has(anchor));
}

describe('our prose', () => {
  it('is found', () => {
    for (const file of ['README.md', 'CONTRIBUTING.md', 'CHANGELOG.md']) assert.ok(proseFiles.includes(file), file);
  });

  it('links to files and headings that exist', () => {
    const links = mentions(proseFiles, /\]\((?!\w+:)([^)\s]+)\)/g);
    holdsFor(links, ({ text, file }) => leadsSomewhere(text, file));
  });

  it('names paths that exist', () => {
    const tops = [...new Set(allFiles.filter((file) => file.includes('/')).map((file) => file.split('/')[0] ?? ''))];
    const anchored = tops.map((top) => top.replace('.', '\\.')).join('|');
    const paths = mentions(
      proseFiles,
      new RegExp(`(?<![\\w./#@<-])((?:${anchored})/[\\w./*-]*)(?![\\w<-])`, 'g'),
      'code',
    );
    holdsFor(paths, ({ text }) => exists(text.replace(/\.$/, '')));
  });

  it('names npm scripts that exist', () => {
    const scripts = mentions(proseFiles, /\bnpm (?:run )?((?!run\b|ci\b|install\b)[a-z][\w:-]*)/g, 'code');
    holdsFor(scripts, ({ text }) => text in manifest.scripts);
  });

  it('names rooms that exist', () => {
    const rooms = mentions(proseFiles, /(?<![\w(.])#((?:ground|craft|paper|print|cli)(?:\/[\w-]+)?)\b/g, 'code');
    holdsFor(rooms, ({ text }) => {
      const [layer, room] = text.split('/');
      const path = manifest.imports[room === undefined ? `#${layer}` : `#${layer}/*`];
      return path !== undefined && exists(path.replace('./', '').replace('*', room ?? ''));
    });
  });

  it('gives commands that the command line has, with options that they take', () => {
    const lines = mentions(proseFiles, /(?<![\w./-])seamstead +([a-z-].*)$/g, 'code');
    assert.ok(lines.length > 0, 'no command stands in our prose');
    const help = new Map<string, string>();
    const helpOf = (command: string): string => {
      const known = help.get(command) ?? askForHelp(command);
      help.set(command, known);
      return known;
    };
    holdsFor(lines, ({ text }) => {
      const [first = '', ...rest] = text.split(/[|>#]/, 1)[0]?.trim().split(/\s+/) ?? [];
      const command = first.startsWith('-') ? '' : first;
      const isKnown = command === '' || new RegExp(`^  ${command}\\b`, 'm').test(helpOf(''));
      const options = [first, ...rest].filter((word) => /^--\w/.test(word)).map((word) => word.split('=', 1)[0] ?? '');
      return isKnown && options.every((option) => option === '--help' || `${helpOf(command)} `.includes(option));
    });
  });
});

function askForHelp(command: string): string {
  const asked = [join(root, 'bin/seamstead.mjs'), ...(command === '' ? [] : [command]), '--help'];
  const { status, stdout, stderr } = spawnSync(process.execPath, asked, { cwd: root, encoding: 'utf8' });
  assert.equal(status, 0, stderr);
  return stdout;
}

describe('our sources', () => {
  it('cite documents and headings that exist', () => {
    const cited = mentions(sourceFiles, /\b(docs\/[\w/-]+\.md(?:(?:, )?#[\w-]+)*)/g);
    holdsFor(cited, ({ text }) => {
      const [file = '', ...anchors] = text.split(/(?:, )?#/);
      return exists(file) && anchors.every((anchor) => anchorsOf(file).has(anchor));
    });
  });

  it('cite nothing that a reader of this project does not have', () => {
    // documents are cited by their path; a bare name in capitals, or a path from the root of some machine, leads nowhere
    const elsewhere = mentions(
      [...sourceFiles, ...proseFiles],
      /((?<![\w.])(?:[A-Z]{5,} \d+\b|\/(?:work|home|root)\/[\w/.-]+))/g,
    );
    holdsFor(elsewhere, () => false);
  });
});
