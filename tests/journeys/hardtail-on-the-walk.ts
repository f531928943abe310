/** A hardtail is walked round, put right, loosened again and shown good again. */

import { describe, expect, test } from 'vitest';
import { pointById, standingOfStep, statusOf } from '../../src/engine/job';
import { build, lookedAt, walk } from '../../src/state';
import { must } from '../support/test-app';
import type { Journey } from './journey';

export function onTheWalk(journey: Journey): void {
  describe('given a built bike', () => {
    test('when it has not been walked round, then it is not signed as built', async () => {
      const { shop, job } = journey;
      const { points } = shop.refuses(await shop.sign('builder', job, 'built'), 'points-unsettled');
      expect(points).toContain('front-brake-disc');
    });

    test('when a stop-ride finding is open, then it is not signed until it is put right and looked at again', async () => {
      const { shop, job } = journey;
      await walk(shop.bench('builder'), job);
      const finding = { finding: 'f-1', severity: 'stop-ride', text: 'Front pads oily.' } as const;
      const point = 'front-brake-disc';
      await shop.does('builder', job, { kind: 'look-at-point', point, verdict: 'wrong', finding });
      const { findings } = shop.refuses(await shop.sign('builder', job, 'built'), 'findings-open');
      expect(findings).toEqual([finding]);
      await shop.does('builder', job, { kind: 'close-finding', finding: 'f-1', how: 'New pads.' });
      const again = shop.refuses(await shop.sign('builder', job, 'built'), 'points-unsettled');
      expect(again.points).toEqual([point]);
      const looked = pointById(await shop.state(job), point);
      if (looked === undefined) throw new Error('the route has this point');
      await shop.does('builder', job, {
        ...lookedAt(looked),
        verdict: 'adjusted',
        note: 'New pads.',
      });
    });

    test('when the steerer clamp is loosened, then what relied on it goes stale and nothing else', async () => {
      const { shop, job } = journey;
      const before = await shop.state(job);
      const loosen = { kind: 'reopen-step', step: 'steerer-clamp', reason: 'Bar turned.' } as const;
      const state = await shop.does('builder', job, loosen);
      // Common practice, no source: the clamp holds the bar straight and the bearings together.
      for (const step of ['bar-alignment', 'headset-play'])
        expect(standingOfStep(state, step), step).toBe('stale');
      for (const step of ['limit-screws', 'indexing', 'rear-disc-rub', 'front-caliper-mount'])
        expect(standingOfStep(state, step), step).toBe('done');
      for (const point of ['headset', 'stem']) expect(state.points[point]?.stale, point).toBe(true);
      const rear = Object.keys(state.points).filter((point) => /rear|gear|derailleur/.test(point));
      expect(rear.length).toBeGreaterThan(0);
      for (const point of rear) expect(state.points[point], point).toEqual(before.points[point]);

      const { steps } = shop.refuses(await shop.sign('builder', job, 'built'), 'steps-unfinished');
      expect(steps).toEqual(
        expect.arrayContaining(['steerer-clamp', 'bar-alignment', 'headset-play']),
      );
    });

    test('when all of it is shown good again, then it is signed as built, once', async () => {
      const { shop, job } = journey;
      await build(shop.bench('builder'), job);
      shop.refuses(await shop.sign('builder', job, 'built'), 'points-unsettled');
      await walk(shop.bench('builder'), job);
      expect(statusOf(must(await shop.sign('builder', job, 'built')))).toBe('to-be-checked');
      shop.refuses(await shop.sign('builder', job, 'built'), 'already-signed-as-built');
    });
  });
}
