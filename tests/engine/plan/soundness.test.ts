import { describe, expect, test } from 'vitest';
import { type Catalogue, type LookedAt, planFaults, resolvePlan } from '../../../src/engine/plan';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';
import { catalogueOf } from '../../support/catalogues';

const bike = bikeFrom(mountainBike);

/** Everything but the features, which a small catalogue passes over. */
function faultsOf(catalogue: Catalogue, points: readonly LookedAt[] = []) {
  const plan = resolvePlan(bike, catalogue);
  if (!plan.ok) throw new Error(`a plan was expected, not ${plan.refusal.code}`);
  return planFaults(bike, plan.value, catalogue, points).filter(
    ({ code }) => code !== 'feature-passed-over',
  );
}

const clamp = { steps: [{ id: 'clamp', joint: 'clamp' }], joints: [{ id: 'clamp' }] };
const look = { id: 'look', reliesOn: ['clamp'] };

describe('joints', () => {
  test('[P18] one that can hurt and that nobody looks at is named', () => {
    expect(faultsOf(catalogueOf(clamp))).toEqual([
      { code: 'joint-never-looked-at', joint: 'clamp', step: 'clamp' },
    ]);
    expect(faultsOf(catalogueOf(clamp), [look])).toEqual([]);
  });

  test('[P18] to look at what relies on it is to look at it', () => {
    const more = { ...clamp, steps: [...clamp.steps, { id: 'align', reliesOn: ['clamp'] }] };
    expect(faultsOf(catalogueOf(more), [{ id: 'look', reliesOn: ['align'] }])).toEqual([]);
  });

  test('[P18] a point that this bike does not have looks at nothing', () => {
    const elsewhere = { ...look, when: { ask: 'kind', is: 'town' } };
    expect(faultsOf(catalogueOf(clamp), [elsewhere])).toHaveLength(1);
  });

  test('[P18] one that only stops the bike working may go without a look', () => {
    expect(faultsOf(catalogueOf({ ...clamp, joints: [{ id: 'clamp', risk: 'B' }] }))).toEqual([]);
  });

  test('[P18] a range without width, and a joint tightened by two steps, are named', () => {
    const twice = catalogueOf({
      steps: [...clamp.steps, { id: 'again', joint: 'clamp' }],
      joints: [{ id: 'clamp', usual: { min: 5, max: 5 } }],
    });
    const points = [look, { id: 'look-again', reliesOn: ['again'] }];
    expect(faultsOf(twice, points).map(({ code }) => code)).toEqual([
      'joint-without-range',
      'joint-tightened-twice',
      'joint-without-range',
    ]);
  });
});

describe('parts', () => {
  const partsOf = (when: object | undefined, step: object) =>
    faultsOf(
      catalogueOf({
        steps: [{ id: 'fit', ...step }],
        parts: [{ id: 'thing', ...(when && { when }) }],
      }),
    );

  test.each<[situation: string, when: object | undefined, step: object, faults: object[]]>([
    ['needed and there', undefined, { parts: ['thing'] }, []],
    [
      'needed and not there',
      { ask: 'kind', is: 'town' },
      { parts: ['thing'] },
      [{ code: 'part-not-in-box', step: 'fit', part: 'thing' }],
    ],
    ['there and not needed', undefined, {}, [{ code: 'part-not-needed', part: 'thing' }]],
    ['fitted, so not in the box', { ask: 'rear.fitted', is: false }, { parts: ['thing'] }, []],
  ])('[P18] %s', (_, when, step, faults) => {
    expect(partsOf(when, step)).toEqual(faults);
  });
});

describe('features', () => {
  const passedOver = (catalogue: Catalogue, points: readonly LookedAt[] = []) => {
    const town = bikeFrom(townBike, { extras: ['bell'] });
    const plan = resolvePlan(town, catalogue);
    if (!plan.ok) throw new Error(`a plan was expected, not ${plan.refusal.code}`);
    return planFaults(town, plan.value, catalogue, points).filter(
      (fault) => fault.code === 'feature-passed-over' && fault.question === 'extras',
    );
  };
  const asks = { ask: 'extras', has: 'bell' };

  test('[P18] one that nothing asks for is named', () => {
    expect(passedOver(catalogueOf({ steps: [{ id: 'unpack' }] }))).toEqual([
      { code: 'feature-passed-over', question: 'extras', answer: 'bell' },
    ]);
  });

  test('[P18] a step or a point that is there because of it deals with it', () => {
    expect(passedOver(catalogueOf({ steps: [{ id: 'bell', when: asks }] }))).toEqual([]);
    const unpack = catalogueOf({ steps: [{ id: 'unpack' }] });
    expect(passedOver(unpack, [{ id: 'ring', when: asks, reliesOn: [] }])).toEqual([]);
  });

  test('[P18] what only excludes it does not', () => {
    const excluding = { when: { not: { ask: 'extras', has: 'rack' } } };
    expect(passedOver(catalogueOf({ steps: [{ id: 'bell', ...excluding }] }))).toHaveLength(1);
  });
});
