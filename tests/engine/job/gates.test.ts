import { describe, expect, test } from 'vitest';
import {
  type Asked,
  gatesFor,
  isStepOpen,
  openSteps,
  standingOfStep,
  stepGates,
  stepsOf,
} from '../../../src/engine/job';
import {
  asking,
  boxed,
  commandOf,
  doing,
  imre,
  nothingYet,
  opened,
  petra,
  signing,
} from '../../support/given-when-then';
import {
  built,
  builtAndSigned,
  contentsChecked,
  seedPlan,
  smallPlan,
  stepDone,
  stepsDone,
} from '../../support/small-job';

const checked = contentsChecked(opened(smallPlan));

function openIds(job: typeof checked): readonly string[] {
  return openSteps(job.state).map(({ id }) => id);
}

describe('parts', () => {
  test.each<[state: 'missing' | 'damaged']>([['missing'], ['damaged']])(
    '[J6] a part that is %s stops the steps that need it and what comes after them, nothing else',
    (state) => {
      const parts = smallPlan.contents.map(({ id }) => ({
        part: id,
        state: id === 'front-wheel' ? state : ('present' as const),
      }));
      const played = built(doing(opened(smallPlan), { kind: 'check-contents', parts }));
      const left = stepsOf(played.state)
        .map(({ id }) => id)
        .filter((id) => standingOfStep(played.state, id) !== 'done');
      expect(left).toEqual(['wheel', 'axle', 'rub', 'front-tyre-pressure']);
      expect(stepGates(played.state, 'wheel')).toEqual([
        { code: 'step-waits-for-parts', step: 'wheel', parts: [{ part: 'front-wheel', state }] },
      ]);
      const arrived = {
        kind: 'check-contents',
        parts: [{ part: 'front-wheel', state: 'present' }],
      };
      expect(openIds(doing(played, arrived as Asked))).toEqual(['wheel']);
    },
  );

  test('[J6] a part that nobody looked for stops its step too', () => {
    const played = stepDone(opened(smallPlan), 'clamp');
    expect(openIds(played)).toEqual(['stem']);
    expect(stepGates(played.state, 'post')).toMatchObject([
      { parts: [{ part: 'seat-post', state: 'unchecked' }] },
    ]);
  });
});

describe('order', () => {
  test.each<[situation: string, done: readonly string[], open: readonly string[]]>([
    ['nothing done', [], ['clamp']],
    ['what comes after the clamp', ['clamp'], ['wheel', 'stem', 'post']],
    [
      'what relies on the wheel',
      ['clamp', 'wheel'],
      ['axle', 'front-tyre-pressure', 'stem', 'post'],
    ],
    ['what relies on the stem', ['clamp', 'stem'], ['wheel', 'levers', 'post']],
  ])('[J7] only what waits for nothing is open: %s', (_, done, open) => {
    expect(openIds(stepsDone(checked, done))).toEqual(open);
  });

  test('[J7] a step that went stale holds up what relies on it, done before or not', () => {
    const done = stepsDone(checked, ['clamp', 'wheel', 'axle', 'stem']);
    const played = doing(done, { kind: 'reopen-step', step: 'wheel', reason: 'It rubs.' });
    expect(stepGates(played.state, 'axle')).toEqual([
      { code: 'step-waits-for-steps', step: 'axle', steps: ['wheel'] },
    ]);
    expect(stepGates(stepDone(played, 'wheel').state, 'rub')).toEqual([
      { code: 'step-waits-for-steps', step: 'rub', steps: ['axle'] },
    ]);
    expect(isStepOpen(played.state, 'levers')).toBe(true);
  });

  test('[J7] a step set aside is not done', () => {
    const aside = doing(checked, { kind: 'set-step-aside', step: 'clamp', reason: 'No stand.' });
    expect(stepGates(aside.state, 'wheel')).toMatchObject([{ steps: ['clamp'] }]);
  });

  // The real plans: no step is ever asked for before those it names, in the order in which they become open.
  test.each<[bike: 'mountain' | 'town']>([['mountain'], ['town']])(
    '[J7] the whole plan of a %s bike can be worked off, and every step refused before its time',
    (bike) => {
      const start = contentsChecked(opened(seedPlan(bike)));
      for (const step of stepsOf(start.state)) {
        const before = [...step.after, ...step.reliesOn];
        expect(isStepOpen(start.state, step.id)).toBe(before.length === 0);
      }
      const done = built(start);
      expect(stepsOf(done.state).every(({ id }) => standingOfStep(done.state, id) === 'done')).toBe(
        true,
      );
    },
  );
});

describe('a point', () => {
  test('[J7, J25] waits for the steps that it confirms, by name', () => {
    const asked: Asked = { kind: 'look-at-point', point: 'wheel-straight', verdict: 'good' };
    const played = stepsDone(checked, ['clamp', 'wheel']);
    expect(gatesFor(played.state, commandOf(played, asked))).toEqual([
      { code: 'point-waits-for-steps', point: 'wheel-straight', steps: ['axle'] },
    ]);
  });
});

describe('closed gates', () => {
  const sign: Asked = { kind: 'sign-built', signing: signing(checked, 'built') };

  test('[J25] are said before anything is tried, each with what is missing', () => {
    const played = opened(smallPlan);
    const raised = doing(played, {
      kind: 'raise-finding',
      finding: 'f',
      severity: 'stop-ride',
      text: 'A crack.',
    });
    expect(gatesFor(raised.state, commandOf(raised, sign))).toEqual([
      { code: 'contents-unchecked', parts: ['front-wheel', 'seat-post', 'manual', 'film'] },
      { code: 'steps-unfinished', steps: smallPlan.steps.map(({ id }) => id) },
      { code: 'points-unsettled', points: smallPlan.points.map(({ id }) => id) },
      {
        code: 'findings-open',
        findings: [{ finding: 'f', severity: 'stop-ride', text: 'A crack.' }],
      },
    ]);
  });

  test.each<[situation: string, job: typeof checked, asked: Asked, who: typeof imre]>([
    ['nothing received', nothingYet(smallPlan), { kind: 'open-job', plan: smallPlan }, imre],
    ['received twice', checked, { kind: 'receive-box', bike: smallPlan.bike }, imre],
    ['not open', boxed(smallPlan), { kind: 'do-step', step: 'clamp' }, imre],
    ['opened twice', checked, { kind: 'open-job', plan: smallPlan }, imre],
    ['described after opening', checked, { kind: 'describe-bike', bike: smallPlan.bike }, imre],
    ['signed too early', checked, sign, imre],
    ['signed twice', builtAndSigned(), sign, imre],
    [
      'sent back before it is built',
      checked,
      { kind: 'send-back', steps: ['stem'], points: [], reason: 'No.' },
      petra,
    ],
    [
      'let go by a mechanic',
      checked,
      { kind: 'allow-finding', finding: 'f', reason: 'Fine.' },
      imre,
    ],
  ])('[J25] are the refusal of the decision itself: %s', (_, job, asked, who) => {
    const [gate] = gatesFor(job.state, commandOf(job, asked, who));
    expect(gate).toBeDefined();
    expect(asking(job, asked, who)).toEqual({ ok: false, refusal: gate });
  });
});
