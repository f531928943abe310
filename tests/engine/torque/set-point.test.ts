/** Set points computed by hand from ISO 6789-1 deviations and the adapter formula of US Army TM 9-254. */

import { describe, expect, test } from 'vitest';
import { type Adapter, planSetPoint, type Wrench } from '../../../src/engine/torque';
import { millimetres, newtonMetres, newtonMetresFrom } from '../../../src/engine/units';
import { TODAY, wrench } from '../../support/wrenches';

type Numbers = { readonly min?: number; readonly max?: number; readonly target?: number };

function plan(figure: Numbers, own: Partial<Wrench> = {}, adapter?: Adapter) {
  const limits = Object.fromEntries(
    Object.entries(figure).map(([name, value]) => [name, newtonMetres(value)]),
  );
  return planSetPoint({ figure: limits, wrench: wrench(own), adapter, on: TODAY });
}

/** ±6 %, because its maximum is 10 N·m or less. */
const small = { lowest: 1, highest: 6, increment: 0.1 };
const preset = { class: 'B', lowest: 5, highest: 5, increment: 1 } as const;
const inchPounds = { lowest: 20, highest: 200, increment: 5, unit: 'lbf·in' } as const;

describe('planSetPoint', () => {
  test.each<
    [situation: string, Numbers, Partial<Wrench>, onScale: number, low: number, high: number]
  >([
    ['a range: its middle', { min: 4, max: 6 }, {}, 5, 4.8077, 5.2083],
    ['a range: its own target', { min: 4, target: 4.6, max: 6 }, {}, 4.5, 4.3269, 4.6875],
    ['a narrow range', { min: 5, max: 6 }, {}, 5.5, 5.2885, 5.7292],
    ['a narrow range, a smaller wrench', { min: 5, max: 6 }, small, 5.5, 5.1887, 5.8511],
    ['a target near the limit gives way', { min: 4, target: 6, max: 6 }, {}, 5.5, 5.2885, 5.7292],
    ['the lower of two equally near', { min: 4, max: 6.5 }, {}, 5, 4.8077, 5.2083],
    ['the very edge still counts', { min: 5, max: 5.638298 }, small, 5.3, 5, 5.6383],
    ['a maximum: just under', { max: 5 }, {}, 4.5, 4.3269, 4.6875],
    ['a maximum met exactly', { max: 5 }, small, 4.7, 4.434, 5],
    ['a maximum above a preset tool', { max: 6 }, preset, 5, 4.717, 5.3191],
    ['a minimum: just over', { min: 20 }, {}, 21, 20.1923, 21.875],
    ['a single value', { target: 5 }, {}, 5, 4.8077, 5.2083],
    ['a single value between two settings', { target: 5.2 }, {}, 5, 4.8077, 5.2083],
    ['a single value at the end of the scale', { target: 25 }, {}, 25, 24.0385, 26.0417],
    ['a single value below its maximum', { target: 5, max: 6 }, {}, 5, 4.8077, 5.2083],
    ['a preset tool', { min: 4, max: 6 }, preset, 5, 4.717, 5.3191],
    [
      'a certificate widens the choice',
      { min: 5, max: 5.3 },
      { ...small, certificate: { deviation: 0.02 } },
      5.1,
      5,
      5.2041,
    ],
    ['a scale in lbf·in', { min: 4.9713, max: 5.9882 }, inchPounds, 50, 5.432, 5.8846],
  ])('[T8, T9, T10] %s', (_, figure, own, onScale, low, high) => {
    const planned = plan(figure, own);
    if (!planned.ok) throw new Error(JSON.stringify(planned.refusal));
    const { value } = planned;
    expect(value.onScale).toBe(onScale);
    expect(value.setPoint).toBe(newtonMetresFrom(onScale, value.unit));
    expect(value.jointLow).toBeCloseTo(low, 4);
    expect(value.jointHigh).toBeCloseTo(high, 4);
    expect(value).toMatchObject({ covered: true, riskOutside: 0, adapterFactor: 1 });
  });

  test('[T11] a maximum met exactly is not exceeded by the dust of binary fractions', () => {
    const planned = plan({ max: 5 }, small);
    expect(planned.ok && planned.value.jointHigh).toBe(5);
  });

  // 25 mm on a grip of 150 mm in line: factor 7/6
  test('[T7, T9] an adapter lengthens the wrench, so less is set', () => {
    const inLine = { grip: millimetres(150), offset: millimetres(25), angle: 0 };
    const planned = plan({ min: 4, max: 6 }, {}, inLine);
    expect(planned).toMatchObject({
      ok: true,
      value: { onScale: 4.5, setPoint: 4.5, deviation: 0.04 },
    });
    expect(planned.ok && planned.value.jointLow).toBeCloseTo(5.0481, 4);
    expect(planned.ok && planned.value.jointHigh).toBeCloseTo(5.4688, 4);
    const back = plan({ min: 4, max: 6 }, {}, { ...inLine, angle: 180 });
    expect(back).toMatchObject({ ok: true, value: { onScale: 6, setPoint: 6 } });
  });
});

describe('planSetPoint refuses', () => {
  test.each<[situation: string, Numbers, Partial<Wrench>, side: string, from: number, to: number]>([
    ['pedals', { min: 35, max: 40 }, {}, 'above', 36.4, 38.4],
    ['a top cap', { min: 0.5, max: 1 }, {}, 'below', 0.52, 0.96],
    ['a single value above', { target: 25.1 }, {}, 'above', 25.1, 25.1],
    ['a single value below', { target: 1.9 }, {}, 'below', 1.9, 1.9],
    ['a preset tool and its neighbour', { target: 5.1 }, preset, 'above', 5.1, 5.1],
    ['a maximum a preset tool would leave loose', { max: 8 }, preset, 'above', 5.3333, 7.52],
    ['a maximum below the scale', { max: 2 }, {}, 'below', 1.3333, 1.92],
    ['a minimum above the scale', { min: 25 }, {}, 'above', 26, 37.5],
    ['a minimum the scale would far exceed', { min: 1.2 }, {}, 'below', 1.248, 1.8],
    ['a figure too narrow for the wrench as well', { min: 30, max: 30.3 }, {}, 'above', 30, 30.3],
  ])('[T13] %s', (_, figure, own, side, from, to) => {
    const planned = plan(figure, own);
    const { lowest, highest, unit } = wrench(own);
    expect(planned).toMatchObject({
      ok: false,
      refusal: {
        code: 'figure-outside-wrench-range',
        wrench: 'wrench',
        side,
        lowest,
        highest,
        unit,
      },
    });
    if (planned.ok || planned.refusal.code !== 'figure-outside-wrench-range') return;
    expect(planned.refusal.neededFrom).toBeCloseTo(from, 4);
    expect(planned.refusal.neededTo).toBeCloseTo(to, 4);
  });

  test('[T13] the needed settings are told in the unit of the scale', () => {
    const planned = plan({ min: 35, max: 40 }, inchPounds);
    if (planned.ok || planned.refusal.code !== 'figure-outside-wrench-range') throw new Error('');
    expect(planned.refusal.neededFrom).toBeCloseTo(322.17, 2);
    expect(planned.refusal.neededTo).toBeCloseTo(339.87, 2);
  });

  // by hand: at 5.3 ± 6 % a true 5 is +6 %, a true 5.5 is −3.636 %: 2.364 of 12 parts are outside
  test('[T14] a deviation wider than the figure: the least risky setting, and the deviation that would do', () => {
    const planned = plan({ min: 5, max: 5.5 }, small);
    expect(planned).toMatchObject({
      ok: false,
      refusal: {
        code: 'wrench-too-coarse',
        wrench: 'wrench',
        because: 'deviation',
        deviation: 0.06,
        leastRisky: { onScale: 5.3, setPoint: 5.3, covered: false },
      },
    });
    if (planned.ok || planned.refusal.code !== 'wrench-too-coarse') return;
    expect(planned.refusal.neededDeviation).toBeCloseTo(0.5 / 10.5, 9);
    expect(planned.refusal.leastRisky.riskOutside).toBeCloseTo(0.19697, 5);
  });

  // with a factor of 2 the same figures ask for half at the wrench, and the joint runs the same risk
  test('[T7, T13, T14] an adapter counts in a refusal too', () => {
    const double = { grip: millimetres(100), offset: millimetres(100), angle: 0 };
    const coarse = plan({ min: 10, max: 11 }, small, double);
    if (coarse.ok || coarse.refusal.code !== 'wrench-too-coarse') throw new Error('');
    expect(coarse.refusal.leastRisky).toMatchObject({ onScale: 5.3, adapterFactor: 2 });
    expect(coarse.refusal.leastRisky.riskOutside).toBeCloseTo(0.19697, 5);
    expect(coarse.refusal.leastRisky.jointLow).toBeCloseTo(10, 9);
    const above = plan({ min: 60, max: 60.6 }, {}, double);
    if (above.ok || above.refusal.code !== 'figure-outside-wrench-range') throw new Error('');
    expect([above.refusal.neededFrom, above.refusal.neededTo]).toEqual([30, 30.3]);
  });

  test.each<[situation: string, Numbers, Partial<Wrench>, onScale: number, risk: number]>([
    ['a range between two settings', { min: 5.1, max: 5.7 }, { increment: 1 }, 5, 0.745098],
    ['a single value between two settings', { target: 5.25 }, {}, 5, 1],
    ['a maximum between two settings', { max: 5 }, { lowest: 1, highest: 7, increment: 2 }, 3, 0],
    ['a minimum between two settings', { min: 2 }, { lowest: 2, highest: 8, increment: 3 }, 5, 0],
  ])('[T14] a scale without the setting needed: %s', (_, figure, own, onScale, risk) => {
    const planned = plan(figure, own);
    if (planned.ok || planned.refusal.code !== 'wrench-too-coarse') throw new Error('');
    expect(planned.refusal.because).toBe('scale');
    expect(planned.refusal.leastRisky.onScale).toBe(onScale);
    expect(planned.refusal.leastRisky.covered).toBe(false);
    expect(planned.refusal.leastRisky.riskOutside).toBeCloseTo(risk, 5);
  });

  // ±4 %: from 5.1 × 1.04 to 5.7 × 0.96, in lbf·in the same; a single value from 5.25 × 0.96 to 5.25 × 1.04 is 5.04 to 5.46
  test.each<[situation: string, Numbers, Partial<Wrench>, from: number, to: number]>([
    ['a range', { min: 5.1, max: 5.7 }, { increment: 1 }, 5.304, 5.472],
    ['a scale in lbf·in', { min: 5.1, max: 5.7 }, { ...inchPounds, increment: 20 }, 46.944, 48.431],
    ['a single value', { target: 5.25 }, {}, 5.04, 5.46],
  ])(
    '[T14] %s between two settings: the refusal names the settings that would do',
    (_, figure, own, from, to) => {
      const planned = plan(figure, own);
      if (planned.ok || planned.refusal.code !== 'wrench-too-coarse') throw new Error('');
      expect(planned.refusal.neededFrom).toBeCloseTo(from, 3);
      expect(planned.refusal.neededTo).toBeCloseTo(to, 3);
    },
  );

  test('[T14] a wrench too far out names no settings, for none would do', () => {
    const planned = plan({ min: 5, max: 5.5 }, small);
    expect(planned.ok || planned.refusal).not.toHaveProperty('neededFrom');
  });

  test.each<[situation: string, Numbers, Partial<Wrench>, Adapter | undefined, code: string]>([
    ['no number', {}, {}, undefined, 'figure-empty'],
    ['a contradiction', { min: 6, max: 4 }, {}, undefined, 'figure-contradicts-itself'],
    [
      'a dropped wrench',
      { target: 5 },
      { condition: 'dropped' },
      undefined,
      'wrench-not-in-service',
    ],
    ['an overdue wrench', { target: 5 }, { dueOn: '2026-03-01' }, undefined, 'calibration-overdue'],
    [
      'an adapter that reaches the hand',
      { target: 5 },
      {},
      { grip: millimetres(100), offset: millimetres(100), angle: 180 },
      'adapter-impossible',
    ],
  ])('[T3, T6, T7] %s', (_, figure, own, adapter, code) => {
    expect(plan(figure, own, adapter)).toMatchObject({ ok: false, refusal: { code } });
  });
});
