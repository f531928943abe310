/** Laws about tests: rules have tests, tests cite rules, tests mirror the source, and no test sleeps. */

import { isNode, type Module, type SyntaxNode, type Tree, walk } from './source-tree';

type Complaints = readonly string[];

export interface TestCall {
  readonly path: string;
  /** The title as written; of a template the part before its first hole. */
  readonly title: string | undefined;
}

const provingFolders = /^tests\/(engine|reference)\//;
const citation = /^\[([A-Z]\d+(?:\s*,\s*[A-Z]\d+)*)\]\s*/;

/** Each rule of an engine room is stated once and cited by a test. */
export function rulesHaveTests(tree: Tree, tests: readonly Module[]): Complaints {
  const cited = new Set(provingTests(tests).flatMap(({ title }) => citedIn(title ?? '').ids));
  const stated = rulesIn(tree);
  const untested = stated
    .filter(({ id }) => !cited.has(id))
    .map(
      ({ id, path }) =>
        `${path}: rule ${id} has no test. Write one in tests/engine titled [${id}] …`,
    );
  const twice = stated
    .filter(({ id }, index) => stated.findIndex((other) => other.id === id) < index)
    .map(({ id, path }) => `${path}: rule ${id} is stated twice. Give one of them a new number`);
  return [...untested, ...twice];
}

/** Each test of the engine and each reference test starts with the rule it proves. */
export function testsCiteRules(tree: Tree, tests: readonly Module[]): Complaints {
  const known = new Set(rulesIn(tree).map(({ id }) => id));
  return provingTests(tests).flatMap(({ path, title }) => {
    if (title === undefined)
      return [`${path}: a test's title is computed. Write it out, starting with [rule]`];
    const { ids, rest } = citedIn(title);
    if (ids.length === 0)
      return [`${path}: “${title}” cites no rule. Start it with the rule it proves: [X1]`];
    const unknown = ids.filter((id) => !known.has(id));
    if (unknown.length > 0) {
      return [
        `${path}: “${title}” cites ${unknown.join(', ')}, which no rules.md states. State it or correct it`,
      ];
    }
    return rest === ''
      ? [`${path}: “${title}” says nothing after its rule. Say what must hold`]
      : [];
  });
}

/** tests/engine mirrors src/engine, file for file. */
export function testsMirrorTheSource(tree: Tree): Complaints {
  return [...tree.keys()].flatMap((path) => {
    const found = /^tests\/engine\/([^/]+)\/(.+)\.test\.tsx?$/.exec(path);
    if (found === null) return [];
    const [, room = '', name = ''] = found;
    // `replay.properties.test.ts` belongs to `replay.ts`, `bike.schema.test.ts` to `bike.schema.ts`.
    const subjects = [name, name.split('.')[0] ?? ''].map((one) => `src/engine/${room}/${one}.ts`);
    return subjects.some((subject) => tree.has(subject))
      ? []
      : [`${path} mirrors no file: there is no ${subjects[0]}. Rename it after the file it tests`];
  });
}

const sleeping = new Set(['skip', 'only', 'todo', 'fixme', 'skipIf', 'runIf', 'fails', 'fail']);
const testers = new Set(['test', 'it', 'describe', 'suite', 'bench']);

/** No test is skipped, singled out or left for later. */
export function noTestSleeps(tests: readonly Module[]): Complaints {
  return tests.flatMap(({ path, program }) => {
    const found = new Set<string>();
    walk(program, (node) => {
      if (node.type !== 'MemberExpression') return;
      const property = memberName(node);
      const root = rootName(node);
      if (sleeping.has(property) && testers.has(root)) found.add(`${root}.${property}`);
    });
    return [...found].map((name) => `${path} has ${name}: make the test run, or delete it`);
  });
}

/** Every `test(…)`, `it(…)`, `test.each(…)(…)` and the like. */
export function testCallsIn(tests: readonly Module[]): readonly TestCall[] {
  return tests.flatMap(({ path, program }) => {
    const calls: TestCall[] = [];
    walk(program, (node, parent, member) => {
      if (node.type !== 'CallExpression') return;
      if (parent?.type === 'CallExpression' && member === 'callee') return; // test.each(rows) of test.each(rows)(…)
      if (!isTestCall(node)) return;
      const [title] = Array.isArray(node.arguments) ? node.arguments : [];
      calls.push({ path, title: titleOf(title) });
    });
    return calls;
  });
}

/** Ways of making tests that stand between `test` and its call: `test.each(rows)(title, …)`. */
const makers = new Set(['each', 'for', 'concurrent', 'sequential', 'prop', ...sleeping]);

function isTestCall(node: SyntaxNode): boolean {
  let callee = node.callee;
  while (isNode(callee)) {
    if (callee.type === 'Identifier') return ['test', 'it'].includes(String(callee.name));
    if (callee.type === 'CallExpression') callee = callee.callee;
    else if (callee.type === 'TaggedTemplateExpression') callee = callee.tag;
    else if (callee.type === 'MemberExpression' && makers.has(memberName(callee))) {
      callee = callee.object;
    } else return false;
  }
  return false;
}

function titleOf(node: unknown): string | undefined {
  if (!isNode(node)) return undefined;
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node.type !== 'TemplateLiteral' || !Array.isArray(node.quasis)) return undefined;
  const [first] = node.quasis;
  const value = isNode(first) ? first.value : undefined;
  const isWhole = node.quasis.length === 1;
  const text = typeof value === 'object' && value !== null ? Reflect.get(value, 'cooked') : '';
  return isWhole ? String(text) : `${text}…`;
}

function memberName(node: SyntaxNode): string {
  const property = node.property;
  return isNode(property) ? String(property.name ?? property.value ?? '') : '';
}

function rootName(node: unknown): string {
  let inner = node;
  while (isNode(inner)) {
    if (inner.type === 'Identifier') return String(inner.name);
    inner = inner.object ?? inner.callee ?? inner.tag;
  }
  return '';
}

function provingTests(tests: readonly Module[]): readonly TestCall[] {
  return testCallsIn(tests.filter(({ path }) => provingFolders.test(path)));
}

/** The rules a title starts with: `[T1] …`, `[T1, T2] …` or `[T1][T2] …`. */
function citedIn(title: string): { ids: readonly string[]; rest: string } {
  const found = citation.exec(title);
  if (found === null) return { ids: [], rest: title };
  const further = citedIn(title.slice(found[0].length));
  return { ids: [...(found[1] ?? '').split(/\s*,\s*/), ...further.ids], rest: further.rest };
}

function rulesIn(tree: Tree): readonly { id: string; path: string }[] {
  return [...tree]
    .filter(([path]) => /^src\/engine\/[^/]+\/rules\.md$/.test(path))
    .flatMap(([path, text]) =>
      [...text.matchAll(/^\s*[-*]\s+\*\*([A-Z]\d+)\*\*/gm)].map(([, id = '']) => ({ id, path })),
    );
}
