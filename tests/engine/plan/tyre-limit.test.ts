import { describe, expect, test } from 'vitest';
import { type Measure, resolvePlan, workedMeasure } from '../../../src/engine/plan';
import { bikeFrom, mountainBike } from '../../support/bikes';
import { catalogueOf } from '../../support/catalogues';

const pressure = (wheel: 'front' | 'rear'): Measure => ({
  id: `${wheel}-pressure`,
  name: 'Pressure',
  how: 'Read the gauge.',
  unit: 'kPa',
  limit: { rule: `tyre-window-${wheel}` },
});

const limitOn = (changes: Record<string, unknown>, wheel: 'front' | 'rear' = 'front') =>
  workedMeasure(bikeFrom(mountainBike, { [wheel]: changes }), pressure(wheel));

describe('the window of a wheel', () => {
  test.each<[situation: string, changes: Record<string, unknown>, expected: object]>([
    [
      'a printed range',
      { tyrePressure: '2–4 bar' },
      { limit: { min: 200, max: 400, source: 'printed on the tyre' }, suggested: 300 },
    ],
    [
      'a printed maximum gives nowhere to aim',
      { tyrePressure: 'max 4.5 bar' },
      { limit: { max: 450, source: 'printed on the tyre' } },
    ],
    [
      'printed beside the size',
      { tyre: '57-622 min 200 max 400 kPa' },
      { limit: { min: 200, max: 400, source: 'printed on the tyre' }, suggested: 300 },
    ],
    [
      'what is written down for the wheel goes before it',
      { tyre: '57-622 min 200 max 400 kPa', tyrePressure: 'max 350 kPa' },
      { limit: { max: 350, source: 'printed on the tyre' } },
    ],
    [
      'a rim that allows less',
      { tyrePressure: '2–4 bar', rimMaxKpa: 300 },
      {
        limit: { min: 200, max: 300, source: 'the rim’s own maximum, lower than the tyre’s' },
        suggested: 250,
      },
    ],
    [
      'a hookless rim',
      { tyrePressure: 'max 7 bar', hookless: true },
      {
        limit: {
          max: 500,
          source: '5 bar on a hookless rim (ISO 4210-1, ETRTO), lower than the tyre’s',
        },
      },
    ],
  ])('[P9] %s', (_, changes, expected) => {
    const { limit: __, ...measure } = pressure('front');
    expect(limitOn(changes)).toEqual({ ok: true, value: { ...measure, ...expected } });
  });

  test('[P9] front and rear are told apart', () => {
    const bike = bikeFrom(mountainBike, {
      front: { tyrePressure: 'max 300 kPa' },
      rear: { tyrePressure: 'max 400 kPa' },
    });
    expect(workedMeasure(bike, pressure('front'))).toMatchObject({
      value: { limit: { max: 300 } },
    });
    expect(workedMeasure(bike, pressure('rear'))).toMatchObject({ value: { limit: { max: 400 } } });
  });

  test.each<[situation: string, changes: Record<string, unknown>]>([
    ['no pressure written down', {}],
    ['a rim that has a maximum: no rim says what the tyre can hold', { rimMaxKpa: 300 }],
    ['only the least is printed', { tyrePressure: 'min 2 bar' }],
  ])('[P10] %s: the limit is open and says where to read it', (_, changes) => {
    const worked = limitOn(changes);
    if (!worked.ok) throw new Error('an open limit was expected');
    expect(worked.value.limit).toEqual({
      source: 'not known: read it on the side wall before inflating',
    });
    expect(worked.value.suggested).toBeUndefined();
  });

  test.each<[situation: string, changes: Record<string, unknown>, refusal: object]>([
    [
      'a size that is no size',
      { tyre: 'round and black' },
      {
        code: 'tyre-not-understood',
        wheel: 'rear',
        marking: 'round and black',
        cause: { code: 'tyre-size-missing' },
      },
    ],
    [
      'a pressure without a unit',
      { tyrePressure: '40-65' },
      {
        code: 'tyre-pressure-not-understood',
        wheel: 'rear',
        marking: '40-65',
        cause: { code: 'unit-missing' },
      },
    ],
    [
      'two units that disagree: neither is chosen in silence',
      { tyrePressure: 'max 4 bar (80 psi)' },
      {
        code: 'tyre-pressure-not-understood',
        wheel: 'rear',
        cause: { code: 'pressure-units-disagree' },
      },
    ],
    [
      'a tyre that asks for more than its rim allows',
      { tyrePressure: '4–6 bar', rimMaxKpa: 300 },
      { code: 'tyre-window-empty', wheel: 'rear', min: 400, max: 300, limitedBy: 'rim' },
    ],
  ])('[P10] %s is refused', (_, changes, refusal) => {
    expect(limitOn(changes, 'rear')).toMatchObject({ ok: false, refusal });
  });
});

describe('a tyre and its rim', () => {
  const planWith = (changes: Record<string, unknown>) =>
    resolvePlan(
      bikeFrom(mountainBike, { front: changes }),
      catalogueOf({ steps: [{ id: 'pump', measures: [pressure('front'), pressure('rear')] }] }),
    );
  const cautionsOn = (changes: Record<string, unknown>) => {
    const plan = planWith(changes);
    if (!plan.ok) throw new Error(`a plan was expected, not ${plan.refusal.code}`);
    return plan.value.steps[0]?.cautions ?? [];
  };

  // Source of the pairs: the ETRTO table as reprinted by makers, from memory.
  test.each<[situation: string, changes: Record<string, unknown>, isRaised: boolean]>([
    ['a rim of no known width', { tyre: '57-622' }, false],
    ['57 mm on 30 mm', { tyre: '57-622', rimInnerWidth: 30 }, false],
    ['57 mm on 15 mm', { tyre: '57-622', rimInnerWidth: 15 }, true],
    ['28 mm on 25 mm', { tyre: '28-622', rimInnerWidth: 25 }, true],
  ])('[P19] %s', (_, changes, isRaised) => {
    const raised = cautionsOn(changes).filter((caution) => /ask both makers/.test(caution));
    expect(raised).toHaveLength(isRaised ? 1 : 0);
  });

  test('[P19] a tyre no wider than its rim is refused', () => {
    expect(planWith({ tyre: '25-622', rimInnerWidth: 25 })).toEqual({
      ok: false,
      refusal: { code: 'tyre-narrower-than-rim', wheel: 'front', width: 25, rimInner: 25 },
    });
  });
});
