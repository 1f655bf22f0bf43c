// Reads one source file into the facts that the law judges: what it imports, and what it does that no file may.
// A real parser does the reading, so words in comments and strings mislead nobody.

import { parseSync } from 'oxc-parser';

export interface Import {
  readonly line: number;
  /** What is imported, as written; null when it is computed at run time. */
  readonly from: string | null;
}

export interface Fault {
  readonly line: number;
  readonly says: string;
}

export interface Reading {
  readonly imports: readonly Import[];
  /** Faults in any layer. */
  readonly faults: readonly Fault[];
  /** Faults in a pure layer only: chance, locale and other things of the machine that the language itself offers. */
  readonly impurities: readonly Fault[];
}

/** The little that is needed of a syntax tree: a node has a type, a place, and children under any key. */
interface Node {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}

export function readSource(path: string, text: string): Reading {
  const { program, comments, errors } = parseSync(path, text);
  const lineAt = (offset: number): number => text.slice(0, offset).split('\n').length;
  const imports: Import[] = [];
  const faults: Fault[] = errors.map((error) => ({
    line: lineAt(error.labels[0]?.start ?? 0),
    says: `cannot be read: ${error.message}`,
  }));
  const impurities: Fault[] = [];

  for (const comment of comments) {
    if (/^\/\s*<reference\b/.test(comment.value)) {
      faults.push({
        line: lineAt(comment.start),
        says: 'a reference comment brings in types behind the law: import them',
      });
    }
  }
  visit(program as unknown as Node, (node, depth) => {
    const line = lineAt(node.start);
    if (isImport(node)) imports.push({ line, from: writtenSource(node) });
    const fault = faultOf(node, depth);
    if (fault) faults.push({ line, says: fault });
    const impurity = impurityOf(node);
    if (impurity) impurities.push({ line, says: impurity });
  });
  return { imports, faults, impurities };
}

/** Depth 1 is a statement of the module; an export wrapped round it does not count as a level. */
function visit(node: Node, see: (node: Node, depth: number) => void, depth = 0): void {
  see(node, depth);
  const below = node.type === 'ExportNamedDeclaration' ? depth : depth + 1;
  for (const child of Object.values(node).flat()) if (isNode(child)) visit(child, see, below);
}

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && 'start' in value;

const importing = new Set([
  'ImportDeclaration',
  'ExportNamedDeclaration',
  'ExportAllDeclaration',
  'ImportExpression',
  'TSImportType',
  'TSExternalModuleReference',
]);

const isImport = (node: Node): boolean =>
  importing.has(node.type) && (isNode(node.source) || isNode(node.expression) || isNode(node.argument));

function writtenSource(node: Node): string | null {
  const source = [node.source, node.expression, node.argument].find(isNode);
  return typeof source?.value === 'string' ? source.value : null;
}

function faultOf(node: Node, depth: number): string | null {
  if (node.type === 'ExportDefaultDeclaration') return 'a default export has no name of its own: export it by name';
  if (node.type === 'ExportSpecifier' && nameOf(node.exported) === 'default') {
    return 'a default export has no name of its own: export it by name';
  }
  if (node.type === 'TSEnumDeclaration') return 'an enum is code where a type would do: use a union of strings';
  if (node.type === 'VariableDeclaration' && depth === 1 && node.kind !== 'const') {
    return `${node.kind} at module level is state that every caller shares: pass it, or close over it`;
  }
  return null;
}

function impurityOf(node: Node): string | null {
  if (node.type === 'ImportExpression' && writtenSource(node) === null) return 'imports a name computed at run time';
  if (node.type !== 'MemberExpression') return null;
  const property = nameOf(node.property) ?? '';
  if (nameOf(node.object) === 'Math' && property === 'random') {
    return 'Math.random gives another answer each time: take a seed as an argument';
  }
  if (property === 'localeCompare' || property.startsWith('toLocale')) {
    return `${property} follows the locale of the machine: same document, same bytes`;
  }
  return null;
}

const nameOf = (node: unknown): string | null =>
  isNode(node) && typeof (node.name ?? node.value) === 'string' ? String(node.name ?? node.value) : null;
