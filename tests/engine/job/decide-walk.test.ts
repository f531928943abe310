import { describe, expect, test } from 'vitest';
import { type Asked, isPointSettled, type NewFinding, whatNow } from '../../../src/engine/job';
import { doing, opened, petra, refusalOf, signing, sunniva } from '../../support/given-when-then';
import { built, signedBuilt, smallPlan, walked } from '../../support/small-job';

const ready = walked(built(opened(smallPlan)));
const rub: NewFinding = { finding: 'f1', severity: 'stop-ride', text: ' The rim rubs. ' };
const wrong: Asked = {
  kind: 'look-at-point',
  point: 'wheel-straight',
  verdict: 'wrong',
  finding: rub,
};
const found = doing(ready, wrong);
const close: Asked = { kind: 'close-finding', finding: 'f1', how: 'Trued it.' };
const allow: Asked = { kind: 'allow-finding', finding: 'f1', reason: 'Known, agreed.' };
const signBuilt: Asked = { kind: 'sign-built', signing: signing(found, 'built') };

describe('a point that is wrong', () => {
  test('[J14] comes with a finding, in words, at that point', () => {
    const { finding: _, ...bare } = wrong;
    expect(refusalOf(ready, bare)).toEqual({ code: 'finding-missing', point: 'wheel-straight' });
    expect(refusalOf(ready, { ...wrong, finding: { ...rub, text: ' ' } })).toEqual({
      code: 'reason-missing',
    });
    expect(found.state.findings).toMatchObject([
      { id: 'f1', at: 'wheel-straight', severity: 'stop-ride', text: 'The rim rubs.' },
    ]);
  });

  test('[J14] is looked at again when its finding is closed, and only it', () => {
    const closed = doing(found, close);
    expect(isPointSettled(found.state, 'wheel-straight')).toBe(true);
    expect(isPointSettled(closed.state, 'wheel-straight')).toBe(false);
    expect(isPointSettled(closed.state, 'stem-holds')).toBe(true);
    expect(whatNow(closed.state)).toEqual({ what: 'point', point: 'wheel-straight' });
    expect(refusalOf(closed, close)).toEqual({ code: 'finding-already-closed', finding: 'f1' });
  });

  test('[J14] takes no finding under a name that is taken', () => {
    const again: Asked = { ...wrong, point: 'stem-holds' };
    expect(refusalOf(found, again)).toEqual({ code: 'finding-already-raised', finding: 'f1' });
    expect(refusalOf(found, { kind: 'raise-finding', ...rub })).toEqual({
      code: 'finding-already-raised',
      finding: 'f1',
    });
  });

  test('[J14] need not be looked at again for what the customer is only told', () => {
    const scratch: Asked = {
      kind: 'look-at-point',
      point: 'paint',
      verdict: 'wrong',
      finding: { finding: 'f2', severity: 'tell-customer', text: 'A scratch.' },
    };
    const told = doing(doing(ready, scratch), { ...close, finding: 'f2' });
    expect(isPointSettled(told.state, 'paint')).toBe(true);
  });

  test('[J29] with a limit is good or adjusted only with a value; wrong needs none', () => {
    const look = { kind: 'look-at-point', point: 'post-depth' } as const;
    const needs = { code: 'point-needs-value', point: 'post-depth' };
    expect(refusalOf(ready, { ...look, verdict: 'good' })).toEqual(needs);
    expect(refusalOf(ready, { ...look, verdict: 'adjusted' })).toEqual(needs);
    expect(() => doing(ready, { ...look, verdict: 'good', value: 80 })).not.toThrow();
    expect(() => doing(ready, { ...look, verdict: 'wrong', finding: rub })).not.toThrow();
  });

  test('[J10] may hold a measure outside its limits; one called good may not', () => {
    const look = { kind: 'look-at-point', point: 'post-depth', value: 40 } as const;
    expect(refusalOf(ready, { ...look, verdict: 'good' })).toMatchObject({
      code: 'measure-outside-limits',
      value: 40,
      min: 63,
    });
    const kept = doing(ready, { ...look, verdict: 'wrong', finding: rub });
    expect(kept.state.measures['post-depth.insertion']).toMatchObject({
      value: 40,
      judged: 'outside',
    });
  });
});

describe('a finding that must not leave the shop', () => {
  test.each<[severity: NewFinding['severity'], blocks: boolean]>([
    ['stop-ride', true],
    ['before-hand-over', true],
    ['tell-customer', false],
  ])('[J15] blocks the signature as built: %s', (severity, blocks) => {
    const raised = doing(ready, { kind: 'raise-finding', ...rub, severity });
    const asked: Asked = { kind: 'sign-built', signing: signing(raised, 'built') };
    if (blocks)
      expect(refusalOf(raised, asked)).toMatchObject({
        code: 'findings-open',
        findings: [{ finding: 'f1', severity, text: 'The rim rubs.' }],
      });
    else expect(doing(raised, asked).state.signatures).toHaveLength(1);
  });

  test('[J15] blocks what comes after a signature too', () => {
    const late = doing(signedBuilt(ready), { kind: 'raise-finding', ...rub }, petra);
    const check: Asked = { kind: 'sign-checked', signing: signing(late, 'checked') };
    expect(refusalOf(late, check, petra).code).toBe('findings-open');
  });

  test('[J15] is let go by a supervisor alone, and with a reason', () => {
    expect(refusalOf(found, allow)).toEqual({ code: 'supervisor-only' });
    expect(refusalOf(found, { ...allow, reason: ' ' }, sunniva)).toEqual({
      code: 'reason-missing',
    });
    const allowed = doing(found, allow, sunniva);
    expect(allowed.state.findings[0]?.allowed).toMatchObject({
      by: 'sunniva',
      reason: 'Known, agreed.',
    });
    expect(refusalOf(found, signBuilt).code).toBe('findings-open');
    expect(() => signedBuilt(allowed)).not.toThrow();
  });
});
