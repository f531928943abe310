import { describe, expect, test } from 'vitest';
import {
  blockingFindings,
  type JobStatus,
  jobStatuses,
  openFindings,
  statusOf,
} from '../../../src/engine/job';
import {
  boxed,
  doing,
  nothingYet,
  opened,
  type Played,
  sunniva,
} from '../../support/given-when-then';
import { builtAndSigned, handedOver, signedChecked, smallPlan } from '../../support/small-job';

const hold = { kind: 'hold-job', for: 'customer', note: '' } as const;

test.each<[status: JobStatus, situation: string, job: Played]>([
  ['boxed', 'before anything', nothingYet(smallPlan)],
  ['boxed', 'with its box received', boxed(smallPlan)],
  ['on-hold', 'held in its box', doing(boxed(smallPlan), hold)],
  ['on-the-stand', 'opened', opened(smallPlan)],
  ['on-hold', 'held on the stand', doing(opened(smallPlan), hold)],
  ['on-the-stand', 'resumed', doing(doing(opened(smallPlan), hold), { kind: 'resume-job' })],
  ['to-be-checked', 'signed as built', builtAndSigned()],
  ['on-hold', 'held when built', doing(builtAndSigned(), hold)],
  ['ready', 'signed as checked', signedChecked(builtAndSigned())],
  ['handed-over', 'with its customer', handedOver()],
])('[J4] a job is %s when %s', (status, _, { state }) => {
  expect(statusOf(state)).toBe(status);
});

test('[J4] there are six states and no others', () => {
  expect(new Set(jobStatuses).size).toBe(6);
});

describe('findings', () => {
  test('[J15] block until they are closed or let go, unless the customer is only told', () => {
    const raise = (severity: 'stop-ride' | 'before-hand-over' | 'tell-customer') =>
      ({ kind: 'raise-finding', finding: severity, severity, text: 'It is so.' }) as const;
    const all = doing(
      doing(doing(opened(smallPlan), raise('stop-ride')), raise('before-hand-over')),
      raise('tell-customer'),
    );
    const ids = (findings: ReturnType<typeof openFindings>) => findings.map(({ id }) => id);
    expect(ids(blockingFindings(all.state))).toEqual(['stop-ride', 'before-hand-over']);
    const closed = doing(all, { kind: 'close-finding', finding: 'stop-ride', how: 'Mended.' });
    expect(ids(openFindings(closed.state))).toEqual(['before-hand-over', 'tell-customer']);
    const allow = { kind: 'allow-finding', finding: 'before-hand-over', reason: 'Known.' } as const;
    expect(ids(blockingFindings(doing(closed, allow, sunniva).state))).toEqual([]);
  });
});
