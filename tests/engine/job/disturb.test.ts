import { describe, expect, test } from 'vitest';
import { type JobPlan, nextPass, stepById, whatNow } from '../../../src/engine/job';
import { doing, opened, type Played, refusalOf, signing } from '../../support/given-when-then';
import {
  built,
  builtAndSigned,
  contentsChecked,
  nextTowards,
  seedPlan,
  smallPlan,
  stepDone,
  stepsDone,
  walked,
} from '../../support/small-job';

const whole = {
  mountain: walked(built(opened(seedPlan('mountain')))),
  town: walked(built(opened(seedPlan('town')))),
};

function reopened(job: Played, step: string): Played {
  return doing(job, { kind: 'reopen-step', step, reason: 'It was loosened.' });
}

function stale({ state }: Played): readonly string[] {
  return Object.keys(state.steps).filter((id) => state.steps[id]?.standing === 'stale');
}

/** The oracle: go round until nothing more is added. */
function restingOn(plan: JobPlan, step: string): readonly string[] {
  const reached = new Set([step]);
  for (let size = 0; size < reached.size; ) {
    size = reached.size;
    for (const { id, reliesOn } of plan.steps)
      if (reliesOn.some((other) => reached.has(other))) reached.add(id);
  }
  reached.delete(step);
  return [...reached];
}

describe('reopening', () => {
  // Source of all rows: common practice, no source.
  test.each<
    [loosened: string, bike: keyof typeof whole, stale: readonly string[], good: readonly string[]]
  >([
    ['steerer-clamp', 'mountain', ['bar-alignment', 'headset-play'], ['indexing', 'left-pedal']],
    [
      'close-front-quick-release',
      'mountain',
      ['front-disc-rub', 'bar-alignment', 'brake-hold'],
      ['rear-disc-rub', 'indexing'],
    ],
    ['hanger-straight', 'mountain', ['limit-screws', 'indexing'], ['front-disc-rub']],
    [
      'front-axle-nuts',
      'town',
      ['front-brake-centre', 'brake-hold'],
      ['left-crank', 'chain-slack'],
    ],
  ])('[J11] makes stale what rests on it: %s of the %s bike', (loosened, bike, gone, good) => {
    const { state } = reopened(whole[bike], loosened);
    expect(state.steps[loosened]?.standing).toBe('reopened');
    for (const id of gone) expect([id, state.steps[id]?.standing]).toEqual([id, 'stale']);
    for (const id of good) expect([id, state.steps[id]?.standing]).toEqual([id, 'done']);
  });

  test.each<[bike: keyof typeof whole]>([['mountain'], ['town']])(
    '[J11] makes exactly that stale, for every step of the %s bike and its points',
    (bike) => {
      const { plan } = whole[bike];
      for (const { id } of plan.steps) {
        const after = reopened(whole[bike], id);
        const resting = restingOn(plan, id);
        expect([...stale(after)].sort()).toEqual([...resting].sort());
        const affected = new Set([id, ...resting]);
        for (const point of plan.points) {
          const rests = point.reliesOn.some((step) => affected.has(step));
          expect(after.state.points[point.id]?.stale).toBe(rests);
        }
        for (const step of plan.steps)
          for (const { id: measure } of step.measures)
            expect(after.state.measures[`${step.id}.${measure}`]?.stale).toBe(
              affected.has(step.id),
            );
      }
    },
  );

  test('[J11] does not touch what was never done', () => {
    const played = reopened(
      stepsDone(contentsChecked(opened(smallPlan)), ['clamp', 'wheel']),
      'wheel',
    );
    expect(Object.keys(played.state.steps)).toEqual(['clamp', 'wheel']);
  });
});

describe('rework', () => {
  const disturbed = reopened(builtAndSigned(), 'axle');

  test('[J12] is shown good again, steps and points, before the bike is signed', () => {
    const sign = (job: Played) => ({ kind: 'sign-built', signing: signing(job, 'built') }) as const;
    expect(refusalOf(disturbed, sign(disturbed))).toEqual({
      code: 'steps-unfinished',
      steps: ['axle', 'rub'],
    });
    const steps = built(disturbed);
    expect(refusalOf(steps, sign(steps))).toEqual({
      code: 'points-unsettled',
      points: ['wheel-straight'],
    });
    const points = walked(steps);
    expect(whatNow(points.state)).toEqual({ what: 'sign-built' });
    expect(() => doing(points, sign(points))).not.toThrow();
  });

  test('[J12] a measure of a disturbed step is taken again', () => {
    const played = reopened(builtAndSigned(), 'post');
    expect(refusalOf(played, { kind: 'do-step', step: 'post' })).toEqual({
      code: 'step-needs-measures',
      step: 'post',
      measures: ['insertion'],
    });
  });
});

describe('a joint', () => {
  const done = stepsDone(contentsChecked(opened(smallPlan)), ['clamp', 'stem', 'levers']);

  function passesTo(job: Played, step: string): readonly number[] {
    const found = stepById(job.state, step);
    const next = found && nextPass(job.state, found);
    if (next === undefined || !next.ok) throw new Error('a pass was expected');
    return [next.value.pass.pass, next.value.of];
  }

  test('[J13] that only went stale needs its last round', () => {
    const played = stepDone(reopened(done, 'stem'), 'stem');
    expect(passesTo(played, 'levers')).toEqual([2, 2]);
    const again = doing(played, nextTowards(played, 'levers'));
    expect(again.state.steps.levers?.standing).toBe('done');
    expect(again.state.joints['lever-bolts']).toMatchObject({ stale: false });
  });

  test('[J13] that was loosened begins anew', () => {
    expect(passesTo(reopened(done, 'stem'), 'stem')).toEqual([1, 3]);
    expect(passesTo(reopened(done, 'levers'), 'levers')).toEqual([1, 2]);
  });

  test('[J13] that was loosened and half tightened again begins anew when disturbed', () => {
    const loosened = reopened(done, 'levers');
    const half = doing(loosened, nextTowards(loosened, 'levers'));
    expect(passesTo(half, 'levers')).toEqual([2, 2]);
    const played = stepDone(reopened(half, 'stem'), 'stem');
    expect(passesTo(played, 'levers')).toEqual([1, 2]);
  });

  test('[J13] that was only half tightened begins anew when what it rests on is reopened', () => {
    const start = stepsDone(contentsChecked(opened(smallPlan)), ['clamp', 'stem']);
    const figured = doing(start, nextTowards(start, 'levers'));
    const half = doing(figured, nextTowards(figured, 'levers'));
    expect(passesTo(half, 'levers')).toEqual([2, 2]);
    expect(passesTo(reopened(half, 'stem'), 'levers')).toEqual([1, 2]);
  });
});
