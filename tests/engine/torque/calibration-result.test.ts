/** What a calibration found, judged by the class of the wrench (ISO 6789-1:2017: ±4 % above 10 N·m, ±6 % up to it). */

import { describe, expect, test } from 'vitest';
import { type CertificatePoint, calibrationResult } from '../../../src/engine/torque';
import { wrench } from '../../support/wrenches';

const at = (torque: number, deviation: number, uncertainty?: number): CertificatePoint => ({
  at: torque,
  deviation,
  ...(uncertainty === undefined ? {} : { uncertainty }),
});

describe('calibrationResult', () => {
  test('[T25] every point inside the class is within, the limit itself too, in the order of the scale', () => {
    const result = calibrationResult(wrench(), [at(25, -0.04), at(2, 0.01, 0.02), at(15, 0.04)]);
    expect(result).toEqual({
      ok: true,
      value: {
        within: true,
        permissible: 0.04,
        points: [
          { at: 2, deviation: 0.01, uncertainty: 0.02, within: true },
          { at: 15, deviation: 0.04, within: true },
          { at: 25, deviation: -0.04, within: true },
        ],
        untested: [],
      },
    });
  });

  test('[T25] one point beyond the class is enough to be out, to either side', () => {
    const result = calibrationResult(wrench(), [at(2, 0.041), at(15, 0), at(25, -0.05)]);
    expect(result.ok && result.value.within).toBe(false);
    expect(result.ok && result.value.points.map(({ within }) => within)).toEqual([
      false,
      true,
      false,
    ]);
  });

  test('[T25] the class judges, not the certificate the wrench has had so far', () => {
    const certified = wrench({ certificate: { deviation: 0.1 } });
    const result = calibrationResult(certified, [at(2, 0.05)]);
    expect(result).toMatchObject({ ok: true, value: { within: false, permissible: 0.04 } });
    const small = wrench({ lowest: 1, highest: 10 });
    expect(calibrationResult(small, [at(2, 0.055)])).toMatchObject({ value: { within: true } });
  });

  test('[T25] values a calibration tests and this one did not are told', () => {
    const result = calibrationResult(wrench(), [at(15.5, 0)]);
    expect(result.ok && result.value.untested).toEqual([2, 25]);
    const none = calibrationResult(wrench(), [at(2.2, 0), at(15, 0), at(25, 0)]);
    expect(none.ok && none.value.untested).toEqual([2]);
  });

  test.each<[situation: string, CertificatePoint, because: string]>([
    ['below the scale', at(1.8, 0), 'beyond-scale'],
    ['above the scale', at(27, 0), 'beyond-scale'],
    ['no torque', at(Number.NaN, 0), 'beyond-scale'],
    ['a deviation typed as per cent', at(15, 3), 'deviation'],
    ['no deviation', at(15, Number.NaN), 'deviation'],
    ['an uncertainty typed as per cent', at(15, 0, 1), 'uncertainty'],
    ['an uncertainty below zero', at(15, 0, -0.01), 'uncertainty'],
  ])('[T26] %s is refused, naming the point', (_, point, because) => {
    expect(calibrationResult(wrench(), [at(15, 0), point])).toEqual({
      ok: false,
      refusal: { code: 'test-point-impossible', wrench: 'wrench', at: point.at, because },
    });
  });

  test('[T26] no point at all is refused', () => {
    const refusal = { code: 'test-points-missing', wrench: 'wrench' };
    expect(calibrationResult(wrench(), [])).toEqual({ ok: false, refusal });
  });

  test('[T26] a laboratory may load a little beyond the marks', () => {
    expect(calibrationResult(wrench(), [at(1.95, 0), at(26, 0)]).ok).toBe(true);
  });
});
