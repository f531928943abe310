/** One torque is read out of what a wrench types, or nothing. */

import { expect, test } from 'vitest';
import { readTyped } from '../../../src/screens/stand/read-typed';

// Factors of NIST SP 811; half of the last digit shown is the rounding of a display.
test.each<[typed: string, value: number, halfStep: number]>([
  ['5.02 N.m', 5.02, 0.005],
  ['5,02', 5.02, 0.005],
  ['+005.0 Nm', 5, 0.05],
  [' 12 ', 12, 0.5],
  ['44.3 in-lb', 44.3 * 0.112984829, 0.05 * 0.112984829],
])('%s', (typed, value, halfStep) => {
  const read = readTyped(typed, 'N·m');
  expect(read?.value).toBeCloseTo(value, 6);
  expect(read?.halfStep).toBeCloseTo(halfStep, 8);
});

test('a bare number is in the unit of the wrench', () => {
  expect(readTyped('60', 'kgf·cm')?.value).toBeCloseTo(60 * 0.0980665, 9);
});

test.each(['', 'Err', '4-6', 'max 5', '5.0 N.m (44 in.lb)', '5.0 5.1', '-5.0', '5.0.2'])(
  '“%s” is no single torque',
  (typed) => {
    expect(readTyped(typed, 'N·m')).toBeUndefined();
  },
);
