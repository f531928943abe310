/** How files are named and written, in this house and in houses that break the law. */

import { proveLaw } from './prove-law';
import {
  engineIsPure,
  exportsHaveNames,
  filesStayShort,
  namesAreKebabCase,
  namesSaySomething,
  seedsAreJson,
} from './writing-laws';

const impure = [
  ['new Date()', 'const now = new Date();'],
  ['Date.now', 'const now = Date.now();'],
  ['Math.random', 'const dice = Math.random();'],
  ['crypto', 'const id = crypto.randomUUID();'],
  ['process', 'const home = process.env.HOME;'],
  ['globalThis', 'const all = globalThis;'],
  ['toLocaleUpperCase', "const loud = 'a'.toLocaleUpperCase();"],
  ['localeCompare', "const order = 'a'.localeCompare('b');"],
  ['Intl', "const names = new Intl.Collator('en');"],
  ['getHours', 'const hours = (at: Date) => at.getHours();'],
  ['crypto', 'const tools = { crypto };'],
] as const;

proveLaw({
  law: 'The engine gives the same answer everywhere: no clock, no dice, no locale, no host',
  breaches: ({ modules }) => engineIsPure(modules),
  broken: impure.map(([name, code]) => [`uses ${name}:`, { 'src/engine/base/a.ts': code }]),
  kept: {
    'src/engine/base/a.ts': `
      // process, crypto and Date.now() may be spoken about
      export type Fact = { readonly process: string };
      export const fact = (part: Fact) => ({ process: part.process, at: new Date('2026-05-04T00:00:00Z') });
      export const text = 'globalThis';`,
    'src/platform/clock.ts': 'export const now = () => Date.now();',
  },
});

proveLaw({
  law: 'Exports have names',
  breaches: ({ modules }) => exportsHaveNames(modules),
  broken: [
    ['give it a name', { 'src/words/a.ts': 'export default 1;' }],
    ['give it a name', { 'src/words/a.ts': 'const a = 1; export { a as default };' }],
  ],
});

proveLaw({
  law: 'No file of the source has more than 300 lines of code',
  breaches: ({ modules }) => filesStayShort(modules),
  broken: [['301 lines of code', { 'src/words/a.ts': 'a();\n'.repeat(301) }]],
  kept: { 'src/words/a.ts': `${'a();\n'.repeat(300)}${'// why\n\n/* and\nhow */\n'.repeat(50)}` },
});

proveLaw({
  law: 'Files and folders are named in kebab-case',
  breaches: ({ tree }) => namesAreKebabCase(tree),
  broken: [
    ['is not kebab-case', { 'src/screens/rack/RackRow.tsx': '' }],
    ['is not kebab-case', { 'seeds/demo_shop/people.json': '{}' }],
  ],
  kept: { 'src/engine/bike/bike.schema.ts': '', 'tests/engine/torque/set-point.test.ts': '' },
});

proveLaw({
  law: 'A name says what is inside',
  breaches: ({ tree }) => namesSaySomething(tree),
  broken: [
    ['utils.ts says nothing', { 'src/words/utils.ts': '' }],
    ['a.ts says nothing', { 'src/common/a.ts': '' }],
    ['types.ts says nothing', { 'tests/support/types.ts': '' }],
  ],
});

proveLaw({
  law: 'Seeds are JSON and nothing else',
  breaches: ({ tree }) => seedsAreJson(tree),
  broken: [
    ['seeds/make.ts is not JSON', { 'seeds/make.ts': '' }],
    ['cannot be read as JSON', { 'seeds/joints.json': '{ "a": }' }],
  ],
});
