/** A hardtail is checked by somebody else, let go by a supervisor, and handed over. */

import { describe, expect, test } from 'vitest';
import {
  type Signing,
  standingOfStep,
  statusOf,
  topicsToTell,
  unconfirmedJoints,
  unusualIn,
} from '../../src/engine/job';
import { build, walk } from '../../src/state';
import { must } from '../support/test-app';
import type { Journey } from './journey';

const unsigned: Signing = { meaning: 'built', heads: [], jws: '' };
const handingOver = {
  customer: { name: 'Ottilie Fenwick', contact: '01632 960188' },
  firstCheck: '2027-01-06',
  strokes: '<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0L9 9"/></svg>',
};

export function signedFor(journey: Journey): void {
  describe('given a bike that is signed as built', () => {
    test('when its builder, or an apprentice, would check it or send it back, then all are refused', async () => {
      const { shop, job } = journey;
      const { person } = shop.refuses(
        await shop.sign('builder', job, 'checked'),
        'builder-cannot-check',
      );
      expect(person).toBe(shop.people.builder.id);
      const back = { kind: 'send-back', steps: ['faceplate'], points: [], reason: 'x' } as const;
      await shop.tries('builder', job, back, 'builder-cannot-check');
      shop.refuses(await shop.sign('learner', job, 'checked'), 'apprentice-cannot-check');
      await shop.tries('learner', job, back, 'apprentice-cannot-check');
      const told = topicsToTell(await shop.state(job));
      const early = await shop.handOver('builder', job, { ...handingOver, told });
      shop.refuses(early, 'not-signed-as-checked');
    });

    test('when the second checker sends points back, then they are shown good and signed again', async () => {
      const { shop, job } = journey;
      const seen = unusualIn(await shop.state(job)).map(({ code }) => code);
      expect(seen).toEqual(
        expect.arrayContaining(['unusual-finding', 'unusual-reopened', 'unusual-carton']),
      );
      const state = await shop.does('checker', job, {
        kind: 'send-back',
        steps: ['faceplate'],
        points: ['front-tyre'],
        reason: 'Uneven gap at the faceplate.',
      });
      expect(statusOf(state)).toBe('on-the-stand');
      expect(standingOfStep(state, 'faceplate')).toBe('reopened');
      shop.refuses(await shop.sign('checker', job, 'checked'), 'not-signed-as-built');
      await build(shop.bench('learner'), job);
      await walk(shop.bench('builder'), job);
    });

    test('when an apprentice has tightened a joint of class A, then somebody else confirms it first', async () => {
      const { shop, job } = journey;
      const early = await shop.sign('builder', job, 'built');
      expect(shop.refuses(early, 'joints-unconfirmed').joints).toContain('faceplate');
      const confirm = (joint: string) => ({ kind: 'confirm-joint', joint }) as const;
      const own = await shop.tries('learner', job, confirm('faceplate'), 'cannot-confirm-joint');
      expect(own).toMatchObject({ person: shop.people.learner.id, because: 'still-learning' });
      for (const joint of unconfirmedJoints(await shop.state(job)))
        await shop.does('builder', job, confirm(joint));
      expect(unusualIn(await shop.state(job))).toContainEqual({
        code: 'unusual-learner-joint',
        joint: 'faceplate',
        by: shop.people.learner.id,
        confirmedBy: shop.people.builder.id,
      });
      must(await shop.sign('builder', job, 'built'));
    });

    test('when the checker finds something that stops the ride, then only a supervisor lets it go', async () => {
      const { shop, job } = journey;
      const text = 'The bell cannot be reached from the grip.';
      const finding = { finding: 'f-2', severity: 'stop-ride', text } as const;
      await shop.does('checker', job, { kind: 'raise-finding', ...finding });
      shop.refuses(await shop.sign('checker', job, 'checked'), 'findings-open');
      const allow = {
        kind: 'allow-finding',
        finding: 'f-2',
        reason: 'Customer fits a horn.',
      } as const;
      await shop.tries('checker', job, allow, 'supervisor-only');
      await shop.does('supervisor', job, allow);
      expect(statusOf(must(await shop.sign('checker', job, 'checked')))).toBe('ready');
      shop.refuses(await shop.sign('checker', job, 'checked'), 'already-signed-as-checked');
    });
  });

  describe('given a bike that is ready', () => {
    test('when a finding stops the ride after all, then it stays in the shop', async () => {
      const { shop, job } = journey;
      const finding = { finding: 'f-3', severity: 'stop-ride', text: 'Rear tyre flat.' } as const;
      const told = topicsToTell(await shop.state(job));
      await shop.does('supervisor', job, { kind: 'raise-finding', ...finding });
      const handed = await shop.handOver('supervisor', job, { ...handingOver, told });
      expect(shop.refuses(handed, 'findings-open').findings).toEqual([finding]);
      await shop.does('supervisor', job, {
        kind: 'close-finding',
        finding: 'f-3',
        how: 'New tube.',
      });
    });

    test('when the customer is not told of what was let go, then it is not theirs', async () => {
      const { shop, job } = journey;
      const told = topicsToTell(await shop.state(job)).filter((topic) => topic !== 'findings');
      const handed = await shop.handOver('checker', job, { ...handingOver, told });
      expect(handed).toMatchObject({ ok: false, refusal: { topics: ['findings'] } });
    });

    test('when they sign, then the record is sealed and takes amendments only', async () => {
      const { shop, job } = journey;
      const told = topicsToTell(await shop.state(job));
      const state = must(await shop.handOver('checker', job, { ...handingOver, told }));
      expect(statusOf(state)).toBe('handed-over');
      const reopen = { kind: 'reopen-step', step: 'faceplate', reason: 'x' } as const;
      await shop.tries('builder', job, reopen, 'record-sealed');
      await shop.tries('builder', job, { kind: 'sign-built', signing: unsigned }, 'record-sealed');
      const text = 'The customer called: all is well.';
      const amended = await shop.does('builder', job, { kind: 'amend-record', text });
      expect(amended.amendments.map((amendment) => amendment.text)).toEqual([text]);
    });
  });
}
