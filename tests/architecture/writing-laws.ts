/** Laws about how files are named and written. */

import { posix } from 'node:path';
import { emptyNames, forbiddenInEngine, mostLinesOfCode } from './house';
import { isNode, type Module, type SyntaxNode, type Tree, walk } from './source-tree';

type Complaints = readonly string[];

/** The engine gives the same answer everywhere: no clock, no dice, no locale, no host. */
export function engineIsPure(modules: readonly Module[]): Complaints {
  return modules
    .filter(({ path }) => path.startsWith('src/engine/'))
    .flatMap(({ path, program }) =>
      [...impureNamesIn(program)].map(
        (name) =>
          `${path} uses ${name}: take the value as an argument, or use what engine/base offers`,
      ),
    );
}

function impureNamesIn(program: unknown): ReadonlySet<string> {
  const found = new Set<string>();
  const names: readonly string[] = forbiddenInEngine.names;
  const members: readonly string[] = forbiddenInEngine.members;
  walk(program, (node, parent, member) => {
    const { type } = node;
    if (type === 'NewExpression' || type === 'CallExpression') {
      const isNow = nameOf(node.callee) === 'Date' && isEmpty(node.arguments);
      if (isNow || (type === 'CallExpression' && nameOf(node.callee) === 'Date')) {
        found.add(type === 'NewExpression' ? 'new Date()' : 'Date()');
      }
    }
    if (type === 'MemberExpression') {
      const property = propertyOf(node);
      const whole = `${nameOf(node.object)}.${property}`;
      if (members.includes(whole)) found.add(whole);
      if (forbiddenInEngine.methods.test(property)) found.add(property);
    }
    if (type === 'Identifier' && !isOnlyALabel(parent, member)) {
      const name = nameOf(node);
      if (names.includes(name)) found.add(name);
    }
  });
  return found;
}

/** `a.process` and `{ process: 1 }` name a member, not the host's variable. */
function isOnlyALabel(parent: SyntaxNode | undefined, member: string): boolean {
  if (parent === undefined || parent.computed === true) return false;
  if (parent.type === 'MemberExpression') return member === 'property';
  if (parent.type === 'Property') return member === 'key' && parent.shorthand !== true;
  return (
    member === 'key' || parent.type === 'TSQualifiedName' || parent.type === 'TSPropertySignature'
  );
}

function nameOf(node: unknown): string {
  return isNode(node) && node.type === 'Identifier' ? String(node.name) : '';
}

function propertyOf(node: SyntaxNode): string {
  const property = node.property;
  if (!isNode(property)) return '';
  return node.computed === true ? String(property.value ?? '') : nameOf(property);
}

function isEmpty(list: unknown): boolean {
  return Array.isArray(list) && list.length === 0;
}

/** Exports have names. */
export function exportsHaveNames(modules: readonly Module[]): Complaints {
  return modules
    .filter(({ exportsDefault }) => exportsDefault)
    .map(({ path }) => `${path} has a default export: give it a name`);
}

/** Files stay short enough to be read in one go. */
export function filesStayShort(modules: readonly Module[]): Complaints {
  return modules
    .filter(({ linesOfCode }) => linesOfCode > mostLinesOfCode)
    .map(
      ({ path, linesOfCode }) =>
        `${path} has ${linesOfCode} lines of code, more than ${mostLinesOfCode}: it is two ideas, make it two files`,
    );
}

/** Files and folders are named in kebab-case. */
export function namesAreKebabCase(tree: Tree): Complaints {
  const kebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)*$/;
  return [...tree.keys()]
    .filter((path) => path.split('/').some((part) => !kebab.test(part)))
    .map((path) => `${path} is not kebab-case: rename it like-this.ts`);
}

/** A name says what is inside. */
export function namesSaySomething(tree: Tree): Complaints {
  return [...tree.keys()]
    .filter((path) => path.split('/').some((part) => emptyNames.includes(part.split('.')[0] ?? '')))
    .map(
      (path) => `${path}: ${posix.basename(path)} says nothing. Name the file after what is inside`,
    );
}

/** Seeds are data: JSON that can be read, and nothing else. */
export function seedsAreJson(tree: Tree): Complaints {
  return [...tree]
    .filter(([path]) => path.startsWith('seeds/'))
    .flatMap(([path, text]) => {
      if (!path.endsWith('.json')) return [`${path} is not JSON: seeds hold data only, move it`];
      try {
        JSON.parse(text);
        return [];
      } catch (error) {
        return [
          `${path} cannot be read as JSON: ${error instanceof Error ? error.message : error}`,
        ];
      }
    });
}
