import { describe, expect, test } from 'vitest';
import { headsOf } from '../../../src/engine/integrity';
import { type Asked, standingOfStep, standingSignature, statusOf } from '../../../src/engine/job';
import {
  customer,
  doing,
  imre,
  opened,
  petra,
  refusalOf,
  signing,
  type Who,
} from '../../support/given-when-then';
import {
  built,
  builtAndSigned,
  handedOver,
  handOver,
  signedBuilt,
  signedChecked,
  smallPlan,
  stepDone,
  walked,
} from '../../support/small-job';

const worked = walked(built(opened(smallPlan)));
const signed = builtAndSigned();
const ready = signedChecked(signed);

describe('a signature', () => {
  test('[J17] keeps the heads of the log it was made on', () => {
    expect(standingSignature(signed.state, 'built')?.heads).toEqual(headsOf(worked.entries));
    expect(standingSignature(ready.state, 'checked')?.heads).toEqual(headsOf(signed.entries));
  });

  test('[J17] made on other heads, or with another meaning, is refused', () => {
    const early = signing(opened(smallPlan), 'built');
    expect(refusalOf(worked, { kind: 'sign-built', signing: early })).toEqual({
      code: 'signature-overtaken',
    });
    const other = signing(worked, 'checked');
    expect(refusalOf(worked, { kind: 'sign-built', signing: other })).toEqual({
      code: 'signature-of-another-meaning',
    });
    const nameless = signing(worked, 'built', { name: ' ' });
    expect(refusalOf(worked, { kind: 'sign-built', signing: nameless })).toEqual({
      code: 'signature-name-missing',
    });
  });

  test('[J17] that a step is reopened after is stale: built, checked, both', () => {
    const reopened = doing(ready, { kind: 'reopen-step', step: 'stem', reason: 'A creak.' });
    expect(reopened.state.signatures.map(({ stale }) => stale)).toEqual([true, true]);
    expect(statusOf(reopened.state)).toBe('on-the-stand');
    expect(refusalOf(reopened, handOver(reopened)).code).toBe('not-signed-as-built');
  });
});

describe('the second check', () => {
  const check: Asked = { kind: 'sign-checked', signing: signing(signed, 'checked') };
  const back: Asked = {
    kind: 'send-back',
    steps: ['stem'],
    points: ['paint'],
    reason: 'Not level.',
  };

  test('[J16] is not made by the builder, who cannot send back either', () => {
    const refusal = { code: 'builder-cannot-check', person: 'imre' };
    expect(refusalOf(signed, check, imre)).toEqual(refusal);
    expect(refusalOf(signed, back, imre)).toEqual(refusal);
    expect(() => doing(signed, check, petra)).not.toThrow();
    expect(() => doing(signed, back, petra)).not.toThrow();
  });

  test('[J16] is not made by somebody who did one step of it', () => {
    const shared = walked(built(stepDone(opened(smallPlan), 'clamp', petra)));
    const both = signedBuilt(shared);
    const asked: Asked = { kind: 'sign-checked', signing: signing(both, 'checked') };
    expect(refusalOf(both, asked, petra)).toEqual({
      code: 'builder-cannot-check',
      person: 'petra',
    });
  });

  test('[J16] is not made by an apprentice, unless a mechanic or supervisor as well', () => {
    const learner: Who = { by: 'ines', roles: ['apprentice'] };
    const refusal = { code: 'apprentice-cannot-check', person: 'ines' };
    expect(refusalOf(signed, check, learner)).toEqual(refusal);
    expect(refusalOf(signed, back, learner)).toEqual(refusal);
    const both: Who = { by: 'ines', roles: ['apprentice', 'mechanic'] };
    expect(() => doing(signed, check, both)).not.toThrow();
  });

  test('[J18] names what it sends back, with a reason', () => {
    expect(refusalOf(signed, { ...back, steps: [], points: [] }, petra)).toEqual({
      code: 'nothing-named',
    });
    expect(refusalOf(signed, { ...back, reason: '' }, petra)).toEqual({ code: 'reason-missing' });
    expect(refusalOf(signed, { ...back, steps: ['kettle'] }, petra)).toEqual({
      code: 'step-unknown',
      step: 'kettle',
    });
    expect(refusalOf(signed, { ...back, points: ['kettle'] }, petra)).toEqual({
      code: 'point-unknown',
      point: 'kettle',
    });
  });

  test('[J18] what it sends back is shown good again before anybody signs', () => {
    const returned = doing(signed, back, petra);
    expect(standingOfStep(returned.state, 'stem')).toBe('reopened');
    expect(standingOfStep(returned.state, 'levers')).toBe('stale');
    expect(returned.state.points.paint?.stale).toBe(true);
    expect(returned.state.sentBack).toMatchObject([{ by: 'petra', reason: 'Not level.' }]);
    expect(() => signedBuilt(returned)).toThrow('steps-unfinished');
    expect(() => signedBuilt(built(returned))).toThrow('points-unsettled');
    const again = signedChecked(signedBuilt(walked(built(returned))));
    expect(statusOf(again.state)).toBe('ready');
  });
});

describe('handing over', () => {
  const asked = handOver(ready);

  test.each<[situation: string, job: typeof ready, code: string]>([
    ['before it is built', worked, 'not-signed-as-built'],
    ['before it is checked', signed, 'not-signed-as-checked'],
  ])('[J19] is refused %s', (_, job, code) => {
    expect(refusalOf(job, handOver(job)).code).toBe(code);
  });

  test.each<[situation: string, change: Partial<typeof asked>, code: string]>([
    ['nobody', { customer: '' }, 'customer-missing'],
    ['a customer other than the one who signs', { customer: 'd'.repeat(64) }, 'customer-missing'],
    ['a customer who was told nothing', { told: [] }, 'customer-not-told'],
    [
      'a customer with a first check today',
      { firstCheck: '2026-03-02' },
      'first-check-not-after-hand-over',
    ],
    [
      'a customer whose signature came too early',
      { signing: signing(signed, 'received') },
      'signature-overtaken',
    ],
    [
      'a customer who signed for something else',
      { signing: signing(ready, 'checked', { customer }) },
      'signature-of-another-meaning',
    ],
  ])('[J19] is refused to %s', (_, change, code) => {
    expect(refusalOf(ready, { ...asked, ...change }).code).toBe(code);
  });

  test('[J19] names every topic that was left out', () => {
    const told = asked.told.filter((topic) => topic !== 'bedding-in' && topic !== 'axles');
    expect(refusalOf(ready, { ...asked, told })).toEqual({
      code: 'customer-not-told',
      topics: ['axles', 'bedding-in'],
    });
  });

  test('[J19] keeps the customer’s signature, and the lever as they were told', () => {
    const { state } = handedOver();
    expect(standingSignature(state, 'received')?.customer).toBe(customer);
    // The right hand works the front brake in Great Britain: common practice and 2010 No. 198 (from memory).
    expect(state.handedOver).toMatchObject({ customer, frontBrakeLever: 'right' });
  });
});
