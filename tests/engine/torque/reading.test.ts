/** Readings judged with the wrench's own deviation as guard band (ISO 14253-1, JCGM 106); values by hand. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  judgeReading,
  planSetPoint,
  probabilityInside,
  type ReadingVerdict,
  type Wrench,
} from '../../../src/engine/torque';
import { millimetres, newtonMetres } from '../../../src/engine/units';
import { TODAY, wrench } from '../../support/wrenches';

type Numbers = { readonly min?: number; readonly max?: number; readonly target?: number };

function limitsOf(figure: Numbers) {
  return Object.fromEntries(
    Object.entries(figure).map(([name, value]) => [
      name,
      value === 0 ? (0 as never) : newtonMetres(value),
    ]),
  );
}

describe('judgeReading', () => {
  // ±4 %: inside from 4 × 1.04 = 4.16 to 6 × 0.96 = 5.76, outside below 4 × 0.96 = 3.84 and above 6 × 1.04 = 6.24
  test.each<[figure: Numbers, reading: number, verdict: ReadingVerdict]>([
    [{ min: 4, max: 6 }, 5, 'inside'],
    [{ min: 4, max: 6 }, 4.16, 'inside'],
    [{ min: 4, max: 6 }, 4.15, 'undecided'],
    [{ min: 4, max: 6 }, 3.85, 'undecided'],
    [{ min: 4, max: 6 }, 3.84, 'undecided'],
    [{ min: 4, max: 6 }, 3.83, 'outside'],
    [{ min: 4, max: 6 }, 5.76, 'inside'],
    [{ min: 4, max: 6 }, 5.77, 'undecided'],
    [{ min: 4, max: 6 }, 6, 'undecided'],
    [{ min: 4, max: 6 }, 6.23, 'undecided'],
    [{ min: 4, max: 6 }, 6.24, 'undecided'],
    [{ min: 4, max: 6 }, 6.25, 'outside'],
    [{ min: 5, max: 5.1 }, 5.05, 'undecided'],
    [{ max: 6 }, 5.76, 'inside'],
    [{ max: 6 }, 5.9, 'undecided'],
    [{ max: 6 }, 6.25, 'outside'],
    [{ min: 4 }, 4.16, 'inside'],
    [{ min: 4 }, 4, 'undecided'],
    [{ min: 4 }, 3.8, 'outside'],
    [{ target: 5 }, 5.2, 'inside'],
    [{ target: 5 }, 4.8, 'inside'],
    [{ target: 5 }, 5.21, 'outside'],
    [{ target: 5 }, 4.79, 'outside'],
    [{ target: 5, max: 5.3 }, 5.2, 'undecided'],
    [{ target: 5, max: 6 }, 5, 'inside'],
    [{}, 5, 'undecided'],
    [{ min: 6, max: 4 }, 5, 'undecided'],
    [{ min: 4, max: 6 }, 0, 'undecided'],
  ])('[T19] %o read as %d is %s', (figure, reading, verdict) => {
    const read = { figure: limitsOf(figure), wrench: wrench(), reading: newtonMetres(reading) };
    expect(judgeReading(read)).toBe(verdict);
  });

  test('[T7, T19] an adapter changes what a reading stands for', () => {
    const double = { grip: millimetres(100), offset: millimetres(100), angle: 0 };
    const read = { figure: limitsOf({ min: 4, max: 6 }), wrench: wrench(), adapter: double };
    expect(judgeReading({ ...read, reading: newtonMetres(2.5) })).toBe('inside');
    expect(judgeReading({ ...read, reading: newtonMetres(5) })).toBe('outside');
    const hand = { ...double, angle: 180 };
    expect(judgeReading({ ...read, adapter: hand, reading: newtonMetres(5) })).toBe('undecided');
  });

  test('[T9, T19] a click at a planned set point is always inside', () => {
    const positive = fc.double({ min: 1.5, max: 30, noNaN: true });
    const figures = fc.oneof(
      fc.tuple(positive, positive).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) })),
      positive.map((max) => ({ max })),
      positive.map((min) => ({ min })),
      positive.map((target) => ({ target })),
      fc
        .tuple(positive, positive)
        .map(([a, b]) => ({ target: Math.min(a, b), max: Math.max(a, b) })),
    );
    fc.assert(
      fc.property(
        figures,
        fc.constantFrom<Partial<Wrench>>({}, { class: 'G' }, { increment: 0.1 }),
        (numbers, own) => {
          const figure = limitsOf(numbers);
          const tool = wrench(own);
          const planned = planSetPoint({ figure, wrench: tool, on: TODAY });
          if (!planned.ok) return;
          const read = { figure, wrench: tool, reading: planned.value.setPoint };
          expect(judgeReading(read)).toBe('inside');
          expect(probabilityInside(read)).toBe(1);
        },
      ),
    );
  });
});

describe('a reading that was shown', () => {
  const range = limitsOf({ min: 4, max: 6 });

  // 5.76 at ±4 % just keeps to 6; shown to a tenth it may be 5.81
  test.each<[reading: number, halfStep: number, verdict: ReadingVerdict]>([
    [5.76, 0, 'inside'],
    [5.7, 0.05, 'inside'],
    [5.8, 0.05, 'undecided'],
    [6.2, 0.05, 'undecided'],
    [6.25, 0.005, 'outside'],
    [6.25, 0.05, 'undecided'],
    [6.3, 0.05, 'outside'],
    [4.2, 0.05, 'undecided'],
    [4.2, 0.04, 'inside'],
    [0.4, 0.5, 'undecided'],
  ])('[T19] %d, rounded by %d at most, is %s', (reading, halfStep, verdict) => {
    const read = { figure: range, wrench: wrench(), reading: newtonMetres(reading), halfStep };
    expect(judgeReading(read)).toBe(verdict);
    if (verdict === 'inside') expect(probabilityInside(read)).toBe(1);
    if (verdict === 'outside') expect(probabilityInside(read)).toBe(0);
  });

  // a transducer with u = 0.1 N·m: U = 0.2; at 5.9 one standard uncertainty is left, Φ(1)
  test.each<[reading: number, verdict: ReadingVerdict, probability: number]>([
    [5, 'inside', 1],
    [5.8, 'inside', 0.9772499],
    [5.9, 'undecided', 0.8413447],
    [6.1, 'undecided', 0.1586553],
    [6.21, 'outside', 0.0178644],
    [3.79, 'outside', 0.0178644],
  ])('[T19, T30] %d with an uncertainty of its own is %s', (reading, verdict, probability) => {
    const read = {
      figure: range,
      wrench: wrench(),
      reading: newtonMetres(reading),
      uncertainty: { distribution: 'normal', standard: 0.1 } as const,
    };
    expect(judgeReading(read)).toBe(verdict);
    expect(probabilityInside(read)).toBeCloseTo(probability, 6);
  });

  test('[T7, T19, T30] the adapter stretches the uncertainty as it does the reading', () => {
    const double = { grip: millimetres(100), offset: millimetres(100), angle: 0 };
    const read = { figure: range, wrench: wrench(), reading: newtonMetres(2.9), adapter: double };
    const normal = { distribution: 'normal', standard: 0.05 } as const;
    expect(judgeReading({ ...read, uncertainty: normal })).toBe('inside');
    expect(probabilityInside({ ...read, uncertainty: normal })).toBeCloseTo(0.9772499, 6);
    const even = { distribution: 'rectangular', halfWidth: 0.2 } as const;
    expect(judgeReading({ ...read, uncertainty: even })).toBe('undecided');
    expect(probabilityInside({ ...read, uncertainty: even })).toBeCloseTo(0.75, 9);
    expect(judgeReading({ ...read, uncertainty: { ...even, halfWidth: 0.1 } })).toBe('inside');
  });

  test('[T19, T30] a single value is met when the reading may be it', () => {
    const uncertainty = { distribution: 'rectangular', halfWidth: 0.1 } as const;
    const five = limitsOf({ target: 5 });
    const read = { figure: five, wrench: wrench(), uncertainty };
    expect(judgeReading({ ...read, reading: newtonMetres(5.1) })).toBe('inside');
    expect(probabilityInside({ ...read, reading: newtonMetres(5.1) })).toBe(1);
    expect(judgeReading({ ...read, reading: newtonMetres(5.11) })).toBe('outside');
    expect(probabilityInside({ ...read, reading: newtonMetres(5.11) })).toBe(0);
  });

  test('[T4, T19] a certificate moves what a reading stands for', () => {
    const readsHigh = wrench({ certificate: { points: [{ at: 5, deviation: 0.05 }] } });
    const judge = (reading: number) =>
      judgeReading({ figure: range, wrench: readsHigh, reading: newtonMetres(reading) });
    expect([4.19, 4.21, 6.29, 6.31].map(judge)).toEqual(['outside', 'inside', 'inside', 'outside']);
  });
});

describe('probabilityInside', () => {
  test.each<[figure: Numbers, reading: number, probability: number | undefined]>([
    [{ min: 4, max: 6 }, 5, 1],
    [{ min: 4, max: 6 }, 6, 0.5],
    [{ min: 4, max: 6 }, 4, 0.5],
    [{ min: 4, max: 6 }, 7, 0],
    [{}, 5, undefined],
  ])('[T19] %o read as %d: %d', (figure, reading, probability) => {
    const read = { figure: limitsOf(figure), wrench: wrench(), reading: newtonMetres(reading) };
    const computed = probabilityInside(read);
    if (probability === undefined) expect(computed).toBeUndefined();
    else expect(computed).toBeCloseTo(probability, 9);
  });
});
