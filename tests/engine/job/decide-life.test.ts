import { describe, expect, test } from 'vitest';
import { digestOf } from '../../../src/engine/integrity';
import type { Asked } from '../../../src/engine/job';
import { bikeFrom, mountainBike, townBike } from '../../support/bikes';
import {
  boxed,
  doing,
  eventsOf,
  nothingYet,
  opened,
  refusalOf,
} from '../../support/given-when-then';
import { frozen, handedOver, smallPlan } from '../../support/small-job';

describe('opening', () => {
  test('[J5] takes the plan of this very bike and names it by its digest', () => {
    const [event] = eventsOf(boxed(smallPlan), { kind: 'open-job', plan: smallPlan });
    expect(event).toEqual({
      kind: 'job-opened',
      v: 1,
      plan: digestOf(smallPlan),
      market: 'gb',
    });
  });

  test.each<[situation: string, bike: ReturnType<typeof bikeFrom>]>([
    ['another kind of bike', bikeFrom(townBike)],
    ['the same model with another frame number', bikeFrom(mountainBike, { frameNumber: 'HW24-1' })],
    [
      'the same bike before its tyre was put right',
      bikeFrom(mountainBike, { rear: { tyre: '54-622' } }),
    ],
  ])('[J5] refuses the plan of %s', (_, bike) => {
    const job = boxed(smallPlan);
    expect(refusalOf(job, { kind: 'open-job', plan: frozen({ bike }) })).toEqual({
      code: 'plan-for-another-bike',
    });
  });

  test('[J5] follows the bike as it was last described', () => {
    const bike = bikeFrom(mountainBike, { rear: { tyre: '54-622' } });
    const described = doing(boxed(smallPlan), { kind: 'describe-bike', bike });
    expect(refusalOf(described, { kind: 'open-job', plan: smallPlan }).code).toBe(
      'plan-for-another-bike',
    );
    const reopened = doing(described, { kind: 'open-job', plan: frozen({ bike }) });
    expect(reopened.state.opened?.plan).toBe(digestOf(frozen({ bike })));
  });
});

describe('a hold', () => {
  const hold: Asked = { kind: 'hold-job', for: 'part', note: ' no pedals ' };
  const held = doing(opened(smallPlan), hold);

  test('[J21] says for what; “other” says so in words', () => {
    expect(held.state.hold).toMatchObject({ for: 'part', note: 'no pedals' });
    expect(refusalOf(opened(smallPlan), { kind: 'hold-job', for: 'other', note: ' ' })).toEqual({
      code: 'reason-missing',
    });
  });

  test.each<[situation: string, asked: Asked]>([
    ['a step', { kind: 'do-step', step: 'clamp' }],
    ['a measure', { kind: 'take-measure', at: 'post', measure: 'insertion', value: 80 }],
    ['the walk', { kind: 'look-at-point', point: 'paint', verdict: 'good' }],
    ['another hold', hold],
  ])('[J21] takes up no work: %s', (_, asked) => {
    expect(refusalOf(held, asked)).toEqual({ code: 'job-on-hold', for: 'part', note: 'no pedals' });
    const resumed = doing(held, { kind: 'resume-job' });
    expect(() => doing(resumed, asked)).not.toThrow();
  });

  test('[J21] still lets a part arrive and a finding be noted', () => {
    const asked: Asked = { kind: 'check-contents', parts: [{ part: 'film', state: 'present' }] };
    expect(doing(held, asked).state.contents.film?.state).toBe('present');
    expect(refusalOf(opened(smallPlan), { kind: 'resume-job' })).toEqual({
      code: 'job-not-on-hold',
    });
  });
});

describe('amending', () => {
  const amend: Asked = { kind: 'amend-record', text: ' The pedals were ours. ' };

  test('[J20] is for a sealed record, and a sealed record takes nothing else', () => {
    const sealed = handedOver();
    expect(doing(sealed, amend).state.amendments).toMatchObject([
      { text: 'The pedals were ours.' },
    ]);
    const others: readonly Asked[] = [
      { kind: 'reopen-step', step: 'clamp', reason: 'Again.' },
      { kind: 'set-due', due: '2026-05-01' },
      { kind: 'hold-job', for: 'tool', note: '' },
      { kind: 'raise-finding', finding: 'f', severity: 'tell-customer', text: 'A scratch.' },
      { kind: 'describe-bike', bike: smallPlan.bike },
      { kind: 'check-contents', parts: [{ part: 'film', state: 'present' }] },
    ];
    for (const asked of others) expect(refusalOf(sealed, asked)).toEqual({ code: 'record-sealed' });
    expect(refusalOf(sealed, { ...amend, text: ' ' })).toEqual({ code: 'reason-missing' });
  });

  test('[J20] is not for a record that is still open', () => {
    expect(refusalOf(opened(smallPlan), amend)).toEqual({ code: 'record-not-sealed' });
    expect(refusalOf(boxed(smallPlan), amend)).toEqual({ code: 'record-not-sealed' });
    expect(refusalOf(nothingYet(smallPlan), amend)).toEqual({ code: 'box-not-received' });
  });
});
