/** A quantity is a finite number with a unit in its type. */

import { describe, expect, test } from 'vitest';
import {
  kilograms,
  kilopascals,
  millimetres,
  minutes,
  newtonMetres,
  newtons,
} from '../../../src/engine/units';

describe('quantities', () => {
  test('[U2] a quantity is the number itself', () => {
    const made = [newtonMetres, newtons, kilopascals, millimetres, kilograms, minutes];
    expect(made.map((make) => make(5.5))).toEqual([5.5, 5.5, 5.5, 5.5, 5.5, 5.5]);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    '[U2] %d is no quantity but a bug',
    (value) => {
      expect(() => newtonMetres(value)).toThrow('a quantity must be a finite number');
    },
  );
});
