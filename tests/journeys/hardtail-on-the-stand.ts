/** A hardtail comes out of its box, waits for its pedals, and is built. */

import { describe, expect, test } from 'vitest';
import { standingOfStep, statusOf, stepById, stepsOf } from '../../src/engine/job';
import { build } from '../../src/state';
import { must } from '../support/test-app';
import type { Journey } from './journey';

export function onTheStand(journey: Journey): void {
  describe('given a sealed box', () => {
    test('when nobody has received it, then nothing can be done to it', async () => {
      const { shop } = journey;
      await shop.tries('builder', 'no-such-job', { kind: 'resume-job' }, 'box-not-received');
    });

    test('when it is received, then it is boxed, and cannot be received twice', async () => {
      const { shop, bike } = journey;
      const box = { bike, due: '2026-11-28T11:00', cartonDamage: 'One corner crushed.' };
      const job = must(await shop.at('builder').receiveBox(box));
      journey.job = job;
      expect(statusOf(await shop.state(job))).toBe('boxed');
      await shop.tries('builder', job, { kind: 'receive-box', ...box }, 'box-already-received');
    });

    test('when its job is not open, then there is no step to do and no hold to end', async () => {
      const { shop, job } = journey;
      await shop.tries('builder', job, { kind: 'do-step', step: 'unpack' }, 'job-not-open');
      await shop.tries('builder', job, { kind: 'resume-job' }, 'job-not-on-hold');
    });
  });

  describe('given an open job', () => {
    test('when it is opened, then its plan is frozen', async () => {
      const { shop, job, bike } = journey;
      const state = must(await shop.at('builder').startJob(job));
      expect(statusOf(state)).toBe('on-the-stand');
      expect(stepById(state, 'close-front-quick-release')).toBeDefined();
      expect(stepById(state, 'quill-wedge')).toBeUndefined();
      shop.refuses(await shop.app.startJob(job), 'job-already-open');
      await shop.tries('builder', job, { kind: 'describe-bike', bike }, 'job-already-open');
      await shop.tries('builder', job, { kind: 'amend-record', text: 'x' }, 'record-not-sealed');
    });

    test('when nothing is done, then no step or point runs ahead and nobody signs', async () => {
      const { shop, job } = journey;
      const early = { kind: 'do-step', step: 'bar-alignment' } as const;
      const { steps } = await shop.tries('builder', job, early, 'step-waits-for-steps');
      expect(steps).toContain('steerer-clamp'); // common practice, no source: the clamp comes first
      const look = { kind: 'look-at-point', point: 'headset', verdict: 'good' } as const;
      const point = await shop.tries('builder', job, look, 'point-waits-for-steps');
      expect(point.steps).toEqual(expect.arrayContaining(['headset-preload', 'steerer-clamp']));
      const { parts } = shop.refuses(
        await shop.sign('builder', job, 'built'),
        'contents-unchecked',
      );
      expect(parts).toContain('brake-spacer');
    });

    test('when the pedals are missing, then only the pedals wait', async () => {
      const { shop, job } = journey;
      const state = await build(shop.bench('builder'), job, { missing: ['pedals'] });
      const left = stepsOf(state).filter(({ id }) => standingOfStep(state, id) !== 'done');
      const waiting = new Set(left.map(({ id }) => id));
      expect([...waiting]).toEqual(expect.arrayContaining(['left-pedal', 'right-pedal']));
      for (const { id, parts, after, reliesOn } of left) {
        const isHeldUp = [...after, ...reliesOn].some((before) => waiting.has(before));
        expect(parts.includes('pedals') || isHeldUp, id).toBe(true);
      }
      expect(left.length).toBeLessThan(stepsOf(state).length / 4);
      expect(standingOfStep(state, 'indexing')).toBe('done');
      const pass = {
        kind: 'make-pass',
        step: 'left-pedal',
        pass: 1,
        wrench: wrenchOf(journey, 'D'),
      } as const;
      const { parts } = await shop.tries('builder', job, pass, 'step-waits-for-parts');
      expect(parts).toEqual([{ part: 'pedals', state: 'missing' }]);
      const unfinished = shop.refuses(await shop.sign('builder', job, 'built'), 'steps-unfinished');
      expect(unfinished.steps).toEqual(left.map(({ id }) => id));
    });

    test('when it waits for them, then it takes up no work until they have come', async () => {
      const { shop, job } = journey;
      const hold = { kind: 'hold-job', for: 'part', note: 'Pedals ordered.' } as const;
      expect(statusOf(await shop.does('builder', job, hold))).toBe('on-hold');
      const step = { kind: 'do-step', step: 'wipe-down' } as const;
      const held = await shop.tries('builder', job, step, 'job-on-hold');
      expect(held).toMatchObject({ for: 'part', note: 'Pedals ordered.' });
      await shop.does('builder', job, {
        kind: 'check-contents',
        parts: [{ part: 'pedals', state: 'present' }],
      });
      await shop.does('builder', job, { kind: 'resume-job' });
      const state = await build(shop.bench('builder'), job);
      expect(stepsOf(state).every(({ id }) => standingOfStep(state, id) === 'done')).toBe(true);
    });

    test('when a joint ends, then it ends inside its figure', async () => {
      const { shop, job } = journey;
      const state = await shop.state(job);
      const tightened = Object.values(state.joints).flatMap((mark) => mark.tightened ?? []);
      expect(tightened).toHaveLength(stepsOf(state).filter(({ joint }) => joint).length);
      for (const { joint, figure, jointLow, jointHigh } of tightened) {
        if (figure.min !== undefined) expect(jointLow, joint).toBeGreaterThanOrEqual(figure.min);
        if (figure.max !== undefined) expect(jointHigh, joint).toBeLessThanOrEqual(figure.max);
      }
      expect(stepById(state, 'left-pedal')?.joint?.hand).toBe('left'); // common practice, no source
    });
  });
}

function wrenchOf({ shop }: Journey, id: string) {
  const wrench = shop.bench('builder').wrenches.find((candidate) => candidate.id === id);
  if (wrench === undefined) throw new Error(`the board has no wrench ${id}`);
  return wrench;
}
