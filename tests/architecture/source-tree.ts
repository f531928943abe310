/** Reads the project's files and parses its modules, so that laws can be written over plain data. */

import { readdirSync, readFileSync } from 'node:fs';
import { posix, sep } from 'node:path';
import { type ESTree, parseSync } from 'vite';

/** Text by path; paths are relative to the project and use `/`. */
export type Tree = ReadonlyMap<string, string>;

export interface Import {
  readonly specifier: string;
  /** A path of the tree for relative imports that lead somewhere, otherwise the specifier. */
  readonly target: string;
  readonly isRelative: boolean;
  readonly isFound: boolean;
  readonly isTypeOnly: boolean;
}

export interface Module {
  readonly path: string;
  readonly imports: readonly Import[];
  readonly program: ESTree.Program;
  readonly exportsEverything: boolean;
  readonly exportsDefault: boolean;
  readonly linesOfCode: number;
}

const readable = /\.(ts|tsx|mts|mjs|css|md|json)$/;
const moduleFile = /\.(ts|tsx|mjs)$/;

/** Every readable file under the given folders. */
export function readTree(...folders: readonly string[]): Tree {
  const paths = folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => [...entry.parentPath.split(sep), entry.name].join('/')),
  );
  return new Map(
    paths.sort().map((path) => [path, readable.test(path) ? readFileSync(path, 'utf8') : '']),
  );
}

/** The parsed modules among the files whose path starts with `under`. */
export function modulesOf(tree: Tree, under = 'src/'): readonly Module[] {
  return [...tree]
    .filter(([path]) => path.startsWith(under) && moduleFile.test(path) && !path.endsWith('.d.ts'))
    .map(([path, text]) => parseModule(path, text, tree));
}

function parseModule(path: string, text: string, tree: Tree): Module {
  const { program, module, comments, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path} cannot be parsed: ${errors[0]?.message}`);
  const found: { specifier: string; isTypeOnly: boolean }[] = [
    ...module.staticImports.map(({ moduleRequest, entries, start, end }) => ({
      specifier: moduleRequest.value,
      isTypeOnly: isTypeOnly(entries, text.slice(start, end)),
    })),
    ...module.staticExports.flatMap(({ entries, start, end }) =>
      entries.slice(0, 1).flatMap(({ moduleRequest }) =>
        moduleRequest === null
          ? []
          : [
              {
                specifier: moduleRequest.value,
                isTypeOnly: isTypeOnly(entries, text.slice(start, end)),
              },
            ],
      ),
    ),
    ...module.dynamicImports.map(({ moduleRequest }) => ({
      specifier: text.slice(moduleRequest.start + 1, moduleRequest.end - 1),
      isTypeOnly: false,
    })),
    ...typeImportsIn(program),
  ];
  return {
    path,
    imports: found.map((one) => ({ ...one, ...resolve(path, one.specifier, tree) })),
    program,
    exportsEverything: module.staticExports.some(({ entries }) =>
      entries.some(({ importName }) => /^All/.test(importName.kind)),
    ),
    exportsDefault: module.staticExports.some(({ entries }) =>
      entries.some(
        ({ exportName }) => exportName.kind === 'Default' || exportName.name === 'default',
      ),
    ),
    linesOfCode: linesOfCode(text, comments),
  };
}

function isTypeOnly(entries: readonly { isType: boolean }[], statement: string): boolean {
  if (/^(import|export)\s+type\b/.test(statement)) return true;
  return entries.length > 0 && entries.every(({ isType }) => isType);
}

/** `import('./x').Y` in a type position. */
function typeImportsIn(program: ESTree.Program): { specifier: string; isTypeOnly: boolean }[] {
  const found: { specifier: string; isTypeOnly: boolean }[] = [];
  walk(program, (node) => {
    if (node.type !== 'TSImportType') return;
    const source = node.source;
    if (isNode(source) && typeof source.value === 'string') {
      found.push({ specifier: source.value, isTypeOnly: true });
    }
  });
  return found;
}

function resolve(from: string, specifier: string, tree: Tree) {
  if (!specifier.startsWith('.')) return { target: specifier, isRelative: false, isFound: true };
  const plain = posix.join(posix.dirname(from), specifier.replace(/\?.*$/, ''));
  const target = ['', '.ts', '.tsx', '/index.ts', '/index.tsx']
    .map((ending) => plain + ending)
    .find((path) => tree.has(path));
  return { target: target ?? plain, isRelative: true, isFound: target !== undefined };
}

/** Lines that hold something other than a comment or nothing. */
function linesOfCode(text: string, comments: readonly { start: number; end: number }[]): number {
  let code = text;
  for (const { start, end } of comments) {
    const blank = text.slice(start, end).replace(/[^\n]/g, ' ');
    code = code.slice(0, start) + blank + code.slice(end);
  }
  return code.split('\n').filter((line) => line.trim() !== '').length;
}

export interface SyntaxNode {
  readonly type: string;
  readonly [member: string]: unknown;
}

export function isNode(value: unknown): value is SyntaxNode {
  return (
    typeof value === 'object' && value !== null && typeof Reflect.get(value, 'type') === 'string'
  );
}

/** Visits every node with its parent and the member it hangs on. */
export function walk(
  root: unknown,
  visit: (node: SyntaxNode, parent: SyntaxNode | undefined, member: string) => void,
  parent?: SyntaxNode,
  member = '',
): void {
  if (Array.isArray(root)) {
    for (const one of root) walk(one, visit, parent, member);
  } else if (isNode(root)) {
    visit(root, parent, member);
    for (const [name, value] of Object.entries(root)) {
      if (typeof value === 'object' && value !== null) walk(value, visit, root, name);
    }
  }
}
