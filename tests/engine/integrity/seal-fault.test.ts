/** What may follow a seal, and what may only stand beside it. */

import { describe, expect, test } from 'vitest';
import { type Entry, logEnd, nextPlace, seal, verifyLog } from '../../../src/engine/integrity';
import { unsealed } from '../../support/written-log';

function next(seen: readonly Entry[], kind: string, device = 'tablet-a'): Entry {
  const place = nextPlace(logEnd(seen, device));
  return seal(unsealed({ ...place, device, event: { kind, v: 1 } }));
}

const received = next([], 'box-received');
const handedOver = next([received], 'handed-over');
const sealed = [received, handedOver];

function refusalOf(log: readonly Entry[]) {
  const answer = verifyLog(log);
  return answer.ok ? 'whole' : answer.refusal;
}

describe('after the seal', () => {
  test('[I20] amendments may follow, one upon another', () => {
    const one = next(sealed, 'record-amended');
    const two = next([...sealed, one], 'record-amended', 'tablet-b');
    expect(refusalOf([...sealed, one, two])).toBe('whole');
  });

  test.each(['step-done', 'signed', 'handed-over', 'a-kind-of-tomorrow'])(
    '[I20] %s may not, and is named with the seal it broke',
    (kind) => {
      const broken = next(sealed, kind);
      expect(refusalOf([...sealed, broken])).toEqual({
        code: 'entry-after-seal',
        id: broken.id,
        device: 'tablet-a',
        seq: 3,
        seal: handedOver.id,
      });
    },
  );

  test('[I20] nor behind an amendment', () => {
    const amended = next(sealed, 'record-amended');
    const broken = next([...sealed, amended], 'step-done');
    expect(refusalOf([...sealed, amended, broken])).toMatchObject({
      code: 'entry-after-seal',
      id: broken.id,
    });
  });

  test('[I20] what another tablet did unseen stands beside, and an amendment may join both', () => {
    const unseen = next([received], 'step-done', 'tablet-b');
    const joined = next([...sealed, unseen], 'record-amended');
    expect(refusalOf([...sealed, unseen, joined])).toBe('whole');
    const late = next([...sealed, unseen], 'step-done', 'tablet-b');
    expect(refusalOf([...sealed, unseen, late])).toMatchObject({ id: late.id });
  });
});
