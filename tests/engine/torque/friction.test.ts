/** The bearing surface that is taken where nobody has measured it. */

import { describe, expect, test } from 'vitest';
import { socketHeadBearing } from '../../../src/engine/torque';

describe('socketHeadBearing', () => {
  // least d_w of a socket cap screw, ISO 4762, and medium clearance holes, ISO 273; both from memory
  test.each<[diameter: number, headDiameter: number, holeDiameter: number]>([
    [2, 3.48, 2.4],
    [2.5, 4.18, 2.9],
    [3, 5.07, 3.4],
    [4, 6.53, 4.5],
    [5, 8.03, 5.5],
    [6, 9.38, 6.6],
    [8, 12.33, 9],
    [10, 15.33, 11],
    [12, 17.23, 13.5],
    [14, 20.17, 15.5],
    [16, 23.17, 17.5],
    [20, 28.87, 22],
    [24, 34.81, 26],
  ])(
    '[T21] the head of an M%d bears from its hole out to %d mm',
    (diameter, headDiameter, holeDiameter) => {
      expect(socketHeadBearing(diameter)).toEqual({ headDiameter, holeDiameter });
    },
  );

  test('[T22] of another size nothing is known', () => {
    expect(socketHeadBearing(7)).toBeUndefined();
  });
});
