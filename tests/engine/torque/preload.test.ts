/** What preload refuses and how it moves; its values are checked in tests/reference. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { assemblyPreload, preloadFrom, torqueFor } from '../../../src/engine/torque';
import { millimetres, newtonMetres, newtons } from '../../../src/engine/units';

const m5 = { diameter: millimetres(5), pitch: millimetres(0.8) };

const faceplateBolt = {
  thread: m5,
  torque: newtonMetres(5),
  frictionThread: 0.12,
  frictionHead: 0.12,
  headDiameter: millimetres(8.03),
  holeDiameter: millimetres(5.5),
};

describe('preloadFrom', () => {
  // by hand, VDI 2230: 5000 / (0.12732 + 0.31040 + 0.40590) = 5927 N
  test('[T21] five newton metres on a lightly oiled M5 clamp with about 5.9 kN', () => {
    const preload = preloadFrom(faceplateBolt);
    expect(preload.ok && preload.value).toBeCloseTo(5927, -1);
  });

  test('[T21] more torque, or less friction, clamps harder; half the torque clamps half', () => {
    const friction = fc.double({ min: 0.05, max: 0.4, noNaN: true });
    const preloadAt = (torque: number, frictionThread: number, frictionHead: number) => {
      const answer = preloadFrom({
        ...faceplateBolt,
        torque: newtonMetres(torque),
        frictionThread,
        frictionHead,
      });
      if (!answer.ok) throw new Error(answer.refusal.code);
      return answer.value;
    };
    fc.assert(
      fc.property(
        friction,
        friction,
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        (a, b, torque) => {
          const base = preloadAt(torque, a, b);
          expect(preloadAt(torque / 2, a, b)).toBeCloseTo(base / 2, 6);
          expect(preloadAt(torque, a + 0.05, b)).toBeLessThan(base);
          expect(preloadAt(torque, a, b + 0.05)).toBeLessThan(base);
        },
      ),
    );
  });

  test.each<[situation: string, change: object, code: string]>([
    [
      'a thread out of the table',
      { thread: { ...m5, pitch: millimetres(1) } },
      'thread-not-in-table',
    ],
    ['no friction in the thread', { frictionThread: 0 }, 'bearing-impossible'],
    ['no friction under the head', { frictionHead: 0 }, 'bearing-impossible'],
    ['no hole', { holeDiameter: millimetres(0) }, 'bearing-impossible'],
    ['a head that falls through', { headDiameter: millimetres(5.5) }, 'bearing-impossible'],
    ['carbon', { materials: ['steel', 'carbon'] }, 'material-not-computed'],
    ['plastic', { materials: ['plastic'] }, 'material-not-computed'],
    ['an unknown material', { materials: ['unknown'] }, 'material-not-computed'],
  ])('[T22] %s is refused', (_, change, code) => {
    expect(preloadFrom({ ...faceplateBolt, ...change })).toMatchObject({
      ok: false,
      refusal: { code },
    });
  });

  test('[T22] metals are computed', () => {
    const materials = ['steel', 'stainless', 'aluminium', 'titanium'];
    expect(preloadFrom({ ...faceplateBolt, materials }).ok).toBe(true);
  });
});

describe('torqueFor', () => {
  test('[T22] refuses what preloadFrom refuses', () => {
    const thread = { ...m5, pitch: millimetres(1) };
    expect(torqueFor({ ...faceplateBolt, thread, preload: newtons(5000) })).toMatchObject({
      ok: false,
      refusal: { code: 'thread-not-in-table', diameter: 5, pitch: 1 },
    });
  });
});

describe('assemblyPreload', () => {
  test('[T21] the share of the yield stress is nine tenths unless said otherwise', () => {
    const bolt = { thread: m5, yieldStress: 640, frictionThread: 0.12 };
    expect(assemblyPreload({ ...bolt, share: 0.9 })).toBe(assemblyPreload(bolt));
    expect(assemblyPreload({ ...bolt, share: 0.45 })).toBeCloseTo(assemblyPreload(bolt) / 2, 9);
  });
});
