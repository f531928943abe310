/** The normal distribution against published values and against another library. */

import fc from 'fast-check';
import { erf } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { erfc, normalBelow, normalBetween, normalQuantile } from '../../../src/engine/torque';

const relative = (computed: number, expected: number) => Math.abs(computed / expected - 1);

describe('erfc', () => {
  // Abramowitz and Stegun, tables 7.1 and 7.3; more digits from memory
  test.each<[x: number, expected: number]>([
    [0, 1],
    [0.1, 0.8875370839817152],
    [0.5, 0.4795001221869535],
    [1, 0.15729920705028513],
    [1.5, 0.033894853524689274],
    [2, 0.004677734981047266],
    [3, 2.209049699858544e-5],
    [4, 1.541725790028002e-8],
    [5, 1.5374597944280349e-12],
    [10, 2.088487583762545e-45],
    [-1, 1.8427007929497148],
    [-5, 1.9999999999984626],
  ])('[T29] erfc(%d) is %d', (x, expected) => {
    expect(relative(erfc(x), expected)).toBeLessThan(1e-12);
  });

  test('[T29] it agrees with the error function of mathjs, and both branches meet', () => {
    fc.assert(
      fc.property(fc.double({ min: -6, max: 6, noNaN: true }), (x) => {
        expect(Math.abs(erfc(x) - (1 - erf(x)))).toBeLessThan(1e-12);
      }),
    );
    expect(relative(erfc(2), erfc(2 - 1e-15))).toBeLessThan(1e-12);
  });
});

describe('normalBelow', () => {
  // tables of the normal distribution; −6 is the tail of a guard band three times U (ILAC-G8)
  test.each<[z: number, share: number]>([
    [0, 0.5],
    [1, 0.8413447460685429],
    [1.4, 0.9192433407662289],
    [1.959963984540054, 0.975],
    [-3, 0.0013498980316300933],
    [-6, 9.865876450376946e-10],
  ])('[T29] %d standard deviations: %d', (z, share) => {
    expect(relative(normalBelow(z), share)).toBeLessThan(1e-12);
  });

  test('[T29] a share between two places loses nothing in either tail', () => {
    expect(relative(normalBetween(6, 7), normalBetween(-7, -6))).toBeLessThan(1e-12);
    expect(relative(normalBetween(6, Infinity), normalBelow(-6))).toBeLessThan(1e-12);
    expect(normalBetween(-Infinity, Infinity)).toBe(1);
    expect(normalBetween(1, 1)).toBe(0);
    expect(normalBetween(2, 1)).toBe(0);
    expect(normalBetween(-1, 1)).toBeCloseTo(0.6826894921370859, 12);
  });
});

describe('normalQuantile', () => {
  // JCGM 106:2012, table 1 prints 0.84, 1.28, 1.64, 2.33 and 3.09
  test.each<[p: number, z: number]>([
    [0.5, 0],
    [0.8, 0.8416212335729143],
    [0.9, 1.2815515655446004],
    [0.95, 1.6448536269514722],
    [0.975, 1.959963984540054],
    [0.99, 2.3263478740408408],
    [0.999, 3.090232306167813],
    [1e-9, -5.9978070150076865],
    [0, -Infinity],
    [1, Infinity],
  ])('[T29] %d lies below %d', (p, z) => {
    if (Number.isFinite(z)) expect(Math.abs(normalQuantile(p) - z)).toBeLessThan(1e-9);
    else expect(normalQuantile(p)).toBe(z);
  });

  test('[T29] it undoes normalBelow', () => {
    fc.assert(
      fc.property(fc.double({ min: -8, max: 5, noNaN: true }), (z) => {
        expect(Math.abs(normalQuantile(normalBelow(z)) - z)).toBeLessThan(1e-9);
      }),
    );
  });
});
