import { describe, expect, test } from 'vitest';
import { type Plan, resolvePlan, staleAfter } from '../../../src/engine/plan';
import { bikeFrom, mountainBike } from '../../support/bikes';
import { catalogueOf } from '../../support/catalogues';

function planOf(catalogue: ReturnType<typeof catalogueOf>): Plan {
  const plan = resolvePlan(bikeFrom(mountainBike), catalogue);
  if (!plan.ok) throw new Error(`a plan was expected, not ${plan.refusal.code}`);
  return plan.value;
}

const plan = planOf(
  catalogueOf({
    steps: [
      { id: 'wheel' },
      { id: 'wheel-straight', reliesOn: ['wheel'] },
      { id: 'brake-centred', reliesOn: ['wheel-straight'] },
      { id: 'brake-bolts', reliesOn: ['brake-centred'], joint: 'caliper-mount' },
      { id: 'rubs-nowhere', reliesOn: ['brake-bolts'] },
      { id: 'gears', after: ['wheel'] },
      { id: 'bell' },
    ],
    joints: [{ id: 'caliper-mount' }],
  }),
);

describe('stale', () => {
  test.each<[situation: string, disturbed: string[], stale: string[]]>([
    [
      'directly and through others',
      ['wheel'],
      ['wheel-straight', 'brake-centred', 'brake-bolts', 'rubs-nowhere'],
    ],
    ['what only comes after is not stale', ['gears'], []],
    ['a joint stands for the step that tightens it', ['caliper-mount'], ['rubs-nowhere']],
    [
      'several at once, none of them in the list',
      ['wheel-straight', 'brake-bolts'],
      ['brake-centred', 'rubs-nowhere'],
    ],
    [
      'the order of naming does not matter',
      ['brake-bolts', 'wheel-straight'],
      ['brake-centred', 'rubs-nowhere'],
    ],
    ['unknown ids are passed over', ['kettle', 'brake-bolts'], ['rubs-nowhere']],
    ['nothing disturbed', [], []],
  ])('[P11] %s', (_, disturbed, stale) => {
    expect(staleAfter(plan, disturbed)).toEqual(stale);
  });
});
