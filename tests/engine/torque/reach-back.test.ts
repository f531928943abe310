/** Joints judged again once a wrench is known to have been out; values by hand from set/(1 + a). */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CertificatePoint,
  type JudgedAgain,
  judgeAgain,
  planSetPoint,
  reachBack,
  type WrenchUse,
} from '../../../src/engine/torque';
import { millimetres, newtonMetres } from '../../../src/engine/units';
import { TODAY, wrench } from '../../support/wrenches';

const range = { min: newtonMetres(4), max: newtonMetres(6) };
const readsHigh: CertificatePoint[] = [
  { at: 2, deviation: 0.3, uncertainty: 0.01 },
  { at: 15, deviation: 0.05, uncertainty: 0.01 },
  { at: 25, deviation: 0.01, uncertainty: 0.01 },
];

describe('judgeAgain', () => {
  // between 2 and 15 the deviation falls from 30 % to 5 %: at 5 it is 24.23 % ± 1 %, so a true 3.9926 to 4.0574
  test.each<
    [
      situation: string,
      set: number,
      figure: object,
      found: CertificatePoint[] | undefined,
      verdict: string,
      low: number | undefined,
      high: number | undefined,
      risk: number | undefined,
    ]
  >([
    ['half in doubt', 5, range, readsHigh, 'undecided', 3.9926, 4.0574, 0.11538],
    ['surely too loose', 4.5, range, readsHigh, 'outside', 3.566, 3.6234, 1],
    ['still inside', 5.5, range, readsHigh, 'inside', 4.4259, 4.4983, 0],
    [
      'the end point is held beyond it',
      25,
      { min: newtonMetres(24), max: newtonMetres(26) },
      readsHigh,
      'inside',
      24.5098,
      25,
      0,
    ],
    ['not measured yet', 5, range, undefined, 'undecided', undefined, undefined, undefined],
    ['no point at all', 5, range, [], 'undecided', undefined, undefined, undefined],
    ['a figure that says nothing', 5, {}, readsHigh, 'undecided', undefined, undefined, undefined],
    [
      'a maximum passed',
      5,
      { max: newtonMetres(5) },
      [{ at: 15, deviation: -0.1 }],
      'outside',
      5.5556,
      5.5556,
      1,
    ],
    [
      'a single value within its class',
      5,
      { target: newtonMetres(5) },
      [{ at: 15, deviation: 0.03 }],
      'inside',
      4.8544,
      4.8544,
      0,
    ],
    [
      'a single value beyond its class',
      5,
      { target: newtonMetres(5) },
      [{ at: 15, deviation: 0.08 }],
      'outside',
      4.6296,
      4.6296,
      1,
    ],
  ])('[T27] %s', (_, set, figure, found, verdict, low, high, risk) => {
    const again = judgeAgain({ figure, wrench: wrench(), setPoint: newtonMetres(set), found });
    expect(again.verdict).toBe(verdict);
    expectNear(again.low, low);
    expectNear(again.high, high);
    expectNear(again.probabilityOutside, risk);
  });

  function expectNear(actual: number | undefined, expected: number | undefined) {
    if (expected === undefined) expect(actual).toBeUndefined();
    else expect(actual).toBeCloseTo(expected, 4);
  }

  test('[T7, T27] the adapter counts', () => {
    const double = { grip: millimetres(100), offset: millimetres(100), angle: 0 };
    const again = judgeAgain({
      figure: range,
      wrench: wrench(),
      setPoint: newtonMetres(2.5),
      adapter: double,
      found: [{ at: 2.5, deviation: 0.25 }],
    });
    expect(again).toEqual<JudgedAgain>({
      verdict: 'inside',
      low: 4,
      high: 4,
      probabilityOutside: 0,
    });
  });

  test('[T27] the certificate the wrench had then no longer counts', () => {
    const certified = wrench({ certificate: { deviation: 0.001 } });
    const found = [{ at: 15, deviation: 0.4 }];
    const setPoint = newtonMetres(5);
    expect(judgeAgain({ figure: range, wrench: certified, setPoint, found }).verdict).toBe(
      'outside',
    );
  });
});

describe('judgeAgain, against counting', () => {
  const spread = fc.double({ min: -0.2, max: 0.2, noNaN: true });

  test('[T27] inside when no true torque within what was found leaves the figure, outside when every one does', () => {
    const found = fc.record({
      deviation: spread,
      uncertainty: fc.double({ min: 0.001, max: 0.05, noNaN: true }),
    });
    const limits = fc.tuple(spread, spread).map(([a, b]) => ({
      min: newtonMetres(10 * (1 + Math.min(a, b))),
      max: newtonMetres(10 * (1 + Math.max(a, b)) + 0.01),
    }));
    fc.assert(
      fc.property(found, limits, ({ deviation, uncertainty }, figure) => {
        const again = judgeAgain({
          figure,
          wrench: wrench(),
          setPoint: newtonMetres(10),
          found: [{ at: 10, deviation, uncertainty }],
        });
        const steps = 1000;
        const truths = Array.from(
          { length: steps + 1 },
          (_, step) => 10 / (1 + deviation - uncertainty + (2 * uncertainty * step) / steps),
        );
        expect(again.low).toBeCloseTo(Math.min(...truths), 9);
        expect(again.high).toBeCloseTo(Math.max(...truths), 9);
        const outside = truths.filter(
          (truth) => truth < figure.min - 1e-9 || truth > figure.max + 1e-9,
        ).length;
        if (again.verdict === 'inside') expect(outside).toBe(0);
        if (again.verdict === 'outside') expect(outside).toBe(steps + 1);
        expect(Math.abs((again.probabilityOutside ?? 0) - outside / (steps + 1))).toBeLessThan(
          0.003,
        );
      }),
      { numRuns: 60 },
    );
  });

  test('[T9, T27] a joint planned by a certificate stays inside when a calibration finds the same again', () => {
    const points = fc.array(
      fc.record({
        at: fc.integer({ min: 2, max: 25 }),
        deviation: spread,
        uncertainty: fc.constant(0.01),
      }),
      { minLength: 1, maxLength: 4 },
    );
    const middles = fc.double({ min: 3, max: 20, noNaN: true });
    fc.assert(
      fc.property(points, middles, (found, middle) => {
        const figure = { min: newtonMetres(middle * 0.8), max: newtonMetres(middle * 1.2) };
        const tool = wrench({ certificate: { points: found } });
        const planned = planSetPoint({ figure, wrench: tool, on: TODAY });
        if (!planned.ok) return;
        const { setPoint, jointLow, jointHigh } = planned.value;
        const again = judgeAgain({ figure, wrench: wrench(), setPoint, found });
        expect(again).toMatchObject({ verdict: 'inside', probabilityOutside: 0 });
        expect(again.low).toBeCloseTo(jointLow, 9);
        expect(again.high).toBeCloseTo(jointHigh, 9);
      }),
    );
  });
});

const use = (own: Partial<WrenchUse>): WrenchUse => ({
  job: 'job-1',
  frameNumber: 'FN-1',
  handedOver: false,
  joint: 'faceplate',
  class: 'A',
  on: '2026-02-01',
  figure: range,
  setPoint: newtonMetres(5),
  ...own,
});

function reach(
  uses: readonly WrenchUse[],
  own: { found?: CertificatePoint[]; since?: string; until?: string },
) {
  const answer = reachBack({ wrench: wrench(), since: '2026-01-01', uses, ...own });
  if (!answer.ok) throw new Error(answer.refusal.code);
  return answer.value;
}

describe('reachBack', () => {
  test('[T28] only joints that may be outside, tightened in the period, its first and last day included', () => {
    const uses = [
      use({ job: 'before', on: '2025-12-31' }),
      use({ job: 'first day', on: '2026-01-01' }),
      use({ job: 'inside', setPoint: newtonMetres(5.5) }),
      use({ job: 'last day', on: '2026-02-10' }),
      use({ job: 'after', on: '2026-02-11' }),
    ];
    const reached = reach(uses, { found: readsHigh, until: '2026-02-10' });
    expect(reached.map(({ job }) => job)).toEqual(['first day', 'last day']);
    expect(reached[0]).toMatchObject({ frameNumber: 'FN-1', verdict: 'undecided' });
    const open = reach(uses, { found: readsHigh });
    expect(open.map(({ job }) => job)).toEqual(['after', 'first day', 'last day']);
  });

  test('[T28] handed over first, then the class of the joint, then the likelihood, then job and joint', () => {
    const surely = newtonMetres(4.5);
    const uses = [
      use({ job: 'g', class: 'C', handedOver: false, setPoint: surely }),
      use({ job: 'f', class: 'A', handedOver: false }),
      use({ job: 'e', class: 'A', handedOver: false, setPoint: surely }),
      use({ job: 'd', class: 'B', handedOver: true, joint: 'lever' }),
      use({ job: 'd', class: 'B', handedOver: true, joint: 'clamp' }),
      use({ job: 'c', class: 'B', handedOver: true }),
      use({ job: 'b', class: 'A', handedOver: true }),
      use({ job: 'a', class: 'C', handedOver: true, setPoint: surely }),
    ];
    const reached = reach(uses, { found: readsHigh });
    expect(reached.map(({ job, joint }) => `${job} ${joint}`)).toEqual([
      'b faceplate',
      'c faceplate',
      'd clamp',
      'd lever',
      'a faceplate',
      'e faceplate',
      'f faceplate',
      'g faceplate',
    ]);
    fc.assert(
      fc.property(fc.shuffledSubarray(uses, { minLength: uses.length }), (shuffled) => {
        expect(reach(shuffled, { found: readsHigh })).toEqual(reached);
      }),
    );
  });

  test('[T28] after a drop nobody has measured, every joint comes back', () => {
    const uses = [use({ job: 'b' }), use({ job: 'a', figure: { max: newtonMetres(50) } })];
    expect(reach(uses, {}).map(({ job, verdict }) => [job, verdict])).toEqual([
      ['a', 'undecided'],
      ['b', 'undecided'],
    ]);
  });

  test('[T28] what the caller keeps with a use comes back with it', () => {
    const answer = reachBack({
      wrench: wrench(),
      since: '2026-01-01',
      uses: [{ ...use({}), step: 'faceplate' }],
    });
    expect(answer.ok && answer.value[0]?.step).toBe('faceplate');
  });

  test('[T28] nothing reached is an empty list', () => {
    expect(reach([], { found: readsHigh })).toEqual([]);
  });

  test('[T26] test points that cannot be, and a period that runs backwards, are refused', () => {
    const asked = { wrench: wrench(), since: '2026-02-01', uses: [] };
    expect(reachBack({ ...asked, until: '2026-01-31' })).toEqual({
      ok: false,
      refusal: { code: 'period-backwards', since: '2026-02-01', until: '2026-01-31' },
    });
    expect(reachBack({ ...asked, until: '2026-02-01' }).ok).toBe(true);
    expect(reachBack({ ...asked, found: [] })).toMatchObject({
      refusal: { code: 'test-points-missing' },
    });
    expect(reachBack({ ...asked, found: [{ at: 5, deviation: 8 }] })).toMatchObject({
      refusal: { code: 'test-point-impossible', because: 'deviation' },
    });
  });
});
