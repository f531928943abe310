/** An apprentice's class A joints need a second pair of eyes; overrides need a supervisor and a reason. */

import { describe, expect, test } from 'vitest';
import { type Asked, isLearner, stepsOf, unconfirmedJoints } from '../../../src/engine/job';
import {
  asking,
  doing,
  eventsOf,
  imre,
  ines,
  logged,
  met,
  opened,
  petra,
  refusalOf,
  signing,
  sunniva,
  type Who,
} from '../../support/given-when-then';
import {
  built,
  builtAndSigned,
  handedOver,
  signedBuilt,
  signedChecked,
  smallPlan,
  stepDone,
  walked,
} from '../../support/small-job';

const byApprentice = walked(built(opened(smallPlan), ines), ines);
const classA = smallPlan.steps.flatMap(({ joint }) => (joint?.risk === 'A' ? [joint.id] : []));
const confirm = (joint: string): Asked => ({ kind: 'confirm-joint', joint });
const confirmedAll = (who: Who) =>
  classA.reduce((played, joint) => doing(played, confirm(joint), who), byApprentice);

describe('joints of an apprentice', () => {
  test('[J36] of class A, and no others, stand in the way of every signature until each is confirmed', () => {
    expect(classA.length).toBeGreaterThan(1);
    expect(classA.length).toBeLessThan(stepsOf(byApprentice.state).filter((s) => s.joint).length);
    expect(unconfirmedJoints(byApprentice.state)).toEqual(classA);
    const sign: Asked = { kind: 'sign-built', signing: signing(byApprentice, 'built') };
    expect(refusalOf(byApprentice, sign, ines)).toEqual({
      code: 'joints-unconfirmed',
      joints: classA,
    });
    const [first = '', ...others] = classA;
    const one = doing(byApprentice, confirm(first), imre);
    expect(unconfirmedJoints(one.state)).toEqual(others);
    const all = confirmedAll(imre);
    expect(() => signedChecked(signedBuilt(all, ines), petra)).not.toThrow();
  });

  test('[J36] are confirmed by somebody who has learnt the trade, and not by whoever tightened them', () => {
    const [joint = ''] = classA;
    const learner: Who = { by: 'olu', roles: ['apprentice'] };
    const code = 'cannot-confirm-joint';
    expect(refusalOf(byApprentice, confirm(joint), learner)).toEqual({
      code,
      person: 'olu',
      because: 'still-learning',
    });
    const promoted: Who = { by: 'ines', roles: ['mechanic'] };
    expect(refusalOf(byApprentice, confirm(joint), promoted)).toEqual({
      code,
      person: 'ines',
      because: 'own-work',
    });
    expect(asking(byApprentice, confirm(joint), sunniva).ok).toBe(true);
  });

  test('[J36] need nobody where the last round was a mechanic’s', () => {
    const mixed = walked(
      built(stepDone(stepDone(opened(smallPlan), 'clamp'), 'stem', ines), imre),
      imre,
    );
    const [joint] = unconfirmedJoints(mixed.state);
    expect(unconfirmedJoints(mixed.state)).toHaveLength(1);
    const redone = doing(mixed, { kind: 'reopen-step', step: 'stem', reason: 'again' }, imre);
    expect(unconfirmedJoints(built(redone, imre).state)).toEqual([]);
    expect(refusalOf(built(redone, imre), confirm(joint ?? ''), petra)).toEqual({
      code: 'joint-needs-no-second-eyes',
      joint,
    });
  });

  test('[J36] are confirmed without making the one who looks a builder', () => {
    const all = signedBuilt(confirmedAll(petra), ines);
    expect(all.state.builders).toEqual(['ines']);
    expect(() => signedChecked(all, petra)).not.toThrow();
  });

  test('[J36] say so in their passes; those of a mechanic are kept as they always were', () => {
    const passes = (played: typeof byApprentice) =>
      played.entries.flatMap(({ event }) => (event.kind === 'joint-tightened' ? [event] : []));
    expect(
      passes(byApprentice).every((event) => 'byLearner' in event && event.byLearner === true),
    ).toBe(true);
    const mechanics = passes(builtAndSigned());
    expect(mechanics.length).toBeGreaterThan(1);
    expect(mechanics.some((event) => 'byLearner' in event)).toBe(false);
    expect(unconfirmedJoints(handedOver().state)).toEqual([]);
  });
});

describe('a confirmation', () => {
  const [joint = ''] = classA;

  test('[J37] is over when the joint is tightened again', () => {
    const all = confirmedAll(imre);
    const step = stepsOf(all.state).find((one) => one.joint?.id === joint)?.id ?? '';
    const reopened = doing(all, { kind: 'reopen-step', step, reason: 'It creaked.' }, imre);
    const again = built(reopened, ines);
    expect(unconfirmedJoints(again.state)).toContain(joint);
    const by = walked(doing(again, confirm(joint), imre), imre);
    expect(unconfirmedJoints(by.state)).not.toContain(joint);
  });

  test('[J37] of a tightening that another tablet has undone meanwhile confirms nothing', () => {
    const step = stepsOf(byApprentice.state).find((one) => one.joint?.id === joint)?.id ?? '';
    const [said] = eventsOf(byApprentice, confirm(joint), imre);
    if (said === undefined) throw new Error('a confirmation is one event');
    const reopen: Asked = { kind: 'reopen-step', step, reason: 'It creaked.' };
    const elsewhere = built(doing(byApprentice, reopen, ines, 'tablet-b'), ines);
    const here = logged(byApprentice, said, imre);
    expect(unconfirmedJoints(here.state)).not.toContain(joint);
    expect(unconfirmedJoints(met(here, elsewhere).state)).toContain(joint);
    // The same the other way round: what comes later in the log names the earlier tightening.
    expect(unconfirmedJoints(logged(elsewhere, said, imre).state)).toContain(joint);
  });
});

describe('an override', () => {
  const finding = { finding: 'f', severity: 'stop-ride', text: 'A crack.' } as const;
  const found = doing(opened(smallPlan), { kind: 'raise-finding', ...finding }, imre);
  const allow = (reason: string): Asked => ({ kind: 'allow-finding', finding: 'f', reason });

  test('[J38] without a supervisor, or without a reason, is refused', () => {
    for (const who of [imre, ines])
      expect(refusalOf(found, allow('They insist.'), who)).toEqual({ code: 'supervisor-only' });
    expect(refusalOf(found, allow(' '), sunniva)).toEqual({ code: 'reason-missing' });
  });

  test('[J38] stays in the record with both', () => {
    const { state } = doing(found, allow('Only the decal.'), sunniva);
    expect(state.findings[0]?.allowed).toMatchObject({ by: 'sunniva', reason: 'Only the decal.' });
  });

  test.each([
    [['apprentice'], true],
    [[], true],
    [['mechanic'], false],
    [['supervisor'], false],
    [['apprentice', 'mechanic'], false],
  ] as const)('[J38] %j is a learner: %s', (roles, expected) => {
    expect(isLearner(roles)).toBe(expected);
  });
});
