import { describe, expect, test } from 'vitest';
import { resolvePlan } from '../../../src/engine/plan';
import { bikeFrom, mountainBike } from '../../support/bikes';
import { catalogueOf } from '../../support/catalogues';

const never = { ask: 'steering.stem', is: 'quill' };

describe('unmet references', () => {
  test.each<[situation: string, rows: Parameters<typeof catalogueOf>[0], refusal: object]>([
    [
      'a step comes after one that the catalogue does not have',
      { steps: [{ id: 'second', after: ['first'] }] },
      { code: 'step-unknown', step: 'first', askedBy: 'second' },
    ],
    [
      'a step relies on one that the catalogue does not have',
      { steps: [{ id: 'second', reliesOn: ['first'] }] },
      { code: 'step-unknown', step: 'first', askedBy: 'second' },
    ],
    [
      'even in a step that this bike does not need',
      { steps: [{ id: 'second', after: ['first'], when: never }] },
      { code: 'step-unknown', step: 'first', askedBy: 'second' },
    ],
    [
      'a joint',
      { steps: [{ id: 'bolt-it', joint: 'faceplate' }] },
      { code: 'joint-unknown', joint: 'faceplate', askedBy: 'bolt-it' },
    ],
    [
      'a part',
      { steps: [{ id: 'ring-it', parts: ['bell'] }] },
      { code: 'part-unknown', part: 'bell', askedBy: 'ring-it' },
    ],
    [
      'a step twice',
      { steps: [{ id: 'same' }, { id: 'same' }] },
      { code: 'id-not-unique', id: 'same' },
    ],
    [
      'a joint twice',
      { steps: [], joints: [{ id: 'same' }, { id: 'same' }] },
      { code: 'id-not-unique', id: 'same' },
    ],
    [
      'a part twice',
      { steps: [], parts: [{ id: 'same' }, { id: 'same' }] },
      { code: 'id-not-unique', id: 'same' },
    ],
  ])('[P7] %s', (_, rows, refusal) => {
    expect(resolvePlan(bikeFrom(mountainBike), catalogueOf(rows))).toEqual({ ok: false, refusal });
  });

  test('[P7] a step, a joint and a part may share a name', () => {
    const catalogue = catalogueOf({
      steps: [{ id: 'bell', joint: 'bell', parts: ['bell'] }],
      joints: [{ id: 'bell' }],
      parts: [{ id: 'bell' }],
    });
    expect(resolvePlan(bikeFrom(mountainBike), catalogue).ok).toBe(true);
  });
});
