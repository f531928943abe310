import { describe, expect, test } from 'vitest';
import { pointSchema } from '../../../src/engine/inspection';
import { type JobPlan, latestMeasure } from '../../../src/engine/job';
import { doing, opened, type Played } from '../../support/given-when-then';
import {
  built,
  contentsChecked,
  frozen,
  smallCatalogue,
  smallPlan,
  smallPoints,
  walked,
} from '../../support/small-job';

const atPost = (value: number) =>
  ({ kind: 'take-measure', at: 'post', measure: 'insertion', value }) as const;
const atPoint = (point: string, value: number) =>
  ({ kind: 'look-at-point', point, verdict: 'good', value }) as const;

function played(job: Played, ...asked: readonly Parameters<typeof doing>[1][]): Played {
  return asked.reduce((before, one) => doing(before, one), job);
}

describe('a quantity that a step sets and a point looks at again', () => {
  const build = built(opened(smallPlan));

  test.each<[situation: string, job: Played, value: number | undefined]>([
    ['nobody has measured', contentsChecked(opened(smallPlan)), undefined],
    ['only the step has measured', played(contentsChecked(opened(smallPlan)), atPost(80)), 80],
    ['the walk measured after it', played(build, atPost(100), atPoint('post-depth', 120)), 120],
    [
      'the step was measured anew after the walk',
      played(build, atPost(100), atPoint('post-depth', 120), atPost(95)),
      95,
    ],
    [
      'both were measured twice, the walk last',
      played(build, atPost(100), atPoint('post-depth', 120), atPost(95), atPoint('post-depth', 90)),
      90,
    ],
    [
      'what the walk measured went stale, and the step was measured again',
      played(walked(build), { kind: 'reopen-step', step: 'post', reason: 'It slid.' }, atPost(77)),
      77,
    ],
    [
      'it went stale, and there is no other',
      played(build, atPost(80), { kind: 'reopen-step', step: 'post', reason: 'It slid.' }),
      80,
    ],
  ])('[J39] %s', (_, { state }, value) => {
    expect(latestMeasure(state, 'insertion')?.value).toBe(value);
  });

  test('[J39] says where it was taken, and how it was judged', () => {
    const { state } = played(build, atPoint('post-depth', 120));
    expect(latestMeasure(state, 'insertion')).toMatchObject({
      place: 'post-depth',
      unit: 'mm',
      judged: 'inside',
      by: 'imre',
    });
    expect(latestMeasure(state, 'kettle')).toBeUndefined();
  });

  test('[J39] a plan frozen while the walk’s measure had a name of its own is understood', () => {
    const former = renamed(smallPlan, 'seat-post-inside', 'walk-seat-post-insertion');
    const job = played(built(opened(former)), atPoint('post-depth', 120));
    for (const name of ['seat-post-inside', 'walk-seat-post-insertion'])
      expect(latestMeasure(job.state, name)?.value).toBe(120);
  });
});

describe('a quantity that two points see from two sides', () => {
  const limit = { max: 90, source: 'made up for a test' };
  const reach = { id: 'reach', name: 'reach', how: 'Measure it.', unit: 'mm', limit };
  const sides = ['left', 'right'].map((side) =>
    pointSchema.parse({
      ...smallPoints[2],
      id: side,
      name: side,
      side,
      measure: reach,
    }),
  );
  const steps = smallCatalogue.steps.map((step) =>
    step.id === 'clamp' ? { ...step, measures: [{ ...reach, unit: 'mm' as const }] } : step,
  );
  const plan = frozen({
    catalogue: { ...smallCatalogue, steps },
    points: [...smallPoints, ...sides],
  });
  const start = contentsChecked(opened(plan));
  const atStep = (value: number) =>
    ({ kind: 'do-step', step: 'clamp', measures: { reach: value } }) as const;

  test.each<[situation: string, job: Played, value: number]>([
    ['the step alone', played(start, atStep(80)), 80],
    ['one side since, wider', played(start, atStep(80), atPoint('left', 85)), 85],
    [
      'one side since, narrower: the other may be it',
      played(start, atStep(80), atPoint('left', 60)),
      80,
    ],
    [
      'both since, narrower',
      played(start, atStep(80), atPoint('left', 60), atPoint('right', 70)),
      70,
    ],
    [
      'both, the wider first',
      played(start, atStep(80), atPoint('left', 70), atPoint('right', 60)),
      70,
    ],
    [
      'both, one twice',
      played(start, atStep(80), atPoint('left', 88), atPoint('right', 70), atPoint('left', 65)),
      70,
    ],
    ['no step, one side', played(start, atPoint('right', 66)), 66],
  ])('[J40] %s', (_, { state }, value) => {
    expect(latestMeasure(state, 'reach')?.value).toBe(value);
  });
});

/** The plan with its step's measure and its point's measure under two names. */
function renamed(plan: JobPlan, atStep: string, atPoint: string): JobPlan {
  return {
    ...plan,
    steps: plan.steps.map((step) => ({
      ...step,
      measures: step.measures.map((one) => (one.id === 'insertion' ? { ...one, id: atStep } : one)),
    })),
    points: plan.points.map(({ measure, ...point }) =>
      measure === undefined ? point : { ...point, measure: { ...measure, id: atPoint } },
    ),
  };
}
