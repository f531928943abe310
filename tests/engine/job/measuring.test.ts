import { expect, test } from 'vitest';
import { measuresAt, missingMeasures, stepById } from '../../../src/engine/job';
import { doing, opened, type Played } from '../../support/given-when-then';
import { contentsChecked, smallPlan, stepsDone } from '../../support/small-job';

const start = contentsChecked(opened(smallPlan));

function measured(job: Played, value: number): Played {
  return doing(job, { kind: 'take-measure', at: 'post', measure: 'insertion', value });
}

function missingAtPost({ state }: Played): readonly string[] | undefined {
  const step = stepById(state, 'post');
  return step && missingMeasures(state, step);
}

test.each<[situation: string, job: Played, missing: readonly string[]]>([
  ['not taken', start, ['insertion']],
  ['a little too shallow', measured(start, 62.9), ['insertion']],
  ['on its limit', measured(start, 63), []],
  ['good, then taken again and outside', measured(measured(start, 80), 40), ['insertion']],
  ['outside, then good', measured(measured(start, 40), 80), []],
  [
    'good, then disturbed',
    doing(stepsDone(start, ['clamp', 'post']), {
      kind: 'reopen-step',
      step: 'post',
      reason: 'It slid.',
    }),
    ['insertion'],
  ],
])('[J10] a step lacks a measure that is %s', (_, job, missing) => {
  expect(missingAtPost(job)).toEqual(missing);
});

test('[J10] steps and points have measures, other places none', () => {
  expect(measuresAt(start.state, 'post').map(({ limit }) => limit.min)).toEqual([63]);
  expect(measuresAt(start.state, 'post-depth').map(({ limit }) => limit.min)).toEqual([63]);
  expect(measuresAt(start.state, 'paint')).toEqual([]);
  expect(measuresAt(start.state, 'kettle')).toEqual([]);
});
