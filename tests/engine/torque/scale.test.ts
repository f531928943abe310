/** Settings on a scale. */

import { describe, expect, test } from 'vitest';
import { positionOnScale } from '../../../src/engine/torque';
import { settingsAround } from '../../../src/engine/torque/scale';
import { newtonMetresFrom } from '../../../src/engine/units';

const fine = { lowest: 1, highest: 6, increment: 0.1, unit: 'N·m' } as const;

describe('settingsAround', () => {
  test.each<[torque: number, settings: readonly number[]]>([
    [4.7, [4.7]],
    [4.72, [4.7, 4.8]],
    [1.3, [1.3]],
    [0.2, [1]],
    [9, [6]],
    [1, [1]],
    [6, [6]],
  ])('[T8] around %d N·m', (torque, settings) => {
    expect(settingsAround(fine, torque).map((setting) => setting.onScale)).toEqual(settings);
  });

  test('[T8] the highest whole step is the last, even below the end of the scale', () => {
    const scale = { lowest: 2, highest: 25, increment: 2, unit: 'N·m' } as const;
    expect(settingsAround(scale, 25)).toEqual([{ onScale: 24, torque: 24 }]);
  });

  test('[T8] steps are counted in the unit of the scale', () => {
    const scale = { lowest: 20, highest: 200, increment: 5, unit: 'lbf·in' } as const;
    expect(settingsAround(scale, newtonMetresFrom(48, 'lbf·in'))).toEqual([
      { onScale: 45, torque: newtonMetresFrom(45, 'lbf·in') },
      { onScale: 50, torque: newtonMetresFrom(50, 'lbf·in') },
    ]);
  });
});

describe('positionOnScale', () => {
  test('[T16] from nought at the lowest to one at the highest; a preset tool is in the middle', () => {
    expect(positionOnScale(fine, 1)).toBe(0);
    expect(positionOnScale(fine, 3.5)).toBe(0.5);
    expect(positionOnScale(fine, 6)).toBe(1);
    expect(positionOnScale({ ...fine, lowest: 5, highest: 5 }, 5)).toBe(0.5);
  });
});
