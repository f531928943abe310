/** The middle of each friction range, which the gain is told by. */

import { describe, expect, test } from 'vitest';
import { greaseEffect, preloadFrom, socketHeadBearing } from '../../../src/engine/torque';
import { millimetres, newtonMetres } from '../../../src/engine/units';

describe('greaseEffect', () => {
  // middles of the ranges of VDI 2230 table A5, from memory
  test.each<[propertyClass: string, dry: number, greased: number]>([
    ['8.8', 0.19, 0.12],
    ['A2-70', 0.275, 0.19],
  ])(
    '[T23] the gain of class %s is told at the middle of both ranges',
    (propertyClass, dry, greased) => {
      const thread = { diameter: millimetres(6), pitch: millimetres(1) };
      const torque = newtonMetres(8);
      const bearing = socketHeadBearing(6) ?? {
        headDiameter: thread.diameter,
        holeDiameter: thread.diameter,
      };
      const preloadAt = (friction: number) => {
        const preload = preloadFrom({
          thread,
          torque,
          ...bearing,
          frictionThread: friction,
          frictionHead: friction,
        });
        return preload.ok ? preload.value : Number.NaN;
      };
      const effect = greaseEffect({ thread, torque, propertyClass, clamps: ['aluminium'] });
      expect(effect.ok && effect.value.gain).toBeCloseTo(preloadAt(greased) / preloadAt(dry), 10);
    },
  );
});
