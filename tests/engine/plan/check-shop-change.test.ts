import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bikeSchema } from '../../../src/engine/bike';
import {
  applyShopChanges,
  checkShopChange,
  type ShopChangeRefusal,
  trialOf,
  unsoundFor,
} from '../../../src/engine/plan';
import { seedCatalogue, seedPoints } from '../../support/seed-catalogue';
import { adding, versionOf } from '../../support/shop-versions';

const born = { catalogue: seedCatalogue(), points: seedPoints() };
const file = new URL('../../../seeds/bikes-to-try.json', import.meta.url);
const bikes = (JSON.parse(readFileSync(file, 'utf8')).bikes as unknown[]).map((bike) =>
  bikeSchema.parse(bike),
);

const checked = (changes: readonly unknown[]) =>
  checkShopChange(born, [], versionOf(1, changes), bikes);

function refusalOf(changes: readonly unknown[]): ShopChangeRefusal {
  const result = checked(changes);
  if (result.ok) throw new Error('it was allowed');
  return result.refusal;
}

describe('the bikes on which changes are tried', () => {
  test('[P46] are many, unlike, and each sound by the catalogue as it is born', () => {
    expect(bikes.length).toBeGreaterThan(100);
    expect(new Set(bikes.map(({ kind }) => kind)).size).toBe(12);
    const now = applyShopChanges(born, []);
    if (!now.ok) throw new Error(now.refusal.code);
    for (const bike of bikes) expect(unsoundFor(now.value, bike)).toBeUndefined();
  });
});

describe('a version', () => {
  test('[P46] that adds a step after others is allowed', () => {
    const step = { id: 'own-tag', after: ['unpack'], when: { ask: 'kind', is: 'town' } };
    expect(checked([adding(step)])).toMatchObject({ ok: true });
  });

  test('[P46] that switches off what no bike needs is allowed', () => {
    expect(checked([{ kind: 'switch-off', step: 'wipe-down' }])).toMatchObject({ ok: true });
  });

  test.each<[situation: string, changes: unknown[], because: object]>([
    [
      'leaves the bell in its box',
      [{ kind: 'switch-off', step: 'bell' }],
      { code: expect.stringMatching(/^part-not-needed$|^feature-passed-over$/) },
    ],
    [
      'goes round in a circle',
      [
        adding({ id: 'own-a', after: ['unpack'] }),
        adding({ id: 'own-b', after: ['own-a'] }),
        adding({ id: 'own-a', after: ['own-b'] }),
      ],
      { code: 'plan-cycle' },
    ],
    [
      'tightens a joint twice',
      [
        adding({
          id: 'own-again',
          joint: 'bottle-cage-bolts',
          when: { ask: 'extras', has: 'bottle-cage' },
        }),
      ],
      { code: 'joint-tightened-twice', joint: 'bottle-cage-bolts' },
    ],
    [
      'adds a class A joint that nobody looks at',
      [
        {
          kind: 'add-joint',
          joint: {
            ...{ id: 'own-hook', name: 'tow hook', bolts: 1, layout: 'line', thread: 'M8' },
            ...{
              hand: 'right',
              bit: '6 mm hex',
              preparation: 'grease',
              preparationNote: 'Thinly.',
            },
            ...{ usual: { min: 10, max: 14 }, risk: 'A', source: 'made up for a test' },
          },
        },
        adding({ id: 'own-hook', joint: 'own-hook' }),
      ],
      { code: 'joint-never-looked-at', joint: 'own-hook' },
    ],
  ])('[P46] that %s is refused with a bike and the reason', (_, changes, because) => {
    expect(refusalOf(changes)).toMatchObject({
      code: 'plan-unsound',
      bike: { kind: expect.any(String) },
      because,
    });
  });

  test('[P46] that adds a class A joint with a point that looks at it is allowed', () => {
    const joint = {
      ...{ id: 'own-hook', name: 'tow hook', bolts: 1, layout: 'line', thread: 'M8' },
      ...{ hand: 'right', bit: '6 mm hex', preparation: 'grease', preparationNote: 'Thinly.' },
      ...{ usual: { min: 10, max: 14 }, risk: 'A', source: 'made up for a test' },
    };
    const point = born.points.find(({ when }) => when === undefined)?.id ?? '';
    expect(
      checked([
        { kind: 'add-joint', joint },
        adding({ id: 'own-hook', joint: 'own-hook' }, [point]),
      ]),
    ).toMatchObject({ ok: true });
  });

  test('[P46] is tried only on bikes whose plan it changes', () => {
    const tried = (changes: readonly unknown[]) => {
      const trial = trialOf(born, [], [versionOf(1, changes)], bikes);
      return trial.ok ? trial.value.bikes : undefined;
    };
    expect(tried([{ kind: 'set-effort', step: 'faceplate', effort: [1, 2, 3] }])).toEqual([]);
    const onTown = tried([adding({ id: 'own-tag', when: { ask: 'kind', is: 'town' } })]);
    expect(new Set(onTown?.map(({ kind }) => kind))).toEqual(new Set(['town']));
  });

  test('[P46] that takes back what a later one stands on is refused', () => {
    const first = versionOf(1, [adding({ id: 'own-a' })]);
    const second = versionOf(2, [adding({ id: 'own-b', reliesOn: ['own-a'] })]);
    const back = versionOf(3, [{ kind: 'take-back', version: 'v1' }]);
    expect(checkShopChange(born, [first, second], back, bikes)).toEqual({
      ok: false,
      refusal: { code: 'change-without-step', step: 'own-a', version: 'v2' },
    });
  });

  test('[P45] that takes back what was never there is refused', () => {
    expect(refusalOf([{ kind: 'take-back', version: 'v9' }])).toEqual({
      code: 'version-to-take-back-unknown',
    });
  });
});
