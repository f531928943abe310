/** Readings at the edge of what makes sense. */

import { describe, expect, test } from 'vitest';
import { judgeReading, probabilityInside } from '../../../src/engine/torque';
import { newtonMetres } from '../../../src/engine/units';
import { wrench } from '../../support/wrenches';

describe('judgeReading', () => {
  const figure = { min: newtonMetres(4), max: newtonMetres(6) };

  test.each<[reading: number, halfStep: number]>([
    [1, 1],
    [5, 5],
    [5, 6],
    [0, 0],
    [-1, 0],
  ])('[T19] %d shown in steps of twice %d stands for nothing', (shown, halfStep) => {
    const read = { figure, wrench: wrench(), reading: newtonMetres(shown), halfStep };
    expect(judgeReading(read)).toBe('undecided');
    expect(probabilityInside(read)).toBeUndefined();
  });
});
