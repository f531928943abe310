import { describe, expect, test } from 'vitest';
import { applyShopChanges, type CatalogueVersion, resolvePlan } from '../../../src/engine/plan';
import { bikeFrom, mountainBike } from '../../support/bikes';
import { catalogueOf } from '../../support/catalogues';
import { adding, versionOf } from '../../support/shop-versions';

const born = {
  catalogue: catalogueOf({
    steps: [
      { id: 'unpack' },
      { id: 'bar', zone: 'cockpit', reliesOn: ['unpack'], joint: 'faceplate' },
      { id: 'levers', zone: 'cockpit', reliesOn: ['bar'], cautions: ['Mind the hose.'] },
      { id: 'saddle', zone: 'seat', after: ['unpack'] },
    ],
    joints: [{ id: 'faceplate' }],
  }),
  points: [{ id: 'bar-point', reliesOn: ['levers'] }],
};

function applied(...versions: CatalogueVersion[]) {
  const result = applyShopChanges(born, versions);
  if (!result.ok) throw new Error(JSON.stringify(result.refusal));
  return result.value;
}

const idsIn = (...versions: CatalogueVersion[]) =>
  applied(...versions).catalogue.steps.map(({ id }) => id);

describe('no versions', () => {
  test('[P40] leave the catalogue as it was born', () => {
    expect(applied()).toEqual({ ...born, figures: [], off: [], own: [] });
  });
});

describe('words and efforts', () => {
  test('[P40] of the last version stand, and what it does not name stays', () => {
    const { catalogue } = applied(
      versionOf(2, [{ kind: 'change-words', step: 'bar', words: { how: 'Slide it in.' } }]),
      versionOf(1, [
        { kind: 'change-words', step: 'bar', words: { how: 'Push it in.', title: 'Fit the bar' } },
        { kind: 'set-effort', step: 'bar', effort: [2, 3, 9] },
      ]),
    );
    expect(catalogue.steps[1]).toMatchObject({
      how: 'Slide it in.',
      title: 'Fit the bar',
      why: 'It must be done.',
      effort: [2, 3, 9],
    });
    expect(catalogue.version).toBe('for a test + 2');
  });

  test('[P40] of a version that is taken back are the catalogue’s again', () => {
    const change = versionOf(1, [{ kind: 'set-effort', step: 'bar', effort: [2, 3, 9] }]);
    const back = versionOf(2, [{ kind: 'take-back', version: 'v1' }]);
    expect(applied(change, back).catalogue.steps).toEqual(born.catalogue.steps);
  });
});

describe('a step that is switched off', () => {
  const off = versionOf(1, [{ kind: 'switch-off', step: 'bar' }]);

  test('[P41] is in no plan, and is in it again when it is switched on', () => {
    const bike = bikeFrom(mountainBike);
    const idsOn = (...versions: CatalogueVersion[]) => {
      const plan = resolvePlan(bike, applied(...versions).catalogue);
      if (!plan.ok) throw new Error(plan.refusal.code);
      return plan.value.steps.map(({ id }) => id);
    };
    expect(idsOn(off)).toEqual(['unpack', 'levers', 'saddle']);
    expect(idsOn(off, versionOf(2, [{ kind: 'switch-on', step: 'bar' }]))).toContain('bar');
    expect(applied(off).off).toEqual(['bar']);
  });

  test('[P41] hands what relied on it, step or point, to what it relied on', () => {
    const { catalogue, points } = applied(
      off,
      versionOf(2, [{ kind: 'switch-off', step: 'levers' }]),
    );
    expect(catalogue.steps.find(({ id }) => id === 'levers')?.reliesOn).toContain('unpack');
    expect(points[0]?.reliesOn).toEqual(['levers', 'bar', 'unpack']);
  });
});

describe('an own step', () => {
  test('[P42] ends its zone, or stands behind the last that it waits for', () => {
    expect(idsIn(versionOf(1, [adding({ id: 'own-tag', zone: 'cockpit' })]))).toEqual([
      'unpack',
      'bar',
      'levers',
      'own-tag',
      'saddle',
    ]);
    expect(
      idsIn(versionOf(1, [adding({ id: 'own-tag', zone: 'seat', after: ['bar', 'unpack'] })])),
    ).toEqual(['unpack', 'bar', 'own-tag', 'levers', 'saddle']);
  });

  test('[P42] replaces the own step of the same id, and is confirmed by the points it names', () => {
    const { catalogue, points, own } = applied(
      versionOf(1, [adding({ id: 'own-tag', title: 'Tie on a tag' })]),
      versionOf(2, [adding({ id: 'own-tag', title: 'Hang the tag' }, ['bar-point'])]),
    );
    expect(catalogue.steps.filter(({ id }) => id === 'own-tag').map(({ title }) => title)).toEqual([
      'Hang the tag',
    ]);
    expect(points[0]?.reliesOn).toEqual(['levers', 'own-tag']);
    expect(own).toEqual(['own-tag']);
  });

  test.each<[situation: string, changes: unknown[], refusal: object]>([
    ['an id that is taken', [adding({ id: 'bar' })], { code: 'own-id-taken', id: 'bar' }],
    [
      'a step it waits for that is nowhere',
      [adding({ id: 'own-tag', after: ['moon'] })],
      { code: 'change-without-step', step: 'moon' },
    ],
    [
      'a joint that is nowhere',
      [adding({ id: 'own-tag', joint: 'moon' })],
      { code: 'change-without-joint', joint: 'moon' },
    ],
    [
      'words for a step that is nowhere',
      [{ kind: 'change-words', step: 'moon', words: { how: 'Land on it.' } }],
      { code: 'change-without-step', step: 'moon' },
    ],
    [
      'a figure for a joint that is nowhere',
      [{ kind: 'approve-figure', make: 'Any', model: 'One', joint: 'moon', figure: { max: 5 } }],
      { code: 'change-without-joint', joint: 'moon' },
    ],
  ])('[P42] is refused with %s', (_, changes, refusal) => {
    expect(applyShopChanges(born, [versionOf(1, changes)])).toEqual({
      ok: false,
      refusal: { ...refusal, version: 'v1' },
    });
  });
});

describe('an approved figure', () => {
  test('[P43] says who approved it and when', () => {
    const figure = { make: 'Harrier Works', model: 'Fell 2', joint: 'faceplate' };
    const approved = versionOf(1, [
      { kind: 'approve-figure', ...figure, figure: { min: 4, max: 5 } },
    ]);
    expect(applied(approved).figures).toEqual([
      {
        ...figure,
        figure: {
          min: 4,
          max: 5,
          source: { kind: 'approved', by: 'Petra Lindqvist', on: '2026-11-25' },
        },
      },
    ]);
  });

  test('[P43] may stand on an own joint', () => {
    const joint = {
      ...{ id: 'own-hook', name: 'hook', bolts: 1, layout: 'line', thread: 'M5', hand: 'right' },
      ...{ bit: '4 mm hex', preparation: 'grease', preparationNote: 'On the thread.' },
      ...{ usual: { min: 4, max: 6 }, risk: 'C', source: 'common practice, no source' },
    };
    const now = applied(
      versionOf(1, [
        { kind: 'add-joint', joint },
        adding({ id: 'own-hook', joint: 'own-hook' }),
        {
          ...{ kind: 'approve-figure', make: 'Any', model: 'One', joint: 'own-hook' },
          figure: { max: 5 },
        },
      ]),
    );
    expect(now.catalogue.joints.at(-1)).toEqual({ ...joint, variants: [] });
    expect(now.figures).toHaveLength(1);
  });
});
