/** What a plan or a refusal says of the wrench, to the letter. */

import { describe, expect, test } from 'vitest';
import { planSetPoint } from '../../../src/engine/torque';
import { millimetres, newtonMetres } from '../../../src/engine/units';
import { TODAY, wrench } from '../../support/wrenches';

describe('planSetPoint', () => {
  const figure = { min: newtonMetres(4), max: newtonMetres(6) };

  test.each<[deviation: number, low: number, high: number, worst: number]>([
    [0.03, 0.02, 0.04, 0.04],
    [-0.03, -0.04, -0.02, 0.04],
  ])(
    '[T4] by a certificate of %d ± 0.01 the larger end is the deviation',
    (deviation, low, high, worst) => {
      const certificate = { points: [{ at: 5, deviation, uncertainty: 0.01 }] };
      const plan = planSetPoint({ figure, wrench: wrench({ certificate }), on: TODAY });
      expect(plan.ok && plan.value.deviation).toBeCloseTo(worst, 12);
      expect(plan.ok && plan.value.deviationLow).toBeCloseTo(low, 12);
      expect(plan.ok && plan.value.deviationHigh).toBeCloseTo(high, 12);
    },
  );

  test('[T13] a single value beyond the scale is told as it would have to be set, the adapter included', () => {
    const large = wrench({ lowest: 20, highest: 120, increment: 1 });
    const adapter = { grip: millimetres(200), offset: millimetres(200), angle: 0 };
    const plan = planSetPoint({
      figure: { target: newtonMetres(30) },
      wrench: large,
      adapter,
      on: TODAY,
    });
    expect(plan).toEqual({
      ok: false,
      refusal: {
        code: 'figure-outside-wrench-range',
        wrench: large.id,
        side: 'below',
        neededFrom: 15,
        neededTo: 15,
        lowest: 20,
        highest: 120,
        unit: 'N·m',
      },
    });
  });

  test('[T14] only a figure with two limits has a deviation that would do', () => {
    const coarse = wrench({ increment: 23 });
    const refusals = [
      { max: newtonMetres(15) },
      { min: newtonMetres(10), max: newtonMetres(15) },
    ].map((limits) => planSetPoint({ figure: limits, wrench: coarse, on: TODAY }));
    expect(refusals.map((plan) => !plan.ok && 'neededDeviation' in plan.refusal)).toEqual([
      false,
      true,
    ]);
    expect(refusals.map((plan) => !plan.ok && plan.refusal.code)).toEqual([
      'wrench-too-coarse',
      'wrench-too-coarse',
    ]);
  });

  // the points cut the scale into stretches, and each of them offers a setting
  const exact = { points: [5, 7.5, 10, 20].map((at) => ({ at, deviation: 0 })) };

  test('[T11] of all stretches the highest setting under a maximum is taken', () => {
    const scale = wrench({ certificate: exact });
    const plan = planSetPoint({ figure: { max: newtonMetres(15) }, wrench: scale, on: TODAY });
    expect(plan).toMatchObject({ ok: true, value: { onScale: 15, jointLow: 15, jointHigh: 15 } });
  });

  test('[T14] a scale without a mark is told all the settings that would do, over every stretch', () => {
    const marks = wrench({ lowest: 5, highest: 25, increment: 5, certificate: exact });
    const between = { min: newtonMetres(6), max: newtonMetres(9) };
    expect(planSetPoint({ figure: between, wrench: marks, on: TODAY })).toMatchObject({
      ok: false,
      refusal: { code: 'wrench-too-coarse', because: 'scale', neededFrom: 6, neededTo: 9 },
    });
  });
});
