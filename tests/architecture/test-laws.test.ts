/** What tests owe to rules and source, in this house and in houses that break the law. */

import { proveLaw } from './prove-law';
import { noTestSleeps, rulesHaveTests, testsCiteRules, testsMirrorTheSource } from './test-laws';

const rules = { 'src/engine/torque/rules.md': '# torque\n\n- **T1** A wrench has a range.\n' };
const inEngine = 'tests/engine/torque/wrench.test.ts';

proveLaw({
  law: 'Each rule of an engine room is stated once and has a test',
  breaches: ({ tree, tests }) => rulesHaveTests(tree, tests),
  broken: [
    ['rule T1 has no test', rules],
    ['rule T1 has no test', { ...rules, 'tests/state/a.test.ts': "test('[T1] holds', f);" }],
    ['rule T1 has no test', { ...rules, [inEngine]: "// test('[T1] holds', f);" }],
    [
      'rule T1 is stated twice',
      {
        ...rules,
        'src/engine/tyres/rules.md': '- **T1** A tyre has a width.',
        [inEngine]: "test('[T1] holds', f);",
      },
    ],
  ],
  kept: {
    ...rules,
    'src/engine/units/rules.md': '- **U1** One.\n- **U2** Two.\n- **U3** Three.\n',
    [inEngine]: "test.each(rows)('[T1] %s', f); it('[U1, U2] both', f);",
    'tests/reference/units.test.ts': 'test(`[U3] is exact`, f);',
  },
});

proveLaw({
  law: 'Each test of the engine and each reference test starts with the rule it proves',
  breaches: ({ tree, tests }) => testsCiteRules(tree, tests),
  broken: [
    ['cites no rule', { ...rules, [inEngine]: "test('holds', f);" }],
    ['cites no rule', { ...rules, [inEngine]: "test.each(rows)('%s', f);" }],
    ['cites no rule', { ...rules, [inEngine]: 'test.each`a`(`$a holds`, f);' }],
    ['cites no rule', { ...rules, 'tests/reference/a.test.ts': "it('holds [T1]', f);" }],
    ['cites T9', { ...rules, [inEngine]: "test('[T1, T9] holds', f);" }],
    ['says nothing after its rule', { ...rules, [inEngine]: "test('[T1]', f);" }],
    ['title is computed', { ...rules, [inEngine]: 'test(title, f);' }],
  ],
  kept: {
    ...rules,
    [inEngine]: "describe('any', () => { test('[T1] holds', f); }); /a/.test('b');",
    'tests/state/a.test.ts': "test('a tick is kept', f);",
  },
});

proveLaw({
  law: 'tests/engine mirrors src/engine, file for file',
  breaches: ({ tree }) => testsMirrorTheSource(tree),
  broken: [['there is no src/engine/torque/wrench.ts', { [inEngine]: '' }]],
  kept: {
    'src/engine/job/replay.ts': '',
    'src/engine/bike/bike.schema.ts': '',
    'tests/engine/job/replay.properties.test.ts': '',
    'tests/engine/bike/bike.schema.test.ts': '',
    'tests/reference/anything.test.ts': '',
  },
});

proveLaw({
  law: 'No test is skipped, singled out or left for later',
  breaches: ({ tests }) => noTestSleeps(tests),
  broken: [
    ['test.skip', { 'tests/state/a.test.ts': "test.skip('later', f);" }],
    ['it.only', { 'tests/state/a.test.ts': "it.only('this', f);" }],
    ['describe.skip', { 'tests/browser/a.spec.ts': "test.describe; describe.skip('x', f);" }],
    ['test.skip', { 'tests/browser/a.spec.ts': "test.describe.skip('x', f);" }],
    ['test.only', { 'tests/state/a.test.ts': "test.concurrent.only('this', f);" }],
    ['test.todo', { 'tests/state/a.test.ts': "test.todo('this');" }],
  ],
  kept: { 'tests/state/a.test.ts': "test('only these are skipped', () => { log.skip(1); });" },
});
