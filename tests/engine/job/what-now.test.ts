import { describe, expect, test } from 'vitest';
import { type Asked, stepsOf, type WhatNow, whatNow } from '../../../src/engine/job';
import { boxed, doing, opened, type Played } from '../../support/given-when-then';
import {
  built,
  builtAndSigned,
  contentsChecked,
  handedOver,
  seedPlan,
  signedChecked,
  smallPlan,
  stepDone,
  stepsDone,
  walked,
} from '../../support/small-job';

const checked = contentsChecked(opened(smallPlan));
const hold: Asked = { kind: 'hold-job', for: 'tool', note: '' };
const reopen = (step: string): Asked => ({ kind: 'reopen-step', step, reason: 'Loose.' });
const aside = (step: string): Asked => ({ kind: 'set-step-aside', step, reason: 'Later.' });
const raise: Asked = {
  kind: 'raise-finding',
  finding: 'f',
  severity: 'stop-ride',
  text: 'A crack.',
};
const front = ['clamp', 'wheel', 'axle', 'rub', 'front-tyre-pressure'];

test.each<[situation: string, job: Played, next: WhatNow]>([
  ['a box', boxed(smallPlan), { what: 'open-job' }],
  ['a job on hold', doing(checked, hold), { what: 'resume' }],
  ['contents that nobody checked', opened(smallPlan), { what: 'contents' }],
  ['the first step of the plan', checked, { what: 'step', step: 'clamp' }],
  ['the next step of the plan', stepsDone(checked, front), { what: 'step', step: 'stem' }],
  [
    'rework before the plan',
    doing(stepsDone(checked, [...front, 'stem']), reopen('axle')),
    { what: 'step', step: 'axle' },
  ],
  [
    'what went stale, before the plan',
    stepDone(doing(stepsDone(checked, [...front, 'stem']), reopen('axle')), 'axle'),
    { what: 'step', step: 'rub' },
  ],
  [
    'the plan before what was set aside',
    doing(stepDone(checked, 'clamp'), aside('wheel')),
    { what: 'step', step: 'stem' },
  ],
  [
    'what was set aside, when nothing else is left',
    stepsDone(doing(stepDone(checked, 'clamp'), aside('wheel')), ['stem', 'levers', 'post']),
    { what: 'step', step: 'wheel' },
  ],
  [
    'the walk, before a finding',
    doing(built(checked), raise),
    { what: 'point', point: 'wheel-straight' },
  ],
  [
    'a finding, before a signature',
    doing(walked(built(checked)), raise),
    { what: 'finding', finding: 'f' },
  ],
  ['the signature', walked(built(checked)), { what: 'sign-built' }],
  ['the second check', builtAndSigned(), { what: 'second-check' }],
  ['the customer', signedChecked(builtAndSigned()), { what: 'hand-over' }],
  ['a sealed record', handedOver(), { what: 'sealed' }],
])('[J22] answers with %s', (_, { state }, next) => {
  expect(whatNow(state)).toEqual(next);
});

describe('blocked', () => {
  test('[J22, J25] names the gates of every step that is left', () => {
    const parts = smallPlan.contents.map(({ id }) => ({
      part: id,
      state: id === 'seat-post' ? ('missing' as const) : ('present' as const),
    }));
    const played = built(doing(opened(smallPlan), { kind: 'check-contents', parts }));
    expect(whatNow(played.state)).toEqual({
      what: 'blocked',
      gates: [
        {
          code: 'step-waits-for-parts',
          step: 'post',
          parts: [{ part: 'seat-post', state: 'missing' }],
        },
      ],
    });
  });
});

test.each<[bike: 'mountain' | 'town']>([['mountain'], ['town']])(
  '[J22] whoever always does what is next works off the whole plan of a %s bike in its order',
  (bike) => {
    let job = contentsChecked(opened(seedPlan(bike)));
    const order: string[] = [];
    for (let next = whatNow(job.state); next.what === 'step'; next = whatNow(job.state)) {
      order.push(next.step);
      job = stepDone(job, next.step);
    }
    expect(order).toEqual(stepsOf(job.state).map(({ id }) => id));
    expect(whatNow(walked(job).state)).toEqual({ what: 'sign-built' });
  },
);
