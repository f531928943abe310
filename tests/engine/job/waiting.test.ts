import { expect, test } from 'vitest';
import { type Waiting, waitsFor } from '../../../src/engine/job';
import { boxed, doing, opened, type Played } from '../../support/given-when-then';
import {
  built,
  builtAndSigned,
  contentsChecked,
  handedOver,
  signedChecked,
  smallPlan,
} from '../../support/small-job';

const checked = contentsChecked(opened(smallPlan));
const damaged = doing(opened(smallPlan), {
  kind: 'check-contents',
  parts: [
    { part: 'seat-post', state: 'missing' },
    { part: 'film', state: 'damaged' },
  ],
});

test.each<[situation: string, job: Played, waiting: readonly Waiting[]]>([
  ['in its box', boxed(smallPlan), []],
  ['at work', checked, []],
  [
    'on hold',
    doing(checked, { kind: 'hold-job', for: 'part', note: 'pedals' }),
    [{ code: 'waits-on-hold', for: 'part', note: 'pedals' }],
  ],
  [
    'a part that a step still needs, not one that none does',
    damaged,
    [{ code: 'waits-for-part', part: 'the seat-post', state: 'missing' }],
  ],
  [
    'a finding, unless the customer is only told',
    doing(
      doing(checked, {
        kind: 'raise-finding',
        finding: 'a',
        severity: 'stop-ride',
        text: 'A crack.',
      }),
      { kind: 'raise-finding', finding: 'b', severity: 'tell-customer', text: 'A chip.' },
    ),
    [{ code: 'waits-for-finding', severity: 'stop-ride', text: 'A crack.' }],
  ],
  [
    'what was set aside',
    doing(checked, { kind: 'set-step-aside', step: 'post', reason: 'Ask Petra.' }),
    [{ code: 'waits-for-set-aside', step: 'Do post', reason: 'Ask Petra.' }],
  ],
  [
    'rework',
    doing(built(checked), { kind: 'reopen-step', step: 'axle', reason: 'Loose.' }),
    [{ code: 'waits-for-rework', steps: 2 }],
  ],
  ['a second person', builtAndSigned(), [{ code: 'waits-for-second-check' }]],
  ['the customer', signedChecked(builtAndSigned()), [{ code: 'waits-for-customer' }]],
  ['nothing any more', handedOver(), []],
])('[J26] says what the job waits for: %s', (_, { state }, waiting) => {
  expect(waitsFor(state)).toEqual(waiting);
});
