/** Names of property classes; their strengths are checked in tests/reference. */

import { describe, expect, test } from 'vitest';
import { propertyClasses, strengthOf } from '../../../src/engine/torque';
import { isPropertyClass } from '../../../src/engine/torque/property-classes';

describe('property classes', () => {
  // ISO 898-1: the digits before the dot are a hundredth of the tensile strength, those after it the yield ratio in tenths
  test('[T20] the yield of a steel class is near what its name says', () => {
    for (const name of propertyClasses.filter((one) => !one.startsWith('A'))) {
      const [hundreds = 0, tenths = 0] = name.split('.').map(Number);
      expect(Math.abs(strengthOf(name, 8).yield / (hundreds * tenths * 10) - 1)).toBeLessThan(0.07);
      expect(strengthOf(name, 8).proof).toBeLessThan(strengthOf(name, 8).yield);
      expect(strengthOf(name, 8).material).toBe('steel');
    }
  });

  test('[T20] A1, A2 and A4 are stainless', () => {
    expect(propertyClasses.filter((name) => strengthOf(name, 8).material === 'stainless')).toEqual([
      'A1-50',
      'A1-70',
      'A1-80',
      'A2-50',
      'A2-70',
      'A2-80',
      'A4-50',
      'A4-70',
      'A4-80',
      'A4-100',
    ]);
  });

  test('[T22] a name that is none is not taken for one', () => {
    expect(isPropertyClass('8.8')).toBe(true);
    expect(isPropertyClass('7.7')).toBe(false);
    expect(isPropertyClass('toString')).toBe(false);
  });
});
